import { LINE } from './ledger.ts';
import { DAY_S, type Traits, twinParameters } from './parameters.ts';
import { held, inside, type Moment, rates } from './slate.ts';

const {
  ACTIVITY_share,
  AMMONIACAL_N_kg,
  CELLULOSE_kg,
  FAST_kg,
  HEMICELLULOSE_kg,
  LIGNIN_kg,
  NITRATE_N_kg,
  PH,
  WATER_kg,
} = held;
const {
  ACTIVITY_perS,
  AMMONIACAL_N_kgPerS,
  CELLULOSE_kgPerS,
  ENERGY_JPerS,
  FAST_kgPerS,
  HEMICELLULOSE_kgPerS,
  LIGNIN_kgPerS,
  NITRATE_N_kgPerS,
  ORGANIC_N_kgPerS,
  PH_perS,
  VOLATILE_LOST_kgPerS,
  WATER_kgPerS,
} = rates;
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
} = inside;

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
export function rot({ count, from, flows }: Moment, traits: Traits): void {
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
  for (let shell = 0; shell < count; shell++) {
    const at = shell + from;
    const temp_degC = TEMP_degC[at] as number;
    const fed_share = FED_share[at] as number;
    const warmth = WARMTH_share[at] as number;
    const pace = (PACE_share[at] as number) * fed_share;
    const fast = pace * fast_perS * (FAST_kg[at] as number);
    const slowPace = (SLOW_PACE_share[at] as number) * fed_share;
    const hemicellulose = slowPace * hemicellulose_perS * (HEMICELLULOSE_kg[at] as number);
    const cellulose = slowPace * cellulose_perS * (CELLULOSE_kg[at] as number);
    const lignin = slowPace * lignin_perS * (LIGNIN_kg[at] as number);
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
    FAST_kgPerS[at] = -fast;
    HEMICELLULOSE_kgPerS[at] = -hemicellulose;
    CELLULOSE_kgPerS[at] = -cellulose;
    LIGNIN_kgPerS[at] = -lignin;
    VOLATILE_LOST_kgPerS[at] = lost;
    ENERGY_JPerS[at] = made_W + matter_W;
    WATER_kgPerS[at] = formed;

    // Nitrogen set free or taken up: of the carbon eaten a part is kept as microbes, the rest breathed out.
    const carbonEaten = breathed * eatenPerBreathed;
    const freed = carbonEaten * (FREED_kgPerKg[at] as number);
    const ammoniacalN_kg = AMMONIACAL_N_kg[at] as number;
    const nitrateN_kg = NITRATE_N_kg[at] as number;
    const taken = carbonEaten * (TAKEN_kgPerKg[at] as number);
    const taken_perKg = taken === 0 ? 0 : taken / (ammoniacalN_kg + nitrateN_kg + TRACE_KG);
    const ammonium = taken_perKg * ammoniacalN_kg;
    const nitrate = taken_perKg * nitrateN_kg;
    const nitrifying = (NITRIFYING_kgPerS[at] as number) * fed_share;
    const nitrified = nitrifying * NITRIFIED_PER_OXYGEN;
    const missing = 1 - fed_share * perFreshFed;
    const lack = Math.max(missing, 0);
    const denitrified = DENITRIFIED_perS * lack * warmth * nitrateN_kg;
    ORGANIC_N_kgPerS[at] = ammonium + nitrate - freed;
    AMMONIACAL_N_kgPerS[at] = freed - ammonium - nitrified;
    NITRATE_N_kgPerS[at] = nitrified - nitrate - denitrified;

    const activity = ACTIVITY_share[at] as number;
    const growing_perS = growth_perS * (LIVELINESS_share[at] as number) * fed_share;
    const dying_perS = temp_degC > KILL_degC ? DYING_perS + KILLED_perKAndS * (temp_degC - KILL_degC) : DYING_perS;
    ACTIVITY_perS[at] = growing_perS * activity * (1 - activity) - dying_perS * (activity - DORMANT_share);

    const half_kg = AMMONIA_HALF_kgPerKg * ((WATER_kg[at] as number) + TRACE_KG);
    const ripe = RIPE_PH + (AMMONIA_RAISES_PH * ammoniacalN_kg) / (ammoniacalN_kg + half_kg);
    const heading = ripe + lack * lack * (SOUR_PH - ripe);
    PH_perS[at] = SOURING_perS * warmth * activity * (heading - (PH[at] as number));

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
