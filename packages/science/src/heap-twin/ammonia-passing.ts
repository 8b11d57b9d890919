import { acidityAt, ammoniumAt, waterOverGasAt } from './air-table.ts';
import { LINE } from './ledger.ts';
import { type Traits, twinParameters } from './parameters.ts';
import { heldPlaces, insidePlaces, lastingPlaces, type Moment, room, slateSizes } from './slate.ts';

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
} = insidePlaces;
const { AMMONIACAL_N_kg, PH, WATER_kg } = heldPlaces;
const { CHAR_kg } = lastingPlaces;
const { flat } = room;
const { ROW } = slateSizes;

const WATER_kgPerM3 = twinParameters.waterDensity_kgPerM3.value;
const TRACE_KG = 1e-12;

/**
 * Ammonia in the gas of the pores, carried by the draught and by diffusion until it leaves. What passes from a shell to
 * another goes with what is there: the rows keep how much in a second, for the step to take it at its end.
 */
export function carryAmmonia({ rowsEnd, held, inside, rates, flows }: Moment, traits: Traits): void {
  const { plumeContact_share: contact, ammoniaGas_share, charSorption_LPerKg } = traits;
  const end = rowsEnd - ROW;
  let innerFace = 0;
  let fromInner = 0;
  let innerHeld = 0;
  let gone = 0;
  for (let row = 0; row <= end; row += ROW) {
    const has = row + held;
    const at = row + inside;
    const rate = row + rates + AMMONIACAL_N_kg;
    const place = flat[at + PLACE] as number;
    const water_kg = (flat[has + WATER_kg] as number) + TRACE_KG;
    // Emerson: 1 in 1 + 10^(pKa - pH) is ammonia; of that a part is in the water and not on charcoal.
    const ammonium = ammoniumAt(place) * acidityAt(flat[has + PH] as number);
    const sorbing_L = water_kg + charSorption_LPerKg * (flat[row + CHAR_kg] as number);
    const inGas_perM3 = (ammoniaGas_share * WATER_kgPerM3) / ((1 + ammonium) * sorbing_L * waterOverGasAt(place));
    const perAir = inGas_perM3 / (flat[at + DRY_AIR_kgPerM3] as number);
    const face = flat[at + GAS_FACE_m3PerS] as number;
    const risen = flat[at + RISEN_kgPerS] as number;
    const here_kg = flat[has + AMMONIACAL_N_kg] as number;
    const own_perS = (flat[at + THROUGH_kgPerS] as number) * perAir + (face + innerFace) * inGas_perM3;
    const leaving_perS = row === end ? risen * perAir + face * inGas_perM3 : (1 - contact) * risen * perAir;
    if (row > 0) {
      const inner = at - ROW;
      const inwards_perS = (flat[inner + DRAWN_kgPerS] as number) * perAir + innerFace * inGas_perM3;
      flat[inner + AMMONIA_OUTER_perS] = inwards_perS;
      flat[rate - ROW] = (flat[rate - ROW] as number) + inwards_perS * here_kg;
    }
    flat[at + AMMONIA_OWN_perS] = own_perS;
    flat[at + AMMONIA_INNER_perS] = fromInner;
    flat[at + AMMONIA_LEAVING_perS] = leaving_perS;
    flat[rate] = (flat[rate] as number) + fromInner * innerHeld - own_perS * here_kg;
    gone += leaving_perS * here_kg;
    fromInner = contact * risen * perAir + face * inGas_perM3;
    innerFace = face;
    innerHeld = here_kg;
  }
  flat[end + inside + AMMONIA_OUTER_perS] = 0;
  flows[LINE.ammoniaGone_kg] = gone;
}
