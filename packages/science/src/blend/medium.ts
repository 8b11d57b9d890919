import { blendParameters, type PartId, type Parts, rowOf } from './parameters.ts';
import { type PartDraws, poreSpace_pctVolume } from './part.ts';

/** A part of a blend with its share of the summed loose volumes. */
export interface Shared {
  readonly part: PartId;
  /** 0 to 1. */
  readonly share: number;
  readonly drawn: PartDraws;
}

/** Shares of the whole, in the order in which the parts were named; the same stuff named twice is one. */
export function sharesOf(parts: readonly Parts[]): readonly { readonly part: PartId; readonly share: number }[] {
  const whole = parts.reduce((sum, one) => sum + one.parts, 0);
  const byPart = new Map<PartId, number>();
  for (const { part, parts: count } of parts) byPart.set(part, (byPart.get(part) ?? 0) + count / whole);
  return [...byPart].map(([part, share]) => ({ part, share }));
}

/** Sum over the parts of share × figure, draw by draw. */
export function blended(shared: readonly Shared[], figure: (drawn: PartDraws) => Float64Array): Float64Array {
  const count = shared[0]?.drawn.density_kgPerM3AsIs.length ?? 0;
  return Float64Array.from({ length: count }, (_none, i) =>
    shared.reduce((sum, { share, drawn }) => sum + share * (figure(drawn)[i] ?? Number.NaN), 0),
  );
}

/**
 * Salts of a blend, as of its saturated extract: the salts of each part dissolve in the water that fills all pores,
 * so that each counts by its share of the pore space. Sand brings little water and dilutes less than its volume says.
 * Mass balance; pore space by Bragg and Chambers 1991.
 */
export function blendConductivity_dSPerM(shared: readonly Shared[]): Float64Array {
  const pores = blended(shared, ({ poreSpace_pctVolume: space }) => space);
  const salts = blended(shared, ({ poreSpace_pctVolume: space, conductivity_dSPerM: salt }) =>
    space.map((pct, i) => pct * (salt[i] ?? Number.NaN)),
  );
  return salts.map((sum, i) => (pores[i] ? sum / pores[i] : 0));
}

/** What a medium is like in its pot once it has been watered and has drained. */
export interface Drained {
  readonly density_kgPerM3Dry: Float64Array;
  readonly waterHeld_pctVolume: Float64Array;
  readonly air_pctVolume: Float64Array;
  /** Everything, water and all. */
  readonly density_kgPerM3Wet: Float64Array;
}

const KG_PER_M3_PER_PCT_WATER = 10;

/**
 * Water, air and weight of a blend that keeps only `kept_share` of its parts' loose volumes. Water is held by the parts
 * as by themselves and can't be more than the pores; what is left of the pores is air (Bragg and Chambers 1991).
 */
export function drained(shared: readonly Shared[], kept_share: Float64Array): Drained {
  const dry = blended(shared, ({ density_kgPerM3Dry }) => density_kgPerM3Dry);
  const water = blended(shared, ({ waterHeld_pctVolume }) => waterHeld_pctVolume);
  const per = (values: Float64Array): Float64Array => values.map((value, i) => value / (kept_share[i] ?? Number.NaN));
  const density_kgPerM3Dry = per(dry);
  const pores = density_kgPerM3Dry.map(poreSpace_pctVolume);
  const waterHeld_pctVolume = per(water).map((pct, i) => Math.min(pct, pores[i] ?? Number.NaN));
  return {
    density_kgPerM3Dry,
    waterHeld_pctVolume,
    air_pctVolume: pores.map((pct, i) => pct - (waterHeld_pctVolume[i] ?? Number.NaN)),
    density_kgPerM3Wet: density_kgPerM3Dry.map(
      (kg, i) => kg + KG_PER_M3_PER_PCT_WATER * (waterHeld_pctVolume[i] ?? Number.NaN),
    ),
  };
}

/** The pH of a blend and what is wanted of it. */
export interface BlendPH {
  readonly low: number;
  readonly high: number;
  readonly wanted: { readonly id: 'with-soil' | 'without-soil'; readonly low: number; readonly high: number };
  readonly leans: 'acid' | 'right' | 'alkaline';
}

/**
 * Where the pH of a blend is likely to lie: the ranges of the parts that hold it, weighted by volume. A first estimate,
 * since no two soils hold their pH alike. `undefined` where nothing in it holds a pH.
 */
export function blendPH(shared: readonly Pick<Shared, 'part' | 'share'>[]): BlendPH | undefined {
  const holding = shared.map(({ part, share }) => ({ share, row: rowOf(blendParameters.parts, part) }));
  const held = holding.filter(({ row }) => row.holdsPH);
  const whole = held.reduce((sum, { share }) => sum + share, 0);
  if (whole === 0) return undefined;
  const mean = (of: 'low' | 'high'): number =>
    held.reduce((sum, { share, row }) => sum + share * row.pH[of], 0) / whole;
  const low = mean('low');
  const high = mean('high');
  const loam_pctVolume = 100 * (shared.find(({ part }) => part === 'loam')?.share ?? 0);
  const soil = rowOf(blendParameters.pHWanted, 'with-soil');
  const { id, ...wanted } =
    loam_pctVolume >= soil.leastLoam_pctVolume ? soil : rowOf(blendParameters.pHWanted, 'without-soil');
  const middle = (low + high) / 2;
  const leans = middle > wanted.high ? 'alkaline' : 'right';
  return {
    low,
    high,
    wanted: { id, low: wanted.low, high: wanted.high },
    leans: middle < wanted.low ? 'acid' : leans,
  };
}
