// How long the heap model takes, what the time depends on, and the same problems by the same step in C and by SciPy's
// integrators at the same error. Budgets: 5 ms for 60 days of one heap, 2 s for 1,000 such. Processor time; medians.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Pace } from '../packages/science/src/heap-twin/advance.ts';
import {
  DAY_S,
  type Figures,
  HOUR_S,
  traitsOf,
  twinParameters,
  typicalFigures,
  uncertainIds,
} from '../packages/science/src/heap-twin/parameters.ts';
import { type HeapRun, runHeap, USUAL_PACE } from '../packages/science/src/heap-twin/run.ts';
import { inTheOpen, runLike, stuffLike, temperatures_degC } from '../packages/science/src/heap-twin/testing/heaps.ts';
import { problems } from '../packages/science/src/heap-twin/testing/problems.ts';
import { climateWeather } from '../packages/science/src/heap-twin/weather.ts';
import { compileStep } from './heap-twin-c.ts';
import { bySciPy, type SciPyRun, swingsOfDay_K, waveOfDay } from './heap-twin-scipy.ts';

const BUDGET_ms = 5;
const BUDGET_OF_THOUSAND_s = 2;
const DAYS = 60;
const SHELLS = 8;
const THOUSAND = 1000;
/** Our temperatures and those of the same step in C may differ by rounding alone, K. */
const SAME_K = 1e-6;
/** Ours and C are timed so many times in turn, each so often, for what else runs on the machine changes from second to second. */
const TURNS = 8;
const CALLS = 25;
/** No step is shortened of itself. */
const ANY_K = 1e9;
const EVEN: Pace = { step_s: HOUR_S, within_K: ANY_K };

function say(text: string): void {
  process.stdout.write(`${text}\n`);
}

/** Processor time of one call, ms. */
function cpu_ms(work: () => void): number {
  const from = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(from);
  return (user + system) / 1000;
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
}

/** Median processor time of so many calls, ms, after as many more by which the engine has settled on its code. */
function timed_ms(repeats: number, work: () => void): number {
  for (let i = 0; i < repeats; i++) work();
  return median(Array.from({ length: repeats }, () => cpu_ms(work)));
}

function through(run: HeapRun): void {
  runHeap(run, run.days * DAY_S, () => undefined);
}

function perShellStep_ns(ms: number, { days, shellCount, pace }: HeapRun): number {
  return (1e6 * ms) / (shellCount * ((days * DAY_S) / pace.step_s));
}

/** Park and Miller 1988: the same heaps every time. */
let seed = 20261125;
function next(): number {
  seed = (seed * 48271) % 2147483647;
  return seed / 2147483647;
}

/** Heaps that differ in every uncertain figure, each drawn evenly over its published range, in a temperate spring. */
function different(count: number, pace: Pace): readonly HeapRun[] {
  const spring = climateWeather({
    warmest_degC: 17,
    coldest_degC: 3,
    daySpan_K: 9,
    humidity_share: 0.75,
    wind_mPerS: 2,
    rain_mmPerDay: 2,
    start_day: 90,
    warmest_day: 201,
  });
  return Array.from({ length: count }, () => {
    const drawn = uncertainIds.map((id) => {
      const { low, high } = twinParameters[id];
      return [id, low + next() * (high - low)] as const;
    });
    return runLike({
      days: DAYS,
      pace,
      traits: traitsOf({ ...typicalFigures(), ...(Object.fromEntries(drawn) as Partial<Figures>) }),
      stuff: stuffLike({ moisture_pctWet: 50 + 20 * next(), volume_m3: 0.5 + next() }),
      standing: { ...inTheOpen, wind_share: 0.3, rain_share: 1 },
      weatherAt: spring,
    });
  });
}

const one = runLike({ days: DAYS });
for (let i = 0; i < 40; i++) through(one);

say(`one heap, ${DAYS} days, ${SHELLS} shells, as long as steps are for a grower`);
const one_ms = timed_ms(101, () => through(one));
say(`  ${one_ms.toFixed(2)} ms; budget ${BUDGET_ms} ms`);
for (const hours of [3, 2, 1]) {
  const run = { ...one, pace: { step_s: hours * HOUR_S, within_K: ANY_K } };
  const ms = timed_ms(51, () => through(run));
  say(
    `  steps of ${hours} h, none shorter: ${ms.toFixed(2)} ms, ${perShellStep_ns(ms, run).toFixed(0)} ns for each shell and step`,
  );
}

say(`${THOUSAND} different heaps in changing weather, ${DAYS} days; budget ${BUDGET_OF_THOUSAND_s} s`);
for (const [name, pace] of [
  ['as long as steps are for a grower', USUAL_PACE],
  ['steps of 1 h, none shorter', { step_s: HOUR_S, within_K: ANY_K }],
] as const) {
  const runs = different(THOUSAND, pace);
  const all_s = cpu_ms(() => runs.forEach(through)) / 1000;
  say(`  ${name}: ${all_s.toFixed(2)} s`);
}

say('what the time depends on: ns for each shell and step');
for (const shellCount of [4, 8, 16, 32, 64]) {
  const run = runLike({ days: DAYS, shellCount, pace: EVEN });
  const ms = timed_ms(21, () => through(run));
  say(
    `  ${String(shellCount).padStart(4)} shells ${perShellStep_ns(ms, run).toFixed(0).padStart(6)} (${ms.toFixed(1)} ms)`,
  );
}
const even = runLike({ days: DAYS, pace: EVEN });
for (const count of [1, 10, 100, 1000]) {
  const ms = timed_ms(Math.ceil(50 / count), () => {
    for (let heap = 0; heap < count; heap++) through(even);
  });
  say(
    `  ${String(count).padStart(4)} heaps  ${perShellStep_ns(ms / count, even)
      .toFixed(0)
      .padStart(6)} (${ms.toFixed(0)} ms)`,
  );
}
for (const days of [15, 60, 180, 400]) {
  const run = runLike({ days, pace: EVEN });
  const ms = timed_ms(21, () => through(run));
  say(`  ${String(days).padStart(4)} days   ${perShellStep_ns(ms, run).toFixed(0).padStart(6)} (${ms.toFixed(1)} ms)`);
}

const folder = mkdtempSync(join(tmpdir(), 'heap-twin-'));
try {
  compareWithC();
} finally {
  rmSync(folder, { recursive: true });
}
compareWithSciPy();

/** The same step, of one length, on every problem. */
function compareWithC(): void {
  const compiled = compileStep(folder);
  if (compiled === undefined) {
    say('no C compiler here (cc), so nothing was compared with C');
    return;
  }
  say('the same step in C (cc -O3), both at steps of an hour, in turn; the least of each');
  for (const { name, run } of problems) {
    const fixed = { ...run, days: DAYS, pace: { step_s: HOUR_S, within_K: ANY_K } };
    const ours_ms: number[] = [];
    const theirs_ms: number[] = [];
    let theirs_degC: readonly number[] = [];
    for (let turn = 0; turn < TURNS; turn++) {
      const theirs = compiled(fixed, CALLS);
      theirs_degC = theirs.temp_degC;
      theirs_ms.push(...theirs.cpu_ms);
      for (let call = 0; call < CALLS; call++) ours_ms.push(cpu_ms(() => through(fixed)));
    }
    const [ours, theirs] = [Math.min(...ours_ms), Math.min(...theirs_ms)];
    const ours_degC = temperatures_degC(runHeap(fixed, DAYS * DAY_S, () => undefined));
    const off_K = Math.max(...ours_degC.map((temp, i) => Math.abs(temp - (theirs_degC[i] ?? Number.NaN))));
    say(
      `  ${name.padEnd(24)} ${ours.toFixed(2).padStart(6)} ms, C ${theirs.toFixed(2).padStart(5)} ms: ${(ours / theirs).toFixed(2)} times; temperatures within ${off_K.toExponential(0)} K`,
    );
    if (!(off_K < SAME_K)) process.exitCode = 1;
  }
}

/** The same right-hand side by SciPy's integrators, each at the loosest tolerance that is as near as we are and the tightest that is not. */
function compareWithSciPy(): void {
  const usual = runLike({ days: DAYS });
  for (const swing_K of swingsOfDay_K) {
    const run = { ...usual, weatherAt: waveOfDay(swing_K) };
    const answer = bySciPy(run, swing_K);
    if (answer === undefined) {
      say('no Python with SciPy here (LOAMWRIGHT_PYTHON names one), so nothing was compared with it');
      return;
    }
    say(
      `SciPy on a heap in still air of 12 ± ${swing_K} °C over the day, ${DAYS} days; reference sure to ${answer.sure_K.toExponential(0)} K`,
    );
    for (const share of [1, 1 / 2, 1 / 4, 1 / 8]) {
      const { step_s, within_K } = USUAL_PACE;
      const pace = { step_s: share * step_s, within_K: share * share * within_K };
      const stepped = { ...run, pace };
      const ours_ms = timed_ms(101, () => through(stepped));
      const off_K = furthest_K(stepped, answer.reference);
      say(
        `  steps of ${pace.step_s / HOUR_S} h at most, ${evaluations(stepped)} evaluations: off by ${off_K.toFixed(3)} K at most, ${ours_ms.toFixed(2)} ms`,
      );
      for (const method of ['BDF', 'LSODA']) {
        const own = answer.runs.filter((run) => run.method === method).sort((a, b) => a.off_K - b.off_K);
        sayTheirs('as near', own.filter((run) => run.off_K <= off_K).at(-1), ours_ms);
        sayTheirs(
          'no nearer',
          own.find((run) => run.off_K > off_K),
          ours_ms,
        );
      }
    }
  }
}

/** One of SciPy's runs beside ours. */
function sayTheirs(which: string, theirs: SciPyRun | undefined, ours_ms: number): void {
  if (theirs === undefined) return;
  const ms = 1000 * theirs.seconds;
  say(
    `    ${theirs.method.padEnd(5)} ${which.padEnd(9)} at ${theirs.rtol}: off by ${theirs.off_K.toFixed(3)} K, ${theirs.calls} evaluations, ${ms.toFixed(0)} ms: ${(ms / ours_ms).toFixed(0)} times our time`,
  );
}

/** How often a run asks for the rates. */
function evaluations(run: HeapRun): number {
  let asked = 0;
  through({
    ...run,
    weatherAt: (time_s, into, while_s) => {
      asked++;
      run.weatherAt(time_s, into, while_s);
    },
  });
  return asked;
}

/** The greatest distance of a shell's temperature from the reference at the end of any day, K. */
function furthest_K(run: HeapRun, reference: readonly (readonly number[])[]): number {
  let most_K = 0;
  runHeap(run, DAY_S, (moment) => {
    const there = reference[Math.round(moment.time_day) - 1];
    if (there === undefined) return;
    temperatures_degC(moment).forEach((temp, i) => {
      most_K = Math.max(most_K, Math.abs(temp - (there[i] ?? Number.NaN)));
    });
  });
  return most_K;
}
