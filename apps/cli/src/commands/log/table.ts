import { epoch_ms, type Heap, type Holding, localDate, within_ms } from '@loamwright/daybook';
import { bad, good, likely, type Outcome } from '@loamwright/science';
import { unitTable } from '@loamwright/units';
import type { Saying } from '@loamwright/words';
import type { Answer } from '../../answer.ts';
import type { Jotting } from '../../book.ts';
import { tellDay, tellInstant } from '../../dates.ts';
import type { Stamp } from '../../grammar/stamp.ts';
import type { TableReading, TemperatureTable } from '../../grammar/temperature-table.ts';
import { recorded } from '../../recorded.ts';
import type { Session } from '../../session.ts';
import { readTemperatureFile } from '../../temperature-file.ts';
import { page } from '../../text.ts';
import type { LogOptions } from './options.ts';

/** What is told in one go; a table with more wants a summer of its own. */
const MOST_ENTRIES = 3000;

interface Ground {
  readonly holding: Holding;
  readonly session: Session;
}

/**
 * `loamwright log HEAP --csv FILE`: a table of readings and turnings written down for a heap, all or none. What is older than the day on
 * which the heap was begun is another's and left out; what stands in the daybook already is not written twice. Problems: those of the table; `csv-and-typed`, `csv-too-many`.
 */
export async function logTable(
  id: string,
  typed: readonly string[],
  options: LogOptions,
  { holding, session }: Ground,
): Promise<Outcome<Answer>> {
  const doubled = typed.length > 0 ? 'log' : options.when === undefined ? undefined : '--when';
  if (doubled !== undefined) return bad({ code: 'csv-and-typed', path: doubled, found: '', wanted: '' });
  const path = options.csv ?? '';
  const heap = holding.heaps.get(id);
  if (heap === undefined) return bad({ code: 'no-such-heap', path: '', found: id, wanted: '' });
  const table = await readTemperatureFile(path, options, session);
  if (!table.ok) return table;
  const about: Jotting['about'] = [{ type: 'heap', id }];
  const begun = firstDay(heap, session.zone);
  const since = {
    readings: table.value.readings.filter(({ stamp }) => stamp.day >= begun),
    turned: table.value.turned.filter(({ day }) => day >= begun),
  };
  const readings = since.readings.filter((one) => !isRead(one, heap));
  const turned = since.turned.filter((one) => !isTurned(one, heap));
  const before = lines(table.value) - lines(since);
  const there = lines(since) - readings.length - turned.length;
  const jottings: readonly Jotting[] = [
    ...readings.map((one) => readingOf(one, about, options)),
    ...turned.map((when): Jotting => ({ kind: 'turned', body: {}, about, when })),
  ].toSorted((a, b) => (a.when.happened < b.when.happened ? -1 : 1));
  if (jottings.length > MOST_ENTRIES)
    return bad({ code: 'csv-too-many', path, found: String(jottings.length), wanted: String(MOST_ENTRIES) });
  const notes: readonly Saying[] = [
    ...table.value.notes,
    ...(before === 0
      ? []
      : [
          {
            key: 'cli.csv.before',
            places: {
              count: before,
              heap: heap.name,
              day: tellInstant(heap.begun, session.zone, 'day', session.speaker.locale),
            },
          } as const,
        ]),
    ...(there === 0 ? [] : [{ key: 'cli.csv.there', places: { count: there } } as const]),
  ];
  const [first, last] = [jottings[0], jottings.at(-1)];
  if (first === undefined || last === undefined) return good(nothingNew(notes, session));
  const day = ({ when }: Jotting): string => tellDay(when.happened, session.zone, session.speaker.locale);
  const told: Saying = {
    key: 'cli.csv.written',
    places: {
      heap: heap.name,
      readings: readings.length,
      turns: turned.length,
      from: day(first),
      to: day(last),
    },
  };
  return recorded(session, jottings, { heap: id, told: [told, ...notes] });
}

/** The day on which a heap was begun at the earliest, as finely as that was told. */
function firstDay({ begun, built }: Heap, zone: string): string {
  const slack_ms = built?.entry.precision === 'week' ? within_ms.week : 0;
  const earliest = new Date(epoch_ms(begun) - slack_ms).toISOString();
  return localDate(earliest, zone) ?? earliest;
}

/** How much a table has to say. */
function lines({ readings, turned }: Pick<TemperatureTable, 'readings' | 'turned'>): number {
  return readings.length + turned.length;
}

function readingOf(
  { stamp, temp, point, doubted }: TableReading,
  about: Jotting['about'],
  { probe }: LogOptions,
): Jotting {
  return {
    kind: 'reading',
    body: {
      temp_degC: temp.si,
      ...(point !== undefined && { point }),
      ...(probe !== undefined && { probe }),
      ...(doubted === true && { doubted }),
    },
    about,
    when: stamp,
    entered: { '/temp_degC': { amount: temp.value, unit: unitTable[temp.unit].symbol } },
  };
}

/** A thousandth of a degree: what is written in °F comes back a last digit off. */
const SAME_DEGC = 1e-3;

function isRead({ stamp, temp, point }: TableReading, { readings }: Heap): boolean {
  return readings.some(
    ({ entry, body }) =>
      entry.happened === stamp.happened &&
      body.point === point &&
      body.temp_degC !== undefined &&
      Math.abs(likely(body.temp_degC) - temp.si) < SAME_DEGC,
  );
}

function isTurned({ happened }: Stamp, { acts }: Heap): boolean {
  return acts.some(({ kind, entry }) => kind === 'turned' && entry.happened === happened);
}

function nothingNew(notes: readonly Saying[], { speaker, terminal }: Session): Answer {
  const said: readonly Saying[] = [{ key: 'cli.log.left' }, ...notes];
  return { value: { entries: [] }, text: page(terminal.columns, ...said.map((one): [string] => [speaker.tell(one)])) };
}
