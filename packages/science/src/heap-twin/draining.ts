import type { Setting } from './draught.ts';
import { DRAINING_perS, held_kg } from './inside.ts';
import { LINE } from './ledger.ts';
import { type Traits, twinParameters } from './parameters.ts';
import { heldPlaces, insidePlaces, lastingPlaces, type Moment, room, slateSizes } from './slate.ts';
import type { Weather } from './surroundings.ts';

const { AMMONIACAL_N_kg, ENERGY_J, NITRATE_N_kg, WATER_kg } = heldPlaces;
const { CHAR_kg, PLAN_share } = lastingPlaces;
const { DRY_kg, PORES_m3, TEMP_degC } = insidePlaces;
const { flat } = room;
const { ROW } = slateSizes;

const WATER_JPerKgK = twinParameters.waterHeat_JPerKgK.value;
/** Of what runs off a shell, the half that comes from above its middle may fall on the shells within. */
const ABOVE_share = 0.5;

/** Lets rain fall on the outermost shell in place of what fell on it: a moment lies in the step before it and in that after it. */
export function rainOn({ rowsEnd, rates, flows }: Moment, { shells, standing }: Setting, weather: Weather): void {
  const rained = weather.rain_kgPerM2S * standing.rain_share * shells.outline.plan_m2;
  const rained_W = rained * WATER_JPerKgK * weather.temp_degC;
  const fell = flows[LINE.waterRained_kg] as number;
  const fell_W = flows[LINE.heatWithRain_J] as number;
  give(rowsEnd - ROW + rates, 1, rained - fell, rained_W - fell_W, 0, 0);
  flows[LINE.waterRained_kg] = rained;
  flows[LINE.heatWithRain_J] = rained_W;
}

/** Water beyond what a shell holds: some to the shells within, the rest to the ground. */
export function drain({ rowsEnd, held, inside, rates, flows }: Moment, traits: Traits): void {
  const last = rowsEnd - ROW;
  let drained = 0;
  let drained_W = 0;
  let drainedN = 0;
  let planWithin = 1;
  for (let row = last; row >= 0; row -= ROW) {
    const has = row + held;
    const at = row + inside;
    const water_kg = flat[has + WATER_kg] as number;
    const char_kg = flat[row + CHAR_kg] as number;
    const stuff_kg = (flat[at + DRY_kg] as number) - char_kg;
    const over_kg = water_kg - held_kg(stuff_kg, char_kg, flat[at + PORES_m3] as number, traits.holds_kgPerKg);
    const plan = planWithin;
    planWithin -= flat[row + PLAN_share] as number;
    const temp_degC = flat[at + TEMP_degC] as number;
    if (over_kg <= 0 || temp_degC <= 0) continue;
    const off = DRAINING_perS * over_kg;
    const inwards = row === 0 ? 0 : (ABOVE_share * Math.max(0, planWithin)) / plan;
    const off_W = off * WATER_JPerKgK * temp_degC;
    // Of the ammoniacal nitrogen what is on charcoal stays.
    const dissolving_L = water_kg + traits.charSorption_LPerKg * char_kg;
    const ammonium = (off * (flat[has + AMMONIACAL_N_kg] as number)) / dissolving_L;
    const nitrate = (off * (flat[has + NITRATE_N_kg] as number)) / water_kg;
    const rate = row + rates;
    give(rate, -1, off, off_W, ammonium, nitrate);
    if (row > 0) give(rate - ROW, inwards, off, off_W, ammonium, nitrate);
    drained += (1 - inwards) * off;
    drained_W += (1 - inwards) * off_W;
    drainedN += (1 - inwards) * (ammonium + nitrate);
  }
  flows[LINE.waterDrained_kg] = drained;
  flows[LINE.heatDrained_J] = drained_W;
  flows[LINE.nitrogenDrained_kg] = drainedN;
}

/** Adds a share of what runs, per second, to a shell's rates. */
function give(rate: number, share: number, water: number, heat_W: number, ammonium: number, nitrate: number): void {
  flat[rate + ENERGY_J] = (flat[rate + ENERGY_J] as number) + share * heat_W;
  flat[rate + WATER_kg] = (flat[rate + WATER_kg] as number) + share * water;
  flat[rate + AMMONIACAL_N_kg] = (flat[rate + AMMONIACAL_N_kg] as number) + share * ammonium;
  flat[rate + NITRATE_N_kg] = (flat[rate + NITRATE_N_kg] as number) + share * nitrate;
}
