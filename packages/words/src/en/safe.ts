/** Safety, at the command line. */
export const safeEn = {
  'cli.safe': 'Is it safe: what the rules ask of a log, of a spreading, and of what goes in.',
  'cli.safe.harvest': 'How long from spreading to harvest, by each rule, and the earliest day.',
  'cli.safe.harvest.crop': 'how what is eaten meets the soil: touches, splash, clear or not-eaten',
  'cli.safe.harvest.put':
    'what was put on: raw-manure (if not said), unproven-compost, proven-compost, plant-compost, plant-stuff, worm-castings, leachate, manure-tea, compost-tea, ash-or-char, human-or-pet-waste',
  'cli.safe.harvest.spread': 'day of spreading, such as 2026-03-01 or "3 weeks ago"',
  'cli.safe.harvest.workedIn': 'day it was worked into the soil; without it, it lies on top',
  'cli.safe.harvest.onLeaves': 'it was sprayed or poured over a crop that stands',
  'cli.safe.harvest.planted': 'day of sowing or planting',
  'cli.safe.harvest.on': 'day of harvest, meant or done',
  'cli.safe.harvest.cooked': 'the crop is always cooked',
  'cli.safe.harvest.rules':
    'whose rules, the leading one first: us-organic, us-produce-safety, canada-organic, uk-guidance, leafy-greens-buyers',
  'cli.safe.harvest.teaOf': 'what a tea was made of: proven-compost, unproven-compost or plant-compost',
  'cli.safe.harvest.fed': 'food for microbes was added to the tea',
  'cli.safe.harvest.water': 'the water of the tea: clean (tested), untreated-surface or unknown',
} as const;
