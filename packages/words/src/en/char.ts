/** Charcoal on a bed or in a mix. */
export const charEn = {
  'char.answer.unasked-bed':
    'Begin with {least} to {most} of charcoal on {area}: {low} to {high}, {share} to {shareMost} % of the worked layer. Take the low end first.',
  'char.answer.unasked-mix': 'Put {least} to {most} of charcoal in {mix} of mix: {share} to {shareMost} % of it.',
  'char.answer.not-here':
    'None: at pH {most} and above this soil is sweet enough, and charcoal with its ash makes it sweeter.',
  'char.answer.bed': '{charcoal} of charcoal on {area} is {each}: {share} % of the worked layer.',
  'char.answer.mix': '{charcoal} of charcoal in {mix} of mix is {share} % of it.',
  'char.ways': 'That is {rate} ({range}), {cover}, {mass} % of the dry mass of the worked soil.',
  'char.stands.below':
    'Trials did best at {trials}; less can still lift a season’s crop, and more can follow in other years.',
  'char.stands.within': 'Trials did best at {trials}: it is within that.',
  'char.stands.above': 'Trials did best at {trials}: it is above that, so spread it further or over years.',
  'char.stands.unasked':
    'Common practice, no source: a columnist’s figure. Trials did best at {trials}, on coarse soil.',
  'char.mix.below': 'Mixes hold {low} to {high} % (common practice, no source): it is below that.',
  'char.mix.within': 'Mixes hold {low} to {high} % (common practice, no source): it is within that.',
  'char.mix.above': 'Mixes hold {low} to {high} % (common practice, no source): it is above that.',
  'char.mix.unasked': 'Common practice, no source.',
  'char.darkEarth':
    'A dark-earth bed is made with about {share} % by volume (common practice, no source): here {litres}, {rate}. What is published of old dark earths is what they hold, not a recipe; of potsherds and fired clay no dose and no gain is published.',
  'char.darkEarth.over': 'That fifth is above what trials did best at: a custom, not a dose that was tried.',
  'char.note.uncharged':
    'Charge it first: raw charcoal in poor sand cut growth to {grown} % of the control in a published trial.',
  'char.note.test-pH': 'Test the pH: keep it under {most}, for the ash in charcoal is lime.',
  'char.note.nearly-too-sweet': 'The soil is sweet already: stop before pH {most}, and sieve the ash out.',
  'char.note.sand': 'Sand gains most: available water rose by about {water} % of itself over all soils in the trials.',
  'char.note.clay': 'On clay expect less gain than on sand; it opens the soil, and so does compost.',
  'char.charge':
    'To charge it: {nitrogen} of nitrogen, about {urine} of fresh urine of your own household, or {compost} of finished compost in its place; keep it wet for {low} to {high} weeks (common practice, no source).',
  'char.ash': 'Sieve the ash out: the rest stands for about {limestone} of ground limestone ({range}).',
  'char.make':
    'Never make it of treated, painted or glued wood. Wet it before you crush it. Work it in damp and on a still day. Ask first whether burning is allowed; a bought kiln wants its maker’s and the fire service’s rules.',
  'cli.bed.char': 'How much charcoal goes on a bed or into a mix, and what charges it.',
  'cli.bed.char.charcoal': 'how much there is: 40L, 10gal; left out, what to begin with',
  'cli.bed.char.area': 'area of the bed; 10 m² if not said',
  'cli.bed.char.depth': 'how deep it is worked in; 20 cm if not said',
  'cli.bed.char.mix': 'a mix of so much in place of a bed: 100L',
  'cli.bed.char.soil': 'sand, loam or clay',
  'cli.bed.char.ph': 'pH of the soil',
  'cli.bed.char.weighs': 'what a litre of it weighs dry, in grams: 250',
  'cli.bed.char.charged': 'it was charged already',
} as const;
