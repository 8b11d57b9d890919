/** What may go into a heap, and the test with beans. */
export const inputsEn = {
  'inputs.verdict.yes': 'Yes: {stuff} may go into {heap}.',
  'inputs.verdict.wait': 'Not yet: leave {low} to {high} mowings lying, or wait {weeksLow} to {weeksHigh} weeks.',
  'inputs.verdict.test-first': 'Not before a test with beans: loamwright safe beans tells how.',
  'inputs.verdict.not-here': 'Not into {heap}: {stuff} only into one that is hot in every part, with a log.',
  'inputs.verdict.never': 'Never into a heap: {stuff}.',
  'inputs.heap.hot': 'a hot, logged heap',
  'inputs.heap.slow': 'a slow heap',
  'inputs.heap.fed': 'a bin that is fed by and by',
  'inputs.heap.worms': 'a worm bed',
  'inputs.because': 'Because: {reason}.',
  'inputs.sprayed.nothing': 'Nothing was sprayed.',
  'inputs.sprayed.fertiliser': 'Fertiliser alone is no reason to wait.',
  'inputs.sprayed.weed-killer':
    'After a weed-killer the first two to three mowings, or those of three to four weeks, stay on the lawn.',
  'inputs.sprayed.insecticide-fungicide': 'After an insecticide or fungicide wait at least a week.',
  'inputs.sprayed.persistent':
    'Clopyralid, aminopyralid and picloram pass through animals and heaps: neither heat nor time clears them.',
  'inputs.sprayed.unknown': 'Nobody knows what was used: ask what and when, and test with beans.',
  'inputs.label': 'The label rules: it may forbid any use of the clippings or the manure.',
  'inputs.disputed':
    'Experts differ: some let vines that look clean into a heap that truly heats, others only dig them in elsewhere; tubers never. In a year of outbreaks local notices come first.',
  'inputs.pets':
    'Droppings of plant-eaters may go in; those of dogs and cats never. Bury them {deep} deep under {cover} of soil away from food, or flush them. Pregnant women keep away from cat litter.',

  'beans.how.1': 'Take many small shovelfuls from deep in it, in different places, and mix them.',
  'beans.how.2':
    'Fill {low} to {high} pots of {small} to {large} with {parts, plural, one {# part} other {# parts}} of it to one of potting mix, and as many with potting mix alone.',
  'beans.how.3':
    'Sow {seeds, plural, one {# pea or bean} other {# peas or beans}} in each, on saucers that stand apart.',
  'beans.how.4':
    'After {low} to {high} weeks, at three sets of true leaves, look at the newest: cupped, curled or twisted is the sign.',
  'beans.meanwhile':
    'Until then, and where it is found: don’t share it, don’t dig it in where beans, peas, tomatoes, potatoes or lettuce grow. Grass and maize bear it.',
  'beans.verdict.clear': 'Clear, as far as such a test shows: the beans grew like the controls.',
  'beans.verdict.contaminated':
    'Weed-killer is in it: the beans are hurt and the controls are not. Neither heat nor time in a heap clears it.',
  'beans.verdict.perhaps':
    'It can’t be told: too few pots, or too strong a mix. Salt or unripe compost hurts beans a little as well. Do it again with two parts to one, and enough pots.',
  'beans.verdict.void':
    'The test is void: the controls are hurt as well, so the seed, the mix or the place is at fault. Do it again.',
  'beans.verdict.too-soon': 'Too soon: wait for three sets of true leaves, two to three weeks.',
  'beans.kept': 'Tested with beans on {day}: {verdict}',
  'beans.shows': 'It shows that something is there, not which one or how much.',
  'beans.note': 'If beans grow well and tomatoes still curl, look for spray that drifted.',
} as const;
