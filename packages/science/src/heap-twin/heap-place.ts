import { USUAL_DOME } from './heap-follow.ts';
import type { PlaceFilled } from './heap-run-answer.ts';
import type { HeapRunInput } from './heap-run-input.ts';
import { twinParameters } from './parameters.ts';
import type { HeapShape } from './shape.ts';

/** The bay or form that a heap lies in from a day on. */
export interface HeapPlace {
  readonly from_day: number;
  readonly shape: HeapShape;
}

/** Where a heap comes to lie, in the order of days: where it is built, then where it is turned into. */
export function placesOf({
  shape = USUAL_DOME,
  acts = [],
}: Pick<HeapRunInput, 'shape' | 'acts'>): readonly HeapPlace[] {
  const turned = acts.flatMap((act) =>
    act.act === 'turn' && act.into !== undefined ? [{ from_day: act.at_day, shape: act.into }] : [],
  );
  return [{ from_day: 0, shape }, ...turned.sort((a, b) => a.from_day - b.from_day)];
}

/** The bay or form that a heap lies in on a day. */
export function shapeOn(input: Pick<HeapRunInput, 'shape' | 'acts'>, day: number): HeapShape {
  return placesOf(input).findLast(({ from_day }) => from_day <= day)?.shape ?? USUAL_DOME;
}

/** Higher than this its own weight presses a heap together, m: `reference/heap-twin.json`. */
export const tallestHeap_m: number = twinParameters.tallest_m.value;

/** Whether it likely stands higher than that. A drum lies as high as it is wide, and a trench stands no higher than the ground. */
export function isTooHigh({ form, height_m }: PlaceFilled): boolean {
  return form !== 'drum' && form !== 'trench' && height_m.p50 > tallestHeap_m;
}
