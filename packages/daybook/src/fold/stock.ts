import { likely, type Quantity } from '@loamwright/science';
import type { Told } from '../kinds/registry.ts';
import type { StockMove } from './holding.ts';
import { type OpenHolding, warn } from './open.ts';

/** What a move of stock says beside its direction. */
interface Moved {
  readonly mass_kg: Quantity;
  readonly volume_m3?: Quantity | undefined;
}

/** Books a move of a material into the store (`sign` 1) or out of it (−1). */
export function moveStock(
  state: OpenHolding,
  material: string,
  sign: 1 | -1,
  moved: Moved,
  move: Pick<StockMove, 'entry' | 'at' | 'why' | 'with'>,
): void {
  const stock = state.stock.get(material) ?? { material, mass_kg: 0, moves: [] };
  state.stock.set(material, stock);
  const before = stock.mass_kg;
  const mass_kg = sign * likely(moved.mass_kg);
  const volume_m3 = moved.volume_m3 === undefined ? null : sign * likely(moved.volume_m3);
  stock.mass_kg += mass_kg;
  stock.moves.push({ entry: move.entry, at: move.at, mass_kg, volume_m3, why: move.why, with: move.with });
  if (stock.mass_kg < 0 && before >= 0) warn(state, 'stock-below-zero', move.entry, material);
}

export function stockIn(state: OpenHolding, { subject, body, entry }: Told<'stock-in'>): void {
  moveStock(state, subject, 1, body, { entry: entry.id, at: entry.happened, why: 'in', with: null });
}

export function stockOut(state: OpenHolding, { subject, body, entry }: Told<'stock-out'>): void {
  moveStock(state, subject, -1, body, { entry: entry.id, at: entry.happened, why: 'out', with: null });
}

export function materialDescribed(state: OpenHolding, told: Told<'material-described'>): void {
  materialOf(state, told.subject).described = told;
}

export function materialMeasured(state: OpenHolding, told: Told<'material-measured'>): void {
  materialOf(state, told.subject).measured.push(told);
}

function materialOf(state: OpenHolding, id: string): NonNullable<ReturnType<OpenHolding['materials']['get']>> {
  const known = state.materials.get(id);
  if (known !== undefined) return known;
  const material = { id, described: null, measured: [] };
  state.materials.set(id, material);
  return material;
}
