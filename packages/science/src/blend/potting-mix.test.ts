import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Estimate } from '../estimate/index.ts';
import { asSaturated_dSPerM } from './compost.ts';
import { methodIds, useIds } from './parameters.ts';
import type { PottingMix, PottingMixInput } from './potting-mix-io.ts';
import { compost, expectRanges, fewDraws, parts, potted, runs } from './testing/blended.ts';

const potting = fc.record({
  use: fc.constantFrom(...useIds),
  wanted: fc.array(
    fc.record({ count: fc.integer({ min: 1, max: 500 }), each_L: fc.double({ min: 0.05, max: 200, noNaN: true }) }),
    {
      minLength: 1,
      maxLength: 3,
    },
  ),
  compost,
  parts,
}) as fc.Arbitrary<PottingMixInput>;

describe('any mix', () => {
  it('has ordered ranges that are never negative, and shares that make a whole', () => {
    fc.assert(
      fc.property(potting, (input) => {
        const mix = potted(input);
        expectRanges(mix);
        expect(mix.parts.reduce((sum, { share_pctVolume }) => sum + share_pctVolume, 0)).toBeCloseTo(100, 6);
        expect(mix.wet.waterHeld_pctVolume.p90).toBeLessThanOrEqual(100);
      }),
      runs,
    );
  });

  it('twice the pots take twice the stuff, and nothing else changes', () => {
    fc.assert(
      fc.property(potting, (input) => {
        const once = potted(input);
        const twice = potted({ ...input, wanted: [...input.wanted, ...input.wanted] });
        twice.parts.forEach(({ volume_m3, mass_kg }, i) => {
          expect(volume_m3.p50).toBeCloseTo(2 * (once.parts[i]?.volume_m3.p50 ?? Number.NaN), 9);
          expect(mass_kg.p90 / (once.parts[i]?.mass_kg.p90 ?? Number.NaN)).toBeCloseTo(2, 9);
        });
        expect(twice.salts.conductivity_dSPerM).toEqual(once.salts.conductivity_dSPerM);
        expect(twice.advice).toEqual(once.advice);
      }),
      runs,
    );
  });

  it('more of a compost saltier than all else in it never lowers the salts', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 49, noNaN: true }),
        fc.double({ min: 1, max: 50, noNaN: true }),
        (less, more) => {
          const salts = (share: number): Estimate =>
            potted({
              use: 'potting-on',
              wanted: [{ count: 1, each_L: 10 }],
              compost: { conductivity: { value_dSPerM: { p10: 6, p50: 7, p90: 8 }, method: 'saturated-extract' } },
              parts: [
                { part: 'compost', parts: share },
                { part: 'sand', parts: 100 - share },
              ],
            }).salts.conductivity_dSPerM;
          expect(salts(less + more).p50).toBeGreaterThan(salts(less).p50);
          expect(salts(less + more).p10).toBeGreaterThanOrEqual(salts(less).p10);
        },
      ),
      runs,
    );
  });

  it('a saltier compost makes a saltier mix, with less room for it and a smaller chance', () => {
    const at = (value_dSPerM: number): PottingMix =>
      potted({
        use: 'potting-on',
        wanted: [{ count: 1, each_L: 10 }],
        compost: { conductivity: { value_dSPerM, method: 'saturated-extract' } },
      });
    const mixes = [1, 3, 6, 10, 20].map(at);
    mixes.slice(1).forEach((saltier, i) => {
      const before = mixes[i];
      expect(saltier.salts.conductivity_dSPerM.p50).toBeGreaterThan(
        before?.salts.conductivity_dSPerM.p50 ?? Number.NaN,
      );
      expect(saltier.salts.under.met).toBeLessThanOrEqual(before?.salts.under.met ?? 0);
      expect(saltier.salts.mostCompost_pctVolume).toBeLessThanOrEqual(before?.salts.mostCompost_pctVolume ?? 0);
    });
    expect(mixes[0]?.advice).not.toContain('salty-leach');
    expect(mixes[4]?.advice).toContain('salty-leach');
  });

  it('the most compost told does keep the salts under the limit', () => {
    const compost = { conductivity: { value_dSPerM: 6, method: 'saturated-extract' as const } };
    const base = { use: 'potting-on' as const, wanted: [{ count: 1, each_L: 10 }], compost };
    const { mostCompost_pctVolume: most } = potted(base).salts;
    expect(most).toBeGreaterThan(0);
    const made = (share: number): number => {
      const rest = (100 - share) / 2;
      const { under } = potted({
        ...base,
        parts: [
          { part: 'compost', parts: share },
          { part: 'leaf-mould', parts: rest },
          { part: 'loam', parts: rest },
        ],
      }).salts;
      return under.met / under.of;
    };
    expect(made(most)).toBeGreaterThan(0.88);
    expect(made(most + 5)).toBeLessThan(0.92);
  });

  it('is the same twice, and in any order of its parts', () => {
    fc.assert(
      fc.property(potting, (input) => {
        expect(potted(input)).toEqual(potted(input));
        const turned = potted({ ...input, parts: [...(input.parts ?? [])].reverse() });
        expect(turned.salts.conductivity_dSPerM.p50).toBeCloseTo(potted(input).salts.conductivity_dSPerM.p50, 9);
      }),
      { ...runs, numRuns: 20 },
    );
  });
});

it('a reading of salts never falls as the meter rises, by any method', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...methodIds),
      fc.double({ min: 0, max: 30, noNaN: true }),
      fc.double({ min: 0, max: 30, noNaN: true }),
      (method, a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        expect(asSaturated_dSPerM(high, method)).toBeGreaterThanOrEqual(asSaturated_dSPerM(low, method));
      },
    ),
    runs,
  );
});

describe('what is short', () => {
  const base: PottingMixInput = { use: 'potting-on', wanted: [{ count: 20, each_L: 3 }] };

  it('is told of what somebody said there is, and of nothing else', () => {
    const mix = potted({ ...base, onHand: [{ part: 'leaf-mould', amount: { volume_m3: 0.01 } }] });
    const stock = mix.parts.map(({ part, stock: one }) => [part, one !== undefined]);
    expect(stock).toEqual([
      ['compost', false],
      ['leaf-mould', true],
      ['loam', false],
    ]);
    const leaf = mix.parts[1];
    expect((leaf?.stock?.short_m3.p50 ?? 0) + 0.01).toBeCloseTo(leaf?.volume_m3.p50 ?? 0, 9);
    expect(leaf?.stock?.enough.met).toBe(0);
  });

  it('adds up two lots of one stuff, and is nothing where there is plenty', () => {
    const mix = potted({
      ...base,
      onHand: [
        { part: 'leaf-mould', amount: { measure: 'bucket-20l', count: 1 } },
        { part: 'leaf-mould', amount: { measure: 'barrow', count: 2 } },
      ],
    });
    expect(mix.parts[1]?.stock?.short_m3.p90).toBe(0);
    expect(mix.parts[1]?.stock?.enough.met).toBe(fewDraws.count);
  });
});
