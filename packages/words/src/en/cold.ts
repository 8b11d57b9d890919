/** Why a heap stays cold, and what to do. */
export const coldEn = {
  'cold.answer.check-fire': 'This is not a cold heap: it may be on fire. Look to that first.',
  'cold.answer.it-heats':
    'At {temp} it is at work, and not to be called cold. Leave it alone and read it again in a few days.',
  'cold.answer.look':
    'By what is known it could be several things; likeliest it is {cause}, {odds}. A look of a minute tells more:',
  'cold.answer.act': 'Likeliest it is {cause}, {odds}.',
  'cold.odds': '{tenths, plural, =0 {less than 1 in 10} other {about # in 10}}',
  'cold.also': 'It may also be {causes}.',
  'cold.one': '{cause} ({odds})',
  'cold.reasons': 'What speaks for it: {reasons}.',
  'cold.evidence':
    'The odds are the project’s own judgement around published thresholds: nobody has counted why heaps stay cold.',

  'cold.cause.young': 'too young',
  'cold.cause.too-dry': 'too dry',
  'cold.cause.too-wet': 'too wet',
  'cold.cause.too-little-air': 'short of air',
  'cold.cause.little-nitrogen': 'short of nitrogen',
  'cold.cause.too-small': 'too small to keep its heat',
  'cold.cause.spent': 'spent, with its easy food gone',
  'cold.cause.cold-weather': 'chilled by the weather',

  'cold.reason.size': 'its size',
  'cold.reason.squeeze': 'the squeeze',
  'cold.reason.ratio': 'the carbon and nitrogen of what went in',
  'cold.reason.laid-moisture': 'how wet the stuff was that went in',
  'cold.reason.air-space': 'how close the stuff lies that went in',
  'cold.reason.age': 'its age',
  'cold.reason.turned': 'when it was turned',
  'cold.reason.was-hot': 'how hot it has been',
  'cold.reason.smell': 'the smell',
  'cold.reason.food': 'whether food is left in it',
  'cold.reason.weather': 'the weather',

  'cold.check.size': 'Measure how wide and how high it is; 3 × 3 × 3 ft (0.9 m each way) is the least.',
  'cold.check.squeeze': 'Squeeze a handful from the middle: a few drops are right; dust is too dry, a stream too wet.',
  'cold.check.what-went-in': 'Say what went in, how much of each, and when; C:N 25 to 40 is right.',
  'cold.check.smell': 'Smell a handful from the middle: sour or rotten means no air.',
  'cold.check.fresh-food': 'Look whether scraps or green stuff can still be told apart.',

  'cold.act.check-fire': 'Keep back, do not dig into it, and read a second place from outside.',
  'cold.act.leave': 'Leave it alone.',
  'cold.act.look': 'Look first, before you turn or add anything.',
  'cold.act.wait': 'Wait: a heap may take a week. Read the core again tomorrow.',
  'cold.act.water':
    'Fork it over and pour on about {water} ({range}) as you go, not from the top; stop when a handful drips.',
  'cold.act.water.per':
    'Fork it over and pour on about {water} ({range}) for each cubic metre as you go, not from the top; stop when a handful drips.',
  'cold.act.turn-with-dry':
    'Fork about {mass} ({range}) of {material} through it, or any dry stuff, and cover it against rain.',
  'cold.act.turn-with-dry.per':
    'Fork about {mass} ({range}) of {material} for each cubic metre through it, or any dry stuff, and cover it against rain.',
  'cold.act.turn': 'Turn it once, shaking it loose, with coarse stuff through it where it packs.',
  'cold.act.mix-in-brown':
    'Fork dry brown stuff through it (straw, leaves, torn card) until it stings no more, and cap it. No lime and no ash.',
  'cold.act.add-nitrogen':
    'Turn about {mass} ({range}) of {material} through it, or manure; {nitrogen} of nitrogen does the same. Give half, and the rest a week later.',
  'cold.act.add-nitrogen.per':
    'For each cubic metre turn about {mass} ({range}) of {material} through it, or manure; {nitrogen} of nitrogen does the same. Give half, and the rest a week later.',
  'cold.act.enlarge': 'Build it up to {enough} at least, or put two together; straw walls help a small one.',
  'cold.act.enlarge.per': 'Build it up to 3 × 3 × 3 ft (0.9 m each way) at least, or put two together.',
  'cold.act.leave-to-cure': 'Turn it once at the right dampness: if it stays under about {curing}, leave it to cure.',
  'cold.act.cover': 'Do not turn it. Cover it thickly with straw or leaves, walls too, and wait for milder days.',

  'cli.why': 'Why a heap does not heat: the likeliest cause, what to look at, and one act. Nothing need be known.',
  'cli.why.heap': 'a heap of the daybook; left out, the options alone are believed',
  'cli.why.size': 'its size: 1.2x1.2x1m, 0.76m3, 1yd3',
  'cli.why.reading': 'what the core reads, such as 24C',
  'cli.why.in': 'what went in, such as straw=3bales "grass=2 barrows"',
  'cli.why.built': 'when it was built, such as "10 days ago"',
  'cli.why.turned': 'when it was last turned',
  'cli.why.hottest': 'the hottest it has ever read',
  'cli.why.food': 'whether scraps or greens can still be told apart in it: yes or no',
} as const;
