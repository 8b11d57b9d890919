import { good, type Outcome } from '../catalogue/index.ts';
import { type CautionId, inOrder } from '../caution/index.ts';
import {
  type Draws,
  drawsOf,
  fraction,
  free,
  fromPublished,
  type PublishedRange,
  positive,
  summarise,
} from '../estimate/index.ts';
import type { OwnSizes } from '../material/index.ts';
import { resolve, weigh } from '../mix/ingredient.ts';
import type { Portion } from '../mix/portion.ts';
import type { Dressing, Warmth } from './available-nitrogen-io.ts';
import { type KindRow, kindOf, kindRow, releaseParameters, type Series } from './release.ts';
import { ammoniumKept, type Facts, type Released, released } from './series.ts';

const parameters = releaseParameters;

/** What one draw of a dressing lets go, kg of nitrogen. */
export interface YearsOf {
  readonly mineral_kg: number;
  readonly lost_kg: number;
  readonly first28Days_kg: number | undefined;
  /** Year 1, 2, 3. */
  readonly years_kg: readonly [number, number, number];
  readonly bound_kg: number;
  /** Locked if all carbon rotted, dug in. */
  readonly lockMost_kg: number;
  readonly lock_kg: number;
  readonly bySource: readonly Released[];
  readonly facts: Facts;
}

/** A dressing, draw by draw. */
export interface Dressed {
  readonly kind: KindRow;
  readonly series: readonly Series[];
  readonly portions: readonly Portion[];
  readonly draws: readonly YearsOf[];
  readonly cautions: readonly CautionId[];
}

interface Laying {
  readonly draws: Draws;
  readonly warmth?: Warmth | undefined;
  readonly ownSizes?: OwnSizes | undefined;
  readonly path: string;
  /** The name of its amount among the draws. */
  readonly name: string;
}

/** All that a dressing lets go, draw by draw. Problems: as of looking up and weighing an ingredient. */
export function dress(dressing: Dressing, { draws, warmth, ownSizes, path, name }: Laying): Outcome<Dressed> {
  const resolved = resolve(dressing, path);
  if (!resolved.ok) return resolved;
  const weighed = weigh(resolved.value, dressing.amount, name, { draws, ownSizes, path });
  if (!weighed.ok) return weighed;
  const kind = dressing.kind === undefined ? kindOf(resolved.value.published.id) : kindRow(dressing.kind);
  const ratio = likelyRatio(weighed.value);
  const series = parameters.series.filter(
    ({ for: kinds, upTo_ratio = Number.POSITIVE_INFINITY }) => kinds.includes(kind.id) && ratio <= upTo_ratio,
  );
  const subject = resolved.value.known.id;
  const ranged = (property: string, range: PublishedRange, scale = fraction): Float64Array =>
    drawsOf(draws, `${subject}/${property}`, fromPublished(range, scale), scale);
  const mineral = drawsOf(
    draws,
    `${subject}/mineral_shareOfNitrogen`,
    dressing.mineral_shareOfNitrogen ?? fromPublished(kind.mineral_shareOfNitrogen, fraction),
    fraction,
  );
  const mulched = dressing.placed === 'mulched';
  const kept = kind.fresh
    ? ammoniumKept(mulched ? undefined : (dressing.workedInAfter_days ?? 0), dressing.weather)
    : { low: 1, high: 1 };
  const quick = draws.shares(`${subject}/release_share`);
  const tight = draws.shares(`${subject}/ammoniumKept_share`);
  const assimilated = ranged('assimilation_share', parameters.assimilation_share);
  const season = seasonDraws(draws, warmth);
  const known = { kind, series, mulched };
  return good({
    kind,
    series,
    portions: weighed.value,
    draws: weighed.value.map((portion, i) =>
      yearsOf(portion, known, {
        mineral_share: at(mineral, i),
        kept_share: kept.low + at(tight, i) * (kept.high - kept.low),
        quick: at(quick, i),
        assimilated: at(assimilated, i),
        season_share: at(season.share, i),
        lock_share: at(season.lock, i),
      }),
    ),
    cautions: inOrder([
      ...resolved.value.cautions,
      ...(kind.fresh && kind.id.includes('manure') ? (['manure-pathogens'] as const) : []),
    ]),
  });
}

/** The middle C:N of all draws; what has no nitrogen has an endless one. */
function likelyRatio(portions: readonly Portion[]): number {
  const ratios = portions.map(({ carbon_kg, nitrogen_kg }) =>
    nitrogen_kg > 0 ? carbon_kg / nitrogen_kg : Number.MAX_VALUE,
  );
  return summarise(ratios).p50;
}

/** How much of a full season's work the soil's warmth does, and how much of the lock-up happens. */
function seasonDraws(draws: Draws, warmth: Warmth | undefined): { share: Float64Array; lock: Float64Array } {
  if (warmth === undefined) {
    const whole = new Float64Array(draws.count).fill(1);
    return { share: whole, lock: whole };
  }
  const { fullSeason_degreeDays, lockUp_degreeDays, coldest_degC } = parameters;
  const soil = drawsOf(draws, 'season/soil_degC', warmth.soil_degC, free);
  const full = drawsOf(draws, 'season/full_degreeDays', fromPublished(fullSeason_degreeDays, positive), positive);
  const degreeDays = soil.map((temp) => (temp < coldest_degC.value ? 0 : temp * warmth.season_days));
  return {
    share: degreeDays.map((sum, i) => Math.min(1, sum / at(full, i))),
    lock: degreeDays.map((sum) => Math.min(1, sum / lockUp_degreeDays.value)),
  };
}

interface OneDraw {
  readonly mineral_share: number;
  readonly kept_share: number;
  /** Where between the lowest and the highest series this draw stands, 0 to 1. */
  readonly quick: number;
  readonly assimilated: number;
  readonly season_share: number;
  readonly lock_share: number;
}

function yearsOf(
  portion: Portion,
  { kind, series, mulched }: { readonly kind: KindRow; readonly series: readonly Series[]; readonly mulched: boolean },
  one: OneDraw,
): YearsOf {
  const { nitrogen_kg, dry_kg, wet_kg, carbon_kg } = portion;
  const facts: Facts = {
    nitrogen_pctDry: dry_kg > 0 ? (100 * nitrogen_kg) / dry_kg : 0,
    carbonToNitrogen_ratio: nitrogen_kg > 0 ? carbon_kg / nitrogen_kg : Number.POSITIVE_INFINITY,
    dryMatter_pct: wet_kg > 0 ? (100 * dry_kg) / wet_kg : 0,
    mineral_share: one.mineral_share,
    kept_share: one.kept_share,
  };
  const slow = slowing(one.season_share, mulched);
  const bySource = series.map((told) => released(told, facts, slow));
  const lockMost_kg = lockedBy(portion, kind.breakEven_ratio, one.assimilated);
  const rotting_share = carbon_kg > 0 ? portion.degradableCarbon_kg / carbon_kg : 0;
  const lock_kg = mulched ? 0 : lockMost_kg * rotting_share * one.lock_share;
  const lost_kg = nitrogen_kg * one.mineral_share * (1 - one.kept_share);
  const let1_kg = Math.min(nitrogen_kg - lost_kg, nitrogen_kg * between(bySource, 0, one.quick));
  const year1_kg = let1_kg - lock_kg;
  const left1_kg = nitrogen_kg - lost_kg - Math.max(0, let1_kg);
  const year2_kg = Math.min(left1_kg, nitrogen_kg * between(bySource, 1, one.quick));
  const year3_kg = Math.min(left1_kg - year2_kg, nitrogen_kg * between(bySource, 2, one.quick));
  return {
    mineral_kg: nitrogen_kg * one.mineral_share,
    lost_kg,
    first28Days_kg: kind.fresh && series.length > 0 ? firstWeeks_kg(portion, facts, mulched, let1_kg) : undefined,
    years_kg: [year1_kg, year2_kg, year3_kg],
    bound_kg: left1_kg - year2_kg - year3_kg,
    lockMost_kg,
    lock_kg,
    bySource,
    facts,
  };
}

/** First-order release: a season of part of the warmth lets go 1 − (1 − m) to that part; a mulch half as much. */
function slowing(season_share: number, mulched: boolean): (share: number) => number {
  return (share) => {
    if (share <= 0) return mulched ? 0 : share * season_share;
    const warmed = 1 - (1 - Math.min(1, share)) ** season_share;
    return mulched ? parameters.mulched_share.value * warmed : warmed;
  };
}

/** Nitrogen that the microbes on carbon beyond the break-even take: C × (1/break-even − 1/(C:N)) × what goes into them. */
function lockedBy({ carbon_kg, nitrogen_kg }: Portion, breakEven_ratio: number, assimilated: number): number {
  return Math.max(0, carbon_kg / breakEven_ratio - nitrogen_kg) * assimilated;
}

function firstWeeks_kg(
  { nitrogen_kg }: Portion,
  { nitrogen_pctDry }: Facts,
  mulched: boolean,
  season_kg: number,
): number {
  const { slope_pctPerPct, none_pctDry, most_pct } = parameters.firstWeeks;
  const share = Math.min(most_pct, slope_pctPerPct * (nitrogen_pctDry - none_pctDry)) / 100;
  if (share <= 0) return mulched ? 0 : nitrogen_kg * share;
  return Math.min(Math.max(0, season_kg), nitrogen_kg * share * (mulched ? parameters.mulched_share.value : 1));
}

/**
 * One value between what the series say of a year: every series counts once by its middle, with the lowest and the highest
 * end of any beyond them, and straight lines between. Series that don't tell the year have no say.
 */
function between(bySource: readonly Released[], year: number, quick: number): number {
  const told = bySource.flatMap(({ low, high }) => {
    const [least, most] = [low[year], high[year]];
    return least === undefined || most === undefined ? [] : [{ least, most }];
  });
  if (told.length === 0) return 0;
  const marks = [
    Math.min(...told.map(({ least }) => least)),
    ...told.map(({ least, most }) => (least + most) / 2).toSorted((a, b) => a - b),
    Math.max(...told.map(({ most }) => most)),
  ];
  const position = quick * (marks.length - 1);
  const below = Math.floor(position);
  const low = marks[below] ?? Number.NaN;
  const high = marks[Math.min(below + 1, marks.length - 1)] ?? low;
  return low + (high - low) * (position - below);
}

function at(values: ArrayLike<number>, i: number): number {
  return values[i] ?? Number.NaN;
}
