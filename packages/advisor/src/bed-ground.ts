import { budgetParameters, isEstimate, likely, type Quantity } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { area, say } from './saying.ts';

/** A crop on a bed: since which day, until which day it stands, and on how much, as far as that is written down. */
export interface Standing {
  /** What it is called where the reader is told of it. */
  readonly name: string;
  /** Days of the garden, as `2026-05-01`. */
  readonly from: string;
  /** The day of its last harvest; what is sown on that day or later follows it. */
  readonly until?: string | undefined;
  readonly area_m2?: Quantity | undefined;
}

/** How the ground of a bed is shared among its crops. */
export interface Ground {
  /** For each crop in turn; undefined where the others leave it none. */
  readonly areas_m2: readonly (Quantity | undefined)[];
  /** That it was shared, or that the crops fill more than there is; none where every crop names its part or has the bed to itself. */
  readonly said: readonly Saying[];
}

const overSown_share = budgetParameters.overSown_share.value;
const leastGround_share = budgetParameters.leastGround_share.value;

/**
 * The ground that each crop of a bed stands on, m². A crop whose area is written down has that; the others share evenly what those leave
 * of the bed, for as long as they stand together. One sown after another was harvested for the last time has the whole bed after it.
 */
export function groundOf(crops: readonly Standing[], bed_m2: Quantity): Ground {
  const whole_m2 = likely(bed_m2);
  const shares = crops.map((crop) => (crop.area_m2 === undefined ? shareOf(crop, crops, whole_m2) : 1));
  const areas_m2 = crops.map(({ area_m2 }, i) => {
    const share = shares[i] ?? 1;
    return area_m2 ?? (share < leastGround_share ? undefined : times(bed_m2, share));
  });
  const parts = crops.flatMap(({ name, area_m2 }, i) => {
    const own = areas_m2[i];
    return area_m2 !== undefined || own === undefined || shares[i] === 1 ? [] : [{ name, own }];
  });
  const without = crops.filter((_, i) => areas_m2[i] === undefined).map(({ name }) => say('beds.crop', { crop: name }));
  const filled_m2 = Math.max(0, ...crops.map(({ from }) => named_m2(standingOn(from, crops))));
  return {
    areas_m2,
    said: [
      ...(filled_m2 > whole_m2 * (1 + overSown_share)
        ? [say('beds.ground.over', { sown: area(filled_m2), area: area(bed_m2) })]
        : []),
      ...(parts.length === 0
        ? []
        : [
            say('beds.ground.shared', {
              parts: parts.map(({ name, own }) => say('beds.ground.part', { area: area(own), crop: name })),
            }),
          ]),
      ...(without.length === 0 ? [] : [say('beds.ground.none', { crops: without })]),
    ],
  };
}

/** Part of the bed, by the day on which it stands closest with the others. */
function shareOf(crop: Standing, crops: readonly Standing[], whole_m2: number): number {
  const days = crops.map(({ from }) => from).filter((day) => day === crop.from || standsOn(crop, day));
  const shares = days.map((day) => {
    const others = standingOn(day, crops).filter((one) => one !== crop);
    const sharing = 1 + others.filter(({ area_m2 }) => area_m2 === undefined).length;
    return (whole_m2 - named_m2(others)) / (whole_m2 * sharing);
  });
  return Math.max(0, Math.min(...shares));
}

function standsOn({ from, until }: Standing, day: string): boolean {
  return from <= day && (until === undefined || day < until);
}

function standingOn(day: string, crops: readonly Standing[]): readonly Standing[] {
  return crops.filter((crop) => standsOn(crop, day));
}

function named_m2(crops: readonly Standing[]): number {
  return crops.reduce((sum, { area_m2 }) => sum + (area_m2 === undefined ? 0 : likely(area_m2)), 0);
}

function times(quantity: Quantity, share: number): Quantity {
  if (share === 1) return quantity;
  if (!isEstimate(quantity)) return quantity * share;
  return { p10: quantity.p10 * share, p50: quantity.p50 * share, p90: quantity.p90 * share };
}
