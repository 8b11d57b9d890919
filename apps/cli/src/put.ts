import { layerPut, partFills, sized, stuffed, type Weighing } from '@loamwright/advisor';
import type { Entered, Holding, LayerPut } from '@loamwright/daybook';
import {
  bad,
  type CardLine,
  countInMeasure,
  createDraws,
  type FillId,
  fillTimes,
  good,
  likely,
  type Outcome,
  summarise,
  vagueCount,
} from '@loamwright/science';
import type { IngredientRead } from './grammar/ingredient.ts';
import type { Session } from './session.ts';

/** What weighing wants to know, as this session has it. */
export function weighingOf(holding: Holding, session: Session): Weighing {
  return { holding, ownSizes: session.settings.measures_L, draws: createDraws() };
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
  const weighing = weighingOf(holding, session);
  const all = sized({ material, amount }, weighing);
  if (!all.ok) return all;
  const measure = session.speaker.system === 'us' ? 'bucket-5gal' : 'bucket-20l';
  const counts = countInMeasure(all.value.volume_m3, measure, { ...weighing, path: material });
  if (!counts.ok) return counts;
  const count = Math.max(LEAST_COUNT, Math.round(summarise(counts.value).p50 / LEAST_COUNT) * LEAST_COUNT);
  return good({ ...stuff, measure, count, packed });
}

/** Measures that are only partly filled are told as parts of full ones: three half barrows as one and a half. */
function told(count: number, fill: FillId | undefined): Pick<CardLine, 'count' | 'fill'> {
  if (fill === undefined || !partFills.includes(fill)) return { count, fill };
  return { count: count * likely(fillTimes[fill]) };
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
  const weighing = weighingOf(holding, session);
  const all = ingredients.map((ingredient) => layerPut(ingredient, fromStock, weighing));
  const problems = all.flatMap((one) => (one.ok ? [] : one.problems));
  if (problems.length > 0) return bad(...problems);
  const layers = all.flatMap((one) => (one.ok ? [one.value] : []));
  const entered = Object.fromEntries(ingredients.map((ingredient, i) => [`/layers/${i}/mass_kg`, ingredient.entered]));
  return good({ layers, entered });
}
