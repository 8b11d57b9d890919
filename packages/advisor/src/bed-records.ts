import { type Bed, type Holding, localDate, type SoilTested, type Spreading } from '@loamwright/daybook';
import {
  allCrops,
  type BedBudgetInput,
  type ClassId,
  createDraws,
  likely,
  type PutOn,
  type Quantity,
  type SoilFigure,
  type SoilTest,
  soilMethods,
  soilTestRead,
} from '@loamwright/science';
import type { Saying, Speaker } from '@loamwright/words';
import { groundOf } from './bed-ground.ts';
import { cropNamed } from './crop-names.ts';
import { heapName, materialName } from './names.ts';
import { heapStuff } from './own-compost.ts';
import { stuffed } from './own-stuff.ts';
import { say } from './saying.ts';

/** From September on, what goes on a bed serves the crops of the next year. */
const FIRST_MONTH_OF_NEXT = 9;

/** The season, told by the year of its harvest, that an instant in the garden's zone belongs to. */
export function seasonOf(instant: string, zone: string): number {
  const day = localDate(instant, zone) ?? instant;
  const [year = Number.NaN, month = Number.NaN] = day.split('-').map(Number);
  return month >= FIRST_MONTH_OF_NEXT ? year + 1 : year;
}

/** What the daybook knows of a bed, as the budget asks it. */
export interface BedRecords {
  readonly area_m2: BedBudgetInput['area_m2'];
  readonly crops: BedBudgetInput['crops'];
  readonly put: readonly PutOn[];
  readonly soilTest: SoilTest;
  /** Spread, but nobody said how much. */
  readonly leftOut: readonly Saying[];
  /** Heaps that count as the tables have such stuff, because not all that went in is known. */
  readonly byTables: readonly Saying[];
  /** Sown this season, but not in the tables. */
  readonly unknown: readonly string[];
  /** How its ground is shared among the crops that name no part of it, and where they fill more than there is. */
  readonly ground: readonly Saying[];
}

/** A bed's own records for the season of a year. Crops that the tables lack stand apart. */
export function bedRecords(
  bed: Bed,
  holding: Holding,
  { season, zone, speaker }: { readonly season: number; readonly zone: string; readonly speaker: Speaker },
): BedRecords {
  const seasonAt = (at: string): number => seasonOf(at, zone);
  const { area_m2 } = bed.setUp.body;
  const sown = bed.sown
    .map(({ entry, body }) => ({ at: entry.happened, body, found: cropNamed(body.crop, speaker) }))
    .filter(({ at, body, found }) => {
      const since = seasonAt(at);
      if (since >= season) return since === season;
      const isOver = lastHarvest(bed, { crop: body.crop, since: at }, speaker) !== undefined;
      return 'id' in found && isPerennial(found.id) && !isOver;
    });
  const dayOf = (at: string): string => localDate(at, zone) ?? at;
  const ground = groundOf(
    sown.map(({ at, body, found }) => {
      const over = lastHarvest(bed, { crop: body.crop, since: at }, speaker);
      return {
        name: 'id' in found ? speaker.sayIf(`crop.${found.id}.name`, found.id) : body.crop,
        from: dayOf(at),
        ...(over !== undefined && { until: dayOf(over) }),
        ...(body.area_m2 !== undefined && { area_m2: body.area_m2 }),
      };
    }),
    area_m2,
  );
  const crops = sown.flatMap(({ found }, i) => {
    const own_m2 = ground.areas_m2[i];
    return 'id' in found && own_m2 !== undefined ? [{ crop: found.id, area_m2: own_m2 }] : [];
  });
  const past = bed.spreadings.filter(({ told }) => seasonAt(told.entry.happened) <= season);
  const read = past.map((one) => ({ one, put: putOf(one, season - seasonAt(one.told.entry.happened), holding) }));
  return {
    area_m2,
    crops,
    put: read.flatMap(({ put }) => put ?? []),
    unknown: sown.flatMap(({ body, found }) => ('id' in found ? [] : [body.crop])),
    soilTest: testOf(bed),
    ground: ground.said,
    leftOut: read.flatMap(({ one, put }) => (put === undefined ? [spreadName(one, holding)] : [])),
    byTables: [
      ...new Set(
        read.flatMap(({ one, put }) => {
          const { of } = one.told.body;
          return of.type === 'heap' && put !== undefined && put.described === undefined ? [of.id] : [];
        }),
      ),
    ].map((id) => heapName(holding, id)),
  };
}

/** What of a bed's records could not be counted, or not by its own figures. */
export function recordNotes({
  leftOut,
  byTables,
  unknown,
}: Pick<BedRecords, 'leftOut' | 'byTables' | 'unknown'>): readonly Saying[] {
  return [
    ...(leftOut.length === 0 ? [] : [say('budget.left-out', { stuff: leftOut })]),
    ...(byTables.length === 0 ? [] : [say('budget.by-tables', { heaps: byTables })]),
    ...(unknown.length === 0 ? [] : [say('budget.unknown-crops', { crops: unknown.join(', ') })]),
  ];
}

const perennials: readonly string[] = ['perennial-vegetable', 'small-fruit', 'tree-fruit'];

/** Asparagus, strawberries, apples: planted once, they want something every year. */
function isPerennial(id: string): boolean {
  return perennials.includes(allCrops.find((crop) => crop.id === id)?.group ?? '');
}

/** When the last of a crop was taken since it was planted; undefined while it stands. */
function lastHarvest(
  { harvested }: Bed,
  { crop, since }: { readonly crop: string; readonly since: string },
  speaker: Speaker,
): string | undefined {
  const idOf = (name: string): string => {
    const found = cropNamed(name, speaker);
    return 'id' in found ? found.id : name;
  };
  return harvested.find(
    ({ entry, body }) => body.last === true && entry.happened >= since && idOf(body.crop) === idOf(crop),
  )?.entry.happened;
}

function putOf(spreading: Spreading, seasonsAgo: number, holding: Holding): PutOn | undefined {
  const { of, mass_kg, volume_m3, workedIn } = spreading.told.body;
  const laid = { seasonsAgo, placed: workedIn ? ('dug-in' as const) : ('mulched' as const) };
  if (of.type === 'material') {
    return { ...stuffed(of.id, [], holding), amount: { mass_kg: of.mass_kg }, ...laid };
  }
  const heap = holding.heaps.get(of.id);
  const stuff = heap === undefined ? { material: 'unfinished-compost' } : heapStuff(heap, spreading.layers, holding);
  const compost = { ...stuff, ...laid };
  if (mass_kg !== undefined) return { ...compost, amount: { mass_kg } };
  return volume_m3 === undefined ? undefined : { ...compost, amount: { volume_m3 } };
}

function spreadName({ told }: Spreading, holding: Holding): Saying {
  const { of } = told.body;
  return of.type === 'heap' ? heapName(holding, of.id) : materialName(holding, of.id);
}

/**
 * The newest figure of each kind. Salts count only by the saturated extract, the one that limits are told in; phosphorus and
 * potassium by the tables of their own method, or not at all.
 */
function testOf({ tests }: Pick<Bed, 'tests'>): SoilTest {
  const bodies = tests.map(({ body }) => body).toReversed();
  const pH = bodies.find((body) => body.pH !== undefined)?.pH;
  const organic = bodies.find((body) => body.organicMatter_pctDry !== undefined)?.organicMatter_pctDry;
  const salts = bodies.find(
    (body) => body.conductivity_dSPerM !== undefined && /saturat/iu.test(body.method ?? ''),
  )?.conductivity_dSPerM;
  const figures = bodies.flatMap(figuresOf);
  const phosphorusClass = classOf('phosphorus', figures);
  const potassiumClass = classOf('potassium', figures);
  return {
    ...(phosphorusClass !== undefined && { phosphorusClass }),
    ...(potassiumClass !== undefined && { potassiumClass }),
    ...(pH !== undefined && { pH: likely(pH) }),
    ...(organic !== undefined && { organicMatter_pctDry: organic }),
    ...(salts !== undefined && { conductivity_dSPerM: salts }),
  };
}

/** Phosphorus and potassium of a test; older entries have them in mg/kg with the method in words. */
function figuresOf(body: SoilTested): readonly SoilFigure[] {
  if (body.figures !== undefined) return body.figures;
  const words = (body.method ?? '').toLowerCase().replaceAll(' ', '-');
  const method = soilMethods.find((one) => words.includes(one));
  const figure = (element: SoilFigure['element'], quantity: Quantity | undefined): readonly SoilFigure[] =>
    quantity === undefined || method === undefined ? [] : [{ element, value: likely(quantity), unit: 'mg/kg', method }];
  return [...figure('phosphorus', body.phosphorus_mgPerKg), ...figure('potassium', body.potassium_mgPerKg)];
}

/** The class of the first figure that can be judged: the newest stands first. */
function classOf(element: SoilFigure['element'], figures: readonly SoilFigure[]): ClassId | undefined {
  const own = figures.filter((one) => one.element === element);
  const read = own.length === 0 ? undefined : soilTestRead.run({ figures: own }, { draws: createDraws(1) });
  return read?.ok === true ? read.value.figures.find(({ taken }) => taken !== undefined)?.taken : undefined;
}
