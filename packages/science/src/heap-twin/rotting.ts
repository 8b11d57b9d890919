import { LINE } from './ledger.ts';
import { DAY_S, type Traits, twinParameters } from './parameters.ts';
import { heldPlaces, insidePlaces, type Moment, room, slateSizes } from './slate.ts';

const {
  ACTIVITY_share,
  AMMONIACAL_N_kg,
  CELLULOSE_kg,
  ENERGY_J,
  FAST_kg,
  HEMICELLULOSE_kg,
  LIGNIN_kg,
  NITRATE_N_kg,
  ORGANIC_N_kg,
  PH,
  VOLATILE_LOST_kgPerS,
  WATER_kg,
} = heldPlaces;
const {
  FED_share,
  FREED_kgPerKg,
  LIVELINESS_share,
  NITRIFYING_kgPerS,
  PACE_share,
  SLOW_PACE_share,
  TAKEN_kgPerKg,
  TEMP_degC,
  WARMTH_share,
} = insidePlaces;
const { flat } = room;
const { ROW } = slateSizes;

const WATER_JPerKgK = twinParameters.waterHeat_JPerKgK.value;
const ORGANIC_JPerKgK = twinParameters.organicHeat_JPerKgK.typical;
const FAST_OXYGEN_kgPerKg = twinParameters.pools.fast.oxygen_kgPerKg;
const FAST_WATER_kgPerKg = twinParameters.pools.fast.water_kgPerKg;
const FAST_CARBON_kgPerKg = twinParameters.pools.fast.carbon_kgPerKg;
const HEMICELLULOSE_OXYGEN_kgPerKg = twinParameters.pools.hemicellulose.oxygen_kgPerKg;
const HEMICELLULOSE_WATER_kgPerKg = twinParameters.pools.hemicellulose.water_kgPerKg;
const HEMICELLULOSE_CARBON_kgPerKg = twinParameters.pools.hemicellulose.carbon_kgPerKg;
const CELLULOSE_OXYGEN_kgPerKg = twinParameters.pools.cellulose.oxygen_kgPerKg;
const CELLULOSE_WATER_kgPerKg = twinParameters.pools.cellulose.water_kgPerKg;
const CELLULOSE_CARBON_kgPerKg = twinParameters.pools.cellulose.carbon_kgPerKg;
const LIGNIN_OXYGEN_kgPerKg = twinParameters.pools.lignin.oxygen_kgPerKg;
const LIGNIN_WATER_kgPerKg = twinParameters.pools.lignin.water_kgPerKg;
const LIGNIN_CARBON_kgPerKg = twinParameters.pools.lignin.carbon_kgPerKg;
const NITRIFIED_PER_OXYGEN = 1 / twinParameters.oxygenPerNitrified_kgPerKg.value;
const DENITRIFIED_perS = twinParameters.denitrification_perDay.value / DAY_S;
const SOURING_perS = twinParameters.acidity.rate_perDay / DAY_S;
const {
  ripePH: RIPE_PH,
  sourPH: SOUR_PH,
  ammoniaRaises: AMMONIA_RAISES_PH,
  ammoniaHalf_kgPerKg: AMMONIA_HALF_kgPerKg,
} = twinParameters.acidity;
const DYING_perS = twinParameters.dying_perDay.value / DAY_S;
const DORMANT_share = twinParameters.dormant_share.value;
const KILL_degC = twinParameters.heatKill.above_degC;
const KILLED_perKAndS = twinParameters.heatKill.perKAndDay / DAY_S;
const TRACE_KG = 1e-12;

/** Rotting, with its heat, water and nitrogen; the microbes' growth; sourness. */
export function rot({ rowsEnd, held, inside, rates, flows }: Moment, traits: Traits): void {
  const {
    fast_perS,
    hemicellulose_perS,
    cellulose_perS,
    lignin_perS,
    heat_JPerKgOxygen,
    eatenPerBreathed,
    growth_perS,
  } = traits;
  const perFreshFed = 1 / traits.freshFed_share;
  let sumMade = 0;
  let sumMatter = 0;
  let sumFormed = 0;
  let sumEaten = 0;
  let sumNitrified = 0;
  let sumBreathed = 0;
  let sumDenitrified = 0;
  for (let row = 0; row < rowsEnd; row += ROW) {
    const has = row + held;
    const at = row + inside;
    const rate = row + rates;
    const temp_degC = flat[at + TEMP_degC] as number;
    const fed_share = flat[at + FED_share] as number;
    const warmth = flat[at + WARMTH_share] as number;
    const pace = (flat[at + PACE_share] as number) * fed_share;
    const fast = pace * fast_perS * (flat[has + FAST_kg] as number);
    const slowPace = (flat[at + SLOW_PACE_share] as number) * fed_share;
    const hemicellulose = slowPace * hemicellulose_perS * (flat[has + HEMICELLULOSE_kg] as number);
    const cellulose = slowPace * cellulose_perS * (flat[has + CELLULOSE_kg] as number);
    const lignin = slowPace * lignin_perS * (flat[has + LIGNIN_kg] as number);
    const eaten =
      FAST_OXYGEN_kgPerKg * fast +
      HEMICELLULOSE_OXYGEN_kgPerKg * hemicellulose +
      CELLULOSE_OXYGEN_kgPerKg * cellulose +
      LIGNIN_OXYGEN_kgPerKg * lignin;
    const formed =
      FAST_WATER_kgPerKg * fast +
      HEMICELLULOSE_WATER_kgPerKg * hemicellulose +
      CELLULOSE_WATER_kgPerKg * cellulose +
      LIGNIN_WATER_kgPerKg * lignin;
    const breathed =
      FAST_CARBON_kgPerKg * fast +
      HEMICELLULOSE_CARBON_kgPerKg * hemicellulose +
      CELLULOSE_CARBON_kgPerKg * cellulose +
      LIGNIN_CARBON_kgPerKg * lignin;
    const lost = fast + hemicellulose + cellulose + lignin;
    const made_W = heat_JPerKgOxygen * eaten;
    const matter_W = temp_degC * (WATER_JPerKgK * formed - ORGANIC_JPerKgK * lost);
    flat[rate + FAST_kg] = -fast;
    flat[rate + HEMICELLULOSE_kg] = -hemicellulose;
    flat[rate + CELLULOSE_kg] = -cellulose;
    flat[rate + LIGNIN_kg] = -lignin;
    flat[rate + VOLATILE_LOST_kgPerS] = lost;
    flat[rate + ENERGY_J] = made_W + matter_W;
    flat[rate + WATER_kg] = formed;

    // Nitrogen set free or taken up: of the carbon eaten a part is kept as microbes, the rest breathed out.
    const carbonEaten = breathed * eatenPerBreathed;
    const freed = carbonEaten * (flat[at + FREED_kgPerKg] as number);
    const ammoniacalN_kg = flat[has + AMMONIACAL_N_kg] as number;
    const nitrateN_kg = flat[has + NITRATE_N_kg] as number;
    const taken = carbonEaten * (flat[at + TAKEN_kgPerKg] as number);
    const taken_perKg = taken === 0 ? 0 : taken / (ammoniacalN_kg + nitrateN_kg + TRACE_KG);
    const ammonium = taken_perKg * ammoniacalN_kg;
    const nitrate = taken_perKg * nitrateN_kg;
    const nitrifying = (flat[at + NITRIFYING_kgPerS] as number) * fed_share;
    const nitrified = nitrifying * NITRIFIED_PER_OXYGEN;
    const missing = 1 - fed_share * perFreshFed;
    const lack = Math.max(missing, 0);
    const denitrified = DENITRIFIED_perS * lack * warmth * nitrateN_kg;
    flat[rate + ORGANIC_N_kg] = ammonium + nitrate - freed;
    flat[rate + AMMONIACAL_N_kg] = freed - ammonium - nitrified;
    flat[rate + NITRATE_N_kg] = nitrified - nitrate - denitrified;

    const activity = flat[has + ACTIVITY_share] as number;
    const growing_perS = growth_perS * (flat[at + LIVELINESS_share] as number) * fed_share;
    const dying_perS = temp_degC > KILL_degC ? DYING_perS + KILLED_perKAndS * (temp_degC - KILL_degC) : DYING_perS;
    flat[rate + ACTIVITY_share] = growing_perS * activity * (1 - activity) - dying_perS * (activity - DORMANT_share);

    const half_kg = AMMONIA_HALF_kgPerKg * ((flat[has + WATER_kg] as number) + TRACE_KG);
    const ripe = RIPE_PH + (AMMONIA_RAISES_PH * ammoniacalN_kg) / (ammoniacalN_kg + half_kg);
    const heading = ripe + lack * lack * (SOUR_PH - ripe);
    flat[rate + PH] = SOURING_perS * warmth * activity * (heading - (flat[has + PH] as number));

    sumMade += made_W;
    sumMatter += matter_W;
    sumFormed += formed;
    sumEaten += eaten;
    sumNitrified += nitrifying;
    sumBreathed += breathed;
    sumDenitrified += denitrified;
  }
  flows[LINE.heatMade_J] = sumMade;
  flows[LINE.heatWithMatter_J] = sumMatter;
  flows[LINE.waterFormed_kg] = sumFormed;
  flows[LINE.oxygenEaten_kg] = sumEaten;
  flows[LINE.oxygenNitrified_kg] = sumNitrified;
  flows[LINE.carbonBreathed_kg] = sumBreathed;
  flows[LINE.nitrogenDenitrified_kg] = sumDenitrified;
}
