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
  'cold.reason.food': 'what can still be told apart in it',
  'cold.reason.weather': 'the weather',

  'cold.check.size': 'Measure how wide and how high it is; 3 × 3 × 3 ft (0.9 m each way) is the least.',
  'cold.check.squeeze': 'Squeeze a handful from the middle: a few drops are right; dust is too dry, a stream too wet.',
  'cold.check.what-went-in': 'Say what went in, how much of each, and when; C:N 25 to 40 is right.',
  'cold.check.smell': 'Smell a handful from the middle: sour or rotten means no air.',
  'cold.check.fresh-food':
    'Look what can still be told apart: scraps or green stuff mean food is left; only leaves, straw and card mean it is spent.',

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
  'cold.act.leave-to-cure':
    'Feed it no more and begin a second heap. Wet this one if it is dry and turn it once: if it stays under about {curing} it is curing, and is left alone.',
  'cold.act.leave-to-cure.dry':
    'Feed it no more and begin a second heap. Wet this one and turn it once: if it stays under about {curing} it is curing, and is left alone.',
  'cold.act.leave-to-cure.moist':
    'Feed it no more and begin a second heap. Turn this one once: if it stays under about {curing} it is curing, and is left alone.',
  'cold.act.leave-to-cure.turned':
    'Feed it no more and begin a second heap. It was turned and stays under about {curing}: it is curing. Leave it alone, and keep it damp.',
  'cold.act.cover': 'Do not turn it. Cover it thickly with straw or leaves, walls too, and wait for milder days.',

  'cold.note.smaller-than-least':
    'It is about {percent} % of the smallest heap in print, {least}; so small a heap seldom gets hot.',
  'cold.note.browns-need-months': 'Whole leaves, straw and card want months more (common practice, no source).',
  'cold.note.proves-nothing':
    'No reading of {hot} was told, so nothing is shown of germs or seeds: a slow heap. Keep it off what is eaten raw, and expect seeds to sprout.',
  'cold.note.spent':
    'That soft stuff gone and leaves whole means spent food, and that a heap cures which a turn does not warm past about {curing}, is common practice, no source.',

  'cold.left': 'What can still be told apart in it?',
  'cold.left.not-said': 'nobody looked',
  'cold.left.scraps': 'scraps or greens',
  'cold.left.browns': 'leaves, straw or card only',
  'cold.left.nothing': 'nothing: all crumbs',
} as const;
