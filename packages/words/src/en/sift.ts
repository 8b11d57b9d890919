/** Hours at the sieve. */
export const siftEn = {
  'sift.answer.sift': 'Sift it, {volume}: about {low} to {high} hours of one person.',
  'sift.answer.rough': 'Spread it rough: a bed wants no sifted compost. Sifting {volume} takes {low} to {high} hours.',
  'sift.answer.by-use':
    'Sift only what goes to seed and pots, and spread the rest rough: {volume} takes one person {low} to {high} hours.',
  'sift.ways':
    'Shaking a hand sieve {hand} to {handMost} hours, over a sloped screen {slope} to {slopeMost}: two growers’ own accounts, common practice, no source.',
  'sift.how':
    'Mesh of {mesh} mm. Let it dry first, for wet compost clogs, yet keep it damp enough not to dust. Spare your back.',
  'cli.sift': 'How many hours it takes to sift compost, and whether it is worth it.',
  'cli.sift.volume': 'how much: 500L, 1yd3',
  'cli.sift.for': 'what for: seed, pots or bed',
} as const;
