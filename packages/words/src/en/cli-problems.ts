/** Problems that are first met at the command line; the app may pass one on. */
export const cliProblemsEn = {
  'problem.server-missing': 'The server has not been built: there is no {path}. Build it with: npm run build',
  'problem.input-empty':
    'Nothing came on standard input. Give the input there: loamwright reckon {path} < in.json (--example prints one).',
  'problem.not-json-text': 'What was given at {path} is not JSON: {found}.',
  'problem.not-text':
    'What was given at {path} is not text in UTF-8, in UTF-16 or in Windows-1252. What would do: save it again as plain text or CSV, in UTF-8.',
  'problem.settings-broken':
    'The settings in {path} can’t be read: {found}. Mend the file, or move it away to begin with fresh settings.',
  'problem.folder-unusable':
    '{path} can’t be used: {found}. Choose another folder with --data, or mend its permissions.',
  'problem.data-not-folder':
    '{found} is a file, and {path} wants the folder that a daybook is kept in. To take over what such a file holds: loamwright bring FILE',
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
  'problem.nothing-layered':
    'It is not said what lies there: give its layers after bed water, from the top, such as loam=30cm clay-loam=70cm.',
  'problem.crop-without-area': 'On how much {path} stands is not said. What would do: {path}=10m2, {path}=4x8ft.',
  'problem.note-empty': 'The note is empty: give its words after note.',
  'problem.ingredient-unreadable':
    '“{found}” can’t be read. What would do is a material, =, and an amount: straw=9buckets, "goat bedding=half a barrow".',
  'problem.amount-unreadable':
    'The amount of {path}, “{found}”, can’t be read. What would do: 9 buckets, half a barrow, 2 bags packed, 3-4 bales, 20kg, 40 L, a lot.',
  'problem.weigh-it': 'How heavy {path} is, the program does not know. Give its mass, such as 20kg.',
  'problem.doubtful-alone': 'Say what it is in, and the doubtful thing after a plus: green-weeds+{found}=1bag.',
  'problem.figure-unreadable': '“{found}” ({path}) can’t be read. What would do: {wanted}.',
  'problem.check-half': '{path} is half of a check: it wants {wanted} beside it.',
  'problem.name-taken':
    '“{found}” is a known material. To correct it leave --like out; to add your own give it another name.',
  'problem.name-unusable': 'A name needs a letter or a figure in it.',
  'problem.clause-unreadable': 'The clause “{found}” ({path}) can’t be read. What would do: {wanted}.',
  'problem.no-clauses':
    'No clause was given. Give each with --clause, such as --clause "height 4ft", or a file of them with --file.',
  'problem.weather-no-service':
    'No service of hourly weather is named. Set LOAMWRIGHT_WEATHER to the address of one, or say the air yourself: --air.',
  'problem.place-unreadable':
    '{path} is “{found}”, which can’t be read. What would do: degrees north and east, {wanted}.',
  'problem.weather-unreachable':
    'No weather came from {path} ({found}). The service’s address is in LOAMWRIGHT_WEATHER; without it, say the air yourself: --air.',
  'problem.weather-unreadable':
    'What came as {path} is no hourly weather: it begins “{found}”. What would do: {wanted}.',
  'problem.weather-hours-missing': 'The weather has a gap at {path}: {found}. What would do: {wanted}.',
  'problem.measurement-unreadable': '{path} is “{found}”, which can’t be read. What would do: {wanted}.',
  'problem.when-unreadable':
    'The time “{found}” ({path}) can’t be read. What would do: 18:00, yesterday, yesterday 18:00, monday 7:30, 3 days ago, 3 months ago, 2026-03-01, 2026-03-01 18:00.',
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
  'problem.heap-empty': 'Nothing is written down of what went into “{found}”.',
  'problem.no-such-bed': 'There is no bed called “{found}”.{offers, plural, =0 {} other { Nearest: {wanted}.}}',
  'problem.which-bed': 'There is more than one bed called “{found}”. Give one by its id: {wanted}.',
  'problem.no-crop-named':
    'Name the crops with their areas, such as kale=10m2 leeks=5m2, or a bed of the daybook on which something was sown this season.',
  'problem.spread-later': '{found} (at {path}) is after the harvests of {wanted}: say another year with --for.',
  'problem.grade-unreadable':
    '“{found}” (at {path}) is no grade: it wants percent of nitrogen such as 12, or 20:10:10, with a price of a kilogram after @.',
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
  'problem.no-such-aim':
    'The last mix has no answer for {path} {found}.{offers, plural, =0 { It has the one answer only.} other { It has: {wanted}.}}',
  'problem.ash-only': '{path} goes with {wanted}: it is what a test found in wood ash.',
  'problem.aim-with-stuff': '{path} takes one of the answers of the last mix, so no amounts go with it.',
  'problem.mix-empty':
    'The last mix uses nothing, so there is nothing to build. Mix again with more to choose from, or give the amounts here.',
  'problem.squeeze-unknown':
    '“{found}” ({path}) is not what a squeeze shows. Squeeze a handful from the middle as hard as you can and say what happens: streams (water runs out of it), drops (drops come between the fingers), holds (it shines and holds together), crumbles (it falls apart), dusty.',
  'problem.bed-how-deep':
    'How deep “{found}” is, is not said. What would do: --depth 40cm beside it, or a third measure: 2.4x1.2x0.4m, 8x4x1.3ft.',
  'problem.heap-size-unreadable':
    'The size “{found}” can’t be read. What would do: 1.2x1.2x1.2m, 4x4x4ft, 0.76m3, 1yd3, or the name of a bay that is written down.',
  'problem.heap-size-beyond':
    'No heap measures “{found}”. What would do: sides from {wanted}. Is it a slip of the pen?',
  'problem.hottest-below-reading':
    'The hottest it ever was can’t be {found} ({path}), below the {wanted} that it reads now. One of the two is wrong.',
  'problem.turned-before-built':
    'It can’t have been turned {found} ago ({path}), before it was built {wanted} ago. One of the two is wrong.',
  'why.days': '{days, plural, one {# day} other {# days}}',
  'problem.bay-unmeasured': 'Nobody has written down how large the bay “{found}” is. What would do: 1.2x1.2x1.2m.',
  'problem.nothing-wanted':
    'By what is written down none of the beds wants any, and nothing was written: leave it in the heap, or share by area where the soil is not rich already.',
  'problem.csv-empty': 'There is nothing in {path}.',
  'problem.csv-no-header':
    '{path} begins with “{found}”, and no row near it names a column of days or times and one of temperatures. What would do: date, core °C, edge °C, turned.',
  'problem.csv-quote-open': 'The quote that begins at {path} (file and line) is never closed.',
  'problem.csv-too-long': '{path} (file and line): a table of more than {wanted} rows is not read.',
  'problem.csv-too-wide': '{path} (file and line): a row of more than {wanted} columns is not read.',
  'problem.csv-ragged':
    '{path} (file and line) has {found} columns, and the header has {wanted}. A decimal comma wants quotes round it, or semicolons between the columns.',
  'problem.csv-no-unit':
    '{path} (file, line, column): nothing says whether “{found}” is in °C or °F. What would do: --unit C, or the unit in the header: core °F.',
  'problem.csv-which-dates':
    '{path} (file, line, column): whether “{found}” begins with the day or the month can’t be told from this table. What would do: --dates dmy or --dates mdy.',
  'problem.csv-date':
    '{path} (file, line, column): “{found}” is no day or time that can be read. What would do: 2026-03-01, 2026-03-01 18:00, 1.3.2026, 1/3/2026 6:00 pm with --dates dmy.',
  'problem.csv-ahead': '{path} (file, line, column): “{found}” lies ahead: only what has happened is written down.',
  'problem.csv-temperature':
    '{path} (file, line, column): “{found}” is no temperature. What would do: 64.5, 64,5, 148F, or nothing.',
  'problem.csv-no-heap':
    '{path} (file, line, column): no heap has “{found}”. Look for a slip, or for the wrong unit. To take it all the same, marked doubtful: --as-typed.',
  'problem.reading-no-heap':
    '{path} is “{found}”, and no heap has that. Look for a slip, or for the wrong unit. To go on without it, as doubtful: --as-typed.',
  'problem.csv-turned':
    '{path} (file, line, column): “{found}” says neither that it was turned nor that it was not: yes, x, no, or nothing.',
  'problem.csv-no-readings': '{path} (file and line): below that header there is no reading.',
  'problem.csv-and-typed': 'A table says its own readings and days: leave {path} out, or --csv.',
  'problem.csv-too-many':
    '{path} comes to {found} entries, and {wanted} at the most are written down at once. Part it by season.',
  'problem.soil-unreadable':
    '“{found}” is no figure of a soil test. What would do: p=84ppm, k=300lb/ac, p2o5=190mg/kg, p=20ppm@olsen.',
  'problem.heap-shape-unreadable': 'The size “{found}” ({path}) can’t be read. What would do: {wanted}.',
  'problem.two-forms': '{path} and {found} are two forms of one answer: say one of them.',
  'problem.day-unreadable':
    '“{found}” ({path}) can’t be read. It begins with a day after it was built, then a colon: {wanted}.',
  'problem.climate-unreadable':
    '“{found}” ({path}) can’t be read. What would do: the means of the warmest and the coldest month, 17C/3C or 63F/37F.',
  'problem.air-measure-unreadable': '{path} is “{found}”, which can’t be read. What would do: {wanted}.',
  'problem.heap-not-built':
    'Of “{found}” nobody wrote down how it was built, for it came from another heap. What would do: what is in it, such as straw=3bales.',
  'problem.heap-too-old': '“{found}” is more than {wanted} days old, and no run is longer.',
  'problem.heap-or-stuff':
    '“{found}” has no = in it. What would do: stuff with amounts (straw=9buckets), or the name of one heap of the daybook and nothing else.',
  'problem.weather-no-header':
    '{path} begins with “{found}”, and no row near it names a column of days or times and one of temperatures. What would do: date, temperature °C, humidity %, wind m/s, rain mm.',
  'problem.weather-no-unit':
    '{path} (file, line, column): nothing says in what “{found}” is told. What would do: {wanted}, in the header or in each cell.',
  'problem.weather-figure': '{path} (file, line, column): “{found}” can’t be read. What would do: {wanted}.',
  'problem.weather-beyond':
    '{path} (file, line, column): no weather has “{found}”; what would do is {wanted}. Look for a slip, or for the wrong unit.',
  'problem.weather-twice': '{path} (file and line): “{found}” stood there before.',
  'problem.weather-gap':
    '{path} (file and line): {found} days without a temperature before it, and at most {wanted} are bridged. Add what lacks, or give a table of its own.',
  'problem.weather-no-rows': '{path} (file and line): below that header there is no temperature.',
  'problem.weather-not-then':
    '{path} has weather from {wanted}, and none for {found}. Say with --built when it is built, or give another table.',
} as const;
