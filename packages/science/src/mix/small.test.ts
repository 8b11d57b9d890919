import examples from '@loamwright/reference/mix-examples.json' with { type: 'json' };
import sources from '@loamwright/reference/sources.json' with { type: 'json' };
import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { bandTable, judge, judgedQuantities, softEdge } from './bands.ts';
import { bulkDensityFromBucket, mixCalculations, moistureFromWeights } from './index.ts';

const needs = { draws: createDraws() };

describe('moisture from weights', () => {
  it('O1: 77 % (Cornell moisture text)', () => {
    const { container_g, wetWithContainer_g, dryWithContainer_g } = examples.O1.inputs;
    const input = { wet_g: wetWithContainer_g, dry_g: dryWithContainer_g, container_g };
    const outcome = moistureFromWeights.run(input, needs);
    expect(outcome.ok && outcome.value.moisture_pctWet).toBeCloseTo(examples.O1.expected.moisture_pctWet, 9);
  });

  it('O9: 15.8 % (Victoria DEPI 2015)', () => {
    const outcome = moistureFromWeights.run(examples.O9.inputs, needs);
    expect(outcome.ok && outcome.value.moisture_pctWet).toBeCloseTo(examples.O9.expected.moisture_pctWet, 1);
  });

  it('weights that can’t be are told', () => {
    expect(moistureFromWeights.run({ wet_g: 10, dry_g: 11 }, needs)).toMatchObject({ problems: [{ code: 'too-big' }] });
    expect(moistureFromWeights.run({ wet_g: 10, dry_g: 4, container_g: 4 }, needs)).toMatchObject({
      problems: [{ code: 'too-small', path: 'dry_g' }],
    });
  });
});

describe('bulk density from a bucket', () => {
  it('O8: 450 kg/m³ (Cooperband and Zabaleta)', () => {
    const outcome = bulkDensityFromBucket.run(examples.O8.inputs, needs);
    expect(outcome.ok && outcome.value.density_kgPerM3AsIs).toBe(examples.O8.expected.density_kgPerM3AsIs);
    expect(bulkDensityFromBucket.run({ full_kg: 1, empty_kg: 1, volume_L: 20 }, needs)).toMatchObject({
      problems: [{ code: 'too-small', path: 'full_kg' }],
    });
  });
});

describe('bands', () => {
  it('every band is in order, the preferred inside the reasonable', () => {
    for (const { quantity, source, reasonable, preferred } of bandTable.bands) {
      const label = `${quantity} of ${source}`;
      for (const band of [reasonable, preferred]) {
        expect((band?.low ?? 0) <= (band?.high ?? Number.POSITIVE_INFINITY), label).toBe(true);
      }
      expect((preferred?.low ?? reasonable?.low ?? 0) >= (reasonable?.low ?? 0), label).toBe(true);
      const most = reasonable?.high ?? Number.POSITIVE_INFINITY;
      expect((preferred?.high ?? most) <= most, label).toBe(true);
    }
  });

  it('the goals are bands of a source, and lie within every other source’s reasonable band by their soft edge', () => {
    for (const quantity of judgedQuantities) {
      const { preferred } = bandTable.goals[quantity];
      const reasonable = bandTable.bands.filter((band) => band.quantity === quantity).map((band) => band.reasonable);
      for (const band of reasonable) {
        if (band?.low !== undefined && preferred.low !== undefined) {
          expect(preferred.low + softEdge(quantity)).toBeGreaterThanOrEqual(band.low);
        }
        if (band?.high !== undefined && preferred.high !== undefined) {
          expect(preferred.high - softEdge(quantity)).toBeLessThanOrEqual(band.high);
        }
      }
    }
  });

  it('a value is judged by its likely value, softly near an edge', () => {
    const at = (value: number) => judge('moisture_pctWet', new Float64Array(4).fill(value));
    expect(at(55)).toMatchObject({ verdict: 'in', lean: 'in', onEdge: false });
    expect(at(63)).toMatchObject({ verdict: 'in', lean: 'too-high', onEdge: true });
    expect(at(68)).toMatchObject({ verdict: 'too-high', lean: 'too-high', onEdge: true });
    expect(at(30)).toMatchObject({ verdict: 'too-low', lean: 'too-low', onEdge: false });
    expect(at(55).chances).toEqual({ low: { met: 0, of: 4 }, in: { met: 4, of: 4 }, high: { met: 0, of: 4 } });
  });
});

describe('every calculation about a mix', () => {
  it.each(mixCalculations.map((calculation) => [calculation.id, calculation] as const))(
    '%s cites known sources',
    (_id, one) => {
      expect(one.sources.length).toBeGreaterThan(0);
      for (const { source } of one.sources) expect(Object.keys(sources)).toContain(source);
    },
  );

  it.each(
    mixCalculations.filter(({ id }) => id !== 'mix-solve').map((calculation) => [calculation.id, calculation] as const),
  )('%s runs its own example', (_id, one) => {
    expect(one.reckon(one.example, needs)).toMatchObject({ ok: true });
    expect(one.inputSchema()).toMatchObject({ type: 'object' });
    expect(one.outputSchema()).toMatchObject({ type: 'object' });
  });
});
