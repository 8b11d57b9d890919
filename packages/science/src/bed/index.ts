import { type ListedCalculation, listed } from '../catalogue/index.ts';
import { availableNitrogen } from './available-nitrogen.ts';
import { holdingBalance } from './balance/holding-balance.ts';
import { bedBudget } from './bed-budget.ts';
import { charBlend } from './char/index.ts';
import { droppings } from './droppings.ts';
import { limeRate } from './lime-rate.ts';
import { shareOut } from './share-out.ts';
import { soilTestRead } from './soil-test.ts';
import { soilWater } from './soil-water.ts';
import { spreadDepth } from './spread-depth.ts';
import { spreadRate } from './spread-rate.ts';
import { buildUp } from './years/build-up.ts';
import { soilCarbon } from './years/soil-carbon.ts';

/** The calculations about what goes on beds. */
export const bedCalculations: readonly ListedCalculation[] = [
  listed(availableNitrogen),
  listed(bedBudget),
  listed(holdingBalance),
  listed(spreadRate),
  listed(spreadDepth),
  listed(shareOut),
  listed(soilTestRead),
  listed(soilWater),
  listed(limeRate),
  listed(droppings),
  listed(charBlend),
  listed(soilCarbon),
  listed(buildUp),
];

export { ashRakedIn_m } from './ash.ts';
export { availableNitrogen } from './available-nitrogen.ts';
export type { AvailableNitrogen, AvailableNitrogenInput, BySource, Dressing, Warmth } from './available-nitrogen-io.ts';
export {
  type BalanceAct,
  type BalanceId,
  type BalanceRow,
  balanceIds,
  type HoldingBalance,
  type HoldingBalanceInput,
  holdingBalance,
  type LeakId,
} from './balance/holding-balance.ts';
export { bedBudget } from './bed-budget.ts';
export type {
  BedBudget,
  BedBudgetInput,
  BedCrop,
  Before,
  BudgetAdviceId,
  ElementBudget,
  ElementId,
  Grade,
  PutOn,
  SoilTest,
  Supplied,
} from './bed-budget-io.ts';
export { budgetParameters, type ClassId, classIds } from './budget-parameters.ts';
export {
  type CharBlend,
  type CharBlendInput,
  type CharBounds,
  type CharDose,
  charBlend,
  charParameters,
  charSoils,
} from './char/index.ts';
export {
  allCrops,
  type Crop,
  cropById,
  cropGroups,
  type SoilContact,
  saltYield_pct,
  soilContactIds,
} from './crops.ts';
export { type Droppings, type DroppingsInput, type DungAnimal, droppings, dungAnimals } from './droppings.ts';
export { type LimeRate, type LimeRateInput, limeRate, limeStuffs, textureIds } from './lime-rate.ts';
export { type BasisId, type KindId, kindIds, type WeatherId, weatherIds } from './release.ts';
export { type ShareBed, type ShareOut, type ShareOutInput, shareOut } from './share-out.ts';
export { areaSlips, bedBounds, depthSlips } from './slips.ts';
export {
  type SoilFigure,
  type SoilMethod,
  type SoilRead,
  type SoilTestInput,
  type SoilTestRead,
  type SoilUnit,
  soilFigureSchema,
  soilMethods,
  soilTestRead,
  soilUnits,
} from './soil-test.ts';
export { type LayerWater, type SoilLayer, type SoilWater, type SoilWaterInput, soilWater } from './soil-water.ts';
export { type SpreadDepth, type SpreadDepthInput, spreadDepth } from './spread-depth.ts';
export { spreadLimits } from './spread-limits.ts';
export { spreadRate } from './spread-rate.ts';
export {
  type LimitId,
  limitIds,
  type Prices,
  type Product,
  type ProductRate,
  type SpreadRate,
  type SpreadRateInput,
} from './spread-rate-io.ts';
export {
  type BuildUp,
  type BuildUpAct,
  type BuildUpInput,
  type BuildUpWay,
  type BuiltUp,
  buildUp,
} from './years/build-up.ts';
export { carbonParameters, type SoilTextureId, soilTextureIds } from './years/carbon-parameters.ts';
export type { YearlyCrop } from './years/harvests.ts';
export { soilCarbon } from './years/soil-carbon.ts';
export type { CarbonNote, SoilCarbon, SoilCarbonInput } from './years/soil-carbon-io.ts';
export type { Yearly } from './years/yearly-plan.ts';
