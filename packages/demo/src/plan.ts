import { guessed, portion } from './amount.ts';
import type { BedId } from './beds.ts';
import { spreadOn } from './beds.ts';
import { build, type HeapPlan } from './build.ts';
import { book, type Garden, livingHeap } from './garden.ts';

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** Heaps by the day they are built on. The last is still hot at the end of the year. */
const builds: Readonly<Record<number, Pick<HeapPlan, 'id' | 'bay'>>> = {
  14: { id: 'heap-1', bay: 'bay-1' },
  60: { id: 'heap-2', bay: 'bay-2' },
  88: { id: 'heap-3', bay: 'bay-3' },
  150: { id: 'heap-4', bay: 'bay-1' },
  250: { id: 'heap-5', bay: 'bay-3' },
  357: { id: 'heap-6', bay: 'bay-1' },
};

/** The pressing begins in the second week of October; the heap for it stands by itself. */
const POMACE_MONTH = 10;
const POMACE_FROM_DAY = 8;
const POMACE_ID = 'pomace-heap';
/** Not before bedding has come in. */
const SETTLED_DAYS = 8;

const COMBINED_ID = 'curing-heap';
const SPLIT_ID = 'heap-4-second';

type Work = (garden: Garden) => void;

/** What is done on one day of the year and no other. */
const works: Readonly<Record<number, Work>> = {
  118: (garden) => finish(garden, 'heap-1'),
  121: spreads('heap-1', 'kale', 0.35),
  122: spreads('heap-1', 'leeks', 0.5),
  124: spreads('heap-1', 'strawberries', 1),
  160: combine,
  182: split,
  240: (garden) => finish(garden, COMBINED_ID),
  242: screen,
  245: spreads(COMBINED_ID, 'squash', 0.5),
  246: spreads(COMBINED_ID, 'potatoes', 1),
  285: (garden) => finish(garden, 'heap-4'),
  288: spreads('heap-4', 'kale', 0.6),
  290: spreads('heap-4', 'strawberries', 1),
  300: moveSecondHalf,
};

/** Builds, combines, splits, screens, finishes and spreads, each on its day. */
export function work(garden: Garden): void {
  const { day } = garden;
  works[day.number]?.(garden);
  const plan = builds[day.number];
  if (plan !== undefined) build(garden, { ...plan, name: nameFor(garden) });
  const pressed = day.month === POMACE_MONTH && day.dayOfMonth >= POMACE_FROM_DAY && day.number >= SETTLED_DAYS;
  if (pressed && !garden.heaps.has(POMACE_ID)) {
    build(garden, { id: POMACE_ID, name: 'Pomace heap', bay: 'lane', pomace: true });
  }
}

/** Named for its month; a second one of that month is called so. */
function nameFor(garden: Garden): string {
  const name = `${months[garden.day.month - 1] ?? ''} heap`;
  const taken = [...garden.heaps.values()].some((heap) => heap.name === name);
  return taken ? `Second ${name}` : name;
}

function spreads(heap: string, bed: BedId, share: number): Work {
  return (garden) => spreadOn(garden, heap, bed, share);
}

/** What is left of the mass of a mix when it is compost: solid manure loses about half. */
const LEFT_OF_MASS = 0.5;
const COMPOST_KG_PER_M3 = 650;

function finish(garden: Garden, id: string): void {
  const heap = livingHeap(garden, id);
  heap.mass_kg *= LEFT_OF_MASS;
  garden.book.put({
    day: garden.day.number,
    minutes: 15 * 60,
    precision: 'day',
    kind: 'finished',
    subject: id,
    body: { mass_kg: guessed(heap.mass_kg), volume_m3: guessed(heap.mass_kg / COMPOST_KG_PER_M3) },
  });
  heap.state = 'curing';
}

function combine(garden: Garden): void {
  const from = ['heap-2', 'heap-3'].map((id) => livingHeap(garden, id));
  garden.book.put({
    day: garden.day.number,
    minutes: 11 * 60,
    precision: 'hour',
    kind: 'combined',
    subject: COMBINED_ID,
    body: { from: from.map(({ id }) => ({ heap: id })), name: 'Curing heap', bay: 'corner' },
  });
  garden.heaps.set(COMBINED_ID, {
    id: COMBINED_ID,
    name: 'Curing heap',
    builtOn: Math.min(...from.map(({ builtOn }) => builtOn)),
    lastTurnOn: garden.day.number,
    turns: 1,
    peak_degC: 0,
    thirst: 0.4,
    mass_kg: from.reduce((sum, { mass_kg }) => sum + mass_kg, 0),
    state: 'curing',
  });
  for (const heap of from) heap.state = 'gone';
}

function split(garden: Garden): void {
  const heap = livingHeap(garden, 'heap-4');
  const name = `${heap.name}, second half`;
  garden.book.put({
    day: garden.day.number,
    minutes: 14 * 60,
    precision: 'hour',
    kind: 'split',
    subject: heap.id,
    body: { into: [{ heap: SPLIT_ID, share: 0.5, name, bay: 'bay-2' }] },
  });
  heap.mass_kg /= 2;
  garden.heaps.set(SPLIT_ID, { ...heap, id: SPLIT_ID, name, lastTurnOn: garden.day.number, turns: heap.turns + 1 });
}

function screen(garden: Garden): void {
  const heap = livingHeap(garden, COMBINED_ID);
  const oversize = portion('hedge-chippings', 2, 'barrow');
  const share = Math.round((100 * oversize.mass_kg.p50) / heap.mass_kg) / 100;
  book(garden, oversize, 1);
  garden.book.put({
    day: garden.day.number,
    minutes: 13 * 60,
    precision: 'hour',
    kind: 'screened',
    subject: heap.id,
    body: {
      mesh_m: 0.0127,
      oversize: {
        material: 'hedge-chippings',
        mass_kg: oversize.mass_kg,
        volume_m3: oversize.volume_m3,
        share,
        of: 'hedge-chippings',
      },
    },
    entered: { '/oversize/mass_kg': oversize.entered, '/mesh_m': { amount: 0.5, unit: 'in' } },
  });
  heap.mass_kg *= 1 - share;
}

function moveSecondHalf(garden: Garden): void {
  garden.book.put({
    day: garden.day.number,
    minutes: 15 * 60 + 30,
    precision: 'hour',
    kind: 'moved',
    subject: SPLIT_ID,
    body: { bay: 'corner' },
  });
  garden.book.put({
    day: garden.day.number,
    minutes: 15 * 60 + 50,
    precision: 'hour',
    kind: 'covered',
    subject: SPLIT_ID,
    body: { cover: 'sheet' },
  });
}
