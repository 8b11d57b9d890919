import type { Citation, Cites } from '../catalogue/index.ts';
import { type CautionId, inOrder } from '../caution/index.ts';
import { yieldParameters } from '../curing/yield-parameters.ts';
import { allMaterials, doubtfulInputs } from '../material/index.ts';
import { bandTable } from './bands.ts';
import { mixParameters } from './parameters.ts';

const formulas: readonly Citation[] = [
  { source: 'cornell-moisture', place: 'moisture of a mix, and of two ingredients', mark: 'seen' },
  { source: 'bc-1998-composting-handbook', place: 'Appendix A: C:N weighted by nitrogen', mark: 'seen' },
  { source: 'cornell-carbon', place: 'carbon = volatile solids / 1.8', mark: 'seen' },
  { source: 'cornell-inadequate-porosity', place: 'solids and water do not compress', mark: 'seen' },
  {
    source: 'ahn-2008',
    place: 'abstract: air space falls with depth and wetness; 38 to 99 % in straw, leaves, shavings, sawdust',
    mark: 'seen',
  },
  { source: 'eleazer-1997', place: 'abstract: lignin told little of what rots', mark: 'seen' },
];

/** What the balance of a mix rests on, besides the materials' own sources. */
export const mixSources: readonly Cites[] = [
  ...formulas,
  mixParameters.organicDensity_kgPerM3,
  mixParameters.packing_share,
  mixParameters.heatPerCarbon_MJPerKg,
  mixParameters.availableRatio,
  mixParameters.finalRatio,
  yieldParameters.readyDensity_kgPerM3AsIs,
  yieldParameters.readyMoisture_pctWet,
  mixParameters.potassiumSalts_SCm2PerMol,
  mixParameters.usualSalt_dSPerM,
  mixParameters.degradable,
  ...mixParameters.pH,
  ...mixParameters.starters.flatMap(({ sources }) => sources),
  ...bandTable.bands,
];

/** Every caution that an ingredient can bring. */
export const mixCautionIds: readonly CautionId[] = inOrder([
  ...allMaterials.flatMap(({ cautions }) => cautions),
  ...doubtfulInputs.flatMap(({ cautions }) => cautions),
]);
