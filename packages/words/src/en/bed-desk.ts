/** The commands about beds. */
export const bedDeskEn = {
  'cli.bed': 'How much goes on a bed, and what it does there.',
  'cli.bed.budget': 'What the crops of a bed want, what they have, and what is short or too much.',
  'cli.bed.budget.crops': 'crops with their area, such as kale=10m2 leeks=5m2',
  'cli.bed.budget.bed': 'a bed of the daybook: its area, what was sown and spread, its soil tests',
  'cli.bed.budget.area': 'the whole bed, where its crops don’t make it up or follow one another',
  'cli.bed.budget.put': 'what was put on, such as compost=2barrows or compost=2barrows@2025-04-01',
  'cli.bed.budget.for': 'the year of the harvest; what goes on from September counts for the next',
  'cli.bed.budget.mulch': 'what was put on this season lies on top',
  'cli.bed.budget.after': 'days until it was worked in',
  'cli.bed.budget.weather': 'weather meanwhile: cool-wet, cool-dry, warm-wet or warm-dry',
  'cli.bed.budget.before': 'cover crops dug in, or alfalfa, alfalfa-thin or dry-beans, before these crops',
  'cli.bed.budget.soil':
    'what a soil test said: p=high k=low (low, medium, optimum, high, excessive) ph=6.4 om=4 salts=0.8 (saturated extract)',
  'cli.bed.budget.sandy': 'the bed is sand',
  'cli.bed.budget.byHarvest': 'nitrogen by what the harvest takes off, not by what guides recommend',
  'cli.bed.budget.fertiliser':
    'what would close the gap, such as 12:0:0 or 20:10:10@1.40 (percent, price of a kilogram)',
  'cli.bed.budget.soilTemp': 'usual warmth of the soil over the season',
  'cli.bed.budget.days': 'length of the season in days',
  'cli.bed.budget.full': 'what every source says of each thing put on',
  'cli.bed.test.budget': 'With it: loamwright bed budget … --soil {results}',
  'cli.bed.test': 'What a soil test says, by the published tables of its own method.',
  'cli.bed.test.figures': 'as the lab prints it: p=84ppm k=300lb/ac; p2o5= and k2o= for oxides',
  'cli.bed.test.method': 'mehlich-3, bray-1, olsen, ammonium-acetate or ammonium-nitrate',
};
