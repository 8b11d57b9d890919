import fc from 'fast-check';
import { expect } from 'vitest';
import { bedFill } from '../../blend/bed-fill.ts';
import type { BedFillInput } from '../../blend/bed-fill-io.ts';
import { pottingMix } from '../../blend/potting-mix.ts';
import type { PottingMixInput } from '../../blend/potting-mix-io.ts';
import { expectNoLess, type LawsOf, law } from './law.ts';

const wholeTimes = fc.integer({ min: 2, max: 6 });
const percents = fc.double({ min: 1, max: 60, noNaN: true });
const further = fc.double({ min: 0, max: 39, noNaN: true });

/** Pots told by what one holds. */
interface Pots extends PottingMixInput {
  readonly wanted: readonly { readonly count: number; readonly each_L: number }[];
}

const pots: fc.Arbitrary<Pots> = fc
  .record({ count: fc.integer({ min: 1, max: 40 }), each_L: fc.double({ min: 0.2, max: 40, noNaN: true }) })
  .map((wanted) => ({ use: 'potting-on', wanted: [wanted] }));

const beds: fc.Arbitrary<BedFillInput> = fc
  .record({
    area_m2: fc.double({ min: 0.5, max: 30, noNaN: true }),
    depth_m: fc.double({ min: 0.1, max: 0.8, noNaN: true }),
  })
  .map((bed) => ({ bed }));

export const blendLaws: Readonly<Record<string, LawsOf>> = {
  'potting-mix': {
    scale: law(pottingMix, {
      says: 'so many times the pots take so many times each stuff, as salty and as airy as before',
      cases: fc.tuple(pots, wholeTimes),
      inputs: ([input, by]) => [
        input,
        { ...input, wanted: input.wanted.map(({ count, each_L }) => ({ count: by * count, each_L })) },
      ],
      expects: ([once, more], [, by]) => {
        once?.parts.forEach(({ volume_m3, mass_kg }, i) => {
          expect((more?.parts[i]?.volume_m3.p50 ?? Number.NaN) / volume_m3.p50).toBeCloseTo(by, 9);
          expect((more?.parts[i]?.mass_kg.p50 ?? Number.NaN) / mass_kg.p50).toBeCloseTo(by, 9);
        });
        expect(more?.salts.conductivity_dSPerM).toEqual(once?.salts.conductivity_dSPerM);
        expect(more?.wet.air_pctVolume).toEqual(once?.wet.air_pctVolume);
      },
    }),
    others: [
      law(pottingMix, {
        says: 'more of a compost saltier than all else in it (EC 6 to 8, beside sand) never makes a less salty mix',
        cases: fc.tuple(percents, further),
        inputs: ([share, more]) =>
          [share, share + more].map((parts) => ({
            use: 'potting-on' as const,
            wanted: [{ count: 1, each_L: 10 }],
            compost: {
              conductivity: { value_dSPerM: { p10: 6, p50: 7, p90: 8 }, method: 'saturated-extract' as const },
            },
            parts: [
              { part: 'compost' as const, parts },
              { part: 'sand' as const, parts: 100 - parts },
            ],
          })),
        expects: ([less, more]) => {
          expectNoLess(
            more?.salts.conductivity_dSPerM.p50 ?? Number.NaN,
            less?.salts.conductivity_dSPerM.p50 ?? Number.NaN,
            'salts',
          );
        },
      }),
    ],
  },
  'bed-fill': {
    scale: law(bedFill, {
      says: 'so many beds alike take so many times the stuff, and weigh the same on each square metre',
      cases: fc.tuple(beds, wholeTimes),
      inputs: ([input, by]) => [input, { ...input, beds: by }],
      expects: ([one, many], [, by]) => {
        if (one === undefined || many === undefined) throw new RangeError('two answers');
        expect(many.bring_m3.p50 / one.bring_m3.p50).toBeCloseTo(by, 9);
        expect(many.mass_kg.p50 / one.mass_kg.p50).toBeCloseTo(by, 9);
        expect(many.load_kgPerM2.p50).toBeCloseTo(one.load_kgPerM2.p50, 9);
        expect(many.salts.conductivity_dSPerM).toEqual(one.salts.conductivity_dSPerM);
      },
    }),
    others: [
      law(bedFill, {
        says: 'more compost in the same bed never brings less phosphorus or organic matter',
        cases: fc.tuple(beds, percents, further),
        inputs: ([input, share, more]) =>
          [share, share + more].map((compost_pctVolume) => ({ ...input, compost_pctVolume })),
        expects: ([less, more]) => {
          if (less === undefined || more === undefined) throw new RangeError('two answers');
          expectNoLess(more.phosphorus_years.p50, less.phosphorus_years.p50, 'phosphorus');
          expectNoLess(more.organicMatter_pctDry.p50, less.organicMatter_pctDry.p50, 'organic matter');
        },
      }),
    ],
  },
};
