import type { Heap, Told } from '@loamwright/daybook';
import {
  bad,
  type CuringInput,
  good,
  likely,
  maturityParameters,
  type Outcome,
  type Quantity,
  ripenessIds,
} from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { difference, say, sayOf, temperature } from './saying.ts';

/** What the daybook keeps of how ripe a heap is. */
export interface RipenessKept {
  /** The latest of each thing that was smelt, seen or measured. */
  readonly seen: CuringInput;
  readonly tests: readonly Told<'ripeness-tested'>[];
}

const NEWS: readonly string[] = ['heap-built', 'heap-fed', 'combined'];

/** What was kept since stuff last went in: what was tried before says nothing of it. Undefined where nothing was. */
export function ripenessKept({ ripeness, acts }: Heap): RipenessKept | undefined {
  const since = acts.findLast(({ kind }) => NEWS.includes(kind))?.entry.happened ?? '';
  const tests = ripeness.filter(({ entry }) => entry.happened >= since);
  if (tests.length === 0) return undefined;
  return { tests, seen: tests.map(({ body }) => body.seen).reduce(withRipeness, {}) };
}

/** What is known with what is told anew, which replaces it. */
export function withRipeness(known: CuringInput, told: CuringInput): CuringInput {
  const measured = { ...known.measured, ...told.measured };
  return { ...known, ...told, ...(Object.keys(measured).length > 0 && { measured }) };
}

/** Everything that was smelt, seen or measured, a piece of a sentence each. */
export function ripenessWords({ smell, stuffSeen, afterTurn_degC, measured = {} }: CuringInput): readonly Saying[] {
  return [
    ...(smell === undefined ? [] : [say('ripe.book.smell', { smell: sayOf('ripe.smell', smell) })]),
    ...(stuffSeen === undefined ? [] : [say(stuffSeen ? 'ripe.book.stuff-seen' : 'ripe.book.stuff-gone')]),
    ...(afterTurn_degC === undefined ? [] : [say('ripe.book.afterTurn', { temp: temperature(afterTurn_degC) })]),
    ...ripenessIds.flatMap((id) => {
      const value = measured[id];
      if (value === undefined) return [];
      return [sayOf('ripe.book', id, { value: likely(value), warming: difference(likely(value)) })];
    }),
  ];
}

/** Of fewer a share means little: one seed more or less moves it past the width of a class. */
export const LEAST_CONTROL = 10;

/** Seedlings that came up well, percent of those in the mix beside it. Problem: `out-of-bounds` of too few beside it. */
export function emergence_pctControl(came: number, control: number): Outcome<number> {
  return control < LEAST_CONTROL
    ? bad({
        code: 'out-of-bounds',
        path: 'control',
        found: String(control),
        wanted: `at least ${LEAST_CONTROL} of 20 that came up beside it`,
      })
    : good((100 * came) / control);
}

/** None found is told as a trace, so that there is a ratio. */
const LEAST_NITRATE = 1;

/** Both as nitrogen, mg per kg dry. */
export function ammoniumToNitrate(ammonium: Quantity, nitrate: Quantity): number {
  return likely(ammonium) / Math.max(likely(nitrate), LEAST_NITRATE);
}

/** Breath told as carbon dioxide, as carbon. */
export function breathAsCarbon(breath_mgCO2: Quantity): Quantity {
  const { value: by } = maturityParameters.co2PerCarbon_ratio;
  if (typeof breath_mgCO2 === 'number') return breath_mgCO2 / by;
  return { p10: breath_mgCO2.p10 / by, p50: breath_mgCO2.p50 / by, p90: breath_mgCO2.p90 / by };
}
