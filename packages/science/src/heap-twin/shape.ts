import { twinParameters } from './parameters.ts';

/**
 * The outline of a heap, from which its shells are cut.
 *
 * A bin, a lidded box or a pit filled level; a dome; a cone; a long heap of half-elliptic section; a drum lying down;
 * a trench with the ground on all sides but the top. Lengths in m, all above 0.
 */
export type HeapShape =
  | { readonly form: 'box'; readonly width_m: number; readonly depth_m: number; readonly height_m: number }
  | { readonly form: 'dome'; readonly diameter_m: number; readonly height_m: number }
  | { readonly form: 'cone'; readonly diameter_m: number; readonly height_m: number }
  | { readonly form: 'long'; readonly width_m: number; readonly height_m: number; readonly length_m: number }
  | { readonly form: 'drum'; readonly diameter_m: number; readonly length_m: number }
  | { readonly form: 'trench'; readonly width_m: number; readonly depth_m: number; readonly length_m: number };

/** What the model needs to know of an outline. */
export interface Outline {
  readonly volume_m3: number;
  readonly height_m: number;
  /** Ground plan, through which the warm air rises. */
  readonly plan_m2: number;
  /** Surfaces to the air above, to the air or a wall beside, and to the ground. */
  readonly top_m2: number;
  readonly side_m2: number;
  readonly ground_m2: number;
  /** Whether shells shrink in one, two or three directions towards the core. */
  readonly directions: 1 | 2 | 3;
  /** How fast it cools at its slowest over its thermal diffusivity, with its surface held cold, 1/m². */
  readonly slowest_perM2: number;
}

/** First zeros of Bessel's functions and of tan x = x: Abramowitz and Stegun 1964, tables 9.5 and 4.19. */
const J0_ZERO = 2.404_825_557_7;
const J1_ZERO = 3.831_705_970_2;
const SPHERICAL_J1_ZERO = 4.493_409_457_9;

/** A heap longer than so many times its width or height loses its heat across, not along. */
const LONG = 2;

/** Areas, volume and cooling of an outline; the formulas are those of its geometry and, for the cooling, in `docs/models/heap-twin.md`. */
export function outlineOf(shape: HeapShape): Outline {
  switch (shape.form) {
    case 'box':
      return box(shape.width_m, shape.depth_m, shape.height_m);
    case 'dome':
      return dome(shape.diameter_m / 2, shape.height_m);
    case 'cone':
      return cone(shape.diameter_m / 2, shape.height_m);
    case 'long':
      return long(shape.width_m, shape.height_m, shape.length_m);
    case 'drum':
      return drum(shape.diameter_m / 2, shape.length_m);
    case 'trench':
      return trench(shape.width_m, shape.depth_m, shape.length_m);
  }
}

function directionsOf(length_m: number, across_m: number): 2 | 3 {
  return length_m > LONG * across_m ? 2 : 3;
}

function box(width_m: number, depth_m: number, height_m: number): Outline {
  return {
    volume_m3: width_m * depth_m * height_m,
    height_m,
    plan_m2: width_m * depth_m,
    top_m2: width_m * depth_m,
    side_m2: 2 * (width_m + depth_m) * height_m,
    ground_m2: width_m * depth_m,
    directions: 3,
    slowest_perM2: boxSlowest_perM2(width_m, depth_m, height_m),
  };
}

/** Exact: Carslaw and Jaeger 1959, section 6.2. */
function boxSlowest_perM2(...sides_m: readonly [number, number, number]): number {
  return sides_m.reduce((sum, side_m) => sum + (Math.PI / side_m) ** 2, 0);
}

/** Half an ellipsoid. Its slowest cooling is that of a half ball, stretched: an upper bound by Rayleigh's quotient. */
function dome(radius_m: number, height_m: number): Outline {
  return {
    volume_m3: (2 / 3) * Math.PI * radius_m ** 2 * height_m,
    height_m,
    plan_m2: Math.PI * radius_m ** 2,
    top_m2: halfEllipsoid_m2(radius_m, height_m),
    side_m2: 0,
    ground_m2: Math.PI * radius_m ** 2,
    directions: 3,
    slowest_perM2: SPHERICAL_J1_ZERO ** 2 * (0.4 / radius_m ** 2 + 0.6 / height_m ** 2),
  };
}

/** Within 1.1 %: Thomsen's formula for the surface of an ellipsoid, recalled. */
function halfEllipsoid_m2(radius_m: number, height_m: number): number {
  const p = 1.6075;
  const sum = radius_m ** (2 * p) + 2 * (radius_m * height_m) ** p;
  return 2 * Math.PI * (sum / 3) ** (1 / p);
}

/** A cone cools like the dome of its height and volume. */
function cone(radius_m: number, height_m: number): Outline {
  const volume_m3 = (Math.PI * radius_m ** 2 * height_m) / 3;
  return {
    ...dome(radius_m / Math.SQRT2, height_m),
    volume_m3,
    plan_m2: Math.PI * radius_m ** 2,
    top_m2: Math.PI * radius_m * Math.hypot(radius_m, height_m),
    ground_m2: Math.PI * radius_m ** 2,
  };
}

function long(width_m: number, height_m: number, length_m: number): Outline {
  const half_m = width_m / 2;
  const section_m2 = (Math.PI * half_m * height_m) / 2;
  const across_perM2 = J1_ZERO ** 2 * (0.25 / half_m ** 2 + 0.75 / height_m ** 2);
  return {
    volume_m3: section_m2 * length_m,
    height_m,
    plan_m2: width_m * length_m,
    top_m2: halfEllipse_m(half_m, height_m) * length_m + 2 * section_m2,
    side_m2: 0,
    ground_m2: width_m * length_m,
    directions: directionsOf(length_m, Math.max(width_m, height_m)),
    slowest_perM2: across_perM2 + (Math.PI / length_m) ** 2,
  };
}

/** Half the way round an ellipse: Ramanujan 1914, his first formula. */
function halfEllipse_m(a_m: number, b_m: number): number {
  return (Math.PI / 2) * (3 * (a_m + b_m) - Math.sqrt((3 * a_m + b_m) * (a_m + 3 * b_m)));
}

/** Lying on two bearers: all of it is side. Slowest cooling: Carslaw and Jaeger 1959, section 8.4. */
function drum(radius_m: number, length_m: number): Outline {
  return {
    volume_m3: Math.PI * radius_m ** 2 * length_m,
    height_m: 2 * radius_m,
    plan_m2: 2 * radius_m * length_m,
    top_m2: 0,
    side_m2: 2 * Math.PI * radius_m * (length_m + radius_m),
    ground_m2: 0,
    directions: directionsOf(length_m, 2 * radius_m),
    slowest_perM2: (J0_ZERO / radius_m) ** 2 + (Math.PI / length_m) ** 2,
  };
}

function trench(width_m: number, depth_m: number, length_m: number): Outline {
  return {
    ...box(width_m, length_m, depth_m),
    side_m2: 0,
    ground_m2: width_m * length_m + 2 * (width_m + length_m) * depth_m,
    directions: directionsOf(length_m, Math.max(width_m, depth_m)),
  };
}

/** An outline cut into shells, core first, all of the same thickness. Arrays have one number a shell. */
export interface Shells {
  readonly count: number;
  readonly outline: Outline;
  /** Share of the volume. */
  readonly volume_share: Float64Array;
  /** Share of the ground plan that lies over this shell and over no inner one. */
  readonly plan_share: Float64Array;
  /** Length over area from a shell's middle to the next inner shell; 0 for the core, 1/m. */
  readonly inward_perM: Float64Array;
  /** Length over area from a shell's middle to the next outer shell, or to the surface, 1/m. */
  readonly outward_perM: Float64Array;
  /** Where a shell's middle lies between the core (0) and the surface (1). */
  readonly middle: Float64Array;
}

/**
 * Cuts an outline into shells that are alike in form, so that their slowest cooling is that of the true outline.
 *
 * With s from 0 at the core to 1 at the surface, volume goes as sⁿ and conductance as g sⁿ⁻¹; g follows from the
 * slowest cooling: g = 3 V λ/π² in three directions, 2 V λ/j₀² in two, 4 V λ/π² in one.
 */
export function cutShells(outline: Outline, count: number): Shells {
  const n = outline.directions;
  const across = Math.max(1, n - 1);
  const spread_m = spreadOf(outline);
  const between_perM = (from: number, to: number): number => {
    if (n === 1) return (to - from) / spread_m;
    if (n === 2) return Math.log(to / from) / spread_m;
    return (1 / from - 1 / to) / spread_m;
  };
  const shells = Array.from({ length: count }, (_, i) => ({
    inner: i / count,
    middle: (i + 0.5) / count,
    outer: (i + 1) / count,
  }));
  const each = (of: (shell: (typeof shells)[number]) => number): Float64Array => Float64Array.from(shells, of);
  return {
    count,
    outline,
    volume_share: each(({ inner, outer }) => outer ** n - inner ** n),
    plan_share: each(({ inner, outer }) => outer ** across - inner ** across),
    inward_perM: each(({ inner, middle }) => (inner === 0 ? 0 : between_perM(inner, middle))),
    outward_perM: each(({ middle, outer }) => between_perM(middle, outer)),
    middle: each(({ middle }) => middle),
  };
}

function spreadOf({ directions, volume_m3, slowest_perM2 }: Outline): number {
  if (directions === 1) return (4 * volume_m3 * slowest_perM2) / Math.PI ** 2;
  if (directions === 2) return (2 * volume_m3 * slowest_perM2) / J0_ZERO ** 2;
  return (3 * volume_m3 * slowest_perM2) / Math.PI ** 2;
}

/** The same form with another volume: a box, a trench and a drum keep their ground, the others their proportions, unless it would lie too thin. */
export function withVolume<Shape extends HeapShape>(shape: Shape, volume_m3: number): Shape;
export function withVolume(shape: HeapShape, volume_m3: number): HeapShape {
  switch (shape.form) {
    case 'box': {
      const { times, deep_m } = heapedUp(volume_m3, shape.width_m * shape.depth_m);
      return { ...shape, width_m: times * shape.width_m, depth_m: times * shape.depth_m, height_m: deep_m };
    }
    case 'trench': {
      const { times, deep_m } = heapedUp(volume_m3, shape.width_m * shape.length_m);
      return { ...shape, width_m: times * shape.width_m, length_m: times * shape.length_m, depth_m: deep_m };
    }
    case 'drum': {
      const { times, deep_m } = heapedUp(volume_m3, Math.PI * (shape.diameter_m / 2) ** 2);
      return { ...shape, diameter_m: times * shape.diameter_m, length_m: deep_m };
    }
    case 'dome':
    case 'cone': {
      const scale = Math.cbrt(volume_m3 / outlineOf(shape).volume_m3);
      const flat = { ...shape, diameter_m: scale * shape.diameter_m, height_m: scale * shape.height_m };
      const steeper = Math.max(1, leastDepth_m(volume_m3) / flat.height_m);
      return { ...flat, diameter_m: flat.diameter_m / Math.sqrt(steeper), height_m: flat.height_m * steeper };
    }
    case 'long': {
      const scale = Math.sqrt(volume_m3 / outlineOf(shape).volume_m3);
      const flat = { ...shape, width_m: scale * shape.width_m, height_m: scale * shape.height_m };
      const steeper = Math.max(1, leastDepth_m(volume_m3) / flat.height_m);
      return { ...flat, length_m: flat.length_m / steeper, height_m: flat.height_m * steeper };
    }
  }
}

/** Stuff lies at least so deep, or half as deep as a cube of it: less lies in a heap of its own. */
function leastDepth_m(volume_m3: number): number {
  return Math.min(twinParameters.leastDepth_m.value, Math.cbrt(volume_m3) / 2);
}

/** How deep so much lies on a floor, and how many times the floor's sides it takes up, 1 at the most. */
function heapedUp(volume_m3: number, floor_m2: number): { readonly times: number; readonly deep_m: number } {
  const deep_m = Math.max(volume_m3 / floor_m2, leastDepth_m(volume_m3));
  return { times: Math.sqrt(volume_m3 / deep_m / floor_m2), deep_m };
}
