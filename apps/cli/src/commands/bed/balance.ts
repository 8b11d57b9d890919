import { balanceOfYear, stuffed } from '@loamwright/advisor';
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
import { readBook } from '../../book.ts';
import { readIngredients } from '../../grammar/ingredient.ts';
import { namesOf } from '../../holding.ts';
import type { Session } from '../../session.ts';
import { withSizes } from '../../sizes.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';
import { readCrops } from './read.ts';

export interface BedBalanceOptions {
  readonly straight?: readonly string[] | undefined;
  readonly spread?: string | undefined;
  readonly crops?: readonly string[] | undefined;
  readonly rain?: string | undefined;
  readonly after?: string | undefined;
  readonly mulch?: boolean | undefined;
  readonly size?: readonly string[] | undefined;
}

/** `loamwright bed balance`: a year from scrap to crop, what is lost on the way and what is left over. */
export async function bedBalance(
  typed: readonly string[],
  options: BedBalanceOptions,
  before: Session,
): Promise<Outcome<Answer>> {
  const book = await readBook(before);
  if (!book.ok) return book;
  const { holding } = book.value;
  const sized = withSizes(options.size ?? [], namesOf(before, holding), before);
  if (!sized.ok) return sized;
  const session = sized.value;
  const names = namesOf(session, holding);
  const heaped = readIngredients(typed, names);
  const straight = readIngredients(options.straight ?? [], names);
  const spread = readIngredients(options.spread === undefined ? [] : [`compost=${options.spread}`], names);
  const crops = readCrops(options.crops ?? [], false, session);
  const rain =
    options.rain === undefined ? good(undefined) : readOneOf(options.rain, ['sheltered', 'open'] as const, '--rain');
  const after = options.after === undefined ? good(undefined) : readFigure(options.after, '--after');
  if (!heaped.ok || !straight.ok || !spread.ok || !crops.ok || !rain.ok || !after.ok)
    return bad(...allOf(heaped, straight, spread, crops, rain, after));
  if (heaped.value.length + straight.value.length === 0)
    return bad({ code: 'nothing-named', path: 'bed balance', found: '', wanted: '' });
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
      lines(report.notes),
      cautionText(found.value.cautions, speaker, terminal.columns),
    ]
      .filter((block) => block !== '')
      .join('\n\n'),
  });
}
