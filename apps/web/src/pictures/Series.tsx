import { scaleLinear, scaleTime } from 'd3-scale';
import { line } from 'd3-shape';
import type { ReactNode } from 'react';
import { Drawing, type Room } from './Drawing.tsx';

/** One reading in a place that is drawn as a line. */
export interface SeriesPoint {
  readonly at_ms: number;
  readonly temp: number;
}

/** Something done at the heap, written as a word where it happened. */
export interface SeriesAct {
  readonly at_ms: number;
  readonly word: string;
}

/** A temperature that means something, drawn as a thin line with its words on it. */
export interface SeriesLine {
  readonly temp: number;
  readonly words: string;
}

interface Properties {
  readonly label: string;
  /** In the reader's degrees. */
  readonly points: readonly SeriesPoint[];
  readonly acts: readonly SeriesAct[];
  readonly lines: readonly SeriesLine[];
  readonly unit: string;
  /** A day as it stands under the picture: "3 Oct". */
  readonly sayDay: (at_ms: number) => string;
}

/** A heap's temperatures as a line, what was done to it as words above, and what the heights mean as worded lines. */
export function Series(properties: Properties): ReactNode {
  return <Drawing label={properties.label} draw={(room) => drawSeries(properties, room)} />;
}

const DAY_MS = 86_400_000;
/** Height of a degree where there is room, px: levels eight degrees apart then have room for their words. */
const PX_PER_DEGREE = 3;
/** Room at the left for the figures, in letters. */
const LEFT_LETTERS = 3.4;

function drawSeries(properties: Properties, { width, letter }: Room): { height: number; picture: ReactNode } {
  const { points, acts, lines, unit, sayDay } = properties;
  const small = 0.875 * letter;
  const times = [...points.map(({ at_ms }) => at_ms), ...acts.map(({ at_ms }) => at_ms)];
  const first = Math.min(...times);
  const last = Math.max(...times, first + DAY_MS);
  const temps = [...points.map(({ temp }) => temp), ...lines.map(({ temp }) => temp)];
  const [low, high] = [Math.min(...temps), Math.max(...temps)];
  const rows = placeWords(
    acts.filter(({ word }) => word !== ''),
    first,
    last,
    width,
    small,
  );
  const wordsHeight = rows.reduce((most, { row }) => Math.max(most, row + 1), 0) * 1.35 * small;
  const top = wordsHeight + 0.9 * small;
  const plot = Math.min(260, Math.max(190, PX_PER_DEGREE * (high - low), 11 * small));
  const ground = top + plot;
  const left = LEFT_LETTERS * small;
  const x = scaleTime([first, last], [left + 8, width - 8]);
  const y = scaleLinear([low, high], [ground - 8, top + 8]).nice(4);
  const path = line<SeriesPoint>(
    ({ at_ms }) => x(at_ms),
    ({ temp }) => y(temp),
  );
  const drawn = points.map(({ at_ms, temp }) => ({ x: x(at_ms), y: y(temp) }));
  const worded = wordLevels(
    lines.map((one) => ({ ...one, at: y(one.temp) })),
    drawn,
    { left, width, small },
  );
  const ticks = y.ticks(4).filter((tick) => worded.every(({ temp }) => Math.abs(y(tick) - y(temp)) > 1.3 * small));
  return {
    height: ground + 1.9 * small,
    picture: (
      <>
        {acts.map(({ at_ms, word }) => (
          <path key={`${word}@${at_ms}`} d={`M${x(at_ms)} ${ground} v-7`} stroke="var(--ink)" strokeWidth="1.5" />
        ))}
        {rows.map(({ act, row, at, anchor }) => (
          <g key={`${act.word}@${act.at_ms}`}>
            <path
              d={`M${x(act.at_ms)} ${(row + 1) * 1.35 * small - 2} V${ground}`}
              stroke="var(--rule)"
              strokeWidth="1"
              strokeDasharray="2 3"
            />
            <text
              x={at}
              y={(row + 0.8) * 1.35 * small}
              textAnchor={anchor}
              fontSize={small}
              fontStyle="italic"
              fill="var(--ink)"
            >
              {act.word}
            </text>
          </g>
        ))}
        {ticks.map((tick) => (
          <text
            key={tick}
            x={left - 4}
            y={y(tick)}
            dominantBaseline="central"
            textAnchor="end"
            fontSize={small}
            fill="var(--ink-quiet)"
          >
            {tick}
          </text>
        ))}
        {worded.map(({ temp, words, baseline, side }, i) => (
          <g key={words}>
            <path d={`M${left} ${y(temp)} H${width}`} stroke="var(--ink-quiet)" strokeWidth="0.75" />
            <text
              x={left - 4}
              y={y(temp)}
              dominantBaseline="central"
              textAnchor="end"
              fontSize={small}
              fill="var(--ink)"
            >
              {i === worded.length - 1 ? `${Math.round(temp)} ${unit}` : Math.round(temp)}
            </text>
            <text
              x={side === 'right' ? width : left + 4}
              y={baseline}
              textAnchor={side === 'right' ? 'end' : 'start'}
              fontSize={small}
              fill="var(--ink-quiet)"
              stroke="var(--ground)"
              strokeWidth="3"
              paintOrder="stroke"
            >
              {words}
            </text>
          </g>
        ))}
        <path d={path([...points]) ?? ''} fill="none" stroke="var(--ink)" strokeWidth="2.25" strokeLinejoin="round" />
        {points.map(({ at_ms, temp }) => (
          <circle
            key={at_ms}
            cx={x(at_ms)}
            cy={y(temp)}
            r="3.2"
            fill="var(--ground)"
            stroke="var(--ink)"
            strokeWidth="2"
          />
        ))}
        <path d={`M${left} ${ground} H${width}`} stroke="var(--ink)" strokeWidth="1.5" />
        {days(first, last, width, small).map(({ at_ms, anchor }) => (
          <text
            key={at_ms}
            x={x(at_ms)}
            y={ground + 1.3 * small}
            textAnchor={anchor}
            fontSize={small}
            fill="var(--ink-quiet)"
          >
            {sayDay(at_ms)}
          </text>
        ))}
      </>
    ),
  };
}

interface PlacedWord {
  readonly act: SeriesAct;
  readonly row: number;
  readonly at: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** Rows of words above the line at the most; what finds no room in them is a stroke at the foot and no word. */
const MOST_ROWS = 3;

/** Words in rows, so that none stands on another. A word near an edge leans inwards. */
function placeWords(
  acts: readonly SeriesAct[],
  first: number,
  last: number,
  width: number,
  letter: number,
): readonly PlacedWord[] {
  const left = LEFT_LETTERS * letter + 8;
  const span = width - 8 - left;
  const ends: number[] = [];
  return [...acts]
    .sort((a, b) => a.at_ms - b.at_ms)
    .flatMap((act): readonly PlacedWord[] => {
      const at = left + (span * (act.at_ms - first)) / (last - first);
      const long = act.word.length * 0.52 * letter;
      const anchor = at - long / 2 < 0 ? 'start' : at + long / 2 > width ? 'end' : 'middle';
      const from = anchor === 'start' ? at : anchor === 'end' ? at - long : at - long / 2;
      const free = ends.findIndex((end) => end < from - 4);
      const row = free < 0 ? ends.length : free;
      if (row >= MOST_ROWS) return [];
      ends[row] = from + long;
      return [{ act, row, at, anchor }];
    });
}

/** First and last day, and those between as far as there is room. */
function days(
  first: number,
  last: number,
  width: number,
  letter: number,
): readonly { at_ms: number; anchor: 'start' | 'middle' | 'end' }[] {
  const room = Math.max(1, Math.floor(width / (7 * letter)) - 1);
  const steps = Math.min(room, Math.max(1, Math.round((last - first) / DAY_MS)));
  return Array.from({ length: steps + 1 }, (_, i) => ({
    at_ms: first + ((last - first) * i) / steps,
    anchor: i === 0 ? 'start' : i === steps ? 'end' : 'middle',
  }));
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

interface Box {
  readonly from: number;
  readonly to: number;
  readonly above: number;
  readonly below: number;
}

interface WordedLevel extends SeriesLine {
  readonly side: 'left' | 'right';
  /** Where the words stand, px from the top of the picture. */
  readonly baseline: number;
}

/**
 * Puts the words of each level where the heap's own line and the words before it cross them least: on the level or
 * under it, at the right or the left.
 */
function wordLevels(
  levels: readonly (SeriesLine & { readonly at: number })[],
  drawn: readonly Spot[],
  { left, width, small }: { readonly left: number; readonly width: number; readonly small: number },
): readonly WordedLevel[] {
  const taken: Box[] = [];
  return levels.map(({ temp, words, at }) => {
    const long = words.length * 0.5 * small;
    const boxOf = ({ side, baseline }: Pick<WordedLevel, 'side' | 'baseline'>): Box => {
      const from = side === 'right' ? width - long : left + 4;
      return { from, to: from + long, above: baseline - 0.85 * small, below: baseline + 0.2 * small };
    };
    const cost = (place: Pick<WordedLevel, 'side' | 'baseline'>): number => {
      const box = boxOf(place);
      const strokes = drawn.filter((spot, i) => crosses(spot, drawn[i + 1] ?? spot, box)).length;
      return strokes + WORDS_ON_WORDS * taken.filter((other) => meet(box, other)).length;
    };
    const places = [at - 0.28 * small, at + 1.05 * small].flatMap((baseline) =>
      (['right', 'left'] as const).map((side) => ({ side, baseline })),
    );
    const best = places.reduce((least, place) => (cost(place) < cost(least) ? place : least));
    taken.push(boxOf(best));
    return { temp, words, ...best };
  });
}

/** Words on words can't be read at all; a line through them can be borne. */
const WORDS_ON_WORDS = 10;

function meet(a: Box, b: Box): boolean {
  return a.from < b.to && b.from < a.to && a.above < b.below && b.above < a.below;
}

/** Whether a stroke passes through a box; looked at in a few places along it. */
function crosses(a: Spot, b: Spot, box: Box): boolean {
  return Array.from({ length: LOOKS + 1 }, (_, i) => i / LOOKS).some((t) => {
    const at = { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
    return at.x >= box.from && at.x <= box.to && at.y >= box.above && at.y <= box.below;
  });
}

const LOOKS = 12;
