import { positive, withSpread } from '@loamwright/science';
import { guessed } from './amount.ts';
import { beds } from './beds.ts';
import type { Garden } from './garden.ts';

const bays = [
  { id: 'bay-1', name: 'Bay 1, by the goats', side_m: 1.2, wall: 'pallets' },
  { id: 'bay-2', name: 'Bay 2', side_m: 1.2, wall: 'pallets' },
  { id: 'bay-3', name: 'Bay 3', side_m: 1.2, wall: 'pallets' },
  { id: 'lane', name: 'Bales by the lane', side_m: 1.3, wall: 'bales' },
  { id: 'corner', name: 'Curing corner', side_m: 1.6, wall: 'open' },
  { id: 'bin', name: 'Bin by the kitchen door', side_m: 0.8, wall: 'plastic' },
] as const;

/** Bays and beds, set up on the first day. */
export function setUp({ book }: Garden): void {
  let minutes = 8 * 60;
  for (const { id, name, side_m, wall } of bays) {
    const side = guessed(side_m);
    book.put({
      day: 0,
      minutes: ++minutes,
      precision: 'day',
      kind: 'bay-set-up',
      subject: id,
      body: { name, width_m: side, depth_m: side, height_m: side, wall },
    });
  }
  for (const [id, { name, area_m2 }] of Object.entries(beds)) {
    book.put({
      day: 0,
      minutes: ++minutes,
      precision: 'day',
      kind: 'bed-set-up',
      subject: id,
      body: { name, area_m2, depth_m: guessed(0.2), texture: 'sandy-loam' },
    });
  }
}

/** The grower's own words, by day. */
const notes: Readonly<Record<number, string>> = {
  1: 'New daybook. A quarter acre on the slope, two goats, six rabbits, and the café keeps its grounds for us.',
  17: 'Steam at first light. The children came to look.',
  75: 'Robins follow the fork. Left a heap of worms for them.',
  137: 'The neighbour asked about the smell after mowing. Grass on the potatoes thinner next time.',
  200: 'Bin by the kitchen door sinks as fast as we fill it.',
  263: 'Borrowed the half-inch screen again. Make our own.',
  330: 'Thermometer checked in ice water: it reads 33 °F.',
};

/** What is said and measured beside the heaps, and one entry taken back. */
export function tell({ day, book }: Garden): void {
  const text = notes[day.number];
  if (text !== undefined) {
    book.put({ day: day.number, minutes: 20 * 60, precision: 'day', kind: 'note', body: { text } });
  }
  if (day.number === 20) {
    book.put({
      day: day.number,
      minutes: 9 * 60,
      precision: 'day',
      kind: 'soil-tested',
      subject: 'kale',
      body: { depth_m: 0.15, pH: 6.3, organicMatter_pctDry: guessed(4.1), method: 'sample posted to a laboratory' },
    });
  }
  if (day.number === 27) {
    book.put({
      day: day.number,
      minutes: 10 * 60 + 50,
      precision: 'hour',
      kind: 'material-measured',
      subject: 'goat-bedding',
      body: { density_kgPerM3AsIs: withSpread(310, Math.log(1.1), positive), method: 'a bucket weighed five times' },
    });
  }
  if (day.number === 97) withdraw(book, day.number);
}

/** Water written down for the wrong heap, and taken back an hour later. */
function withdraw(book: Garden['book'], day: number): void {
  const subject = 'heap-2';
  book.put({
    key: 'wrong-heap',
    day,
    minutes: 17 * 60,
    precision: 'hour',
    kind: 'watered',
    subject,
    body: { volume_L: guessed(19) },
    entered: { '/volume_L': { amount: 5, unit: 'gal' } },
  });
  book.put({
    day,
    minutes: 18 * 60,
    precision: 'hour',
    kind: 'withdrawal',
    withdraws: 'wrong-heap',
    body: { why: 'It was poured on the other heap.' },
  });
}
