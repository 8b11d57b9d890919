import table from '@loamwright/reference/sifting.json' with { type: 'json' };
import { convert } from '@loamwright/units';
import { z } from 'zod';
import { type Calculation, type Citation, good, type Needs, type Outcome } from '../catalogue/index.ts';
import { type CautionId, cautionIds, inOrder } from '../caution/index.ts';
import {
  between,
  drawsOf,
  type Estimate,
  estimateSchema,
  fromPublished,
  type PublishedRange,
  positive,
  positiveQuantity,
  type Quantity,
  summarise,
} from '../estimate/index.ts';

export const siftUses = ['seed', 'pots', 'bed'] as const;

export interface SiftingInput {
  /** Compost to be sifted, loose. */
  readonly volume_m3: Quantity;
  /** What it is for; left out, nobody said. */
  readonly use?: (typeof siftUses)[number] | undefined;
}

export interface SiftingTime {
  readonly verdict: 'sift' | 'rough' | 'by-use';
  /** Hours of one person. */
  readonly handSieve_h: Estimate;
  readonly slopedScreen_h: Estimate;
  readonly handSieve_hPerM3: Estimate;
  readonly slopedScreen_hPerM3: Estimate;
  readonly mesh_mm: number;
  readonly cautions: readonly CautionId[];
}

type Loads = Citation & { readonly minutes: number; readonly barrows: number; readonly pails: number };

interface Parameters {
  readonly barrow_ft3: Citation & PublishedRange;
  readonly pail_gal: Citation & { readonly value: number };
  readonly handSieve: Loads;
  readonly slopedScreen: Loads;
  readonly mesh_mm: Citation & { readonly value: number };
}

const parameters = table as unknown as Parameters;
const { barrow_ft3, pail_gal, handSieve, slopedScreen, mesh_mm } = parameters;
const MINUTES_PER_HOUR = 60;
const MOST_M3 = 10_000;

function run({ volume_m3, use }: SiftingInput, { draws }: Needs): Outcome<SiftingTime> {
  const barrow = drawsOf(draws, 'sifting/barrow_ft3', fromPublished(barrow_ft3, positive), positive);
  const volume = drawsOf(draws, 'sifting/volume_m3', volume_m3, positive);
  const perM3 = ({ minutes, barrows, pails }: Loads): Float64Array =>
    barrow.map(
      (ft3) =>
        minutes /
        MINUTES_PER_HOUR /
        (convert(barrows * ft3, 'ft3', 'm3') + convert(pails * pail_gal.value, 'gal', 'm3')),
    );
  const hours = (each: Float64Array): Estimate => summarise(each.map((one, i) => one * (volume[i] ?? Number.NaN)));
  const [hand, slope] = [perM3(handSieve), perM3(slopedScreen)];
  return good({
    verdict: verdictOf(use),
    handSieve_h: hours(hand),
    slopedScreen_h: hours(slope),
    handSieve_hPerM3: summarise(hand),
    slopedScreen_hPerM3: summarise(slope),
    mesh_mm: mesh_mm.value,
    cautions: inOrder(['dust-spores', 'legionella']),
  });
}

function verdictOf(use: SiftingInput['use']): SiftingTime['verdict'] {
  if (use === undefined) return 'by-use';
  return use === 'bed' ? 'rough' : 'sift';
}

/** How long it takes to sift compost, and whether it is worth it. */
export const siftingTime: Calculation<SiftingInput, SiftingTime> = {
  id: 'sifting-time',
  title: 'Hours at the sieve',
  summary:
    'Hours of one person to sift so much compost, by shaking a hand sieve or over a sloped screen, from what two growers told of themselves: common practice, no source. Compost for beds goes on rough; only seed and pots want it sifted.',
  input: z.strictObject({
    volume_m3: between(positiveQuantity('Compost to be sifted, loose.'), 0.001, MOST_M3),
    use: z.enum(siftUses).optional(),
  }),
  output: z.strictObject({
    verdict: z.enum(['sift', 'rough', 'by-use']),
    handSieve_h: estimateSchema('By shaking a hand sieve.'),
    slopedScreen_h: estimateSchema('Over a fixed sloped screen.'),
    handSieve_hPerM3: estimateSchema('The same for a cubic metre.'),
    slopedScreen_hPerM3: estimateSchema('The same for a cubic metre.'),
    mesh_mm: z.number(),
    cautions: z.array(z.enum(cautionIds as readonly [CautionId, ...CautionId[]])),
  }),
  sources: Object.values(parameters),
  cautions: ['dust-spores', 'legionella'],
  example: { volume_m3: 0.5, use: 'bed' },
  run,
};
