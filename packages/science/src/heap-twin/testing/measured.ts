import table from '@loamwright/reference/measured-heaps.json' with { type: 'json' };
import { check } from '../../catalogue/index.ts';
import { type Chance, createDraws } from '../../estimate/index.ts';
import { heapRun } from '../heap-run.ts';
import type { Course, HeapRunAnswer } from '../heap-run-answer.ts';

/** What was measured of a heap, what was known of it and what had to be assumed. */
interface MeasuredHeap {
  readonly id: string;
  readonly what: string;
  readonly source: string;
  readonly place: string;
  readonly mark: string;
  readonly known: readonly string[];
  readonly assumed: readonly string[];
  readonly run: unknown;
  /** Day after building and core, °C. */
  readonly readings: readonly (readonly number[])[];
  readonly peak_degC?: number | undefined;
  readonly hotDays?: { readonly low: number } | undefined;
  readonly wetLost_pctWet?: { readonly low: number; readonly high: number } | undefined;
  readonly volumeLeft_pctVolume?: { readonly day: number; readonly measured: number } | undefined;
  /** Whether its middle was seen to stay active from a day on, and what is taken for that. */
  readonly active?: { readonly from_day: number; readonly above_degC: number; readonly measured: boolean } | undefined;
}

export const measuredHeaps: readonly MeasuredHeap[] = table.heaps as readonly MeasuredHeap[];

/** What the model says of a measured heap that nobody had read a thermometer in. */
export interface Found {
  readonly id: string;
  readonly peak_degC: Range;
  readonly peak_day: Range;
  readonly hotDays_day: Range;
  /** In how many of the heaps it may be the core gets to 55 °C. */
  readonly heats: Chance;
  /** Of the highest that was measured: the middle of the model's less it; the day likewise where days were told. */
  readonly measuredPeak_degC?: number | undefined;
  readonly peakOff_K?: number | undefined;
  readonly peakDayOff_day?: number | undefined;
  /** Mean distance of the middle from the readings, how many of them the band of p10 to p90 holds, of how many. */
  readonly meanOff_K?: number | undefined;
  readonly inBand?: number | undefined;
  readonly readings: number;
  readonly wetLost_pctWet: Range;
  readonly volumeLost_pctVolume: Range;
  readonly nitrogenLost_pctNitrogen: Range;
  readonly moisture_pctWet: { readonly start: number; readonly end: number };
  readonly leastOxygen_pctVolume: number;
  /** Share of the time from the day told on at which the middle heap's core is above the temperature told. */
  readonly active_share?: number | undefined;
}

interface Range {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

/** A trial whose nitrogen was weighed before and after. */
interface Trial {
  readonly id: string;
  readonly what: string;
  readonly assumed: string;
  readonly nitrogenLost_pctNitrogen: { readonly low: number; readonly high: number };
  readonly run: unknown;
}

export const trials: readonly Trial[] = table.trials;

/** What the model loses in a trial. */
export interface Lost {
  readonly id: string;
  readonly nitrogenLost_pctNitrogen: Range;
  readonly dryLost_pctDry: Range;
}

const MEMBERS = 64;
/** A trial runs for months. */
const MEMBERS_OF_A_TRIAL = 16;
/** A probe near the middle is good to a kelvin or two (dial thermometers): added to either end of the band. */
const PROBE_K = 1;

/** Runs a heap of the table as a grower would ask for it. */
function predict(heap: Pick<MeasuredHeap, 'id' | 'run'>, members = MEMBERS): HeapRunAnswer {
  const told = check(heapRun.input, { ...(heap.run as object), members });
  if (!told.ok) throw new Error(`${heap.id}: ${JSON.stringify(told.problems)}`);
  const answer = heapRun.run(told.value, { draws: createDraws() } as Parameters<typeof heapRun.run>[1]);
  if (!answer.ok) throw new Error(`${heap.id}: ${JSON.stringify(answer.problems)}`);
  return answer.value;
}

function at(days: readonly number[], values: readonly number[], day: number): number {
  const above = days.findIndex((one) => one >= day - 1e-9);
  const high = values[above] ?? Number.NaN;
  const from = days[above - 1];
  if (from === undefined) return high;
  const to = days[above] ?? Number.NaN;
  const low = values[above - 1] ?? Number.NaN;
  return low + ((day - from) / (to - from)) * (high - low);
}

/** The core just before whatever is done on a day: growers read before they turn. */
function readAt(answer: HeapRunAnswer, which: keyof Course, day: number): number {
  const wholeDay = Math.abs(day - Math.round(day)) < 1e-9;
  return at(answer.day, answer.core_degC[which], wholeDay ? day - 0.25 : day);
}

/** Holds the model's answer against what was measured. */
function compare(heap: MeasuredHeap, answer: HeapRunAnswer): Found {
  const { readings } = heap;
  const offs = readings.map(([day, temp]) => readAt(answer, 'p50', day ?? 0) - (temp ?? Number.NaN));
  const held = readings.filter(
    ([day, temp]) =>
      (temp ?? Number.NaN) >= readAt(answer, 'p10', day ?? 0) - PROBE_K &&
      (temp ?? Number.NaN) <= readAt(answer, 'p90', day ?? 0) + PROBE_K,
  );
  const temps = readings.map(([, temp]) => temp ?? Number.NaN);
  const highest = heap.peak_degC ?? (temps.length === 0 ? undefined : Math.max(...temps));
  const highestDay =
    heap.peak_degC === undefined && highest !== undefined ? readings[temps.indexOf(highest)]?.[0] : undefined;
  const { active } = heap;
  const late = answer.day.flatMap((day, t) => (active !== undefined && day >= active.from_day ? [t] : []));
  return {
    id: heap.id,
    peak_degC: answer.peak_degC,
    peak_day: answer.peak_day,
    hotDays_day: answer.hotDays_day,
    heats: answer.heats,
    ...(highest === undefined ? {} : { measuredPeak_degC: highest, peakOff_K: answer.peak_degC.p50 - highest }),
    ...(highestDay === undefined ? {} : { peakDayOff_day: answer.peak_day.p50 - highestDay }),
    ...(readings.length === 0
      ? {}
      : { meanOff_K: offs.reduce((sum, off) => sum + Math.abs(off), 0) / offs.length, inBand: held.length }),
    readings: readings.length,
    wetLost_pctWet: answer.wetLost_pctWet,
    volumeLost_pctVolume: answer.volumeLost_pctVolume,
    nitrogenLost_pctNitrogen: answer.nitrogenLost_pctNitrogen,
    moisture_pctWet: {
      start: answer.moisture_pctWet.p50[0] ?? Number.NaN,
      end: answer.moisture_pctWet.p50.at(-1) ?? Number.NaN,
    },
    leastOxygen_pctVolume: Math.min(...answer.coreOxygen_pctVolume.p50),
    ...(active === undefined
      ? {}
      : {
          active_share:
            late.filter((t) => (answer.core_degC.p50[t] ?? 0) >= active.above_degC).length / Math.max(1, late.length),
        }),
  };
}

/** What a fresh run may differ by from what is written: digits beyond are those of the machine. */
function rounded<T>(found: T): T {
  const short = (value: unknown): unknown => {
    if (typeof value === 'number') return Number(value.toFixed(2));
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, short(inner)]));
  };
  return short(found) as T;
}

/** All of the measured heaps, run and compared. */
export function findAll(): readonly Found[] {
  return measuredHeaps.map((heap) => rounded(compare(heap, predict(heap))));
}

/** All of the trials, run. */
export function loseAll(): readonly Lost[] {
  return trials.map((trial) => {
    const { nitrogenLost_pctNitrogen, dryLost_pctDry } = predict(trial, MEMBERS_OF_A_TRIAL);
    return rounded({ id: trial.id, nitrogenLost_pctNitrogen, dryLost_pctDry });
  });
}

const range = ({ p10, p50, p90 }: Range, digits = 0): string =>
  `${p50.toFixed(digits)} (${p10.toFixed(digits)} to ${p90.toFixed(digits)})`;
const signed = (value: number | undefined, digits = 0): string =>
  value === undefined ? '' : `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(digits)}`;

/** A page with its tables made anew. */
export function withTables(page: string, found: readonly Found[], lost: readonly Lost[]): string {
  return between(between(page, 'measured', tableOf(found)), 'trials', lossesOf(lost));
}

/** A page with something else between the lines of that name. */
function between(page: string, name: string, inner: string): string {
  const begin = `<!-- ${name}: begin -->`;
  const from = page.indexOf(begin);
  const to = page.indexOf(`<!-- ${name}: end -->`);
  if (from < 0 || to < from) throw new Error(`the page wants a line ${begin} and one of its end`);
  return `${page.slice(0, from + begin.length)}\n${inner}\n${page.slice(to)}`;
}

const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

function rows(head: readonly string[], body: readonly (readonly string[])[]): string {
  return [head, head.map(() => '---'), ...body].map(row).join('\n');
}

function lossesOf(lost: readonly Lost[]): string {
  return rows(
    ['trial', 'nitrogen lost, %', 'of the model, %', 'its dry matter, %', 'assumed'],
    lost.map(({ id, nitrogenLost_pctNitrogen, dryLost_pctDry }) => {
      const trial = trials.find((one) => one.id === id);
      const { low, high } = trial?.nitrogenLost_pctNitrogen ?? { low: Number.NaN, high: Number.NaN };
      const measured = low === high ? String(low) : `${low} to ${high}`;
      return [
        trial?.what ?? id,
        measured,
        range(nitrogenLost_pctNitrogen),
        range(dryLost_pctDry),
        trial?.assumed ?? '',
      ];
    }),
  );
}

function tableOf(found: readonly Found[]): string {
  const body = found.map((one) => {
    const heap = measuredHeaps.find(({ id }) => id === one.id);
    return [
      `${one.id}: ${heap?.what}`,
      one.measuredPeak_degC === undefined ? '' : String(one.measuredPeak_degC),
      range(one.peak_degC),
      signed(one.peakOff_K),
      range(one.peak_day, 1),
      signed(one.peakDayOff_day, 1),
      range(one.hotDays_day, 1),
      one.meanOff_K === undefined ? '' : one.meanOff_K.toFixed(1),
      one.readings === 0 ? '' : `${one.inBand} of ${one.readings}`,
    ];
  });
  const head = [
    'heap',
    'highest measured, °C',
    'highest of the model, °C',
    'off, K',
    'its day',
    'off, days',
    'days at 55 °C or more',
    'mean off over readings, K',
    'readings in the band',
  ];
  return rows(head, body);
}
