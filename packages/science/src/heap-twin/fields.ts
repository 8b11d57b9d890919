import { emptyRows, type Rows } from './tridiagonal.ts';

/**
 * What one heap is like inside at one moment: arrays of one number a shell, worked out from its state. A face belongs
 * to the shell within it; the outermost face is the surface. Written over at each step.
 */
export interface Fields {
  readonly temp_degC: Float64Array;
  /** Heat that warms the shell by 1 K, the freezing of its water counted, J/K. */
  readonly slope_JPerK: Float64Array;
  readonly dry_kg: Float64Array;
  /** Room between the solids, m³, and the part of the whole that is air. */
  readonly pores_m3: Float64Array;
  readonly airSpace_share: Float64Array;
  readonly conductivity_WPerMK: Float64Array;
  readonly permeability_m2: Float64Array;
  /** Vapour pressure, Pa, and what it rises by for 1 K, Pa/K. */
  readonly vapour_Pa: Float64Array;
  readonly vapourSlope_PaPerK: Float64Array;
  /** Vapour carried by a kilogram of dry air, kg/kg, and its rise for 1 K. */
  readonly humidity_kgPerKg: Float64Array;
  readonly humiditySlope_perK: Float64Array;
  readonly dryAir_kgPerM3: Float64Array;
  /** Place of the temperature in the table of air. */
  readonly place: Float64Array;
  /**
   * Rate of rotting over the best: for the temperature, for everything but the microbes' number and oxygen, and for all
   * but oxygen; the last once more for what rots slowly.
   */
  readonly warmth_share: Float64Array;
  readonly liveliness_share: Float64Array;
  readonly pace_share: Float64Array;
  readonly slowPace_share: Float64Array;
  /** Oxygen that rotting, and that nitrifying, would take up without want, kg/s. */
  readonly hunger_kgPerS: Float64Array;
  readonly nitrifying_kgPerS: Float64Array;
  /** How much of that they get, 0 to 1. */
  readonly fed_share: Float64Array;
  /** How that rises with the oxygen in the gas, for 1 kg/kg. */
  readonly fedSteep_perKgPerKg: Float64Array;
  /** Dry air drawn inwards through the face, and leaving the shell upwards, kg/s. */
  readonly drawn_kgPerS: Float64Array;
  readonly risen_kgPerS: Float64Array;
  /** Dry air through the shell, kg/s. */
  readonly through_kgPerS: Float64Array;
  /** Conductance of the face to heat, W/K, and to vapour and gases that diffuse, m³/s. */
  readonly heatFace_WPerK: Float64Array;
  readonly vapourFace_m3PerS: Float64Array;
  readonly gasFace_m3PerS: Float64Array;
  /** Ammoniacal nitrogen in a cubic metre of the pores' gas for each kilogram in the shell, 1/m³. */
  readonly ammoniaInGas_perM3: Float64Array;
  /** How it passes from shell to shell, and out of the heap, as shares of what a shell holds, 1/s. */
  readonly ammonia: Rows;
  readonly ammoniaLeaving_perS: Float64Array;
  /** Nitrogen set free for each kilogram of carbon eaten, or taken up from what is mineral, kg/kg. */
  readonly freed_kgPerKg: Float64Array;
  readonly taken_kgPerKg: Float64Array;
  /** Conductance of the surface to the air and to the ground, W/K. */
  readonly surface: { air_WPerK: number; ground_WPerK: number; sun_W: number };
  readonly rows: Rows;
  readonly scratch: Float64Array;
  readonly solved: Float64Array;
}

/** Room for a heap of so many shells. */
export function emptyFields(shells: number): Fields {
  const room = (): Float64Array => new Float64Array(shells);
  return {
    temp_degC: room(),
    slope_JPerK: room(),
    dry_kg: room(),
    pores_m3: room(),
    airSpace_share: room(),
    conductivity_WPerMK: room(),
    permeability_m2: room(),
    vapour_Pa: room(),
    vapourSlope_PaPerK: room(),
    humidity_kgPerKg: room(),
    humiditySlope_perK: room(),
    dryAir_kgPerM3: room(),
    place: room(),
    warmth_share: room(),
    liveliness_share: room(),
    pace_share: room(),
    slowPace_share: room(),
    hunger_kgPerS: room(),
    nitrifying_kgPerS: room(),
    fed_share: room(),
    fedSteep_perKgPerKg: room(),
    drawn_kgPerS: room(),
    risen_kgPerS: room(),
    through_kgPerS: room(),
    heatFace_WPerK: room(),
    vapourFace_m3PerS: room(),
    gasFace_m3PerS: room(),
    ammoniaInGas_perM3: room(),
    ammonia: emptyRows(shells),
    ammoniaLeaving_perS: room(),
    freed_kgPerKg: room(),
    taken_kgPerKg: room(),
    surface: { air_WPerK: 0, ground_WPerK: 0, sun_W: 0 },
    rows: emptyRows(shells),
    scratch: room(),
    solved: room(),
  };
}
