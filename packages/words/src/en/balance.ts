/** Where a year's carbon and nutrients go. */
export const balanceEn = {
  'balance.id.dry': 'dry matter',
  'balance.id.water': 'water',
  'balance.id.carbon': 'carbon',
  'balance.id.nitrogen': 'nitrogen',
  'balance.id.phosphorus': 'phosphorus',
  'balance.id.potassium': 'potassium',
  'balance.answer': 'Of the year’s {in} of nitrogen about {leak} goes {where}; harvests take about {taken}.',
  'balance.answer.nothing': 'Nothing went on heaps or beds, so there is nothing to follow.',
  'balance.where.heap': 'off from the heaps',
  'balance.where.spreading': 'into the air from what lay on the beds',
  'balance.where.beds': 'into the beds beyond what was harvested, some of it on into water and air',
  'balance.act.cover-and-carbon':
    'Cheapest: sheet the heaps and lay more dry stuff with them. Sheeted manure lost 6 % of its nitrogen, turned 33 (Shah et al.); C:N 20 in place of 15 kept a third of the loss (NebGuide G1315).',
  'balance.act.work-in':
    'Cheapest: work fresh stuff in the day it is spread; that alone would have kept about {saved} of nitrogen.',
  'balance.act.spread-less': 'Cheapest: spread less, or grow more on it: the beds get more than the harvests take.',
  'balance.act.none': 'No leak of nitrogen is to be seen.',
  'balance.head.heap': 'heaped → lost in the heap + spread + left over',
  'balance.head.beds': 'spread + straight → lost on the bed + harvested + stays',
  'balance.row.heap': '{what}: {heaped} → {lost} + {spread} + {left}',
  'balance.row.beds': '{what}: {spread} + {straight} → {lost} + {taken} + {stays}',
  'balance.left.there': 'About {left} of dry compost should be there still.',
  'balance.left.none':
    'More compost was spread than the heaps can come to, by about {left} of dry matter: something is not written down.',
  'balance.left.even': 'What was spread fits what the heaps come to.',
  'balance.note.water': 'Water that is lost is only what the compost does not hold: nothing predicts it.',
  'balance.note.stays':
    'What stays in the beds is a remainder: how much of it leaches or goes to the air nobody measured here.',
  'balance.note.range':
    'Nitrogen lost in the heaps may be {low} to {high}; what stays in the beds {bedsLow} to {bedsHigh}.',
  'cli.bed.balance': 'Where a year’s carbon, nutrients and water go, from scrap to crop.',
  'cli.bed.balance.heaped': 'what went on heaps in the year, as for mix',
  'cli.bed.balance.straight': 'what went on beds straight: hen-manure=2barrows',
  'cli.bed.balance.spread': 'compost that was spread from the heaps: 4barrows',
  'cli.bed.balance.crops': 'what was harvested, by area: kale=12m2',
  'cli.bed.balance.after': 'days until what went on straight was worked in',
  'cli.bed.balance.mulch': 'what went on straight was left on top',
} as const;
