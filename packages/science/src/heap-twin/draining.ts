import type { Setting } from './draught.ts';
import { DRAINING_perS, held_kg } from './inside.ts';
import { LINE } from './ledger.ts';
import { type Traits, twinParameters } from './parameters.ts';
import { held, inside, lasting, type Moment, rates } from './slate.ts';
import { energy_J } from './state.ts';
import type { Weather } from './surroundings.ts';

const { AMMONIACAL_N_kg, NITRATE_N_kg, WATER_kg } = held;
const { AMMONIACAL_N_kgPerS, ENERGY_JPerS, NITRATE_N_kgPerS, WATER_kgPerS } = rates;
const { CHAR_kg, PLAN_share } = lasting;
const { DRY_kg, PORES_m3, TEMP_degC } = inside;

const WATER_JPerKgK = twinParameters.waterHeat_JPerKgK.value;
/** Of what runs off a shell, the half that comes from above its middle may fall on the shells within. */
const ABOVE_share = 0.5;

/** Lets rain fall on the outermost shell in place of what fell on it: a moment lies in the step before it and in that after it. */
export function rainOn({ count, from, flows }: Moment, { shells, standing }: Setting, weather: Weather): void {
  const rained = weather.rain_kgPerM2S * standing.rain_share * shells.outline.plan_m2;
  // Below freezing it falls as snow.
  const rained_W = rained * energy_J(weather.temp_degC, WATER_JPerKgK, 1);
  const fell = flows[LINE.waterRained_kg] as number;
  const fell_W = flows[LINE.heatWithRain_J] as number;
  give(count - 1 + from, 1, rained - fell, rained_W - fell_W, 0, 0);
  flows[LINE.waterRained_kg] = rained;
  flows[LINE.heatWithRain_J] = rained_W;
}

/** Water beyond what a shell holds: some to the shells within, the rest to the ground. */
export function drain({ count, from, flows }: Moment, traits: Traits): void {
  const last = count - 1;
  let drained = 0;
  let drained_W = 0;
  let drainedN = 0;
  let planWithin = 1;
  for (let shell = last; shell >= 0; shell--) {
    const at = shell + from;
    const water_kg = WATER_kg[at] as number;
    const char_kg = CHAR_kg[shell] as number;
    const stuff_kg = (DRY_kg[at] as number) - char_kg;
    const over_kg = water_kg - held_kg(stuff_kg, char_kg, PORES_m3[at] as number, traits.holds_kgPerKg);
    const plan = planWithin;
    planWithin -= PLAN_share[shell] as number;
    const temp_degC = TEMP_degC[at] as number;
    if (over_kg <= 0 || temp_degC <= 0) continue;
    const off = DRAINING_perS * over_kg;
    const inwards = shell === 0 ? 0 : (ABOVE_share * Math.max(0, planWithin)) / plan;
    const off_W = off * WATER_JPerKgK * temp_degC;
    // Of the ammoniacal nitrogen what is on charcoal stays.
    const dissolving_L = water_kg + traits.charSorption_LPerKg * char_kg;
    const ammonium = (off * (AMMONIACAL_N_kg[at] as number)) / dissolving_L;
    const nitrate = (off * (NITRATE_N_kg[at] as number)) / water_kg;
    give(at, -1, off, off_W, ammonium, nitrate);
    if (shell > 0) give(at - 1, inwards, off, off_W, ammonium, nitrate);
    drained += (1 - inwards) * off;
    drained_W += (1 - inwards) * off_W;
    drainedN += (1 - inwards) * (ammonium + nitrate);
  }
  flows[LINE.waterDrained_kg] = drained;
  flows[LINE.heatDrained_J] = drained_W;
  flows[LINE.nitrogenDrained_kg] = drainedN;
}

/** Adds a share of what runs, per second, to a shell's rates. */
function give(at: number, share: number, water: number, heat_W: number, ammonium: number, nitrate: number): void {
  ENERGY_JPerS[at] = (ENERGY_JPerS[at] as number) + share * heat_W;
  WATER_kgPerS[at] = (WATER_kgPerS[at] as number) + share * water;
  AMMONIACAL_N_kgPerS[at] = (AMMONIACAL_N_kgPerS[at] as number) + share * ammonium;
  NITRATE_N_kgPerS[at] = (NITRATE_N_kgPerS[at] as number) + share * nitrate;
}
