import type { Citation } from '../catalogue/index.ts';
import { blendParameters, cited } from './parameters.ts';

const { bed, maturity, ...table } = blendParameters;

const compost: readonly Citation[] = [
  ...table.conductivityMethods.map(cited),
  ...table.madeOf.map((row) => cited(row.conductivity_dSPerM)),
  ...table.parts.map((row) => cited(row.waterHeld_pctVolume)),
  ...table.parts.map((row) => cited(row.conductivity_dSPerM)),
];

/** What the two calculations rest on, besides the sources of the materials. */
export const blendSources: { readonly potting: readonly Citation[]; readonly bed: readonly Citation[] } = {
  potting: [
    ...table.recipes.map(cited),
    cited(table.mostCompost_pctVolume),
    ...table.uses.map((row) => cited(row.mostConductivity_dSPerM)),
    ...compost,
    ...[maturity.selfHeating_K, maturity.emergence_pctOfControl, maturity.age_months, maturity.smell].map(cited),
    { source: 'minnesota-compost-spec', place: 'emergence and vigour at least 80 % of the control', mark: 'seen' },
    cited(table.mixedVolume_share),
    cited(table.mixedVolume_share.rests),
    cited(table.poreSpace),
    cited(table.leastAir_pctVolume),
    ...table.pHWanted.map(cited),
    cited(table.leaching_volumes),
    { source: 'rhs-home-compost-trial', place: 'home compost as a potting soil', mark: 'memory' },
  ],
  bed: [
    cited(bed.compost_pctVolume),
    cited(bed.usualCompost_pctVolume),
    cited(bed.settled_share),
    cited(bed.firstYearLoss_pctVolume.organic),
    cited(bed.firstYearLoss_pctVolume.wood),
    cited(bed.leastOverWood_m),
    cited(bed.sensitiveConductivity_dSPerM),
    cited(bed.hardyConductivity_dSPerM),
    cited(bed.phosphorusRemoval_kgPerM2PerYear),
    cited(bed.deckDesignLoad_kgPerM2),
    { source: 'cornell-market-label', place: 'cubic yards = square feet × inches × 0.0031', mark: 'seen' },
    {
      source: 'osu-nelson-urban-gardens',
      place: '27 gardens: 13 % organic matter where 3 to 5 would do',
      mark: 'seen',
    },
    { source: 'sssa-rooftop-crops', place: '80 to 150 lb/ft2', mark: 'seen' },
    ...compost,
    cited(table.poreSpace),
  ],
};
