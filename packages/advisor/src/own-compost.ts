import type { Holding, Layer, Spreading } from '@loamwright/daybook';
import {
  createDraws,
  isEstimate,
  knownMaterial,
  materialRules,
  type OwnQuantities,
  type Quantity,
  yieldEstimate,
} from '@loamwright/science';
import { stuffed } from './own-stuff.ts';

/** Worked out once for each spreading: the same entry never comes to anything else. */
const known = new WeakMap<Spreading, OwnQuantities | null>();
/** Fewer than the page's own draws: these figures go into its draws as p10, p50 and p90. */
const draws = createDraws(64);

/**
 * What the compost of a heap was when it was spread, from what went into the heap: its moisture and weight, and nitrogen, phosphorus,
 * potassium and carbon of its dry matter. Undefined where nothing is known of that, or where it can't be reckoned.
 */
export function ownCompost(spreading: Spreading, holding: Holding): OwnQuantities | undefined {
  const before = known.get(spreading);
  if (before !== undefined) return before ?? undefined;
  const found = reckoned(spreading.layers, holding);
  known.set(spreading, found ?? null);
  return found;
}

function reckoned(layers: readonly Layer[], holding: Holding): OwnQuantities | undefined {
  const ingredients = layers.flatMap(({ put, share }, i) => {
    const stuff = stuffed(put.material, [], holding);
    if (knownMaterial(stuff.like ?? put.material) === undefined) return [];
    return [{ ...stuff, amount: { mass_kg: times(put.mass_kg, share) }, line: `${put.material}-${i}` }];
  });
  if (ingredients.length === 0 || ingredients.length < layers.length || ingredients.length > MOST_LINES)
    return undefined;
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
