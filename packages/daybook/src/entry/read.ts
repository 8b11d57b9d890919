import { bad, check, good, type Outcome } from '@loamwright/science';
import { maxEntry_bytes } from '../limits.ts';
import { canonicalBytes } from './canonical.ts';
import type { Entry } from './entry.ts';
import { entrySchema, newerEntrySchema } from './header.ts';
import { plainJson, tooLarge } from './json.ts';
import { sha256Hex } from './sum.ts';

/**
 * Reads an entry that comes from outside (a file, another device, a disk): plain JSON, a valid
 * header, within the limits, and content that gives its sum. Never throws.
 *
 * The body of a kind is not judged here: an entry of an unknown kind, a newer version or with a
 * body that doesn't fit is kept and passed on, and the fold shows it as unread.
 *
 * Problems: `not-json`, `forbidden-key`, `too-deep`, `too-large`, `sum-mismatch`, and those of
 * the header's schema (`missing`, `wrong-type`, `out-of-bounds`, `unknown-field` …).
 */
export function readEntry(input: unknown): Outcome<Entry> {
  const plain = plainJson(input);
  if (!plain.ok) return plain;
  const checked = check(isNewer(plain.value) ? newerEntrySchema : entrySchema, plain.value);
  if (!checked.ok) return checked;
  // The sum is taken over what was handed in, not over the schema's copy of it.
  const { sum, ...rest } = plain.value as unknown as Entry;
  const bytes = canonicalBytes(rest);
  if (bytes.length > maxEntry_bytes) return bad(tooLarge(bytes.length));
  const recomputed = sha256Hex(bytes);
  if (recomputed !== sum) return bad({ code: 'sum-mismatch', path: 'sum', found: sum, wanted: recomputed });
  return good({ ...rest, sum });
}

function isNewer(value: unknown): boolean {
  return typeof value === 'object' && value !== null && 'v' in value && typeof value.v === 'number' && value.v >= 2;
}
