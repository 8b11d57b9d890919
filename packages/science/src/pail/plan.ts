import { summarise } from '../estimate/index.ts';
import { type Portion, scaled, together } from '../mix/portion.ts';
import { type Dry, likelyCount, oneOf, type Wet } from './dry.ts';

/** So many measures of one dry material. */
export interface Laid {
  readonly dry: Dry;
  readonly count: number;
}

/** What to lay out of what is on hand, and how much of the first material that would do is still missing. */
export interface Plan {
  readonly laid: readonly Laid[];
  readonly short?: Laid | undefined;
}

/** Nobody counts finer than half a measure. */
const STEP = 0.5;
const COUNT_ROUNDING = 1e-6;

/**
 * Half measures of the dry stuff on hand, the first in front as far as it reaches, that bring wet stuff to the better
 * aim in half of the draws.
 */
export function planFor(wet: Wet, dries: readonly Dry[]): Plan {
  const laid: Laid[] = [];
  let left = wet;
  for (const dry of dries) {
    const wanted = likelyCount(left, dry);
    if (!Number.isFinite(wanted)) continue;
    const count = Math.min(inHalves(wanted), halvesOnHand(dry));
    if (count > 0) {
      laid.push({ dry, count });
      left = afterLaying(left, { dry, count });
    }
    if (count >= inHalves(wanted)) return { laid };
  }
  const short = missing(left, dries);
  return short === undefined ? { laid } : { laid, short };
}

/** The first material that could do it says how much is missing. */
function missing(wet: Wet, dries: readonly Dry[]): Laid | undefined {
  const counts = dries.map((dry): Laid => ({ dry, count: inHalves(likelyCount(wet, dry)) }));
  return counts.find(({ count }) => Number.isFinite(count) && count > 0);
}

function afterLaying({ portions, cover_m3 }: Wet, { dry, count }: Laid): Wet {
  return {
    portions: portions.map((portion, i): Portion => together([portion, scaled(oneOf(dry, i), count)])),
    cover_m3: cover_m3.map((volume_m3, i) => volume_m3 - count * oneOf(dry, i).volume_m3),
  };
}

function halvesOnHand({ onHand_kg, ones }: Dry): number {
  if (onHand_kg === undefined) return Number.POSITIVE_INFINITY;
  const measures = summarise(onHand_kg.map((kg, i) => kg / (ones[i]?.wet_kg ?? Number.NaN))).p50;
  return Math.floor(measures / STEP + COUNT_ROUNDING) * STEP;
}

/** The nearest half measure, but half a measure at least where anything is needed. */
function inHalves(count: number): number {
  if (count <= COUNT_ROUNDING) return 0;
  return Math.max(STEP, Math.round(count / STEP) * STEP);
}
