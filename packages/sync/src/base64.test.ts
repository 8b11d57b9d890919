import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { base64Length, fromBase64, toBase64 } from './base64.ts';

const ascii = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

describe('base64', () => {
  // RFC 4648 section 10, test vectors.
  test.each([
    ['', ''],
    ['f', 'Zg=='],
    ['fo', 'Zm8='],
    ['foo', 'Zm9v'],
    ['foob', 'Zm9vYg=='],
    ['fooba', 'Zm9vYmE='],
    ['foobar', 'Zm9vYmFy'],
  ])('"%s" is "%s"', (plain, coded) => {
    expect(toBase64(ascii(plain))).toBe(coded);
    expect(fromBase64(coded)).toEqual(ascii(plain));
  });

  test('agrees with Node’s own converter, both ways', () => {
    void fc.assert(
      fc.property(fc.uint8Array({ maxLength: 10_000, size: 'max' }), (bytes) => {
        const coded = toBase64(bytes);
        expect(coded).toBe(Buffer.from(bytes).toString('base64'));
        expect(coded.length).toBe(base64Length(bytes.length));
        expect(Buffer.from(fromBase64(coded) ?? []).equals(bytes)).toBe(true);
      }),
      { numRuns: 60, seed: 7 },
    );
  });

  test.each([
    'Zg=',
    'Zg',
    'Zg==\n',
    'Z',
    '=',
    '====',
    'Zm9v Zm9v',
    'Zm9-',
    'Zm_v',
    'Zg==Zg==',
    'Zh==',
    'Zm9=',
    'Zm9v🌱🌱',
  ])('"%s" is none', (text) => expect(fromBase64(text)).toBeNull());
});
