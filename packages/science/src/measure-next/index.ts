import { type ListedCalculation, listed } from '../catalogue/index.ts';
import { bestMeasurement } from './best-measurement.ts';

/** The calculation about what to measure before a mix is laid. */
export const measureNextCalculations: readonly ListedCalculation[] = [listed(bestMeasurement)];

export {
  type BestMeasurement,
  type BestMeasurementInput,
  bestMeasurement,
  type ValuedCheck,
} from './best-measurement.ts';
export type { CheckId } from './checks.ts';
