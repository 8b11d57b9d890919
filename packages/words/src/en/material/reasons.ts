/** Why an input may or may not go on a heap, what part a material plays, and why chopping pays. */
export const materialReasonsEn = {
  'doubtful.human-waste.name': 'human waste',
  'doubtful.human-waste.words':
    'humanure, toilet waste, night soil, sewage, sewage sludge, biosolids, faeces, feces, nappies, diapers, composting toilet',
  'doubtful.human-waste.instead':
    'Instead: a toilet system that your local rules allow, used for trees and never for food.',
  'doubtful.dog-cat-waste.name': 'dog and cat waste',
  'doubtful.dog-cat-waste.words':
    'dog mess, cat litter, pet waste, dog poo, dog poop, cat poo, cat poop, cat mess, dog waste, cat waste, dog dirt, kitty litter, litter tray, litter box, dog faeces, cat faeces, ferret litter',
  'doubtful.dog-cat-waste.instead': 'Instead: bag it and bin it, or bury it deep, away from food beds, play and water.',
  'doubtful.meat-fish-dairy.name': 'meat, fish, fat and dairy',
  'doubtful.meat-fish-dairy.words':
    'meat, fish, dairy, bones, cheese, milk, yoghurt, yogurt, butter, cream, fat, grease, oil, cooking oil, fryer oil, frying oil, lard, dripping, bacon, chicken bones, meat scraps, meat leftovers, raw meat, cooked meat, plate scrapings, cooked leftovers, leftovers, ghee, gravy, paneer, eggs, raw eggs, prawns',
  'doubtful.meat-fish-dairy.instead':
    'Instead: your food-waste collection, or a closed, rat-proof container made for it. Oil goes to the oil collection. Fish scraps and fermented scraps can go deep into a hot, closed heap, by those names.',
  'doubtful.carcasses.name': 'carcasses',
  'doubtful.carcasses.words':
    'dead hen, dead animal, offal, slaughter waste, dead chicken, dead chook, dead sheep, roadkill, guts, entrails, deadstock, carcass',
  'doubtful.carcasses.instead': 'Instead: ask your authority or your vet; many places have a collection.',
  'doubtful.avian-influenza-litter.name': 'litter of birds that may have avian influenza',
  'doubtful.avian-influenza-litter.words': 'bird flu, avian influenza, litter from sick birds',
  'doubtful.avian-influenza-litter.instead':
    'Instead: leave it where it lies, shut birds and pets away from it, and report it.',
  'doubtful.treated-wood.name': 'treated wood and its sawdust',
  'doubtful.treated-wood.words':
    'painted wood, pressure-treated wood, plywood, chipboard, stained wood, treated timber, tanalised timber, CCA timber, MDF, particle board, OSB, varnished wood, glued wood, railway sleepers, treated sawdust, plywood sawdust, MDF sawdust, fence paint, creosote',
  'doubtful.treated-wood.instead': 'Instead: take it to the waste site as treated timber. Do not burn it.',
  'doubtful.coal-ash.name': 'coal ash',
  'doubtful.coal-ash.words':
    'briquette ash, rubbish ash, barbecue briquette ash, coke ash, anthracite ash, clinker, peat briquette ash',
  'doubtful.coal-ash.instead': 'Instead: let it go cold in a lidded metal bin, then the waste collection.',
  'doubtful.glossy-print.name': 'glossy print and till receipts',
  'doubtful.glossy-print.words':
    'magazines, catalogues, coated paper, tape, glossy paper, glossy magazines, till receipts, receipts, wrapping paper, coated card, milk cartons, drink cartons, paper cups, waxed cardboard',
  'doubtful.glossy-print.instead': 'Instead: the paper recycling; till receipts go in the bin.',
  'doubtful.quarantine-disease.name': 'plants with clubroot, potato wart, white rot or wilt',
  'doubtful.quarantine-disease.words':
    'clubroot, wart disease, white rot, wilt, club root, fusarium, verticillium, potato wart, onion white rot',
  'doubtful.quarantine-disease.instead':
    'Instead: bin or burn them as your plant-health rules say, and clean boots and tools.',
  'doubtful.blighted-tubers.name': 'blighted potato tubers',
  'doubtful.blighted-tubers.words': 'blight, rotten potatoes, blighted potatoes, potatoes with blight',
  'doubtful.blighted-tubers.instead':
    'Instead: the waste collection, or bury them deeper than half a metre (20 in) where no potatoes will grow.',
  'doubtful.diseased-plants.name': 'other diseased plants',
  'doubtful.diseased-plants.words':
    'mildew, rust, leaf spot, botrytis, sick plants, diseased plants, blighted tomato plants, tomato blight, black spot leaves, scab, powdery mildew, virus plants, mouldy plants',
  'doubtful.diseased-plants.instead': 'Without a hot heap: the green-waste collection, which is hot, or the bin.',
  'doubtful.seeding-weeds.name': 'weeds in seed',
  'doubtful.seeding-weeds.words': 'seed heads, gone to seed',
  'doubtful.seeding-weeds.instead':
    'Without a hot heap: the green-waste collection, or drown them for some weeks first.',
  'doubtful.rooting-weeds.name': 'bindweed, couch, knotweed and dock roots',
  'doubtful.rooting-weeds.words':
    'bindweed, couch grass, couch, twitch, knotweed, Japanese knotweed, dock, docks, quack grass, horsetail, mare’s tail, ground elder roots, Johnson grass, nutgrass, oxalis bulbs, kikuyu, Bermuda grass runners',
  'doubtful.rooting-weeds.instead':
    'Without a hot heap: dry them to a crisp in the sun, or drown them in a lidded bucket for six weeks or more, and put the rest in then.',
  'doubtful.treated-lawn-clippings.name': 'clippings of a lawn treated with weed-killer',
  'doubtful.treated-lawn-clippings.words':
    'weed and feed, sprayed lawn, treated grass, sprayed grass, herbicide-treated grass, treated lawn, weedkiller grass, grass with weed-killer, treated clippings, sprayed clippings, lawn treated with herbicide',
  'doubtful.treated-lawn-clippings.instead':
    'Instead: leave the mowings lying on the lawn, as the label says. After that, clippings are clippings again.',
  'doubtful.unknown-spray-hay-manure.name': 'hay, straw or manure of unknown spray history',
  'doubtful.unknown-spray-hay-manure.words':
    'bought hay, stable manure from elsewhere, sprayed hay, aminopyralid, clopyralid, herbicide hay, sprayed straw',
  'doubtful.unknown-spray-hay-manure.instead': 'Ask what was sprayed; if nobody knows, grow beans in it in pots first.',
  'doubtful.plant-eaters-bedding.name': 'manure and bedding of plant-eaters and hens',
  'doubtful.plant-eaters-bedding.words': 'plant-eater manure, herbivore manure',
  'material.class.nitrogen-rich': 'rich in nitrogen',
  'material.class.carbon-rich': 'rich in carbon',
  'material.class.bulking': 'coarse, keeps air',
  'material.class.mineral': 'mineral',
  'material.class.starter': 'starter',
  'material.class.water': 'water',
  'permit.allowed': 'allowed',
  'permit.only-hot': 'only in a hot, logged heap',
  'permit.never': 'never',
  'permit.reason.plain-plant-stuff': 'plain plant stuff',
  'permit.reason.lawn-ask-what-was-sprayed':
    'yes, if no weed-killer was used on the lawn; else leave the first two or three mowings, or three to four weeks of them, lying, and do as the label says',
  'permit.reason.scraps-without-meat': 'raw fruit and vegetable scraps, coffee and tea; covered each time',
  'permit.reason.healthy-only': 'healthy plants only; diseased ones need a hot heap or stay out',
  'permit.reason.untreated-wood-only': 'only from wood that was never treated, painted, stained or glued',
  'permit.reason.plain-board-only': 'plain brown board; pull off tape, labels and shiny print',
  'permit.reason.plain-print-only': 'plain print; nothing glossy, no till receipts',
  'permit.reason.manure-is-raw-until-proved':
    'yes; until the heap is logged as hot it counts as raw manure, with its days before harvest',
  'permit.reason.weeds-before-seed': 'before they seed; roots that grow again and seed heads need a hot core',
  'permit.reason.leaf-not-root': 'leaves and stems; bits of root grow again',
  'permit.reason.shore-rules-first': 'only where gathering it is allowed; rinse it or leave it in the rain',
  'permit.reason.haulm-never-tubers':
    'healthy haulm; never tubers, and follow your plant-health notice in a blight year',
  'permit.reason.starter': 'a little brings life and holds ammonia',
  'permit.reason.ash-a-dusting': 'a light dusting at most, never with fresh manure, and only from clean wood',
  'permit.reason.char-clean-wood-only': 'from clean wood, quite cold and wetted',
  'permit.reason.urine-own-household':
    'of healthy people of your own household, on your own ground, into a hot heap; never where crops are sold: some rules bar all human waste',
  'permit.reason.clean-water': 'clean water',
  'permit.reason.human-waste-law': 'rules for crops that are sold bar it, and it carries human diseases',
  'permit.reason.pet-parasites': 'roundworm, hookworm and Toxoplasma outlive a garden heap; never on food beds',
  'permit.reason.vermin': 'rats and flies; only closed systems can take it',
  'permit.reason.special-procedure': 'dead animals have procedures of their own; ask your authority',
  'permit.reason.report-first': 'report it first; do not move it',
  'permit.reason.metals-stay': 'arsenic, chromium, boron and other metals stay in the soil',
  'permit.reason.coatings-inks': 'coatings, inks and plastic film do not rot',
  'permit.reason.disease-survives-heat': 'these outlive even hot heaps; burn or bin as your plant-health rules say',
  'permit.reason.lives-on-in-tubers': 'blight lives on in living tubers',
  'permit.reason.most-disease-dies-hot': 'most plant diseases die where every part stays hot for days',
  'permit.reason.seed-needs-heat': 'most seed dies at 60 °C (140 °F) for three days; no heap is sure to be weed-free',
  'permit.reason.roots-outlive-cold':
    'they live through a cool heap; dry or drown them first, or keep them in the hot core',
  'permit.reason.leave-mowings-lie':
    'leave two or three mowings, or three to four weeks of them, on the lawn; the label may forbid any use',
  'permit.reason.bean-test-first':
    'only when beans or peas grow well in it in pots for two to three weeks; neither heat nor time clears these weed-killers',
  'permit.reason.soiled-with-food-only': 'plain white or brown paper, soiled with food only: none with cleaning agents',
  'permit.reason.pure-fibre-only': 'only pure cotton, linen, wool or jute: no polyester, no elastic, no buttons',
  'permit.reason.cut-before-spores':
    'yes; cut it before the spores fly in late summer, and wear a mask with the dry fronds',
  'permit.reason.pond-weed-stays':
    'yes; leave it on the bank for a day so that pond creatures can go back. Invasive kinds must by law not leave your ground',
  'permit.reason.no-wire-or-foam': 'yes; take off wire, foam, foil and ribbon',
  'permit.reason.tubers-healthy-and-cut':
    'healthy ones, cut up and buried deep, or they grow again; blighted tubers never',
  'permit.reason.ferment-in-the-middle':
    'in the middle of the heap, mixed with dry stuff and a little soil or finished compost; if meat or dairy went into the pail, only deep in a hot, closed heap',
  'permit.reason.deep-in-a-hot-heap':
    'only deep in a hot, closed heap that keeps rats out, under a good hand of sawdust or straw; never in an open bin',
  'permit.reason.wet-and-quick': 'yes, the same day: it sours within two; mix it with twice its volume of dry stuff',
  'permit.reason.keep-from-dogs': 'yes; keep dogs away from it: it poisons them',
  'permit.reason.fresh-from-the-tide':
    'fresh from the tide line, where gathering is allowed. Keep off rotting banks of it: they give off a gas that kills',
  'permit.reason.keratin-slow': 'yes, wetted and spread thin: it is slow and mats',
  'permit.reason.strong-a-handful': 'a few handfuls to a barrow at most: it is strong, and draws dogs and rats',
  'permit.reason.lime-not-with-manure':
    'seldom needed, and never with manure, urine or fresh grass: it drives the ammonia off',
  'permit.reason.harmless-mineral': 'yes; it does no harm and little good',
  'chop.reason.long-stems-mat-and-dry': 'chop: long stems tangle, leave dry gaps and are hard to turn',
  'chop.reason.whole-leaves-mat': 'run the mower over them: whole leaves lie in wet, airless mats',
  'chop.reason.tough-waxy-leaves': 'shred: the waxy skin keeps water and life out',
  'chop.reason.opens-skins': 'a few cuts with the spade open the skins',
  'chop.reason.thick-stems-slow': 'shred or crush: thick stems take a year',
  'chop.reason.sheets-seal': 'tear up and crumple: flat sheets seal off the air',
  'chop.reason.already-small': 'no need: it is small already',
  'chop.reason.keeps-air': 'leave it coarse: it keeps the air in the heap',
  'chop.reason.turns-to-mush': 'no need: it goes soft by itself',
  'chop.reason.opens-pores': 'crush it, wet, to hazelnut size',
  'chop.reason.liquid': 'nothing to chop',
  'chop.reason.whole-shells-stay': 'crush them: whole shells stay for years',
  'chop.reason.wet-first': 'no need: wet it through and tease it apart',
  'chop.reason.grass-side-down': 'no need: lay it grass side down',
} as const;
