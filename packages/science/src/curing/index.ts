import { type ListedCalculation, listed } from '../catalogue/index.ts';
import { curingCheck } from './curing-check.ts';
import { yieldEstimate } from './yield-estimate.ts';

/** The calculations about a heap that is done, or nearly. */
export const curingCalculations: readonly ListedCalculation[] = [listed(yieldEstimate), listed(curingCheck)];

export { type CuringCheck, type CuringInput, compostSmellIds, curingCheck, type LimitRead } from './curing-check.ts';
export { maturityParameters, type RipenessId, ripenessIds } from './maturity-parameters.ts';
export { yieldEstimate } from './yield-estimate.ts';
export type { HeapYield, PastHeap, YieldInput, YieldNote } from './yield-io.ts';
export { type ShelterId, shelterIds } from './yield-parameters.ts';
