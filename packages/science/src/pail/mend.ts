import { z } from 'zod';
import { good, type Outcome } from '../catalogue/index.ts';
import type { Draws } from '../estimate/index.ts';
import { type Portion, together } from '../mix/portion.ts';
import { type AsFed, asFelt, type WeighedLayer } from './bin.ts';
import { type DryOption, dryOptionSchema, optionsFor } from './cover.ts';
import { dryStuffs } from './dry.ts';
import type { PailCoverInput } from './pail-input.ts';

/** Why the bin is to be mended first; the words are the message `pail.mend.REASON`. */
export const mendReasons = ['ammonia', 'airless', 'too-wet', 'too-little-carbon'] as const;
export type MendReason = (typeof mendReasons)[number];

/** Dry stuff for the whole bin, this pail in it. */
export interface BinMend {
  readonly because: readonly MendReason[];
  /** True where what lies in the bin has carbon and dryness enough: fork it through. */
  readonly alreadyThere: boolean;
  readonly options: readonly DryOption[];
}

export const binMendSchema: z.ZodType<BinMend> = z.strictObject({
  because: z.array(z.enum(mendReasons)),
  alreadyThere: z.boolean(),
  options: z.array(dryOptionSchema),
});

/** What is wrong with the bin as it was fed, by nose and hand before any figure. */
export function mendReasonsOf(
  asFed: AsFed | undefined,
  layers: readonly WeighedLayer[],
  { smell, squeeze }: PailCoverInput,
): readonly MendReason[] {
  const felt = squeeze !== undefined;
  const tooWet = felt ? squeeze === 'streams' : asFed?.moisture_pctWet.verdict === 'too-high';
  const tooRich = asFed?.carbonToNitrogen_ratio?.verdict === 'too-low';
  return [
    ...(smell === 'ammonia' ? (['ammonia'] as const) : []),
    ...(smell === 'sour' || smell === 'rotten' ? (['airless'] as const) : []),
    ...(layers.length > 0 && tooWet ? (['too-wet'] as const) : []),
    ...(layers.length > 0 && tooRich ? (['too-little-carbon'] as const) : []),
  ];
}

/**
 * Dry stuff for the bin as a whole, as it was fed and as moist as it feels, with this pail in it and without its own
 * cover. Nothing can be reckoned where nobody knows what lies in the bin.
 */
export function mendFor(
  because: readonly MendReason[],
  layers: readonly WeighedLayer[],
  pail: readonly Portion[],
  input: PailCoverInput,
  draws: Draws,
): Outcome<BinMend> {
  if (layers.length === 0) return good({ because, alreadyThere: false, options: [] });
  const fed = pail.map((_, i) => together(layers.flatMap(({ portions }) => portions.slice(i, i + 1))));
  const felt = asFelt(fed, input, draws);
  const portions = pail.map((portion, i) => together([portion, ...felt.slice(i, i + 1)]));
  const wet = { portions, cover_m3: new Float64Array(draws.count) };
  const dries = dryStuffs(input, wet, draws);
  if (!dries.ok) return dries;
  const options = optionsFor(wet, dries.value, input.ownSizes, draws);
  if (!options.ok) return options;
  const alreadyThere = options.value.length > 0 && options.value.every(({ least }) => least.wet_kg.p50 === 0);
  return good({ because, alreadyThere, options: options.value });
}
