import { type ListedCalculation, listed } from '../catalogue/index.ts';
import { heatToHold } from './heat-to-hold.ts';
import { notHeating } from './not-heating.ts';
import { readingPlausibility } from './plausibility.ts';
import { readingMeaning } from './reading-meaning.ts';

export type { ReadingAct, ReadingActId, ReadingCheckId, ReadingReasonId, ReadingWhen } from './act.ts';
export {
  heapLimits_degC,
  heapTriggers,
  type TemperatureBand,
  type TemperatureBandGroup,
  type TemperatureBandId,
  temperatureBandOf,
  temperatureBands,
} from './bands.ts';
export type { ColdActId, ColdAmount } from './cold-act.ts';
export { mildAir_degC } from './cold-found.ts';
export type { ColdCauseId, ColdCheckId, ColdObservationId } from './cold-odds.ts';
export type { Box } from './heat-shape.ts';
export {
  type HeatToHold,
  type HeatToHoldInput,
  heapBounds,
  heatToHold,
  type KeepsHeat,
  type SizeDecision,
  type SizeInSeason,
  type SizeNoteId,
} from './heat-to-hold.ts';
export { type ColdCause, type ColdNoteId, type NotHeating, notHeating } from './not-heating.ts';
export type { NotHeatingInput } from './not-heating-input.ts';
export type { EarlierReading, HeapSmell, ProbePoint, ReadingInput, SqueezeGrade } from './observed.ts';
export {
  type OddCode,
  type Plausibility,
  plausibilityOf,
  readingPlausibility,
  type Suggestion,
  type TypedReading,
} from './plausibility.ts';
export { type ReadingMeaning, type ReadingNoteId, readingMeaning } from './reading-meaning.ts';
export type { HeapState, Lies, TemperatureStanding, TriggerStanding } from './standing.ts';
export type { Direction, ReadingTrend } from './trend.ts';

/** What the catalogue holds about a heap's heat. */
export const heapCalculations: readonly ListedCalculation[] = [
  listed(readingMeaning),
  listed(readingPlausibility),
  listed(heatToHold),
  listed(notHeating),
];
