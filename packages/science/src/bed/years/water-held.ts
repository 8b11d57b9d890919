import { carbonParameters, type TextureRow } from './carbon-parameters.ts';

/** Water that a soil holds, as shares of its volume, and what it weighs dry. */
export interface WaterHeld {
  /** At 1,500 kPa, where plants wilt. */
  readonly wilting_share: number;
  /** At 33 kPa, when it has drained. */
  readonly field_share: number;
  readonly density_kgPerM3Dry: number;
}

const { pedotransfer } = carbonParameters;

/**
 * Water held by sand, clay and organic matter (Saxton and Rawls 2006, Table 1, equations 1 to 3, 5 and 6).
 *
 * @param organicMatter_pctDry taken as 8 above 8, where the equations end
 */
export function waterHeld({ sand_share, clay_share }: TextureRow, organicMatter_pctDry: number): WaterHeld {
  const organic = Math.min(pedotransfer.most_pctDry, organicMatter_pctDry);
  const terms = [
    sand_share,
    clay_share,
    organic,
    sand_share * organic,
    clay_share * organic,
    sand_share * clay_share,
    1,
  ] as const;
  const first = (coefficients: readonly number[]): number =>
    terms.reduce((sum, term, i) => sum + term * (coefficients[i] ?? Number.NaN), 0);
  const [wilting, field, drained] = [
    first(pedotransfer.wilting),
    first(pedotransfer.field),
    first(pedotransfer.drained),
  ];
  const [w1 = Number.NaN, w0 = Number.NaN] = pedotransfer.wiltingBend;
  const [f2 = Number.NaN, f1 = Number.NaN, f0 = Number.NaN] = pedotransfer.fieldBend;
  const [d1 = Number.NaN, d0 = Number.NaN] = pedotransfer.drainedBend;
  const [s1 = Number.NaN, s0 = Number.NaN] = pedotransfer.saturated;
  const field_share = field + f2 * field ** 2 + f1 * field + f0;
  const saturated_share = field_share + drained + d1 * drained + d0 + s1 * sand_share + s0;
  return {
    wilting_share: wilting + w1 * wilting + w0,
    field_share,
    density_kgPerM3Dry: (1 - saturated_share) * pedotransfer.particle_kgPerM3,
  };
}
