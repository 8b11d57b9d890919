/** Young and old carbon of a soil, kg or kg/m². */
export interface Pools {
  readonly young: number;
  readonly old: number;
}

export interface PoolRates {
  /** Of young carbon, each year. */
  readonly young_perYear: number;
  /** Of old carbon, each year. */
  readonly old_perYear: number;
  /** Of young carbon that rots, what becomes old. */
  readonly humified_share: number;
  /** How fast the site rots beside the one the rates were fitted at. */
  readonly outside_factor: number;
}

/**
 * Young and old carbon after some years of an even input: dY/dt = i − k₁rY, dO/dt = hk₁rY − k₂rO, by its closed form
 * (Andrén and Kätterer 1997, equations 3 and 4).
 *
 * @param input_perYear carbon brought on each year, in the unit of the pools
 */
export function poolsAfter(start: Pools, input_perYear: number, years: number, rates: PoolRates): Pools {
  const { humified_share: h, outside_factor: r } = rates;
  const young = rates.young_perYear * r;
  const old = rates.old_perYear * r;
  const youngSteady = input_perYear / young;
  const oldSteady = (h * input_perYear) / old;
  const bridge = (h * (young * start.young - input_perYear)) / (old - young);
  const [youngLeft, oldLeft] = [Math.exp(-young * years), Math.exp(-old * years)];
  return {
    young: youngSteady + (start.young - youngSteady) * youngLeft,
    old: oldSteady + (start.old - oldSteady - bridge) * oldLeft + bridge * youngLeft,
  };
}

export function carbonOf({ young, old }: Pools): number {
  return young + old;
}
