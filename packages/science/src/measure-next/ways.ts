import { waterToReach_kg } from '../mix/balance.ts';
import { bandTable, isInBand, type JudgedQuantity, softEdge } from '../mix/bands.ts';
import type { Goals, WeighedMix } from '../mix/mix-input.ts';
import { built, type Portion, portionMoisture_pctWet, portionRatio, poured, scaled, together } from '../mix/portion.ts';
import { measureNextParameters } from './parameters.ts';
import type { Losses } from './worth.ts';

/** One way to lay a mix: so much water, and its dry stuff so many times over. */
export interface Way {
  readonly water_L: number;
  readonly dry_times: number;
}

/** The ways to lay a mix, and what each comes to in each draw. */
export interface Ways {
  readonly ways: readonly Way[];
  /** How far C:N, moisture and air lie outside their preferred bands, in soft edges. */
  readonly losses: Losses;
  /** 1 where all three lie in their reasonable bands. */
  readonly met: Losses;
}

const judged: readonly JudgedQuantity[] = ['carbonToNitrogen_ratio', 'moisture_pctWet', 'freeAirSpace_pctVolume'];

/**
 * The ways between which a check may decide: water from none to what wets the driest draw, times more or less of the
 * dry stuff. What the mix holds of water poured on is left out, for that is decided here.
 */
export function waysOf(mix: WeighedMix, goals: Goals = {}): Ways {
  const { drySteps, waterSteps } = measureNextParameters.decision;
  const draws = mix.total.map((_, j) => j);
  const partsOf = (isDry: boolean): readonly Portion[] =>
    draws.map((j) =>
      together(
        mix.ingredients.flatMap(({ published, portions }) => {
          const portion = portions[j];
          return (published.class === 'carbon-rich') === isDry && portion !== undefined ? [portion] : [];
        }),
      ),
    );
  const dry = partsOf(true);
  const rest = partsOf(false);
  const most_L = mostWater_L(draws.map((j) => together([at(dry, j), at(rest, j)])));
  const change = changeOfDry(dry, rest);
  const ways = steps(-1, 1, change > 0 ? drySteps.value : 1).flatMap((step) =>
    steps(0, most_L, most_L > 0 ? waterSteps.value : 1).map(
      (water_L): Way => ({ water_L, dry_times: Math.max(0, 1 + step * change) }),
    ),
  );
  const figures = ways.map(({ water_L, dry_times }) =>
    draws.map((j) =>
      figuresOf(together([scaled(at(dry, j), dry_times), at(rest, j), poured(water_L)]), mix.packing_share[j] ?? 1),
    ),
  );
  const each = (of: (figure: Figures) => number): Losses => figures.map((row) => Float64Array.from(row, of));
  return {
    ways,
    losses: each((figure) => judged.reduce((all, quantity) => all + lossOf(quantity, figure[quantity], goals), 0)),
    met: each((figure) => (judged.every((quantity) => isReasonable(quantity, figure[quantity], goals)) ? 1 : 0)),
  };
}

type Figures = Readonly<Partial<Record<JudgedQuantity, number | undefined>>>;

function figuresOf(portion: Portion, packing_share: number): Figures {
  return {
    carbonToNitrogen_ratio: portionRatio(portion),
    moisture_pctWet: portionMoisture_pctWet(portion),
    freeAirSpace_pctVolume: built(portion, packing_share)?.freeAirSpace_pctVolume,
  };
}

/** How far outside its preferred band, in soft edges; what can't be told is as bad as it gets. */
function lossOf(quantity: JudgedQuantity, value: number | undefined, goals: Goals): number {
  const most = measureNextParameters.decision.mostLoss_softEdges.value;
  if (value === undefined) return most;
  const { low = Number.NEGATIVE_INFINITY, high = Number.POSITIVE_INFINITY } = goalOf(quantity, goals).preferred;
  return Math.min(most, Math.max(0, low - value, value - high) / softEdge(quantity));
}

function isReasonable(quantity: JudgedQuantity, value: number | undefined, goals: Goals): boolean {
  return value !== undefined && isInBand(value, goalOf(quantity, goals).reasonable);
}

function goalOf(quantity: JudgedQuantity, goals: Goals): (typeof bandTable.goals)[JudgedQuantity] {
  return { ...bandTable.goals[quantity], ...goals[quantity] };
}

function mostWater_L(portions: readonly Portion[]): number {
  const goal_pctWet = measureNextParameters.decision.goal_pctWet.value;
  return Math.max(0, ...portions.map(({ wet_kg, dry_kg }) => waterToReach_kg({ wet_kg, dry_kg, goal_pctWet })));
}

/** The largest change of the dry stuff as a share of it; 0 where there is none. */
function changeOfDry(dry: readonly Portion[], rest: readonly Portion[]): number {
  const volume = (portions: readonly Portion[]): number => portions.reduce((all, { volume_m3 }) => all + volume_m3, 0);
  const ofDry = volume(dry);
  if (ofDry <= 0) return 0;
  return (measureNextParameters.decision.dryChange_share.value * (ofDry + volume(rest))) / ofDry;
}

function steps(low: number, high: number, count: number): readonly number[] {
  if (count <= 1) return [(low + high) / 2];
  return Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1));
}

function at(portions: readonly Portion[], j: number): Portion {
  const portion = portions[j];
  if (portion === undefined) throw new RangeError('a portion for each draw');
  return portion;
}
