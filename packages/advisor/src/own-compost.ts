import type { Heap, Holding, Layer } from '@loamwright/daybook';
import {
  createDraws,
  isEstimate,
  knownMaterial,
  materialRules,
  type OwnQuantities,
  type PutOn,
  type Quantity,
  yieldEstimate,
} from '@loamwright/science';
import { added } from './bin-layers.ts';
import { stuffed } from './own-stuff.ts';

/** Worked out once for each record of layers: the same layers never come to anything else. */
const known = new WeakMap<readonly Layer[], OwnQuantities | null>();
/** Fewer than the page's own draws: these figures go into its draws as p10, p50 and p90. */
const draws = createDraws(64);

/**
 * What the compost of a heap is, from what went into the heap: its moisture and weight, and nitrogen, phosphorus, potassium and carbon of
 * its dry matter. Undefined where nothing is known of that, or not of all of it.
 */
function ownCompost(layers: readonly Layer[], holding: Holding): OwnQuantities | undefined {
  const before = known.get(layers);
  if (before !== undefined) return before ?? undefined;
  const found = reckoned(layers, holding);
  known.set(layers, found ?? null);
  return found;
}

/**
 * The stuff of a heap as it goes on a bed. Ripe compost is what went into it; unripe stuff lies somewhere on the way there: it weighs as
 * the heap's own page has it, and holds what the tables have of such stuff.
 */
export function heapStuff(
  heap: Heap,
  layers: readonly Layer[],
  holding: Holding,
): Pick<PutOn, 'material' | 'described'> {
  const material = compostOf(heap);
  const own = ownCompost(layers, holding);
  if (own === undefined) return { material };
  if (material === 'finished-compost') return { material, described: own };
  const { moisture_pctWet, densityLoose_kgPerM3AsIs } = own;
  return {
    material,
    described: {
      ...(moisture_pctWet !== undefined && { moisture_pctWet }),
      ...(densityLoose_kgPerM3AsIs !== undefined && { densityLoose_kgPerM3AsIs }),
    },
  };
}

/** A heap counts as ripe compost once it was called ready. */
export function compostOf({ acts }: Heap): 'finished-compost' | 'unfinished-compost' {
  return acts.some(({ kind }) => kind === 'finished') ? 'finished-compost' : 'unfinished-compost';
}

/** What went in of one material as one: one hand guessed it. */
function reckoned(layers: readonly Layer[], holding: Holding): OwnQuantities | undefined {
  const masses = new Map<string, Quantity>();
  for (const { put, share } of layers) {
    const before = masses.get(put.material);
    const mass_kg = times(put.mass_kg, share);
    masses.set(put.material, before === undefined ? mass_kg : added(before, mass_kg));
  }
  const ingredients = [...masses].map(([material, mass_kg]) => ({
    ...stuffed(material, [], holding),
    amount: { mass_kg },
  }));
  const isAllKnown = ingredients.every(({ material, like }) => knownMaterial(like ?? material) !== undefined);
  if (ingredients.length === 0 || !isAllKnown || ingredients.length > MOST_LINES) return undefined;
  const found = yieldEstimate.run({ ingredients }, { draws });
  if (!found.ok) return undefined;
  const { nitrogen_pctDry, phosphorus_pctDry, potassium_pctDry, carbonToNitrogen_ratio } = found.value;
  const { moisture_pctWet, wet_kg, volume_m3 } = found.value;
  return {
    moisture_pctWet,
    // Mass and volume go up and down together: their likely ratio, not the ratio of their ends.
    densityLoose_kgPerM3AsIs: wet_kg.p50 / volume_m3.p50,
    nitrogen_pctDry,
    phosphorus_pctDry,
    potassium_pctDry,
    ...(carbonToNitrogen_ratio !== undefined && {
      // Its C:N follows from nitrogen and carbon; the carbon is told as what burns off, which the tables hold.
      volatileSolids_pctDry: Math.min(
        MOST_BURNS_PCT,
        nitrogen_pctDry.p50 *
          carbonToNitrogen_ratio.p50 *
          materialRules.carbonFromVolatileSolids.volatileSolidsPerCarbon_ratio,
      ),
    }),
  };
}

/** Some ash is in everything that grew. */
const MOST_BURNS_PCT = 97;

/** As many as `yield-estimate` takes. */
const MOST_LINES = 40;

function times(quantity: Quantity, by: number): Quantity {
  if (!isEstimate(quantity)) return quantity * by;
  return { p10: quantity.p10 * by, p50: quantity.p50 * by, p90: quantity.p90 * by };
}
