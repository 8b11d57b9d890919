import { type ListedCalculation, listed } from '../catalogue/index.ts';
import { ammoniaSplit } from './ammonia-split.ts';
import { heapRun } from './heap-run.ts';
import { heapSize } from './heap-size.ts';
import { heatBalance } from './heat-balance.ts';
import { oxygenInHeap } from './oxygen-in-heap.ts';

export { USUAL_DAYS as USUAL_RUN_DAYS, USUAL_DOME, USUAL_MEMBERS } from './heap-follow.ts';
export { isTooHigh, shapeOn, tallestHeap_m } from './heap-place.ts';
export { heapRun } from './heap-run.ts';
export type { Course, HeapRunAnswer, HeapRunNote, PlaceFilled } from './heap-run-answer.ts';
export { type HeapRunInput, startBounds_degC, type ToldAct } from './heap-run-input.ts';
export { type HeapSize, type HeapSizeInput, heapSize } from './heap-size.ts';
export { type HeapShape, withVolume } from './shape.ts';
export {
  blanketBounds_m,
  type HeapCoverId,
  type HeapShelterId,
  type HeapWallId,
  heapBlanketIds,
  heapCoverIds,
  heapWallIds,
  isBlanket,
  type NamedStanding,
  usualBlanket_m,
} from './standings.ts';
export type { ToldReading, ToldWeather } from './weather-input.ts';

/** What the catalogue holds of the physical model of a heap. */
export const heapTwinCalculations: readonly ListedCalculation[] = [
  listed(heapRun),
  listed(heapSize),
  listed(heatBalance),
  listed(oxygenInHeap),
  listed(ammoniaSplit),
];
