/** Words that every screen and command shares. */
export const coreEn = {
  'chance.hardly': 'hardly ever (0 of {of, number} draws)',
  'chance.underOneInTwenty': 'less than 1 in 20 ({met, number} of {of, number} draws)',
  'chance.inTen': 'about {tenths, number} in 10 ({met, number} of {of, number} draws)',
  'chance.overNineteenInTwenty': 'more than 19 in 20 ({met, number} of {of, number} draws)',
  'chance.nearlyAll': 'all but certainly ({of, number} of {of, number} draws)',
  'mark.seen': 'read in the source',
  'mark.memory': 'from memory, not read again',
  'mark.derived': 'worked out from cited figures',
  'source.commonPractice': 'common practice, no source',
} as const;
