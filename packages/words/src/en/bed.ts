/** What goes on beds. */
export const bedEn = {
  'budget.answer.short':
    'The bed of {area} wants about {need} of nitrogen this season and has about {supplied}: give about {short} more.',
  'budget.answer.robbed':
    'The bed of {area} wants about {need} of nitrogen this season, and what was put on takes about {robbed} out of the soil: give about {short}.',
  'budget.answer.doubtful':
    'The bed of {area} wants about {need} of nitrogen this season and has about {supplied}. Whether that is enough can’t be told: {chance}.',
  'budget.answer.enough':
    'The bed of {area} wants about {need} of nitrogen this season and has about {supplied}. That is enough: {chance}.',
  'budget.answer.over':
    'The bed of {area} wants about {need} of nitrogen this season and has about {supplied}, more than twice as much: put on nothing more.',
  'budget.answer.none-wanted': 'The bed of {area} wants no nitrogen put on this season.',
  'budget.range': 'Wanted is {need}, supplied {supplied}; it is that wide because sources and gardens differ.',
  'budget.range.robbed': 'Wanted is {need}, locked up {robbed}; it is that wide because sources and gardens differ.',
  'budget.phosphate.short':
    'Phosphorus (as P₂O₅): wants about {need}, has about {supplied}; about {short} is short. Enough: {chance}.',
  'budget.phosphate.doubtful':
    'Phosphorus (as P₂O₅): wants about {need}, has about {supplied}; whether that is enough can’t be told: {chance}.',
  'budget.phosphate.enough': 'Phosphorus (as P₂O₅): wants about {need}, has about {supplied}. Enough: {chance}.',
  'budget.phosphate.over': 'Phosphorus (as P₂O₅): wants about {need}, has about {supplied}, more than twice as much.',
  'budget.phosphate.untested':
    'Phosphorus (as P₂O₅): harvests want about {need}, what was put on brings {supplied}. What the soil holds nobody tested, so whether it is short is not known.',
  'budget.phosphate.none-wanted': 'Phosphorus: none is wanted.',
  'budget.potash.short':
    'Potassium (as K₂O): wants about {need}, has about {supplied}; about {short} is short. Enough: {chance}.',
  'budget.potash.doubtful':
    'Potassium (as K₂O): wants about {need}, has about {supplied}; whether that is enough can’t be told: {chance}.',
  'budget.potash.enough': 'Potassium (as K₂O): wants about {need}, has about {supplied}. Enough: {chance}.',
  'budget.potash.over': 'Potassium (as K₂O): wants about {need}, has about {supplied}, more than twice as much.',
  'budget.potash.untested':
    'Potassium (as K₂O): harvests want about {need}, what was put on brings {supplied}. What the soil holds nobody tested, so whether it is short is not known.',
  'budget.potash.none-wanted': 'Potassium: none is wanted.',
  'budget.since': '{seasons, plural, =0 {put on this season} =1 {put on a season ago} other {put on # seasons ago}}',
  'budget.put.gives': '{stuff} ({mass}), {since}: about {nitrogen} of its {all} of nitrogen this season ({range}).',
  'budget.put.locks':
    '{stuff} ({mass}), {since}: it locks up about {nitrogen} of nitrogen this season ({range}), though it holds {all}.',
  'budget.put.none': '{stuff} ({mass}), {since}: no nitrogen to speak of.',
  'budget.before.gives': '{crop} before: about {nitrogen} of nitrogen ({range}).',
  'budget.before.locks': '{crop} before: it may lock up about {nitrogen} of nitrogen ({range}).',
  'budget.soil': 'Organic matter above 3 %, which guides have in their rates: about {nitrogen} of nitrogen ({range}).',
  'budget.before.alfalfa': 'alfalfa, a good stand',
  'budget.before.alfalfa-thin': 'alfalfa, half a stand',
  'budget.before.dry-beans': 'drying beans',
  'budget.crop': '{crop}: wants about {nitrogen} of nitrogen ({range}).',
  'budget.first-weeks.gives': '{stuff} lets go about {nitrogen} of that in its first 28 days ({range}).',
  'budget.first-weeks.locks': '{stuff} locks up about {nitrogen} in its first 28 days ({range}).',
  'budget.later': '{stuff} lets go about {second} in its second year and {third} in its third.',
  'budget.spread.some':
    'Of {stuff}, {sources, plural, one {one published series has} other {# published series have}} {low, number} to {high, number} % of the nitrogen free in the first year.',
  'budget.spread.locks':
    'Of {stuff}, with its carbon, {sources, plural, one {one published series has} other {# published series have}} {low, number} to {high, number} % of the nitrogen free in the first year; below 0 it is locked up.',
  'budget.spread.none':
    'Of {stuff}, by every source, nothing is free in the first year: its carbon takes more than it lets go.',
  'budget.spread.same':
    'Of {stuff}, {sources, plural, one {one published series has} other {# published series have}} {low, number} % of the nitrogen free in the first year.',
  'budget.source':
    '{stuff}: {low, number} to {high, number} % of all its nitrogen in the first year ({who}: {place}; {basis}{recalled, plural, =0 {} other {; recalled, not read}}).',
  'budget.source.one':
    '{stuff}: {low, number} % of all its nitrogen in the first year ({who}: {place}; {basis}{recalled, plural, =0 {} other {; recalled, not read}}).',
  'budget.basis.original-organic': 'printed of the organic nitrogen, with the ammonium apart',
  'budget.basis.total': 'printed so',
  'budget.basis.remaining': 'printed of what is left each year',
  'budget.basis.nitrogen-line': 'by its nitrogen content',
  'budget.basis.ratio-line': 'by its C:N',
  'budget.lock-up':
    'Dug in, its carbon locks up about {season} of nitrogen on {each} this season ({range}); if all of it rotted, up to about {most}.',
  'budget.lock-up.none':
    'Left on top it locks up next to nothing. Dug in, it could take up to about {most} of nitrogen from {each}.',
  'budget.phosphorus-years':
    'The phosphorus put on this season is that of about {years, number} harvests ({low, number} to {high, number}).',
  'budget.salts':
    'Salts come to about {salts, number} dS/m ({low, number} to {high, number}) in a saturated extract; {crop} bear {most, number}. Under it: {chance}.',
  'budget.salts.plain':
    'Salts come to about {salts, number} dS/m ({low, number} to {high, number}) in a saturated extract. No limit is published for these crops.',
  'budget.salts.guessed':
    'Nobody measured the salts of this soil, so that is a first estimate. Ask the lab by which method: 1:5 or 1:2 of soil to water reads lower than a saturated extract.',
  'budget.pH.untested': 'These crops want a pH of {low, number} to {high, number}; nobody measured it.',
  'budget.pH.below': 'The pH is below the {low, number} to {high, number} that these crops want.',
  'budget.pH.within': 'The pH is within the {low, number} to {high, number} that these crops want.',
  'budget.pH.above': 'The pH is above the {low, number} to {high, number} that these crops want.',
  'budget.pH.apart':
    'These crops have no pH in common: one wants {low, number} or more, another {high, number} or less.',
  'budget.lime': 'Lime came with it, as much as about {lime} of pure limestone on {each}.',
  'budget.cover':
    'That gap is about {mass} ({range}) of {grade}, which brings {phosphate} of P₂O₅ and {potash} of K₂O as well.',
  'budget.cover.plain': 'That gap is about {mass} ({range}) of {grade}.',
  'budget.cover.price': 'Its nitrogen costs {price, number} a kilogram.',
  'budget.untested': 'Not tested: {what}. That is why the answer is so wide.',
  'budget.untested.phosphorus': 'phosphorus',
  'budget.untested.potassium': 'potassium',
  'budget.untested.organic-matter': 'organic matter',
  'budget.untested.pH': 'pH',
  'budget.untested.salts': 'salts',
  'budget.unknown-crops': 'Left out, because the tables have no such crop: {crops}.',
  'budget.assumed':
    'Nobody said when the fresh stuff was worked in, so within a day is taken; later, it loses more ammonia into the air.',
  'budget.by-tables':
    'Counted as the tables have such compost, because not all is known of what went into it: {heaps}.',
  'budget.left-out': 'Left out, because nobody said how much it was: {stuff}.',
  'budget.advice.lock-up':
    'Give nitrogen now, in two halves, and again when leaves pale; carbon that rots in the soil takes it from the plants. Rule out salts and weed-killer first: they yellow or twist leaves as well.',
  'budget.advice.leave-on-top':
    'Leave such stuff on top as a mulch and don’t dig more of it in; part it where you sow, and keep what is over dry for the heap.',
  'budget.advice.compost-alone':
    'This bed is mostly compost. Test it before anything goes on: phosphorus, potassium and salts pile up in such beds. Fill it up with garden soil, not with more compost; if leaves pale, nitrogen alone may be wanted.',
  'budget.advice.phosphorus-stop':
    'The test says that phosphorus is too high already, and what was put on brings more: put on nothing more that holds it until a new test says so, and feed nitrogen alone.',
  'budget.advice.phosphorus-builds':
    'That is years of phosphorus in one go: put it on once, and then nothing that holds phosphorus until a test says so.',
  'budget.advice.nitrogen-only':
    'Only nitrogen is short: close the gap with something that brings no phosphorus, such as a legume cover, clippings or a nitrogen meal.',
  'budget.advice.salts-wash':
    'It is likely too salty for the tenderest crop: put on half as much, or let rain or a deep watering wash it before you sow.',
  'budget.advice.raw-manure':
    'It is raw manure: count 120 days from working it in to the harvest of what touches the soil, 90 for what does not; two weeks of rest make nothing safe. See `loamwright safe harvest`.',
  'budget.advice.on-top-burns':
    'Work it in within a day: left on top it loses ammonia into the air and burns what it touches.',
  'budget.advice.sandy-washes':
    'Sand holds no nitrogen: put nothing fresh on in autumn without a crop that takes it up over winter. Compost it from spring to autumn, or work it in after harvest and sow rye on it; keep it well away from water.',
  'budget.advice.compost-first':
    'Compost it first until its C:N is under 20, or lay it thin, {thinLow} to {thinHigh}. Measure the pH before any lime: what stops growth is seldom acid, but nitrogen locked up, salts or ammonia.',
  'budget.advice.deep':
    'It is a thicker layer than beds usually get at once: {yearLow} to {yearHigh} a year, or up to {newBed} once on a new bed.',
  'budget.advice.pH-below': 'Lime is likely wanted; how much is worked out from a test.',
  'budget.advice.pH-above': 'No lime and no ash here.',
  'budget.advice.pH-apart': 'Grow them on beds apart.',
  'budget.advice.test-first':
    'Test the soil first: without a test nobody knows whether phosphorus and potassium are wanted at all.',
};
