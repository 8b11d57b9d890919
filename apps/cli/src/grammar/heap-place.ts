import { boxOf, standingIn } from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import { bad, good, type HeapShape, type HeapWallId, type Outcome } from '@loamwright/science';
import type { UnitSystem } from '@loamwright/units';
import { subjectNamed } from '../subject.ts';
import { type HeapForm, readHeapShape } from './heap-shape.ts';

/** A bay or a form, as typed, and the bay of the daybook that it is. */
export interface PlaceRead {
  readonly shape: HeapShape;
  readonly bay?: string | undefined;
}

/** What a place is read with. */
export interface PlaceAround {
  readonly holding: Holding;
  readonly system: UnitSystem;
}

interface Typed {
  readonly form: HeapForm | 'bay';
  readonly text: string;
  /** The option that it was typed with. */
  readonly path: string;
}

/**
 * Where a heap lies: the sides of a bay or its name, or the sides of another form.
 * Problems: `heap-shape-unreadable`, `no-such-bay`, `which-bay`, `bay-unmeasured`.
 */
export function readPlace({ form, text, path }: Typed, { holding, system }: PlaceAround): Outcome<PlaceRead> {
  const shape = readHeapShape(form === 'bay' ? 'box' : form, text, path, system);
  if (shape.ok) return good({ shape: shape.value });
  if (form !== 'bay') return shape;
  const id = subjectNamed(holding, 'bay', text);
  if (!id.ok) return /^\s*\d/u.test(text) ? shape : id;
  const box = boxOf(holding.bays.get(id.value));
  if (box === undefined) return bad({ code: 'bay-unmeasured', path, found: text.slice(0, 60), wanted: '' });
  return good({ shape: box, bay: id.value });
}

/**
 * The walls that a heap comes between where it is turned into a place; undefined where they stay as they were. A bay of the daybook has
 * its own, one that is told by its sides is taken to be like the one before, and a heap of another form stands free.
 */
export function wallsOf({ shape, bay }: PlaceRead, holding: Holding): HeapWallId | undefined {
  const setUp = bay === undefined ? undefined : holding.bays.get(bay)?.setUp.body;
  if (setUp !== undefined) return standingIn(setUp).standing.walls;
  return shape.form === 'box' ? undefined : 'none';
}
