import { utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';

/**
 * Canonical JSON (RFC 8785): keys in the order of their UTF-16 code units, numbers as ECMAScript
 * writes them, no white space. Keys whose value is undefined are left out.
 *
 * The value is plain JSON as `plainJson` checks it.
 * @throws Error for a value that is no JSON at all: that was to be checked at the edge.
 */
export function canonical(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new TypeError('only JSON has a canonical form');
  return text;
}

/** Canonical JSON in UTF-8. */
export function canonicalBytes(value: unknown): Uint8Array {
  return utf8ToBytes(canonical(value));
}
