import { fold } from '@loamwright/daybook';
import { testWriter } from '@loamwright/daybook/testing';
import { createDraws, isEstimate, likely } from '@loamwright/science';
import { describe, expect, it } from 'vitest';
import { isInStore, isRaw, layerPut, weighed } from './put.ts';

const writer = testWriter();
writer.write('material-described', 'our-litter', { name: 'Litter of the goats', like: 'goat-bedding' });
writer.write('material-described', 'our-dust', { name: 'Dust nobody knows' });
writer.write('material-described', 'washed-peel', { name: 'Washed peel', like: 'kitchen-scraps', raw: false });
writer.write('material-measured', 'straw', { moisture_pctWet: 30 });
writer.write('material-measured', 'straw', { density_kgPerM3AsIs: 60 });
writer.write('stock-in', 'straw', { mass_kg: 12 });
const holding = fold(writer.entries);
const weighing = { holding, draws: createDraws() };

describe('weighing what is put in', () => {
  it('keeps the spread of a guess, and a weight as it was weighed', () => {
    const bucket = weighed({ material: 'straw', amount: { measure: 'bucket-20l', count: 1 } }, weighing);
    const kilos = weighed({ material: 'straw', amount: { mass_kg: 4 } }, weighing);
    expect(bucket.ok && isEstimate(bucket.value.mass_kg)).toBe(true);
    expect(kilos.ok && kilos.value.mass_kg).toBe(4);
  });

  it('takes an own material for the one it is like, and refuses one that is like none', () => {
    const amount = { measure: 'bucket-20l', count: 1 };
    const own = weighed({ material: 'our-litter', amount }, weighing);
    const published = weighed({ material: 'goat-bedding', amount }, weighing);
    if (!own.ok || !published.ok) throw new Error('both can be weighed');
    // Their draws go by other names, so only the likely mass agrees, and that within the draws' own error.
    expect(likely(own.value.mass_kg) / likely(published.value.mass_kg)).toBeCloseTo(1, 1);
    expect(weighed({ material: 'our-dust', amount }, weighing)).toMatchObject({
      ok: false,
      problems: [{ code: 'weigh-it', path: 'our-dust' }],
    });
  });

  it('counts scraps, manure and what nobody knows as raw, straw not, and believes the grower', () => {
    expect(['kitchen-scraps', 'our-litter', 'unheard-of'].map((id) => isRaw(id, holding))).toEqual([true, true, true]);
    expect(['straw', 'washed-peel'].map((id) => isRaw(id, holding))).toEqual([false, false]);
  });

  it('makes a layer of it, raw where something doubtful is in it, from the store or not', () => {
    const amount = { mass_kg: 3 };
    expect(isInStore('straw', holding)).toBe(true);
    expect(layerPut({ material: 'straw', amount }, true, weighing)).toMatchObject({
      ok: true,
      value: { material: 'straw', mass_kg: 3, raw: false, from: { type: 'stock' } },
    });
    const weedy = layerPut({ material: 'straw', amount, doubtful: ['seeding-weeds'] }, false, weighing);
    expect(weedy).toMatchObject({ ok: true, value: { raw: true } });
    expect(weedy.ok && 'from' in weedy.value).toBe(false);
  });
});
