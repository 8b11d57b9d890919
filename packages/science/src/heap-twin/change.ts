import { carryAmmonia } from './ammonia-passing.ts';
import { FRESH_OXYGEN_kgPerKg } from './constants.ts';
import { drain } from './draining.ts';
import { findDraught, type Setting } from './draught.ts';
import { lookInside } from './inside.ts';
import { LINE } from './ledger.ts';
import { balanceOxygen } from './oxygen.ts';
import { carry, holdVapourBack } from './passing.ts';
import { rot } from './rotting.ts';
import { insidePlaces, type Moment, slateSizes } from './slate.ts';
import type { Weather } from './surroundings.ts';

const { DRAWN_kgPerS } = insidePlaces;
const { ROW } = slateSizes;

/**
 * How fast everything in a heap changes at one moment, written beside what it holds: the right-hand side of the model.
 *
 * @param step_s the step that begins or ends there, so that no more leaves a shell in it than is there; 0 for the bare rates
 */
export function findRates(
  flat: Float64Array,
  moment: Moment,
  setting: Setting,
  weather: Weather,
  step_s: number,
): void {
  const { traits } = setting;
  const { plumeContact_share } = traits;
  const left_share = lookInside(flat, moment, traits);
  findDraught(flat, moment, setting, weather, left_share);
  if (step_s > 0) holdVapourBack(flat, moment, weather, plumeContact_share, step_s);
  const drawn_kgPerS = flat[flat.length - ROW + moment.inside + DRAWN_kgPerS] as number;
  moment.flows[LINE.oxygenDrawnIn_kg] = FRESH_OXYGEN_kgPerKg * drawn_kgPerS;
  moment.flows[LINE.oxygenSupplied_kg] = balanceOxygen(flat, moment, traits);
  rot(flat, moment, traits);
  carry(flat, moment, weather, plumeContact_share);
  drain(flat, moment, setting, weather);
  carryAmmonia(flat, moment, traits);
}
