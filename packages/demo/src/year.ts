import type { Entry } from '@loamwright/daybook';
import { keepBeds } from './beds.ts';
import { keepBin } from './bin.ts';
import type { Garden } from './garden.ts';
import { openNotebook } from './notebook.ts';
import { work } from './plan.ts';
import { randomFrom } from './random.ts';
import { setUp, tell } from './story.ts';
import { openStore, supply } from './supply.ts';
import { tend } from './tend.ts';
import { dayFrom } from './time.ts';
import { airOf } from './weather.ts';

/** The holding of the demo: always the same, so that it is never taken for the grower's own. */
export const quarryLaneHolding: string = 'quarry-lane-demo';

/** How many days are told. */
export const quarryLaneDays: number = 365;

/** When the year begins, and which of the many it is. */
export interface QuarryLaneOptions {
  /** First day of the year told, such as `2025-11-01`; any day of the calendar. */
  readonly startDay: string;
  /** A whole number: another seed tells another year. */
  readonly seed: number;
  /** Device that is said to have written it. */
  readonly device?: string | undefined;
}

/**
 * A year of entries at Quarry Lane, for a demo: a quarter-acre hillside garden with two goats, six rabbits, a café's
 * grounds, apple pomace in October, hedge chippings, straw and lawn.
 *
 * **Everything in it is invented**: place, people, weather, readings and harvests. Only the amounts are worked out
 * as the program works out a grower's. It proves nothing and is never a check value.
 *
 * Pure: the same options give the same entries, sums included. They are one device's unbroken chain, and fold with
 * nothing loose, no conflict and no warning.
 *
 * @throws RangeError when `startDay` is no calendar date.
 */
export function quarryLane({ startDay, seed, device = 'quarry-lane-phone' }: QuarryLaneOptions): readonly Entry[] {
  const random = randomFrom(seed);
  const air_degC = airOf(random);
  const book = openNotebook({ startDay, holding: quarryLaneHolding, device, by: 'nell', random });
  const first = dayFrom(startDay, 0);
  const garden: Garden = {
    random,
    book,
    day: first,
    air_degC: 0,
    stock: new Map(),
    heaps: new Map(),
    spreadOn: new Map(),
    sown: new Set(),
  };
  setUp(garden);
  openStore(garden);
  for (let number = 0; number < quarryLaneDays; number++) {
    garden.day = dayFrom(startDay, number);
    garden.air_degC = air_degC(garden.day);
    supply(garden);
    work(garden);
    keepBin(garden);
    keepBeds(garden);
    for (const heap of garden.heaps.values()) tend(garden, heap);
    tell(garden);
  }
  return book.entries();
}
