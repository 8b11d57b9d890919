import { type ListedCalculation, listed } from '../catalogue/index.ts';
import { beanTestCalculation } from './bean-test.ts';
import { inputCheck } from './input-check.ts';

/** The calculations about what may go into a heap. */
export const inputCalculations: readonly ListedCalculation[] = [listed(inputCheck), listed(beanTestCalculation)];

export { type BeanTest, type BeanTestInput, beanTestCalculation, hurtIds } from './bean-test.ts';
export { type HeapKind, heapKinds, type InputCheck, type InputCheckInput, inputCheck } from './input-check.ts';
export { inputParameters, sprayedIds } from './parameters.ts';
