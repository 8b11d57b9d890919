import { fold } from '@loamwright/daybook';
import { testWriter } from '@loamwright/daybook/testing';
import { createDraws, likely, type PailCoverInput, pailCover } from '@loamwright/science';
import { describe, expect, it } from 'vitest';
import { coverPuts } from './cover-puts.ts';

const draws = createDraws();
const weighing = { holding: fold(testWriter().entries), draws };
const input: PailCoverInput = {
  pail: [{ material: 'kitchen-scraps', amount: { measure: 'pail', count: 1 } }],
  dry: [{ material: 'autumn-leaves', amount: { measure: 'leaf-bag-30gal', count: 3 } }],
};
const found = pailCover.run(input, { draws });
if (!found.ok) throw new Error(JSON.stringify(found.problems));
const cover = found.value;

describe('what covers a pail, as layers', () => {
  it('weighs as much as the answer says it does, and is marked as cover', () => {
    const puts = coverPuts(cover, input, () => false, weighing);
    if (!puts.ok) throw new Error(JSON.stringify(puts.problems));
    const [put] = puts.value;
    expect(puts.value).toHaveLength(1);
    expect(put).toMatchObject({ material: 'autumn-leaves', part: 'cover' });
    expect(put).not.toHaveProperty('from');
    // The same draws of the same figures: only the last digits of a sum may differ.
    expect(likely(put?.mass_kg ?? 0)).toBeCloseTo(cover.lay[0]?.wet_kg.p50 ?? Number.NaN, 6);
  });

  it('is taken from the store where it is said to be', () => {
    const puts = coverPuts(cover, input, (material) => material === 'autumn-leaves', weighing);
    expect(puts).toMatchObject({ ok: true, value: [{ from: { type: 'stock' } }] });
  });

  it('is none where nothing can be weighed', () => {
    const lay = cover.lay.map((line) => ({ ...line, material: 'moon-dust' }));
    const puts = coverPuts({ ...cover, lay }, input, () => false, weighing);
    expect(puts).toMatchObject({ ok: false, problems: [{ code: 'weigh-it', path: 'moon-dust' }] });
  });
});
