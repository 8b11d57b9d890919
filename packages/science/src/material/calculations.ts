import { type ListedCalculation, listed } from '../catalogue/index.ts';
import { materialMeasured } from './material-measured.ts';
import { moistureFromSqueezeCalculation } from './moisture-from-squeeze.ts';

/** The calculations about single materials. */
export const materialCalculations: readonly ListedCalculation[] = [
  listed(moistureFromSqueezeCalculation),
  listed(materialMeasured),
];
