import { portion } from './amount.ts';
import { book, bring, type Garden, giveAway, onHand_kg } from './garden.ts';

/** What the first day finds in store. */
export function openStore(garden: Garden): void {
  const minutes = 9 * 60;
  const note = 'In store when the daybook was begun.';
  bring(garden, portion('straw', 5, 'straw-bale'), { minutes, note });
  bring(garden, portion('hedge-chippings', 4, 'barrow-large'), { minutes: minutes + 5, note });
  bring(garden, portion('autumn-leaves', 5, 'leaf-bag-30gal'), { minutes: minutes + 10, note });
  bring(garden, portion('goat-bedding', 4, 'barrow'), { minutes: minutes + 15, note });
  bring(garden, portion('rabbit-droppings', 2, 'pail'), { minutes: minutes + 20, note });
}

const LEAST_STRAW_KG = 80;
const MOST_GROUNDS_KG = 45;

/** What comes in day by day: the animals, the café, the lawn, the hedge, the trees. */
export function supply(garden: Garden): void {
  const { day, random } = garden;
  if (day.number % 7 === 2) {
    const count = random.next() < 0.3 ? 1.5 : 1;
    bring(garden, portion('coffee-grounds', count, 'bucket-5gal'), { minutes: 11 * 60, supplier: 'Corner café' });
  }
  if (day.number % 7 === 6) bring(garden, portion('rabbit-droppings', 1, 'pail'), { minutes: 8 * 60 });
  if (day.number % 21 === 5)
    bring(garden, portion('goat-bedding', 2, 'barrow'), { minutes: 10 * 60, note: 'Pen cleaned out.' });
  if ((day.month === 2 || day.month === 8) && day.dayOfMonth === 14) {
    bring(garden, portion('hedge-chippings', 3, 'barrow-large'), { minutes: 14 * 60, supplier: 'Our hedges' });
  }
  if (day.month === 11 && [5, 12, 19].includes(day.dayOfMonth)) {
    bring(garden, portion('autumn-leaves', 6, 'leaf-bag-30gal'), { minutes: 15 * 60, supplier: 'The lane' });
  }
  if (onHand_kg(garden, 'straw') < LEAST_STRAW_KG) {
    bring(garden, portion('straw', 5, 'straw-bale'), { minutes: 16 * 60, supplier: 'Farm at the top of the lane' });
  }
  if (onHand_kg(garden, 'coffee-grounds') > MOST_GROUNDS_KG) {
    giveAway(garden, portion('coffee-grounds', 1, 'bucket-5gal'), 17 * 60, 'To the neighbour, before they go mouldy.');
  }
  if (mows(garden)) mow(garden);
}

/** The lawn is cut every ten days from April to October. */
function mows({ day }: Garden): boolean {
  return day.month >= 4 && day.month <= 10 && day.number % 10 === 8;
}

/** Grass keeps two days: what no heap wants is a thin mulch. */
function mow(garden: Garden): void {
  const grass = portion('grass-clippings', 1, 'barrow');
  bring(garden, grass, { minutes: 13 * 60, supplier: 'Our lawn' });
  book(garden, grass, -1);
  garden.book.put({
    day: garden.day.number,
    minutes: 13 * 60 + 40,
    precision: 'hour',
    kind: 'spread',
    subject: 'potatoes',
    body: {
      of: { type: 'material', id: 'grass-clippings', mass_kg: grass.mass_kg, raw: false, fromStock: true },
      volume_m3: grass.volume_m3,
      workedIn: false,
    },
    entered: { '/of/mass_kg': grass.entered },
  });
}
