import { bad, good, type Outcome } from '../catalogue/index.ts';
import type { CautionId } from '../caution/index.ts';
import { type Draws, drawsOf, free, fromPublished, positive, valueAt } from '../estimate/index.ts';
import { nearest } from '../material/index.ts';
import { firstYearShares } from './available-nitrogen.ts';
import type { BedBudgetInput, Before, PutOn, SoilTest } from './bed-budget-io.ts';
import { budgetParameters } from './budget-parameters.ts';
import { rangedDraws } from './crop-need.ts';
import { allCrops, type Crop, cropById } from './crops.ts';
import { type Dressed, dress } from './dressing.ts';
import { releaseParameters, type Series } from './release.ts';
import { released } from './series.ts';

/** What one thing supplies to this season's crops, kg, draw by draw. */
export interface Supply {
  readonly from: 'put' | 'before' | 'soil';
  readonly index: number;
  readonly what: string;
  readonly seasonsAgo: number;
  readonly nitrogen_kg: Float64Array;
  readonly phosphate_kg: Float64Array;
  readonly potash_kg: Float64Array;
  readonly put?: { readonly given: PutOn; readonly dressed: Dressed } | undefined;
}

const KG_PER_HA_PER_KG_PER_M2 = 10_000;
const { oxides, phosphorusLater_share } = releaseParameters;

/** All that was put on, with its years. Problems: as of an ingredient. */
export function putSupplies({ put = [], warmth, ownSizes }: BedBudgetInput, draws: Draws): Outcome<readonly Supply[]> {
  const first = firstYearShares(draws);
  const supplies: Supply[] = [];
  for (const [index, given] of put.entries()) {
    const { seasonsAgo = 0, ...dressing } = given;
    const dressed = dress(dressing, { draws, warmth, ownSizes, path: `put[${index}]`, name: `put-${index}` });
    if (!dressed.ok) return dressed;
    const over = (value: (i: number) => number): Float64Array =>
      Float64Array.from(dressed.value.portions, (_, i) => value(i));
    const portion = (i: number) => dressed.value.portions[i] ?? lacking();
    supplies.push({
      from: 'put',
      index,
      what: given.material,
      seasonsAgo,
      nitrogen_kg: over((i) => dressed.value.draws[i]?.years_kg[seasonsAgo] ?? 0),
      phosphate_kg: over(
        (i) =>
          portion(i).phosphorus_kg *
          oxides.phosphatePerPhosphorus_ratio *
          phosphorusShare(first.phosphorus[i] ?? 0, seasonsAgo),
      ),
      potash_kg: over(
        (i) =>
          portion(i).potassium_kg *
          oxides.potashPerPotassium_ratio *
          potassiumShare(first.potassium[i] ?? 0, seasonsAgo),
      ),
      put: { given, dressed: dressed.value },
    });
  }
  return good(supplies);
}

/** Of all its phosphorus, what a season gives plants; never more than is left of it. */
function phosphorusShare(first: number, seasonsAgo: number): number {
  const second = Math.min(1 - first, phosphorusLater_share.second);
  if (seasonsAgo === 0) return first;
  if (seasonsAgo === 1) return second;
  return seasonsAgo === 2 ? Math.min(1 - first - second, phosphorusLater_share.third) : 0;
}

/** What the first season leaves of potassium the second has. */
function potassiumShare(first: number, seasonsAgo: number): number {
  if (seasonsAgo === 0) return first;
  return seasonsAgo === 1 ? 1 - first : 0;
}

/** What crops before this season leave. Problem: `unknown-crop`. */
export function beforeSupplies(
  before: readonly Before[],
  area_m2: Float64Array,
  draws: Draws,
): Outcome<readonly Supply[]> {
  const supplies: Supply[] = [];
  for (const [index, given] of before.entries()) {
    const area =
      given.area_m2 === undefined ? area_m2 : drawsOf(draws, `before-${index}/area_m2`, given.area_m2, positive);
    const crop = cropById(given.what);
    const credit = releaseParameters.credits.find(({ id }) => id === given.what);
    if (crop?.cover === undefined && credit === undefined) {
      const known = [
        ...allCrops.filter(({ cover }) => cover !== undefined).map(({ id }) => id),
        ...releaseParameters.credits.map(({ id }) => id),
      ];
      const wanted = nearest(given.what, known).join(', ') || known.join(', ');
      return bad({ code: 'unknown-crop', path: `before[${index}].what`, found: given.what, wanted });
    }
    const each_kgPerM2 =
      credit === undefined
        ? coverRelease_kgPerM2(given, crop ?? lacking(), draws)
        : rangedDraws(draws, `before/${credit.id}`, { ...credit, typical: (credit.low + credit.high) / 2 }).map(
            (kgPerHa) => kgPerHa / KG_PER_HA_PER_KG_PER_M2,
          );
    supplies.push({
      from: 'before',
      index,
      what: given.what,
      seasonsAgo: 0,
      nitrogen_kg: area.map((m2, i) => m2 * (each_kgPerM2[i] ?? Number.NaN)),
      phosphate_kg: new Float64Array(draws.count),
      potash_kg: new Float64Array(draws.count),
    });
  }
  return good(supplies);
}

const plantLine: Series = releaseParameters.series.find(({ id }) => id === 'pnw-plants') ?? lacking();

/**
 * Nitrogen of a cover crop dug in: by its nitrogen content (PNW 636); one whose nitrogen is not published may lock some up.
 */
function coverRelease_kgPerM2(given: Before, { id, cover }: Crop, draws: Draws): Float64Array {
  if (cover === undefined) throw new RangeError('a cover crop');
  const middle = ({ low, high }: { readonly low: number; readonly high: number }) => ({
    low,
    typical: (low + high) / 2,
    high,
  });
  const dry =
    given.dryMatter_kgPerM2 === undefined
      ? rangedDraws(draws, `${id}/dryMatter_tPerHa`, middle(cover.dryMatter_tPerHa)).map((t) => t / 10)
      : drawsOf(draws, `${id}/dryMatter_kgPerM2`, given.dryMatter_kgPerM2, positive);
  if (given.nitrogen_pctDry === undefined && cover.nitrogen_kgPerHa === undefined) {
    const { low, typical, high } = budgetParameters.coverWithoutNitrogen_kgPerHa;
    return drawsOf(draws, `${id}/release_kgPerHa`, fromPublished({ low, typical, high }, free), free).map(
      (kgPerHa) => Math.min(0, kgPerHa) / KG_PER_HA_PER_KG_PER_M2,
    );
  }
  // The more dry matter, the more nitrogen in it: one draw decides both, so that the content stays a plausible one.
  const nitrogen_pctDry =
    given.nitrogen_pctDry === undefined && cover.nitrogen_kgPerHa !== undefined
      ? contentOf(id, cover.dryMatter_tPerHa, cover.nitrogen_kgPerHa, draws)
      : new Float64Array(draws.count).fill(given.nitrogen_pctDry ?? Number.NaN);
  return dry.map((kg, i) => {
    const content = nitrogen_pctDry[i] ?? Number.NaN;
    const facts = {
      nitrogen_pctDry: content,
      carbonToNitrogen_ratio: Number.NaN,
      dryMatter_pct: Number.NaN,
      mineral_share: 0,
      kept_share: 1,
    };
    const [share = 0] = released(plantLine, facts, (whole) => whole).low;
    return (kg * content * share) / 100;
  });
}

interface Ends {
  readonly low: number;
  readonly high: number;
}

/** Nitrogen content between that of a thin and that of a fat stand. */
function contentOf(id: string, dry_tPerHa: Ends, nitrogen_kgPerHa: Ends, draws: Draws): Float64Array {
  const ends = [nitrogen_kgPerHa.low / dry_tPerHa.low / 10, nitrogen_kgPerHa.high / dry_tPerHa.high / 10].toSorted(
    (a, b) => a - b,
  );
  const [low = Number.NaN, high = Number.NaN] = ends;
  const range = fromPublished({ low, typical: Math.sqrt(low * high), high }, positive);
  return draws.shares(`${id}/nitrogen_pctDry`).map((u) => valueAt(range, positive, u));
}

/** Nitrogen of organic matter above what guide rates already count. */
export function soilSupply(
  { organicMatter_pctDry }: SoilTest,
  area_m2: Float64Array,
  draws: Draws,
): Supply | undefined {
  if (organicMatter_pctDry === undefined) return undefined;
  const scale = { kind: 'share', lower: 0, upper: 100 } as const;
  const matter = drawsOf(draws, 'soil/organicMatter_pctDry', organicMatter_pctDry, scale);
  const each = rangedDraws(draws, 'soil/organicMatter_kgPerHaPerPct', releaseParameters.organicMatter);
  const counted = budgetParameters.organicMatterCounted_pct.value;
  return {
    from: 'soil',
    index: 0,
    what: 'organic-matter',
    seasonsAgo: 0,
    nitrogen_kg: area_m2.map(
      (m2, i) =>
        (m2 * Math.max(0, (matter[i] ?? Number.NaN) - counted) * (each[i] ?? Number.NaN)) / KG_PER_HA_PER_KG_PER_M2,
    ),
    phosphate_kg: new Float64Array(draws.count),
    potash_kg: new Float64Array(draws.count),
  };
}

/** Salts of the soil once what was put on this season is mixed in, dS/m of a saturated extract, draw by draw. */
export function saltsOf(
  supplies: readonly Supply[],
  { conductivity_dSPerM }: SoilTest,
  area_m2: Float64Array,
  draws: Draws,
): Float64Array {
  const own = budgetParameters.soilConductivity_dSPerM;
  const soil =
    conductivity_dSPerM === undefined
      ? rangedDraws(draws, 'soil/conductivity_dSPerM', own)
      : drawsOf(draws, 'soil/conductivity_dSPerM', conductivity_dSPerM, positive);
  const mixed_m = rangedDraws(draws, 'bed/mixedDepth_m', budgetParameters.mixedDepth_m);
  const brought = supplies.flatMap(({ seasonsAgo, put }) => {
    const row = budgetParameters.conductivity_dSPerM.find((one) => put && one.for.includes(put.dressed.kind.id));
    if (put === undefined || row === undefined || seasonsAgo > 0) return [];
    return [{ put, salts: rangedDraws(draws, `${put.given.material}/conductivity_dSPerM`, row) }];
  });
  return soil.map((base, i) => {
    // What is deeper than the mixed layer can't take more than the whole of it.
    const depths = brought.map(({ put, salts }) => ({
      depth_m: (put.dressed.portions[i]?.volume_m3 ?? 0) / (area_m2[i] ?? Number.NaN),
      salts: salts[i] ?? Number.NaN,
    }));
    const sum_m = depths.reduce((sum, { depth_m }) => sum + depth_m, 0);
    const layer_m = Math.max(mixed_m[i] ?? Number.NaN, sum_m);
    return depths.reduce((all, { depth_m, salts }) => all + (salts * depth_m) / layer_m, base * (1 - sum_m / layer_m));
  });
}

/** Lime brought this season as calcium carbonate, kg, draw by draw. */
export function limeOf(supplies: readonly Supply[], draws: Draws): Float64Array {
  const sum = new Float64Array(draws.count);
  for (const { put, seasonsAgo } of supplies) {
    const row = budgetParameters.limeEquivalent_share.find((one) => put && one.for.includes(put.given.material));
    if (put === undefined || row === undefined || seasonsAgo > 0) continue;
    const share = rangedDraws(draws, `${put.given.material}/limeEquivalent_share`, row);
    for (let i = 0; i < sum.length; i++) {
      sum[i] = (sum[i] ?? 0) + (put.dressed.portions[i]?.dry_kg ?? 0) * (share[i] ?? Number.NaN);
    }
  }
  return sum;
}

/** What hurts at a heap and not on a bed. */
const ofHeaps: ReadonlySet<CautionId> = new Set(['fire', 'pits-gas', 'rats-flies']);

/** What belongs to everything put on this season. */
export function cautionsOf(supplies: readonly Supply[]): readonly CautionId[] {
  return supplies.flatMap(({ put, seasonsAgo }) =>
    put === undefined || seasonsAgo > 0 ? [] : put.dressed.cautions.filter((id) => !ofHeaps.has(id)),
  );
}

function lacking(): never {
  throw new RangeError('a draw of every portion');
}
