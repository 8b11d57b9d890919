import { guessed } from './amount.ts';
import { type Garden, type LivingHeap, livingHeap } from './garden.ts';

/** The five beds: name and area, m². */
export const beds = {
  kale: { name: 'Kale', area_m2: 12 },
  leeks: { name: 'Leeks', area_m2: 10 },
  squash: { name: 'Squash', area_m2: 18 },
  potatoes: { name: 'Potatoes', area_m2: 20 },
  strawberries: { name: 'Strawberries', area_m2: 8 },
} as const;
export type BedId = keyof typeof beds;

interface Season {
  readonly month: number;
  readonly dayOfMonth: number;
}

const sowing: Readonly<Record<BedId, Season>> = {
  kale: { month: 6, dayOfMonth: 12 },
  leeks: { month: 4, dayOfMonth: 9 },
  squash: { month: 5, dayOfMonth: 21 },
  potatoes: { month: 4, dayOfMonth: 16 },
  strawberries: { month: 8, dayOfMonth: 20 },
};

const picking: readonly (Season & { readonly bed: BedId; readonly mass_kg: number })[] = [
  { bed: 'strawberries', month: 6, dayOfMonth: 18, mass_kg: 6 },
  { bed: 'potatoes', month: 8, dayOfMonth: 25, mass_kg: 45 },
  { bed: 'squash', month: 9, dayOfMonth: 28, mass_kg: 38 },
  { bed: 'kale', month: 10, dayOfMonth: 20, mass_kg: 9 },
  { bed: 'leeks', month: 11, dayOfMonth: 14, mass_kg: 14 },
];

const crops: Readonly<Record<BedId, string>> = {
  kale: 'kale',
  leeks: 'leek',
  squash: 'winter-squash',
  potatoes: 'potato',
  strawberries: 'strawberry',
};

const touchesSoil: Readonly<Record<BedId, boolean>> = {
  kale: false,
  leeks: true,
  squash: true,
  potatoes: true,
  strawberries: true,
};

/** Days between working in what is not proved safe and a harvest: 7 CFR 205.203(c)(1), the longer of the two. */
const RAW_WAIT_DAYS = 120;

/** Sows and picks by the calendar; a crop is left standing while the bed still waits. */
export function keepBeds(place: Garden): void {
  const { day, book } = place;
  const today = ({ month, dayOfMonth }: Season): boolean => month === day.month && dayOfMonth === day.dayOfMonth;
  for (const bed of Object.keys(beds) as BedId[]) {
    if (!today(sowing[bed])) continue;
    place.sown.add(bed);
    book.put({
      day: day.number,
      minutes: 9 * 60 + 30,
      precision: 'day',
      kind: 'sown',
      subject: bed,
      body: { crop: crops[bed], touchesSoil: touchesSoil[bed] },
    });
  }
  for (const one of picking) {
    const waited = day.number - (place.spreadOn.get(one.bed) ?? Number.NEGATIVE_INFINITY);
    if (!today(one) || !place.sown.has(one.bed) || waited < RAW_WAIT_DAYS) continue;
    book.put({
      day: day.number,
      minutes: 17 * 60,
      precision: 'day',
      kind: 'harvested',
      subject: one.bed,
      body: { crop: crops[one.bed], mass_kg: guessed(one.mass_kg) },
    });
  }
}

/** Wet compost, kg/m³: what growers and handbooks find lies between 500 and 900. */
const COMPOST_KG_PER_M3 = 650;

/** Puts part of a heap on a bed. */
export function spreadOn(place: Garden, heapId: string, bed: BedId, share: number): void {
  const heap: LivingHeap = livingHeap(place, heapId);
  const mass_kg = heap.mass_kg * share;
  place.book.put({
    day: place.day.number,
    minutes: 10 * 60 + 40,
    precision: 'hour',
    kind: 'spread',
    subject: bed,
    body: {
      of: { type: 'heap', id: heapId, share },
      mass_kg: guessed(mass_kg),
      volume_m3: guessed(mass_kg / COMPOST_KG_PER_M3),
      workedIn: bed !== 'strawberries',
    },
  });
  heap.mass_kg -= mass_kg;
  if (share === 1) heap.state = 'gone';
  place.spreadOn.set(bed, place.day.number);
}
