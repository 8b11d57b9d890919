import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { canonicalBytes } from './canonical.ts';
import type { Entry } from './entry.ts';

/** SHA-256 (FIPS 180-4) as lower-case hex. */
export function sha256Hex(bytes: Uint8Array): string {
  return bytesToHex(sha256(bytes));
}

/** An entry without its sum, or with a sum that is left out of the reckoning. */
export type Summable = Omit<Entry, 'sum'> & { readonly sum?: string | undefined };

/**
 * The sum of an entry: SHA-256 of the canonical JSON (RFC 8785) of all its fields but `sum`,
 * those of a newer header included.
 */
export function sumOf(entry: Summable): string {
  const { sum: _itself, ...rest } = entry;
  return sha256Hex(canonicalBytes(rest));
}
