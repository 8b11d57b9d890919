import { type ListedCalculation, listed } from '../catalogue/index.ts';
import { curingCheck } from './curing-check.ts';
import { siftingTime } from './sifting-time.ts';
import { yieldEstimate } from './yield-estimate.ts';

/** The calculations about a heap that is done, or nearly. */
export const curingCalculations: readonly ListedCalculation[] = [
  listed(yieldEstimate),
  listed(curingCheck),
  listed(siftingTime),
];

export {
  afterTurnBounds_degC,
  type CuringCheck,
  type CuringInput,
  compostSmellIds,
  curingCheck,
  ripenessBounds,
  type SmellId,
} from './curing-check.ts';
export { maturityParameters, type RipenessId, ripenessIds } from './maturity-parameters.ts';
export { type LimitRead, limitOf } from './rating.ts';
export { type SiftingInput, type SiftingTime, siftingTime, siftUses } from './sifting-time.ts';
export { yieldEstimate } from './yield-estimate.ts';
export { type HeapYield, type PastHeap, type YieldInput, type YieldNote, yieldBounds } from './yield-io.ts';
export { type ShelterId, shelterIds } from './yield-parameters.ts';
