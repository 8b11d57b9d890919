import { z } from 'zod';
import { bad, type Calculation, good } from '../catalogue/index.ts';
import { densityOfBucket_kgPerM3AsIs } from './porosity.ts';

export interface BulkDensityFromBucketInput {
  readonly full_kg: number;
  readonly empty_kg: number;
  readonly volume_L: number;
}

export interface BulkDensityFromBucket {
  readonly density_kgPerM3AsIs: number;
}

export const bulkDensityFromBucket: Calculation<BulkDensityFromBucketInput, BulkDensityFromBucket> = {
  id: 'bulk-density-from-bucket',
  title: 'Bulk density from a weighed bucket',
  summary:
    'Fill the bucket by thirds; after each third drop it squarely, ten times from 30 cm by one protocol and from 15 cm by another, or tap it five times by a third; top it up without dropping, and weigh. Say which you did: they differ.',
  input: z.strictObject({
    full_kg: z.number().positive().max(1e6),
    empty_kg: z.number().min(0).max(1e6),
    volume_L: z.number().min(0.001).max(1e6),
  }),
  output: z.strictObject({ density_kgPerM3AsIs: z.number() }),
  sources: [
    { source: 'cooperband-zabaleta-bucket', place: 'thirds, tapped five times: 20 L, 9 kg is 450 kg/m3', mark: 'seen' },
    { source: 'wsu-bulk-density', place: 'thirds, dropped ten times from 1 ft', mark: 'seen' },
    { source: 'ccc-bulk-density', place: 'thirds, dropped ten times from 6 in', mark: 'seen' },
  ],
  cautions: [],
  example: { full_kg: 10, empty_kg: 1, volume_L: 20 },
  run: (bucket) => {
    if (bucket.full_kg <= bucket.empty_kg) {
      const wanted = `> ${bucket.empty_kg}, the empty bucket`;
      return bad({ code: 'too-small', path: 'full_kg', found: String(bucket.full_kg), wanted });
    }
    return good({ density_kgPerM3AsIs: densityOfBucket_kgPerM3AsIs(bucket) });
  },
};
