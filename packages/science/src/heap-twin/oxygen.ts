import { FRESH_OXYGEN_kgPerKg, OXYGEN_VOLUME_PER_MASS } from './constants.ts';
import type { Fields } from './fields.ts';
import { type Traits, twinParameters } from './parameters.ts';
import type { HeapState } from './state.ts';
import { solveRows } from './tridiagonal.ts';

const PRESSURE_Pa = twinParameters.airPressure_Pa.value;
/** The balance is struck again until no shell moves by more, kg/kg; the next turn would then move it by its square. */
const CLOSE_kgPerKg = 1e-5;
const MOST_TURNS = 40;

/**
 * The oxygen in the pores, which settles in minutes: what flows and diffuses in is what is eaten. Newton's method,
 * each turn one set of rows; what is eaten is read off the last tangent, so that it is what came in, exactly.
 * From above the balance the first turn falls below it, and from below every turn comes nearer.
 * @returns oxygen that came in through the surface, less what left, kg/s.
 */
export function balanceOxygen(fields: Fields, state: HeapState, traits: Traits): number {
  const { rows, scratch, solved, hunger_kgPerS, nitrifying_kgPerS, fed_share, fedSteep_perKgPerKg } = fields;
  const { oxygenHalf_share: half_share, plumeContact_share: contact } = traits;
  const count = solved.length;
  const last = count - 1;
  let moved = Number.POSITIVE_INFINITY;
  for (let turn = 0; turn < MOST_TURNS && moved > CLOSE_kgPerKg; turn++) {
    let innerFace = 0;
    let handed = 0;
    for (let i = 0; i < count; i++) {
      const dry_kgPerM3 = fields.dryAir_kgPerM3[i] as number;
      const beyond_kgPerM3 = i === last ? dry_kgPerM3 : (fields.dryAir_kgPerM3[i + 1] as number);
      const face = (fields.gasFace_m3PerS[i] as number) * 0.5 * (dry_kgPerM3 + beyond_kgPerM3);
      const hunger = (hunger_kgPerS[i] as number) + (nitrifying_kgPerS[i] as number);
      const now = state.oxygen_kgPerKg[i] as number;
      const perMass = OXYGEN_VOLUME_PER_MASS * (1 - (fields.vapour_Pa[i] as number) / PRESSURE_Pa);
      const there = perMass * now + half_share;
      const fed = (perMass * now) / there;
      const steep = (perMass * half_share) / (there * there);
      // The tangent: fed_share at no oxygen, and how it rises.
      fed_share[i] = fed - steep * now;
      fedSteep_perKgPerKg[i] = steep;
      rows.inner[i] = innerFace + handed;
      rows.own[i] = (fields.through_kgPerS[i] as number) + innerFace + face + hunger * steep;
      rows.outer[i] = face + (fields.drawn_kgPerS[i] as number);
      rows.right[i] = -hunger * (fed - steep * now);
      innerFace = face;
      handed = contact * (fields.risen_kgPerS[i] as number);
    }
    rows.right[last] = (rows.right[last] as number) + (rows.outer[last] as number) * FRESH_OXYGEN_kgPerKg;
    rows.outer[last] = 0;
    solveRows(rows, solved, scratch);
    moved = 0;
    for (let i = 0; i < count; i++) {
      const next = Math.max(0, solved[i] as number);
      moved = Math.max(moved, Math.abs(next - (state.oxygen_kgPerKg[i] as number)));
      state.oxygen_kgPerKg[i] = next;
    }
  }
  const face = (fields.gasFace_m3PerS[last] as number) * (fields.dryAir_kgPerM3[last] as number);
  let supplied =
    (fields.drawn_kgPerS[last] as number) * FRESH_OXYGEN_kgPerKg +
    face * (FRESH_OXYGEN_kgPerKg - (state.oxygen_kgPerKg[last] as number));
  for (let i = 0; i < count; i++) {
    const now = state.oxygen_kgPerKg[i] as number;
    fed_share[i] = (fed_share[i] as number) + (fedSteep_perKgPerKg[i] as number) * now;
    supplied -= (i === last ? 1 : 1 - contact) * (fields.risen_kgPerS[i] as number) * now;
  }
  return supplied;
}
