import type { ActMark, LevelLine, SeriesPoint } from '@loamwright/advisor';
import { epoch_ms } from '@loamwright/daybook';
import { likely } from '@loamwright/science';
import { convert, unitFor, unitTable } from '@loamwright/units';
import type { Speaker } from '@loamwright/words';

/** What a heap's temperatures are drawn from. */
export interface Drawn {
  readonly series: readonly SeriesPoint[];
  readonly acts: readonly ActMark[];
  readonly lines: readonly LevelLine[];
}

const MOST_ROWS = 14;
const LEAST_ROWS = 5;
const WIDEST = 60;
const NARROWEST = 10;
/** Steps that are easy to read off, in the reader's unit. */
const STEPS = [1, 2, 5, 10, 20, 50, 100, 200, 500];
const KEYS = 'abcdefgh';

/** The signs of readings by place: a full one for the middle, where heat is judged. */
const signs: Readonly<Record<SeriesPoint['where'], string>> = {
  core: '●',
  middle: '●',
  edge: '○',
  top: '○',
  bottom: '○',
};

/**
 * A heap's readings as a picture of text: temperature upwards, time to the right, worded levels as dotted lines, acts as
 * marks under it. Empty without a reading.
 */
export function drawSeries(
  drawn: Drawn,
  speaker: Speaker,
  columns: number,
  dayOf: (instant: string) => string,
): string {
  const { series, acts, lines } = drawn;
  if (series.length === 0) return '';
  const scale = scaleOf(
    series.map(({ temp_degC }) => likely(temp_degC)),
    speaker,
  );
  const margin = Math.max(...scale.labels.map((label) => label.length)) + 1;
  const time = timeOf(drawn, Math.max(NARROWEST, Math.min(WIDEST, columns - margin - 3)));
  const grid = scale.labels.map(() => Array.from({ length: time.width }, () => ' '));
  const shown = lines.filter(({ temp_degC }) => grid[scale.rowOf(temp_degC)] !== undefined);
  const ends = shown.map(({ temp_degC }) => scale.rowOf(temp_degC));
  for (const row of ends) grid[row]?.fill('·');
  for (const { instant, temp_degC, where } of series) {
    put(grid[scale.rowOf(likely(temp_degC))], time.columnOf(instant), signs[where]);
  }
  const pictured = grid.map((cells, row) => {
    const keys = ends.flatMap((end, i) => (end === row ? [KEYS[i] ?? ''] : [])).join('');
    return `${(scale.labels[row] ?? '').padStart(margin - 1)} ${cells.join('')} ${keys}`.trimEnd();
  });
  const under = ' '.repeat(margin);
  return [
    ...pictured,
    ...(acts.length === 0 ? [] : [`${under}${marks(acts, time)}`]),
    `${under}${daysUnder(time, dayOf)}`,
    ...shown.map(
      ({ temp_degC, said }, i) =>
        `${KEYS[i] ?? ''}  ${speaker.likely(temp_degC, 'degC', 'temperature')}: ${speaker.tell(said)}`,
    ),
  ].join('\n');
}

/** The rows of a picture of temperatures. */
export interface Scale {
  /** What is written at each row, the hottest first. */
  readonly labels: readonly string[];
  readonly rowOf: (temp_degC: number) => number;
}

/** Rows from the coldest to the hottest, in steps that are easy to read off in the reader's unit. */
export function scaleOf(temps_degC: readonly number[], { system }: Speaker): Scale {
  const unit = unitFor('temperature', system);
  const told = (temp_degC: number): number => convert(temp_degC, 'degC', unit);
  const [coldest, hottest] = [told(Math.min(...temps_degC)), told(Math.max(...temps_degC))];
  const step = STEPS.find((one) => (hottest - coldest) / one <= MOST_ROWS - 2) ?? Number.POSITIVE_INFINITY;
  const bottom = Math.floor(coldest / step);
  const top = Math.max(Math.ceil(hottest / step), bottom + LEAST_ROWS - 1);
  return {
    labels: Array.from({ length: top - bottom + 1 }, (_, row) => `${(top - row) * step} ${unitTable[unit].symbol}`),
    rowOf: (temp_degC) => top - Math.round(told(temp_degC) / step),
  };
}

interface Time {
  readonly width: number;
  readonly first: string;
  readonly last: string;
  readonly columnOf: (instant: string) => number;
}

/** From the first thing that happened to the last. */
function timeOf({ series, acts }: Drawn, width: number): Time {
  const instants = [...series, ...acts].map(({ instant }) => instant).sort();
  const [first = '', last = first] = [instants[0], instants.at(-1)];
  const [start, span] = [epoch_ms(first), Math.max(1, epoch_ms(last) - epoch_ms(first))];
  return { width, first, last, columnOf: (instant) => Math.round(((epoch_ms(instant) - start) / span) * (width - 1)) };
}

function marks(acts: readonly ActMark[], { width, columnOf }: Time): string {
  const cells = Array.from({ length: width }, () => ' ');
  for (const { instant } of acts) put(cells, columnOf(instant), '^');
  return cells.join('').trimEnd();
}

function daysUnder({ first, last, width }: Time, dayOf: (instant: string) => string): string {
  const [from, to] = [dayOf(first), dayOf(last)];
  return from === to ? from : from + ' '.repeat(Math.max(1, width - from.length - to.length)) + to;
}

/** Puts a sign into a row, where it has such a column. */
export function put(cells: string[] | undefined, column: number, sign: string): void {
  if (cells?.[column] !== undefined) cells[column] = sign;
}
