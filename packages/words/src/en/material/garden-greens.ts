/** Names of what is green in the garden and on the shore, and the words growers search it by. */
export const gardenGreensEn = {
  'material.grass-clippings.name': 'grass clippings',
  'material.grass-clippings.some': '{amount} of grass clippings',
  'material.grass-clippings.words':
    'grass, lawn clippings, lawn mowings, mowings, grass cuttings, cut grass, fresh grass, lawn cuttings, grass mowings, wet grass, green grass, mown grass, lawnmower clippings, mower clippings, clippings, lawn grass, grass from the mower, grass box, catcher clippings, lawn trimmings, fresh clippings, grass trimmings',
  'material.lawn-thatch.name': 'lawn moss and thatch',
  'material.lawn-thatch.some': '{amount} of lawn moss and thatch',
  'material.lawn-thatch.words':
    'thatch, moss, lawn moss, scarifyings, lawn rakings, scarifier waste, dethatchings, raked moss, moss from the lawn, lawn scarifyings, dead grass from the lawn',
  'material.green-weeds.name': 'green weeds',
  'material.green-weeds.some': '{amount} of green weeds',
  'material.green-weeds.words':
    'weeds, pulled weeds, soft weeds, pigweed, chickweed, weedings, garden weeds, annual weeds, young weeds, hoed weeds, cleavers, goosegrass, sticky willy, purslane, groundsel, oxalis, shepherd’s purse',
  'material.weeds-in-seed.name': 'weeds in seed',
  'material.weeds-in-seed.some': '{amount} of weeds in seed',
  'material.weeds-in-seed.words':
    'seeding weeds, seedy weeds, weeds gone to seed, ragweed, fat hen, annual weeds with seed, weeds with seed, weeds with seed heads, ripe weeds, flowering weeds',
  'material.weed-roots.name': 'roots of perennial weeds',
  'material.weed-roots.some': '{amount} of roots of perennial weeds',
  'material.weed-roots.words':
    'weed roots, couch roots, bindweed roots, dock roots, dandelion roots, quackgrass roots, ground elder, perennial weed roots, twitch roots, couch grass roots, nettle roots, running roots, rhizomes, scutch grass, scutch, wicks, kikuyu runners, couch runners, horsetail roots',
  'material.nettles.name': 'nettles',
  'material.nettles.some': '{amount} of nettles',
  'material.nettles.words': 'nettle, stinging nettles, stinging nettle, nettle tops, young nettles, jaggy nettles',
  'material.comfrey.name': 'comfrey',
  'material.comfrey.some': '{amount} of comfrey',
  'material.comfrey.words':
    'comfrey leaves, comfrey cuttings, knitbone, Russian comfrey, comfrey tops, bocking comfrey',
  'material.cut-flowers.name': 'cut flowers',
  'material.cut-flowers.some': '{amount} of cut flowers',
  'material.cut-flowers.words':
    'flowers, spent flowers, bouquets, deadheads, florist waste, flower trimmings, old flowers, dead flowers, dead heads, wedding flowers, temple flowers, marigold garlands, funeral flowers, wreaths',
  'material.legume-greens.name': 'green legumes',
  'material.legume-greens.some': '{amount} of green legumes',
  'material.legume-greens.words':
    'clover, vetch, alfalfa, lucerne, field beans, green manure, cover crop, cover crops, winter tares, cowpea, clover tops, green clover, broad bean plants, broad bean tops, pea plants, green pea vines, fava tops, green lupins, lupin, sunn hemp, dhaincha, crimson clover, fresh lucerne, fresh alfalfa',
  'material.cereal-greens.name': 'green rye and oats',
  'material.cereal-greens.some': '{amount} of green rye and oats',
  'material.cereal-greens.words':
    'rye, winter rye, green oats, ryegrass, grazing rye, green cereals, sorghum, sudangrass, cover-crop rye, green rye, green wheat, green barley, oats, cereal rye, ley grass, forage rye, Sudan grass, barley grass, millet tops',
  'material.mustard-tops.name': 'mustard and rape tops',
  'material.mustard-tops.some': '{amount} of mustard and rape tops',
  'material.mustard-tops.words':
    'mustard, rape, oilseed rape tops, phacelia, buckwheat, fodder radish, mustard tops, green mustard, mustard green manure, canola tops, radish tops, tillage radish, oil radish',
  'material.green-maize.name': 'green maize',
  'material.green-maize.some': '{amount} of green maize',
  'material.green-maize.words':
    'green corn stalks, sweetcorn plants, sweet corn plants, green corn, green maize stalks, sweetcorn stalks fresh, fresh corn stalks, green corn plants, mealie plants',
  'material.tomato-plants.name': 'tomato plants',
  'material.tomato-plants.some': '{amount} of tomato plants',
  'material.tomato-plants.words':
    'tomato vines, spent tomato plants, tomato haulm, old tomato plants, tomato haulms, tomato stems, tomato trusses, spent tomatoes',
  'material.pepper-plants.name': 'pepper plants',
  'material.pepper-plants.some': '{amount} of pepper plants',
  'material.pepper-plants.words':
    'chilli plants, aubergine plants, eggplant plants, capsicum, pepper haulm, capsicum plants, chili plants, chile plants, brinjal plants, eggplants, aubergines',
  'material.squash-vines.name': 'squash vines',
  'material.squash-vines.some': '{amount} of squash vines',
  'material.squash-vines.words':
    'pumpkin vines, cucumber vines, courgette plants, zucchini plants, marrow plants, melon vines, squash plants, pumpkin plants, cucumber plants, melon plants, cucurbit vines, gourd vines, choko vines, courgette vines, zucchini vines',
  'material.potato-tops.name': 'potato tops',
  'material.potato-tops.some': '{amount} of potato tops',
  'material.potato-tops.words':
    'potato haulm, potato vines, potato plants, potato foliage, potato haulms, potato stalks, potato stems, tattie shaws, shaws, spud tops',
  'material.brassica-plants.name': 'brassica leaves and stalks',
  'material.brassica-plants.some': '{amount} of brassica leaves and stalks',
  'material.brassica-plants.words':
    'cabbage leaves, kale stalks, brassica, broccoli stems, sprout stalks, cabbage stalks, turnip tops, cauliflower leaves, cabbage plants, kale plants, sprout plants, broccoli plants, cauliflower plants, collard stalks, kale stems, Brussels sprout stalks, old kale, old cabbages, cabbage stumps, cabbage, kale, turnip greens, kohlrabi leaves',
  'material.turf.name': 'turf',
  'material.turf.some': '{amount} of turf',
  'material.turf.words':
    'sods, turves, lifted lawn, sod, lawn sods, stripped turf, grass sods, divots, scraws, cut sod',
  'material.pond-weed.name': 'pond weed',
  'material.pond-weed.some': '{amount} of pond weed',
  'material.pond-weed.words':
    'blanket weed, duckweed, water hyacinth, water plants, azolla, pondweed, blanketweed, lake weed, elodea, water weed, waterweed, water lettuce, algae from the pond',
  'material.seaweed.name': 'seaweed',
  'material.seaweed.some': '{amount} of seaweed',
  'material.seaweed.words':
    'kelp, wrack, vraic, bladder wrack, varec, weed from the beach, storm weed, oarweed, kelp and wrack, tangle, bull kelp, beach seaweed, beach wrack, sea ware, seaware, rockweed, knotted wrack, dulse, beach cast, fucus, laminaria, feamainn',
  'material.eelgrass.name': 'eelgrass',
  'material.eelgrass.some': '{amount} of eelgrass',
  'material.eelgrass.words':
    'seagrass, zostera, Posidonia, ribbon weed, sea grass, Neptune grass, beach ribbon grass, sea wrack grass, Posidonia balls',
  'material.sea-lettuce.name': 'sea lettuce',
  'material.sea-lettuce.some': '{amount} of sea lettuce',
  'material.sea-lettuce.words': 'ulva, green seaweed, gutweed, green tide weed, green algae from the beach, sea greens',
} as const;
