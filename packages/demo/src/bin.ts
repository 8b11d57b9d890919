import { guessed, type Portion, portion } from './amount.ts';
import { book, type Garden, onHand_kg } from './garden.ts';

/** The slow bin by the kitchen door. */
const binId = 'kitchen-bin';
const BEGUN_ON = 90;
const FED_EVERY_DAYS = 4;
const READ_EVERY_DAYS = 24;
const NAME = 'Kitchen bin';

/** Begun on a bed of chippings, then fed half a pail of scraps with its cover, for months. */
export function keepBin(garden: Garden): void {
  const { day } = garden;
  if (day.number === BEGUN_ON) begin(garden);
  if (day.number <= BEGUN_ON) return;
  const since = day.number - BEGUN_ON;
  if (since % FED_EVERY_DAYS === 0) feed(garden);
  if (since % READ_EVERY_DAYS === 0) readBin(garden);
}

function begin(garden: Garden): void {
  const base = portion('hedge-chippings', 1, 'pail');
  book(garden, base, -1);
  garden.book.put({
    day: garden.day.number,
    minutes: 12 * 60,
    precision: 'hour',
    kind: 'heap-built',
    subject: binId,
    body: { name: NAME, bay: 'bin', layers: [{ ...laid(base, false), part: 'base' }] },
    entered: { '/layers/0/mass_kg': base.entered },
  });
}

function feed(garden: Garden): void {
  const scraps = portion('kitchen-scraps', garden.random.next() < 0.25 ? 0.75 : 0.5, 'pail');
  const dry = coverFor(garden);
  book(garden, dry, -1);
  garden.book.put({
    day: garden.day.number,
    minutes: 18 * 60 + Math.floor(garden.random.between(0, 90)),
    kind: 'heap-fed',
    subject: binId,
    body: {
      layers: [
        { material: scraps.material, mass_kg: scraps.mass_kg, volume_m3: scraps.volume_m3, part: 'body', raw: true },
        { ...laid(dry, false), part: 'cover' },
      ],
    },
    entered: { '/layers/0/mass_kg': scraps.entered, '/layers/1/mass_kg': dry.entered },
  });
}

/** Leaves while there are any, else straw: about as much as the scraps by volume. */
function coverFor(garden: Garden): Portion {
  const leaves = portion('autumn-leaves', 0.5, 'pail');
  return onHand_kg(garden, 'autumn-leaves') > leaves.mass_kg.p50 ? leaves : portion('straw', 1, 'pail');
}

function laid({ material, mass_kg, volume_m3 }: Portion, raw: boolean) {
  return { material, mass_kg, volume_m3, raw, from: { type: 'stock' } } as const;
}

function readBin(garden: Garden): void {
  const temp_degC = Math.round(garden.air_degC + garden.random.between(6, 14));
  garden.book.put({
    day: garden.day.number,
    minutes: 18 * 60 + 95,
    kind: 'reading',
    subject: binId,
    body: {
      temp_degC,
      point: 'middle',
      depth_m: 0.3,
      squeeze: 'holds',
      smell: 'earthy',
      height_m: guessed(0.6),
    },
    entered: { '/temp_degC': { amount: Math.round(temp_degC * 1.8 + 32), unit: '°F' } },
  });
}
