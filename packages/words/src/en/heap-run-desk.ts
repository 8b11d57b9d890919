/** What the command line asks and says of what a heap would do. */
export const heapRunDeskEn = {
  'cli.heap.run': 'What a heap would do: whether it heats, when it peaks and asks for a turn, what it loses, and why.',
  'cli.heap.run.stuff': 'what is in it, such as straw=24buckets "goat bedding=18buckets"; or a heap of the daybook',
  'cli.heap.run.water': 'water poured on while building',
  'cli.heap.run.bay': 'it stands in a bay: its inside as 1.2x1.2m (width, depth, perhaps height), or its name',
  'cli.heap.run.dome': 'it is a dome, in these proportions: 1.6x1m (width at the foot, height); so if nothing is said',
  'cli.heap.run.cone': 'it is a cone, in these proportions: 1.6x1m (width at the foot, height)',
  'cli.heap.run.long': 'it is a long heap, round on top: 1.5x1.2x6m (width, height, length)',
  'cli.heap.run.drum': 'it is in a drum lying down: 0.6x0.9m (width across, length)',
  'cli.heap.run.trench': 'it is in a trench: 0.5x0.4x3m (width, depth, length)',
  'cli.heap.run.walls': 'what stands round it: none, pallet, timber, block, plastic, straw-bales, insulated',
  'cli.heap.run.cover':
    'what lies on it: open, lid, fleece, tarpaulin, carpet, compost, straw; straw:30cm says how deep',
  'cli.heap.run.shelter': 'sheltered from the wind, or open',
  'cli.heap.run.air': 'the air, the same all the time, such as 8C',
  'cli.heap.run.climate': 'means of the warmest and the coldest month, such as 17C/3C; the year then runs from --built',
  'cli.heap.run.weather':
    'a table of weather (CSV): day or time, temperature, perhaps humidity, wind, rain, sun, ground',
  'cli.heap.run.place':
    'a place in degrees north and east, 46.5,7.25, whose hourly weather is asked of the service in LOAMWRIGHT_WEATHER',
  'cli.heap.run.built': 'when it is built, such as 2026-03-20; now, if not said',
  'cli.heap.run.south': 'south of the equator, with --climate',
  'cli.heap.run.rain': 'rain of a day, such as 2mm',
  'cli.heap.run.wind': 'wind of a weather station, such as 3m/s',
  'cli.heap.run.humidity': 'humidity of the air, such as 80%',
  'cli.heap.run.start':
    'temperature of the stuff when built: bedding fresh from a shed or grass that stood overnight comes warm; as the air, if not said',
  'cli.heap.run.turn':
    'it is turned on this day: 6, or 6:rough for lifted over; into another bay or form with 6:bay=1.5x1.5m, 6:dome=1.6x1m, and its walls with 6:bay=1.5x1.5m:walls=pallet; may be repeated',
  'cli.heap.run.waterOn': 'it is watered: 8:20L while forking, 8:20L:top over the top; may be repeated',
  'cli.heap.run.coverOn': 'its cover changes: 10:straw, 10:straw:30cm; may be repeated',
  'cli.heap.run.add':
    'stuff is laid on: "5: grass=2barrows; straw=1bale", forked in with "5:mixed: …"; may be repeated',
  'cli.heap.run.chopped': 'all of it was chopped or shredded besides',
  'cli.heap.run.days': 'how many days it is followed (60 if not said)',
  'cli.heap.run.members': 'how many heaps that it may be are run, 8 to 256 (64 if not said)',
  'cli.heap.run.shells': 'shells from core to surface, 3 to 40 (8 if not said)',
  'cli.heap.run.csv': 'print the courses as a table (CSV)',
  'cli.heap.size': 'The smallest heap of a mix that gets and stays hot here.',
  'cli.heap.size.stuff': 'what is in it, such as "horse bedding=6barrows" grass=2barrows; only its proportions count',
  'cli.heap.size.above': 'what the core is to stay above; 55 °C (131 °F) if not said',
  'cli.heap.size.days': 'for so many of its first 14 days, 1 to 12 (3 if not said)',

  'cli.heapRun.course': 'The core over the days:',
  'cli.heapRun.key.likely': 'likely',
  'cli.heapRun.key.band': 'one time in ten colder, one in ten hotter',
  'cli.heapRun.key.turn': 'turned',
  'cli.heapRun.key.water': 'watered',
  'cli.heapRun.key.add': 'added to',
  'cli.heapRun.key.stand': 'cover or place changed',
  'cli.heapRun.key.read': 'read in the core',
  'cli.heapRun.days': 'days',
  'cli.heapRun.shells': 'From core to surface in the middle one of these heaps, {unit}:',
  'cli.heapRun.day': 'day',
  'cli.heapRun.core': 'core',
  'cli.heapRun.surface': 'surface',
  'cli.heapRun.high': 'At its fullest it stands about {height} high in the bay, {range}.',
  'cli.heapRun.high.turned':
    'Turned into its next bay on day {day} it stands about {height} high there at its fullest, {range}.',
  'cli.heapRun.overfull': 'At its fullest it comes to {volume}, {range}, and there is room for {holds}.',
  'cli.heapRun.overfull.turned':
    'Where it is turned into on day {day} it comes to {volume}, {range}, and there is room for {holds}.',
  'cli.heapRun.airGuessed':
    'Nobody said what the weather is: still air of {air} was taken (--air, --climate or --weather).',
  'cli.heapRun.airRead':
    'Nobody said what the weather is: the air was taken as it was read beside it ({count, plural, one {# reading} other {# readings}}).',
  'cli.heapRun.weatherEnds': 'The weather ends on day {day}; after it the last of it was held.',
  'cli.heapRun.aside': 'Left aside, as nothing of the weather that counts here: {names}.',
  'cli.heapRun.weatherMeans': 'Of each day the middle between its highest and its lowest was taken.',
  'cli.heapRun.within':
    'Of {all, plural, one {# reading} other {# readings}} of its core, {within} {within, plural, one {lies} other {lie}} in the band.',
} as const;
