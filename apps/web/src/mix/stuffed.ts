import type { Holding, MaterialFigures } from '@loamwright/daybook';
import { isEstimate, materialById, type OwnQuantities, type Quantity, type Stuffed } from '@loamwright/science';

/** A material as the holding knows it: with its own description, and with what was last measured on it. */
export function stuffed(holding: Holding, material: string): Stuffed {
  const own = holding.materials.get(material);
  if (own === undefined) return { material };
  const like = materialById(material) === undefined ? own.described?.body.like : undefined;
  const described = own.described === null ? {} : quantities(own.described.body);
  const measured = quantities(own.measured.at(-1)?.body ?? {});
  return {
    material,
    ...(like === undefined ? {} : { like }),
    ...(Object.keys(described).length > 0 ? { described } : {}),
    ...(Object.keys(measured).length > 0 ? { measured } : {}),
  };
}

/** The daybook’s figures under the names of the science. What is not ash is volatile. */
function quantities(figures: MaterialFigures): OwnQuantities {
  const { nitrogen_pctDry, carbonToNitrogen, moisture_pctWet, density_kgPerM3AsIs, ash_pctDry } = figures;
  const { phosphorus_pctDry, potassium_pctDry } = figures;
  const found = {
    nitrogen_pctDry,
    carbonToNitrogen_ratio: carbonToNitrogen,
    moisture_pctWet,
    densityLoose_kgPerM3AsIs: density_kgPerM3AsIs,
    volatileSolids_pctDry: ash_pctDry === undefined ? undefined : restOfHundred(ash_pctDry),
    phosphorus_pctDry,
    potassium_pctDry,
  };
  return Object.fromEntries(Object.entries(found).filter(([, quantity]) => quantity !== undefined));
}

function restOfHundred(quantity: Quantity): Quantity {
  if (!isEstimate(quantity)) return 100 - quantity;
  return { p10: 100 - quantity.p90, p50: 100 - quantity.p50, p90: 100 - quantity.p10 };
}
