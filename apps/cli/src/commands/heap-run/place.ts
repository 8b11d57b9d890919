import type { Holding } from '@loamwright/daybook';
import { bad, good, type HeapShape, likely, type Outcome } from '@loamwright/science';
import { type HeapForm, heapForms, readHeapShape } from '../../grammar/heap-shape.ts';
import type { Session } from '../../session.ts';
import { subjectNamed } from '../../subject.ts';

/** The form and the size of a heap, on the command line; one of them at the most. */
export interface ShapeOptions extends Readonly<Partial<Record<HeapForm, string | undefined>>> {
  readonly bay?: string | undefined;
}

/** A form, the option it was typed with, and the bay of the daybook that it is. */
export interface ShapeRead {
  readonly shape?: HeapShape | undefined;
  readonly path: string;
  readonly bay?: string | undefined;
}

/** Where a bay's height is not written down it follows from what is in it all the same. */
const STAND_IN_HEIGHT_m = 1;

/** The form by its option. Problems: `heap-shape-unreadable`, `no-such-bay`, `which-bay`, `bay-unmeasured`. */
export function readShape(options: ShapeOptions, holding: Holding, session: Session): Outcome<ShapeRead> {
  const { system } = session.speaker;
  if (options.bay !== undefined) return readBay(options.bay, holding, session);
  for (const form of heapForms) {
    const typed = options[form];
    if (typed === undefined) continue;
    const path = `--${form}`;
    const shape = readHeapShape(form, typed, path, system);
    return shape.ok ? good({ shape: shape.value, path }) : shape;
  }
  return good({ path: '--dome' });
}

function readBay(typed: string, holding: Holding, { speaker }: Session): Outcome<ShapeRead> {
  const path = '--bay';
  const shape = readHeapShape('box', typed, path, speaker.system);
  if (shape.ok) return good({ shape: shape.value, path });
  const id = subjectNamed(holding, 'bay', typed);
  if (!id.ok) return /^\s*\d/u.test(typed) ? shape : id;
  const { width_m, depth_m, height_m = STAND_IN_HEIGHT_m } = holding.bays.get(id.value)?.setUp.body ?? {};
  if (width_m === undefined || depth_m === undefined)
    return bad({ code: 'bay-unmeasured', path, found: typed.slice(0, 60), wanted: '' });
  const box = { form: 'box', width_m: likely(width_m), depth_m: likely(depth_m), height_m: likely(height_m) } as const;
  return good({ shape: box, path, bay: id.value });
}
