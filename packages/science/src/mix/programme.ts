import type { Milp, MilpRow, MilpVariable } from '../solver/index.ts';
import { type Band, type Goal, type JudgedQuantity, softEdge } from './bands.ts';
import { mixParameters } from './parameters.ts';
import { phaseDensities } from './porosity.ts';
import { type Portion, poured, scaled, together } from './portion.ts';

/** A material as the solver sees it. */
export interface Choice {
  /** What one step (a measure, or half of one) brings. */
  readonly step: Portion;
  /** Fewest and most steps. */
  readonly lowest: number;
  readonly highest: number;
  /** Place in the order of use, 0 first; breaks ties. */
  readonly rank: number;
}

/** What the mix is for. */
export interface Wanted {
  readonly volume_m3: number;
  readonly goals: readonly (readonly [JudgedQuantity, Goal])[];
  readonly packing_share: number;
  /** `Infinity` where water is free. */
  readonly mostWater_L: number;
  /** A volume that must be reached; 0 where none must. */
  readonly floor_m3: number;
  /** Whether too little volume costs; false to mend a mix as it stands rather than to fill the bay. */
  readonly fills: boolean;
  /** Dry mass in a cubic metre built of this stock: the measure of how much a deviation weighs. */
  readonly referenceDry_kgPerM3: number;
}

type Side = 'low' | 'high';
const tierIds = ['aim', 'preferred', 'reasonable'] as const;

/** One end of one band of one quantity, which the mix should not pass. */
export interface Edge {
  /** Unique within a programme; the name of its row and of its deviation. */
  readonly name: string;
  readonly quantity: JudgedQuantity;
  readonly side: Side;
  readonly at: number;
  /** What one soft edge of deviation over the whole wanted volume costs. */
  readonly weight: number;
}

const { solver } = mixParameters;
const tierWeight: Readonly<Record<(typeof tierIds)[number], number>> = {
  aim: solver.aimWeight.value,
  preferred: solver.preferredWeight.value,
  reasonable: solver.reasonableWeight.value,
};

/** The middle half of the preferred band: a mix on its edge lies outside every other time. */
function aimOf(quantity: JudgedQuantity, { low, high }: Band): Band {
  if (low !== undefined && high !== undefined) {
    const quarter = (high - low) / 4;
    return { low: low + quarter, high: high - quarter };
  }
  const edge = softEdge(quantity);
  return { low: low === undefined ? undefined : low + edge, high: high === undefined ? undefined : high - edge };
}

/** Every edge of the goals. */
export function edgesOf(goals: Wanted['goals']): readonly Edge[] {
  return goals.flatMap(([quantity, goal]) => {
    const bands = { ...goal, aim: aimOf(quantity, goal.preferred) };
    return tierIds.flatMap((tier) =>
      (['low', 'high'] as const).flatMap((side) => {
        const at = bands[tier][side];
        if (at === undefined) return [];
        return [{ name: `${quantity}_${tier}_${side}`, quantity, side, at, weight: tierWeight[tier] }];
      }),
    );
  });
}

/** Volume that water and solids fill, m³. */
function filled_m3({ wet_kg, dry_kg, volatileSolids_kg }: Portion): number {
  return (
    (wet_kg - dry_kg) / phaseDensities.water_kgPerM3 +
    volatileSolids_kg / phaseDensities.organic_kgPerM3 +
    (dry_kg - volatileSolids_kg) / phaseDensities.ash_kgPerM3
  );
}

/**
 * How far a portion pulls past an edge, in soft edges over the whole wanted volume: linear in the
 * portion, so that pulls add up. For C:N at most R it is (C − R N) over the nitrogen of the wanted
 * volume times the soft edge, and so on for each quantity; above 0 the mix lies past the edge.
 */
export function pull(edge: Edge, portion: Portion, wanted: Wanted): number {
  const sign = edge.side === 'high' ? 1 : -1;
  const pulled = (sign * over(edge.quantity, edge.at, portion, wanted)) / scale(edge.quantity, wanted);
  return Math.abs(pulled) < ROUNDING_PULL ? 0 : pulled;
}

/** Stuff that lies just on an edge pulls by what rounding leaves; solvers that scale rows trip over it. */
const ROUNDING_PULL = 1e-12;

function over(quantity: JudgedQuantity, at: number, portion: Portion, { packing_share }: Wanted): number {
  const volume_m3 = packing_share * portion.volume_m3;
  switch (quantity) {
    case 'carbonToNitrogen_ratio':
      return portion.carbon_kg - at * portion.nitrogen_kg;
    case 'moisture_pctWet':
      return portion.wet_kg - portion.dry_kg - (at / 100) * portion.wet_kg;
    case 'freeAirSpace_pctVolume':
      return (1 - at / 100) * volume_m3 - filled_m3(portion);
    case 'density_kgPerM3AsIs':
      return portion.wet_kg - at * volume_m3;
  }
}

/** One soft edge over the whole wanted volume, filled with a reference mix, in the quantity's own balance. */
function scale(quantity: JudgedQuantity, { volume_m3, referenceDry_kgPerM3 }: Wanted): number {
  const dry_kg = volume_m3 * referenceDry_kgPerM3;
  const edge = softEdge(quantity);
  switch (quantity) {
    case 'carbonToNitrogen_ratio':
      return ((dry_kg * solver.referenceCarbon_pctDry.value) / 100 / solver.referenceRatio.value) * edge;
    case 'moisture_pctWet':
      return ((dry_kg / (1 - solver.referenceMoisture_pctWet.value / 100)) * edge) / 100;
    case 'freeAirSpace_pctVolume':
      return (volume_m3 * edge) / 100;
    case 'density_kgPerM3AsIs':
      return volume_m3 * edge;
  }
}

/**
 * Dry mass in a cubic metre built of everything that may go in; of a common garden mix where nothing may.
 * Straw weighs a tenth of manure: measured by one fixed density, a heap of bad straw would hardly count.
 */
export function referenceDryOf_kgPerM3(choices: readonly Choice[], packing_share: number): number {
  const all = together(choices.map(({ step, highest }) => scaled(step, highest)));
  if (all.dry_kg > 0 && all.volume_m3 > 0) return all.dry_kg / (packing_share * all.volume_m3);
  return solver.referenceDensity_kgPerM3AsIs.value * (1 - solver.referenceMoisture_pctWet.value / 100);
}

/**
 * How much the volume may miss the wanted one without cost, as a share of it: half the largest step,
 * since whole measures can't come nearer; never more than a quarter.
 */
export function volumeSlack_share(choices: readonly Choice[], wanted: Wanted): number {
  const largest_m3 = Math.max(0, ...choices.filter(({ highest }) => highest > 0).map(({ step }) => step.volume_m3));
  return Math.min(MOST_SLACK, (wanted.packing_share * largest_m3) / 2 / wanted.volume_m3);
}

const MOST_SLACK = 0.25;
const LITRES_PER_M3 = 1000;

/** The cost of one step of a choice. */
export function stepCost({ step, rank }: Choice, { volume_m3 }: Wanted): number {
  return solver.materialCost.value * (1 + solver.rankStep.value * rank) * (step.volume_m3 / volume_m3);
}

/** The cost of one litre of water. */
export function litreCost({ volume_m3 }: Wanted): number {
  return solver.waterCost.value / (LITRES_PER_M3 * volume_m3);
}

/** The variable of the i-th choice. */
export function stepVariable(i: number): string {
  return `steps${i}`;
}

export const WATER_VARIABLE = 'water_L';

/**
 * The mix as a programme. It minimises
 *
 *   Σ edges weight · deviation + volumeWeight · short + overfullWeight · over
 *   + Σ materials stepCost · steps + litreCost · water
 *
 * where a deviation is how far the mix lies past an edge of a goal's aim, preferred or reasonable
 * band, in soft edges over the whole wanted volume ({@link pull}), and `short` and `over` are shares of the
 * wanted volume beyond {@link volumeSlack_share}. The bands are soft; limits of the stock, water and
 * the floor are hard. Weights: `reference/mix.json`, solver; the model: `docs/models/mix-solve.md`.
 *
 * @param whole false for the relaxed programme, whose steps may be broken.
 */
export function mixProgramme(choices: readonly Choice[], wanted: Wanted, whole: boolean): Milp {
  const edges = edgesOf(wanted.goals);
  const slack = volumeSlack_share(choices, wanted);
  const share = ({ step }: Choice): number => (wanted.packing_share * step.volume_m3) / wanted.volume_m3;
  const volume = Object.fromEntries(choices.map((choice, i) => [stepVariable(i), share(choice)]));
  const none = Number.NEGATIVE_INFINITY;
  const rows: readonly MilpRow[] = [
    ...edges.map((edge) => edgeRow(edge, choices, wanted)),
    {
      name: 'short_row',
      coefficients: { ...volume, short: 1 },
      lower: wanted.fills ? 1 - slack : 0,
      upper: Number.POSITIVE_INFINITY,
    },
    { name: 'over_row', coefficients: { ...volume, over: -1 }, lower: none, upper: 1 + slack },
    ...(wanted.floor_m3 > 0
      ? [
          {
            name: 'floor_row',
            coefficients: volume,
            lower: wanted.floor_m3 / wanted.volume_m3,
            upper: Number.POSITIVE_INFINITY,
          },
        ]
      : []),
  ];
  return {
    variables: [
      ...choices.map((choice, i) => ({
        name: stepVariable(i),
        cost: stepCost(choice, wanted),
        lower: choice.lowest,
        upper: choice.highest,
        integer: whole,
      })),
      variable(WATER_VARIABLE, litreCost(wanted), wanted.mostWater_L),
      ...edges.map(({ name, weight }) => variable(name, weight)),
      variable('short', solver.volumeWeight.value),
      variable('over', solver.overfullWeight.value),
    ],
    rows,
  };
}

function variable(name: string, cost: number, upper: number = Number.POSITIVE_INFINITY): MilpVariable {
  return { name, cost, lower: 0, upper, integer: false };
}

function edgeRow(edge: Edge, choices: readonly Choice[], wanted: Wanted): MilpRow {
  const pulls = choices.map(({ step }, i): [string, number] => [stepVariable(i), pull(edge, step, wanted)]);
  return {
    name: `${edge.name}_row`,
    coefficients: { ...Object.fromEntries(pulls), [WATER_VARIABLE]: pull(edge, poured(1), wanted), [edge.name]: -1 },
    lower: Number.NEGATIVE_INFINITY,
    upper: 0,
  };
}
