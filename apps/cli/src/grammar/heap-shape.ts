import { bad, good, type HeapShape, type Outcome } from '@loamwright/science';
import { readSides, type UnitSystem, unitFor } from '@loamwright/units';

/** Forms that are told by their sides alone. */
export const heapForms = ['dome', 'cone', 'long', 'drum', 'trench'] as const;
export type HeapForm = (typeof heapForms)[number];

const examples: Readonly<Record<HeapForm | 'box', string>> = {
  box: '1.2x1.2m, 4x4x4ft, or the name of a bay that is written down',
  dome: '1.6x1m, 5x3ft',
  cone: '1.6x1m, 5x3ft',
  long: '1.5x1.2x6m, 5x4x20ft',
  drum: '0.6x0.9m, 23x35in',
  trench: '0.5x0.4x3m, 1.5x1x10ft',
};

/** A bay's height follows from what is in it; where none is said this stands in. */
const STAND_IN_HEIGHT_m = 1;
const LONGEST = 60;

/**
 * The sides of a heap in the order in which a grower says them: a bay's width, depth and perhaps height; width and height of a dome
 * or cone; width, height and length of a long heap; width and length of a drum; width, depth and length of a trench.
 * Problem: `heap-shape-unreadable`.
 */
export function readHeapShape(
  form: HeapForm | 'box',
  text: string,
  path: string,
  system: UnitSystem,
): Outcome<HeapShape> {
  const sides = readSides(text.slice(0, LONGEST), unitFor('length', system)) ?? [];
  const shape = shaped[form](sides);
  if (shape !== undefined) return good(shape);
  return bad({ code: 'heap-shape-unreadable', path, found: text.slice(0, LONGEST), wanted: examples[form] });
}

type Sides = readonly number[];

/** So many sides and no other number of them. */
function exactly(
  count: number,
  sides: Sides,
  of: (sides: [number, number, number]) => HeapShape,
): HeapShape | undefined {
  const [one = 0, two = 0, three = 0] = sides;
  return sides.length === count ? of([one, two, three]) : undefined;
}

const shaped: Readonly<Record<HeapForm | 'box', (sides: Sides) => HeapShape | undefined>> = {
  box: (sides) => {
    const box = (width_m: number, depth_m: number, height_m: number): HeapShape => ({
      form: 'box',
      width_m,
      depth_m,
      height_m,
    });
    return (
      exactly(2, sides, ([width_m, depth_m]) => box(width_m, depth_m, STAND_IN_HEIGHT_m)) ??
      exactly(3, sides, (all) => box(...all))
    );
  },
  dome: (sides) => exactly(2, sides, ([diameter_m, height_m]) => ({ form: 'dome', diameter_m, height_m })),
  cone: (sides) => exactly(2, sides, ([diameter_m, height_m]) => ({ form: 'cone', diameter_m, height_m })),
  long: (sides) =>
    exactly(3, sides, ([width_m, height_m, length_m]) => ({ form: 'long', width_m, height_m, length_m })),
  drum: (sides) => exactly(2, sides, ([diameter_m, length_m]) => ({ form: 'drum', diameter_m, length_m })),
  trench: (sides) =>
    exactly(3, sides, ([width_m, depth_m, length_m]) => ({ form: 'trench', width_m, depth_m, length_m })),
};
