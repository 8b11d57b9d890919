import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { check, type Needs } from '../catalogue/index.ts';
import { createDraws } from '../estimate/index.ts';
import { highsSolver } from '../solver/index.ts';
import { spreadRate } from './spread-rate.ts';
import type { ProductRate, SpreadRate, SpreadRateInput } from './spread-rate-io.ts';

const needs: Needs = { draws: createDraws(), solver: highsSolver(await loadHighs()) };

function answer(input: SpreadRateInput): SpreadRate {
  const checked = check(spreadRate.input, input);
  const outcome = checked.ok ? spreadRate.run(checked.value, needs) : checked;
  if (!outcome.ok) throw new RangeError(JSON.stringify(outcome.problems));
  return outcome.value;
}

function only(found: SpreadRate): ProductRate {
  const [one] = found.products;
  if (one === undefined) throw new RangeError('a product');
  return one;
}

const kale = { crops: [{ crop: 'kale', area_m2: 10 }] };
const compost = { material: 'finished-compost', measure: 'barrow' };

describe('how much goes on a bed', () => {
  // The chief trap of beds: a quarter inch of average compost holds 4 to 14 years of phosphorus that vegetables take
  // off (analysis of CalRecycle 2013, removal of USDA SR26), so by nitrogen alone far too much would go on.
  it('is stopped by phosphorus with compost, long before its nitrogen would do', () => {
    const found = answer({ ...kale, products: [compost], soilTest: { phosphorusClass: 'optimum' } });
    const { alone, stops } = only(found);
    const by = (limit: string) => alone.find((one) => one.limit === limit)?.count ?? Number.NaN;
    expect(stops).toBe('phosphorus');
    expect(found.stops).toBe('phosphorus');
    expect(by('nitrogen') / by('phosphorus')).toBeGreaterThan(4);
    expect(found.short_kg.p50).toBeGreaterThan(0);
  });

  it('is nothing where the soil has far too much phosphorus', () => {
    const found = answer({ ...kale, products: [compost], soilTest: { phosphorusClass: 'excessive' } });
    expect(only(found).count).toBe(0);
    expect(found.stops).toBe('phosphorus');
  });

  it('is stopped by what there is', () => {
    const found = answer({ ...kale, products: [{ ...compost, onHand: { measure: 'barrow', count: 0.5 } }] });
    expect(only(found).count).toBeLessThanOrEqual(0.5);
  });

  it('of several, takes what feeds with the least phosphorus first', () => {
    const found = answer({
      ...kale,
      soilTest: { phosphorusClass: 'optimum' },
      products: [compost, { material: 'grass-clippings', measure: 'barrow' }],
    });
    const [first, second] = found.products;
    expect(second?.count).toBeGreaterThan(first?.count ?? 0);
    expect(found.short_kg.p50).toBeLessThan(
      answer({ ...kale, products: [compost], soilTest: { phosphorusClass: 'optimum' } }).short_kg.p50,
    );
  });

  it('digs in nothing that locks nitrogen up', () => {
    const found = answer({ ...kale, products: [{ material: 'straw', measure: 'barrow' }] });
    expect(only(found)).toMatchObject({ count: 0, stops: 'locks-up' });
    expect(found.stops).toBe('locks-up');
  });

  it('keeps every limit: after it the bed has no more nitrogen than it wants, and half a step', () => {
    const found = answer({
      ...kale,
      products: [{ material: 'hen-manure', measure: 'bucket-20l' }],
      soilTest: { phosphorusClass: 'low' },
    });
    const { nitrogen } = found.after.elements;
    const one = only(found);
    const perStep = (0.5 * nitrogen.supplied_kg.p50) / one.count;
    expect(one.count).toBeGreaterThan(0);
    expect(nitrogen.supplied_kg.p50).toBeLessThanOrEqual(nitrogen.need_kg.p50 + perStep);
  });

  // University of Nebraska, calculating the value of nutrients in manure: what is not needed is worth nothing.
  it('is worth what the bed wanted of it, and no more', () => {
    const prices = { nitrogen_perKg: 1.2, phosphate_perKg: 1, potash_perKg: 0.8 };
    const found = answer({
      ...kale,
      products: [compost],
      prices,
      soilTest: { phosphorusClass: 'excessive', potassiumClass: 'excessive' },
    });
    expect(found.worth).toMatchObject({ p50: 0 });
    const fed = answer({
      ...kale,
      products: [{ material: 'hen-manure', measure: 'bucket-20l' }],
      prices: { nitrogen_perKg: 1.2 },
      soilTest: { phosphorusClass: 'low' },
    });
    const without = answer({
      ...kale,
      products: [{ ...compost, onHand: { measure: 'barrow', count: 0 } }],
      soilTest: { phosphorusClass: 'low' },
    });
    expect(fed.worth?.p50).toBeCloseTo(1.2 * (without.short_kg.p50 - fed.short_kg.p50), 9);
  });
});
