import { describe, expect, it } from 'vitest';
import { differences } from './pages.mjs';

describe('generated pages', () => {
  it('are told when one is missing, stale or orphaned', () => {
    const wanted = new Map([
      ['a.md', 'a'],
      ['b.md', 'b'],
      ['c.md', 'c'],
    ]);
    const found = new Map([
      ['a.md', 'a'],
      ['b.md', 'old'],
      ['d.md', 'd'],
    ]);
    expect(differences(wanted, found)).toEqual([
      { name: 'b.md', what: 'stale' },
      { name: 'c.md', what: 'missing' },
      { name: 'd.md', what: 'orphaned' },
    ]);
    expect(differences(wanted, wanted)).toEqual([]);
  });
});
