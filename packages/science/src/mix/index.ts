import { type ListedCalculation, listed } from '../catalogue/index.ts';
import { buildCard } from './build-card.ts';
import { bulkDensityFromBucket } from './bulk-density-from-bucket.ts';
import { mixBalance } from './mix-balance.ts';
import { mixSolve } from './mix-solve.ts';
import { moistureFromWeights } from './moisture-from-weights.ts';
import { nitrogenToReach } from './nitrogen-to-reach.ts';
import { waterToAdd } from './water-to-add.ts';

/** The calculations about what goes into a heap. */
export const mixCalculations: readonly ListedCalculation[] = [
  listed(mixBalance),
  listed(waterToAdd),
  listed(mixSolve),
  listed(buildCard),
  listed(nitrogenToReach),
  listed(moistureFromWeights),
  listed(bulkDensityFromBucket),
];

export type { CardLayer, CardPart, NoteCode, Role } from './arrange.ts';
export type { Judged, JudgedQuantity, Verdict } from './bands.ts';
export {
  type BuildCard,
  type BuildCardInput,
  buildCard,
  type CardLine,
  type ChopNote,
  type Starter,
} from './build-card.ts';
export { bulkDensityFromBucket } from './bulk-density-from-bucket.ts';
export { type Filled, shareOfFull } from './filled.ts';
export type { Ingredient, Permitted, Stuffed } from './ingredient.ts';
export { type Aim, aims } from './leaning.ts';
export { type MixBalance, type MixBalanceInput, mixBalance } from './mix-balance.ts';
export type { Bay, MixInput } from './mix-input.ts';
export { mixSolve } from './mix-solve.ts';
export { moistureFromWeights } from './moisture-from-weights.ts';
export {
  type NitrogenToReach,
  type NitrogenToReachInput,
  nitrogenGoals_ratio,
  nitrogenGrade_pctAsIs,
  nitrogenToReach,
} from './nitrogen-to-reach.ts';
export { materialRules } from './parameters.ts';
export type { SaltClass, Salts } from './salts.ts';
export type { ChargeId } from './search.ts';
export type { Season } from './season.ts';
export {
  type Alternative,
  type Fetch,
  type Mend,
  type MixSolution,
  type MixSolveInput,
  type TradeOff,
  type Used,
  withAim,
} from './solution.ts';
export type { Lack, Standing } from './standing.ts';
export type { StarterNote } from './starters.ts';
export type { StockLine } from './stock.ts';
export { thickestFines_m, type Warning, type WarningCode } from './warnings.ts';
export { type Drier, type WaterToAdd, type WaterToAddInput, waterToAdd } from './water-to-add.ts';
