import type { Portion } from './amount.ts';
import type { Notebook } from './notebook.ts';
import type { Random } from './random.ts';
import type { Day } from './time.ts';

/** A heap as it lives in the invented year. */
export interface LivingHeap {
  readonly id: string;
  readonly name: string;
  readonly builtOn: number;
  lastTurnOn: number;
  turns: number;
  /** Hottest core since the last turn, °C. */
  peak_degC: number;
  /** How dry it has become, 0 just watered. */
  thirst: number;
  mass_kg: number;
  state: 'working' | 'curing' | 'gone';
}

/** The garden on one day, and what is written down of it. */
export interface Garden {
  readonly random: Random;
  readonly book: Notebook;
  day: Day;
  air_degC: number;
  /** Likely mass in store by material, kg, as the book has it. */
  readonly stock: Map<string, number>;
  readonly heaps: Map<string, LivingHeap>;
  /** Day of the last spreading of what is not proved safe, by bed. */
  readonly spreadOn: Map<string, number>;
  readonly sown: Set<string>;
}

export function onHand_kg(garden: Garden, material: string): number {
  return garden.stock.get(material) ?? 0;
}

/** Books a portion in (`sign` 1) or out (−1), by its likely mass as the fold does. */
export function book(garden: Garden, { material, mass_kg }: Pick<Portion, 'material' | 'mass_kg'>, sign: 1 | -1): void {
  garden.stock.set(material, onHand_kg(garden, material) + sign * mass_kg.p50);
}

interface Coming {
  readonly minutes: number;
  readonly supplier?: string | undefined;
  readonly note?: string | undefined;
}

/** Something comes onto the holding and into store. */
export function bring(garden: Garden, what: Portion, { minutes, supplier, note }: Coming): void {
  book(garden, what, 1);
  garden.book.put({
    day: garden.day.number,
    minutes,
    precision: 'hour',
    kind: 'stock-in',
    subject: what.material,
    body: { mass_kg: what.mass_kg, volume_m3: what.volume_m3, supplier, note },
    entered: { '/mass_kg': what.entered },
  });
}

/** Something leaves the store other than onto a heap or bed. */
export function giveAway(garden: Garden, what: Portion, minutes: number, note: string): void {
  book(garden, what, -1);
  garden.book.put({
    day: garden.day.number,
    minutes,
    precision: 'hour',
    kind: 'stock-out',
    subject: what.material,
    body: { mass_kg: what.mass_kg, volume_m3: what.volume_m3, why: 'given', note },
    entered: { '/mass_kg': what.entered },
  });
}

export function livingHeap(garden: Garden, id: string): LivingHeap {
  const heap = garden.heaps.get(id);
  if (heap === undefined) throw new RangeError(`no heap ${id} yet`);
  return heap;
}
