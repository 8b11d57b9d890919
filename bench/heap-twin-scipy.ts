// The heap model's right-hand side in Python under SciPy's integrators: scripts/second-method/bench.py.
import { spawnSync } from 'node:child_process';
import { buildHeap } from '../packages/science/src/heap-twin/build.ts';
import type { HeapRun } from '../packages/science/src/heap-twin/run.ts';
import { cutShells, outlineOf, withVolume } from '../packages/science/src/heap-twin/shape.ts';
import { noWeather, type WeatherAt } from '../packages/science/src/heap-twin/surroundings.ts';
import { stillAir } from '../packages/science/src/heap-twin/testing/heaps.ts';
import { climateWeather } from '../packages/science/src/heap-twin/weather.ts';

/** What SciPy is asked for; the reference is LSODA's at the last. */
const RTOLS = [1e-2, 3e-3, 1e-3, 3e-4, 1e-4, 3e-5, 1e-5, 1e-6];
const REFERENCE_RTOL = 1e-9;
const MEAN_degC = 12;

/** Half of what lies between the coldest and the warmest hour, K: weather that stands still, and a usual day. */
export const swingsOfDay_K = [0, 6] as const;

/** Still air with such a wave over the day. */
export function waveOfDay(swing_K: number): WeatherAt {
  return climateWeather({
    warmest_degC: MEAN_degC,
    coldest_degC: MEAN_degC,
    daySpan_K: 2 * swing_K,
    humidity_share: stillAir(MEAN_degC).humidity_share,
    wind_mPerS: 0,
    rain_mmPerDay: 0,
    start_day: 0,
    warmest_day: 0,
  });
}

/** One run of one of SciPy's methods. */
export interface SciPyRun {
  readonly method: string;
  readonly rtol: number;
  /** How often it asked for the right-hand side. */
  readonly calls: number;
  /** Processor time. */
  readonly seconds: number;
  /** Greatest distance of a shell's temperature from the reference at the end of any day. */
  readonly off_K: number;
}

/** What SciPy came to. */
export interface SciPyAnswer {
  /** Temperatures of the shells at the end of each day, °C. */
  readonly reference: readonly (readonly number[])[];
  /** How far the reference lies from the same at ten times the tolerance. */
  readonly sure_K: number;
  readonly runs: readonly SciPyRun[];
}

function pythonWithSciPy(): string | undefined {
  const named = process.env['LOAMWRIGHT_PYTHON'];
  const tried = named === undefined ? ['python3', '/usr/bin/python3'] : [named];
  return tried.find((python) => spawnSync(python, ['-c', 'import scipy.integrate']).status === 0);
}

/** The arrays of numbers among the parts of a thing, as JSON has them. */
function numbersIn(thing: object): Readonly<Record<string, unknown>> {
  const parts = Object.entries(thing).map(([key, part]) => [key, part instanceof Float64Array ? [...part] : part]);
  return Object.fromEntries(parts) as Readonly<Record<string, unknown>>;
}

/** A run as scripts/second-method/heap.py takes it, shown at the end of each day. */
function problemOf(run: HeapRun): unknown {
  const shells = cutShells(outlineOf(withVolume(run.shape, run.stuff.volume_m3)), run.shellCount);
  const weather = noWeather();
  run.weatherAt(0, weather);
  return {
    name: 'bench',
    shells: numbersIn(shells),
    traits: run.traits,
    standing: run.standing,
    weather,
    state: numbersIn(buildHeap(run.stuff, shells)),
    days: run.days,
    shown_day: Array.from({ length: run.days }, (_, day) => day + 1),
  };
}

/** A run by BDF and LSODA at every tolerance, or undefined where there is no SciPy. */
export function bySciPy(run: HeapRun, swing_K: number): SciPyAnswer | undefined {
  const python = pythonWithSciPy();
  if (python === undefined) return undefined;
  const asked = {
    problem: problemOf(run),
    wave: { mean_degC: MEAN_degC, swing_K, humidity_share: stillAir(MEAN_degC).humidity_share },
    methods: ['BDF', 'LSODA'],
    rtols: RTOLS,
    reference_rtol: REFERENCE_RTOL,
  };
  const { status, stdout } = spawnSync(python, ['scripts/second-method/bench.py'], {
    input: JSON.stringify(asked),
    // One thread: the libraries below SciPy would spin with more, and be charged for it.
    env: { ...process.env, OPENBLAS_NUM_THREADS: '1', MKL_NUM_THREADS: '1', OMP_NUM_THREADS: '1' },
    maxBuffer: 2 ** 26,
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  if (status !== 0) throw new Error('SciPy did not come to an end');
  return JSON.parse(stdout.toString()) as SciPyAnswer;
}
