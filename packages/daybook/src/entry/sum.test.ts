import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { testWriter } from '../testing/writer.ts';
import { canonical } from './canonical.ts';
import { sha256Hex, sumOf } from './sum.ts';

const utf8 = (text: string): Uint8Array => new Uint8Array(Buffer.from(text, 'utf8'));

describe('SHA-256', () => {
  // FIPS 180-4; the messages and digests are those of NIST's example values for SHA-256 (one block, two blocks).
  it.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
  ])('of "%s" is the published digest', (message, digest) => {
    expect(sha256Hex(utf8(message))).toBe(digest);
  });

  it('agrees with OpenSSL on any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(sha256Hex(bytes)).toBe(createHash('sha256').update(bytes).digest('hex'));
      }),
      { seed: 180 },
    );
  });
});

describe('the sum of an entry', () => {
  const entry = testWriter().write('note', null, { text: 'steaming this morning' });

  it('is the SHA-256 of its canonical JSON without the sum, worked out here by OpenSSL', () => {
    const { sum, ...rest } = entry;
    expect(sum).toBe(createHash('sha256').update(canonical(rest), 'utf8').digest('hex'));
  });

  it('does not hang on the order of fields', () => {
    expect(sumOf(Object.fromEntries(Object.entries(entry).reverse()) as unknown as typeof entry)).toBe(entry.sum);
  });

  it('covers every field, also one of a newer header', () => {
    for (const field of Object.keys(entry)) {
      if (field === 'sum') continue;
      expect(sumOf({ ...entry, [field]: 'changed' }), field).not.toBe(entry.sum);
    }
    expect(sumOf({ ...entry, weather: 'frost' } as typeof entry)).not.toBe(entry.sum);
  });
});
