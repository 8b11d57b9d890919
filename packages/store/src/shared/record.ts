import { canonical, type Entry } from '@loamwright/daybook';

/** What a stored record turned out to be. */
export type StoredRecord = { readonly ok: true; readonly entry: Entry } | { readonly ok: false; readonly why: string };

const textFields = [
  'id',
  'holding',
  'device',
  'by',
  'happened',
  'zone',
  'precision',
  'written',
  'kind',
  'sum',
] as const;
const numberFields = ['v', 'n', 'kv'] as const;

/** The text an entry is kept as: its canonical JSON (RFC 8785), sum included. */
export function textOf(entry: Entry): string {
  return canonical(entry);
}

/** Reads the text of one record back. See {@link entryOf}. */
export function readRecord(text: string): StoredRecord {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    return { ok: false, why: error instanceof Error ? error.message : 'not JSON' };
  }
  return entryOf(value);
}

/**
 * Whether a value read from the medium is an entry at all. Only the types of the header's fields
 * are looked at: an entry whose content was changed afterwards is still readable (rule K22), and
 * it is `check` that works out its sum.
 */
export function entryOf(value: unknown): StoredRecord {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return { ok: false, why: 'not a JSON object' };
  const record = value as Readonly<Record<string, unknown>>;
  const text = textFields.find((field) => typeof record[field] !== 'string');
  if (text !== undefined) return { ok: false, why: `${text} is not text` };
  const number = numberFields.find((field) => !Number.isSafeInteger(record[field]));
  if (number !== undefined) return { ok: false, why: `${number} is not a whole number` };
  if (record['prev'] !== null && typeof record['prev'] !== 'string')
    return { ok: false, why: 'prev is neither text nor null' };
  if (!Array.isArray(record['about'])) return { ok: false, why: 'about is not a list' };
  if (typeof record['body'] !== 'object' || record['body'] === null || Array.isArray(record['body']))
    return { ok: false, why: 'body is not an object' };
  return { ok: true, entry: value as Entry };
}
