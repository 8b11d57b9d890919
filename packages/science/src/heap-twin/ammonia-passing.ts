import { acidityAt, ammoniumAt, waterOverGasAt } from './air-table.ts';
import { LINE } from './ledger.ts';
import { type Traits, twinParameters } from './parameters.ts';
import { held, inside, lasting, type Moment, rates } from './slate.ts';

const { AMMONIACAL_N_kg, PH, WATER_kg } = held;
const { AMMONIACAL_N_kgPerS } = rates;
const { CHAR_kg } = lasting;
const {
  AMMONIA_INNER_perS,
  AMMONIA_LEAVING_perS,
  AMMONIA_OUTER_perS,
  AMMONIA_OWN_perS,
  DRAWN_kgPerS,
  DRY_AIR_kgPerM3,
  GAS_FACE_m3PerS,
  PLACE,
  RISEN_kgPerS,
  THROUGH_kgPerS,
} = inside;

const WATER_kgPerM3 = twinParameters.waterDensity_kgPerM3.value;
const TRACE_KG = 1e-12;

/**
 * Ammonia in the gas of the pores, carried by the draught and by diffusion until it leaves. What passes from a shell to
 * another goes with what is there: the rows keep how much in a second, for the step to take it ahead.
 */
export function carryAmmonia({ count, from, flows }: Moment, traits: Traits): void {
  const { plumeContact_share: contact, ammoniaGas_share, charSorption_LPerKg } = traits;
  const last = count - 1;
  let innerFace = 0;
  let fromInner = 0;
  let innerHeld = 0;
  let gone = 0;
  for (let shell = 0; shell <= last; shell++) {
    const at = shell + from;
    const place = PLACE[at] as number;
    const water_kg = (WATER_kg[at] as number) + TRACE_KG;
    // Emerson: 1 in 1 + 10^(pKa - pH) is ammonia; of that a part is in the water and not on charcoal.
    const ammonium = ammoniumAt(place) * acidityAt(PH[at] as number);
    const sorbing_L = water_kg + charSorption_LPerKg * (CHAR_kg[shell] as number);
    const inGas_perM3 = (ammoniaGas_share * WATER_kgPerM3) / ((1 + ammonium) * sorbing_L * waterOverGasAt(place));
    const perAir = inGas_perM3 / (DRY_AIR_kgPerM3[at] as number);
    const face = GAS_FACE_m3PerS[at] as number;
    const risen = RISEN_kgPerS[at] as number;
    const here_kg = AMMONIACAL_N_kg[at] as number;
    const own_perS = (THROUGH_kgPerS[at] as number) * perAir + (face + innerFace) * inGas_perM3;
    const leaving_perS = shell === last ? risen * perAir + face * inGas_perM3 : (1 - contact) * risen * perAir;
    if (shell > 0) {
      const inner = at - 1;
      const inwards_perS = (DRAWN_kgPerS[inner] as number) * perAir + innerFace * inGas_perM3;
      AMMONIA_OUTER_perS[inner] = inwards_perS;
      AMMONIACAL_N_kgPerS[inner] = (AMMONIACAL_N_kgPerS[inner] as number) + inwards_perS * here_kg;
    }
    AMMONIA_OWN_perS[at] = own_perS;
    AMMONIA_INNER_perS[at] = fromInner;
    AMMONIA_LEAVING_perS[at] = leaving_perS;
    AMMONIACAL_N_kgPerS[at] = (AMMONIACAL_N_kgPerS[at] as number) + fromInner * innerHeld - own_perS * here_kg;
    gone += leaving_perS * here_kg;
    fromInner = contact * risen * perAir + face * inGas_perM3;
    innerFace = face;
    innerHeld = here_kg;
  }
  AMMONIA_OUTER_perS[last + from] = 0;
  flows[LINE.ammoniaGone_kg] = gone;
}
