/** What goes with a pail, and what a bin is that is fed for months. */
export const pailEn = {
  'pail.answer': '{what}; {water}.',
  'pail.water': 'pour {water} over it',
  'pail.no-water': 'no water',
  'pail.cover': 'Cover this pail with {stuff}',
  'pail.tip-in': 'Tip it in as it is, it needs no dry stuff',
  'pail.fetch-dry': 'Fetch {stuff} for this pail, for nothing dry enough is on hand',
  'pail.next-bin': 'Begin the next bin with this pail and cover it with {stuff}',
  'pail.next-bin-plain': 'Begin the next bin with this pail',
  'pail.last-pail': 'Let this be the last pail here, under {stuff}',
  'pail.last-pail-plain': 'Let this be the last pail here',
  'pail.mend': 'Mend the bin before you feed it: fork {stuff} through all of it',
  'pail.mend-there': 'Fork the bin over before you feed it: there is dry stuff enough in it, unmixed',
  'pail.mend-unknown': 'Mend the bin before you feed it: fork dry stuff through it until the smell is gone',
  'pail.store': 'Put it on the frozen heap under {stuff}, where it keeps',
  'pail.store-plain': 'Put it on the frozen heap, where it keeps',
  'pail.mix-and-cap': 'Mix {stuff} through it in one go, then cap it',
  'pail.mix-and-cap-plain': 'Mix it through in one go, then cap it',

  'pail.with': 'Then cover this pail with {stuff}.',
  'pail.cap': 'Cap it with {low} to {high} of leaves or finished compost.',
  'pail.short': 'For the better mix {stuff} more is missing.',
  'pail.instead': 'Any one of these would do instead: {stuff}.',
  'pail.range': 'The pail and its dampness are guesses, and so is the dry stuff: {low} to {high} may be right.',
  'pail.mend-range':
    'What lies in the bin and how damp it is are guesses: {low} to {high} to fork through it may be right.',
  'pail.why.water': 'It takes that much to hold its water.',
  'pail.why.carbon': 'It takes that much carbon, or nitrogen leaves as ammonia.',
  'pail.why.cover': 'It takes that much to hide the food from flies and rats.',
  'pail.why.nothing': 'It is dry and brown enough by itself.',
  'pail.laid':
    'Together that is {moisture, number} % moist ({low, number} to {high, number}), with C:N {ratio, number}.',
  'pail.laid-no-ratio': 'Together that is {moisture, number} % moist ({low, number} to {high, number}).',

  'pail.mend.ammonia': 'It smells of ammonia: nitrogen is leaving. Stand upwind.',
  'pail.mend.airless': 'It smells sour or rotten: it has no air.',
  'pail.mend.too-wet': 'It is too wet.',
  'pail.mend.too-little-carbon': 'There is too little brown in it.',

  'pail.bin.mended-height': 'Without what is forked in, the bin then stands about {height} high and holds {volume}.',
  'pail.bin.mended-volume': 'Without what is forked in, the bin then holds {volume}.',
  'pail.bin.height': 'The bin then stands about {height} high and holds {volume}.',
  'pail.bin.volume': 'The bin then holds {volume}.',
  'pail.bin.moisture': 'By what went in, it is about {moisture, number} % moist ({low, number} to {high, number}).',
  'pail.bin.felt':
    'By the handful that was squeezed, it is about {moisture, number} % moist ({low, number} to {high, number}).',
  'pail.bin.ratio': 'C:N of what is left is about {ratio, number} ({low, number} to {high, number}).',
  'pail.bin.unknown': 'Nothing can be reckoned of {materials} in it: what it is like is not written down.',
  'pail.layer': '{material}, {ago}: about {left, number} % of its volume is left ({low, number} to {high, number} %).',

  'pail.room.pails':
    'Today there is room for {count, plural, =0 {no more} one {# more such pail} other {# more such pails}} with the cover.',
  'pail.room.full-in':
    'At {pace, number} such pails a week it is full in {days}, at the least {low}, at the most {high}.',
  'pail.room.never-full':
    'At {pace, number} such pails a week it sinks as fast as it is fed: it may not fill in two years.',

  'pail.stop.full': 'This bin is full.',
  'pail.stop.next-will-not-fit': 'The next such pail will not fit any more.',
  'pail.stop.wanted-soon': 'The compost is wanted sooner than a bin needs to rest.',
  'pail.stop.fed-long': 'It has been fed for as long, and with as much for its size, as measured home bins are.',
  'pail.stop.rest':
    'Then let it rest: {days, number} days from the last pail to compost, one household’s mean over 56 bins.',

  'pail.lost.finished.still-fed': 'It is neither finished nor cured as long as it is fed.',
  'pail.lost.hot-days.new-stuff-unheated': 'Hot days before this pail count for no rule any more.',
  'pail.lost.sanitised.new-stuff-unheated': 'It can’t be called made safe by heat: the new stuff has seen none.',
  'pail.lost.sanitised.risky-stuff-added':
    'It can’t be called made safe: {materials} went in raw, and the days of any rule count from now.',
  'pail.lost.weed-free.weeds-added':
    'It can’t be called free of weeds: seed or root may have gone in with {materials}.',

  'pail.practice.take-from-below': 'With one bin: take finished compost from below, and leave the upper part to ripen.',
  'pail.practice.lift-off-and-rest':
    'With one bin: lift it off when it is full, cover the heap, and begin the bin again with some of it.',
  'pail.practice.fill-one-rest-one': 'With two: no more food goes into a full one, the second takes what is new.',
  'pail.practice.swap-when-ripe': 'With two: when the rested one is ripe and used, they swap over.',
  'pail.practice.fill-age-ready': 'With three: one fills, one is turned and ages, one is ready.',
  'pail.practice.fork-on-when-full':
    'With three: fork the full bay into the next, which turns it once, and begin the first again.',

  'pail.note.bury-and-cover': 'Bury food in the middle and leave none in sight.',
  'pail.note.coarse-base-first': 'Begin an empty bin with a hand’s breadth of twigs or other coarse stuff.',
  'pail.note.thin-or-mixed': 'It would lie too thick: spread it thin between dry layers, or mix it in.',
  'pail.note.no-lime-no-ash': 'No lime and no ash: they drive the ammonia out.',
  'pail.note.rain-cover': 'Keep the rain off it.',
  'pail.note.do-not-turn-frozen': 'Do not turn it while it is frozen.',
  'pail.note.ready-for-thaw': 'Have dry stuff ready for the thaw, and mix it then.',
  'pail.note.leachate': 'A thaw brings juice, smell and rats: keep what drains off the path and away from wells.',
  'pail.note.keep-dry-stuff-dry': 'Keep the dry stuff under a cover until it is used.',
  'pail.note.seldom-hot': 'A bin that is fed by the pail seldom gets hot: count on no heat to make it safe.',
  'pail.note.too-small-to-heat': 'It is too small to heat.',
  'pail.note.slow-for-its-carbon': 'With so much carbon it will rot slowly.',
  'pail.note.squeeze-to-know':
    'Squeeze a handful from the middle: that tells more of its moisture than any figure here.',
  'pail.note.measure-the-height': 'Measure how high it stands: that tells the room better than any reckoning.',

  'pail.ahead': 'For {pails, number} such pails keep {stuff} dry.',
  'pail.not-modelled':
    'Not reckoned: rain, drying and what drains off, the warmth in the bin, and how it packs under its own weight.',

  'app.pail.go': 'What goes with a pail',
  'app.pail.question': 'What goes with this pail?',
  'app.pail.in': 'What goes in is {stuff}.',
  'app.pail.none': 'Say what is in the pail, the basket or the barrow.',
  'app.pail.say': 'Say what is in it',
  'app.pail.more': 'What else is in it?',
  'app.pail.into': 'It goes into {bin}.',
  'app.pail.no-bin': 'a bin that this daybook does not know',
  'app.pail.choose': 'Say which bin it goes into',
  'app.pail.bin': 'Which bin does it go into?',
  'app.pail.seen': 'A squeeze, a smell, a height',
  'app.pail.seen.title': 'What is seen of the bin today',
  'app.pail.height': 'How high it stands',
  'app.pail.state': 'Frost',
  'app.pail.state.frozen': 'frozen to the middle',
  'app.pail.state.thawing': 'thawing',
  'app.pail.keep': 'It went in so',
  'app.pail.kept': 'The daybook then says: in went {stuff}.',
  'app.pail.kept-water': 'The daybook then says: in went {stuff}, and {water} was poured over it.',
  'app.pail.picture': 'What lies in the bin, from the ground up: {layers}.',
  'app.pail.picture-alone': 'The pail and what goes over it: {layers}.',
  'app.pail.bin-now': 'The bin after it',
  'app.pail.no-longer': 'What it may not be called',
  'app.pail.besides': 'What to mind',
  'app.pail.rest': 'More about it',
} as const;
