import { type SoilRead, type SoilTestRead, sourceOf } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { say, sayOf } from './saying.ts';

/** What a soil test says, in sentences. */
export function soilReport(
  { figures, againAfter_years: again }: SoilTestRead,
  printed: readonly string[],
): readonly Saying[] {
  return [
    ...figures.flatMap((figure, i) => figureWords(figure, printed[i] ?? '')),
    say('soil.again', { least: again.least, most: again.most }),
  ];
}

function figureWords(figure: SoilRead, value: string): readonly Saying[] {
  const places = { element: sayOf('soil.element', figure.element), value };
  if (figure.ask.length > 0)
    return [say('soil.answer.ask', { ...places, asked: figure.ask.map((id) => sayOf('soil.ask', id)) })];
  if (figure.taken === undefined) return [say('soil.answer.no-table', places)];
  const { runDown_years: down } = figure;
  return [
    sayOf('soil.answer', figure.taken, places),
    say('soil.tables', {
      tables: figure.judged.map((one) =>
        say('soil.table', { class: sayOf('soil.class', one.class), source: sourceOf(one).author ?? one.source }),
      ),
    }),
    ...(down === undefined
      ? []
      : [
          say('soil.run-down', {
            to: `${down.to_ppm} ppm`,
            least: Math.round(down.least),
            most: Math.round(down.most),
          }),
        ]),
  ];
}
