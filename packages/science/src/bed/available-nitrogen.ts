import { type Calculation, type Cites, cited, good, type Outcome } from '../catalogue/index.ts';
import { cautionIds } from '../caution/index.ts';
import { type Draws, drawsOf, fraction, fromPublished, summarise } from '../estimate/index.ts';
import { allMaterials } from '../material/index.ts';
import {
  type AvailableNitrogen,
  type AvailableNitrogenInput,
  availableNitrogenInputSchema,
  availableNitrogenSchema,
  type BySource,
} from './available-nitrogen-io.ts';
import { type Dressed, dress } from './dressing.ts';
import { releaseParameters } from './release.ts';

const parameters = releaseParameters;

/** What the releases rest on. */
export const releaseSources: readonly Cites[] = [
  ...parameters.series,
  ...parameters.sums,
  parameters.laterOfPlants,
  parameters.breakEven,
  parameters.retention,
  parameters.retention.elsewhere,
  parameters.firstWeeks,
  parameters.assimilation_share,
  parameters.lockUp_degreeDays,
  parameters.fullSeason_degreeDays,
  parameters.coldest_degC,
  parameters.mulched_share,
  parameters.phosphorusFirstYear_share,
  parameters.phosphorusLater_share,
  parameters.potassiumFirstYear_share,
  ...parameters.kinds.map((kind) => kind.mineral_shareOfNitrogen),
];

/** Of phosphorus and potassium put on, what plants have of it in the first year, draw by draw. */
export function firstYearShares(draws: Draws): { readonly phosphorus: Float64Array; readonly potassium: Float64Array } {
  const of = (name: string, range: Parameters<typeof fromPublished>[0]): Float64Array =>
    drawsOf(draws, name, fromPublished(range, fraction), fraction);
  return {
    phosphorus: of('bed/phosphorusFirstYear_share', parameters.phosphorusFirstYear_share),
    potassium: of('bed/potassiumFirstYear_share', parameters.potassiumFirstYear_share),
  };
}

function run(input: AvailableNitrogenInput, { draws }: { readonly draws: Draws }): Outcome<AvailableNitrogen> {
  const { warmth, ownSizes, ...dressing } = input;
  const dressed = dress(dressing, { draws, warmth, ownSizes, path: '', name: dressing.material });
  if (!dressed.ok) return dressed;
  return good(answerOf(dressed.value, draws));
}

function answerOf(dressed: Dressed, draws: Draws): AvailableNitrogen {
  const { kind, portions, draws: each, cautions } = dressed;
  const over = (value: (i: number) => number): Float64Array => Float64Array.from(portions, (_, i) => value(i));
  const portion = (i: number) => portions[i] ?? none('portion');
  const one = (i: number) => each[i] ?? none('draw');
  const { phosphatePerPhosphorus_ratio, potashPerPotassium_ratio } = parameters.oxides;
  const first = firstYearShares(draws);
  const phosphate = over((i) => portion(i).phosphorus_kg * phosphatePerPhosphorus_ratio);
  const potash = over((i) => portion(i).potassium_kg * potashPerPotassium_ratio);
  const ratio = over((i) => one(i).facts.carbonToNitrogen_ratio);
  const lockMost = over((i) => one(i).lockMost_kg);
  const firstWeeks = over((i) => one(i).first28Days_kg ?? 0);
  return {
    kind: kind.id,
    mass_kg: summarise(over((i) => portion(i).wet_kg)),
    dry_kg: summarise(over((i) => portion(i).dry_kg)),
    nitrogen_kg: summarise(over((i) => portion(i).nitrogen_kg)),
    nitrogen_pctDry: summarise(over((i) => one(i).facts.nitrogen_pctDry)),
    ...(ratio.every((value) => Number.isFinite(value) && value > 0) && { carbonToNitrogen_ratio: summarise(ratio) }),
    mineral_kg: summarise(over((i) => one(i).mineral_kg)),
    lost_kg: summarise(over((i) => one(i).lost_kg)),
    ...(one(0).first28Days_kg !== undefined && { first28Days_kg: summarise(firstWeeks) }),
    year1_kg: summarise(over((i) => one(i).years_kg[0])),
    year1_share: summarise(over((i) => shareOf(one(i).years_kg[0], portion(i).nitrogen_kg))),
    year2_kg: summarise(over((i) => one(i).years_kg[1])),
    year3_kg: summarise(over((i) => one(i).years_kg[2])),
    bound_kg: summarise(over((i) => one(i).bound_kg)),
    ...(lockMost.some((kg) => kg > 0) && {
      lockUp: {
        breakEven_ratio: kind.breakEven_ratio,
        most_kg: summarise(lockMost),
        thisSeason_kg: summarise(over((i) => one(i).lock_kg)),
        give_kg: summarise(over((i) => Math.max(0, -one(i).years_kg[0]))),
      },
    }),
    phosphate_kg: summarise(phosphate),
    phosphateYear1_kg: summarise(phosphate.map((kg, i) => kg * (first.phosphorus[i] ?? Number.NaN))),
    potash_kg: summarise(potash),
    potashYear1_kg: summarise(potash.map((kg, i) => kg * (first.potassium[i] ?? Number.NaN))),
    bySource: sourcesOf(dressed),
    cautions,
  };
}

/** Each series as it reads for the likely dressing: the middle of its draws. */
function sourcesOf({ series, draws, portions }: Dressed): readonly BySource[] {
  const nitrogen_kg = summarise(portions.map((portion) => portion.nitrogen_kg)).p50;
  const lockShare = summarise(draws.map(({ lock_kg }, i) => shareOf(lock_kg, portions[i]?.nitrogen_kg ?? 0))).p50;
  return series.map((told, s) => {
    const year = (y: number): { low: number; high: number } | undefined => {
      const ends = (end: 'low' | 'high'): readonly number[] =>
        draws.flatMap(({ bySource }) => bySource[s]?.[end][y] ?? []);
      const [low, high] = [ends('low'), ends('high')];
      return low.length === 0 ? undefined : { low: summarise(low).p50, high: summarise(high).p50 };
    };
    const kg = (share: { low: number; high: number } | undefined) =>
      share && { low: share.low * nitrogen_kg, high: share.high * nitrogen_kg };
    const published = year(0) ?? none('first year');
    const year1_share = { low: published.low - lockShare, high: published.high - lockShare };
    const [year2_kg, year3_kg] = [kg(year(1)), kg(year(2))];
    return {
      id: told.id,
      basis: told.basis,
      ...cited(told),
      year1_share,
      year1_kg: { low: year1_share.low * nitrogen_kg, high: year1_share.high * nitrogen_kg },
      ...(year2_kg !== undefined && { year2_kg }),
      ...(year3_kg !== undefined && { year3_kg }),
    };
  });
}

function shareOf(part: number, whole: number): number {
  return whole > 0 ? part / whole : 0;
}

function none(what: string): never {
  throw new RangeError(`no ${what}`);
}

/** What something put on a bed lets go of its nitrogen, and when. */
export const availableNitrogen: Calculation<AvailableNitrogenInput, AvailableNitrogen> = {
  id: 'available-nitrogen',
  title: 'Nitrogen for plants from what is put on a bed',
  summary:
    'What was put on, how much and how it was worked in go in; out comes the nitrogen that plants have of it this season and in the next two years, by every published series that fits, each by its own convention, with what is lost into the air, what carbon locks up, and its phosphorus and potassium.',
  input: availableNitrogenInputSchema,
  output: availableNitrogenSchema,
  sources: releaseSources,
  cautions: cautionIds.filter(
    (id) => id === 'manure-pathogens' || allMaterials.some(({ cautions }) => cautions.includes(id)),
  ),
  example: {
    material: 'goat-bedding',
    amount: { measure: 'barrow', count: 6 },
    placed: 'dug-in',
    workedInAfter_days: 1,
    warmth: { soil_degC: 15, season_days: 150 },
  },
  run,
};
