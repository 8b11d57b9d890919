import { believedOf, stuffed } from '@loamwright/advisor';
import type { Entered, Holding, LayerPut } from '@loamwright/daybook';
import {
  type Amount,
  bad,
  type CardLine,
  countInMeasure,
  createDraws,
  type Draws,
  type Estimate,
  type FillId,
  fillTimes,
  good,
  isEstimate,
  likely,
  materialById,
  type Outcome,
  type Quantity,
  type Sized,
  sizeAmount,
  summarise,
  vagueCount,
} from '@loamwright/science';
import type { IngredientRead } from './grammar/ingredient.ts';
import type { Session } from './session.ts';

/** Stuff that heat must make safe. */
const riskyCautions: ReadonlySet<string> = new Set(['manure-pathogens', 'rats-flies', 'diseased-plants']);

/** A material and an amount of it. */
export interface Some {
  readonly material: string;
  readonly amount: Amount;
}

/** An amount of a material, weighed. */
export interface Weighed {
  readonly mass_kg: Quantity;
  readonly volume_m3: Quantity;
}

/**
 * Weighs an amount with its spread, by what is published, said and measured of the material.
 * Problems: `weigh-it` for an own material that is like none, and those of sizing.
 */
export function weighed(some: Some, holding: Holding, session: Session): Outcome<Weighed> {
  const sized = sizedOf(some, holding, session, createDraws());
  if (!sized.ok) return sized;
  return good({
    mass_kg: quantityOf(summarise(sized.value.mass_kg)),
    volume_m3: quantityOf(summarise(sized.value.volume_m3)),
  });
}

function sizedOf({ material, amount }: Some, holding: Holding, session: Session, draws: Draws): Outcome<Sized> {
  const known = believedOf(material, holding);
  if (known === undefined) return bad({ code: 'weigh-it', path: material, found: material, wanted: '' });
  return sizeAmount(amount, {
    draws,
    material: known,
    name: material,
    ownSizes: session.settings.measures_L,
    path: material,
  });
}

/** Nobody lays less than a quarter of a measure by count. */
const LEAST_COUNT = 0.25;

/**
 * An amount as a line of a build card, which counts in measures: what was weighed or guessed is told in the person's
 * usual bucket, to the nearest quarter.
 */
export function cardLine(
  { material, doubtful, amount }: IngredientRead,
  holding: Holding,
  session: Session,
): Outcome<CardLine> {
  const stuff = stuffed(material, doubtful, holding);
  const { packed } = amount;
  if ('measure' in amount) {
    const { measure, fill } = amount;
    const count = likely(typeof amount.count === 'string' ? vagueCount[amount.count] : amount.count);
    return good({ ...stuff, measure, packed, ...told(count, fill) });
  }
  const draws = createDraws();
  const sized = sizedOf({ material, amount }, holding, session, draws);
  if (!sized.ok) return sized;
  const measure = session.speaker.system === 'us' ? 'bucket-5gal' : 'bucket-20l';
  const counts = countInMeasure(sized.value.volume_m3, measure, {
    draws,
    ownSizes: session.settings.measures_L,
    path: material,
  });
  if (!counts.ok) return counts;
  const count = Math.max(LEAST_COUNT, Math.round(summarise(counts.value).p50 / LEAST_COUNT) * LEAST_COUNT);
  return good({ ...stuff, measure, count, packed });
}

const partFills: readonly FillId[] = ['three-quarters', 'half', 'quarter'];

/** Measures that are only partly filled are told as parts of full ones: three half barrows as one and a half. */
function told(count: number, fill: FillId | undefined): Pick<CardLine, 'count' | 'fill'> {
  if (fill === undefined || !partFills.includes(fill)) return { count, fill };
  return { count: count * likely(fillTimes[fill]) };
}

/**
 * So many measures, as told, of what was given: what was filled by eye keeps the spread of that.
 *
 * @param count full measures
 */
export function laid(given: Amount, measure: string, count: number): Amount {
  const { packed } = given;
  const fill = 'measure' in given && given.measure === measure ? given.fill : undefined;
  if (fill === undefined || !partFills.includes(fill)) return { measure, count, fill, packed };
  const times = fillTimes[fill];
  return { measure, count: scaled(times, count / likely(times)), packed };
}

/** So many times a quantity. */
export function scaled(quantity: Quantity, times: number): Quantity {
  if (!isEstimate(quantity)) return quantity * times;
  return { p10: quantity.p10 * times, p50: quantity.p50 * times, p90: quantity.p90 * times };
}

/** What has no spread is a plain number. */
function quantityOf(estimate: Estimate): Quantity {
  return estimate.p10 === estimate.p90 ? estimate.p50 : estimate;
}

/** Whether a material counts as raw: manure, scraps, what may be sick. An unknown one does. */
export function isRaw(material: string, holding: Holding): boolean {
  const own = holding.materials.get(material)?.described?.body;
  if (own?.raw !== undefined) return own.raw;
  return materialById(own?.like ?? material)?.cautions.some((id) => riskyCautions.has(id)) ?? true;
}

/** Layers as an entry holds them, and the amounts as they were given. */
export interface LayersPut {
  readonly layers: readonly LayerPut[];
  readonly entered: Readonly<Record<string, Entered>>;
}

/** Ingredients as the layers of an entry, in the order they were named. */
export function layersOf(
  ingredients: readonly IngredientRead[],
  holding: Holding,
  session: Session,
  fromStock: boolean,
): Outcome<LayersPut> {
  const all = ingredients.map((ingredient) => weighed(ingredient, holding, session));
  const problems = all.flatMap((one) => (one.ok ? [] : one.problems));
  if (problems.length > 0) return bad(...problems);
  const layers = ingredients.flatMap((ingredient, i): readonly LayerPut[] => {
    const one = all[i];
    if (one === undefined || !one.ok) return [];
    const { material, doubtful } = ingredient;
    const raw = doubtful.length > 0 || isRaw(material, holding);
    return [{ material, ...one.value, raw, ...(fromStock && { from: { type: 'stock' as const } }) }];
  });
  const entered = Object.fromEntries(ingredients.map((ingredient, i) => [`/layers/${i}/mass_kg`, ingredient.entered]));
  return good({ layers, entered });
}
