import { describe, expect, it } from 'vitest';
import { check } from '../catalogue/index.ts';
import { createDraws, type Estimate, narrow, percent, summarise } from '../estimate/index.ts';
import { ownMaterialSchema, withOwn } from './own.ts';
import { type KnownMaterial, knownMaterial, propertyDraws } from './properties.ts';

const straw = knownMaterial('straw') as KnownMaterial;

describe("a grower's own material", () => {
  it('takes described values in place of the published ones and keeps the rest', () => {
    const wet = withOwn(straw, { id: 'straw', described: { moisture_pctWet: { p10: 50, p50: 60, p90: 70 } } });
    expect(wet.quantities).toEqual({ ...straw.quantities, moisture_pctWet: { p10: 50, p50: 60, p90: 70 } });
  });

  it("is narrowed by a measurement, by Bayes on the property's scale", () => {
    const measured = { p10: 15, p50: 18, p90: 21 };
    const known = withOwn(straw, { id: 'straw', measured: { moisture_pctWet: measured } });
    const believed = known.quantities.moisture_pctWet as Estimate;
    const prior = straw.quantities.moisture_pctWet as Estimate;
    expect(believed).toEqual(narrow(prior, measured, percent));
    expect(believed.p90 - believed.p10).toBeLessThan(measured.p90 - measured.p10);
    expect(believed.p50).toBeGreaterThan(prior.p50);
    expect(believed.p50).toBeLessThan(measured.p50);
  });

  it('measures what it described before', () => {
    const described = { p10: 50, p50: 60, p90: 70 };
    const measured = { p10: 60, p50: 65, p90: 70 };
    const known = withOwn(straw, {
      id: 'straw',
      described: { moisture_pctWet: described },
      measured: { moisture_pctWet: measured },
    });
    expect(known.quantities.moisture_pctWet).toEqual(narrow(described, measured, percent));
  });

  it('stands on a measurement alone where nothing was published', () => {
    const water = knownMaterial('water') as KnownMaterial;
    const known = withOwn(water, { id: 'pond-water', measured: { carbonToNitrogen_ratio: 8 } });
    expect(known.quantities.carbonToNitrogen_ratio).toBe(8);
  });

  it('under a new id has draws of its own, as a correction has the published ones', () => {
    const draws = createDraws();
    const published = propertyDraws(draws, straw, 'moisture_pctWet');
    expect(propertyDraws(draws, withOwn(straw, { id: 'straw' }), 'moisture_pctWet')).toEqual(published);
    const other = propertyDraws(draws, withOwn(straw, { id: 'our-straw' }), 'moisture_pctWet') ?? new Float64Array();
    expect(other).not.toEqual(published);
    expect(summarise(other).p50).toBeCloseTo(summarise(published ?? []).p50, 0);
  });

  it('is refused where a value leaves its scale, with the place', () => {
    expect(check(ownMaterialSchema, { id: 'straw', described: { moisture_pctWet: 105 } })).toEqual({
      ok: false,
      problems: [
        { code: 'out-of-bounds', path: 'described.moisture_pctWet', found: '105', wanted: 'a number from 0 to 100' },
      ],
    });
    expect(check(ownMaterialSchema, { id: 'straw', described: { damp: 3 } })).toMatchObject({
      problems: [{ code: 'unknown-field', path: 'described.damp' }],
    });
  });
});
