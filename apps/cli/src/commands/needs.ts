import { type NeedsReport, needsReport, stuffed } from '@loamwright/advisor';
import {
  bad,
  createDraws,
  good,
  mixBalance,
  type Needs,
  nitrogenGoals_ratio,
  nitrogenToReach,
  type Outcome,
  waterToAdd,
} from '@loamwright/science';
import type { Answer } from '../answer.ts';
import { readIngredients } from '../grammar/ingredient.ts';
import { namesOf } from '../holding.ts';
import type { Session } from '../session.ts';
import { openWithSizes } from '../sizes.ts';
import { page } from '../text.ts';
import { cautionText } from './heap.ts';

export interface NeedsOptions {
  readonly size?: readonly string[] | undefined;
}

/** `loamwright needs`: what amounts of stuff want before they rot hot. */
export async function needs(
  typed: readonly string[],
  options: NeedsOptions,
  before: Session,
): Promise<Outcome<Answer>> {
  const opened = await openWithSizes(options, before);
  if (!opened.ok) return opened;
  const { holding, session } = opened.value;
  if (typed.length === 0) return bad({ code: 'nothing-named', path: 'needs', found: '', wanted: '' });
  const read = readIngredients(typed, namesOf(session, holding));
  if (!read.ok) return read;
  const input = {
    ingredients: read.value.map(({ material, doubtful, amount }, i) => ({
      ...stuffed(material, doubtful, holding),
      amount,
      ...(read.value.findIndex((other) => other.material === material) !== i && { line: `${material}-${i + 1}` }),
    })),
    ...(session.settings.measures_L !== undefined && { ownSizes: session.settings.measures_L }),
  };
  const outside: Needs = { draws: createDraws() };
  const balance = mixBalance.run(input, outside);
  if (!balance.ok) return balance;
  const isWoody = balance.value.warnings.some(({ code }) => code === 'slow-carbon');
  const { high, low } = nitrogenGoals_ratio[isWoody ? 'woody' : 'leafy'];
  const water = waterToAdd.run(input, outside);
  const toHigh = nitrogenToReach.run({ ...input, goal_ratio: high }, outside);
  const toLow = nitrogenToReach.run({ ...input, goal_ratio: low }, outside);
  if (!water.ok || !toHigh.ok || !toLow.ok) {
    return bad(...[water, toHigh, toLow].flatMap((one) => (one.ok ? [] : one.problems)));
  }
  const found = {
    balance: balance.value,
    water: water.value,
    nitrogen: [
      { goal_ratio: high, ...toHigh.value },
      { goal_ratio: low, ...toLow.value },
    ] as const,
  };
  const report = needsReport(found, holding);
  return good({ value: { input, ...found, cautions: report.cautions }, text: needsText(report, session) });
}

function needsText({ stuff, water, nitrogen, beliefs, cautions }: NeedsReport, { speaker, terminal }: Session): string {
  const { columns } = terminal;
  const lines = (sayings: readonly Parameters<typeof speaker.tell>[0][]): string =>
    page(columns, ...sayings.map((said): [string] => [speaker.tell(said)]));
  return [
    lines([stuff]),
    lines(water),
    lines(nitrogen),
    lines(beliefs.map(({ said }) => said)),
    cautionText(cautions, speaker, columns),
  ]
    .filter((block) => block !== '')
    .join('\n\n');
}
