import { FRESH_OXYGEN_kgPerKg, OXYGEN_VOLUME_PER_MASS } from './constants.ts';
import type { Traits } from './parameters.ts';
import { heldPlaces, insidePlaces, type Moment, room, slateSizes } from './slate.ts';

const {
  DRAWN_kgPerS,
  DRY_AIR_kgPerM3,
  DRY_GAS_share,
  FED_STEEP,
  FED_share,
  GAS_FACE_m3PerS,
  HUNGER_kgPerS,
  NITRIFYING_kgPerS,
  OXYGEN_INNER_kgPerS,
  OXYGEN_OUTER_kgPerS,
  OXYGEN_OWN_kgPerS,
  RISEN_kgPerS,
  SOLVED_kgPerKg,
  THROUGH_kgPerS,
  UPPER_ratio,
} = insidePlaces;
const { OXYGEN_kgPerKg } = heldPlaces;
const { flat } = room;
const { ROW } = slateSizes;

/**
 * The balance is struck again until the next turn would move no shell by more, kg/kg: one that moved it by d is followed
 * by one of d² over the half-saturation at the most.
 */
const CLOSE_kgPerKg = 4e-6;
const MOST_TURNS = 40;

/**
 * The oxygen in the pores, which settles in minutes: what flows and diffuses in is what is eaten. Newton's method,
 * each turn one set of rows; what is eaten is read off the last tangent, so that it is what came in, exactly.
 * From above the balance the first turn falls below it, and from below every turn comes nearer.
 * @returns oxygen that came in through the surface, less what left, kg/s.
 */
export function balanceOxygen({ rowsEnd, held, inside }: Moment, traits: Traits): number {
  const { oxygenHalf_share: half_share, plumeContact_share: contact } = traits;
  const end = rowsEnd - ROW;
  passGas(contact, rowsEnd, inside);
  const fresh = (flat[end + inside + OXYGEN_OUTER_kgPerS] as number) * FRESH_OXYGEN_kgPerKg;
  let moved = 1;
  for (let turn = 0; turn < MOST_TURNS && moved * moved > CLOSE_kgPerKg * half_share; turn++) {
    let upper = 0;
    let solved = 0;
    for (let row = 0; row <= end; row += ROW) {
      const at = row + inside;
      const hunger = (flat[at + HUNGER_kgPerS] as number) + (flat[at + NITRIFYING_kgPerS] as number);
      const now = flat[row + held + OXYGEN_kgPerKg] as number;
      const perMass = OXYGEN_VOLUME_PER_MASS * (flat[at + DRY_GAS_share] as number);
      const inGas = perMass * now;
      const perThere = 1 / (inGas + half_share);
      const steep = perMass * half_share * perThere * perThere;
      // The tangent: fed_share at no oxygen, and how it rises.
      const atNone = inGas * perThere - steep * now;
      flat[at + FED_share] = atNone;
      flat[at + FED_STEEP] = steep;
      const inner = flat[at + OXYGEN_INNER_kgPerS] as number;
      const right = row === end ? fresh - hunger * atNone : -hunger * atNone;
      const perPivot = 1 / ((flat[at + OXYGEN_OWN_kgPerS] as number) + hunger * steep - inner * upper);
      upper = (flat[at + OXYGEN_OUTER_kgPerS] as number) * perPivot;
      solved = (right + inner * solved) * perPivot;
      flat[at + UPPER_ratio] = upper;
      flat[at + SOLVED_kgPerKg] = solved;
    }
    moved = 0;
    let outer = 0;
    for (let row = end; row >= 0; row -= ROW) {
      const at = row + inside;
      const has = row + held + OXYGEN_kgPerKg;
      outer = (flat[at + SOLVED_kgPerKg] as number) + (row === end ? 0 : (flat[at + UPPER_ratio] as number) * outer);
      const next = Math.max(outer, 0);
      const by = Math.abs(next - (flat[has] as number));
      if (!(by <= moved)) moved = by;
      flat[has] = next;
    }
  }
  const last = flat[end + held + OXYGEN_kgPerKg] as number;
  const face = (flat[end + inside + GAS_FACE_m3PerS] as number) * (flat[end + inside + DRY_AIR_kgPerM3] as number);
  let supplied =
    (flat[end + inside + DRAWN_kgPerS] as number) * FRESH_OXYGEN_kgPerKg + face * (FRESH_OXYGEN_kgPerKg - last);
  for (let row = 0; row <= end; row += ROW) {
    const at = row + inside;
    const now = flat[row + held + OXYGEN_kgPerKg] as number;
    flat[at + FED_share] = (flat[at + FED_share] as number) + (flat[at + FED_STEEP] as number) * now;
    supplied -= (row === end ? 1 : 1 - contact) * (flat[at + RISEN_kgPerS] as number) * now;
  }
  return supplied;
}

/** What gas each shell is handed and gives, which no turn of the balance changes. */
function passGas(contact_share: number, rowsEnd: number, inside: number): void {
  const last = rowsEnd - ROW + inside;
  let innerFace = 0;
  let handed = 0;
  for (let at = inside; at <= last; at += ROW) {
    const here_kgPerM3 = flat[at + DRY_AIR_kgPerM3] as number;
    const beyond_kgPerM3 = at === last ? here_kgPerM3 : (flat[at + ROW + DRY_AIR_kgPerM3] as number);
    const face = (flat[at + GAS_FACE_m3PerS] as number) * 0.5 * (here_kgPerM3 + beyond_kgPerM3);
    flat[at + OXYGEN_INNER_kgPerS] = innerFace + handed;
    flat[at + OXYGEN_OWN_kgPerS] = (flat[at + THROUGH_kgPerS] as number) + innerFace + face;
    flat[at + OXYGEN_OUTER_kgPerS] = face + (flat[at + DRAWN_kgPerS] as number);
    innerFace = face;
    handed = contact_share * (flat[at + RISEN_kgPerS] as number);
  }
}
