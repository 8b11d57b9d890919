/** Words too general to be one material; what each may mean stands in `reference/materials.json`. */
export const generalNamesEn = {
  'general.greens.words':
    'greens, green stuff, green, nitrogen, nitrogen stuff, green material, green waste, wet stuff, soft stuff',
  'general.browns.words':
    'browns, brown stuff, brown, carbon, carbon stuff, brown material, dry stuff, dry matter, dry browns',
  'general.bedding.words':
    'bedding, animal bedding, soiled bedding, old bedding, used bedding, mucking out, cleanings, pet bedding, barn cleanings',
  'general.litter.words': 'litter, used litter, animal litter',
  'general.manure.words': 'manure, dung, animal manure, fresh manure, poo, poop, animal dung',
  'general.droppings.words': 'droppings, animal droppings, pellets of dung',
  'general.trimmings.words': 'trimmings, garden trimmings',
  'general.cuttings.words': 'cuttings, garden cuttings',
  'general.stalks.words': 'stalks, stems, old stems',
  'general.vines.words': 'vines, haulm, haulms, old plants, spent plants, plants, crop residues, crop waste',
  'general.canes.words': 'canes',
  'general.shells.words': 'shells',
  'general.hulls.words': 'hulls, husks',
  'general.pellets.words': 'pellets',
  'general.meal.words': 'meal, organic fertiliser, organic fertilizer',
  'general.hedge.words': 'hedge, hedge waste, shrubs',
  'general.wood.words': 'wood, woody stuff, woody waste, mulch, clean wood',
  'general.garden-waste.words':
    'garden waste, yard waste, yard trimmings, yard clippings, garden rubbish, garden refuse, plant waste',
} as const;
