/** What the command line says beside the reports that it shares with the app. */
export const cliEn = {
  'cli.title': 'Mixes, build cards, readings and a daybook for growers who make their own fertility.',
  'cli.exitCodes': 'Exit codes: 0 fine, 1 failed, 2 bad input or a question that wants an answer.',
  'cli.recorded': 'Written down: {what}',
  'cli.option.version': 'print the version',
  'cli.option.help': 'print this help',
  'cli.option.json': 'print the answer as JSON',
  'cli.option.data': 'the data folder (else LOAMWRIGHT_DATA, else the usual place for a person’s data)',
  'cli.option.demo': 'work on the demo garden’s daybook, which is kept apart',
  'cli.option.units': 'us or metric; remembered in the data folder',
  'cli.option.by': 'who writes; remembered in the data folder',
  'cli.option.when': 'when it happened: 18:00, yesterday, monday 7:30, 3 days ago, 2026-03-01 (now, if not said)',
  'cli.option.note': 'a few words beside it',
  'cli.option.size': 'your own size of a measure, such as bucket=14L; remembered in the data folder; may be repeated',
  'cli.option.fromStock': 'it is taken from the stock that is written down',

  'cli.start': 'Serve the app and the daybook: on this computer, or with --lan to phones on the local network.',
  'cli.start.port': 'the port (else PORT, else 4380)',
  'cli.start.host': 'the address to listen on (else HOST, else localhost)',
  'cli.start.lan': 'serve the local network over HTTPS, with a certificate of its own and a page to trust it',

  'cli.mix': 'What to build from what is on hand: the best mix, its ranges, what is short, what would mend it.',
  'cli.mix.stuff': 'what there is, such as straw=9buckets "goat bedding=half a barrow" grass=a-lot',
  'cli.mix.bay': 'the bay: its name, or its inside as 1.2x1.2x1m (width, depth, height)',
  'cli.mix.whole': 'count in whole measures (the usual way)',
  'cli.mix.half': 'count in half measures too',
  'cli.mix.exact': 'judge exactly these amounts, without choosing among them',
  'cli.mix.water': 'water poured on, with --exact',
  'cli.mix.next': 'To write it down and have its build card: loamwright build --bay BAY',
  'cli.build': 'Write down a heap built from the last mix, or from amounts given here, and print its build card.',
  'cli.build.stuff': 'what went in, from the ground up; left out, the last mix',
  'cli.build.name': 'what to call the heap',
  'cli.build.bay': 'the bay it stands in: its name, or its inside as 1.2x1.2x1m',
  'cli.build.water': 'water poured on while building',
  'cli.build.cardOnly': 'print the card and write nothing down',
  'cli.feed': 'Write down a pail tipped into a standing heap, with what covered it.',
  'cli.feed.heap': 'the heap, by its name',
  'cli.feed.stuff': 'what went in, such as scraps=1pail straw="2 armfuls"',

  'cli.log': 'Write down a reading or an act on a heap, what came into the store, a bay, or a note.',
  'cli.log.subject': 'a heap by its name; or stock, bay, note',
  'cli.log.what':
    '148F; turned; watered 20L; covered straw; uncovered; moved BAY; finished; note TEXT. After stock: straw=3bales. After bay: NAME 1.2x1.2x1m',
  'cli.log.where': 'where the probe was: core, middle, edge, top, bottom',
  'cli.log.depth': 'how deep it was: 40cm, 16in',
  'cli.log.probe': 'which probe',
  'cli.log.air': 'the temperature of the air',
  'cli.log.squeeze': 'a squeezed handful: streams, drops, holds, crumbles, dusty',
  'cli.log.smell': 'none, earthy, ammonia, sour, rotten, musty, smoke',
  'cli.log.height': 'the height of the heap',
  'cli.log.asTyped': 'write an odd reading down as it is typed',
  'cli.log.into': 'turned or moved into this bay',
  'cli.log.liquid': 'what was poured, if not clean water: leachate, urine, slurry, other',
  'cli.log.thickness': 'how thick the cover is',
  'cli.log.wall': 'a bay’s walls: boards, pallets, mesh, masonry, bales, plastic, drum, open, other',
  'cli.log.roofed': 'the bay has a roof',
  'cli.log.from': 'where the stock came from',
  'cli.log.out': 'stock that left, and why: used, given, sold, spoiled, counted',
  'cli.log.notRecorded':
    'Nothing was written down. Give the command again with what you meant, or with --as-typed to write it down as it stands.',
  'cli.log.choose':
    'Type a number to take it, k to keep the reading as it stands, another temperature, or nothing to leave it.',
  'cli.log.left': 'Nothing was written down.',

  'cli.heap': 'Every heap in a few lines, or one heap’s page: what it is doing, what to do, its readings.',
  'cli.heap.name': 'the heap, by its name',
  'cli.heap.inBay': '{heap}, in {bay}',
  'cli.heap.since': 'since {day}',
  'cli.heap.made': 'Made of:',
  'cli.card.fromGround': 'From the ground up:',
  'cli.heap.defaultName': 'Heap of {day}',

  'cli.daybook':
    'The daybook’s lines, the newest first; or one entry shown, corrected or taken back; or all of it checked.',
  'cli.daybook.words': 'with --amend: what the entry should have said, as for log or feed',
  'cli.daybook.check': 'read everything again, work out every sum anew, and tell what is changed, missing or in doubt',
  'cli.daybook.about': 'only what is about this heap or bay',
  'cli.daybook.newest': 'so many lines (20 if not said)',
  'cli.daybook.all': 'every line',
  'cli.daybook.show': 'one entry as it is kept, as JSON',
  'cli.daybook.amend': 'correct an entry; give the end of its id, then what it should have said',
  'cli.daybook.body': 'with --amend: the corrected body as JSON, from a file or - for standard input',
  'cli.daybook.withdraw': 'take an entry back; it is kept and no longer counts',
  'cli.daybook.why': 'with --withdraw: why',
  'cli.daybook.forget': 'with --demo: delete the demo garden',
  'cli.daybook.empty': 'The daybook is empty.',
  'cli.daybook.more': '{more, plural, one {# older line} other {# older lines}} not shown: --all shows every one.',
  'cli.daybook.stock': 'In store, by the book:',
  'cli.demo.forgotten': 'The demo garden is gone. It is made anew when --demo is next asked for.',

  'cli.check.sound':
    '{count, plural, one {# entry} other {# entries}} read again: nothing is changed, missing or in doubt.',
  'cli.check.unsound':
    '{count, plural, one {# entry} other {# entries}} read again. This was found; nothing was altered:',
  'cli.check.changed': 'Entry {id} (number {n, number} of {device}) has been changed since it was written.',
  'cli.check.gap': 'Numbers {from, number} to {to, number} of {device} are missing.',
  'cli.check.break': 'Entry {id} (number {n, number} of {device}) does not follow from the one before it.',
  'cli.check.doubled': '{device} gave out number {n, number} twice, as after a restored copy.',
  'cli.check.conflict': 'Entry {id} is here in {count, number} versions; none of them counts.',
  'cli.check.unreadable': 'Record {position, number} can’t be read: {why}.',
  'cli.check.attachmentChanged': 'A picture or series has been changed ({hash}…).',
  'cli.check.attachmentMissing': 'A picture or series that an entry shows is not here ({hash}…).',

  'cli.take': 'Write the whole daybook to a file, to be brought in elsewhere.',
  'cli.take.out': 'the file to write (standard output, if not said)',
  'cli.take.done': '{entries, plural, one {# entry} other {# entries}} written to {file}.',
  'cli.bring': 'Bring in a daybook file. What is here already is left as it is, and counted.',
  'cli.bring.file': 'the file, or - for standard input',
  'cli.bring.done':
    '{kept, plural, =0 {Nothing new} one {# new entry} other {# new entries}}; {there, plural, one {# was} other {# were}} here already.',
  'cli.bring.attached': '{attached, plural, one {# picture or series} other {# pictures and series}} came with them.',
  'cli.bring.conflicts':
    '{count, plural, one {# entry is} other {# entries are}} now here in two versions, and none of them counts until one is taken back: loamwright daybook shows them.',

  'cli.belief': 'What is commonly held of heaps, beds and teas, and what has been published of it.',
  'cli.belief.words': 'words of the belief, such as coffee acid; left out, every belief',
  'cli.belief.held': '“{held}”',
  'cli.belief.standing': 'In short: {finding}; {evidence}.',
  'cli.belief.hint': 'What is published of one: loamwright belief WORDS',

  'cli.reckon': 'Run one calculation of the catalogue: JSON in on standard input, the answer out.',
  'cli.reckon.id': 'which calculation',
  'cli.reckon.list': 'list the calculations',
  'cli.reckon.schema': 'print the schemas of its input and answer',
  'cli.reckon.sources': 'print what it rests on',
  'cli.reckon.example': 'print an input that does the work',
  'cli.reckon.hint': 'Try one: loamwright reckon ID --example | loamwright reckon ID',

  'problem.server-missing': 'The server has not been built: there is no {path}. Build it with: npm run build',
  'problem.input-empty':
    'Nothing came on standard input. Give the input there: loamwright reckon {path} < in.json (--example prints one).',
  'problem.not-json-text': 'What was given at {path} is not JSON: {found}.',
  'problem.not-text': 'What was given at {path} is not text in UTF-8.',
  'problem.settings-broken':
    'The settings in {path} can’t be read: {found}. Mend the file, or move it away to begin with fresh settings.',
  'problem.folder-unusable':
    '{path} can’t be used: {found}. Choose another folder with --data, or mend its permissions.',
  'problem.file-unreadable': 'The file {path} can’t be read: {found}.',
  'problem.file-unwritable': 'The file {path} can’t be written: {found}.',
  'problem.damaged':
    'The daybook at {path} can’t be opened: {found}. Nothing in it was changed. Move it away and bring back a copy (loamwright bring FILE), or choose another folder with --data.',
  'problem.busy': 'The daybook at {path} is in use by another program that is writing just now. Try again.',
  'problem.full': 'The disk with {path} is full. Nothing was written.',
  'problem.other-holding':
    'That is the daybook of another holding, and two holdings never mix. Nothing was taken over. To keep it beside this one, give it a data folder of its own with --data.',

  'problem.daybook-empty': 'The daybook at {path} has not been begun, so there is nothing to take.',
  'problem.nothing-named': 'It is not said what: give it after {path}. See: loamwright --help',
  'problem.note-empty': 'The note is empty: give its words after note.',
  'problem.ingredient-unreadable':
    '“{found}” can’t be read. What would do is a material, =, and an amount: straw=9buckets, "goat bedding=half a barrow".',
  'problem.amount-unreadable':
    'The amount of {path}, “{found}”, can’t be read. What would do: 9 buckets, half a barrow, 2 bags packed, 3-4 bales, 20kg, 40 L, a lot.',
  'problem.weigh-it': 'How heavy {path} is, the program does not know. Give its mass, such as 20kg.',
  'problem.doubtful-alone': 'Say what it is in, and the doubtful thing after a plus: green-weeds+{found}=1bag.',
  'problem.measurement-unreadable': '{path} is “{found}”, which can’t be read. What would do: {wanted}.',
  'problem.when-unreadable':
    'The time “{found}” ({path}) can’t be read. What would do: 18:00, yesterday, yesterday 18:00, monday 7:30, 3 days ago, 2026-03-01, 2026-03-01 18:00.',
  'problem.bay-unreadable':
    'The size “{found}” can’t be read. What would do is width x depth x height: 1.2x1.2x1m, 4x4x4ft; or the name of a bay that is written down.',
  'problem.bay-missing': 'It is not said into which bay: moved BAY.',
  'problem.size-unreadable': '“{found}” ({path}) can’t be read. What would do: bucket=14L, barrow=3ft3.',
  'problem.act-unknown':
    '“{found}” is no temperature and nothing that can be logged of a heap. What would do: 148F, or one of: {wanted}.',
  'problem.reading-odd': '{found} Did you mean: {wanted}?',
  'problem.no-such-belief': 'No belief is known by “{found}”. See all of them: loamwright belief',
  'problem.no-such-heap':
    'There is no heap called “{found}”.{offers, plural, =0 {} other { Nearest: {wanted}.}} See: loamwright heap',
  'problem.no-such-bay':
    'There is no bay called “{found}”.{offers, plural, =0 {} other { Nearest: {wanted}.}} Set one up: loamwright log bay NAME 1.2x1.2x1m',
  'problem.which-heap': 'There is more than one heap called “{found}”. Give one by its id: {wanted}.',
  'problem.which-bay': 'There is more than one bay called “{found}”. Give one by its id: {wanted}.',
  'problem.no-such-entry': 'There is no entry whose id ends with “{found}”. See: loamwright daybook --all',
  'problem.which-entry': 'More than one id ends with “{found}”: {wanted}. Give more of it.',
  'problem.amend-other-kind':
    'That is a {wanted}, and a correction must be one too, not a {found}. Take it back instead, and log it anew.',
  'problem.amend-nothing': 'It is not said what the entry should have said. Give the words for it, --body, or --when.',
  'problem.amend-by-body':
    'A {found} is corrected by its whole body: --body FILE, or --body - (loamwright daybook --show ID prints it).',
  'problem.amend-unreadable-kind':
    'This version of the program does not know the kind {found}, so it can’t correct it.',
  'problem.forget-only-demo': 'Only the demo garden can be forgotten: give {wanted} with {path}.',
  'problem.bay-needed':
    'It is not said where it stands: give {path} with the name of a bay, or its inside as 1.2x1.2x1m.',
  'problem.bay-without-size':
    'How large that bay is, is not written down. Write it down (loamwright log bay NAME 1.2x1.2x1m), or give its inside with {path}.',
  'problem.no-last-mix':
    'There is no mix to build from yet. Mix first (loamwright mix straw=9buckets …), or give the amounts here.',
  'problem.mix-empty':
    'The last mix uses nothing, so there is nothing to build. Mix again with more to choose from, or give the amounts here.',
} as const;
