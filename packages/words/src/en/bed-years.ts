/** A bed over the years. */
export const bedYearsEn = {
  'years.answer.up':
    'In {years} years organic matter goes from about {start} % to about {end} %: it rises in {met} of {of} cases.',
  'years.answer.down':
    'In {years} years organic matter goes from about {start} % to about {end} %: it falls in {met} of {of} cases.',
  'years.answer.same':
    'In {years} years organic matter goes from about {start} % to about {end} %; whether it rises or falls can’t be told ({met} of {of} cases rise).',
  'years.range': 'At the end it is {low} to {high} %; with nothing brought on it would be {bare} to {bareHigh} %.',
  'years.course': 'Year by year: {points}.',
  'years.point': '{year}: {pct} %',
  'years.kept': 'Of {brought} of carbon brought on, about {kept} is still there ({share} %); the rest rots away.',
  'years.water':
    'It then holds about {gain} litres of water for plants more on each square metre than with nothing brought on ({range}), of {all} in all; a survey of measurements would say {low} to {high}.',
  'years.water.none': 'For water it makes no difference that counts: under half a litre on each square metre.',
  'years.note.not-tested': 'Organic matter was not tested: a test narrows this most.',
  'years.note.texture-guessed': 'Nobody said what soil it is: sandy loam to clay loam were taken (--texture).',
  'years.note.climate-guessed': 'Nobody said how warm the place is: 4 to 17 °C as the mean of a year (--air).',
  'years.note.charcoal':
    'Charcoal goes by its own slow decay, and stands in the organic matter as laboratories count it; its water is not in these figures.',
  'years.note.compost-not-in-trial':
    'The trial behind the model had straw, manure and sludge, no compost: compost is taken between manure and peat.',
  'years.note.beyond-water': 'Above 8 % organic matter the equations of water end: no more water is told beyond that.',
  'years.note.peaty': 'So much organic matter is no mineral soil: take these figures as a direction only.',
  'years.unharvested.phosphate':
    'Phosphorus (P₂O₅): about {brought} comes on each year and no harvest was named: {net} in {years} years.',
  'years.unharvested.potash':
    'Potassium (K₂O): about {brought} comes on each year and no harvest was named: {net} in {years} years; rain may wash some of it down.',
  'years.phosphate':
    'Phosphorus (P₂O₅): about {brought} comes on each year and harvests take about {taken}: {net} in {years} years.',
  'years.potash':
    'Potassium (K₂O): about {brought} comes on each year and harvests take about {taken}: {net} in {years} years; rain may wash some of it down.',
  'years.net.builds': '{kg} builds up ({range})',
  'years.net.falls': 'the soil gives {kg} ({range})',
  'years.net.open': 'whether it builds up can’t be told ({range})',
  'years.harvests': 'That is about {harvests} years of harvests.',
  'years.act.stop': 'The test is high: bring on less or none of what holds it, and let harvests draw it down.',
  'years.act.less': 'The test is at its optimum: no more than harvests take.',
  'years.act.fine': 'That suits the soil.',
  'years.act.more': 'The test is low and falls: bring on more.',
  'years.act.test': 'Have it tested before you go on for years.',
  'years.no-ppm':
    'What a soil test will say then is not foretold: soils bind it differently, and nobody published it for beds.',
  'cli.bed.years': 'A bed under a yearly plan: organic matter, water, phosphorus and potassium years on.',
  'cli.bed.years.crops': 'what is harvested every year, such as kale=10m2',
  'cli.bed.years.put': 'what goes on every year, such as compost=1barrow straw=10kg',
  'cli.bed.years.area': 'area of the bed; that of its crops, or 10 m², if not said',
  'cli.bed.years.depth': 'depth of soil looked at; 25 cm if not said',
  'cli.bed.years.texture': 'sand, loamy-sand, sandy-loam, loam, silt-loam, clay-loam, clay …',
  'cli.bed.years.air': 'mean temperature of the air over a year',
  'cli.bed.years.years': 'years ahead; 20 for organic matter and 10 for phosphorus if not said',
  'cli.bed.years.soil': 'what a soil test said: om=3.5 p=high k=low',
} as const;
