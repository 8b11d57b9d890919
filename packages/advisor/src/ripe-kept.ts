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
import { daysFrom } from './when.ts';

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

/** Days since the oldest stuff in a heap was heaped up. */
export function ripeningAge_days({ begun, layers }: Heap, now: string): number {
  const first = [begun, ...layers.map(({ added }) => added)].toSorted()[0] ?? begun;
  return daysFrom(first, now);
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

/** Of fewer a share means little. */
export const LEAST_CONTROL: number = maturityParameters.seedlings.leastControl.value;

/** Seedlings that came up well in it and in a mix beside it, of so many sown in each. */
export interface SeedlingCounts {
  readonly came: number;
  readonly control: number;
  /** As the test has it, where it is not said. */
  readonly sown?: number | undefined;
}

/** Seeds of the test, in each pot. */
export const USUALLY_SOWN: number = maturityParameters.seedlings.seeds.value;

/**
 * Seedlings that came up well, percent of those in the mix beside it. Problem: `out-of-bounds` of more than were sown, and of too few
 * beside it.
 */
export function emergence_pctControl({ came, control, sown = USUALLY_SOWN }: SeedlingCounts): Outcome<number> {
  const most = Math.max(came, control);
  if (most > sown) return bad({ code: 'more-than-sown', path: 'came', found: String(most), wanted: String(sown) });
  return control < LEAST_CONTROL
    ? bad({
        code: 'out-of-bounds',
        path: 'control',
        found: String(control),
        wanted: `at least ${LEAST_CONTROL} that came up beside it`,
      })
    : good((100 * came) / control);
}

/** Both as nitrogen, mg per kg dry. No nitrate found counts as a trace of it, so that there is a ratio. */
export function ammoniumToNitrate(ammonium: Quantity, nitrate: Quantity): number {
  return likely(ammonium) / Math.max(likely(nitrate), maturityParameters.leastNitrate_mgPerKgDry.value);
}

/** Breath told as carbon dioxide, as carbon. */
export function breathAsCarbon(breath_mgCO2: Quantity): Quantity {
  const { value: by } = maturityParameters.co2PerCarbon_ratio;
  if (typeof breath_mgCO2 === 'number') return breath_mgCO2 / by;
  return { p10: breath_mgCO2.p10 / by, p50: breath_mgCO2.p50 / by, p90: breath_mgCO2.p90 / by };
}
