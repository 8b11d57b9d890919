/** Stands in for the words of the command line (`cli.*`), which no page says: they stay out of what a phone loads first. */
export const cliEn = {};
