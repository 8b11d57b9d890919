import { carryAmmonia } from './ammonia-passing.ts';
import { FRESH_OXYGEN_kgPerKg } from './constants.ts';
import { drain, rainOn } from './draining.ts';
import { findDraught, type Setting } from './draught.ts';
import { lookInside } from './inside.ts';
import { LINE } from './ledger.ts';
import { balanceOxygen } from './oxygen.ts';
import { carry, holdVapourBack } from './passing.ts';
import { rot } from './rotting.ts';
import { inside, type Moment } from './slate.ts';
import type { Weather } from './surroundings.ts';

const { DRAWN_kgPerS } = inside;

/**
 * How fast everything in a heap changes at one moment, written beside what it holds: the right-hand side of the model.
 *
 * @param step_s the step that begins or ends there, so that no more leaves a shell in it than is there; 0 for the bare rates
 */
export function findRates(moment: Moment, setting: Setting, weather: Weather, step_s: number): void {
  const { traits } = setting;
  const { plumeContact_share } = traits;
  const left_share = lookInside(moment, traits);
  findDraught(moment, setting, weather, left_share);
  if (step_s > 0) holdVapourBack(moment, weather, plumeContact_share, step_s);
  const drawn_kgPerS = DRAWN_kgPerS[moment.from + moment.count - 1] as number;
  moment.flows[LINE.oxygenDrawnIn_kg] = FRESH_OXYGEN_kgPerKg * drawn_kgPerS;
  moment.flows[LINE.oxygenSupplied_kg] = balanceOxygen(moment, traits);
  rot(moment, traits);
  carry(moment, weather, plumeContact_share);
  drain(moment, traits);
  moment.flows[LINE.waterRained_kg] = 0;
  moment.flows[LINE.heatWithRain_J] = 0;
  rainOn(moment, setting, weather);
  carryAmmonia(moment, traits);
}
