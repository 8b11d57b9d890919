import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wrap } from './terminal.ts';
import { page } from './text.ts';

describe('wrapped text', () => {
  it('breaks at blanks, and sets later lines in', () => {
    expect(wrap('- nine buckets of straw', 12, '  ')).toBe('- nine\n  buckets of\n  straw');
    expect(page(80, ['one'], ['two'])).toBe('one\ntwo');
  });

  it('keeps every word in its order, in lines no longer than the columns unless one word is', () => {
    const words = fc.array(fc.stringMatching(/^[a-z]{1,30}$/u), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(words, fc.integer({ min: 10, max: 100 }), (list, columns) => {
        const wrapped = wrap(list.join(' '), columns);
        expect(wrapped.split(/\s/u)).toEqual(list);
        for (const line of wrapped.split('\n')) {
          expect(line.length <= columns || !line.includes(' ')).toBe(true);
        }
      }),
    );
  });
});
