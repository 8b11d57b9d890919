import type { Bodies, Entered, Heap, Point, Reading } from '@loamwright/daybook';
import { epoch_ms } from '@loamwright/daybook';
import { bad, good, likely, type Outcome, type Problem, type TypedReading } from '@loamwright/science';
import { enteredOf, type Measured, readMeasurement } from '../../grammar/measurement.ts';
import { oneOf, readSeen } from '../../grammar/seen.ts';
import type { WhenRead } from '../../grammar/when.ts';
import type { Session } from '../../session.ts';
import type { LogOptions } from './options.ts';

/** A reading as typed, ready to be written down. */
export interface ReadingRead {
  readonly body: Bodies['reading'];
  readonly entered: Readonly<Record<string, Entered>>;
  /** What the temperature is held against before it is believed; absent where none was read. */
  readonly typed?: TypedReading | undefined;
}

const points: readonly Point[] = ['core', 'middle', 'edge', 'top', 'bottom'];
const MS_PER_DAY = 86_400_000;

/**
 * Reads a temperature and whatever else was seen. All problems come back at once: `measurement-unreadable`,
 * `not-one-of`, `nothing-read`.
 */
export function readReading(
  temperature: string | undefined,
  options: LogOptions,
  heap: Heap,
  when: WhenRead,
  session: Session,
): Outcome<ReadingRead> {
  const { system } = session.speaker;
  const problems: Problem[] = [];
  const measured = (text: string | undefined, as: 'temperature' | 'depth', path: string): Measured | undefined => {
    if (text === undefined) return undefined;
    const read = readMeasurement(text, as, path, system);
    if (!read.ok) problems.push(...read.problems);
    return read.ok ? read.value : undefined;
  };
  const temp = measured(temperature, 'temperature', 'temperature');
  const depth = measured(options.depth, 'depth', '--depth');
  const air = measured(options.air, 'temperature', '--air');
  const where = oneOf(options.where, points, '--where');
  const saw = readSeen(options, system);
  problems.push(...[where, saw].flatMap((one) => (one.ok ? [] : one.problems)));
  const point = where.ok ? where.value : undefined;
  const { squeeze, smell, height } = saw.ok ? saw.value : {};
  const body: Reading = {
    ...(temp && { temp_degC: temp.si }),
    ...(point && { point }),
    ...(depth && { depth_m: depth.si }),
    ...(options.probe && { probe: options.probe }),
    ...(air && { ambient_degC: air.si }),
    ...(squeeze && { squeeze }),
    ...(smell && { smell }),
    ...(height && { height_m: height.si }),
    ...(options.note && { note: options.note }),
  };
  if (problems.length > 0) return bad(...problems);
  const all = { temp_degC: temp, depth_m: depth, ambient_degC: air, height_m: height };
  const entered = Object.fromEntries(
    Object.entries(all).flatMap(([name, one]) => (one === undefined ? [] : [[`/${name}`, enteredOf(one)]])),
  );
  return good({ body, entered, typed: temp && typedReading(temp, body, heap, when) });
}

/** What the reading is held against: the last one in the same place that was not doubted itself, and what was done since. */
function typedReading({ value, unit, unitTyped }: Measured, body: Reading, heap: Heap, when: WhenRead): TypedReading {
  const point = body.point ?? 'core';
  const before = heap.readings.filter(
    (told) =>
      told.entry.happened < when.happened &&
      told.body.temp_degC !== undefined &&
      told.body.doubted !== true &&
      (told.body.point ?? 'core') === point,
  );
  const last = before.at(-1);
  const since = last?.entry.happened ?? '';
  const works = ['heap-fed', 'turned', 'watered'];
  const air = body.ambient_degC;
  return {
    value,
    unit: unit === 'degF' ? 'degF' : 'degC',
    unitTyped,
    ...(last?.body.temp_degC !== undefined && {
      last_degC: likely(last.body.temp_degC),
      last_daysAgo: (epoch_ms(when.happened) - epoch_ms(since)) / MS_PER_DAY,
      workedSince: heap.acts.some(
        ({ kind, entry }) => works.includes(kind) && entry.happened > since && entry.happened <= when.happened,
      ),
    }),
    ...(air !== undefined && { air_degC: likely(air) }),
  };
}
