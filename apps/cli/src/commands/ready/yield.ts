import { heapYieldInput, stuffed, yieldReport } from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import {
  bad,
  check,
  createDraws,
  good,
  type Outcome,
  type PastHeap,
  type YieldInput,
  yieldEstimate,
} from '@loamwright/science';
import type { Answer } from '../../answer.ts';
import { allOf, readFigure, readMeasure, readOneOf } from '../../blend.ts';
import { readIngredients } from '../../grammar/ingredient.ts';
import { readMeasurement } from '../../grammar/measurement.ts';
import { namesOf } from '../../holding.ts';
import type { Session } from '../../session.ts';
import { openWithSizes } from '../../sizes.ts';
import { subjectNamed } from '../../subject.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';

export interface YieldOptions {
  readonly heap?: string | undefined;
  readonly built?: string | undefined;
  readonly ready?: string | undefined;
  readonly water?: string | undefined;
  readonly ash?: string | undefined;
  readonly moisture?: string | undefined;
  readonly density?: string | undefined;
  readonly rain?: string | undefined;
  readonly past?: readonly string[] | undefined;
  readonly measure?: string | undefined;
  readonly size?: readonly string[] | undefined;
}

/** `loamwright yield`: how much compost a heap comes to, from what went in, a heap of the daybook, or its volume alone. */
export async function yieldOf(
  typed: readonly string[],
  options: YieldOptions,
  before: Session,
): Promise<Outcome<Answer>> {
  const opened = await openWithSizes(options, before);
  if (!opened.ok) return opened;
  const { holding, session } = opened.value;
  const known = options.heap === undefined ? stuffOf(typed, holding, session) : heapOf(options.heap, holding, session);
  const told = readTold(options, holding, session);
  if (!known.ok || !told.ok) return bad(...allOf(known, told));
  if (known.value.ingredients === undefined && told.value.built_m3 === undefined)
    return bad({ code: 'nothing-named', path: 'yield', found: '', wanted: '' });
  const input = check<YieldInput>(yieldEstimate.input, { ...known.value, ...told.value });
  if (!input.ok) return bad(...input.problems.map(withOption));
  const found = yieldEstimate.run(input.value, { draws: createDraws() });
  if (!found.ok) return bad(...found.problems.map(withOption));
  const { speaker, terminal } = session;
  const { answer, notes } = yieldReport(found.value);
  return good({
    value: { input: input.value, ...found.value },
    text: [
      page(terminal.columns, [speaker.tell(answer)]),
      page(terminal.columns, ...notes.map((said): [string] => [speaker.tell(said)])),
      cautionText(yieldEstimate.cautions, speaker, terminal.columns),
    ].join('\n\n'),
  });
}

const optionOf: Readonly<Record<string, string>> = {
  built_m3: '--built',
  ready_m3: '--ready',
  readyAsh_pctDry: '--ash',
  readyMoisture_pctWet: '--moisture',
  readyDensity_kgPerM3AsIs: '--density',
  water_L: '--water',
};

const withOption = <P extends { readonly path: string }>(problem: P): P => ({
  ...problem,
  path: optionOf[problem.path] ?? problem.path.replace(/^pastHeaps\[\d+\].*/u, '--past'),
});

/** Problems: those of ingredients. */
function stuffOf(typed: readonly string[], holding: Holding, session: Session): Outcome<YieldInput> {
  if (typed.length === 0) return good({});
  const read = readIngredients(typed, namesOf(session, holding));
  if (!read.ok) return read;
  return good({
    ingredients: read.value.map(({ material, doubtful, amount }, i) => ({
      ...stuffed(material, doubtful, holding),
      amount,
      line: `${material}-${i + 1}`,
    })),
  });
}

/** What the daybook knows of a heap. Problems: `no-such-heap`, `which-heap`, `heap-empty`. */
function heapOf(name: string, holding: Holding, session: Session): Outcome<YieldInput> {
  const id = subjectNamed(holding, 'heap', name);
  if (!id.ok) return id;
  const heap = holding.heaps.get(id.value);
  if (heap === undefined) throw new RangeError(`no heap ${id.value}`);
  const input = heapYieldInput(heap, holding, session.now().toISOString());
  return input === undefined
    ? bad({ code: 'heap-empty', path: '--heap', found: name.slice(0, 80), wanted: '' })
    : good(input);
}

const LITRES_PER_M3 = 1000;

/** Problems: `measurement-unreadable`, `number-unreadable`, `not-one-of`, `unknown-measure`. */
function readTold(options: YieldOptions, holding: Holding, session: Session): Outcome<YieldInput> {
  const volume = (text: string | undefined, path: string): Outcome<number | undefined> =>
    text === undefined ? good(undefined) : readVolume_m3(text, path, session);
  const figure = (text: string | undefined, path: string) =>
    text === undefined ? good(undefined) : readFigure(text, path);
  const built = volume(options.built, '--built');
  const ready = volume(options.ready, '--ready');
  const water = volume(options.water, '--water');
  const ash = figure(options.ash, '--ash');
  const moisture = figure(options.moisture, '--moisture');
  const density = figure(options.density, '--density');
  const rain =
    options.rain === undefined ? good(undefined) : readOneOf(options.rain, ['sheltered', 'open'] as const, '--rain');
  const measure = readMeasure(options.measure, 'barrow', namesOf(session, holding));
  const past = readPast(options.past ?? [], session);
  if (
    !built.ok ||
    !ready.ok ||
    !water.ok ||
    !ash.ok ||
    !moisture.ok ||
    !density.ok ||
    !rain.ok ||
    !measure.ok ||
    !past.ok
  )
    return bad(...allOf(built, ready, water, ash, moisture, density, rain, measure, past));
  return good({
    measure: measure.value,
    ...(past.value.length > 0 && { pastHeaps: past.value }),
    ...(built.value !== undefined && { built_m3: built.value }),
    ...(ready.value !== undefined && { ready_m3: ready.value }),
    ...(water.value !== undefined && { water_L: LITRES_PER_M3 * water.value }),
    ...(ash.value !== undefined && { readyAsh_pctDry: ash.value }),
    ...(moisture.value !== undefined && { readyMoisture_pctWet: moisture.value }),
    ...(density.value !== undefined && { readyDensity_kgPerM3AsIs: density.value }),
    ...(rain.value !== undefined && { shelter: rain.value }),
    ...(session.settings.measures_L !== undefined && { ownSizes: session.settings.measures_L }),
  });
}

function readVolume_m3(text: string, path: string, { speaker }: Session): Outcome<number> {
  const read = readMeasurement(text, 'liquid', path, speaker.system);
  return read.ok ? good(read.value.si) : read;
}

/** `1m3=0.4m3`: built and ready. */
function readPast(typed: readonly string[], session: Session): Outcome<readonly PastHeap[]> {
  const read = typed.map((text): Outcome<PastHeap> => {
    const [built = '', ready = ''] = text.split('=');
    const from = readVolume_m3(built, '--past', session);
    const to = readVolume_m3(ready, '--past', session);
    return from.ok && to.ok ? good({ built_m3: from.value, ready_m3: to.value }) : bad(...allOf(from, to));
  });
  const problems = allOf(...read);
  return problems.length > 0 ? bad(...problems) : good(read.flatMap((one) => (one.ok ? [one.value] : [])));
}
