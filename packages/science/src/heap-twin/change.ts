import { ammoniumAt, waterOverGasAt } from './air-table.ts';
import { FRESH_OXYGEN_kgPerKg } from './constants.ts';
import { findDraught, type Setting } from './draught.ts';
import type { Fields } from './fields.ts';
import { DRAINING_perS, held_kg, lookInside } from './inside.ts';
import { LINE } from './ledger.ts';
import { humidity_kgPerKg, vapour_kgPerM3 } from './moist-air.ts';
import { balanceOxygen } from './oxygen.ts';
import { DAY_S, type Traits, twinParameters } from './parameters.ts';
import type { Rates } from './rates.ts';
import type { HeapState } from './state.ts';
import type { Weather } from './surroundings.ts';

const WATER_JPerKgK = twinParameters.waterHeat_JPerKgK.value;
const ORGANIC_JPerKgK = twinParameters.organicHeat_JPerKgK.typical;
const AIR_JPerKgK = twinParameters.airHeat_JPerKgK.value;
const VAPOUR_JPerKg = twinParameters.vapourAtZero_JPerKg.value;
const VAPOUR_JPerKgK = twinParameters.vapourHeat_JPerKgK.value;
const WATER_kgPerM3 = twinParameters.waterDensity_kgPerM3.value;
const { fast: FAST, hemicellulose: HEMICELLULOSE, cellulose: CELLULOSE, lignin: LIGNIN } = twinParameters.pools;
const PRESSURE_Pa = twinParameters.airPressure_Pa.value;
const OXYGEN_PER_NITRIFIED = twinParameters.oxygenPerNitrified_kgPerKg.value;
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
/** Of what runs off a shell, the half that comes from above its middle may fall on the shells within. */
const ABOVE_share = 0.5;

/** A heap among the members of a run, and where it stands. */
export interface Heap extends Setting {
  readonly traits: Traits;
}

/** Heat in vapour, J/kg above water at 0 °C. */
function vapourHeat_JPerKg(temp_degC: number): number {
  return VAPOUR_JPerKg + VAPOUR_JPerKgK * temp_degC;
}

/**
 * How fast everything in a heap changes at one moment: the right-hand side of the model.
 *
 * @param step_s the step about to be taken, so that no more leaves a shell in it than is there; 0 for the bare rates
 */
export function findRates(
  heap: Heap,
  state: HeapState,
  weather: Weather,
  step_s: number,
  fields: Fields,
  rates: Rates,
): void {
  const left_share = lookInside(state, heap.traits, fields);
  findDraught(fields, state, heap, weather, left_share);
  if (step_s > 0) holdVapourBack(fields, state, weather, heap.traits.plumeContact_share, step_s);
  rates.flows[LINE.oxygenDrawnIn_kg] = FRESH_OXYGEN_kgPerKg * (fields.drawn_kgPerS[heap.shells.count - 1] as number);
  rates.flows[LINE.oxygenSupplied_kg] = balanceOxygen(fields, state, heap.traits);
  rot(heap.traits, state, fields, rates);
  carry(heap.traits.plumeContact_share, weather, fields, rates);
  drain(heap, state, weather, fields, rates);
  carryAmmonia(heap.traits, state, fields, rates);
}

/**
 * A shell about to run dry gives off less: with z the share of its water that would leave in a step, 1/(1 + z²) of it.
 * For the steps in use z is a thousandth, and the bare rates have none of it.
 */
function holdVapourBack(
  fields: Fields,
  state: HeapState,
  weather: Weather,
  contact_share: number,
  step_s: number,
): void {
  const { humidity_kgPerKg: humidity, vapour_Pa } = fields;
  const outside = humidity_kgPerKg(weather.vapour_Pa, PRESSURE_Pa);
  const count = humidity.length;
  const last = count - 1;
  let inner = 0;
  let innerVapour_Pa = 0;
  for (let i = 0; i < count; i++) {
    const here = humidity[i] as number;
    const here_Pa = vapour_Pa[i] as number;
    const beyond = i === last ? outside : (humidity[i + 1] as number);
    const beyond_Pa = i === last ? weather.vapour_Pa : (vapour_Pa[i + 1] as number);
    const innerRisen = i === 0 ? 0 : (fields.risen_kgPerS[i - 1] as number);
    const innerFace = i === 0 ? 0 : (fields.vapourFace_m3PerS[i - 1] as number);
    const perPa = vapour_kgPerM3(fields.temp_degC[i] as number, 1);
    const net_kgPerS =
      (fields.through_kgPerS[i] as number) * here -
      (fields.drawn_kgPerS[i] as number) * beyond -
      contact_share * innerRisen * inner +
      perPa *
        ((fields.vapourFace_m3PerS[i] as number) * (here_Pa - beyond_Pa) + innerFace * (here_Pa - innerVapour_Pa));
    inner = here;
    innerVapour_Pa = here_Pa;
    const z = (step_s * Math.max(0, net_kgPerS)) / ((state.water_kg[i] as number) + TRACE_KG);
    if (z < NOTICEABLE) continue;
    const kept = 1 / (1 + z * z);
    vapour_Pa[i] = here_Pa * kept;
    humidity[i] = here * kept;
    fields.vapourSlope_PaPerK[i] = (fields.vapourSlope_PaPerK[i] as number) * kept;
    fields.humiditySlope_perK[i] = (fields.humiditySlope_perK[i] as number) * kept;
  }
}
/** The square of a smaller share is nothing. */
const NOTICEABLE = 1e-3;

/** Rotting, with its heat, water and nitrogen; the microbes' growth; sourness. */
function rot(traits: Traits, state: HeapState, fields: Fields, rates: Rates): void {
  const count = fields.temp_degC.length;
  let sumMade = 0;
  let sumMatter = 0;
  let sumFormed = 0;
  let sumEaten = 0;
  let sumNitrified = 0;
  let sumBreathed = 0;
  let sumDenitrified = 0;
  for (let i = 0; i < count; i++) {
    const temp_degC = fields.temp_degC[i] as number;
    const fed_share = fields.fed_share[i] as number;
    const warmth = fields.warmth_share[i] as number;
    const pace = (fields.pace_share[i] as number) * fed_share;
    const fast = pace * traits.fast_perS * (state.fast_kg[i] as number);
    const slowPace = (fields.slowPace_share[i] as number) * fed_share;
    const hemicellulose = slowPace * traits.hemicellulose_perS * (state.hemicellulose_kg[i] as number);
    const cellulose = slowPace * traits.cellulose_perS * (state.cellulose_kg[i] as number);
    const lignin = slowPace * traits.lignin_perS * (state.lignin_kg[i] as number);
    const eaten =
      FAST.oxygen_kgPerKg * fast +
      HEMICELLULOSE.oxygen_kgPerKg * hemicellulose +
      CELLULOSE.oxygen_kgPerKg * cellulose +
      LIGNIN.oxygen_kgPerKg * lignin;
    const formed =
      FAST.water_kgPerKg * fast +
      HEMICELLULOSE.water_kgPerKg * hemicellulose +
      CELLULOSE.water_kgPerKg * cellulose +
      LIGNIN.water_kgPerKg * lignin;
    const breathed =
      FAST.carbon_kgPerKg * fast +
      HEMICELLULOSE.carbon_kgPerKg * hemicellulose +
      CELLULOSE.carbon_kgPerKg * cellulose +
      LIGNIN.carbon_kgPerKg * lignin;
    const lost = fast + hemicellulose + cellulose + lignin;
    const made_W = traits.heat_JPerKgOxygen * eaten;
    const matter_W = temp_degC * (WATER_JPerKgK * formed - ORGANIC_JPerKgK * lost);
    rates.fast_kg[i] = -fast;
    rates.hemicellulose_kg[i] = -hemicellulose;
    rates.cellulose_kg[i] = -cellulose;
    rates.lignin_kg[i] = -lignin;
    rates.volatileLost[i] = lost;
    rates.energy_J[i] = made_W + matter_W;
    rates.water_kg[i] = formed;

    // Nitrogen set free or taken up: of the carbon eaten a part is kept as microbes, the rest breathed out.
    const carbonEaten = breathed * traits.eatenPerBreathed;
    const freed = carbonEaten * (fields.freed_kgPerKg[i] as number);
    const ammoniacalN_kg = state.ammoniacalN_kg[i] as number;
    const nitrateN_kg = state.nitrateN_kg[i] as number;
    const taken_perKg = (carbonEaten * (fields.taken_kgPerKg[i] as number)) / (ammoniacalN_kg + nitrateN_kg + TRACE_KG);
    const ammonium = taken_perKg * ammoniacalN_kg;
    const nitrate = taken_perKg * nitrateN_kg;
    const nitrifying = (fields.nitrifying_kgPerS[i] as number) * fed_share;
    const nitrified = nitrifying / OXYGEN_PER_NITRIFIED;
    const lack = Math.max(0, 1 - fed_share / traits.freshFed_share);
    const denitrified = DENITRIFIED_perS * lack * warmth * nitrateN_kg;
    rates.organicN_kg[i] = ammonium + nitrate - freed;
    rates.ammoniacalN_kg[i] = freed - ammonium - nitrified;
    rates.nitrateN_kg[i] = nitrified - nitrate - denitrified;

    const activity = state.activity_share[i] as number;
    const growing_perS = traits.growth_perS * (fields.liveliness_share[i] as number) * fed_share;
    const dying_perS = DYING_perS + KILLED_perKAndS * Math.max(0, temp_degC - KILL_degC);
    rates.activity_share[i] = growing_perS * activity * (1 - activity) - dying_perS * (activity - DORMANT_share);

    const ammonia_kgPerKg = ammoniacalN_kg / ((state.water_kg[i] as number) + TRACE_KG);
    const ripe = RIPE_PH + (AMMONIA_RAISES_PH * ammonia_kgPerKg) / (ammonia_kgPerKg + AMMONIA_HALF_kgPerKg);
    const heading = ripe + lack * lack * (SOUR_PH - ripe);
    rates.pH[i] = SOURING_perS * warmth * activity * (heading - (state.pH[i] as number));

    sumMade += made_W;
    sumMatter += matter_W;
    sumFormed += formed;
    sumEaten += eaten;
    sumNitrified += nitrifying;
    sumBreathed += breathed;
    sumDenitrified += denitrified;
  }
  const { flows } = rates;
  flows[LINE.heatMade_J] = sumMade;
  flows[LINE.heatWithMatter_J] = sumMatter;
  flows[LINE.waterFormed_kg] = sumFormed;
  flows[LINE.oxygenEaten_kg] = sumEaten;
  flows[LINE.oxygenNitrified_kg] = sumNitrified;
  flows[LINE.carbonBreathed_kg] = sumBreathed;
  flows[LINE.nitrogenDenitrified_kg] = sumDenitrified;
}

/** Heat and vapour through the faces and with the draught. */
function carry(plumeContact_share: number, weather: Weather, fields: Fields, rates: Rates): void {
  const count = fields.temp_degC.length;
  const last = count - 1;
  const { energy_J: energy_W, water_kg: water_kgPerS, flows } = rates;
  const outsideHumidity = humidity_kgPerKg(weather.vapour_Pa, PRESSURE_Pa);
  const outsideVapour_kgPerM3 = vapour_kgPerM3(weather.temp_degC, weather.vapour_Pa);
  const outsideAir_JPerKg = AIR_JPerKgK * weather.temp_degC + outsideHumidity * vapourHeat_JPerKg(weather.temp_degC);
  let innerRisen_kgPerS = 0;
  let innerHumidity = 0;
  let innerAir_JPerKg = 0;
  let outWater = 0;
  let outHeat_W = 0;
  for (let i = 0; i < count; i++) {
    const temp_degC = fields.temp_degC[i] as number;
    const humidity = fields.humidity_kgPerKg[i] as number;
    const air_JPerKg = AIR_JPerKgK * temp_degC + humidity * vapourHeat_JPerKg(temp_degC);
    const through = fields.through_kgPerS[i] as number;
    const drawn = fields.drawn_kgPerS[i] as number;
    const risen = fields.risen_kgPerS[i] as number;
    const surface = i === last;
    const nextTemp_degC = surface ? weather.temp_degC : (fields.temp_degC[i + 1] as number);
    const nextHumidity = surface ? outsideHumidity : (fields.humidity_kgPerKg[i + 1] as number);
    const nextAir_JPerKg = surface
      ? outsideAir_JPerKg
      : AIR_JPerKgK * nextTemp_degC + nextHumidity * vapourHeat_JPerKg(nextTemp_degC);
    const handed = plumeContact_share * innerRisen_kgPerS;
    energy_W[i] = (energy_W[i] as number) + drawn * nextAir_JPerKg + handed * innerAir_JPerKg - through * air_JPerKg;
    water_kgPerS[i] = (water_kgPerS[i] as number) + drawn * nextHumidity + handed * innerHumidity - through * humidity;
    const leaving = surface ? risen : (1 - plumeContact_share) * risen;
    outWater += leaving * humidity;
    outHeat_W += leaving * air_JPerKg;
    innerRisen_kgPerS = risen;
    innerHumidity = humidity;
    innerAir_JPerKg = air_JPerKg;

    // Through the face outwards: heat, and vapour with its heat.
    const here_kgPerM3 = vapour_kgPerM3(temp_degC, fields.vapour_Pa[i] as number);
    const next_kgPerM3 = surface
      ? outsideVapour_kgPerM3
      : vapour_kgPerM3(nextTemp_degC, fields.vapour_Pa[i + 1] as number);
    const vapour_kgPerS = (fields.vapourFace_m3PerS[i] as number) * (here_kgPerM3 - next_kgPerM3);
    const vapour_W = vapour_kgPerS * vapourHeat_JPerKg(vapour_kgPerS > 0 ? temp_degC : nextTemp_degC);
    const heat_W = (fields.heatFace_WPerK[i] as number) * (temp_degC - nextTemp_degC);
    energy_W[i] = (energy_W[i] as number) - heat_W - vapour_W;
    water_kgPerS[i] = (water_kgPerS[i] as number) - vapour_kgPerS;
    if (surface) {
      outWater += vapour_kgPerS - drawn * outsideHumidity;
      outHeat_W += vapour_W - drawn * outsideAir_JPerKg;
      const ground_W = fields.surface.ground_WPerK * (temp_degC - weather.ground_degC);
      flows[LINE.heatThroughSurface_J] = heat_W - fields.surface.sun_W;
      flows[LINE.heatToGround_J] = ground_W;
      energy_W[i] = (energy_W[i] as number) + fields.surface.sun_W - ground_W;
    } else {
      energy_W[i + 1] = (energy_W[i + 1] as number) + heat_W + vapour_W;
      water_kgPerS[i + 1] = (water_kgPerS[i + 1] as number) + vapour_kgPerS;
    }
  }
  flows[LINE.waterWithAir_kg] = outWater;
  flows[LINE.heatWithAir_J] = outHeat_W;
}

/** Rain on the outermost shell, and water beyond what is held: some to the shells within, the rest to the ground. */
function drain(
  { shells, standing, traits }: Heap,
  state: HeapState,
  weather: Weather,
  fields: Fields,
  rates: Rates,
): void {
  const count = shells.count;
  const last = count - 1;
  const { energy_J: energy_W, water_kg: water_kgPerS, flows } = rates;
  const { ammoniacalN_kg: ammoniacalN_kgPerS, nitrateN_kg: nitrateN_kgPerS } = rates;
  const rained = weather.rain_kgPerM2S * standing.rain_share * shells.outline.plan_m2;
  const rained_W = rained * WATER_JPerKgK * weather.temp_degC;
  flows[LINE.waterRained_kg] = rained;
  flows[LINE.heatWithRain_J] = rained_W;
  let drained = 0;
  let drained_W = 0;
  let drainedN = 0;
  energy_W[last] = (energy_W[last] as number) + rained_W;
  water_kgPerS[last] = (water_kgPerS[last] as number) + rained;
  let planWithin = 1;
  for (let i = last; i >= 0; i--) {
    const water_kg = state.water_kg[i] as number;
    const char_kg = state.char_kg[i] as number;
    const stuff_kg = (fields.dry_kg[i] as number) - char_kg;
    const over_kg = water_kg - held_kg(stuff_kg, char_kg, fields.pores_m3[i] as number, traits.holds_kgPerKg);
    const plan = planWithin;
    planWithin -= shells.plan_share[i] as number;
    const temp_degC = fields.temp_degC[i] as number;
    if (over_kg <= 0 || temp_degC <= 0) continue;
    const off = DRAINING_perS * over_kg;
    const inwards = i === 0 ? 0 : (ABOVE_share * Math.max(0, planWithin)) / plan;
    const off_W = off * WATER_JPerKgK * temp_degC;
    const ammonium = (off * dissolved_share(state, i, traits) * (state.ammoniacalN_kg[i] as number)) / water_kg;
    const nitrate = (off * (state.nitrateN_kg[i] as number)) / water_kg;
    energy_W[i] = (energy_W[i] as number) - off_W;
    water_kgPerS[i] = (water_kgPerS[i] as number) - off;
    ammoniacalN_kgPerS[i] = (ammoniacalN_kgPerS[i] as number) - ammonium;
    nitrateN_kgPerS[i] = (nitrateN_kgPerS[i] as number) - nitrate;
    if (i > 0) {
      energy_W[i - 1] = (energy_W[i - 1] as number) + inwards * off_W;
      water_kgPerS[i - 1] = (water_kgPerS[i - 1] as number) + inwards * off;
      ammoniacalN_kgPerS[i - 1] = (ammoniacalN_kgPerS[i - 1] as number) + inwards * ammonium;
      nitrateN_kgPerS[i - 1] = (nitrateN_kgPerS[i - 1] as number) + inwards * nitrate;
    }
    drained += (1 - inwards) * off;
    drained_W += (1 - inwards) * off_W;
    drainedN += (1 - inwards) * (ammonium + nitrate);
  }
  flows[LINE.waterDrained_kg] = drained;
  flows[LINE.heatDrained_J] = drained_W;
  flows[LINE.nitrogenDrained_kg] = drainedN;
}

/** Share of the ammoniacal nitrogen that is in the water and not on charcoal. */
function dissolved_share(state: HeapState, i: number, traits: Traits): number {
  const water_L = (state.water_kg[i] as number) + TRACE_KG;
  const sorbed_L = traits.charSorption_LPerKg * (state.char_kg[i] as number);
  return water_L / (water_L + sorbed_L);
}

/**
 * Ammonia in the gas of the pores, carried by the draught and by diffusion until it leaves. What passes from a shell to
 * another goes with what is there: the rows keep how much in a second, for the step to take it at its end.
 */
function carryAmmonia(traits: Traits, state: HeapState, fields: Fields, rates: Rates): void {
  const { plumeContact_share } = traits;
  const { ammonia, ammoniaLeaving_perS, ammoniaInGas_perM3 } = fields;
  const count = ammoniaInGas_perM3.length;
  const last = count - 1;
  for (let i = 0; i < count; i++) {
    const place = fields.place[i] as number;
    const water_m3 = (state.water_kg[i] as number) / WATER_kgPerM3 + TRACE_KG;
    // Emerson: 1 in 1 + 10^(pKa - pH) is ammonia.
    const unionised = 1 / (1 + ammoniumAt(place) * Math.exp(-Math.LN10 * (state.pH[i] as number)));
    ammoniaInGas_perM3[i] =
      (traits.ammoniaGas_share * unionised * dissolved_share(state, i, traits)) / (water_m3 * waterOverGasAt(place));
  }
  let innerFace = 0;
  let handedFromInner = 0;
  let gone = 0;
  for (let i = 0; i < count; i++) {
    const inGas = ammoniaInGas_perM3[i] as number;
    const perAir = inGas / (fields.dryAir_kgPerM3[i] as number);
    const face = fields.gasFace_m3PerS[i] as number;
    const risen = fields.risen_kgPerS[i] as number;
    ammonia.own[i] = (fields.through_kgPerS[i] as number) * perAir + (face + innerFace) * inGas;
    ammonia.inner[i] = handedFromInner;
    if (i === last) {
      ammonia.outer[i] = 0;
      ammoniaLeaving_perS[i] = risen * perAir + face * inGas;
    } else {
      const beyond = ammoniaInGas_perM3[i + 1] as number;
      ammonia.outer[i] =
        ((fields.drawn_kgPerS[i] as number) * beyond) / (fields.dryAir_kgPerM3[i + 1] as number) + face * beyond;
      ammoniaLeaving_perS[i] = (1 - plumeContact_share) * risen * perAir;
    }
    innerFace = face;
    handedFromInner = plumeContact_share * risen * perAir + face * inGas;
  }
  const held = state.ammoniacalN_kg;
  for (let i = 0; i < count; i++) {
    const here = held[i] as number;
    const inner = i === 0 ? 0 : (held[i - 1] as number);
    const outer = i === last ? 0 : (held[i + 1] as number);
    rates.ammoniacalN_kg[i] =
      (rates.ammoniacalN_kg[i] as number) +
      (ammonia.inner[i] as number) * inner +
      (ammonia.outer[i] as number) * outer -
      (ammonia.own[i] as number) * here;
    gone += (ammoniaLeaving_perS[i] as number) * here;
  }
  rates.flows[LINE.ammoniaGone_kg] = gone;
}
