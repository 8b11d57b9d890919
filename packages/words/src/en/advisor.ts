/** What the reports say about heaps, the store, the daybook and a mix. */
export const advisorEn = {
  'advisor.named': '{name}',
  'advisor.some': '{amount} of {material}',
  'advisor.some-how': '{amount} ({how}) of {material}',
  'advisor.days-ago': '{days, plural, =0 {today} one {# day ago} other {# days ago}}',
  'advisor.days': '{days, plural, =0 {less than a day} one {# day} other {# days}}',

  'advisor.heap.headline': '{state} {trend}',
  'advisor.heap.stale': '{state} But that was {ago}.',
  'advisor.heap.unread': 'Nobody has put a probe into it yet; it has stood for {age}.',
  'advisor.heap.finished': 'It was called ready {ago}; {left} of it is still here.',
  'advisor.heap.gone': 'Nothing of it is left: it went to {places}.',
  'advisor.heap.gone-unknown': 'Nothing of it is left.',
  'advisor.heap.all': 'all',
  'advisor.heap.share': '{pct, number} %',

  'advisor.act.read': 'Put the probe into the middle, and wait until it stands still.',
  'advisor.because.unread': 'Without a reading nobody can say what it is doing.',
  'advisor.because.stale':
    'The last reading is {days, plural, one {# day} other {# days}} old, and a heap changes in less.',
  'advisor.waiting.unread': 'Waiting costs a day’s knowledge, and days that nobody logged count for no rule.',
  'advisor.act.use': 'Spread it, or keep it under a cover.',
  'advisor.because.finished': 'It was called ready. That says nothing about safety: the readings do.',
  'advisor.waiting.finished': 'Rain washes potassium and nitrogen out of ripe compost that lies open.',
  'advisor.act.none': 'There is nothing to do.',
  'advisor.because.gone': 'Nothing of it is left.',
  'advisor.waiting.gone': 'There is nothing to lose.',

  'advisor.made.share': '{pct, number} % {material}',
  'advisor.made.basis':
    'By mass as it was put in; of what is there now the shares are others, since stuff rots at different speeds.',
  'advisor.made.nothing': 'Nothing was written down of what went in.',
  'advisor.made.gone': 'By mass as it was put in: so it was made up before it was taken.',
  'advisor.layer': '{stuff}, {ago}',
  'advisor.layer.raw': '{stuff} (raw), {ago}',

  'advisor.safety.raw':
    'It counts as raw: whether a rule is met must be shown from the record. The clock runs since raw stuff last went in, {ago}.',
  'advisor.safety.raw-combined':
    'It counts as raw: it was brought together with stuff not shown to be safe {ago}, and the clock began again.',
  'advisor.safety.raw-liquid':
    'It counts as raw: something other than clean water was poured on {ago}, and the clock began again.',
  'advisor.safety.still-fed':
    'It is still being fed: a bin that is being fed is not finished, and each raw pail starts the clock again.',
  'advisor.safety.unlogged':
    'No reading since then shows {limit} or more. A heap with manure or scraps and no log counts as raw manure: 120 days before harvest where the crop touches soil, 90 where it does not.',
  'advisor.safety.hot-days':
    '{days, plural, one {# day} other {# days}} since then {days, plural, one {has} other {have}} a reading of {limit} or more. They count towards a rule at the place probed; the verdict wants the whole record.',
  'advisor.safety.inherited':
    'Part of it lay in {heaps} before. What was read there is told there; here only its own readings are counted.',
  'advisor.safety.plants-only': 'Nothing raw is written down as having gone in.',
  'advisor.safety.finished': 'Called ready is not shown to be safe.',

  'advisor.overview.none': 'There is no heap yet.',

  'advisor.mark.built': 'built',
  'advisor.mark.fed': 'fed',
  'advisor.mark.turned': 'turned',
  'advisor.mark.watered': 'watered, {volume}',
  'advisor.mark.poured': '{liquid} poured, {volume}',
  'advisor.mark.covered': 'covered',
  'advisor.mark.uncovered': 'uncovered',
  'advisor.mark.moved': 'moved',
  'advisor.mark.combined': 'combined',
  'advisor.mark.split': 'split',
  'advisor.mark.screened': 'screened',
  'advisor.mark.finished': 'called ready',
  'advisor.mark.spread': 'spread',

  'advisor.liquid.water': 'water',
  'advisor.liquid.leachate': 'leachate',
  'advisor.liquid.urine': 'urine',
  'advisor.liquid.slurry': 'slurry',
  'advisor.liquid.other': 'something else',
  'advisor.cover.none': 'nothing',
  'advisor.cover.sheet': 'a sheet',
  'advisor.cover.lid': 'a lid',
  'advisor.cover.straw': 'straw',
  'advisor.cover.leaves': 'leaves',
  'advisor.cover.soil': 'soil',
  'advisor.cover.compost': 'compost',
  'advisor.cover.other': 'something',
  'advisor.squeeze.streams': 'water streams from a squeezed handful',
  'advisor.squeeze.drops': 'a squeezed handful drips',
  'advisor.squeeze.holds': 'a squeezed handful shines and holds',
  'advisor.squeeze.crumbles': 'a squeezed handful crumbles',
  'advisor.squeeze.dusty': 'a squeezed handful is dusty',
  'advisor.smell.none': 'no smell',
  'advisor.smell.earthy': 'an earthy smell',
  'advisor.smell.ammonia': 'a smell of ammonia',
  'advisor.smell.sour': 'a sour smell',
  'advisor.smell.rotten': 'a rotten smell',
  'advisor.smell.musty': 'a musty smell',
  'advisor.smell.smoke': 'a smell of smoke',

  'advisor.book.material-described': '{material} described: {name}.',
  'advisor.book.stock-in': '{stuff} came in.',
  'advisor.book.stock-in-from': '{stuff} came in from {supplier}.',
  'advisor.book.stock-out': '{stuff} left the store: {why}.',
  'advisor.book.why.used': 'used',
  'advisor.book.why.given': 'given away',
  'advisor.book.why.sold': 'sold',
  'advisor.book.why.spoiled': 'spoiled',
  'advisor.book.why.counted': 'the count found less',
  'advisor.book.bay-set-up': '{name} set up.',
  'advisor.book.heap-built': '{heap} built in {bay}, of {stuff}.',
  'advisor.book.heap-built-nowhere': '{heap} built, of {stuff}.',
  'advisor.book.heap-begun': '{heap} begun, empty.',
  'advisor.book.heap-fed': '{heap} fed with {stuff}.',
  'advisor.book.reading': '{heap} read {temp} {where}{doubted, plural, =0 {} other {, marked doubtful}}.',
  'advisor.book.reading-seen': '{heap}: {seen}.',
  'advisor.book.reading-both': '{heap} read {temp} {where}{doubted, plural, =0 {} other {, marked doubtful}}; {seen}.',
  'advisor.book.reading-other': '{heap} was looked at.',
  'advisor.book.turned': '{heap} turned.',
  'advisor.book.turned-into': '{heap} turned into {bay}.',
  'advisor.book.watered': '{volume} of {liquid} poured on {heap}.',
  'advisor.book.covered': '{heap} covered with {cover}.',
  'advisor.book.uncovered': 'The cover taken off {heap}.',
  'advisor.book.moved': '{heap} moved to {bay}.',
  'advisor.book.combined': '{heaps} brought together into {heap}.',
  'advisor.book.split': '{heap} parted: {parts}.',
  'advisor.book.part': '{pct, number} % into {heap}',
  'advisor.book.screened': '{heap} screened: {stuff} went back to store.',
  'advisor.book.finished': '{heap} called ready.',
  'advisor.book.finished-mass': '{heap} called ready: {mass}.',
  'advisor.book.spread-heap': '{amount} of {heap} spread on {bed}.',
  'advisor.book.spread-share': '{pct, number} % of what lay in {heap} spread on {bed}.',
  'advisor.book.spread-rest': 'All that lay in {heap} spread on {bed}.',
  'advisor.book.spread-material': '{stuff} spread on {bed}.',
  'advisor.book.bed-set-up': '{name} set up: {area}.',
  'advisor.book.sown': '{crop} sown on {bed}.',
  'advisor.book.harvested': '{crop} picked from {bed}.',
  'advisor.book.harvested-mass': '{mass} of {crop} picked from {bed}.',
  'advisor.book.bean-tested.none': 'Beans grown in {stuff}: leaves sound.',
  'advisor.book.bean-tested.slight': 'Beans grown in {stuff}: leaves a little hurt.',
  'advisor.book.bean-tested.moderate': 'Beans grown in {stuff}: leaves hurt.',
  'advisor.book.bean-tested.severe': 'Beans grown in {stuff}: leaves badly hurt.',
  'advisor.book.bean-tested.something': 'something',
  'advisor.book.soil-tested': 'Soil of {bed} tested.',
  'advisor.book.note': '{text}',
  'advisor.book.photo': 'A picture.',
  'advisor.book.photo-of': 'A picture: {caption}',
  'advisor.book.series': '{count, number} readings of {probe} in {heap}.',
  'advisor.book.attachment-removed': 'A picture or series taken away.',
  'advisor.book.withdrawal': 'An entry taken back.',
  'advisor.book.withdrawal-of': 'Taken back: {what}',
  'advisor.book.withdrawal-of-why': 'Taken back: {what} {why}',
  'advisor.book.withdrawal-why': 'An entry taken back: {why}',
  'advisor.book.unread':
    'An entry of a kind that this version can’t read ({kind}, version {version, number}). It is kept and passed on.',
  'advisor.book.unfit': 'An entry ({kind}) whose body can’t be read. It is kept and passed on.',
  'advisor.book.as-typed': 'as typed: {what}',

  'advisor.status.amended': 'Corrected since.',
  'advisor.status.correction': 'Corrects an earlier entry.',
  'advisor.status.withdrawn': 'Taken back.',
  'advisor.status.waiting': 'Corrects or takes back an entry that has not arrived yet.',
  'advisor.status.conflict':
    'There are two versions of this entry; neither counts until one is taken back and written anew.',
  'advisor.loose.amends-each-other': 'It corrects an entry that corrects it: neither counts.',
  'advisor.loose.withdraw-each-other': 'It takes back an entry that takes it back: neither counts.',
  'advisor.loose.amends-withdrawal':
    'It corrects an entry that takes something back; such an entry can only be taken back.',
  'advisor.loose.amends-conflict': 'It corrects an entry of which there are two versions.',
  'advisor.loose.other-holding': 'It belongs to another holding.',
  'advisor.loose.no-such-heap': 'There is no heap for it yet.',
  'advisor.loose.no-such-bed': 'There is no bed for it yet.',
  'advisor.loose.already-built': 'That heap was built already.',
  'advisor.loose.same-heap': 'It names the same heap twice.',
  'advisor.warning.clock-went-back': 'The device’s clock went back before this.',
  'advisor.warning.happened-after-written': 'It is dated after it was written.',
  'advisor.warning.written-long-after': 'It was written long after it happened: is the year right?',
  'advisor.warning.in-the-future': 'It lies in the future.',
  'advisor.warning.before-begun': 'It is dated before the heap was there.',
  'advisor.warning.after-gone': 'Nothing was left of the heap by then.',
  'advisor.warning.no-such-bay': 'It names a bay that has not been set up.',
  'advisor.warning.no-such-source': 'It takes from a heap that is not there.',
  'advisor.warning.beyond-belief': 'A figure in it is beyond what can be: a slip of the pen?',
  'advisor.warning.stock-below-zero': 'More was taken from store than was written down as come in.',

  'advisor.stock.none': 'Nothing is written down as lying in store.',
  'advisor.stock.line': '{stuff}',
  'advisor.stock.keeps': 'The oldest of it has lain {lain}; it keeps about {keeps}.',
  'advisor.stock.soon': 'Use it within {left}: the oldest of it has lain {lain}, and it keeps about {keeps}.',
  'advisor.stock.past': 'Use it first: the oldest of it has lain {lain}, longer than the {keeps} it keeps.',
  'advisor.stock.keeps-unknown': 'The oldest of it has lain {lain}.',
  'advisor.stock.below-zero': 'More was used than was written down as come in: count it.',

  'advisor.measured': '{count, number} × {measure}',
  'advisor.mix.lay': 'Lay {stuff}, with {water} of water: {verdict}.',
  'advisor.mix.lay-without-water': 'Lay {stuff}, without water: {verdict}.',
  'advisor.mix.nothing': 'There is nothing here to build a heap of.',
  'advisor.mix.nothing-solid':
    'By itself {materials} is no heap: it wants dry stuff to soak into. Fetch some and pour it on, or thin it and give it to a bed.',
  'advisor.mix.verdict.good-anywhere':
    'it is large enough to keep its heat, and its figures lie where handbooks prefer them',
  'advisor.mix.verdict.good': 'it fills the place, and its figures lie where handbooks prefer them',
  'advisor.mix.verdict.fair': 'its figures lie where handbooks call them reasonable',
  'advisor.mix.verdict.small': 'its figures are reasonable, but it is too little to keep its heat',
  'advisor.mix.verdict.poor': 'it is the nearest there is, and not a mix that handbooks would call reasonable',
  'advisor.mix.then.good-anywhere': 'it would be large enough to keep its heat and lie where handbooks prefer',
  'advisor.mix.then.good': 'it would fill the place and lie where handbooks prefer',
  'advisor.mix.then.fair': 'it would be reasonable',
  'advisor.mix.then.small': 'it would be reasonable, but small',
  'advisor.mix.then.poor': 'it would be better, but not yet reasonable',
  'advisor.mix.then.nothing': 'there would still be nothing to build',

  'advisor.mix.heat':
    'A heap of {smallest} or more with reasonable C:N, water and air is said to reach {limit} within about {days, plural, one {# day} other {# days}} (NRCS for the days, Oregon Metro for the size). That yours has them: C:N {ratio}, water {moisture}, air {air}. It is no promise.',
  'advisor.mix.heat-unknown-ratio':
    'Without nitrogen in the mix nothing can be said of its C:N, and it will hardly heat.',
  'advisor.mix.heat-size': 'Built, it comes to {volume}.',
  'advisor.mix.heat-small':
    'Built, it comes to {volume}, less than the {smallest} that is said to keep its heat: do not count on it getting hot.',
  'advisor.mix.heat-poor': 'Outside the reasonable bands do not count on it getting hot: treat it as a slow heap.',

  'advisor.mix.enough': 'As much {material} as that is really there: {chance}; it was guessed.',
  'advisor.mix.permit': '{material}: {permit} ({reason})',

  'advisor.mix.left.too-much-nitrogen': 'Left over: {stuff}; more would bring too much nitrogen.',
  'advisor.mix.left.too-much-carbon': 'Left over: {stuff}; more would bring too much carbon.',
  'advisor.mix.left.too-dry': 'Left over: {stuff}; more would make it too dry.',
  'advisor.mix.left.too-wet': 'Left over: {stuff}; more would make it too wet.',
  'advisor.mix.left.too-little-air': 'Left over: {stuff}; more would shut out the air.',
  'advisor.mix.left.too-open': 'Left over: {stuff}; more would make it too open to keep its heat.',
  'advisor.mix.left.too-light': 'Left over: {stuff}; more would make it too light.',
  'advisor.mix.left.too-heavy': 'Left over: {stuff}; more would make it too heavy.',
  'advisor.mix.left.bit': 'Left over: {stuff}, too little to count.',
  'advisor.mix.left.too-little': 'Left over: {stuff}.',
  'advisor.mix.left.bay-full': 'Left over: {stuff}; the bay is full.',
  'advisor.mix.left.not-needed': 'Left over: {stuff}; the mix does not need it.',
  'advisor.mix.left.limit': 'Left over: {stuff}, as you wished.',
  'advisor.mix.left.dusted': 'Kept apart: {stuff}. It is for dusting between dry layers, never a layer by the bucket.',

  'advisor.mix.lack.nitrogen': 'It lacks {amount} of nitrogen.',
  'advisor.mix.lack.carbon': 'It lacks {amount} of carbon for its nitrogen.',
  'advisor.mix.lack.water': 'It lacks {amount} of water.',
  'advisor.mix.lack.too-much-water': 'It has {amount} of water too much.',
  'advisor.mix.lack.air': 'It lacks air: {amount} of coarse stuff would open it.',
  'advisor.mix.lack.volume': 'It is {amount} short of filling the place.',
  'advisor.mix.lack.volume-to-heat': 'It is {amount} short of {smallest}, the least that is said to keep its heat.',
  'advisor.mix.mend': 'With {stuff} more, {outcome}.',
  'advisor.mix.mend-nothing': 'With {stuff} fetched, {outcome}.',

  'advisor.mix.judged.carbonToNitrogen_ratio':
    'Carbon to nitrogen is about {likely, number} ({low, number} to {high, number}): {verdict}; in the reasonable band: {chance}.',
  'advisor.mix.judged.moisture_pctWet':
    'Water is about {likely, number} % ({low, number} to {high, number}) of the mass: {verdict}; in the reasonable band: {chance}.',
  'advisor.mix.judged.freeAirSpace_pctVolume':
    'Air is about {likely, number} % ({low, number} to {high, number}) of the volume: {verdict}; in the reasonable band: {chance}.',
  'advisor.mix.judged.density_kgPerM3AsIs': 'It weighs {density}: {verdict}; in the reasonable band: {chance}.',
  'advisor.mix.is.in': 'where handbooks prefer it',
  'advisor.mix.is.edge-low': 'reasonable, on the low side',
  'advisor.mix.is.edge-high': 'reasonable, on the high side',
  'advisor.mix.is.too-low': 'too low',
  'advisor.mix.is.too-high': 'too high',

  'advisor.mix.more.degradable':
    'Counting only the carbon that rots in one composting, carbon to nitrogen is about {likely, number} ({low, number} to {high, number}): a second figure, for it rests on lignin (Chandler 1980), and in another trial lignin told little of how grass, leaves and paper rot (Eleazer 1997).',
  'advisor.mix.more.nitrogen':
    'Of its nitrogen about {likely, number} % ({low, number} to {high, number}) may go, mostly as ammonia: cover, turning and rain decide how much does.',
  'advisor.mix.more.settling':
    'It may settle by about {likely, number} % of its volume ({low, number} to {high, number}) before its air is too little. How much air is left at the foot of a heap is not published for garden mixes, only that it falls with depth and wetness: straw, leaves, shavings and sawdust kept 38 % or more, wet manure and soil mixes fell under 30 % (Ahn 2008).',
  'advisor.mix.more.no-room':
    'It has no air to lose by settling. How much is left at the foot of a heap is not published for garden mixes, only that it falls with depth and wetness (Ahn 2008).',
  'advisor.mix.more.ready':
    'Once ready it comes to {volume}: what doesn’t rot, as dense and moist as compost lies. Loose stuff sinks to a fifth or a quarter, dense manure to a third or a half.',
  'advisor.mix.more.salts.low':
    'Salt: if none of its potassium washes out, the compost conducts about {likely, number} dS/m from that alone ({low, number} to {high, number}, one part dry in five of water), less than composts commonly do (1 to 10, Clemson). No conductivity is published for raw stuff.',
  'advisor.mix.more.salts.usual':
    'Salt: if none of its potassium washes out, the compost conducts about {likely, number} dS/m from that alone ({low, number} to {high, number}, one part dry in five of water), as composts commonly do (1 to 10, Clemson). No conductivity is published for raw stuff.',
  'advisor.mix.more.salts.high':
    'Salt: if none of its potassium washes out, the compost conducts about {likely, number} dS/m from that alone ({low, number} to {high, number}, one part dry in five of water), more than composts commonly do (1 to 10, Clemson): keep it from seedlings, and have it tested before it goes into pots. No conductivity is published for raw stuff.',
  'advisor.mix.more.salty': 'More salt of another kind may come from {materials}; how much is not published.',
  'advisor.mix.more.acid': 'Sour at first: {materials}. No pH is reckoned, for none is published for garden mixes.',
  'advisor.mix.more.alkaline':
    'Alkaline, which lets ammonia go more easily: {materials}. No pH is reckoned, for none is published for garden mixes.',

  'advisor.mix.evidence.mixed': 'trials disagree',
  'advisor.mix.evidence.slight': 'slight evidence',
  'advisor.mix.evidence.none': 'no gain found',
  'advisor.mix.starter.ripe-compost':
    'As a starter, {materials}: {evidence}. Scraps in bins rotted further with 5 % of ripe compost (Chiang Mai), and it helps sour scraps to start (Sundberg 2011); grass with chips rotted as well without (Razvi 1996). A balanced heap brings its own microbes.',
  'advisor.mix.starter.soil':
    'As a starter, {materials}: {evidence}. Grass with chips rotted as well without soil (Razvi 1996); about a tenth of the dry mass as soil is said to hold ammonia (Solomon 1993).',
  'advisor.mix.starter.ferment':
    'As a starter, {materials}: {evidence} against water, or against the same ferment killed (Formowitz 2007, and a thesis at Ljubljana). As food for the heap it counts like other scraps.',
  'advisor.mix.starter.bought':
    'Of bought activators: {evidence}. Seven did no better than none on grass with chips (Razvi 1996), two were not needed for scraps (Chiang Mai).',

  'advisor.mix.other.hottest': 'Hotter: about {heat, number} times the heat for its size, {cost}.',
  'advisor.mix.other.keeps-nitrogen':
    'Keeps more nitrogen: about {points, number} in a hundred less of it at risk, {cost}.',
  'advisor.mix.but': 'but {costs}',
  'advisor.mix.but-nothing': 'and these figures show no cost',
  'advisor.mix.cost.fetch': 'it wants {stuff} fetched',
  'advisor.mix.cost.fair': 'its figures are reasonable, not where handbooks prefer them',
  'advisor.mix.cost.nitrogen': '{points, number} in a hundred more of its nitrogen may go',
  'advisor.mix.cost.heat': 'it gives {times, number} times the heat for its size',
  'advisor.mix.cost.holds-less': '{times, number} times as much nitrogen stays in it, for it holds less',
  'advisor.mix.cost.mass': 'there is {times, number} times the weight to fork',
  'advisor.mix.cost.air': 'it lies closer, with {points, number} in a hundred of its volume less air',
  'advisor.mix.passed-over.north': 'Not proposed, since not in season now (north of the equator): {materials}.',
  'advisor.mix.passed-over.south': 'Not proposed, since not in season now (south of the equator): {materials}.',

  'advisor.mix.warning.unmatched-pair':
    'The nitrogen and the C:N given for {materials} can’t both be true of plant stuff; the C:N was believed.',
  'advisor.mix.warning.no-nitrogen': 'Nothing in it brings nitrogen: it will rot, in years.',
  'advisor.mix.warning.slow-carbon':
    'Most of its carbon is woody and comes slowly: it may act as if it had more nitrogen than the figure says.',
  'advisor.mix.warning.more-water-than-it-holds':
    'It can’t take up all that water at once: pour some, wait a day, pour again.',
  'advisor.mix.warning.squeeze-streams': 'Water will stream from a squeezed handful: too wet for air.',
  'advisor.mix.warning.too-small-to-heat':
    'It is too small to keep its heat: build it as a slow heap, or wait for more.',
  'advisor.mix.warning.too-small-in-winter':
    'It is large enough for three seasons, and too small for a hard winter without straw about it.',
  'advisor.mix.warning.higher-than-bay': 'It comes higher than the bay.',
  'advisor.mix.warning.ash-drives-off-ammonia':
    'Ash drives ammonia off rich stuff: keep {materials} apart from it, and to a dusting.',
  'advisor.mix.warning.lime-drives-off-ammonia':
    'Lime drives ammonia off rich stuff: keep {materials} out of this heap, and give it to the bed if a soil test asks for it.',
  'advisor.mix.warning.sour-start':
    'It may start sour: half of it or more is {materials}. Sour stuff that grows warm all but stops rotting: mix it well with coarse dry stuff and ripe compost, and give it air.',
  'advisor.mix.warning.grass-mats':
    'The air told is that of stuff freshly laid. Fresh grass clippings mat within days: keep them in layers under about {depth} with dry stuff between, fork them together at once, or let them wilt for a day or two first.',

  'advisor.card.role.base': 'Base',
  'advisor.card.role.dry': 'Dry',
  'advisor.card.role.wet': 'Wet',
  'advisor.card.role.cover': 'Cover',
  'advisor.card.layer': '{role}: {stuff}.',
  'advisor.card.scatter': '{role}, scattered thinly: {stuff}.',
  'advisor.card.water': '{water} of water on it.',
  'advisor.card.starter': '{starter} in it.',
  'advisor.card.height': 'The whole comes to {height}.',
  'advisor.card.water-all': '{water} of water in all.',
  'advisor.card.no-water': 'No water: it is damp enough.',
  'advisor.card.repeats': 'Dry and wet {repeats, plural, one {once} other {# times}}.',
  'advisor.card.chop': '{material}: {reason}.',
  'advisor.card.note.too-wet':
    'It is too wet as it is: fork dry stuff through every layer until a squeezed handful only shines, pour nothing on, and keep the rain off.',
  'advisor.card.note.too-dry':
    'It is too dry as it is: water each layer as you lay it until a squeezed handful drips, and look again the next day.',
  'advisor.card.note.fork-together': 'Layers are only for measuring: fork each dry and wet pair together as you go.',
  'advisor.card.note.base-from-elsewhere': 'Nothing here is coarse enough for a base: lay twigs or stalks first.',
  'advisor.card.note.cover-from-elsewhere':
    'Nothing here makes a cover: end with straw, leaves or ripe compost, a hand’s breadth.',
  'advisor.card.note.mix-fines-at-once': 'Mix the fine fresh stuff in at once: in a thick layer it mats.',
  'advisor.card.note.starter-inside': 'The starter goes in the inner layers, damp and out of the sun.',
  'advisor.card.note.ash-apart': 'Dust the ash on dry stuff only, away from manure and grass.',
  'advisor.card.note.higher-than-bay': 'It stands higher than the bay at first: it sinks within days.',
} as const;
