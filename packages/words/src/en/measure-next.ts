/** Which check of a minute is worth making before a mix is laid. */
export const measureNextEn = {
  'measureNext.title': 'What a minute would tell',
  'measureNext.open.squeeze': 'Write the squeeze down',
  'measureNext.open.weigh-bucket': 'Write the weight down',
  'measureNext.open.look-at-chop': 'What is known of it',
  'measureNext.open.count-again': 'Say how much there is',
  'measureNext.first':
    'One minute before you lay it: {check}. With what that tells, C:N, water and air all lie in their reasonable bands about {after, plural, one {once} other {# times}} in a hundred, without it {before, number}.',
  'measureNext.more': 'Next best: {checks}.',
  'measureNext.squeeze': 'squeeze a handful of {material}',
  'measureNext.weigh-bucket': 'weigh a bucket of {material}',
  'measureNext.look-at-chop': 'look how finely chopped your {material} lies',
  'measureNext.count-again': 'count the measures of {material}',
  'measureNext.settle': 'shake down a bucket of the mix and see how far it sinks',
} as const;
