/** From spreading to harvest. */
export const intervalEn = {
  'interval.rule.us-organic': 'US organic rule',
  'interval.rule.us-produce-safety': 'US produce safety rule',
  'interval.rule.canada-organic': 'Canadian organic standard',
  'interval.rule.uk-guidance': 'UK guidance for growers',
  'interval.rule.leafy-greens-buyers': 'US buyers of leafy greens',
  'interval.standing.law-for-organic-sales': 'law for what is sold as organic; good advice at home',
  'interval.standing.law-for-sales': 'law for produce that is sold',
  'interval.standing.standard-for-organic-sales': 'standard for what is sold as organic',
  'interval.standing.guidance-for-growers': 'guidance, of what is eaten raw',
  'interval.standing.private-list': 'private list, of leafy greens',

  'interval.put.raw-manure': 'raw manure',
  'interval.put.unproven-compost': 'compost whose log proves nothing',
  'interval.put.proven-compost': 'compost that met a rule',
  'interval.put.plant-compost': 'compost of plants only',
  'interval.put.plant-stuff': 'plant stuff, not composted',
  'interval.put.worm-castings': 'worm castings',
  'interval.put.leachate': 'leachate',
  'interval.put.manure-tea': 'manure tea',
  'interval.put.compost-tea': 'compost tea',
  'interval.put.ash-or-char': 'ash or charcoal',
  'interval.put.human-or-pet-waste': 'waste of people, dogs or cats',
  'interval.contact.touches': 'touches the soil',
  'interval.contact.splash': 'is splashed by the soil',
  'interval.contact.clear': 'stays clear of the soil',
  'interval.contact.not-eaten': 'is not eaten by people',

  'interval.because.raw':
    'It counts as raw manure. A stack that heated is no exception: without a log of temperatures and turnings it is raw.',
  'interval.because.log-short': 'Its log meets no rule, so it counts as raw manure.',
  'interval.because.log-meets': 'Its log meets a rule, so there is no wait; keep it off the crop all the same.',
  'interval.because.plants-only': 'There is nothing of animals in it, so no rule asks a wait.',
  'interval.because.castings-unproven':
    'Worms lower bacteria but not worm eggs, and no log proves them: castings of manure count as raw manure.',
  'interval.because.leachate-is-raw': 'What drains from a heap counts as an extract of raw manure.',
  'interval.because.extract-of-raw': 'It is an extract of raw manure, and counts as that.',
  'interval.because.tea-fed':
    'Food was added to it, on which bacteria grow; of compost with animal matter it then counts as raw manure.',
  'interval.because.tea-water': 'Its water was not tested clean, so it counts as raw manure.',
  'interval.because.tea-of-unproven': 'Its compost met no rule, so it counts as raw manure.',
  'interval.because.tea-sound':
    'Its compost met a rule, its water is clean and nothing was fed to it: there is no wait.',
  'interval.because.mineral': 'It carries no germs, so no rule asks a wait. It cleans no manure beside it either.',
  'interval.because.never': 'It never belongs on a bed that feeds people.',

  'interval.answer.met': 'Yes: by the {rule} the crop may be taken on {harvest}.',
  'interval.answer.met-waited':
    'Yes: by the {rule} the crop may be taken on {harvest}, {waited, plural, one {# day} other {# days}} after {from}; {wait, plural, one {# day is} other {# days are}} asked.',
  'interval.answer.met-any': 'No wait is asked by the {rule}.',
  'interval.answer.not-yet':
    'Not on {harvest}: that is {waited, plural, one {# day} other {# days}} after {from}, and the {rule} asks {wait, plural, one {# day} other {# days}}. The earliest day is {earliest}.',
  'interval.answer.not-yet-sowing':
    'Not by the {rule}: it asks half a year from spreading to sowing as well. Sow later, or grow here what is cooked.',
  'interval.answer.open':
    'Not before {earliest}: {wait, plural, one {# day} other {# days}} after {from}, by the {rule}.',
  'interval.answer.cannot-be-shown-top':
    'It cannot be shown: the {rule} counts {wait, plural, one {# day} other {# days}} from the day it is worked in, and it lies on top.',
  'interval.answer.cannot-be-shown-day':
    'It cannot be shown: the {rule} asks {wait, plural, one {# day} other {# days}}, and the day from which they count is not known.',
  'interval.answer.cannot-be-shown-latest':
    'It cannot be shown: for a harvest on {harvest} the {rule} asks that it was worked in by {latest}, and that day is not known.',
  'interval.answer.barred': 'No: by the {rule} it may not be put there at all.',
  'interval.answer.no-figure':
    'The {rule} names no days for this. It asks that the stuff touches no crop while it is put on, and as little as can be later.',
  'interval.answer.not-meant': 'The {rule} says nothing of this.',

  'interval.line.met': '{rule}: met.',
  'interval.line.not-yet': '{rule}: not yet; earliest {earliest}.',
  'interval.line.not-yet-sowing': '{rule}: not yet; half a year to sowing as well.',
  'interval.line.open': '{rule}: from {earliest}.',
  'interval.line.cannot-be-shown': '{rule}: cannot be shown.',
  'interval.line.barred': '{rule}: never.',
  'interval.line.no-figure': '{rule}: names no days.',
  'interval.line.not-meant': '{rule}: says nothing of it.',
  'interval.line.detail': '{line} ({standing}; {place}{recalled, plural, =1 {, recalled} other {}})',

  'interval.note.harvest': 'The days run from working in to harvest, not to planting.',
  'interval.note.late':
    'It lay {days, plural, one {# day} other {# days}} before it was worked in; handbooks ask it within three.',
  'interval.note.own-table':
    'For your own table these are advice, not law: the longer wait is the safer one. Wash what is eaten raw; washing does not remove it all.',
  'interval.note.ask': 'Rules change and places differ: ask your own authority, or the market you sell at.',

  'harvest.question': 'When may I harvest after this went on?',
  'harvest.put': 'What went on',
  'harvest.contact': 'What is eaten',
  'harvest.lay': 'How it lies',
  'harvest.lay.worked-in': 'worked in',
  'harvest.lay.on-top': 'on top',
  'harvest.lay.on-leaves': 'on leaves that stand',
  'harvest.workedIn': 'Worked in on',
  'harvest.spread': 'Spread on',
  'harvest.planted': 'Sown or planted on',
  'harvest.on': 'Harvest on',
  'harvest.rules': 'By each rule',

  'interval.spread-wait':
    'Spread on {bed} on {day} without a rule shown as met: harvest there from {touching} where the crop touches soil, from {clear} where it does not.',
  'interval.spread-wait-on-top':
    'Spread on {bed} on {day} without a rule shown as met and left on top: the wait counts from the day it is worked in, {touching, number} days where the crop touches soil, {clear, number} where it does not.',
  'day.told': '{date, number} {month} {year}',
  'day.month.01': 'January',
  'day.month.02': 'February',
  'day.month.03': 'March',
  'day.month.04': 'April',
  'day.month.05': 'May',
  'day.month.06': 'June',
  'day.month.07': 'July',
  'day.month.08': 'August',
  'day.month.09': 'September',
  'day.month.10': 'October',
  'day.month.11': 'November',
  'day.month.12': 'December',
} as const;
