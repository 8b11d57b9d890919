import { soilReport } from '@loamwright/advisor';
import {
  bad,
  check,
  createDraws,
  good,
  type Outcome,
  type SoilFigure,
  type SoilMethod,
  type SoilTestInput,
  type SoilTestRead,
  soilMethods,
  soilTestRead,
  soilUnits,
} from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import type { Answer } from '../../answer.ts';
import { allOf, readOneOf } from '../../blend.ts';
import type { Session } from '../../session.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';
import { type BedTestedOptions, bedTested } from './tested.ts';

export interface BedTestOptions extends BedTestedOptions {
  readonly method?: string | undefined;
  /** The bed of the daybook that it is kept for. */
  readonly keep?: string | undefined;
}

const names: Readonly<Record<string, Pick<SoilFigure, 'element' | 'asOxide'>>> = {
  p: { element: 'phosphorus' },
  k: { element: 'potassium' },
  p2o5: { element: 'phosphorus', asOxide: true },
  k2o: { element: 'potassium', asOxide: true },
};

const figure = /^(p2o5|k2o|p|k)\s*=\s*(\d+(?:[.,]\d+)?)\s*([a-z/]*)(?:\s*@\s*(.+))?$/iu;
const units: Readonly<Record<string, string>> = {
  'lb/acre': 'lb/ac',
  'lbs/acre': 'lb/ac',
  'lbs/ac': 'lb/ac',
  'mg/l': 'mg/L',
};

/** `loamwright bed test`: what a soil test says, as labs print it; with `--keep`, written down for a bed. */
export async function bedTest(
  typed: readonly string[],
  options: BedTestOptions,
  session: Session,
): Promise<Outcome<Answer>> {
  const { method, keep } = options;
  const known = method === undefined ? good(undefined) : readOneOf(method, soilMethods, '--method');
  const read = typed.map((text) => readFigureOf(text, known.ok ? known.value : undefined));
  const problems = allOf(known, ...read);
  if (problems.length > 0) return bad(...problems);
  const figures = read.flatMap((one) => (one.ok ? [one.value] : []));
  if (keep !== undefined) return bedTested(keep, figures, options, session);
  if (figures.length === 0) return bad({ code: 'nothing-named', path: 'bed test', found: '', wanted: '' });
  const input = check<SoilTestInput>(soilTestRead.input, { figures });
  if (!input.ok) return input;
  const found = soilTestRead.run(input.value, { draws: createDraws() });
  if (!found.ok) return found;
  const { speaker, terminal } = session;
  const printed = typed.map((text) =>
    text
      .replace(/@.*$/u, '')
      .slice(text.indexOf('=') + 1)
      .trim(),
  );
  const said = [...soilReport(found.value, printed), ...budgetOption(found.value)].map((one): [string] => [
    speaker.tell(one),
  ]);
  return good({
    value: { input: input.value, ...found.value },
    text: [page(terminal.columns, ...said), cautionText(['local-rules'], speaker, terminal.columns)].join('\n\n'),
  });
}

/** How `bed budget` takes it. */
function budgetOption({ figures }: SoilTestRead): readonly Saying[] {
  const results = figures.flatMap(({ element, taken }) =>
    taken === undefined ? [] : [`${element === 'phosphorus' ? 'p' : 'k'}=${taken}`],
  );
  return results.length === 0 ? [] : [{ key: 'cli.bed.test.budget', places: { results: results.join(' ') } }];
}

/**
 * `p=84ppm`, `k=300 lb/ac`, `p2o5=190`; `k=84ppm@olsen` by a method of its own. Problems: `soil-unreadable`, `not-one-of`.
 */
function readFigureOf(text: string, method: SoilMethod | undefined): Outcome<SoilFigure> {
  const [, name = '', value = '', unit = '', own] = figure.exec(text.trim()) ?? [];
  const of = names[name.toLowerCase()];
  const typed = unit.toLowerCase();
  const known = soilUnits.find((one) => one === (units[typed] ?? typed));
  if (of === undefined || (unit !== '' && known === undefined))
    return bad({ code: 'soil-unreadable', path: 'figures', found: text.slice(0, 60), wanted: '' });
  const drawn: Outcome<SoilMethod | undefined> =
    own === undefined ? good(method) : readOneOf(own, soilMethods, `${name.toLowerCase()}=${value}${unit}@`);
  if (!drawn.ok) return drawn;
  return good({
    ...of,
    value: Number(value.replace(',', '.')),
    ...(known !== undefined && { unit: known }),
    ...(drawn.value !== undefined && { method: drawn.value }),
  });
}
