import type { PartAmount } from '@loamwright/science';
import type { Figure, Saying } from '@loamwright/words';
import { measured } from './measured.ts';
import { bulk, liquid, say, sayOf } from './saying.ts';

/** One stuff of a blend in words. */
export interface PartWords {
  readonly part: PartAmount['part'];
  readonly share_pctVolume: number;
  /** "1½ buckets (28 L) of leaf mould"; the volume can be touched. */
  readonly said: Saying;
  /** Whether there is enough; null where nobody said what there is. */
  readonly stock: Saying | null;
}

/** As finely as a bucket is filled by eye: quarters of a few, halves of some, whole ones of many. */
export function byEye(count: number): number {
  const step = count < 5 ? 4 : count < 20 ? 2 : 1;
  return Math.max(Math.round(count * step), 1) / step;
}

/** Less of a measure than this is told by its volume alone. */
export const LEAST_COUNT = 0.375;
const LITRES_PER_M3 = 1000;

function inLitres({ p10, p50, p90 }: PartAmount['volume_m3']): Figure {
  return liquid({ p10: LITRES_PER_M3 * p10, p50: LITRES_PER_M3 * p50, p90: LITRES_PER_M3 * p90 });
}

/** "1.25 buckets (23 L) of leaf mould", "4.2 L of leaf mould". */
export function amountOf(
  name: Saying,
  { measure, count, volume_m3 }: Pick<PartAmount, 'measure' | 'count' | 'volume_m3'>,
): Saying {
  if (count.p50 < LEAST_COUNT) return say('blend.part-little', { volume: inLitres(volume_m3), part: name });
  return say('blend.part-amount', { amount: measured(measure, byEye(count.p50)), volume: bulk(volume_m3), part: name });
}

export function partWords(amount: PartAmount): PartWords {
  const { part, share_pctVolume, stock, measure } = amount;
  const name = sayOf('blend.part', part);
  return {
    part,
    share_pctVolume,
    said: amountOf(name, amount),
    stock: stock === undefined ? null : stockWords(name, measure, stock),
  };
}

function stockWords(
  part: Saying,
  measure: string,
  { short_m3, shortCount, enough }: NonNullable<PartAmount['stock']>,
): Saying {
  const chance = { chance: enough };
  if (shortCount.p50 === 0) return say('blend.short.enough', { part, chance });
  if (shortCount.p50 < LEAST_COUNT) return say('blend.short.little', { part, volume: inLitres(short_m3), chance });
  const amount = measured(measure, byEye(shortCount.p50));
  return say('blend.short.short', { part, amount, volume: bulk(short_m3), chance });
}

/** What of a share is lost, in whole percent, with its range. */
export function lossPlaces(kept: { readonly p10: number; readonly p50: number; readonly p90: number }): {
  readonly lost: number;
  readonly low: number;
  readonly high: number;
} {
  const lost = (share: number): number => Math.round(100 * (1 - share));
  return { lost: lost(kept.p50), low: lost(kept.p90), high: lost(kept.p10) };
}

/** An estimate as plain numbers with so many digits behind the point. */
export function plainPlaces(
  { p10, p50, p90 }: { readonly p10: number; readonly p50: number; readonly p90: number },
  digits = 0,
): { readonly likely: number; readonly low: number; readonly high: number } {
  const round = (value: number): number => Number(value.toFixed(digits));
  return { likely: round(p50), low: round(p10), high: round(p90) };
}

/** An estimate as plain numbers of two digits, for what is known no better. */
export function twoDigits({ p10, p50, p90 }: Parameters<typeof plainPlaces>[0]): ReturnType<typeof plainPlaces> {
  const round = (value: number): number => Number(value.toPrecision(2));
  return { likely: round(p50), low: round(p10), high: round(p90) };
}
