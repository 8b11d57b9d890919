import type { Holding } from '@loamwright/daybook';
import {
  type AvailableNitrogen,
  availableNitrogen,
  type BedBudget,
  type BedBudgetInput,
  budgetParameters,
  type CautionId,
  type ElementBudget,
  type Grade,
  good,
  type Needs,
  type Outcome,
  type Quantity,
  type Supplied,
  sourceOf,
} from '@loamwright/science';
import type { Figure, Saying } from '@loamwright/words';
import { plainPlaces, twoDigits } from './blend-words.ts';
import { materialName } from './names.ts';
import { area, depth, mass, say, sayOf, smallMass } from './saying.ts';

/** The budget of a bed in sentences. */
export interface BedBudgetReport {
  readonly answer: Saying;
  /** What may be missing in the answer. */
  readonly range: Saying;
  readonly cover: readonly Saying[];
  readonly advice: readonly Saying[];
  readonly others: readonly Saying[];
  /** What was taken where nobody said it. */
  readonly assumed: readonly Saying[];
  /** What each of several crops wants; none where there is one. */
  readonly wanted: readonly Saying[];
  readonly supplied: readonly Saying[];
  /** How far the sources lie apart; one line for each thing put on. */
  readonly spread: readonly Saying[];
  /** What each source says. */
  readonly sources: readonly Saying[];
  readonly cautions: readonly CautionId[];
}

/** What every source says of something put on, which the budget takes together. */
export interface ReleaseOf {
  readonly material: string;
  readonly release: AvailableNitrogen;
}

/** What every source says of each thing put on this season. Problems: those of `available-nitrogen`. */
export function releasesOf(
  { put = [], warmth, ownSizes }: BedBudgetInput,
  needs: Needs,
): Outcome<readonly ReleaseOf[]> {
  const releases: ReleaseOf[] = [];
  for (const { seasonsAgo = 0, ...dressing } of put) {
    if (seasonsAgo > 0) continue;
    const release = availableNitrogen.run(
      { ...dressing, ...(warmth !== undefined && { warmth }), ...(ownSizes !== undefined && { ownSizes }) },
      needs,
    );
    if (!release.ok) return release;
    releases.push({ material: dressing.material, release: release.value });
  }
  return good(releases);
}

interface Told {
  readonly input: BedBudgetInput;
  readonly budget: BedBudget;
  readonly releases: readonly ReleaseOf[];
  readonly holding: Holding;
}

/** The answer of `bed-budget` in sentences. */
export function bedBudgetReport({ input, budget, releases, holding }: Told): BedBudgetReport {
  const { nitrogen } = budget.elements;
  const each = releases.filter((one, i) => releases.findIndex(({ material }) => material === one.material) === i);
  return {
    answer: answerOf(budget),
    range: rangeWords(nitrogen),
    cover: budget.cover.flatMap((cover, i) => coverWords(cover, input.fertilisers?.[i])),
    advice: budget.advice.map((id) => sayOf('budget.advice', id, layerPlaces)),
    others: [
      elementWords('phosphate', budget),
      elementWords('potash', budget),
      ...(budget.phosphorus_years === undefined ? [] : [yearsWords(budget.phosphorus_years)]),
      ...lockUpWords(budget),
      ...saltWords(budget),
      pHWords(budget),
      ...limeWords(budget),
      ...untestedWords(budget),
    ],
    assumed: isAssumed(input, releases) ? [say('budget.assumed')] : [],
    wanted: budget.wanted.length > 1 ? budget.wanted.map(cropWords) : [],
    supplied: budget.supplied.map((one) => suppliedWords(one, holding)),
    spread: [
      ...each.flatMap((one) => spreadWords(one, holding)),
      ...releases.flatMap((one) => firstWeeksWords(one, holding)),
    ],
    sources: [...each.flatMap((one) => sourceWords(one, holding)), ...releases.map((one) => laterWords(one, holding))],
    cautions: budget.cautions,
  };
}

const { layerYearly_m, layerOnNewBed_m, thinLayer_m } = budgetParameters;
/** How thick layers usually lie, for the advice that tells it. */
const layerPlaces = {
  yearLow: depth(layerYearly_m.low),
  yearHigh: depth(layerYearly_m.high),
  newBed: depth(layerOnNewBed_m.high),
  thinLow: depth(thinLayer_m.low),
  thinHigh: depth(thinLayer_m.high),
};

function yearsWords(years: NonNullable<BedBudget['phosphorus_years']>): Saying {
  const { likely, low, high } = twoDigits(years);
  return say('budget.phosphorus-years', { years: likely, low, high });
}

function answerOf({ elements: { nitrogen }, area_m2 }: BedBudget): Saying {
  const robbed = nitrogen.supplied_kg.p50 < 0;
  return sayOf('budget.answer', robbed ? 'robbed' : nitrogen.stands, {
    area: area(area_m2),
    need: smallMass(nitrogen.need_kg),
    supplied: smallMass(nitrogen.supplied_kg),
    robbed: smallMass(turned(nitrogen.supplied_kg)),
    short: smallMass(nitrogen.short_kg),
    chance: { chance: nitrogen.enough },
  });
}

/** Whether fresh stuff of this season was taken as worked in at once, because nobody said. */
function isAssumed({ put = [] }: BedBudgetInput, releases: readonly ReleaseOf[]): boolean {
  return put.some(
    ({ material, seasonsAgo = 0, placed, workedInAfter_days }) =>
      seasonsAgo === 0 &&
      placed !== 'mulched' &&
      workedInAfter_days === undefined &&
      releases.some((one) => one.material === material && one.release.lost_kg.p50 > 0),
  );
}

function rangeWords({ need_kg, supplied_kg }: ElementBudget): Saying {
  const need = ranged(need_kg);
  if (supplied_kg.p90 > 0) return say('budget.range', { need, supplied: ranged(supplied_kg) });
  return say('budget.range.robbed', { need, robbed: ranged(turned(supplied_kg)) });
}

function turned({ p10, p50, p90 }: { p10: number; p50: number; p90: number }): Quantity {
  return { p10: -p90, p50: -p50, p90: -p10 };
}

function ranged(quantity: Quantity): Figure {
  return { ...smallMass(quantity), asRange: true };
}

/** Of soil that nobody tested it is not known what it holds, so no odds are told of its being short. */
function elementWords(id: 'phosphate' | 'potash', { elements, untested }: BedBudget): Saying {
  const element = elements[id];
  const unknown =
    untested.includes(id === 'phosphate' ? 'phosphorus' : 'potassium') &&
    (element.stands === 'short' || element.stands === 'doubtful');
  return sayOf(`budget.${id}`, unknown ? 'untested' : element.stands, {
    need: smallMass(element.need_kg),
    supplied: smallMass(element.supplied_kg),
    short: smallMass(element.short_kg),
    chance: { chance: element.enough },
  });
}

function suppliedWords(supplied: Supplied, holding: Holding): Saying {
  const { from, what, seasonsAgo, nitrogen_kg, allNitrogen_kg, mass_kg } = supplied;
  const locks = nitrogen_kg.p50 < 0;
  const amount = locks ? turned(nitrogen_kg) : nitrogen_kg;
  const places = { nitrogen: smallMass(amount), range: ranged(amount) };
  if (from === 'soil') return say('budget.soil', places);
  if (from === 'before')
    return sayOf('budget.before', locks ? 'locks' : 'gives', { ...places, crop: beforeName(what) });
  const empty = (allNitrogen_kg?.p90 ?? 0) <= 0;
  return sayOf('budget.put', empty ? 'none' : locks ? 'locks' : 'gives', {
    ...places,
    stuff: materialName(holding, what),
    mass: mass(mass_kg ?? 0),
    all: smallMass(allNitrogen_kg ?? 0),
    since: say('budget.since', { seasons: seasonsAgo }),
  });
}

const credits: ReadonlySet<string> = new Set(['alfalfa', 'alfalfa-thin', 'dry-beans']);

function beforeName(what: string): Saying {
  return credits.has(what) ? sayOf('budget.before', what) : sayOf('crop', `${what}.name`);
}

function percents({ low, high }: { readonly low: number; readonly high: number }): { low: number; high: number } {
  return { low: Math.round(100 * low), high: Math.round(100 * high) };
}

function spreadWords({ material, release }: ReleaseOf, holding: Holding): readonly Saying[] {
  const shares = release.bySource.map(({ year1_share }) => year1_share);
  if (shares.length === 0) return [];
  const { low, high } = percents({
    low: Math.min(...shares.map((share) => share.low)),
    high: Math.max(...shares.map((share) => share.high)),
  });
  const key = high < 0 ? 'none' : low === high ? 'same' : low < 0 ? 'locks' : 'some';
  return [sayOf('budget.spread', key, { stuff: materialName(holding, material), sources: shares.length, low, high })];
}

function firstWeeksWords({ material, release }: ReleaseOf, holding: Holding): readonly Saying[] {
  const first = release.first28Days_kg;
  if (first === undefined || first.p50 === 0) return [];
  const locks = first.p50 < 0;
  const kg = locks ? turned(first) : first;
  const places = { stuff: materialName(holding, material), nitrogen: smallMass(kg), range: ranged(kg) };
  return [sayOf('budget.first-weeks', locks ? 'locks' : 'gives', places)];
}

function laterWords({ material, release }: ReleaseOf, holding: Holding): Saying {
  return say('budget.later', {
    stuff: materialName(holding, material),
    second: smallMass(release.year2_kg),
    third: smallMass(release.year3_kg),
  });
}

function cropWords({ crop, nitrogen_kg }: BedBudget['wanted'][number]): Saying {
  return say('budget.crop', {
    crop: sayOf('crop', `${crop}.name`),
    nitrogen: smallMass(nitrogen_kg),
    range: ranged(nitrogen_kg),
  });
}

function sourceWords({ material, release }: ReleaseOf, holding: Holding): readonly Saying[] {
  return release.bySource.map((told) => {
    const { low, high } = percents(told.year1_share);
    const { author, year, title } = sourceOf(told);
    return say(low === high ? 'budget.source.one' : 'budget.source', {
      stuff: materialName(holding, material),
      low,
      high,
      who: [author ?? title, year].filter((part) => part !== null).join(' '),
      place: told.place,
      basis: sayOf('budget.basis', told.basis),
      recalled: told.mark === 'memory' ? 1 : 0,
    });
  });
}

const ONE_M2 = 1;
const KG_PER_G = 1e-3;

function perM2(grams: { readonly p10: number; readonly p50: number; readonly p90: number }): Quantity {
  return { p10: grams.p10 * KG_PER_G, p50: grams.p50 * KG_PER_G, p90: grams.p90 * KG_PER_G };
}

function lockUpWords({ lockUp }: BedBudget): readonly Saying[] {
  if (lockUp === undefined || lockUp.most_gPerM2.p50 <= 0) return [];
  const most = smallMass(perM2(lockUp.most_gPerM2));
  const each = area(ONE_M2);
  if (lockUp.thisSeason_gPerM2.p50 <= 0) return [say('budget.lock-up.none', { most, each })];
  const season = perM2(lockUp.thisSeason_gPerM2);
  return [say('budget.lock-up', { season: smallMass(season), range: ranged(season), most, each })];
}

function saltWords({ salts }: BedBudget): readonly Saying[] {
  const { likely, low, high } = plainPlaces(salts.conductivity_dSPerM, 1);
  const guessed = salts.measured ? [] : [say('budget.salts.guessed')];
  const { crop, threshold_dSPerM, under } = salts;
  if (crop === undefined || threshold_dSPerM === undefined || under === undefined) {
    return [say('budget.salts.plain', { salts: likely, low, high }), ...guessed];
  }
  return [
    say('budget.salts', {
      salts: likely,
      low,
      high,
      crop: sayOf('crop', `${crop}.name`),
      most: threshold_dSPerM,
      chance: { chance: under },
    }),
    ...guessed,
  ];
}

function pHWords({ lime: { stands, pHLow, pHHigh } }: BedBudget): Saying {
  return sayOf('budget.pH', stands, { low: pHLow, high: pHHigh });
}

function limeWords({ lime: { brought_kgPerM2 } }: BedBudget): readonly Saying[] {
  if (brought_kgPerM2.p50 <= 0) return [];
  return [say('budget.lime', { lime: smallMass(brought_kgPerM2), each: area(ONE_M2) })];
}

function untestedWords({ untested }: BedBudget): readonly Saying[] {
  if (untested.length === 0) return [];
  return [say('budget.untested', { what: untested.map((id) => sayOf('budget.untested', id)) })];
}

function coverWords(cover: BedBudget['cover'][number], grade: Grade | undefined): readonly Saying[] {
  if (grade === undefined || cover.mass_kg.p50 === 0) return [];
  const { nitrogen_pctAsIs, phosphate_pctAsIs = 0, potash_pctAsIs = 0 } = grade;
  const places = {
    mass: smallMass(cover.mass_kg),
    range: ranged(cover.mass_kg),
    grade: [nitrogen_pctAsIs, phosphate_pctAsIs, potash_pctAsIs].join(':'),
  };
  const more = phosphate_pctAsIs + potash_pctAsIs > 0;
  return [
    more
      ? say('budget.cover', {
          ...places,
          phosphate: smallMass(cover.phosphate_kg),
          potash: smallMass(cover.potash_kg),
        })
      : say('budget.cover.plain', places),
    ...(cover.nitrogen_pricePerKg === undefined
      ? []
      : [say('budget.cover.price', { price: Number(cover.nitrogen_pricePerKg.toFixed(2)) })]),
  ];
}
