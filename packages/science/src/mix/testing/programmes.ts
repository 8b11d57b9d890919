import { bandTable } from '../bands.ts';
import type { Portion } from '../portion.ts';
import { type Choice, referenceDryOf_kgPerM3, type Wanted } from '../programme.ts';

/** A repeatable stream of numbers in [0, 1): Park and Miller 1988, the minimal standard generator. */
function stream(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return (state - 1) / 2147483646;
  };
}

/** A made-up material: 10 to 100 L a step, dry or wet, rich or woody. */
function anyChoice(next: () => number, rank: number, most: number): Choice {
  const volume_m3 = 0.01 + 0.09 * next();
  const wet_kg = volume_m3 * (40 + 700 * next());
  const dry_kg = wet_kg * (0.1 + 0.85 * next());
  const volatileSolids_kg = dry_kg * (0.6 + 0.38 * next());
  const carbon_kg = volatileSolids_kg / 1.8;
  const nitrogen_kg = carbon_kg / (8 + 150 * next() ** 2);
  const step: Portion = {
    wet_kg,
    dry_kg,
    volatileSolids_kg,
    carbon_kg,
    degradableCarbon_kg: carbon_kg / 2,
    nitrogen_kg,
    availableNitrogen_kg: nitrogen_kg / 2,
    phosphorus_kg: 0,
    potassium_kg: 0,
    volume_m3,
  };
  const highest = Math.floor((most + 1) * next());
  return { step, lowest: Math.floor(next() * 1.3 * Math.min(1, highest)), highest, rank };
}

export function anyProgramme(
  seed: number,
  materials: number,
  most: number,
): { readonly choices: readonly Choice[]; readonly wanted: Wanted } {
  const next = stream(seed);
  const choices = Array.from({ length: materials }, (_, i) => anyChoice(next, i, most));
  const { carbonToNitrogen_ratio, moisture_pctWet, freeAirSpace_pctVolume, density_kgPerM3AsIs } = bandTable.goals;
  const wanted: Wanted = {
    volume_m3: 0.1 + next(),
    goals: [
      ['carbonToNitrogen_ratio', carbonToNitrogen_ratio],
      ['moisture_pctWet', moisture_pctWet],
      ['freeAirSpace_pctVolume', freeAirSpace_pctVolume],
      ...(next() < 0.5 ? [] : [['density_kgPerM3AsIs', density_kgPerM3AsIs] as const]),
    ],
    packing_share: 0.7 + 0.3 * next(),
    mostWater_L: next() < 0.3 ? 20 * next() : Number.POSITIVE_INFINITY,
    floor_m3: 0,
    fills: true,
    referenceDry_kgPerM3: 150,
  };
  return {
    choices,
    wanted: { ...wanted, referenceDry_kgPerM3: referenceDryOf_kgPerM3(choices, wanted.packing_share) },
  };
}

/**
 * The objective worked out afresh from its definition in `docs/models/mix-solve.md`, sharing no code with
 * the programme: plain sums, then each band's miss in soft edges over the wanted volume.
 */
export function objective(
  steps: readonly number[],
  water_L: number,
  choices: readonly Choice[],
  wanted: Wanted,
): number {
  const of = (key: keyof Portion): number => choices.reduce((sum, { step }, i) => sum + step[key] * (steps[i] ?? 0), 0);
  const wet = of('wet_kg') + water_L;
  const dry = of('dry_kg');
  const volume = of('volume_m3') * wanted.packing_share;
  const solids_m3 = of('volatileSolids_kg') / 1600 + (dry - of('volatileSolids_kg')) / 2500;
  const filled = solids_m3 + (wet - dry) / 1000;
  const dryWanted = wanted.volume_m3 * wanted.referenceDry_kgPerM3;
  const miss: Readonly<Record<string, (at: number) => number>> = {
    carbonToNitrogen_ratio: (at) => (of('carbon_kg') - at * of('nitrogen_kg')) / ((dryWanted * 0.48) / 30) / 5,
    moisture_pctWet: (at) => (wet - dry - (at / 100) * wet) / (dryWanted / 0.45) / 0.05,
    freeAirSpace_pctVolume: (at) => ((1 - at / 100) * volume - filled) / wanted.volume_m3 / 0.05,
    density_kgPerM3AsIs: (at) => (wet - at * volume) / wanted.volume_m3 / 59.3,
  };
  let cost = 0;
  for (const [quantity, { preferred, reasonable }] of wanted.goals) {
    const { low, high } = preferred;
    const edge = {
      carbonToNitrogen_ratio: 5,
      moisture_pctWet: 5,
      freeAirSpace_pctVolume: 5,
      density_kgPerM3AsIs: 59.3,
    }[quantity];
    const aim =
      low !== undefined && high !== undefined
        ? { low: low + (high - low) / 4, high: high - (high - low) / 4 }
        : { low: low === undefined ? undefined : low + edge, high: high === undefined ? undefined : high - edge };
    for (const [band, weight] of [
      [aim, 0.1],
      [preferred, 1],
      [reasonable, 20],
    ] as const) {
      if (band.low !== undefined) cost += weight * Math.max(0, -(miss[quantity]?.(band.low) ?? Number.NaN));
      if (band.high !== undefined) cost += weight * Math.max(0, miss[quantity]?.(band.high) ?? Number.NaN);
    }
  }
  const largest = Math.max(0, ...choices.filter(({ highest }) => highest > 0).map(({ step }) => step.volume_m3));
  const slack = Math.min(0.25, (wanted.packing_share * largest) / 2 / wanted.volume_m3);
  const share = volume / wanted.volume_m3;
  cost += 10 * Math.max(0, 1 - slack - share) + 20 * Math.max(0, share - 1 - slack);
  cost += choices.reduce(
    (sum, { step, rank }, i) => sum + (0.01 * (1 + 0.01 * rank) * step.volume_m3 * (steps[i] ?? 0)) / wanted.volume_m3,
    0,
  );
  return cost + (0.01 * water_L) / (1000 * wanted.volume_m3);
}

/** The least of a cost that is convex in water: thirds close in on it. */
export function leastOverWater(costAt: (water_L: number) => number, mostWater_L: number): number {
  let low = 0;
  let high = Math.min(mostWater_L, 3000);
  for (let i = 0; i < 120; i++) {
    const third = (high - low) / 3;
    if (costAt(low + third) <= costAt(high - third)) high -= third;
    else low += third;
  }
  return costAt((low + high) / 2);
}

/** The least cost over water for fixed steps. */
export function bestWater(steps: readonly number[], choices: readonly Choice[], wanted: Wanted): number {
  return leastOverWater((water_L) => objective(steps, water_L, choices, wanted), wanted.mostWater_L);
}

/** Every combination of steps. */
export function combinations(choices: readonly Choice[]): readonly (readonly number[])[] {
  return choices.reduce<readonly (readonly number[])[]>(
    (made, { lowest, highest }) =>
      made.flatMap((steps) => Array.from({ length: highest - lowest + 1 }, (_, i) => [...steps, lowest + i])),
    [[]],
  );
}
