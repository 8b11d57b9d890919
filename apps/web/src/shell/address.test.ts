import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRoute, to, writeRoute } from './address.ts';

describe('the address of a page', () => {
  it('reads back what was written, whatever the names are', () => {
    const piece = fc.string({ minLength: 1, unit: 'grapheme' });
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 4 }), fc.option(piece, { nil: null }), (path, sheet) => {
        expect(readRoute(writeRoute({ path, sheet }))).toEqual({ path, sheet });
      }),
    );
  });

  it('is the first page where nothing stands after the #', () => {
    for (const hash of ['', '#', '#/']) expect(readRoute(hash)).toEqual({ path: [], sheet: null });
  });

  it('keeps a slash in a name apart from the slash between names', () => {
    expect(to('heap', 'a/b')).toBe('#/heap/a%2Fb');
  });

  it('takes a broken escape as it stands, and never throws', () => {
    expect(readRoute('#/heap/%E0%A4%A')).toEqual({ path: ['heap', '%E0%A4%A'], sheet: null });
  });
});
