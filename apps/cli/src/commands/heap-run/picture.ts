import type { TempAtDay } from '@loamwright/advisor';
import type { HeapRunAnswer, ToldAct } from '@loamwright/science';
import { convert, unitFor, unitTable } from '@loamwright/units';
import type { Speaker } from '@loamwright/words';
import { put, scaleOf } from '../../drawing.ts';
import { wrap } from '../../terminal.ts';

/** What a run is drawn from. */
export interface Pictured {
  readonly found: HeapRunAnswer;
  readonly acts: readonly ToldAct[];
  /** Readings of the core, where the daybook has some. */
  readonly readings: readonly TempAtDay[];
}

const WIDEST = 64;
const NARROWEST = 10;
const LIKELY = '●';
const BAND = '░';
const READ = 'x';
const signs: Readonly<Record<ToldAct['act'], string>> = { turn: '^', water: 'w', add: '+', stand: 'c' };

/**
 * The core's course as a picture of text: temperature upwards, days to the right; its likely line, the band round it, what was done
 * under it, and readings on it.
 */
export function drawCourse({ found, acts: all, readings }: Pictured, speaker: Speaker, columns: number): string {
  const acts = all.filter((act) => !isOfTurn(act, all));
  const { day, core_degC } = found;
  const days = day.at(-1) ?? 0;
  const shown = readings.filter(({ at_day }) => at_day <= days);
  const scale = scaleOf([...core_degC.p10, ...core_degC.p90, ...shown.map(({ temp_degC }) => temp_degC)], speaker);
  const margin = Math.max(...scale.labels.map((label) => label.length)) + 1;
  const width = Math.max(NARROWEST, Math.min(WIDEST, columns - margin - 1));
  const columnOf = (at_day: number): number => Math.round((at_day / Math.max(days, 1e-9)) * (width - 1));
  const grid = scale.labels.map(() => Array.from({ length: width }, () => ' '));
  for (let column = 0; column < width; column++) {
    const t = nearestTo(day, (column / (width - 1)) * days);
    const [low = 0, likely = 0, high = 0] = [core_degC.p10[t], core_degC.p50[t], core_degC.p90[t]];
    for (let row = scale.rowOf(high); row <= scale.rowOf(low); row++) put(grid[row], column, BAND);
    put(grid[scale.rowOf(likely)], column, LIKELY);
  }
  for (const { at_day, temp_degC } of shown) put(grid[scale.rowOf(temp_degC)], columnOf(at_day), READ);
  const under = ' '.repeat(margin);
  const rows = grid.map((cells, row) =>
    `${(scale.labels[row] ?? '').padStart(margin - 1)} ${cells.join('')}`.trimEnd(),
  );
  return [
    ...rows,
    ...(acts.length === 0 ? [] : [`${under}${marks(acts, width, columnOf)}`]),
    `${under}${daysUnder(days, width, columnOf)} ${speaker.say('cli.heapRun.days')}`,
    wrap(keyOf(acts, shown, speaker), columns),
  ].join('\n');
}

/** Whether it is other walls that it came between by being turned, which are drawn as the turn. */
function isOfTurn(act: ToldAct, acts: readonly ToldAct[]): boolean {
  if (act.act !== 'stand' || act.cover !== undefined) return false;
  return acts.some((other) => other.act === 'turn' && other.at_day === act.at_day);
}

/** The place of the time nearest to a day; times rise. */
function nearestTo(times: readonly number[], at_day: number): number {
  let best = 0;
  for (const [i, time] of times.entries()) {
    if (Math.abs(time - at_day) < Math.abs((times[best] ?? 0) - at_day)) best = i;
  }
  return best;
}

function marks(acts: readonly ToldAct[], width: number, columnOf: (at_day: number) => number): string {
  const cells = Array.from({ length: width }, () => ' ');
  for (const { act, at_day } of acts) put(cells, columnOf(at_day), signs[act]);
  return cells.join('').trimEnd();
}

/** Steps of days that are easy to count by. */
const STEPS = [1, 2, 5, 7, 10, 14, 20, 30, 50, 60, 100];
const LEAST_APART = 6;

function daysUnder(days: number, width: number, columnOf: (at_day: number) => number): string {
  const step = STEPS.find((one) => columnOf(one) >= LEAST_APART) ?? 100;
  const cells = Array.from({ length: width }, () => ' ');
  for (let at = 0; at <= days; at += step) {
    const label = String(at);
    const from = Math.min(columnOf(at), width - label.length);
    for (const [i, sign] of [...label].entries()) put(cells, from + i, sign);
  }
  return cells.join('').trimEnd();
}

function keyOf(acts: readonly ToldAct[], readings: readonly TempAtDay[], { say }: Speaker): string {
  const done = (['turn', 'water', 'add', 'stand'] as const).filter((id) => acts.some(({ act }) => act === id));
  return [
    `${LIKELY} ${say('cli.heapRun.key.likely')}`,
    `${BAND} ${say('cli.heapRun.key.band')}`,
    ...(readings.length > 0 ? [`${READ} ${say('cli.heapRun.key.read')}`] : []),
    ...done.map((id) => `${signs[id]} ${say(`cli.heapRun.key.${id}`)}`),
  ].join('; ');
}

/** Days at which a heap is looked into: often at first. */
const LOOKED_AT = [1, 3, 7, 14, 28, 56, 112, 224];
const CELL = 6;
const LEAST_SHELLS = 2;

/** The middle heap from core to surface on a few days, as a table; of more shells than a line has room for, some. */
export function drawShells({ day, shells_degC }: HeapRunAnswer, speaker: Speaker, columns: number): string {
  const { say, system } = speaker;
  const unit = unitFor('temperature', system);
  const last = day.at(-1) ?? 0;
  const days = [...LOOKED_AT.filter((one) => one < last), last];
  const all = shells_degC[0]?.length ?? 0;
  const head = `${say('cli.heapRun.day')}  `;
  const count = Math.min(all, Math.max(LEAST_SHELLS, Math.floor((columns - head.length) / CELL)));
  const shells = Array.from({ length: count }, (_, i) => Math.round((i * (all - 1)) / (count - 1)));
  const cell = (temp_degC: number): string =>
    String(Math.round(convert(temp_degC, 'degC', unit)))
      .replace(/^-0$/u, '0')
      .padStart(CELL);
  const [core, surface] = [say('cli.heapRun.core'), say('cli.heapRun.surface')];
  const header = head + core.padStart(CELL) + surface.padStart(CELL * (count - 1));
  const rows = days.map((at) => {
    const temps = shells_degC[nearestTo(day, at)] ?? [];
    const label = String(Number(at.toFixed(1))).padStart(say('cli.heapRun.day').length);
    return `${label}  ${shells.map((i) => cell(temps[i] ?? 0)).join('')}`;
  });
  return [say('cli.heapRun.shells', { unit: unitTable[unit].symbol }), header, ...rows].join('\n');
}
