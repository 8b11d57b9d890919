import { FRESH_OXYGEN_kgPerKg, OXYGEN_VOLUME_PER_MASS } from './constants.ts';
import type { Traits } from './parameters.ts';
import { held, inside, type Moment } from './slate.ts';

const { OXYGEN_kgPerKg } = held;
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
} = inside;

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
export function balanceOxygen({ count, from }: Moment, traits: Traits): number {
  const { oxygenHalf_share: half_share, plumeContact_share: contact } = traits;
  const last = count - 1;
  passGas(contact, from, last + from);
  const fresh = (OXYGEN_OUTER_kgPerS[last + from] as number) * FRESH_OXYGEN_kgPerKg;
  let moved = 1;
  for (let turn = 0; turn < MOST_TURNS && moved * moved > CLOSE_kgPerKg * half_share; turn++) {
    let upper = 0;
    let solved = 0;
    for (let shell = 0; shell <= last; shell++) {
      const at = shell + from;
      const hunger = (HUNGER_kgPerS[at] as number) + (NITRIFYING_kgPerS[at] as number);
      const now = OXYGEN_kgPerKg[at] as number;
      const perMass = OXYGEN_VOLUME_PER_MASS * (DRY_GAS_share[at] as number);
      const inGas = perMass * now;
      const perThere = 1 / (inGas + half_share);
      const steep = perMass * half_share * perThere * perThere;
      // The tangent: fed_share at no oxygen, and how it rises.
      const atNone = inGas * perThere - steep * now;
      FED_share[at] = atNone;
      FED_STEEP[at] = steep;
      const inner = OXYGEN_INNER_kgPerS[at] as number;
      const right = shell === last ? fresh - hunger * atNone : -hunger * atNone;
      const perPivot = 1 / ((OXYGEN_OWN_kgPerS[at] as number) + hunger * steep - inner * upper);
      upper = (OXYGEN_OUTER_kgPerS[at] as number) * perPivot;
      solved = (right + inner * solved) * perPivot;
      UPPER_ratio[at] = upper;
      SOLVED_kgPerKg[at] = solved;
    }
    moved = 0;
    let outer = 0;
    for (let shell = last; shell >= 0; shell--) {
      const at = shell + from;
      outer = (SOLVED_kgPerKg[at] as number) + (shell === last ? 0 : (UPPER_ratio[at] as number) * outer);
      const next = Math.max(outer, 0);
      const by = Math.abs(next - (OXYGEN_kgPerKg[at] as number));
      if (!(by <= moved)) moved = by;
      OXYGEN_kgPerKg[at] = next;
    }
  }
  const outermost = OXYGEN_kgPerKg[last + from] as number;
  const face = (GAS_FACE_m3PerS[last + from] as number) * (DRY_AIR_kgPerM3[last + from] as number);
  let supplied =
    (DRAWN_kgPerS[last + from] as number) * FRESH_OXYGEN_kgPerKg + face * (FRESH_OXYGEN_kgPerKg - outermost);
  for (let shell = 0; shell <= last; shell++) {
    const at = shell + from;
    const now = OXYGEN_kgPerKg[at] as number;
    FED_share[at] = (FED_share[at] as number) + (FED_STEEP[at] as number) * now;
    supplied -= (shell === last ? 1 : 1 - contact) * (RISEN_kgPerS[at] as number) * now;
  }
  return supplied;
}

/** What gas each shell is handed and gives, which no turn of the balance changes. */
function passGas(contact_share: number, from: number, last: number): void {
  let innerFace = 0;
  let handed = 0;
  for (let at = from; at <= last; at++) {
    const here_kgPerM3 = DRY_AIR_kgPerM3[at] as number;
    const beyond_kgPerM3 = at === last ? here_kgPerM3 : (DRY_AIR_kgPerM3[at + 1] as number);
    const face = (GAS_FACE_m3PerS[at] as number) * 0.5 * (here_kgPerM3 + beyond_kgPerM3);
    OXYGEN_INNER_kgPerS[at] = innerFace + handed;
    OXYGEN_OWN_kgPerS[at] = (THROUGH_kgPerS[at] as number) + innerFace + face;
    OXYGEN_OUTER_kgPerS[at] = face + (DRAWN_kgPerS[at] as number);
    innerFace = face;
    handed = contact_share * (RISEN_kgPerS[at] as number);
  }
}
