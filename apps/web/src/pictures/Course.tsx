import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { ReactNode } from 'react';
import { Axes } from './Axes.tsx';
import { Drawing, type Room } from './Drawing.tsx';

/** An uncertain figure on a day. */
interface CoursePoint {
  readonly day: number;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  /** One course among all, drawn as a thin line. */
  readonly one: number;
}

interface Properties {
  readonly label: string;
  /** From the first day to the last, two at least, in the reader's unit. */
  readonly points: readonly CoursePoint[];
  /** What the heights are, over the picture. */
  readonly heights: string;
  /** What the steps along the foot are. */
  readonly steps: string;
  /** A height that means something, with its word. */
  readonly level: { readonly at: number; readonly word: string };
  /** The day that is looked at. */
  readonly chosen: number;
}

/** Where a figure goes over the days: a band as wide as it is uncertain, the likely line in it, one course among all, and the day looked at. */
export function Course(properties: Properties): ReactNode {
  return <Drawing label={properties.label} draw={(room) => drawCourse(properties, room)} />;
}

const PLOT_LETTERS = 10;
/** Room at the left for the figures, in letters; `look` of the slider under it has the same. */
const LEFT_LETTERS = 2.6;
const RIGHT_LETTERS = 1.8;

function drawCourse(properties: Properties, { width, letter }: Room): { height: number; picture: ReactNode } {
  const { points, heights, steps, level, chosen } = properties;
  const small = 0.875 * letter;
  const top = 1.9 * small;
  const ground = top + PLOT_LETTERS * small;
  const [left, right] = [LEFT_LETTERS * small, width - RIGHT_LETTERS * small];
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined) throw new RangeError('a course has days');
  const shown = points.flatMap(({ low, high, one }) => [low, high, one]);
  const x = scaleLinear([first.day, last.day], [left, right]);
  const y = scaleLinear([Math.min(...shown, level.at), Math.max(...shown, level.at)], [ground, top]).nice(4);
  const band = area<CoursePoint>()
    .x(({ day }) => x(day))
    .y0(({ low }) => y(low))
    .y1(({ high }) => y(high));
  const path = (of: (point: CoursePoint) => number): string =>
    line<CoursePoint>(
      ({ day }) => x(day),
      (point) => y(of(point)),
    )([...points]) ?? '';
  const here = points.reduce((best, point) =>
    Math.abs(point.day - chosen) < Math.abs(best.day - chosen) ? point : best,
  );
  return {
    height: ground + 2.9 * small,
    picture: (
      <>
        <path d={band([...points]) ?? ''} fill="var(--band)" stroke="var(--ink)" strokeWidth="0.75" />
        <path
          d={`M${left} ${y(level.at)} H${right}`}
          fill="none"
          stroke="var(--ink)"
          strokeWidth="1"
          strokeDasharray="5 4"
        />
        <text
          x={right}
          y={y(level.at) - 0.35 * small}
          textAnchor="end"
          fontSize={small}
          fontStyle="italic"
          fill="var(--ink)"
          stroke="var(--ground)"
          strokeWidth="3"
          paintOrder="stroke"
        >
          {level.word}
        </text>
        <path d={path(({ likely }) => likely)} fill="none" stroke="var(--ink)" strokeWidth="2.5" />
        <path d={path(({ one }) => one)} fill="none" stroke="var(--ink)" strokeWidth="1.25" />
        <path d={`M${x(here.day)} ${ground} V${top - 4}`} stroke="var(--ink)" strokeWidth="1.5" />
        <circle cx={x(here.day)} cy={y(here.one)} r="4.5" fill="var(--ground)" stroke="var(--ink)" strokeWidth="2.25" />
        <Axes x={x} steps={steps} stepCount={6} y={y} heights={heights} small={small} />
      </>
    ),
  };
}
