import { type ListedCalculation, listed } from '../catalogue/index.ts';
import { availableNitrogen } from './available-nitrogen.ts';

/** The calculations about what goes on beds. */
export const bedCalculations: readonly ListedCalculation[] = [listed(availableNitrogen)];

export { availableNitrogen } from './available-nitrogen.ts';
export type { AvailableNitrogen, AvailableNitrogenInput, BySource, Dressing, Warmth } from './available-nitrogen-io.ts';
export {
  allCrops,
  type Crop,
  cropById,
  cropGroups,
  type SoilContact,
  saltYield_pct,
  soilContactIds,
} from './crops.ts';
export { type BasisId, type KindId, kindIds, type WeatherId, weatherIds } from './release.ts';
