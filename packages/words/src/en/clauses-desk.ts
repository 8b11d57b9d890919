/** Local clauses, at the command line. */
export const clausesDeskEn = {
  'cli.safe.clauses': 'A heap held against the clauses of your own town, landlord or market.',
  'cli.safe.clauses.heap': 'a heap of the daybook: its size, its stuff and its log are taken from there',
  'cli.safe.clauses.file': 'a JSON file of clauses, - for standard input',
  'cli.safe.clauses.clause':
    'a clause, such as "height 4ft", "volume 150ft3 per 10000ft2", "footprint 75ft2", "lot-share 1%", "sides 4x8ft", "from-line 5ft", "from-house 15ft", "from-water 100ft", "bars pet-waste", "allows horse-manure", "allows-only garden-stuff", rear-yard, covered, enclosed, scraps-buried',
  'cli.safe.clauses.of': 'whose clauses those of --clause are, by name',
  'cli.safe.clauses.whose': 'town (if not said), landlord, market or other',
  'cli.safe.clauses.keep': 'write these clauses down; without --clause and --file those that are written down are used',
  'cli.safe.clauses.size': 'width, depth and height of the heap: 4x4x4ft',
  'cli.safe.clauses.volume': 'its volume, where it is no full box',
  'cli.safe.clauses.lot': 'area of the lot: 8000ft2',
  'cli.safe.clauses.line': 'distance to the line of the lot',
  'cli.safe.clauses.house': 'distance to the nearest neighbour’s house',
  'cli.safe.clauses.water': 'distance to your own well or open water',
  'cli.safe.clauses.stuff': 'all that goes in: kitchen-scraps,rabbit-droppings or names of materials',
  'cli.safe.clauses.yard': 'where it stands: rear, side or front',
  'cli.safe.clauses.cover': 'yes or no: it has a cover',
  'cli.safe.clauses.enclosed': 'yes or no: it stands in a bin or behind walls',
  'cli.safe.clauses.buried': 'yes or no: scraps are buried in the middle',
  'cli.safe.clauses.fromTyped': 'The clauses given',
} as const;
