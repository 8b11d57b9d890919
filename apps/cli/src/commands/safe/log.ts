import {
  heapLog,
  placeBroken,
  type SanitationReport,
  type SkinFound,
  sanitationReport,
  skinAcross,
  widthOfHeap,
} from '@loamwright/advisor';
import { localDate } from '@loamwright/daybook';
import {
  bad,
  check,
  createDraws,
  type Day,
  daysAfter,
  good,
  heapMethods,
  isLoggable,
  type LogPoint,
  type LogReading,
  type Outcome,
  type Quantity,
  type RuleId,
  ruleIds,
  type SanitationInput,
  type SanitationLog,
  sanitationCheck,
} from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import type { Answer } from '../../answer.ts';
import { allOf, readFigure, readOneOf } from '../../blend.ts';
import { readBook } from '../../book.ts';
import { readMeasurement } from '../../grammar/measurement.ts';
import { readWhen } from '../../grammar/when.ts';
import type { Session } from '../../session.ts';
import { subjectNamed } from '../../subject.ts';
import { readTemperatureFile, type TableOptions } from '../../temperature-file.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';

export interface SafeLogOptions extends TableOptions {
  readonly from?: string | undefined;
  readonly turned?: string | undefined;
  readonly method?: string | undefined;
  readonly ratio?: string | undefined;
  readonly moisture?: string | undefined;
  readonly plantsOnly?: boolean | undefined;
  readonly allThrough?: boolean | undefined;
  readonly stillFed?: boolean | undefined;
  readonly cured?: string | undefined;
  readonly edges?: string | undefined;
  readonly wide?: string | undefined;
  readonly steps?: string | undefined;
  readonly rules?: string | undefined;
}

/** `loamwright safe log`: what the rules say of readings that are typed, a day each, or stand in a table. */
export async function safeLog(
  typed: readonly string[],
  options: SafeLogOptions,
  session: Session,
): Promise<Outcome<Answer>> {
  if (options.csv === undefined) {
    const readings = splitList(typed);
    if (readings.length === 0) return bad({ code: 'nothing-named', path: 'safe log', found: '', wanted: '' });
    const from = readFirstDay(options.from, session);
    if (!from.ok) return from;
    const first = from.value ?? daysAfter(today(session), 1 - readings.length);
    const inside = readTemperatures(readings, { first, options }, session);
    return inside.ok ? ofReadings({ first, turned: [], ...inside.value }, options, session) : inside;
  }
  const doubled = typed.length > 0 ? 'readings' : options.from === undefined ? undefined : '--from';
  if (doubled !== undefined) return bad({ code: 'csv-and-typed', path: doubled, found: '', wanted: '' });
  const table = await readTemperatureFile(options.csv, options, session);
  if (!table.ok) return table;
  const { readings, turned, notes } = table.value;
  const [one] = readings;
  if (one === undefined) throw new RangeError('a table has readings');
  const logged = readings
    .filter(({ doubted }) => doubted !== true)
    .map(({ stamp, temp, point }) => ({
      day: stamp.day,
      temp_degC: temp.si,
      ...(point !== undefined && { point }),
    }));
  const turns = [...new Set(turned.map(({ day }) => day))];
  return ofReadings({ first: one.stamp.day, readings: logged, turned: turns, notes }, options, session);
}

interface Readings {
  /** The day from which days are counted. */
  readonly first: Day;
  readonly readings: readonly LogReading[];
  readonly turned: readonly Day[];
  readonly notes: readonly Saying[];
}

function ofReadings(
  { first, readings, turned: seen, notes }: Readings,
  options: SafeLogOptions,
  session: Session,
): Outcome<Answer> {
  const method = readOneOf(options.method ?? 'turned', heapMethods, '--method');
  const ratio = readOptional(options.ratio, '--ratio');
  const moisture = readOptional(options.moisture, '--moisture');
  const rules = readRules(options.rules);
  const cured = readCured(options.cured, session);
  if (!method.ok || !ratio.ok || !moisture.ok || !rules.ok || !cured.ok)
    return bad(...allOf(method, ratio, moisture, rules, cured));
  const edges = readTemperatures(splitList([options.edges ?? '']), { first, point: 'edge', options }, session);
  const turned = readTurnings(options.turned, first, session);
  if (!edges.ok || !turned.ok) return bad(...allOf(edges, turned));
  const log: SanitationLog = {
    method: method.value,
    readings: [...readings, ...edges.value.readings],
    turned: [...seen, ...turned.value],
    animalMatter: options.plantsOnly !== true,
    ...(options.stillFed === true && { stillFed: true }),
    ...(options.allThrough === true && { allMaterial: true }),
    ...(ratio.value !== undefined && { carbonToNitrogen: ratio.value }),
    ...(moisture.value !== undefined && { moisture_pctWet: moisture.value }),
    ...(cured.value !== undefined && { curing: { from_day: first, ...cured.value } }),
  };
  const skin = skinAsked(options, log.turned.length, undefined, session);
  return skin.ok
    ? told(log, { rules: rules.value, notes: [...notes, ...edges.value.notes] }, skin.value, session)
    : skin;
}

/** `loamwright safe heap`: what the rules say of a heap of the daybook. */
export async function safeHeap(name: string, options: SafeLogOptions, session: Session): Promise<Outcome<Answer>> {
  const book = await readBook(session);
  if (!book.ok) return book;
  const { holding } = book.value;
  const id = subjectNamed(holding, 'heap', name);
  if (!id.ok) return id;
  const heap = holding.heaps.get(id.value);
  if (heap === undefined) return bad({ code: 'no-such-heap', path: 'heap', found: name, wanted: '' });
  const method = options.method === undefined ? good(undefined) : readOneOf(options.method, heapMethods, '--method');
  const ratio = readOptional(options.ratio, '--ratio');
  const moisture = readOptional(options.moisture, '--moisture');
  const cured = readCured(options.cured, session);
  const rules = readRules(options.rules);
  if (!method.ok || !ratio.ok || !moisture.ok || !cured.ok || !rules.ok)
    return bad(...allOf(method, ratio, moisture, cured, rules));
  const now = session.now().toISOString();
  const { system } = session.speaker;
  const log = heapLog(holding, heap, now, method.value);
  const place = placeBroken(heap, holding, { now, draws: createDraws(), method: method.value, system });
  const skin = skinAsked(options, log.turned.length, widthOfHeap(holding, heap), session);
  if (!skin.ok) return skin;
  return told(
    {
      ...log,
      ...(options.plantsOnly === true && { animalMatter: false }),
      ...(options.allThrough === true && { allMaterial: true }),
      ...(options.stillFed === true && { stillFed: true }),
      ...(ratio.value !== undefined && { carbonToNitrogen: ratio.value }),
      ...(moisture.value !== undefined && { moisture_pctWet: moisture.value }),
      ...(cured.value !== undefined && {
        curing: { from_day: log.readings.at(-1)?.day ?? today(session), ...cured.value },
      }),
    },
    { rules: rules.value, notes: [], place },
    skin.value,
    session,
  );
}

/** What is asked of a log, and what is told beside it. */
interface Asked {
  readonly rules: readonly RuleId[] | undefined;
  readonly notes: readonly Saying[];
  /** The clauses of the place that the heap breaks: they come first. */
  readonly place?: Saying | null;
}

function told(
  log: SanitationLog,
  { rules, notes, place = null }: Asked,
  skin: SkinFound | null,
  session: Session,
): Outcome<Answer> {
  const input = check<SanitationInput>(sanitationCheck.input, { log, ...(rules !== undefined && { rules }) });
  if (!input.ok) return input;
  const found = sanitationCheck.run(input.value, { draws: createDraws() });
  if (!found.ok) return found;
  const report = sanitationReport(log, found.value, skin, today(session));
  return good({
    value: {
      input: input.value,
      ...found.value,
      ...(skin !== null && { coldSkin: skin }),
      ...(place !== null && { place: session.speaker.tell(place) }),
    },
    text: [
      ...(place === null ? [] : [page(session.terminal.columns, [session.speaker.tell(place)])]),
      reportText({ ...report, notes: [...report.notes, ...notes] }, session),
    ].join('\n\n'),
  });
}

function reportText({ answer, counts, rules, notes, cautions }: SanitationReport, session: Session): string {
  const { speaker, terminal } = session;
  const { columns } = terminal;
  return [
    page(columns, [speaker.tell(answer)]),
    page(columns, [speaker.tell(counts)]),
    page(columns, ...rules.map((line): [string, string] => [`- ${speaker.tell(line)}`, '  '])),
    page(columns, ...notes.map((note): [string] => [speaker.tell(note)])),
    cautionText(cautions, speaker, columns),
  ]
    .filter((block) => block !== '')
    .join('\n\n');
}

/** The cold skin of a heap of the width that was typed or, where none was, of that which is known. */
function skinAsked(
  { wide, steps }: SafeLogOptions,
  turns: number,
  known_m: number | undefined,
  { speaker }: Session,
): Outcome<SkinFound | null> {
  const width = wide === undefined ? good(undefined) : readMeasurement(wide, 'length', '--wide', speaker.system);
  const wanted = readSteps(steps);
  if (!width.ok || !wanted.ok) return bad(...allOf(width, wanted));
  const width_m = width.value?.si ?? known_m;
  if (width_m === undefined)
    return steps === undefined ? good(null) : bad({ code: 'missing', path: '--wide', found: '', wanted: '1m' });
  const skin = skinAcross({ width_m, turns, want_logs: wanted.value }, { draws: createDraws() });
  if (skin.ok) return skin;
  if (wide === undefined) return good(null);
  return bad({ code: 'measurement-unreadable', path: '--wide', found: wide.slice(0, 40), wanted: '20cm … 40m' });
}

const MOST_STEPS = 7;

/** Whole tenfold steps. Problem: `out-of-bounds` of anything else. */
function readSteps(typed: string | undefined): Outcome<number | undefined> {
  if (typed === undefined) return good(undefined);
  const read = readFigure(typed, '--steps');
  const steps = read.ok ? read.value : undefined;
  return typeof steps === 'number' && Number.isInteger(steps) && steps >= 1 && steps <= MOST_STEPS
    ? good(steps)
    : bad({ code: 'out-of-bounds', path: '--steps', found: typed.slice(0, 40), wanted: `1, 2, 3 … ${MOST_STEPS}` });
}

/** Blanks and commas part what is typed; decimal commas are left to `148,5F` with its unit. */
function splitList(typed: readonly string[]): readonly string[] {
  return typed.flatMap((one) => one.split(/[\s;]+|,\s/u)).filter((one) => one !== '');
}

interface TypedOn {
  /** The day of the first of them. */
  readonly first: Day;
  readonly point?: LogPoint;
  readonly options: SafeLogOptions;
}

/** One reading a day from a day on; `-` is a day without one. What no heap has is asked about, or doubted and left out. */
function readTemperatures(
  typed: readonly string[],
  { first, point, options }: TypedOn,
  { speaker }: Session,
): Outcome<Pick<Readings, 'readings' | 'notes'>> {
  let doubted = 0;
  const read = typed.map((one, i) => {
    if (one === '-') return good([]);
    const temp = readMeasurement(
      one,
      'temperature',
      point === undefined ? `reading ${i + 1}` : '--edges',
      speaker.system,
    );
    if (!temp.ok) return temp;
    if (!isLoggable(temp.value.si)) {
      if (options.asTyped !== true) return unlikely(one, i);
      doubted += 1;
      return good([]);
    }
    return good([{ day: daysAfter(first, i), temp_degC: temp.value.si, ...(point !== undefined && { point }) }]);
  });
  const problems = allOf(...read);
  return problems.length > 0
    ? bad(...problems.slice(0, MOST_PROBLEMS))
    : good({
        readings: read.flatMap((one) => (one.ok ? one.value : [])),
        notes: doubted === 0 ? [] : [{ key: 'cli.csv.doubted', places: { count: doubted } }],
      });
}

/** No heap has it: a slip of the pen, or the wrong unit. */
function unlikely(typed: string, i: number): Outcome<never> {
  return bad({ code: 'reading-no-heap', path: `reading ${i + 1}`, found: typed.slice(0, 40), wanted: '' });
}

const MOST_PROBLEMS = 10;
const MOST_DAYS = 20_000;

/** Days of turnings: `5,8,11` counts from the first reading, `2026-03-05` is a date. */
function readTurnings(typed: string | undefined, first: Day, session: Session): Outcome<readonly Day[]> {
  if (typed === undefined) return good([]);
  const read = typed
    .split(/[\s,;]+/u)
    .filter((one) => one !== '')
    .map((one): Outcome<Day> => {
      if (/^\d{1,5}$/u.test(one) && Number(one) >= 1 && Number(one) <= MOST_DAYS)
        return good(daysAfter(first, Number(one) - 1));
      const day = readDayAt(one, '--turned', session);
      return day;
    });
  const problems = allOf(...read);
  return problems.length > 0
    ? bad(...problems.slice(0, MOST_PROBLEMS))
    : good(read.flatMap((one) => (one.ok ? [one.value] : [])));
}

function readDayAt(typed: string, path: string, { now, zone }: Session): Outcome<Day> {
  const read = readWhen(typed, now(), zone);
  if (!read.ok) return bad(...read.problems.map((one) => ({ ...one, path })));
  return good(localDate(read.value.happened, zone) ?? read.value.happened.slice(0, 10));
}

function readFirstDay(typed: string | undefined, session: Session): Outcome<Day | undefined> {
  return typed === undefined ? good(undefined) : readDayAt(typed, '--from', session);
}

function today({ now, zone }: Session): Day {
  const instant = now().toISOString();
  return localDate(instant, zone) ?? instant.slice(0, 10);
}

function readOptional(typed: string | undefined, path: string): Outcome<Quantity | undefined> {
  return typed === undefined ? good(undefined) : readFigure(typed, path);
}

/** `45C` is the warmest it was while it cured; it counts as cured to the air only where that is said: `cool`. */
function readCured(
  typed: string | undefined,
  { speaker }: Session,
): Outcome<{ warmest_degC?: number; asWarmAsAir?: boolean } | undefined> {
  if (typed === undefined) return good(undefined);
  const words = typed
    .trim()
    .toLowerCase()
    .split(/[\s,]+/u);
  const cool = words.includes('cool');
  const warm = words.includes('warm');
  const [figure] = words.filter((word) => /\d/u.test(word));
  const temp =
    figure === undefined ? good(undefined) : readMeasurement(figure, 'temperature', '--cured', speaker.system);
  if (!temp.ok) return temp;
  if (!cool && !warm && temp.value === undefined)
    return bad({ code: 'not-one-of', path: '--cured', found: typed.slice(0, 40), wanted: 'cool, warm, 45C cool' });
  return good({
    ...(temp.value !== undefined && { warmest_degC: temp.value.si }),
    ...((cool || warm) && { asWarmAsAir: cool }),
  });
}

function readRules(typed: string | undefined): Outcome<readonly RuleId[] | undefined> {
  if (typed === undefined) return good(undefined);
  const read = typed.split(',').map((one) => {
    const plain = one.trim().toLowerCase();
    const found = ruleIds.filter((id) => id === plain || id.startsWith(`${plain}-`));
    return found.length > 0
      ? good(found)
      : bad({ code: 'not-one-of', path: '--rules', found: one.slice(0, 40), wanted: ruleIds.join(', ') });
  });
  const problems = allOf(...read);
  return problems.length > 0 ? bad(...problems) : good([...new Set(read.flatMap((one) => (one.ok ? one.value : [])))]);
}
