/** What the rules say of a heap's log. */
export const sanitationEn = {
  'sanitation.rule.us-organic-turned': 'US organic rule (turned heap)',
  'sanitation.rule.us-organic-static': 'US organic rule (aired heap or vessel)',
  'sanitation.rule.us-organic-5021': 'US organic rule (its second door)',
  'sanitation.rule.us-produce-turned': 'US produce safety rule (turned heap)',
  'sanitation.rule.us-produce-static': 'US produce safety rule (aired heap or vessel)',
  'sanitation.rule.us-sludge-turned': 'US sludge rule (turned heap)',
  'sanitation.rule.us-sludge-static': 'US sludge rule (aired heap or vessel)',
  'sanitation.rule.us-sludge-older-turned': 'older US sludge rule (turned heap)',
  'sanitation.rule.us-sludge-lesser': 'US sludge rule (the lesser class)',
  'sanitation.rule.california-turned': 'California (turned heap)',
  'sanitation.rule.california-static': 'California (aired heap or vessel)',
  'sanitation.rule.eu-fertiliser': 'EU fertiliser rule',
  'sanitation.rule.eu-processed-manure': 'EU rule for processed manure that is sold',
  'sanitation.rule.germany-2012': 'Germany (since 2012)',
  'sanitation.rule.germany-pasteurised': 'Germany (an hour at 70 °C or 158 °F, in a vessel)',
  'sanitation.rule.germany-1998': 'Germany (before 2012)',
  'sanitation.rule.germany-1998-closed': 'Germany (before 2012, in a vessel)',
  'sanitation.rule.france-turned': 'France (turned heap)',
  'sanitation.rule.france-static': 'France (aired heap or vessel)',
  'sanitation.rule.uk-catering-turned': 'UK catering waste (turned heap)',
  'sanitation.rule.uk-standard': 'UK standard for compost that is sold',
  'sanitation.rule.canada-turned': 'Canada (turned heap)',
  'sanitation.rule.canada-static': 'Canada (aired heap or vessel)',

  'sanitation.counts.raw-manure':
    'Until it meets a rule that binds you it counts as raw manure: worked in 120 days before harvest where the crop touches soil, 90 where it does not.',
  'sanitation.counts.treated':
    'It counts as treated by what it met, and by no other. Keep raw stuff, its tools and its drips away from it.',
  'sanitation.counts.plants-only':
    'Nothing of animals went in, so most rules ask nothing. Heat still decides over weed seed and plant disease.',

  'sanitation.answer.met': 'This log meets: {rules}.',
  'sanitation.answer.nearest': 'No rule is met yet. The nearest is {rule}: {missing}.',
  'sanitation.answer.nearest-earliest':
    'No rule is met yet. The nearest is {rule}: {missing}. If it stays at heat, its days could be full on {day}.',
  'sanitation.answer.sludge-only':
    'This log meets only what is asked of sludge or of registered plants, or was recalled: {rules}. No rule that bears on a garden is met yet.',
  'sanitation.answer.nothing-logged':
    'Nothing can be shown: there are no readings. A stack that steams is no proof. Read it each day in the middle and at the edge, and write the turnings down.',
  'sanitation.answer.unturned':
    'A plain heap, neither turned nor aired: rules for turned or aired heaps do not take it, whatever it read. The {rule} takes a heap of any shape, and is not met yet: {missing}. Turn it, outside in, and go on reading.',
  'sanitation.answer.none-meant': 'None of the rules asked about takes a heap kept in this way, whatever it read.',
  'sanitation.answer.plants-only': 'There is nothing of animals in it, so no rule for manure asks anything.',

  'sanitation.line.met': '{rule}: met.',
  'sanitation.line.met-apart': '{rule}: met; its text does not say whether days may lie apart.',
  'sanitation.line.not-yet': '{rule}: not yet: {missing}.',
  'sanitation.line.lost': '{rule}: not met, and this heap no longer can: {missing}.',
  'sanitation.line.cannot-be-shown': '{rule}: cannot be shown: {missing}.',
  'sanitation.detail': '{line} ({place}{recalled, plural, =1 {, recalled} other {}})',
  'sanitation.not-meant': 'These take only heaps kept in another way than this one: {rules}.',

  'sanitation.missing.days.too-few': '{have, number} of {want, number} days at {temp} or more',
  'sanitation.missing.days.broken':
    '{have, number} days running where {want, number} are asked, with breaks between more of them',
  'sanitation.missing.days.days-unrecorded': 'days without a reading lie between those at heat',
  'sanitation.missing.days.nothing-logged': 'no readings',
  'sanitation.missing.turns.too-few-turns': '{have, number} of {want, number} turnings at the time they count',
  'sanitation.missing.ratio.outside':
    'C:N was about {have, number} when it was built, on the wrong side of {want, number}',
  'sanitation.missing.ratio.not-recorded': 'C:N when it was built was not written down',
  'sanitation.missing.all-material.edges-unread': 'nothing shows that all of it came into the heat',
  'sanitation.missing.all-material.edges-cold': 'the edges were at heat {have, number} of {want, number} days',
  'sanitation.missing.moisture.not-recorded': 'its moisture was not written down',
  'sanitation.missing.moisture.too-dry': 'about {have, number} % water where {want, number} % is asked',
  'sanitation.missing.weeks.too-soon': '{have, number} of {want, number} weeks',
  'sanitation.missing.weeks.not-recorded': 'when it was built was not written down',
  'sanitation.missing.peak.too-few': '{have, number} of {want, number} hours above {temp}',
  'sanitation.missing.peak.not-recorded': 'how many hours it stood above {temp} was not written down',
  'sanitation.missing.curing.cure-first': 'it is still to cure, below 55 °C (131 °F) until it is as warm as the air',
  'sanitation.missing.curing.still-warm': 'it is curing and not yet as warm as the air',
  'sanitation.missing.curing.not-recorded': 'whether it cured until it was as warm as the air was not written down',
  'sanitation.missing.feeding.still-fed': 'it is still being fed',

  'sanitation.logged': '{days, plural, one {# day was} other {# days were}} read in the middle, up to {temp}.',
  'sanitation.before':
    '{count, plural, one {# reading does} other {# readings do}} not count: raw stuff went in on that day or later.',
  'sanitation.day':
    'A day counts by its lowest reading in the hot middle. None of the US texts says how a day is proved: read daily, in more than one place.',
  'sanitation.skin':
    'A heap {width} across is {cold} to {coldest} % cold skin (geometry, not measured). {turns, plural, =0 {Nothing turned it, so about {left} to {most} % of it may never have been at heat.} one {After # turning about {left} to {most} % of it may never have been at heat, if it mixed by chance.} other {After # turnings about {left} to {most} % of it may never have been at heat, if each mixed by chance.}}',
  'sanitation.skin.turns':
    'So that no more than one part in {parts, number} was never at heat {most, plural, =0 {it wants no turning.} other {it would take {turns, number} to # turnings that mix by chance, each with a core at heat before it; turning outside in on purpose does better.}}',
  'sanitation.ask': 'Rules change and places differ: ask your own authority, or the market you sell at.',
  'sanitation.home': 'For your own table these rules are advice: the stricter one is the safer one.',

  'safePage.question': 'Is {heap} safe?',
  'safePage.read': 'Log a reading',
  'safePage.method': 'How it is kept',
  'safePage.method.turned': 'turned',
  'safePage.method.aerated-static': 'air led in',
  'safePage.method.in-vessel': 'closed drum or vessel',
  'safePage.method.unturned': 'left as it stands',
  'safePage.through': 'Did all of it come into the heat?',
  'safePage.through.not-said': 'nobody can say',
  'safePage.through.all': 'yes, it was seen to',
  'safePage.curing': 'Cured since',
  'safePage.curing.not-said': 'not yet',
  'safePage.curing.warm': 'curing, still warm',
  'safePage.curing.cool': 'as cool as the air',
  'safePage.rules': 'Rule by rule',
  'safePage.harvest': 'When to harvest after it went on',
} as const;
