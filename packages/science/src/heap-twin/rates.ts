import { FLOWS } from './ledger.ts';
import { type Changing, emptyChanging } from './state.ts';

/**
 * How fast a heap changes at one moment, per second: the rate of each quantity of its state that changes by itself, and
 * the flows in the order of the ledger.
 */
export interface Rates extends Changing {
  /** Loss of volatile matter, kg/s, for the heat it carries with it. */
  readonly volatileLost: Float64Array;
  readonly flows: Float64Array;
}

/** Rates of a heap of so many shells, all nought. */
export function noRates(shells: number): Rates {
  // The spread stands last: fields added after one would give every object a shape of its own, and slow each reading of it.
  return { volatileLost: new Float64Array(shells), flows: new Float64Array(FLOWS), ...emptyChanging(shells) };
}
