import type { Draft, Entry, JsonObject, Tip } from '../entry/entry.ts';
import { seal } from '../entry/seal.ts';
import { sumOf } from '../entry/sum.ts';

/** The holding of these tests: an invented garden. */
export const holding = 'quarry-lane';

/** A UUIDv7 with a readable number in it. */
export function idOf(number: number): string {
  return `019c0000-0000-7000-8000-${number.toString(16).padStart(12, '0')}`;
}

/** A note, as the simplest thing a person writes down. */
export function draft(number: number, over: Partial<Draft> = {}): Draft {
  return {
    id: idOf(number),
    holding,
    device: 'phone-of-ada',
    by: 'ada',
    happened: '2026-03-01T07:30:00.000Z',
    zone: 'Europe/London',
    precision: 'minute',
    written: '2026-03-01T07:31:00.000Z',
    kind: 'note',
    kv: 1,
    about: [],
    body: { text: `note ${number}` },
    ...over,
  };
}

/** Entries n = 1, 2, 3 … of one device, with ids from `first` on. */
export function chain(
  count: number,
  { first = 1, device = 'phone-of-ada', tip = null }: ChainOptions = {},
): readonly Entry[] {
  return seal(
    tip,
    Array.from({ length: count }, (_, i) => draft(first + i, { device })),
  );
}

interface ChainOptions {
  readonly first?: number;
  readonly device?: string;
  readonly tip?: Tip | null;
}

/** The same id with another content and therefore another sum. */
export function otherVersion(entry: Entry, body: JsonObject = { text: `another ${entry.n}` }): Entry {
  const { sum: _, ...rest } = entry;
  const changed = { ...rest, body };
  return { ...changed, sum: sumOf(changed) };
}

/** A value that the test needs to go on. */
export function must<Value>(value: Value | undefined | null): Value {
  if (value === undefined || value === null) throw new Error('the test expected a value here');
  return value;
}
