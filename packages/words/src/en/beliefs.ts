/**
 * What has been published of what is commonly held of heaps, beds and teas: `says` is the answer to a belief in one
 * sentence that names it.
 */
export const beliefsEn = {
  'belief.grass-alone.says':
    'Grass alone does heat (a 0.64 m³ cage of it, turned twice in warm air, read 75 °C or 167 °F), but at about 80 % water it packs and sours: mix dry stuff through it.',
  'belief.mostly-brown.says':
    'A heap need not be 80 % brown: published advice runs from equal volumes of green and brown to 2 of brown to 1 of green.',
  'belief.acid-coffee.says':
    'Coffee grounds are hardly acid: a university extension service gives them a pH of 6.5 to 6.8, the acid having gone into the drink.',
  'belief.coffee-one-fifth.says':
    'At most 20 % grounds is one university’s advice for a heap, told second hand, and another trial ran 25 %: go by the mix, and break up their mats. As a mulch 13 mm at most, off the stems.',
  'belief.lime-cures-smell.says':
    'Lime or ash does not cure the smell, it drives the ammonia off: from pH 7.5 to 9.0 manure lost 9.8 % more of its nitrogen. Dry brown stuff mixed in does cure it.',
  'belief.acid-shavings.says':
    'Where shavings or sawdust stop growth it is seldom acidity: above a C:N of 20 they take nitrogen from the soil, and sawdust may have 500. Compost them first, and measure the pH before liming.',
  'belief.acid-needles-and-oak.says':
    'Pine needles mixed into field soil at a usual rate did not make it more acid in 12 months, in pots they did somewhat; measured for oak leaves nothing was found.',
  'belief.no-citrus-no-onion.says':
    'Citrus peel rots like other scraps: mixtures with 40 to 60 % orange peel were composted and then worked by worms. Against onions nothing published was found.',
  'belief.eggshells-lime.says':
    'Eggshells lime the soil only when ground: ground ones worked over 4 years, later than farm lime; hand-crushed ones hardly change anything.',
  'belief.starter-needed.says':
    'No heap needs a starter, for the organisms are on the stuff already; finished compost is worth having in a heap of sour food scraps.',
  'belief.soap-wets-leaves.says':
    'Soap in the water for waxy leaves is common practice, no source: shred them, wet them as you fill, and again the next day.',
  'belief.nine-cubic-feet.says':
    '9 ft³ (0.25 m³) is mostly 3 x 3 x 3 ft with the height left out, and that is 27 ft³ (0.76 m³): published least sizes run from there to 1 m³, and for winter 5 x 5 x 5 ft.',
  'belief.small-never-heats.says':
    'A small heap can heat where the air is warm and the stuff rich: 0.64 m³ read 75 °C (167 °F) in air of 33 to 35 °C. In the cold it loses its heat.',
  'belief.turn-daily.says':
    'A heap works without daily turning: turned every 5 or every 20 days manure and husk ended at much the same C:N, 12 to 14; bins turned most lost most carbon and nitrogen.',
  'belief.two-weeks-after-manure.says':
    'Two weeks’ rest after raw manure may do for burning, not for germs: the organic rule of the United States wants 120 days to harvest where the crop touches soil, 90 days where not.',
  'belief.steaming-is-compost.says':
    'A stack that steams is raw manure until its log says otherwise: 55 to 77 °C (131 to 170 °F) for 15 days with 5 turns, or for 3 days closed or static with air.',
  'belief.tea-for-days.says':
    'Tea gains nothing after 48 h, and in 72 h with 1 % molasses germs grew in it; with none or 0.2 % they did not. Use it within hours of stopping the air.',
  'belief.air-makes-tea-safe.says':
    'Air does not clean a tea: with food added, E. coli O157:H7 and Salmonella grew in aerated tea too, and to more. Keep fed tea off what is eaten.',
  'belief.balanced-feed-for-chips.says':
    'Chips lack nitrogen and nothing else that counts here, so nitrogen alone will do (common practice, no source): half first, mixed in and watered.',
  'belief.ash-whenever.says':
    'Wood ash is a lime that works fast: none at all on soil of pH 6.5 to 7 or above, so measure first.',
  'belief.frozen-is-spoilt.says':
    'A frozen heap is a store and goes on when it thaws (common practice, no source): cover each pail with dry leaves, do not turn it, and be ready to mix at the thaw.',
  'belief.more-compost-is-better.says':
    'A bed can have too much compost: one at 30 % organic matter burned its peppers, and phosphorus and salts pile up. Test the soil first.',
  'belief.finding.against': 'what is published speaks against it',
  'belief.finding.partly': 'partly so',
  'belief.finding.unknown': 'nothing published was found for or against it',
  'belief.evidence.strong': 'the evidence is strong',
  'belief.evidence.fair': 'the evidence is fair',
  'belief.evidence.weak': 'the evidence is weak',
  'belief.evidence.none': 'common practice, no source',
  'belief.manure-a-hundred-feet.says':
    'That manure must lie 100 ft from a well is law in some places and not in others: printed distances run from 100 ft (30 m) in Nevada and Indiana and 150 ft (46 m) in Michigan to 200 ft (61 m). Ask your own county or water authority. Test the well for coliforms and nitrate now, after rain and yearly, and look at its head: until it is tested, give infants no water of it.',
  'belief.rats-want-meat.says':
    'Rats come to a bin without meat or dairy too (common practice, no source). Stop the food first, trap, look for holes and a nest, and empty it; then set it on mesh of 13 mm or finer, under and all round, and cover every feed 5 to 10 cm deep. Wear gloves, for droppings carry disease, and follow your bylaw on rats and poison.',
} as const;

/** A belief as it is held, and what else a person may call it when looking it up. */
export interface BeliefHeld {
  readonly held: string;
  /** Separated by commas. */
  readonly words: string;
}

/** Every belief by its id. Only lists show these: they stand apart from the messages so that a phone need not load them. */
export const beliefsHeldEn: Readonly<Record<string, BeliefHeld>> = {
  'grass-alone': {
    held: 'Grass alone never works; or grass alone is all a heap needs.',
    words: 'lawn clippings, only grass, nothing but grass',
  },
  'mostly-brown': {
    held: 'At least 80 % of a heap must be brown.',
    words: 'brown, browns, greens, 80 percent, carbon, ratio',
  },
  'acid-coffee': { held: 'Coffee grounds are acid.', words: 'coffee, grounds, acid, sour, pH' },
  'coffee-one-fifth': {
    held: 'Never more than 20 % coffee grounds in a heap.',
    words: 'coffee, grounds, 20 percent, a fifth, limit',
  },
  'lime-cures-smell': {
    held: 'Lime or wood ash cures a smelly heap.',
    words: 'lime, ash, sweeten, ammonia, smell, stench, sour',
  },
  'acid-shavings': {
    held: 'Pine shavings and sawdust make soil acid, so that nothing grows.',
    words: 'shavings, sawdust, pine, litter, acid, lock up, rob nitrogen, pH',
  },
  'acid-needles-and-oak': {
    held: 'Pine needles and oak leaves make soil acid.',
    words: 'needles, conifer, pine straw, oak, leaves, tannin, acid, pH',
  },
  'no-citrus-no-onion': {
    held: 'Citrus peel and onions never go on a heap.',
    words: 'citrus, orange, lemon, peel, onion, garlic, worms',
  },
  'eggshells-lime': { held: 'Eggshells lime the soil.', words: 'egg, shells, calcium, lime, pH' },
  'starter-needed': {
    held: 'A heap needs an activator or a starter.',
    words: 'activator, accelerator, starter, inoculant, microbes, ferment, powder',
  },
  'soap-wets-leaves': { held: 'Soap in the water wets waxy leaves.', words: 'soap, detergent, waxy, leaves, wetting' },
  'nine-cubic-feet': {
    held: '9 ft³ is enough for a heap to heat.',
    words: 'size, small, cubic feet, cubic yard, 9 ft3, how big',
  },
  'small-never-heats': {
    held: 'A heap of less than a cubic yard never heats.',
    words: 'size, small, cubic yard, heat, tumbler',
  },
  'turn-daily': {
    held: 'A heap must be turned every day, or every week, to work.',
    words: 'turn, turning, fork, daily, weekly, air',
  },
  'two-weeks-after-manure': {
    held: 'Two weeks’ rest after raw manure is enough.',
    words: 'raw manure, fresh manure, chicken manure, wait, rest, 1 to 2 weeks, harvest',
  },
  'steaming-is-compost': {
    held: 'Manure that has steamed in a stack is compost.',
    words: 'aged manure, rotted manure, steaming, hot, stack, safe',
  },
  'tea-for-days': {
    held: 'Brew compost tea for days, and keep it for days.',
    words: 'tea, brew, molasses, keep, store, days',
  },
  'air-makes-tea-safe': {
    held: 'Air bubbled through tea makes it safe.',
    words: 'tea, brew, aerated, bubbler, salad, leaves, safe',
  },
  'balanced-feed-for-chips': {
    held: 'Wood chips want a balanced fertiliser to rot.',
    words: 'chips, fertiliser, 10-10-10, urea, nitrogen',
  },
  'ash-whenever': { held: 'Wood ash is good for any bed.', words: 'wood ash, fireplace, potash, lime, pH' },
  'frozen-is-spoilt': {
    held: 'A frozen heap is spoilt, and nothing more may go on.',
    words: 'winter, frost, frozen, snow, thaw',
  },
  'more-compost-is-better': {
    held: 'The more compost a bed has, the better.',
    words: 'bed, too much, organic matter, salts, phosphorus, peppers',
  },
  'manure-a-hundred-feet': {
    held: 'The law keeps manure 100 ft from a well.',
    words: 'well, water, distance, setback, nitrate, coliforms, shed, neighbour, manure',
  },
  'rats-want-meat': {
    held: 'Rats come only where meat or dairy goes in.',
    words: 'rats, mice, vermin, nest, bin, mesh, meat, dairy, kitchen scraps',
  },
};
