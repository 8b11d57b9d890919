/** Names of manures, beddings and what else animals give, and the words growers search them by. */
export const animalsEn = {
  'material.goat-bedding.name': 'goat bedding',
  'material.goat-bedding.some': '{amount} of goat bedding',
  'material.goat-bedding.words':
    'goat litter, goat manure, goat muck, goat droppings with straw, goat barn cleanings, goat pen straw, goat straw, goat shed bedding, goat house cleanings, goat pen cleanings, goat manure with straw',
  'material.goat-droppings.name': 'goat droppings',
  'material.goat-droppings.some': '{amount} of goat droppings',
  'material.goat-droppings.words':
    'goat pellets, goat berries, goat dung, goat poo, goat poop, goat dung pellets, goat beans',
  'material.sheep-manure.name': 'sheep manure',
  'material.sheep-manure.some': '{amount} of sheep manure',
  'material.sheep-manure.words':
    'sheep droppings, sheep dung, dags, alpaca manure, llama manure, alpaca beans, sheep poo, sheep poop, sheep pellets, llama beans, alpaca poo, alpaca dung, alpaca pellets, llama dung, sheep muck without straw',
  'material.sheep-manure-straw.name': 'sheep manure with straw',
  'material.sheep-manure-straw.some': '{amount} of sheep manure with straw',
  'material.sheep-manure-straw.words':
    'sheep bedding, sheep muck, lambing straw, lambing bedding, sheep straw, lambing pen straw, sheep manure and straw, sheep shed bedding, lambing shed muck, sheep litter',
  'material.rabbit-droppings.name': 'rabbit droppings',
  'material.rabbit-droppings.some': '{amount} of rabbit droppings',
  'material.rabbit-droppings.words':
    'rabbit manure, bunny manure, rabbit pellets, bunny poo, rabbit poo, rabbit poop, rabbit berries, rabbit dung, bunny pellets, hare droppings',
  'material.rabbit-bedding.name': 'rabbit and guinea pig bedding',
  'material.rabbit-bedding.some': '{amount} of rabbit and guinea pig bedding',
  'material.rabbit-bedding.words':
    'rabbit bedding, rabbit litter, guinea pig bedding, guinea pig manure, hutch cleanings, cavy bedding, hutch bedding, hutch straw, guinea pig litter, guinea pig waste, hamster bedding, gerbil bedding, small pet bedding, pet bedding of plant-eaters, bunny bedding, rabbit hutch cleanings, cavy litter, chinchilla bedding',
  'material.horse-manure-straw.name': 'horse manure with straw',
  'material.horse-manure-straw.some': '{amount} of horse manure with straw',
  'material.horse-manure-straw.words':
    'horse manure, stable manure, horse muck, stall waste, horse bedding, pony manure, donkey manure, mule manure, stable muck, stable waste, stable sweepings, stable cleanings, horse straw, manure from the stables, stable bedding, strawy horse manure, mucked out straw, pony muck, horse and straw, riding school muck, horse manure and straw',
  'material.horse-manure-shavings.name': 'horse manure with shavings',
  'material.horse-manure-shavings.some': '{amount} of horse manure with shavings',
  'material.horse-manure-shavings.words':
    'stall shavings, horse manure with sawdust, used shavings, soiled shavings, stable shavings, stable shavings and manure, used horse shavings, horse bedding with shavings, sawdust horse bedding, stall sawdust, horse manure on shavings, horse manure and shavings',
  'material.horse-droppings.name': 'horse droppings',
  'material.horse-droppings.some': '{amount} of horse droppings',
  'material.horse-droppings.words':
    'road apples, paddock droppings, horse dung, poo-picked manure, horse poo, horse poop, horse apples, pony droppings, donkey droppings, picked-up horse manure, horse dung without bedding, field droppings of horses, pony poo',
  'material.cattle-manure.name': 'cattle manure',
  'material.cattle-manure.some': '{amount} of cattle manure',
  'material.cattle-manure.words':
    'cow manure, cow dung, dairy manure, steer manure, cow muck, cow pats, cow poo, cow poop, cowpats, cow pies, cow chips, bullock manure, buffalo dung, gobar, cattle dung, ox dung, cow manure without straw, dairy cow manure, steer dung, beef manure, buffalo manure',
  'material.farmyard-manure.name': 'farmyard manure',
  'material.farmyard-manure.some': '{amount} of farmyard manure',
  'material.farmyard-manure.words':
    'FYM, muck, cow manure with straw, barnyard manure, midden muck, byre manure, farm yard manure, farm manure, barn manure, barnyard muck, well-rotted manure, rotted manure, midden, dungheap, dung heap, cattle bedding, cow bedding, calf bedding, cowshed muck, byre muck, strawy manure, muck heap',
  'material.bagged-manure.name': 'bagged dried manure',
  'material.bagged-manure.some': '{amount} of bagged dried manure',
  'material.bagged-manure.words':
    'bagged manure, bagged steer manure, bagged cow manure, dried manure, pelleted manure, composted bagged manure, store manure, dehydrated manure, dried cow manure, dried manure pellets',
  'material.pig-manure.name': 'pig manure',
  'material.pig-manure.some': '{amount} of pig manure',
  'material.pig-manure.words':
    'hog manure, swine manure, pig dung, pig poo, pig slop manure, hog dung, pig muck without straw',
  'material.pig-manure-straw.name': 'pig manure with straw',
  'material.pig-manure-straw.some': '{amount} of pig manure with straw',
  'material.pig-manure-straw.words':
    'pig bedding, pig muck, sty cleanings, pig straw, pigpen straw, sty muck, pig litter, hog bedding, pig manure and straw',
  'material.hen-manure.name': 'hen manure',
  'material.hen-manure.some': '{amount} of hen manure',
  'material.hen-manure.words':
    'chicken manure, chicken droppings, hen droppings, poultry manure, dropping-board scrapings, chicken poo, chicken poop, chook poo, chook manure, hen poo, layer manure, quail manure, quail droppings, fresh chicken manure, poultry droppings, hen dung, battery hen manure, pelleted chicken manure, chicken pellets, fowl manure',
  'material.poultry-litter.name': 'poultry litter',
  'material.poultry-litter.some': '{amount} of poultry litter',
  'material.poultry-litter.words':
    'chicken litter, deep litter, coop bedding, broiler litter, hen-house litter, chook litter, coop cleanings, chicken bedding, hen bedding, coop litter, coop straw, hen house bedding, hen-house straw, henhouse cleanings, chicken straw, chicken shavings, chook bedding, chook house straw, hen litter, chicken coop cleanings, chicken coop bedding, quail litter, barn litter, fowl litter',
  'material.duck-manure.name': 'duck manure',
  'material.duck-manure.some': '{amount} of duck manure',
  'material.duck-manure.words':
    'duck droppings, goose droppings, duck poo, duck poop, goose manure, goose poo, duck dung',
  'material.duck-litter.name': 'duck litter',
  'material.duck-litter.some': '{amount} of duck litter',
  'material.duck-litter.words':
    'duck bedding, duck-house litter, duck straw, duck house bedding, goose litter, goose bedding, duck pen straw',
  'material.turkey-manure.name': 'turkey manure',
  'material.turkey-manure.some': '{amount} of turkey manure',
  'material.turkey-manure.words': 'turkey droppings, turkey poo, turkey dung',
  'material.turkey-litter.name': 'turkey litter',
  'material.turkey-litter.some': '{amount} of turkey litter',
  'material.turkey-litter.words': 'turkey bedding, turkey straw, turkey house litter, turkey shavings',
  'material.feathers.name': 'feathers',
  'material.feathers.some': '{amount} of feathers',
  'material.feathers.words':
    'down, plucking waste, feather waste, chicken feathers, duck feathers, pillow feathers, old feather pillows, plucked feathers',
  'material.hair.name': 'hair',
  'material.hair.some': '{amount} of hair',
  'material.hair.words':
    'human hair, pet fur, fur, hair clippings, dog hair, barber’s hair, barber hair, cat fur, pet hair, horse hair, dog fur, hairdresser waste, salon hair, combings',
  'material.wool.name': 'wool',
  'material.wool.some': '{amount} of wool',
  'material.wool.words':
    'fleece, sheep wool, shoddy, raw wool, wool waste, wool pellets, daggy wool, wool dags, sheep fleece, raw fleece, fleeces, belly wool, waste wool, old wool jumper, wool packing',
  'material.blood-meal.name': 'blood meal',
  'material.blood-meal.some': '{amount} of blood meal',
  'material.blood-meal.words':
    'dried blood, blood fish and bone, bloodmeal, blood and bone, blood powder, dried blood meal',
  'material.bone-meal.name': 'bone meal',
  'material.bone-meal.some': '{amount} of bone meal',
  'material.bone-meal.words': 'bonemeal, bone flour, bone dust, steamed bone meal, sterilised bone meal, bone powder',
  'material.hoof-and-horn.name': 'hoof and horn',
  'material.hoof-and-horn.some': '{amount} of hoof and horn',
  'material.hoof-and-horn.words':
    'hoof meal, horn meal, horn shavings, hoof and horn meal, hoof trimmings, hoof parings, farrier trimmings, horn dust',
  'material.seed-meal.name': 'seed meal',
  'material.seed-meal.some': '{amount} of seed meal',
  'material.seed-meal.words':
    'cottonseed meal, soybean meal, rape meal, canola meal, oil-seed meal, linseed meal, seedmeal, rapeseed meal, mustard meal, soya meal, soy meal, oilcake, oil cake, neem cake, castor meal, mustard cake, groundnut cake, cotton seed meal, sunflower meal, press meal',
} as const;
