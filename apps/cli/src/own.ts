import type { Holding, MaterialFigures } from '@loamwright/daybook';
import { isEstimate, type OwnQuantities, type Quantity, type Stuffed } from '@loamwright/science';

/** A material as the science takes it: of the tables, or the holding's own with what it is like, and what was measured. */
export function stuffed(material: string, doubtful: readonly string[], holding: Holding): Stuffed {
  const own = holding.materials.get(material);
  const described = own?.described?.body;
  const measured = own && Object.assign({}, ...own.measured.map(({ body }) => body));
  return {
    material,
    ...(described?.like !== undefined && { like: described.like }),
    ...(described !== undefined && { described: quantitiesOf(described) }),
    ...(measured !== undefined && { measured: quantitiesOf(measured) }),
    ...(doubtful.length > 0 && { doubtful }),
  };
}

/** The daybook's figures under the names of the science; ash is what is left of dry matter beside volatile solids. */
function quantitiesOf(figures: MaterialFigures): OwnQuantities {
  const {
    nitrogen_pctDry,
    carbonToNitrogen,
    moisture_pctWet,
    density_kgPerM3AsIs,
    ash_pctDry,
    phosphorus_pctDry,
    potassium_pctDry,
  } = figures;
  const all: OwnQuantities = {
    ...(nitrogen_pctDry !== undefined && { nitrogen_pctDry }),
    ...(carbonToNitrogen !== undefined && { carbonToNitrogen_ratio: carbonToNitrogen }),
    ...(moisture_pctWet !== undefined && { moisture_pctWet }),
    ...(density_kgPerM3AsIs !== undefined && { densityLoose_kgPerM3AsIs: density_kgPerM3AsIs }),
    ...(ash_pctDry !== undefined && { volatileSolids_pctDry: without(ash_pctDry) }),
    ...(phosphorus_pctDry !== undefined && { phosphorus_pctDry }),
    ...(potassium_pctDry !== undefined && { potassium_pctDry }),
  };
  return all;
}

function without(ash_pctDry: Quantity): Quantity {
  if (!isEstimate(ash_pctDry)) return 100 - ash_pctDry;
  const { p10, p50, p90 } = ash_pctDry;
  return { p10: 100 - p90, p50: 100 - p50, p90: 100 - p10 };
}
