/** Names of what the kitchen, the press and the brewery leave over, and the words growers search it by. */
export const kitchenEn = {
  'material.kitchen-scraps.name': 'kitchen scraps',
  'material.kitchen-scraps.some': '{amount} of kitchen scraps',
  'material.kitchen-scraps.words':
    'scraps, food waste, food scraps, peelings, kitchen waste, garbage, slops, tea leaves, tea bags, veg peelings, kitchen slops, table scraps, veg scraps, vegetable scraps, fruit and veg scraps, compost caddy, compost pail, caddy scraps, green bin scraps, food leftovers without meat, potato and carrot peelings, tucker scraps, chook scraps, tea, tea waste, chai leaves, green caddy, sink scraps, kitchen refuse, wet waste',
  'material.fermented-scraps.name': 'fermented scraps',
  'material.fermented-scraps.some': '{amount} of fermented scraps',
  'material.fermented-scraps.words':
    'bran-fermented scraps, bokashi, soured scraps, acid ferment, pickled scraps, bran bucket, fermented food waste, bucket ferment, sour scraps',
  'material.vegetable-trimmings.name': 'vegetable trimmings',
  'material.vegetable-trimmings.some': '{amount} of vegetable trimmings',
  'material.vegetable-trimmings.words':
    'veg trimmings, vegetable waste, garden produce waste, outer leaves, tops and tails, culls, vegetables, veg tops, vegetable tops, carrot tops, beet tops, greengrocer waste, produce waste, grocer’s waste, market waste, pea pods, corn husks, sabzi waste, unsold vegetables, veg waste, garden veg waste',
  'material.salad-leaves.name': 'salad leaves',
  'material.salad-leaves.some': '{amount} of salad leaves',
  'material.salad-leaves.words':
    'lettuce, bolted lettuce, salad, spinach, old lettuce, chard, silverbeet, rocket, bolted spinach',
  'material.onion-waste.name': 'onion and leek waste',
  'material.onion-waste.some': '{amount} of onion and leek waste',
  'material.onion-waste.words':
    'onions, onion skins, leek tops, garlic, leek trimmings, onion peel, onion tops, shallots, spring onions, scallions, leeks',
  'material.root-vegetables.name': 'root vegetables',
  'material.root-vegetables.some': '{amount} of root vegetables',
  'material.root-vegetables.words':
    'carrots, turnips, beetroot, beets, parsnips, swede, rutabaga, roots, carrot, mangolds, mangels, radishes, kumara',
  'material.potatoes.name': 'potatoes',
  'material.potatoes.some': '{amount} of potatoes',
  'material.potatoes.words':
    'spuds, potato tubers, potato peelings, sweet potatoes, cull potatoes, praties, tatties, taters, old potatoes, potato peel',
  'material.pumpkins.name': 'pumpkins and squash',
  'material.pumpkins.some': '{amount} of pumpkins and squash',
  'material.pumpkins.words':
    'pumpkin, squash, jack-o’-lantern, marrow, courgette, zucchini, gourds, squashes, butternut, Halloween pumpkins, marrows, courgettes, old pumpkins, overgrown zucchini',
  'material.fruit-waste.name': 'fruit waste',
  'material.fruit-waste.some': '{amount} of fruit waste',
  'material.fruit-waste.words':
    'fruit, windfalls, apples, rotten fruit, fruit peel, banana skins, pears, fruit culls, windfall apples, windfall fruit, fallen fruit, banana peel, banana peels, apple cores, cores, soft fruit, bruised fruit, mangoes, grapes, plums, peaches, fruit scraps, melon rinds, watermelon rind, pineapple tops, juicer pulp',
  'material.citrus-peel.name': 'citrus peel',
  'material.citrus-peel.some': '{amount} of citrus peel',
  'material.citrus-peel.words':
    'orange peel, lemon peel, oranges, lemons, grapefruit skins, lemons and oranges, citrus, lime peel, mandarin peel, orange skins, lemon skins, squeezed oranges',
  'material.apple-pomace.name': 'apple pomace',
  'material.apple-pomace.some': '{amount} of apple pomace',
  'material.apple-pomace.words':
    'pomace, cider pressings, press cake, pressings, apple pulp, mash, cider must, apple pressings, cider pomace, cider waste, apple mash, juice pulp, apple cheese, pomage, cider press waste, spent apples',
  'material.brewers-grains.name': 'brewers’ grains',
  'material.brewers-grains.some': '{amount} of brewers’ grains',
  'material.brewers-grains.words':
    'spent grain, brewery grain, draff, spent brewery grain, mash-tun grain, spent grains, brewers grain, beer mash, brewing waste, distillers grains, mash grains, homebrew grain, spent mash',
  'material.coffee-grounds.name': 'coffee grounds',
  'material.coffee-grounds.some': '{amount} of coffee grounds',
  'material.coffee-grounds.words':
    'grounds, used coffee, spent coffee, café grounds, espresso pucks, coffee, coffee waste, coffee ground, café coffee, spent coffee grounds, coffee pucks, filter coffee, coffee filters and grounds',
  'material.cocoa-shells.name': 'cocoa shells',
  'material.cocoa-shells.some': '{amount} of cocoa shells',
  'material.cocoa-shells.words':
    'cocoa hulls, cacao husks, cocoa bean mulch, cocoa husk, cocoa shell, cacao shells, chocolate mulch, cocoa mulch',
  'material.peanut-shells.name': 'peanut shells',
  'material.peanut-shells.some': '{amount} of peanut shells',
  'material.peanut-shells.words':
    'peanut hulls, groundnut shells, monkey-nut shells, monkey nut shells, groundnut husks, peanut husks, nut shells',
  'material.bread.name': 'bread',
  'material.bread.some': '{amount} of bread',
  'material.bread.words':
    'stale bread, crusts, breadcrumbs, cake, old bread, toast, pasta, rice, cooked rice, cereal, biscuits, baked goods, flour, dough',
  'material.fish-scraps.name': 'fish scraps',
  'material.fish-scraps.some': '{amount} of fish scraps',
  'material.fish-scraps.words':
    'fish waste, fish heads, fish guts, fish frames, fish offcuts, fish trimmings, fishmonger waste, fish carcasses, gurry',
  'material.crab-shells.name': 'crab and lobster shells',
  'material.crab-shells.some': '{amount} of crab and lobster shells',
  'material.crab-shells.words':
    'crab, lobster, crab shells, prawn shells, shrimp shells, crayfish, lobster shells, prawn heads, shrimp heads, yabby shells, crayfish shells, prawn peelings, crab waste',
} as const;
