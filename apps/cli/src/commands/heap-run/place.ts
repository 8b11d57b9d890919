import type { Holding } from '@loamwright/daybook';
import { good, type Outcome } from '@loamwright/science';
import { type PlaceRead, readPlace } from '../../grammar/heap-place.ts';
import { type HeapForm, heapForms } from '../../grammar/heap-shape.ts';
import type { Session } from '../../session.ts';

/** The form and the size of a heap, on the command line; one of them at the most. */
export interface ShapeOptions extends Readonly<Partial<Record<HeapForm, string | undefined>>> {
  readonly bay?: string | undefined;
}

/** A form, and the option it was typed with. */
export interface ShapeRead extends Partial<PlaceRead> {
  readonly path: string;
}

/** The form by its option. Problems: those of `readPlace`. */
export function readShape(options: ShapeOptions, holding: Holding, { speaker }: Session): Outcome<ShapeRead> {
  for (const form of ['bay', ...heapForms] as const) {
    const text = options[form];
    if (text === undefined) continue;
    const path = `--${form}`;
    const place = readPlace({ form, text, path }, { holding, system: speaker.system });
    return place.ok ? good({ ...place.value, path }) : place;
  }
  return good({ path: '--dome' });
}
