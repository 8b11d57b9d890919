/** What a heap would do, from core to surface. */
export const heapRunEn = {
  'twin.heats':
    'It should heat: the chance that the core comes to {hot} is {chance}. It is hottest around day {day} ({dayLow}–{dayHigh}), at {peak}, and at {hot} or more on {hotDays, plural, one {# day} other {# days}} ({hotLow}–{hotHigh}).',
  'twin.heats.open':
    'It may heat or stay cold: the chance that the core comes to {hot} is {chance}. It is warmest around day {day} ({dayLow}–{dayHigh}), at {peak}, and at {hot} or more on {hotDays, plural, one {# day} other {# days}} ({hotLow}–{hotHigh}).',
  'twin.heats.cold':
    'It is likely to stay cold: the chance that the core comes to {hot} is {chance}. It is warmest around day {day} ({dayLow}–{dayHigh}), at {peak}.',
  'twin.turn':
    'Where it heats it first asks for a turn around day {day} ({low}–{high}), when it comes to {turning} or falls below {hot} again.',
  'twin.turn.none': 'In most cases it asks for no turn in that time.',
  'twin.lost':
    'In {days} days it loses {dry} % of its dry matter ({dryLow}–{dryHigh}), {volume} % of its volume ({volumeLow}–{volumeHigh}) and {nitrogen} % of its nitrogen ({nitrogenLow}–{nitrogenHigh}).',

  'twin.heat':
    'Of the heat it makes, {surface} % leaves through its surface and the ground ({surfaceLow}–{surfaceHigh}) and {air} % with air and steam ({airLow}–{airHigh}).',
  'twin.heat.open':
    'Of the heat it makes, about {surface} % leaves through its surface and the ground and {air} % with air and steam. Some of these heaps make so little that the weather brings them more: no range of shares can be told.',
  'twin.heat.none': 'It makes so little heat that where it goes can’t be told.',
  'twin.water':
    'Its moisture goes from {from} % to {to} % ({low}–{high}); {steam} of water leaves it as steam, {steamRange}.',
  'twin.oxygen':
    'Oxygen in the core is lowest around day {day}, at {oxygen} % of the air there ({low}–{high}); fresh air has 21 %.',
  'twin.published': 'Of mixes of like C:N, losses of {low} to {high} % of the nitrogen have been published.',

  'twin.note.may-stay-cold':
    'The same bin has a cold and a hot way to be: a little more size, nitrogen or warmth may tip it.',
  'twin.note.taken-cold':
    'Nobody said how warm the stuff comes, so it was taken as cold as the air, {start}. Fresh bedding from a shed or grass that stood in a pile overnight comes warmer and heats sooner: say how warm it is.',
  'twin.note.airless-core':
    'The core comes to lack air, with less than 5 % of oxygen: it smells then. Coarse stuff in the mix or an early turn helps.',
  'twin.note.dries-out': 'It dries out, to less than 35 % water at the end: it rots no further until it is watered.',
  'twin.note.runs-off':
    '{water} of water runs off below, {range}: give less, or catch it and keep it from wells and ditches.',
  'twin.note.past-the-curve':
    'In some cases the core comes to where the model’s heat ends. A thermometer that reads more than is told here is an alarm, and no mistake of the thermometer until a second one says so.',
  'twin.note.freezes': 'Its core is frozen at the end. A frozen heap loses nothing, and proves nothing safe.',
  'twin.note.loses-more-nitrogen':
    'So much nitrogen is more than has been published of mixes of like C:N: take the figure with care, and more carbon in any case.',
  'twin.note.stands-high':
    '{where} it stands about {height} high at its fullest, {range}. About {tallest} is commonly held to be the most: higher, its own weight presses the air out of it below, which is not reckoned here. More room, or two heaps, would do.',
  'twin.where.built': 'Where it is built',
  'twin.where.turned': 'Where it is turned into on day {day}',
  'twin.count':
    'Told from {members} heaps that this mix may turn out to be. It is a model and no measurement; what it knows least is how freely air passes the stuff.',

  'twin.size.answer':
    'The smallest heap of this mix that gets to {above} here, and stays there on {days} of its first {followed} days, is about {volume} ({range}), a cube of {side}.',
  'twin.size.range': '{low} to {high}',
  'twin.size.range.open': '{low} or more',
  'twin.size.none':
    'No heap of this mix, up to {largest}, gets to {above} here and stays there on {days} of its first {followed} days: the chance of the largest is {chance}. Its size is not what it lacks; look at its water, its nitrogen and its air.',
  'twin.size.means': 'The smaller is enough in one case of four, the larger in three of four.',
  'twin.size.tried': '{volume}: {chance}',
  'twin.size.all': 'The chance that it does, by size:',

  'asBuilt.unknown': 'Nothing is known of {names}: left out.',
  'asBuilt.fed-first': 'It was begun empty: counted from the first that went in.',
  'asBuilt.came-from': 'What came into it from another heap is left out: what it is by then is not known.',
  'asBuilt.taken-from': 'What was taken of it is told with it: this is the whole heap.',
  'asBuilt.other-liquid': 'Liquids other than water count as water.',
  'asBuilt.other-cover': 'A cover of another kind counts as none, leaves as straw, soil as compost.',
  'asBuilt.other-depth': 'A cover deeper or thinner than is reckoned with counts as {depth}.',
  'asBuilt.other-wall': 'Walls of another kind count as none.',
  'asBuilt.turned-unmeasured':
    'How large {bay} is inside is not written down: turned into it, it is taken to lie as wide and deep as before.',
  'asBuilt.feeds-joined': 'It was fed so often that pails of {days} days are laid on together.',
} as const;
