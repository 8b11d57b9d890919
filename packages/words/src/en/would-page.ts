/** What a heap would do, from core to surface, as the page tells it. */
export const wouldPageEn = {
  'wouldPage.question': 'What would this heap do here?',
  'wouldPage.question.heap': '{heap}: what would it do, as it was built?',
  'wouldPage.following': 'Following {of} heaps that this may turn out to be, day by day for {days} days …',
  'wouldPage.anew': 'Following them anew; below is what was found before …',
  'wouldPage.failed': 'The part that follows heaps could not be loaded. What you said is kept; open this page again.',
  'wouldPage.card': 'Build card',
  'wouldPage.heap': 'Back to the heap',
  'wouldPage.bins': 'Back to what is here',
  'wouldPage.noMix': 'There is no mix yet to follow. Say what is here, and work one out.',
  'wouldPage.noLayers':
    'What was laid in it is not written down, or holds something that no table knows, so it can’t be followed.',

  'wouldPage.hot': 'It should get hot, {heats}: hottest about day {peakDay}, {peak} in the core ({range}); {turn}.',
  'wouldPage.open':
    'It may get hot or stay cold: it gets hot {heats}. It is hottest about day {peakDay}, {peak} in the core ({range}); {turn}.',
  'wouldPage.cold':
    'It is likely to stay cold: it gets hot {heats}. It is warmest about day {peakDay}, {peak} in the core ({range}).',
  'wouldPage.lost':
    'By day {days} about {volume} of its volume is gone and {nitrogen} of its nitrogen; about {dry} of its dry matter has rotted away.',
  'wouldPage.heats.some': 'in {count} that it may turn out to be',
  'wouldPage.heats.none': 'hardly ever, in {count} that were tried',
  'wouldPage.heats.all': 'all but certainly, in {count} that were tried',
  'wouldPage.heats.count': '{met} of {of} heaps',
  'wouldPage.turn': 'where it gets hot, it first asks for a turn about day {day}',
  'wouldPage.turn.none': 'most ask for no turn in {days} days',
  'wouldPage.here': 'That is with air of {air}, {walls} around it and {cover} on it.',
  'wouldPage.here.change': 'Say what it is like here',
  'wouldPage.here.title': 'What is it like here?',
  'wouldPage.here.week': 'The air, by day and night',
  'wouldPage.here.week.cool': 'a cool week, {air}',
  'wouldPage.here.week.mild': 'a mild week, {air}',
  'wouldPage.here.week.warm': 'a warm week, {air}',
  'wouldPage.here.air': 'Or as you know it',
  'wouldPage.here.airHint': 'The mean of day and night, in the shade.',
  'wouldPage.here.walls': 'What stands around it',
  'wouldPage.here.cover': 'What lies on it',
  'wouldPage.here.done': 'So it is here',
  'wouldPage.walls.none': 'nothing',
  'wouldPage.walls.pallet': 'pallets',
  'wouldPage.walls.timber': 'boards',
  'wouldPage.walls.block': 'blocks',
  'wouldPage.walls.plastic': 'plastic',
  'wouldPage.walls.strawBales': 'straw bales',
  'wouldPage.walls.insulated': 'insulated walls',
  'wouldPage.cover.open': 'nothing',
  'wouldPage.cover.lid': 'a lid',
  'wouldPage.cover.fleece': 'a fleece',
  'wouldPage.cover.tarpaulin': 'a sheet',
  'wouldPage.cover.carpet': 'a carpet',
  'wouldPage.cover.compost': 'a layer of compost',
  'wouldPage.cover.straw': 'thick straw',

  'wouldPage.day': 'Day',
  'wouldPage.day.text': 'day {day}: {core} in the core, {outside} at the outside',
  'wouldPage.onDay':
    'Day {day}: {core} in the core, {middle} half way out, {outside} at the outside; about {oxygen} % oxygen in the air of the core.',
  'wouldPage.drawn':
    'Cut through is the heap whose heat is the middle one of {of}: the thin line among the days. The broken outline is how high it was built.',
  'wouldPage.section':
    'The heap cut through on day {day}: {core} in the core, {middle} half way out, {outside} at the outside',
  'wouldPage.course':
    'The core over {days} days: {start} at first, hottest on day {peakDay} at about {peak}, {end} at the end. On day {day} it lies between {low} and {high} in eight heaps of ten.',
  'wouldPage.course.heights': 'in the core, {unit}',
  'wouldPage.course.days': 'days after it is built',
  'wouldPage.course.hot': 'hot',

  'wouldPage.change': 'What would change it',
  'wouldPage.change.how': 'Touch one, and the same heaps are followed with that one thing otherwise.',
  'wouldPage.change.larger': 'Half as much again of everything, in as much larger a bay',
  'wouldPage.change.straw': 'A thick blanket of straw on it',
  'wouldPage.change.sheet': 'A sheet over it',
  'wouldPage.change.insulated': 'Walls insulated',
  'wouldPage.change.chopped': 'All of it chopped',
  'wouldPage.change.wetter': '{water} more water',
  'wouldPage.change.drier': '{water} less water',
  'wouldPage.change.following': 'Following them so …',
  'wouldPage.differs.more': 'So {met} of {of} heaps get hot, {count} more than as it stands; {hot}.',
  'wouldPage.differs.fewer': 'So {met} of {of} heaps get hot, {count} fewer than as it stands; {hot}.',
  'wouldPage.differs.same': 'So {met} of {of} heaps get hot, just as many; {hot}.',
  'wouldPage.hot.longer': 'it stays hot for about {more} longer, {days} in all',
  'wouldPage.hot.shorter': 'it stays hot for about {less} less, {days} in all',
  'wouldPage.hot.same': 'it stays hot for as long, about {days}',
  'wouldPage.hot.never': 'it stays hot for no day, as before',
  'wouldPage.days': '{count, plural, =0 {no day} one {# day} other {# days}}',

  'wouldPage.why': 'Why',
  'wouldPage.why.heats':
    'Hot is {hot} in the core, the temperature of a sanitising day. It stays so for about {days} ({low} to {high}).',
  'wouldPage.why.heat':
    'Of the heat it makes about {surface} leaves through the surface and the ground, and about {air} with air and steam.',
  'wouldPage.why.water': 'About {steam} of water leaves as steam in {days} days, and {run} runs off below.',
  'wouldPage.why.nitrogen': 'Published losses of nitrogen from mixes of its C:N run from {low} to {high} %.',
  'wouldPage.why.model':
    'It is a model, left alone for all that time: nothing in it knows of gaps, gusts and how you lay it. A thermometer knows better.',
  'wouldPage.sheet.volume': 'Volume lost',
  'wouldPage.sheet.nitrogen': 'Nitrogen lost',
  'wouldPage.sheet.dry': 'Dry matter rotted away',
  'wouldPage.sheet.peak': 'Hottest of the core',
  'wouldPage.sheet.peakDay': 'Day on which it is hottest',
  'wouldPage.sheet.turn': 'Day of the first turn',
  'wouldPage.sheet.turnWhy':
    'The core first asks for a turn when it comes to {turning}, or when it was hot and falls below {hot} again.',
  'wouldPage.sheet.heats': 'How many of them get hot',
  'wouldPage.sheet.heatsWhy':
    'Amounts, materials and the ways of a heap are uncertain. So {of} heaps that it may turn out to be were followed, each with figures of its own, and {met} of them came to {hot} in the core.',
  'wouldPage.sheet.dayMark': 'day {day}',

  'wouldPage.note.may-stay-cold': 'Most of the heaps it may be never get hot. What would change that stands above.',
  'wouldPage.note.airless-core':
    'The core of most of them runs short of air (under 5 % oxygen): it may smell, and it rots slower than it could. Lay it looser, with something coarse in it, or turn it.',
  'wouldPage.note.dries-out': 'Most of them dry out (under 35 % water): have water ready when you turn it.',
  'wouldPage.note.runs-off':
    'Water runs off below most of them: lay it drier, or on something dry and coarse that drinks it up.',
  'wouldPage.note.past-the-curve':
    'Some come to the heat at which life ends in the model. A heap that reads hotter still is one that it can’t explain: mind the caution on fire.',
  'wouldPage.note.freezes':
    'Most of them are frozen to the core at the end: a frozen heap loses nothing, and goes on in spring.',
  'wouldPage.note.loses-more-nitrogen':
    'It loses more nitrogen than was published of mixes like it: more straw or dry leaves in it would hold some.',
} as const;
