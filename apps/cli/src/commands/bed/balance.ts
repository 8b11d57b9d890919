import { balanceOfYear, stuffed, yearOf } from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import {
  bad,
  check,
  createDraws,
  type Dressing,
  good,
  type HoldingBalanceInput,
  holdingBalance,
  type Ingredient,
  type Outcome,
} from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import type { Answer } from '../../answer.ts';
import { allOf, readFigure, readOneOf } from '../../blend.ts';
import { readIngredients } from '../../grammar/ingredient.ts';
import { namesOf } from '../../holding.ts';
import type { Session } from '../../session.ts';
import { openWithSizes } from '../../sizes.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';
import { readSeason } from './budget.ts';
import { readCrops } from './read.ts';

export interface BedBalanceOptions {
  readonly straight?: readonly string[] | undefined;
  readonly spread?: string | undefined;
  readonly crops?: readonly string[] | undefined;
  readonly rain?: string | undefined;
  readonly after?: string | undefined;
  readonly mulch?: boolean | undefined;
  readonly size?: readonly string[] | undefined;
  readonly for?: string | undefined;
}

/** `loamwright bed balance`: a year from scrap to crop, what is lost on the way and what is left over. */
export async function bedBalance(
  typed: readonly string[],
  options: BedBalanceOptions,
  before: Session,
): Promise<Outcome<Answer>> {
  const opened = await openWithSizes(options, before);
  if (!opened.ok) return opened;
  const { holding, session } = opened.value;
  if (typed.length === 0 && options.straight === undefined) return ofYear(options, holding, session);
  const names = namesOf(session, holding);
  const heaped = readIngredients(typed, names);
  const straight = readIngredients(options.straight ?? [], names);
  const spread = readIngredients(options.spread === undefined ? [] : [`compost=${options.spread}`], names);
  const crops = readCrops(options.crops ?? [], false, session);
  const rain = readRain(options.rain);
  const after = options.after === undefined ? good(undefined) : readFigure(options.after, '--after');
  if (!heaped.ok || !straight.ok || !spread.ok || !crops.ok || !rain.ok || !after.ok)
    return bad(...allOf(heaped, straight, spread, crops, rain, after));
  const [went] = spread.value;
  const input = check<HoldingBalanceInput>(holdingBalance.input, {
    heaped: heaped.value.map(
      ({ material, doubtful, amount }, i): Ingredient => ({
        ...stuffed(material, doubtful, holding),
        amount,
        line: `${material}-${i + 1}`,
      }),
    ),
    straight: straight.value.map(
      ({ material, doubtful, amount }): Dressing => ({
        ...stuffed(material, doubtful, holding),
        amount,
        ...(options.mulch === true && { placed: 'mulched' }),
        ...(typeof after.value === 'number' && { workedInAfter_days: after.value }),
      }),
    ),
    crops: crops.value,
    ...(went !== undefined && { spread: went.amount }),
    ...(rain.value !== undefined && { shelter: rain.value }),
    ...(session.settings.measures_L !== undefined && { ownSizes: session.settings.measures_L }),
  });
  return told(input, [], session);
}

function told(input: Outcome<HoldingBalanceInput>, more: readonly Saying[], session: Session): Outcome<Answer> {
  if (!input.ok) return input;
  const found = holdingBalance.run(input.value, { draws: createDraws() });
  if (!found.ok) return found;
  const { speaker, terminal } = session;
  const report = balanceOfYear(found.value);
  const lines = (sayings: readonly Saying[], mark = ''): string =>
    page(
      terminal.columns,
      ...sayings.map((said): [string, string] => [`${mark}${speaker.tell(said)}`, ' '.repeat(mark.length)]),
    );
  return good({
    value: { input: input.value, ...found.value },
    text: [
      lines([report.answer, report.act, ...report.finding]),
      lines([{ key: 'balance.head.heap' }]),
      lines(report.heap, '- '),
      lines([{ key: 'balance.head.beds' }]),
      lines(report.beds, '- '),
      lines([...more, ...report.notes]),
      cautionText(found.value.cautions, speaker, terminal.columns),
    ]
      .filter((block) => block !== '')
      .join('\n\n'),
  });
}

/** A year of the daybook. Problems: `number-unreadable`; `nothing-named` where nothing of it is written down. */
function ofYear(options: BedBalanceOptions, holding: Holding, session: Session): Outcome<Answer> {
  const { zone, speaker } = session;
  const season = readSeason(options.for, session);
  const rain = readRain(options.rain);
  if (!season.ok || !rain.ok) return bad(...allOf(season, rain));
  const { input, unknown, uncounted, ground } = yearOf(holding, { season: season.value, zone, speaker });
  if (input.heaped.length + input.straight.length === 0)
    return bad({ code: 'nothing-named', path: 'bed balance', found: '', wanted: '' });
  const more: readonly Saying[] = [
    { key: 'balance.year', places: { season: String(season.value) } },
    ...(unknown.length === 0 ? [] : [{ key: 'budget.left-out', places: { stuff: unknown } } as const]),
    ...ground,
    ...(uncounted ? [{ key: 'balance.uncounted' } as const] : []),
  ];
  const asked = {
    ...input,
    ...(rain.value !== undefined && { shelter: rain.value }),
    ...(session.settings.measures_L !== undefined && { ownSizes: session.settings.measures_L }),
  };
  return told(check<HoldingBalanceInput>(holdingBalance.input, asked), more, session);
}

function readRain(typed: string | undefined): Outcome<'sheltered' | 'open' | undefined> {
  return typed === undefined ? good(undefined) : readOneOf(typed, ['sheltered', 'open'] as const, '--rain');
}
