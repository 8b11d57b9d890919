/** Lime or ash for a bed. */
export const limeEn = {
  'lime.answer.none': 'None: {stuff} has no place on this soil. Use it up on paths, or bin it cold.',
  'lime.answer.none-lime': 'None: this soil needs no lime.',
  'lime.answer.none-crop':
    'None: potatoes and what likes it sour want neither lime nor ash. On very sour soil, below about 5, ask your laboratory.',
  'lime.answer.test-first':
    'Test the pH first: none at all at 6.5 or above. Without a test it is a guess, and too much locks up iron and phosphorus.',
  'lime.answer.give': 'Put on {kg} of {stuff} on {area}: {each}.',
  'lime.stuff.limestone': 'ground limestone',
  'lime.stuff.wood-ash': 'clean wood ash',
  'lime.range': 'It may be {range}; the soil wants limestone of {limestone} in all.',
  'lime.by.chart': 'By a chart of pH and texture: a first guess, right within about a half (our own judgement).',
  'lime.by.sikora': 'By the Sikora buffer, Oregon State University 2025.',
  'lime.by.mehlich': 'By the Mehlich buffer, North Carolina.',
  'lime.note.split':
    'In {dressings, plural, one {# dressing} other {# dressings}}, six months apart, worked in before planting.',
  'lime.note.ash-ceiling':
    'More ash would be wanted for the pH, but no more than {low} to {high} in a year: boron and salt set that ceiling.',
  'lime.note.ash-untested':
    'Nobody tested the lime value of this ash, so it is kept to the low end, {low}: a test may let more on.',
  'lime.note.ash-not-here': 'Ash brings scab on potatoes and harms blueberries and their like.',
  'lime.note.texture-guessed': 'Nobody said how heavy the soil is: sandy soil wants less, clay more.',
  'lime.potash': 'It brings about {potash} of potassium (K₂O), {range}: untested ash has 2 to 12 %.',
  'lime.potash.tested':
    'It brings about {potash} of potassium (K₂O) by its test of {pct, number} %; untested ash has 2 to 12 %.',
  'lime.value.tested': 'Its lime value is taken as tested, {pct, number} %; untested ash has 8 to 90 %.',
  'lime.potash.none': 'By its test it holds no potassium, so it brings none, and no salt of it.',
  'lime.salt':
    'Its potassium makes the worked soil about {mixed, number} dS/m saltier ({mixedLow, number} to {mixedHigh, number}, worked out, no trial at this dose), and the top {depth}, raked in only, about {top, number} ({topLow, number} to {topHigh, number}); strawberries and beans bear 1 in all. Work it in, and keep it from seed and seedlings.',
  'lime.salt.trial':
    'In pots limed with ash, salts stood 0.13 to 0.63 dS/m higher after three weeks, and 39 to 69 % lower than that by week 17 (Communications in Soil Science 2018; its rates were not read).',
  'lime.ash.rule':
    'Ashes differ from 8 to 90 % in lime value. Never of coal, treated or painted wood; not on seedlings; a month apart from ammonium, urea or fresh manure. In a heap a light dusting at most.',
  'lime.again': 'Measure the pH again in two years.',
  'cli.bed.lime': 'How much lime or wood ash a bed wants, by its pH.',
  'cli.bed.lime.ph': 'pH of the soil',
  'cli.bed.lime.texture': 'sandy-loam, loam or clay-loam',
  'cli.bed.lime.buffer': 'a lab’s buffer reading: sikora=6.2 or mehlich=6.3',
  'cli.bed.lime.to': 'pH to reach; 6.5 if not said',
  'cli.bed.lime.ash': 'wood ash in place of limestone',
  'cli.bed.lime.value': 'its lime value, % of calcium carbonate',
  'cli.bed.lime.potash': 'tested potassium of the ash, as K₂O: 6%',
  'cli.bed.lime.potassium': 'the same as the element K: 5%',
  'cli.bed.lime.area': 'area of the bed; 10 m² if not said',
  'cli.bed.lime.crops': 'what is to grow there: potatoes, blueberries',
} as const;
