import {
  type BalanceReport,
  balanceReport,
  laid,
  type MixReport,
  materialName,
  measureNextWords,
  mixReport,
  stuffed,
} from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import {
  type Amount,
  bad,
  bestMeasurement,
  type CardLine,
  createDraws,
  good,
  type Ingredient,
  type MixBalance,
  type MixSolution,
  mixBalance,
  mixSolve,
  type Outcome,
  type Season,
  type StockLine,
  type ValuedCheck,
} from '@loamwright/science';
import { isMessageKey, type Saying, type Speaker } from '@loamwright/words';
import type { Answer } from '../answer.ts';
import { type BayMeant, bayMeant } from '../bay.ts';
import { type IngredientRead, readIngredients } from '../grammar/ingredient.ts';
import { readMeasurement } from '../grammar/measurement.ts';
import { namesOf } from '../holding.ts';
import { type Mixed, rememberMix, STAND_IN_BAY } from '../mixed.ts';
import type { Session } from '../session.ts';
import { openWithSizes } from '../sizes.ts';
import { loadSolver } from '../solver.ts';
import { page } from '../text.ts';
import { cautionText } from './heap.ts';

export interface MixOptions {
  readonly bay?: string | undefined;
  readonly half?: boolean | undefined;
  readonly exact?: boolean | undefined;
  readonly water?: string | undefined;
  readonly one?: boolean | undefined;
  readonly full?: boolean | undefined;
  /** Also what the answer rests on, and the cautions in full. */
  readonly why?: boolean | undefined;
  readonly size?: readonly string[] | undefined;
}

/** `loamwright mix`: what to build from what is on hand; with `--exact`, what exactly these amounts are. */
export async function mix(typed: readonly string[], options: MixOptions, before: Session): Promise<Outcome<Answer>> {
  const opened = await openWithSizes(options, before);
  if (!opened.ok) return opened;
  const { holding, session } = opened.value;
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
  const season = seasonOf(session);
  const input = {
    stock,
    season,
    ...(options.one === true && { alternatives: false }),
    ...(bay.size !== undefined && { bay: bay.size }),
    step: options.half === true ? ('half' as const) : ('whole' as const),
    ...(session.settings.measures_L !== undefined && { ownSizes: session.settings.measures_L }),
  };
  const solved = mixSolve.run(input, { draws: createDraws(), solver: await loadSolver() });
  if (!solved.ok) return solved;
  remember(solved.value, stock, asked);
  const report = mixReport(solved.value, holding, season);
  const { checks, ...toldFirst } = checksFirst(mixedOf(solved.value, stock, asked), asked);
  const value = { input, ...solved.value, measureFirst: checks };
  return good({ value, text: mixText(report, toldFirst, session, options) });
}

interface ChecksFirst {
  readonly said: readonly Saying[];
  /** How what is found is written down, where it is. */
  readonly found: string | undefined;
}

/** Which checks are worth a minute before it is laid. A mix of nothing has none. */
function checksFirst(
  { card, amounts }: Mixed,
  { holding, session }: Asked,
): ChecksFirst & { readonly checks: readonly ValuedCheck[] } {
  const ingredients = card.mix.flatMap((line, i): readonly Ingredient[] => {
    const { measure: _measure, count: _count, fill: _fill, packed: _packed, ...stuff } = line;
    const amount = amounts[i];
    return amount === undefined ? [] : [{ ...stuff, amount }];
  });
  const found = bestMeasurement.run({ ingredients, ownSizes: card.ownSizes }, { draws: createDraws() });
  if (!found.ok) return { checks: [], said: [], found: undefined };
  const { ask } = found.value;
  return { checks: ask, said: measureNextWords(found.value, holding), found: foundWords(ask, holding, session) };
}

/** How the first check that tells of a material is written down; none where only amounts were to be looked at. */
function foundWords(ask: readonly ValuedCheck[], holding: Holding, { speaker }: Session): string | undefined {
  const first = ask.find(({ check, material }) => material !== undefined && isMessageKey(`cli.mix.found.${check}`));
  const key = `cli.mix.found.${first?.check ?? ''}`;
  if (first?.material === undefined || !isMessageKey(key)) return undefined;
  const name = speaker.tell(materialName(holding, first.material));
  const typed = (mass_kg: number): string => speaker.likely(mass_kg, 'kg', 'mass').replace(' ', '');
  return speaker.say(key, {
    material: /\s/u.test(name) ? `"${name}"` : name,
    full: typed(FULL_KG),
    empty: typed(EMPTY_KG),
  });
}

/** A bucket of damp stuff and an empty one, as examples of what is typed. */
const FULL_KG = 3.2;
const EMPTY_KG = 1;

/** The month in the garden. Where on earth that is nobody has said: north of the equator, as the answer tells. */
function seasonOf({ now, zone }: Session): Season {
  const month = new Intl.DateTimeFormat('en', { month: 'numeric', timeZone: zone, calendar: 'gregory' }).format(now());
  return { month: Number(month), hemisphere: 'north' };
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

function remember(solution: MixSolution, stock: readonly StockLine[], asked: Asked): void {
  const { bay, session } = asked;
  rememberMix(
    {
      ...mixedOf(solution, stock, asked),
      others: solution.alternatives.map((other) => ({ aim: other.aim, ...mixedOf(other, stock, asked) })),
      baySaid: bay.size !== undefined,
      ...(bay.id !== undefined && { bay: bay.id }),
    },
    session,
  );
}

/** What is laid of the stock, and what is fetched, as a build card takes it. */
function mixedOf(
  { use, fetch, water_L }: Pick<MixSolution, 'use' | 'fetch' | 'water_L'>,
  stock: readonly StockLine[],
  { bay, session }: Asked,
): Mixed {
  const used = use.flatMap(
    ({ stock: i, measure, count, fill, packed }): readonly { line: CardLine; amount: Amount }[] => {
      const given = stock[i];
      if (given === undefined || count === 0) return [];
      const {
        amount,
        measure: _counted,
        atLeast: _least,
        atMost: _most,
        keepBack: _kept,
        useAll: _all,
        ...rest
      } = given;
      return [{ line: { ...rest, measure, count, fill, packed }, amount: laid(amount, measure, count) }];
    },
  );
  const fetched = fetch.map(({ material, measure, count }) => ({
    line: { material, measure, count },
    amount: { measure, count },
  }));
  const all = [...used, ...fetched];
  const ownSizes = session.settings.measures_L;
  return {
    card: {
      mix: all.map(({ line }) => line),
      water_L,
      bay: bay.size ?? STAND_IN_BAY,
      ...(ownSizes !== undefined && { ownSizes }),
    },
    amounts: all.map(({ amount }) => amount),
  };
}

/**
 * The answer as a sentence, what is short, what would mend it, its figures and what to mind; what is longer and hurts
 * nobody comes last, or with `--why`.
 */
function mixText(
  report: MixReport,
  first: ChecksFirst,
  { speaker, terminal }: Session,
  { full, why = false }: MixOptions,
): string {
  const { columns } = terminal;
  const { tell } = speaker;
  const lines = (sayings: readonly Saying[]): string => page(columns, ...sayings.map((said): [string] => [tell(said)]));
  const all = [...report.use, ...report.unused];
  const blocks = [
    lines([report.answer]),
    lines([...report.lacks, ...report.mends, ...(report.passedOver === null ? [] : [report.passedOver])]),
    judgedText(why ? report : withoutPlain(report), speaker, columns),
    lines([...(why ? report.heat : report.heat.slice(-1)), ...warningsOnce(report)]),
    lines(report.use.filter(({ permit }) => permit.permit !== 'allowed').map(({ permit }) => permit.said)),
    cautionText(report.cautions, speaker, columns, why ? 'full' : 'short'),
    lines(all.flatMap(({ left, doubt }) => [left, doubt].filter((said) => said !== null))),
    othersText(report, speaker, columns, why),
    lines(first.said),
    first.found === undefined ? '' : page(columns, [first.found]),
    lines(why ? report.starters : []),
    lines(full === true ? report.more : []),
    lines(report.beliefs.map(({ said }) => said)),
    page(columns, [speaker.say('cli.mix.next')], ...(why ? [] : [[speaker.say('cli.mix.askWhy')] as [string]])),
  ];
  return joined(blocks);
}

/** The weight of a cubic metre says little where handbooks prefer it. */
function withoutPlain(report: MixReport): MixReport {
  const isPlain = ({ quantity, judged }: MixReport['judged'][number]): boolean =>
    quantity === 'density_kgPerM3AsIs' && judged.lean === 'in';
  return { ...report, judged: report.judged.filter((one) => !isPlain(one)) };
}

/** That it is too small to heat is said once. */
function warningsOnce({ heat, warnings }: MixReport): readonly Saying[] {
  const isSaid = heat.some(({ key }) => key === 'advisor.mix.heat-small');
  return warnings.filter(({ key }) => !isSaid || key !== 'advisor.mix.warning.too-small-to-heat');
}

function joined(blocks: readonly string[]): string {
  return blocks.filter((block) => block !== '').join('\n\n');
}

function judgedText({ judged }: BalanceReport, speaker: Speaker, columns: number): string {
  return page(columns, ...judged.map(({ said }): [string, string] => [`- ${speaker.tell(said)}`, '  ']));
}

/** The other answers, each with its trade-off and how to build it; what goes into it with `--why`. */
function othersText({ others }: MixReport, speaker: Speaker, columns: number, why: boolean): string {
  if (others.length === 0) return '';
  const told = others.flatMap(({ aim, tradeOff, answer }): readonly [string, string][] => [
    [`- ${speaker.tell(tradeOff)}`, '  '],
    ...(why ? [[`  ${speaker.tell(answer)}`, '  '] as [string, string]] : []),
    [`  ${speaker.say('cli.mix.buildOther', { aim })}`, '  '],
  ]);
  return page(columns, [speaker.say('cli.mix.others')], ...told);
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
  return good({ value: { input, ...balance.value }, text: exactText(balance.value, holding, session) });
}

/** What exactly these amounts are, without a choice among them. */
function exactText(balance: MixBalance, holding: Holding, { speaker, terminal }: Session): string {
  const { columns } = terminal;
  const report = balanceReport(balance, holding);
  const lines = (sayings: readonly Saying[]): string =>
    page(columns, ...sayings.map((said): [string] => [speaker.tell(said)]));
  return joined([
    judgedText(report, speaker, columns),
    lines(report.warnings),
    lines(report.starters),
    lines(report.more),
    cautionText(report.cautions, speaker, columns),
  ]);
}

const LITRES_PER_M3 = 1000;
