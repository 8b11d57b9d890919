import type { Citation } from '../catalogue/index.ts';
import { type CautionId, inOrder } from '../caution/index.ts';
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

function cited({ source, place, mark }: Citation): Citation {
  return { source, place, mark };
}

/** What the balance of a mix rests on, besides the materials' own sources. */
export const mixSources: readonly Citation[] = [
  ...formulas,
  cited(mixParameters.organicDensity_kgPerM3),
  cited(mixParameters.packing_share),
  cited(mixParameters.heatPerCarbon_MJPerKg),
  cited(mixParameters.availableRatio),
  cited(mixParameters.finalRatio),
  cited(mixParameters.volumeLost_pctVolume),
  cited(mixParameters.potassiumSalts_SCm2PerMol),
  cited(mixParameters.usualSalt_dSPerM),
  cited(mixParameters.degradable),
  ...mixParameters.pH.map(cited),
  ...mixParameters.starters.flatMap(({ sources }) => sources.map(cited)),
  ...bandTable.bands.map(cited),
];

/** Every caution that an ingredient can bring. */
export const mixCautionIds: readonly CautionId[] = inOrder([
  ...allMaterials.flatMap(({ cautions }) => cautions),
  ...doubtfulInputs.flatMap(({ cautions }) => cautions),
]);
