/** Any value that JSON can carry. */
export type JsonValue = string | number | boolean | null | readonly JsonValue[] | { readonly [key: string]: JsonValue };

/** A JSON object: the body of an entry, before its kind has been read. */
export interface JsonObject {
  readonly [key: string]: JsonValue;
}

/** What an entry is about: a heap, a bed, a bay, a material … and its id. */
export interface About {
  /** Kebab-case type of the subject, such as `heap`. */
  readonly type: string;
  /** Id of the subject: lower-case letters, digits and hyphens, at most 64. */
  readonly id: string;
}

/** How exactly the moment is known: `day` means "some time that day, in `zone`". */
export type Precision = 'minute' | 'hour' | 'day' | 'week';

/** An amount as the person gave it: `{ amount: 9, unit: 'bucket' }`, or only words: `{ words: 'a lot' }`. */
export interface Entered {
  readonly amount?: number | undefined;
  readonly unit?: string | undefined;
  readonly words?: string | undefined;
}

/**
 * One immutable line of the daybook, header version 1.
 *
 * Instants are UTC with three decimals (`2026-03-01T07:30:00.000Z`), so their order as
 * text is their order in time. Field order carries no meaning: the sum is taken over
 * canonical JSON (RFC 8785).
 */
export interface Entry {
  /** Version of the header. A newer header keeps every field named here and may add more. */
  readonly v: number;
  /** UUIDv7 (RFC 9562), lower case. */
  readonly id: string;
  /** The holding it belongs to. */
  readonly holding: string;
  /** The device that wrote it, with `n`, the device's own running number 1, 2, 3 … */
  readonly device: string;
  readonly n: number;
  /** The person who wrote it. */
  readonly by: string;
  /** When it happened in the garden (UTC instant), the IANA zone of the garden, and how exactly that is known. */
  readonly happened: string;
  readonly zone: string;
  readonly precision: Precision;
  /** The device's clock when it was written (UTC instant). It may be wrong; it never refuses an entry. */
  readonly written: string;
  /** Kind of the entry (kebab-case) and the version of its body. */
  readonly kind: string;
  readonly kv: number;
  readonly about: readonly About[];
  /** The facts, in SI. */
  readonly body: JsonObject;
  /** Amounts as the person gave them, by JSON Pointer (RFC 6901) into `body`: `/temp_degC` → 148 °F. */
  readonly entered?: { readonly [pointer: string]: Entered } | undefined;
  /** Id of the entry that this one corrects. */
  readonly amends?: string | undefined;
  /** Id of the entry that this one takes back. */
  readonly withdraws?: string | undefined;
  /** Sum of this device's entry n − 1; null for n = 1. */
  readonly prev: string | null;
  /** SHA-256 (hex) of the canonical JSON of this entry without `sum`. */
  readonly sum: string;
}

/** An entry before the device's chain has numbered and sealed it. */
export type Draft = Omit<Entry, 'v' | 'n' | 'prev' | 'sum'>;

/** Last entry of a device: the next one takes `n + 1` and has `sum` as its `prev`. */
export interface Tip {
  readonly n: number;
  readonly sum: string;
}
