import type { Bed, Holding } from '@loamwright/daybook';
import {
  type Amount,
  allCrops,
  type BuildUpInput,
  likely,
  type SoilCarbonInput,
  type Yearly,
  type YearlyCrop,
} from '@loamwright/science';
import type { Place, Saying, Speaker } from '@loamwright/words';
import { type BedRecords, bedRecords, recordNotes } from './bed-records.ts';
import { added } from './bin-layers.ts';
import { scaled } from './laid.ts';
import { measured } from './measured.ts';
import { materialName, someOf } from './names.ts';
import { area, bulk, depth, mass, say, sayOf } from './saying.ts';

/** What is asked of a bed over the years, as somebody says it or as its records have it. */
export interface YearsTold {
  readonly area_m2?: number | undefined;
  readonly depth_m?: number | undefined;
  readonly texture?: SoilCarbonInput['texture'];
  readonly organicMatter_pctDry?: SoilCarbonInput['organicMatter_pctDry'];
  readonly phosphorusClass?: BuildUpInput['phosphorusClass'];
  readonly potassiumClass?: BuildUpInput['potassiumClass'];
  readonly plan?: readonly Yearly[] | undefined;
  readonly crops?: readonly YearlyCrop[] | undefined;
}

/** What the daybook knows of a bed, as the years ask it. */
export interface YearsRecords {
  readonly told: YearsTold;
  /** Seasons, by the year of their harvest, whose mean the plan is. */
  readonly planOf: readonly number[];
  /** Season whose crops were taken. */
  readonly cropsOf: number | undefined;
  readonly leftOut: BedRecords['leftOut'];
  readonly byTables: BedRecords['byTables'];
  readonly unknown: BedRecords['unknown'];
}

interface When {
  readonly season: number;
  readonly zone: string;
  readonly speaker: Speaker;
  /** Over how many seasons the mean is taken of what went on. */
  readonly seasons: number;
}

/**
 * A bed's own records for the years ahead. What went on is the mean of the last seasons, this one counting once something went on
 * in it, and none before the first that is written down. What grows is this season's, or where nothing is sown yet the last one's.
 */
export function yearsRecords(bed: Bed, holding: Holding, { seasons, ...when }: When): YearsRecords {
  const now = bedRecords(bed, holding, when);
  const last = bedRecords(bed, holding, { ...when, season: when.season - 1 });
  const sown = now.crops.length > 0 ? now : last;
  const cropsOf = sown === now ? when.season : when.season - 1;
  const crops = sown.crops.filter(({ crop }) => isHarvested(crop)).map(({ crop, area_m2 }) => ({ crop, area_m2 }));
  const { plan, ago } = planOf(now.put, seasons);
  const { area_m2, depth_m, texture } = bed.setUp.body;
  const { organicMatter_pctDry, phosphorusClass, potassiumClass } = now.soilTest;
  return {
    told: {
      area_m2: likely(area_m2),
      ...(depth_m !== undefined && { depth_m: likely(depth_m) }),
      ...(texture !== undefined && { texture }),
      ...(organicMatter_pctDry !== undefined && { organicMatter_pctDry }),
      ...(phosphorusClass !== undefined && { phosphorusClass }),
      ...(potassiumClass !== undefined && { potassiumClass }),
      ...(plan.length > 0 && { plan }),
      ...(crops.length > 0 && { crops }),
    },
    planOf: ago.map((back) => when.season - back),
    cropsOf: crops.length > 0 ? cropsOf : undefined,
    leftOut: now.leftOut,
    byTables: now.byTables,
    unknown: sown.unknown,
  };
}

/** A cover crop goes back into the bed: it takes nothing away. */
function isHarvested(id: string): boolean {
  return allCrops.find((crop) => crop.id === id)?.nitrogen_kgPerHa !== undefined;
}

function planOf(
  put: BedRecords['put'],
  seasons: number,
): { readonly plan: readonly Yearly[]; readonly ago: readonly number[] } {
  const back = put.map(({ seasonsAgo = 0 }) => seasonsAgo);
  const first = back.includes(0) ? 0 : 1;
  const last = Math.min(first + seasons - 1, Math.max(...back));
  const plan = put.filter((_, i) => between(back[i] ?? Number.NaN, first, last)).map(yearlyOf(1 / (last - first + 1)));
  if (plan.length === 0) return { plan, ago: [] };
  return { plan: merged(plan), ago: Array.from({ length: last - first + 1 }, (_, i) => last - i) };
}

function between(value: number, low: number, high: number): boolean {
  return value >= low && value <= high;
}

function yearlyOf(times: number): (put: BedRecords['put'][number]) => Yearly {
  return ({ material, like, described, measured: seen, doubtful, amount }) => ({
    material,
    ...(like !== undefined && { like }),
    ...(described !== undefined && { described }),
    ...(seen !== undefined && { measured: seen }),
    ...(doubtful !== undefined && { doubtful }),
    amount: timesAmount(amount, times),
  });
}

/** The daybook keeps masses and volumes. */
function timesAmount(amount: Amount, times: number): Amount {
  if ('mass_kg' in amount) return { ...amount, mass_kg: scaled(amount.mass_kg, times) };
  if ('volume_m3' in amount) return { ...amount, volume_m3: scaled(amount.volume_m3, times) };
  return amount;
}

/** The same stuff in one line, where both amounts are masses or both volumes. */
function merged(plan: readonly Yearly[]): readonly Yearly[] {
  const lines = new Map<string, Yearly>();
  for (const one of plan) {
    const { amount, ...stuff } = one;
    const key = JSON.stringify([stuff, Object.keys(amount)]);
    const before = lines.get(key);
    lines.set(key, before === undefined ? one : { ...one, amount: sumOf(before.amount, amount) });
  }
  return [...lines.values()];
}

function sumOf(a: Amount, b: Amount): Amount {
  if ('mass_kg' in a && 'mass_kg' in b) return { ...a, mass_kg: added(a.mass_kg, b.mass_kg) };
  if ('volume_m3' in a && 'volume_m3' in b) return { ...a, volume_m3: added(a.volume_m3, b.volume_m3) };
  throw new RangeError('only masses and volumes are summed');
}

const parts = ['area', 'depth', 'texture', 'organicMatter', 'phosphorus', 'potassium', 'put', 'crops'] as const;
type Part = (typeof parts)[number];

const fieldOf: Readonly<Record<Part, keyof YearsTold>> = {
  area: 'area_m2',
  depth: 'depth_m',
  texture: 'texture',
  organicMatter: 'organicMatter_pctDry',
  phosphorus: 'phosphorusClass',
  potassium: 'potassiumClass',
  put: 'plan',
  crops: 'crops',
};

/** What is asked, and of each part of it who said so. */
export interface YearsAsked {
  readonly carbon: Omit<SoilCarbonInput, 'area_m2'> & { readonly area_m2?: number | undefined };
  readonly up: Omit<BuildUpInput, 'area_m2'> & { readonly area_m2?: number | undefined };
  readonly from: Readonly<Partial<Record<Part, 'typed' | 'daybook'>>>;
}

/** What was typed, over what the daybook knows. */
export function yearsAsked(typed: YearsTold, records: YearsTold): YearsAsked {
  const known: YearsTold = { ...records, ...onlySaid(typed) };
  const { phosphorusClass, potassiumClass, crops = [], plan = [], area_m2, ...soil } = known;
  const { depth_m, texture, organicMatter_pctDry } = soil;
  const shared = { plan, ...(area_m2 !== undefined && { area_m2 }) };
  return {
    carbon: { ...shared, ...onlySaid({ depth_m, texture, organicMatter_pctDry }) },
    up: { ...shared, crops, ...onlySaid({ phosphorusClass, potassiumClass }) },
    from: Object.fromEntries(
      parts
        .filter((part) => known[fieldOf[part]] !== undefined)
        .map((part) => [part, typed[fieldOf[part]] === undefined ? 'daybook' : 'typed']),
    ),
  };
}

function onlySaid<Fields extends object>(fields: Fields): Fields {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Fields;
}

/** What was taken from where, in sentences. */
export function yearsFrom(
  asked: YearsAsked,
  { planOf: seasons, cropsOf, ...records }: Omit<YearsRecords, 'told'>,
  { holding, speaker }: { readonly holding: Holding; readonly speaker: Speaker },
): readonly Saying[] {
  const told = { ...asked.carbon, ...asked.up };
  const words: Readonly<Record<Part, () => Saying>> = {
    area: () => say('years.part.area', { area: area(told.area_m2 ?? Number.NaN) }),
    depth: () => say('years.part.depth', { depth: depth(told.depth_m ?? Number.NaN) }),
    texture: () => say('years.part.texture', { texture: sayOf('soil.texture', told.texture ?? '') }),
    organicMatter: () =>
      say('years.part.organicMatter', { pct: speaker.figure(likely(told.organicMatter_pctDry ?? Number.NaN)) }),
    phosphorus: () => say('years.part.phosphorus', { class: sayOf('soil.class', told.phosphorusClass ?? '') }),
    potassium: () => say('years.part.potassium', { class: sayOf('soil.class', told.potassiumClass ?? '') }),
    put: () => putWords(),
    crops: () => cropWords(),
  };
  const by = (from: 'typed' | 'daybook'): readonly Saying[] => {
    const those = parts.filter((part) => asked.from[part] === from).map((part) => words[part]());
    return those.length === 0 ? [] : [sayOf('years.from', from, { parts: those })];
  };
  return [
    ...by('daybook'),
    ...by('typed'),
    ...(told.plan.length === 0 ? [say('years.no-put')] : []),
    ...recordNotes(records),
  ];

  function putWords(): Saying {
    const stuff = told.plan.map((one) => yearlyWords(one, holding));
    if (asked.from.put === 'typed') return say('years.part.put', { stuff });
    const named = seasons.map((season) => say('advisor.named', { name: String(season) }));
    return say(named.length > 1 ? 'years.part.put.mean' : 'years.part.put.of', { stuff, seasons: named });
  }

  function cropWords(): Saying {
    const crops = told.crops.map(({ crop }) => say('beds.crop', { crop: speaker.sayIf(`crop.${crop}.name`, crop) }));
    if (asked.from.crops === 'typed') return say('years.part.crops', { crops });
    return say('years.part.crops.of', { crops, season: String(cropsOf ?? '') });
  }
}

/** "2 barrows of compost", "40 kg of goat bedding". */
export function yearlyWords({ material, amount }: Yearly, holding: Holding): Saying {
  const told = amountWords(amount);
  return told === undefined ? materialName(holding, material) : someOf(holding, material, told);
}

/** Words for an amount that has a figure; none for one that was told in words. */
function amountWords(amount: Amount): Place | undefined {
  if ('mass_kg' in amount) return mass(amount.mass_kg);
  if ('volume_m3' in amount) return bulk(amount.volume_m3);
  if ('vague' in amount || typeof amount.count === 'string') return undefined;
  return measured(amount.measure, likely(amount.count));
}
