import { type ListedCalculation, listed } from '../catalogue/index.ts';
import { bedFill } from './bed-fill.ts';
import { pottingMix } from './potting-mix.ts';

/** The calculations about potting mixes and raised beds. */
export const blendCalculations: readonly ListedCalculation[] = [listed(pottingMix), listed(bedFill)];

export type { OnHand, PartAmount } from './amounts.ts';
export { bedFill } from './bed-fill.ts';
export { type BedFill, type BedFillInput, standsOnIds, wallIds } from './bed-fill-io.ts';
export { type CompostKnown, madeOfIds, smellIds } from './compost.ts';
export { baseIds, methodIds, type PartId, type Parts, partIds, recipeIds, useIds, vesselIds } from './parameters.ts';
export { pottingMix } from './potting-mix.ts';
export type { PottingMix, PottingMixInput, Wanted } from './potting-mix-io.ts';
