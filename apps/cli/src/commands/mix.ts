import { type MixReport, mixReport, stuffed } from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import {
  type Amount,
  bad,
  type CardLine,
  createDraws,
  good,
  type MixSolution,
  mixBalance,
  mixSolve,
  type Outcome,
  type StockLine,
} from '@loamwright/science';
import { outline } from '@loamwright/words';
import type { Answer } from '../answer.ts';
import { type BayMeant, bayMeant } from '../bay.ts';
import { readBook } from '../book.ts';
import { type IngredientRead, readIngredients } from '../grammar/ingredient.ts';
import { readMeasurement } from '../grammar/measurement.ts';
import { namesOf } from '../holding.ts';
import { rememberMix, STAND_IN_BAY } from '../mixed.ts';
import { laid } from '../put.ts';
import type { Session } from '../session.ts';
import { withSizes } from '../sizes.ts';
import { loadSolver } from '../solver.ts';
import { page } from '../text.ts';
import { cautionText } from './heap.ts';

export interface MixOptions {
  readonly bay?: string | undefined;
  readonly half?: boolean | undefined;
  readonly exact?: boolean | undefined;
  readonly water?: string | undefined;
  readonly size?: readonly string[] | undefined;
}

/** `loamwright mix`: what to build from what is on hand; with `--exact`, what exactly these amounts are. */
export async function mix(typed: readonly string[], options: MixOptions, before: Session): Promise<Outcome<Answer>> {
  const book = await readBook(before);
  if (!book.ok) return book;
  const { holding } = book.value;
  const sized = withSizes(options.size ?? [], namesOf(before, holding), before);
  if (!sized.ok) return sized;
  const session = sized.value;
  if (typed.length === 0) return bad({ code: 'nothing-named', path: 'mix', found: '', wanted: '' });
  const ingredients = readIngredients(typed, namesOf(session, holding));
  const bay: Outcome<BayMeant> = options.bay === undefined ? good({}) : bayMeant(options.bay, holding, session);
  if (!ingredients.ok || !bay.ok) return bad(...[ingredients, bay].flatMap((one) => (one.ok ? [] : one.problems)));
  const asked = { ingredients: ingredients.value, bay: bay.value, holding, session };
  return options.exact === true ? exactly(asked, options) : best(asked, options);
}

interface Asked {
  readonly ingredients: readonly IngredientRead[];
  readonly bay: BayMeant;
  readonly holding: Holding;
  readonly session: Session;
}

async function best(asked: Asked, options: MixOptions): Promise<Outcome<Answer>> {
  const { ingredients, bay, holding, session } = asked;
  const stock = ingredients.map((ingredient, i) => stockLine(ingredient, i, asked));
  const input = {
    stock,
    ...(bay.size !== undefined && { bay: bay.size }),
    step: options.half === true ? ('half' as const) : ('whole' as const),
    ...(session.settings.measures_L !== undefined && { ownSizes: session.settings.measures_L }),
  };
  const solved = mixSolve.run(input, { draws: createDraws(), solver: await loadSolver() });
  if (!solved.ok) return solved;
  remember(solved.value, stock, asked);
  const report = mixReport(solved.value, holding);
  return good({ value: { input, ...solved.value }, text: mixText(report, session) });
}

/** A material on hand. What was not counted in a measure is counted in the person's usual bucket. */
function stockLine(
  { material, doubtful, amount }: IngredientRead,
  i: number,
  { ingredients, holding, session }: Asked,
): StockLine {
  const twice = ingredients.findIndex((other) => other.material === material) !== i;
  const bucket = session.speaker.system === 'us' ? 'bucket-5gal' : 'bucket-20l';
  return {
    ...stuffed(material, doubtful, holding),
    amount,
    ...(twice && { line: `${material}-${i + 1}` }),
    ...(!('measure' in amount) && { measure: bucket }),
  };
}

function remember({ use, water_L }: MixSolution, stock: readonly StockLine[], { bay, session }: Asked): void {
  const used = use.flatMap(({ stock: i, measure, count }): readonly { line: CardLine; amount: Amount }[] => {
    const given = stock[i];
    if (given === undefined || count === 0) return [];
    const { amount, measure: _counted, atLeast: _least, atMost: _most, keepBack: _kept, useAll: _all, ...rest } = given;
    return [{ line: { ...rest, measure, count, packed: amount.packed }, amount: laid(amount, measure, count) }];
  });
  const ownSizes = session.settings.measures_L;
  const card = {
    mix: used.map(({ line }) => line),
    water_L,
    bay: bay.size ?? STAND_IN_BAY,
    ...(ownSizes !== undefined && { ownSizes }),
  };
  const amounts = used.map(({ amount }) => amount);
  rememberMix(
    { card, amounts, baySaid: bay.size !== undefined, ...(bay.id !== undefined && { bay: bay.id }) },
    session,
  );
}

/** The answer as a sentence, then what is behind it, what is short, and what to mind. */
function mixText(report: MixReport, { speaker, terminal }: Session): string {
  const { columns } = terminal;
  const { tell } = speaker;
  const lines = (sayings: readonly Parameters<typeof tell>[0][]): string =>
    page(columns, ...sayings.map((said): [string] => [tell(said)]));
  const all = [...report.use, ...report.unused];
  const blocks = [
    lines([report.answer]),
    lines([...report.lacks, ...report.mends]),
    page(columns, ...report.judged.map(({ said }): [string, string] => [`- ${tell(said)}`, '  '])),
    lines(report.heat),
    lines(all.flatMap(({ left, doubt }) => [left, doubt].filter((said) => said !== null))),
    lines(report.warnings),
    lines(report.beliefs.map(({ said }) => said)),
    lines(report.use.filter(({ permit }) => permit.permit !== 'allowed').map(({ permit }) => permit.said)),
    cautionText(report.cautions, speaker, columns),
    page(columns, [speaker.say('cli.mix.next')]),
  ];
  return blocks.filter((block) => block !== '').join('\n\n');
}

function exactly({ ingredients, bay, holding, session }: Asked, options: MixOptions): Outcome<Answer> {
  const water =
    options.water === undefined
      ? good(undefined)
      : readMeasurement(options.water, 'liquid', '--water', session.speaker.system);
  if (!water.ok) return water;
  const input = {
    ingredients: ingredients.map(({ material, doubtful, amount }, i) => ({
      ...stuffed(material, doubtful, holding),
      amount,
      ...(ingredients.findIndex((other) => other.material === material) !== i && { line: `${material}-${i + 1}` }),
    })),
    ...(water.value !== undefined && { water_L: water.value.si * LITRES_PER_M3 }),
    ...(bay.size !== undefined && { bay: bay.size }),
    ...(session.settings.measures_L !== undefined && { ownSizes: session.settings.measures_L }),
  };
  const balance = mixBalance.run(input, { draws: createDraws() });
  if (!balance.ok) return balance;
  return good({ value: { input, ...balance.value }, text: outline(balance.value, session.speaker) });
}

const LITRES_PER_M3 = 1000;
