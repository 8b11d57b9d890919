/** What goes into a heap: what it costs to miss a band, what to do about water and nitrogen. */
export const mixEn = {
  'mix.quantity.carbonToNitrogen_ratio': 'C:N',
  'mix.quantity.moisture_pctWet': 'moisture',
  'mix.quantity.freeAirSpace_pctVolume': 'air space',
  'mix.quantity.density_kgPerM3AsIs': 'weight of a cubic metre',
  'mix.band.reasonable': 'still reasonable',
  'mix.band.preferred': 'preferred',
  'mix.band.soft': 'The sources state the bands differently, so their edges are soft.',
  'mix.cost.carbonToNitrogen_ratio.too-low':
    'Too little brown: nitrogen leaves as ammonia, which you smell and your beds go without.',
  'mix.cost.carbonToNitrogen_ratio.too-high': 'Too little green: it rots slowly and may not heat.',
  'mix.cost.moisture_pctWet.too-low': 'Too dry: life slows below 35 to 40 % and all but stops below 30 %.',
  'mix.cost.moisture_pctWet.too-high': 'Too wet: water fills the pores, air stays out, it goes sour and cold.',
  'mix.cost.freeAirSpace_pctVolume.too-low': 'Too dense: air does not reach the middle. Coarse stuff opens it.',
  'mix.cost.freeAirSpace_pctVolume.too-high': 'Very open: it loses its heat and dries. Treading it in a little helps.',
  'mix.cost.density_kgPerM3AsIs.too-low': 'Very light: it loses its heat and dries. It will settle.',
  'mix.cost.density_kgPerM3AsIs.too-high': 'Heavy: it presses its own air out.',
  'mix.packing':
    'Mixing, heaping and wetting take about a seventh off the buckets’ volume. Try it with a bucket of your own mix.',
  'mix.water.add-water':
    'Pour on {water}, about {buckets}, and stop when a squeezed handful drips: that brings it to {goal} %.',
  'mix.water.in-turns':
    'It cannot take all that at once: pour on {room}, fork it over, and pour the rest the next day.',
  'mix.water.right': 'It is about right. A squeezed handful should shine and hold together without dripping.',
  'mix.water.too-wet': 'It is too wet already: no water.',
  'mix.water.drier': 'Fork in {amount} to dry it.',
  'mix.nitrogen.add': 'It lacks {nitrogen} of nitrogen to reach {goal}:1. Give half now, and half in a week.',
  'mix.nitrogen.enough': 'It has nitrogen enough.',
  'mix.nitrogen.bought': '{amount} of {fertiliser}',
  'mix.fertiliser.urea': 'urea',
  'mix.fertiliser.ammonium-sulphate': 'ammonium sulphate',
  'mix.fertiliser.calcium-cyanamide': 'calcium cyanamide',
  'problem.not-for-heaps': '{found} (at {path}) must never go on a heap.',
  'problem.nothing-in-it': 'There is nothing at {path} to reckon with; it wants {wanted}.',
  'problem.solver-failed': 'The solver found no answer ({found}); it wants {wanted}.',
} as const;
