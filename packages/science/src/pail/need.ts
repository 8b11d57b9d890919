import { type Stuff, secondForCarbonToNitrogen_kg, secondForMoisture_kg } from '../mix/balance.ts';
import { bandTable } from '../mix/bands.ts';
import { type Portion, portionMoisture_pctWet, portionRatio } from '../mix/portion.ts';

/** What a pail and its dry stuff should come to: no wetter, and no richer in nitrogen. */
export interface Aim {
  readonly moisture_pctWet: number;
  readonly carbonToNitrogen_ratio: number;
}

/** The least that will do, and what is better. */
export const aimIds = ['least', 'better'] as const;
export type AimId = (typeof aimIds)[number];

const { moisture_pctWet: moistureGoal, carbonToNitrogen_ratio: ratioGoal } = bandTable.goals;

function end(value: number | undefined): number {
  if (value === undefined) throw new RangeError('the goals of reference/bands.json need both ends here');
  return value;
}

/**
 * `least` is the wet end of the reasonable moisture and the C:N below which nitrogen loss grows; `better`
 * the wet end of the preferred moisture and the middle of the preferred C:N (`reference/bands.json`, goals).
 */
export const aims: Readonly<Record<AimId, Aim>> = {
  least: {
    moisture_pctWet: end(moistureGoal.reasonable.high),
    carbonToNitrogen_ratio: end(ratioGoal.preferred.low),
  },
  better: {
    moisture_pctWet: end(moistureGoal.preferred.high),
    carbonToNitrogen_ratio: (end(ratioGoal.preferred.low) + end(ratioGoal.preferred.high)) / 2,
  },
};

/** Wet mass of dry stuff for each aim alone, kg: 0 where nothing is needed, infinite where it can't be done. */
export interface DryNeed {
  readonly forMoisture_kg: number;
  readonly forRatio_kg: number;
}

/**
 * How much of a dry material brings a portion to an aim, by the two-ingredient formulas (Cornell, moisture; BC
 * Agricultural Composting Handbook 1998, Appendix A, C:N).
 *
 * @param dry any portion of the dry material: only its percentages count.
 */
export function dryNeed(wet: Portion, dry: Portion, aim: Aim): DryNeed {
  const first = stuffOf(wet);
  const second = stuffOf(dry);
  const isWet = (portionMoisture_pctWet(wet) ?? 0) > aim.moisture_pctWet;
  const isRich = (portionRatio(wet) ?? Number.POSITIVE_INFINITY) < aim.carbonToNitrogen_ratio;
  const moisture = { first, second, goal_pctWet: aim.moisture_pctWet };
  const ratio = { first, second, goal_ratio: aim.carbonToNitrogen_ratio };
  return {
    forMoisture_kg: isWet ? (secondForMoisture_kg(moisture) ?? Number.POSITIVE_INFINITY) : 0,
    forRatio_kg: isRich ? (secondForCarbonToNitrogen_kg(ratio) ?? Number.POSITIVE_INFINITY) : 0,
  };
}

/** The more of the two. */
export function needed_kg({ forMoisture_kg, forRatio_kg }: DryNeed): number {
  return Math.max(forMoisture_kg, forRatio_kg);
}

/** A portion by its percentages. */
function stuffOf(portion: Portion): Stuff {
  const ofDry = (kg: number): number => (portion.dry_kg > 0 ? (100 * kg) / portion.dry_kg : 0);
  return {
    wet_kg: portion.wet_kg,
    moisture_pctWet: portionMoisture_pctWet(portion) ?? 0,
    carbon_pctDry: ofDry(portion.carbon_kg),
    nitrogen_pctDry: ofDry(portion.nitrogen_kg),
  };
}
