import { type BasisId, releaseParameters, type Series, type WeatherId } from './release.ts';

/** What a dressing is like in one draw, as the published series ask it. */
export interface Facts {
  readonly nitrogen_pctDry: number;
  readonly carbonToNitrogen_ratio: number;
  readonly dryMatter_pct: number;
  /** Of its nitrogen, what is ammonium or nitrate. */
  readonly mineral_share: number;
  /** Of that, what is not lost into the air. */
  readonly kept_share: number;
}

/** Shares of all the nitrogen put on; a year that a series does not tell is left out. */
export interface Released {
  readonly low: readonly number[];
  readonly high: readonly number[];
}

/** How the season or a mulch slows what comes free of organic nitrogen in the first year. */
export type Slowing = (share: number) => number;

const PCT = 100;
const KG_PER_T = 1000;

/** The years of one series, as shares of all the nitrogen put on, in one draw. */
export function released(series: Series, facts: Facts, slow: Slowing): Released {
  switch (series.basis) {
    case 'nitrogen-line':
      return withLater(lineShare(series.line, facts.nitrogen_pctDry), series.later, slow);
    case 'ratio-line':
      return withLater(ratioShare(series.points, facts.carbonToNitrogen_ratio), series.later, slow);
    default: {
      const years = bracketOf(series.brackets, facts).years;
      const by = (end: 'low' | 'high'): readonly number[] =>
        ofTotal(
          series.basis,
          years.map((year) => year[end]),
          facts,
          slow,
        );
      return { low: by('low'), high: by('high') };
    }
  }
}

interface Ends {
  readonly low: number;
  readonly high: number;
}

function withLater(first: Ends, later: readonly Ends[], slow: Slowing): Released {
  const by = (end: 'low' | 'high'): readonly number[] => [slow(first[end]), ...later.map((year) => year[end])];
  return { low: by('low'), high: by('high') };
}

/** The conventions apart: a series is turned into shares of all the nitrogen by its own rule only. */
function ofTotal(
  basis: Exclude<BasisId, 'nitrogen-line' | 'ratio-line'>,
  years: readonly number[],
  { mineral_share, kept_share }: Facts,
  slow: Slowing,
): readonly number[] {
  switch (basis) {
    case 'original-organic': {
      const organic = 1 - mineral_share;
      return years.map((share, i) => (i === 0 ? mineral_share * kept_share + organic * slow(share) : organic * share));
    }
    case 'total':
      return years.map((share, i) => (i === 0 ? slow(share) : share));
    case 'remaining': {
      let left = 1;
      return years.map((share, i) => {
        const released_share = left * (i === 0 ? slow(share) : share);
        left -= released_share;
        return released_share;
      });
    }
  }
}

function bracketOf<Bracket extends Extract<Series, { readonly brackets: unknown }>['brackets'][number]>(
  brackets: readonly Bracket[],
  { carbonToNitrogen_ratio, dryMatter_pct, nitrogen_pctDry }: Facts,
): Bracket {
  const found = brackets.find(
    ({ dryMatterBelow_pct, carbonToNitrogenUpTo_ratio, nitrogenFrom_pctDry }) =>
      (dryMatterBelow_pct === undefined || dryMatter_pct < dryMatterBelow_pct) &&
      (carbonToNitrogenUpTo_ratio === undefined || carbonToNitrogen_ratio <= carbonToNitrogenUpTo_ratio) &&
      (nitrogenFrom_pctDry === undefined || nitrogen_pctDry >= nitrogenFrom_pctDry),
  );
  if (found === undefined) throw new RangeError('the last bracket of a series takes all');
  return found;
}

/** What comes free by nitrogen content, as a share of all nitrogen; never below nothing, for lock-up is reckoned apart. */
function lineShare(line: Extract<Series, { readonly basis: 'nitrogen-line' }>['line'], nitrogen_pctDry: number): Ends {
  const above = Math.max(0, nitrogen_pctDry - line.none_pctDry);
  if (above === 0) return { low: 0, high: 0 };
  const share =
    line.kgPerTPerPct === undefined
      ? ((line.slope_pctPerPct ?? 0) * above) / PCT
      : (line.kgPerTPerPct * above) / ((nitrogen_pctDry / PCT) * KG_PER_T);
  const capped = Math.min(share, (line.most_pct ?? PCT) / PCT);
  return { low: capped, high: capped };
}

/** Straight between the points, level beyond them. */
function ratioShare(
  points: Extract<Series, { readonly basis: 'ratio-line' }>['points'],
  carbonToNitrogen_ratio: number,
): Ends {
  const above = points.findIndex((point) => point.carbonToNitrogen_ratio >= carbonToNitrogen_ratio);
  const right = points[above] ?? points.at(-1);
  const left = above > 0 ? points[above - 1] : right;
  if (left === undefined || right === undefined) throw new RangeError('a line has points');
  const span = right.carbonToNitrogen_ratio - left.carbonToNitrogen_ratio;
  const t = span === 0 ? 0 : (carbonToNitrogen_ratio - left.carbonToNitrogen_ratio) / span;
  return { low: left.low + t * (right.low - left.low), high: left.high + t * (right.high - left.high) };
}

const { retention } = releaseParameters;

/**
 * Share of ammonium that is not lost into the air, as two tables have it (Alberta 2007, Table 4.3.4; Cornell, recalled):
 * the second knows no weather, so it counts only where none was told.
 *
 * @param days until it is worked in, whole days counted up; undefined where it is left on top
 */
export function ammoniumKept(days: number | undefined, weather: WeatherId | undefined): Ends {
  const column = retention.weathers.indexOf(weather ?? 'average');
  const row = days === undefined ? -1 : retention.withinDays.findIndex((one) => days <= one.days);
  const kept = (row < 0 ? retention.never : retention.withinDays[row]?.kept)?.[column];
  if (kept === undefined) throw new RangeError('a row for every weather');
  if (weather !== undefined) return { low: kept, high: kept };
  const elsewhere = row < 0 ? retention.elsewhere.never : (retention.elsewhere.withinDays[row] ?? kept);
  return { low: Math.min(kept, elsewhere), high: Math.max(kept, elsewhere) };
}
