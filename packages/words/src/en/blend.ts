/** Potting mixes and raised beds. */
export const blendEn = {
  'blend.part.compost': 'compost',
  'blend.part.leaf-mould': 'leaf mould',
  'blend.part.worm-castings': 'worm castings',
  'blend.part.loam': 'garden soil',
  'blend.part.sand': 'sharp sand',
  'blend.part.charcoal': 'crushed charcoal',
  'blend.part.perlite': 'perlite or pumice',
  'blend.part.coir': 'soaked coir',
  'blend.base.logs': 'logs and branches',
  'blend.base.wood-chips': 'wood chips',
  'blend.base.hedge-chippings': 'hedge chippings',
  'blend.part-little': '{volume} of {part}',
  'blend.part-amount': '{amount} ({volume}) of {part}',
  'blend.use.sowing': 'seedlings',
  'blend.use.potting-on': 'plants that are potted on',
  'blend.use.hungry': 'hungry plants in containers',
  'blend.vessel.seed-tray': 'seed trays',
  'blend.vessel.small-pot': '9 cm pots',
  'blend.recipe.leaf-mould-alone': 'Leaf mould two years old, by itself, as organic gardeners sow in.',
  'blend.recipe.leaf-mould-seed-mix':
    'Two parts of garden soil to one of leaf mould and one of sharp sand: an old nursery seed mix, with leaf mould for its peat.',
  'blend.recipe.compost-seedling-mix':
    'Two parts of compost to two of coir and one of perlite, as an organic growers’ handbook has it.',
  'blend.recipe.thirds-with-leaf-mould':
    'Equal parts of compost, leaf mould and garden soil, as organic gardeners pot on.',
  'blend.recipe.thirds-with-sand':
    'Equal parts of compost, garden soil and sharp sand: the classic mix of an organic growers’ handbook.',
  'blend.recipe.seven-three-two':
    'Seven parts of garden soil to three of leaf mould and two of sharp sand: an old nursery potting mix, with leaf mould for its peat, which is fed apart.',
  'blend.recipe.tomato-mix':
    'Three parts of garden soil to one of leaf mould and one of compost, as an allotment grower fills tomato pots.',
  'blend.recipe.own': 'Parts of your own.',

  'blend.potting.not-yet':
    'Not with this compost yet: read below why, and use leaf mould in its place meanwhile. Once it is fit, stir together {stuff}: that fills {volume} of pots and trays.',
  'blend.potting.answer': 'Stir together {stuff}: that fills {volume} of pots and trays.',
  'blend.potting.shrinks':
    'The sum is more than what it fills: fines slip into gaps and watering firms it, by about {lost, number} % ({low, number} to {high, number} %). Try it with one bucket.',
  'blend.potting.wet': 'Watered and drained, all of it weighs about {mass}.',
  'blend.potting.air':
    'Drained, about {water, number} % of it is water and {air, number} % ({low, number} to {high, number} %) is air. Roots want {least, number} % of air or more; as much as that: {chance}.',
  'blend.potting.pH.acid':
    'Its pH is likely {low, number} to {high, number}, and {wantedLow, number} to {wantedHigh, number} is sought: rather acid. A little lime mends that; test first.',
  'blend.potting.pH.right':
    'Its pH is likely {low, number} to {high, number}; {wantedLow, number} to {wantedHigh, number} is sought.',
  'blend.potting.pH.alkaline':
    'Its pH is likely {low, number} to {high, number}, and {wantedLow, number} to {wantedHigh, number} is sought: rather alkaline. Leaf mould or coir in place of some compost lowers it; no lime, no ash.',
  'blend.salts.potting':
    'Salts are about {salts, number} dS/m ({low, number} to {high, number}) in a saturated extract, and {use} bear {most, number}; under it: {chance}.',
  'blend.salts.guessed':
    'Nobody measured the salts of this compost, so that is what such compost usually has. A meter tells more: two cups of water on one of compost.',
  'blend.salts.most':
    'By its salts {share, plural, =0 {not even 5 % of this compost is safe} other {up to # % of this compost is safe}}, nine times in ten.',
  'blend.short.short': 'Of {part} about {amount} ({volume}) is short. What you have is enough: {chance}.',
  'blend.short.little': 'Of {part} about {volume} is short. What you have is enough: {chance}.',
  'blend.short.enough': 'Of {part} there is enough: {chance}.',
  'blend.ripe.ready': 'By what you saw, the compost is ripe enough for this.',
  'blend.ripe.for-bigger-plants': 'By what you saw, the compost is ripe enough for grown plants, not for seeds.',
  'blend.ripe.young': 'By what you saw, the compost is still young.',
  'blend.ripe.unknown': 'Nothing was said that shows how ripe the compost is.',
  'blend.advice.young-wait':
    'Leave the compost for a month or more, damp and covered, and test it again: young compost burns roots and takes their nitrogen. On a bed as a mulch it does no harm meanwhile.',
  'blend.advice.young-bigger-plants': 'Keep this compost for potting on, and sow in something leaner.',
  'blend.advice.unknown-test':
    'Sow cress or radish in it beside a mix you trust: if eight in ten come up as well as there, it is ripe enough for plants, and above nine in ten for seeds.',
  'blend.advice.salty-dilute': 'It is likely too salty: thin it with leaf mould, sand or soil.',
  'blend.advice.salty-leach':
    'Or wash the compost first: let {water} of rain or tap water run through it in an open basket, over a bed that can use it and away from wells and ditches, and drain it.',
  'blend.advice.use-leaf-mould': 'Leaf mould can take the compost’s place: it is lean and mild.',
  'blend.advice.much-compost':
    'That is {share, number} % of compost, and handbooks stop at {low, number} to {high, number} %: more shrinks, waterlogs and shuts out air.',
  'blend.advice.little-air':
    'It may be short of air: more sand, perlite or coarse leaf mould opens it; a taller pot drains better too.',
  'blend.advice.charge-charcoal':
    'Charge the charcoal first: soak it for some weeks in compost or thin manure, or it takes the plants’ nitrogen. Wet it before you crush it.',
  'blend.advice.feed-later': 'There is little food in it: pot on or feed when true leaves stand.',
  'blend.advice.raw-salads':
    'Nobody has shown that this compost got hot enough for long enough, and what grows in it is eaten raw: use compost of plants alone, or leaf mould, for salads and their seedlings.',

  'blend.bed.answer': 'Bring {stuff}: once it has settled that fills the bed of {volume}.',
  'blend.bed.base': 'First lay {stuff} at the foot.',
  'blend.bed.settles':
    'A loose fill settles by about {lost, number} % ({low, number} to {high, number} %) as it is mixed and watered in; that much more is counted in. Heap it up.',
  'blend.bed.top-up':
    'In its first year it sinks by about {drop} more ({range}): keep {amount} ({volume}) by for next spring.',
  'blend.bed.top-up-little':
    'In its first year it sinks by about {drop} more ({range}): keep {volume} by for next spring.',
  'blend.bed.no-top-up':
    'There is little in it that rots: it hardly sinks in its first year, and nothing need be kept by.',
  'blend.bed.load':
    'Full and wet it weighs about {load}, {mass} in all. A deck is commonly built for {deck} with the people on it; more than that: {chance}.',
  'blend.bed.organic':
    'About {likely, number} % ({low, number} to {high, number} %) of its dry weight is organic matter; 5 to 15 % is sought.',
  'blend.bed.phosphorus':
    'The compost brings phosphorus for about {likely, number} years ({low, number} to {high, number}) of vegetables: top up later with leaf mould or other lean stuff, and test the soil before more compost or manure.',
  'blend.bed.salts':
    'Salts are about {salts, number} dS/m ({low, number} to {high, number}) in a saturated extract at first. Beans, carrots and strawberries bear {sensitive, number}; under it: {underSensitive}. Tomatoes bear {hardy, number}; under it: {underHardy}.',
  'blend.bed.compost.none': 'There is no compost in it.',
  'blend.bed.compost.lean':
    'It is {share, number} % compost by volume; beds are commonly filled with {low, number} to {high, number} %.',
  'blend.bed.compost.within':
    'It is {share, number} % compost by volume, within the {low, number} to {high, number} % that beds are commonly filled with.',
  'blend.bed.compost.over':
    'It is {share, number} % compost by volume, and beds are commonly filled with {low, number} to {high, number} %.',
  'blend.bed.advice.much-compost':
    'Less compost is better: gardens filled with compost alone burnt their plants, sank and leaked phosphorus. Put soil in its place.',
  'blend.bed.advice.salty-wash':
    'It may be too salty for seedlings: measure it, or let a few good rains or waterings run through before you sow.',
  'blend.bed.advice.young-wait': 'The compost is still young: fill the bed and leave it some weeks before you sow.',
  'blend.bed.advice.wood-below':
    'Wood takes nitrogen from what lies beside it for years: keep it at the foot, do not stir it in, and feed the first crops. It sinks as it rots.',
  'blend.bed.advice.shallow-over-wood': 'There is little mix above the wood for roots: less wood, or a higher bed.',
  'cli.potting': 'A seed or potting mix for so many pots or trays, with what your compost and your sand will bear.',
  'cli.potting.use': 'sowing, potting-on, or hungry (containers of hungry plants)',
  'cli.potting.pots': 'how many of which size: 20x3L, "2 seed trays", "30 small pots"',
  'cli.potting.recipe':
    'leaf-mould-alone, leaf-mould-seed-mix, compost-seedling-mix, thirds-with-leaf-mould, thirds-with-sand, seven-three-two, tomato-mix',
  'cli.potting.eatenRaw': 'what grows in it is eaten raw',
  'cli.fillBed': 'What fills a raised bed by volume, what it weighs, and what topping up to expect.',
  'cli.fillBed.bed': 'the inside: 2.4x1.2x0.4m (length, width, depth), or an area such as 3m2 with --depth',
  'cli.fillBed.depth': 'the depth inside, with an area: 40cm, 16in',
  'cli.fillBed.beds': 'so many alike (1 if not said)',
  'cli.fillBed.compost': 'percent of compost by volume, with garden soil for the rest (a third if not said)',
  'cli.fillBed.foot': 'woody stuff at the foot: logs=15cm, wood-chips=10cm, hedge-chippings=10cm',
  'cli.fillBed.standsOn': 'ground, doubtful-ground, deck, roof',
  'cli.fillBed.walls': 'untreated-wood, treated-wood, unknown-wood, other',
  'cli.blend.age': 'months since the compost was last fed or hot',
  'cli.blend.seedlings': 'cress, radish or beans that came up in it, percent of those in a mix you trust',
  'cli.blend.rise': 'rise in the self-heating test, in °C',
  'cli.blend.smell': 'earthy, ammonia, sour',
  'cli.blend.salts': 'what the salt meter read, in dS/m (mS/cm)',
  'cli.blend.saltsBy':
    'how it was read: saturated-extract, one-to-one, one-to-two (by volume; if not said), pour-through, one-to-five',
  'cli.blend.madeOf': 'plants, manure-or-salty, unknown',
  'cli.blend.provenHot': 'its heat was logged and met your rule',
  'cli.blend.part':
    'parts of your own: compost=1 "leaf mould=2" sand=1; also loam, worm-castings, charcoal, perlite, coir',
  'cli.blend.have': 'what there is: compost=2buckets sand=40L',
  'cli.blend.measure': 'the measure to tell amounts in',
  'app.bins.harvest': 'When to harvest after manure',
  'app.bins.potting': 'A potting mix of your compost',
  'app.bins.fillBed': 'Fill a raised bed',
  'app.potting.question': 'What do I stir together for these pots?',
  'app.potting.asked': 'It is for {count} of {pots}, for {use}.',
  'app.potting.said': '{count, plural, one {# pot} other {# pots}}',
  'app.potting.act': 'Say what the compost is like',
  'app.potting.pots': 'The pots',
  'app.potting.use': 'For',
  'app.potting.count': 'How many pots',
  'app.potting.each': 'One holds',
  'app.potting.recipe': 'Mixed as',
  'app.potting.picture': 'The stuff of the mix one on another, each as high as its share of the volume.',
  'app.bed.question': 'What fills this raised bed?',
  'app.bed.asked': 'A bed {length} long, {width} wide and {depth} deep inside, filled with {compost}.',
  'app.bed.said': '{share, number} % compost',
  'app.bed.act': 'Say how large the bed is',
  'app.bed.size': 'The bed',
  'app.bed.length_m': 'Length inside',
  'app.bed.width_m': 'Width inside',
  'app.bed.depth_m': 'Depth inside',
  'app.bed.foot_m': 'Wood chips at the foot (0 for none)',
  'app.bed.standsOn': 'It stands on',
  'app.bed.standsOn.ground': 'sound ground',
  'app.bed.standsOn.doubtful-ground': 'doubtful ground',
  'app.bed.standsOn.deck': 'a deck or balcony',
  'app.bed.standsOn.roof': 'a roof',
  'app.bed.compost': 'Compost, % of the volume',
  'app.bed.compost.hint': 'Garden soil makes up the rest. A quarter to a half is common.',
  'app.bed.picture': 'The bed cut through: its stuff from the foot up, each as deep as its share of the volume.',
  'app.blend.compost': 'The compost',
  'app.blend.take': 'Reckon with it',
  'app.blend.advice': 'What to do',
  'app.blend.like': 'What it is like',
  'app.blend.madeOf': 'Made of',
  'app.blend.madeOf.plants': 'plants alone',
  'app.blend.madeOf.manure-or-salty': 'manure, seaweed, ash in it',
  'app.blend.madeOf.unknown': 'not known',
  'app.blend.smell': 'It smells',
  'app.blend.smell.earthy': 'of earth',
  'app.blend.smell.ammonia': 'of ammonia',
  'app.blend.smell.sour': 'sour',
  'app.blend.age_months': 'Months since it was fed or hot',
  'app.blend.age_months.hint': 'A year of rest counts for it. Leave empty what you do not know.',
  'app.blend.emergence_pctOfControl': 'Cress that came up, %',
  'app.blend.emergence_pctOfControl.hint': 'Beside the same sowing in a mix you trust.',
  'app.blend.salts': 'Salt meter, dS/m (mS/cm)',
  'app.blend.salts.hint': 'Two cups of rain water stirred into one of compost.',
  'problem.number-unreadable': '“{found}” (at {path}) is no number. A number is such as 14, 2.5 or 3-5.',
  'problem.pots-unreadable': '“{found}” says no pots. Pots are such as 20x3L, "2 seed trays" or "30 small pots".',
  'problem.bed-unreadable':
    '“{found}” is no bed. A bed is 2.4x1.2x0.4m (length, width, depth inside), or an area such as 3m2 with --depth 40cm.',
  'problem.two-recipes': '{path} and another recipe ({found}) were both given: give one.',
  'problem.base-too-deep':
    'The woody foot ({found} m) leaves no room for roots: there must be {wanted} m of mix above it or more.',
} as const;
