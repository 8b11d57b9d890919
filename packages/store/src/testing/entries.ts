import {
  canonicalBytes,
  type Draft,
  type Entry,
  type JsonObject,
  seal,
  sha256Hex,
  sumOf,
  type Tip,
} from '@loamwright/daybook';

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

/** An entry as a later version of the program may write it: a newer header with a field unknown here, an unknown kind. */
export function fromTheFuture(number: number, device = 'phone-of-ada'): Entry {
  const header = {
    ...draft(number, {
      device,
      kind: 'moon-phase',
      kv: 9,
      body: { phase: 0.25, of: ['ø', '\u0000', '🌒', -0.5e-300] },
    }),
  };
  const unsealed = { ...header, v: 2, n: 1, prev: null, weather: { rain_mm: 3.5 } };
  return { ...unsealed, sum: sha256Hex(canonicalBytes(unsealed)) };
}

/** Bytes with their name. */
export function bytesOf(text: string): { readonly hash: string; readonly bytes: Uint8Array } {
  const bytes = new TextEncoder().encode(text);
  return { hash: sha256Hex(bytes), bytes };
}

export function must<Value>(value: Value | undefined | null): Value {
  if (value === undefined || value === null) throw new Error('the test expected a value here');
  return value;
}
