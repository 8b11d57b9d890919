import { type ColdReport, coldInput, coldReport, stuffed } from '@loamwright/advisor';
import { epoch_ms } from '@loamwright/daybook';
import {
  bad,
  check,
  createDraws,
  good,
  likely,
  type NotHeatingInput,
  notHeating,
  type Outcome,
  type Problem,
  type Quantity,
} from '@loamwright/science';
import type { Answer } from '../answer.ts';
import { readBook } from '../book.ts';
import { readIngredients } from '../grammar/ingredient.ts';
import { readMeasurement } from '../grammar/measurement.ts';
import { oneOf, readSeen } from '../grammar/seen.ts';
import { readPast } from '../grammar/when.ts';
import { namesOf } from '../holding.ts';
import type { Session } from '../session.ts';
import { subjectNamed } from '../subject.ts';
import { page } from '../text.ts';
import { cautionText } from './heap.ts';
import { heapSizeBeyond, readHeapSize } from './size.ts';

export interface WhyOptions {
  readonly size?: string | undefined;
  readonly squeeze?: string | undefined;
  readonly smell?: string | undefined;
  readonly reading?: string | undefined;
  readonly in?: readonly string[] | undefined;
  readonly built?: string | undefined;
  readonly turned?: string | undefined;
  readonly hottest?: string | undefined;
  readonly food?: string | undefined;
  readonly air?: string | undefined;
}

/** `loamwright why`: why a heap does not heat, from the daybook, from options, or from both; what is said goes first. */
export async function why(typed: string | undefined, options: WhyOptions, session: Session): Promise<Outcome<Answer>> {
  const book = await readBook(session);
  if (!book.ok) return book;
  const { holding } = book.value;
  const id = typed === undefined ? good(undefined) : subjectNamed(holding, 'heap', typed);
  if (!id.ok) return id;
  const heap = id.value === undefined ? undefined : holding.heaps.get(id.value);
  const names = namesOf(session, holding);
  const size = options.size === undefined ? good(undefined) : await readHeapSize(options.size, session);
  const ingredients = options.in === undefined ? good(undefined) : readIngredients(options.in, names);
  const told = readTold(options, session);
  if (!size.ok || !ingredients.ok || !told.ok) {
    return bad(...[size, ingredients, told].flatMap((one) => (one.ok ? [] : one.problems)));
  }
  const known = heap === undefined ? undefined : coldInput(heap, session.now().toISOString());
  const input: NotHeatingInput = {
    ...known,
    ...told.value,
    ...hottestOf(known, told.value),
    ...(size.value !== undefined && { size: size.value }),
    ...(ingredients.value !== undefined && {
      ingredients: ingredients.value.map(({ material, doubtful, amount }) => ({
        ...stuffed(material, doubtful, holding),
        amount,
      })),
    }),
    ...(session.settings.measures_L !== undefined && { ownSizes: session.settings.measures_L }),
  };
  const checked = check<NotHeatingInput>(notHeating.input, input);
  if (!checked.ok) return bad(...asTyped(checked.problems, input, options, session));
  const found = notHeating.run(input, { draws: createDraws() });
  if (!found.ok) return found;
  const text = whyText(coldReport(input, found.value, holding), session);
  return good({ value: { input, ...found.value }, text });
}

/** A reading that is told now may be the hottest there was; what was said to be the hottest stands. */
function hottestOf(known: NotHeatingInput | undefined, told: NotHeatingInput): Pick<NotHeatingInput, 'hottest_degC'> {
  const kept = known?.hottest_degC;
  if (told.hottest_degC !== undefined || told.temp_degC === undefined || kept === undefined) return {};
  return { hottest_degC: Math.max(likely(kept), likely(told.temp_degC)) };
}

/** What the calculation refuses, where it was typed and in the reader's units. */
function asTyped(
  problems: readonly Problem[],
  {
    size,
    temp_degC = Number.NaN,
    hottest_degC = Number.NaN,
    age_days = Number.NaN,
    sinceTurn_days = Number.NaN,
  }: NotHeatingInput,
  { size: typed }: WhyOptions,
  session: Session,
): readonly Problem[] {
  const { speaker } = session;
  const warm = (temp: Quantity): string => speaker.likely(temp, 'degC', 'temperature');
  const days = (count: number): string => speaker.say('why.days', { days: Math.round(count) });
  if (problems.some(({ path }) => path.startsWith('size')))
    return [heapSizeBeyond(typed ?? sizeWords(size, session), session)];
  return problems.map((one) => {
    if (one.path === 'hottest_degC' && one.code === 'out-of-bounds')
      return { code: 'hottest-below-reading', path: '--hottest', found: warm(hottest_degC), wanted: warm(temp_degC) };
    if (one.path === 'sinceTurn_days' && one.code === 'out-of-bounds')
      return { code: 'turned-before-built', path: '--turned', found: days(sinceTurn_days), wanted: days(age_days) };
    return { ...one, path: optionOf[one.path] ?? one.path };
  });
}

function sizeWords(size: NotHeatingInput['size'], { speaker }: Session): string {
  return size !== undefined && 'volume_m3' in size ? speaker.likely(size.volume_m3, 'm3', 'bulkVolume') : '';
}

const optionOf: Readonly<Record<string, string>> = {
  temp_degC: '--reading',
  hottest_degC: '--hottest',
  air_degC: '--air',
  age_days: '--built',
  sinceTurn_days: '--turned',
};

const MS_PER_DAY = 86_400_000;

/** What was said in options. All problems come back at once. */
function readTold(options: WhyOptions, session: Session): Outcome<NotHeatingInput> {
  const problems: Problem[] = [];
  const take = <Value>(read: Outcome<Value>): Value | undefined => {
    if (!read.ok) problems.push(...read.problems);
    return read.ok ? read.value : undefined;
  };
  const temperature = (text: string | undefined, path: string): number | undefined =>
    text === undefined ? undefined : take(readMeasurement(text, 'temperature', path, session.speaker.system))?.si;
  const daysSince = (text: string | undefined, path: string): number | undefined => {
    const when = text === undefined ? undefined : take(at(readPast(text, session.now(), session.zone), path));
    return when && Math.max(0, (session.now().getTime() - epoch_ms(when.happened)) / MS_PER_DAY);
  };
  const seen = take(readSeen({ squeeze: options.squeeze, smell: options.smell }, session.speaker.system));
  const all = {
    temp_degC: temperature(options.reading, '--reading'),
    hottest_degC: temperature(options.hottest, '--hottest'),
    air_degC: temperature(options.air, '--air'),
    age_days: daysSince(options.built, '--built'),
    sinceTurn_days: daysSince(options.turned, '--turned'),
    squeeze: seen?.squeeze,
    smell: seen?.smell,
  };
  const food = take(oneOf(options.food, ['yes', 'no', 'browns'], '--food'));
  const said = Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined));
  return problems.length > 0
    ? bad(...problems)
    : good({
        ...said,
        ...(food !== undefined && { freshFood: food === 'yes' }),
        ...(food === 'browns' && { brownsWhole: true }),
      });
}

/** The same, with its problems at the option that was typed. */
function at<Value>(read: Outcome<Value>, path: string): Outcome<Value> {
  return read.ok ? read : bad(...read.problems.map((problem) => ({ ...problem, path })));
}

function whyText(report: ColdReport, { speaker, terminal }: Session): string {
  const { columns } = terminal;
  const { tell } = speaker;
  const blocks = [
    page(columns, [tell(report.answer)]),
    page(columns, ...report.checks.map((check): [string, string] => [`- ${tell(check)}`, '  '])),
    page(columns, [tell(report.act)], ...report.why.map((said): [string] => [tell(said)])),
    page(columns, ...report.notes.map((said): [string] => [tell(said)])),
    report.evidence === null ? '' : page(columns, [tell(report.evidence)]),
    cautionText(report.cautions, speaker, columns),
  ];
  return blocks.filter((block) => block !== '').join('\n\n');
}
