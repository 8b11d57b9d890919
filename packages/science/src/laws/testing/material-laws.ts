import fc from 'fast-check';
import { expect } from 'vitest';
import { allMaterials } from '../../material/index.ts';
import { type MaterialMeasured, materialMeasured } from '../../material/material-measured.ts';
import { squeezeGrades } from '../../material/measured.ts';
import { moistureFromSqueezeCalculation } from '../../material/moisture-from-squeeze.ts';
import { bulkDensityFromBucket } from '../../mix/bulk-density-from-bucket.ts';
import { moistureFromWeights } from '../../mix/moisture-from-weights.ts';
import { shares, timesMore } from './amounts.ts';
import { expectNoLess, type LawsOf, law, scaleLaw } from './law.ts';

const materials = fc.constantFrom(...allMaterials.map(({ id }) => id));
const weights = fc.double({ min: 0.5, max: 2000, noNaN: true });

/** A sample with its container before and after, and how finely the scale reads. */
const samples = fc.record({ container: weights, wet: weights, dried: shares, step: fc.constantFrom(0.001, 0.01) });

function measuredOf({ findings }: MaterialMeasured): number {
  return findings[0]?.measured.p50 ?? Number.NaN;
}

export const materialLaws: Readonly<Record<string, LawsOf>> = {
  'moisture-from-squeeze': {
    scale: 'no scale law because a handful is a handful',
    others: [
      law(moistureFromSqueezeCalculation, {
        says: 'of one material, a wetter grade is never a drier figure',
        cases: fc.option(materials, { nil: undefined }),
        inputs: (material) => squeezeGrades.map((squeeze) => ({ squeeze, material })),
        expects: (answers) => {
          const order = ['streams', 'drops', 'holds', 'crumbles', 'dusty'] as const;
          const wettest = order.map((grade) => answers[squeezeGrades.indexOf(grade)]?.moisture_pctWet);
          wettest.slice(1).forEach((drier, i) => {
            expectNoLess(wettest[i]?.p50 ?? Number.NaN, drier?.p50 ?? Number.NaN, order[i] ?? '');
          });
        },
      }),
    ],
  },
  'material-measured': {
    scale: scaleLaw(materialMeasured, {
      says: 'a bucket so many times as large, full and empty, on a scale so many times as coarse, is of the same stuff',
      cases: fc
        .record({ material: materials, filled: weights, empty: weights, litres: weights })
        .map(({ material, filled, empty, litres }) => ({
          material,
          bucket: { full_kg: filled + empty, empty_kg: empty, volume_L: litres, scaleStep_kg: 0.01 },
        })),
      times: (input, by) => ({
        ...input,
        bucket: {
          full_kg: by * input.bucket.full_kg,
          empty_kg: by * input.bucket.empty_kg,
          volume_L: by * input.bucket.volume_L,
          scaleStep_kg: by * input.bucket.scaleStep_kg,
        },
      }),
    }),
    others: [
      law(materialMeasured, {
        says: 'a sample that loses more in drying was wetter (the same sample, the same scale)',
        cases: fc.tuple(materials, samples, shares),
        inputs: ([material, { wet, dried, step }, further]) =>
          [dried, dried * further].map((left) => ({
            material,
            dryDown: { method: 'oven' as const, wet_g: wet, dry_g: wet * left, scaleStep_g: step },
          })),
        expects: ([drier, wetter]) => {
          if (drier === undefined || wetter === undefined) throw new RangeError('two answers');
          expectNoLess(measuredOf(wetter), measuredOf(drier), 'moisture');
        },
      }),
    ],
  },
  'moisture-from-weights': {
    scale: scaleLaw(moistureFromWeights, {
      says: 'so many times the sample with its container, the same moisture',
      cases: samples.map(({ container, wet, dried }) => ({
        wet_g: container + wet,
        dry_g: container + wet * dried,
        container_g: container,
      })),
      times: ({ wet_g, dry_g, container_g }, by) => ({
        wet_g: by * wet_g,
        dry_g: by * dry_g,
        container_g: by * container_g,
      }),
    }),
    others: [
      law(moistureFromWeights, {
        says: 'lighter when dry means wetter before (the same wet weight)',
        cases: fc.tuple(weights, shares, shares),
        inputs: ([wet_g, dried, further]) => [
          { wet_g, dry_g: wet_g * dried },
          { wet_g, dry_g: wet_g * dried * further },
        ],
        expects: ([drier, wetter]) => {
          expect(wetter?.moisture_pctWet).toBeGreaterThan(drier?.moisture_pctWet ?? Number.NaN);
        },
      }),
    ],
  },
  'bulk-density-from-bucket': {
    scale: scaleLaw(bulkDensityFromBucket, {
      says: 'so many times the bucket and what is in it, the same density',
      cases: fc
        .record({ filled: weights, empty: weights, litres: weights })
        .map(({ filled, empty, litres }) => ({ full_kg: filled + empty, empty_kg: empty, volume_L: litres })),
      times: ({ full_kg, empty_kg, volume_L }, by) => ({
        full_kg: by * full_kg,
        empty_kg: by * empty_kg,
        volume_L: by * volume_L,
      }),
    }),
    others: [
      law(bulkDensityFromBucket, {
        says: 'so many times the stuff in the same bucket is so many times as dense (the bucket itself weighing nothing)',
        cases: fc.tuple(weights, weights, timesMore),
        inputs: ([full_kg, volume_L, by]) => [
          { full_kg, empty_kg: 0, volume_L },
          { full_kg: by * full_kg, empty_kg: 0, volume_L },
        ],
        expects: ([light, heavy], [, , by]) => {
          expect((heavy?.density_kgPerM3AsIs ?? Number.NaN) / (light?.density_kgPerM3AsIs ?? Number.NaN)).toBeCloseTo(
            by,
            9,
          );
        },
      }),
    ],
  },
};
