/** What a soil test says. */
export const soilTestEn = {
  'soil.element.phosphorus': 'phosphorus',
  'soil.element.potassium': 'potassium',
  'soil.class.low': 'low',
  'soil.class.medium': 'medium',
  'soil.class.optimum': 'enough',
  'soil.class.high': 'high',
  'soil.class.excessive': 'far too high',
  'soil.answer.low': '{element}, {value}: low. It may go on, as far as nitrogen lets it.',
  'soil.answer.medium': '{element}, {value}: medium. It may go on, as far as nitrogen lets it.',
  'soil.answer.optimum': '{element}, {value}: enough. Put on what the harvest takes off, no more.',
  'soil.answer.high': '{element}, {value}: high. Put none on for some years.',
  'soil.answer.excessive':
    '{element}, {value}: far too high. Put on no compost or manure; feed nitrogen alone, and keep soil and run-off from water.',
  'soil.answer.ask':
    '{element}, {value}: it can’t be judged yet. Ask the lab for {asked}: figures of two methods can’t be compared. Until you know, put on no compost or manure where the lab calls it above optimum; feed nitrogen alone.',
  'soil.answer.no-table':
    '{element}, {value}: no published table for that method and unit is known here. Ask the lab which class it is.',
  'soil.ask.method': 'the method (Mehlich-3, Bray-1, Olsen …)',
  'soil.ask.unit': 'the unit (ppm, mg/L, lb/acre)',
  'soil.table': '{class} by {source}',
  'soil.tables':
    'The tables of that method: {tables}. Where they differ the higher is taken, as too much does the harm.',
  'soil.run-down':
    'Harvests alone lower it by 2 to 4 ppm a year: to {to} it takes about {least} to {most} years with none put on.',
  'soil.again':
    'Sample again in {least} to {most} years, with a clean plastic pail: a galvanised one brings zinc. Don’t add sulphur or acids to lower anything.',
} as const;
