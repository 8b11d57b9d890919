/** A heap's shape as it stands to its heat: how deep the core lies, and how much stuff each part of the surface has behind it. */
export interface HeatShape {
  /** Warmth of the core above the surface is heat made × this / conductivity, m². */
  readonly core_m2: number;
  /** Volume over surface, m. */
  readonly behindSurface_m: number;
}

/**
 * A ball of a volume: no shape of that volume needs less heat.
 * Source: Carslaw and Jaeger 1959, ball that makes heat evenly: R²/6k to the core, R/3h at the surface.
 */
export function ballOf(volume_m3: number): HeatShape {
  const radius_m = Math.cbrt((3 * volume_m3) / (4 * Math.PI));
  return { core_m2: radius_m ** 2 / 6, behindSurface_m: radius_m / 3 };
}

/** Sides of a bin or a block, m. */
export interface Box {
  readonly width_m: number;
  readonly depth_m: number;
  readonly height_m: number;
}

/** Terms of the series in each direction: the middle of a cube is then right to one part in ten thousand. */
const TERMS = 60;

/**
 * A box cooled on all six sides. The core by the series for heat made evenly between walls at one temperature (Carslaw and
 * Jaeger 1959); the surface by its mean, which is exact where the walls are well insulated or not at all.
 */
export function boxShape({ width_m, depth_m, height_m }: Box): HeatShape {
  const [a = 0, b = 0, c = 0] = [width_m, depth_m, height_m].sort((one, other) => one - other);
  let core_m2 = 0;
  for (let i = 0; i < TERMS; i++) {
    for (let j = 0; j < TERMS; j++) {
      const [l, m] = [2 * i + 1, 2 * j + 1];
      const squared = Math.PI ** 2 * ((l / a) ** 2 + (m / b) ** 2);
      const ends = 1 - 1 / Math.cosh((Math.sqrt(squared) * c) / 2);
      core_m2 += ((i + j) % 2 === 0 ? 1 : -1) * ((16 * ends) / (Math.PI ** 2 * l * m * squared));
    }
  }
  return { core_m2, behindSurface_m: (a * b * c) / (2 * (a * b + b * c + c * a)) };
}

/** How a heap keeps its heat in. */
export interface Keeping {
  readonly conductivity_WPerMK: number;
  readonly surface_WPerM2K: number;
}

/** Heat that must be made for the core to stay `span_K` above the air, W/m³, by conduction alone. */
export function heatToHold_WPerM3(shape: HeatShape, span_K: number, keeping: Keeping): number {
  const { conductivity_WPerMK, surface_WPerM2K } = keeping;
  return span_K / (shape.core_m2 / conductivity_WPerMK + shape.behindSurface_m / surface_WPerM2K);
}

/** How many times as large in every direction the shape must be for `made_WPerM3` to hold the span. */
export function timesToHold(shape: HeatShape, span_K: number, made_WPerM3: number, keeping: Keeping): number {
  const square = shape.core_m2 / keeping.conductivity_WPerMK;
  const straight = shape.behindSurface_m / keeping.surface_WPerM2K;
  return (Math.sqrt(straight ** 2 + (4 * square * span_K) / made_WPerM3) - straight) / (2 * square);
}
