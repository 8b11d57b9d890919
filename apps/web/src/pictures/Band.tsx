import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { ReactNode } from 'react';
import { Axes } from './Axes.tsx';
import { Drawing, type Room } from './Drawing.tsx';

/** An uncertain figure in a year, and what it would be otherwise. */
export interface BandYear {
  readonly year: number;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly otherwise: number;
}

interface Properties {
  readonly label: string;
  /** From the first year to the last, two at least. */
  readonly years: readonly BandYear[];
  /** What the heights are, over the picture. */
  readonly heights: string;
  /** What the steps along the foot are. */
  readonly steps: string;
  /** What the broken line is; null where it is the same as the line. */
  readonly otherwise: string | null;
  readonly sayValue: (value: number) => string;
}

/** Where a figure goes over the years: a band as wide as it is uncertain, the likely line in it, and a broken line for the other case. */
export function Band(properties: Properties): ReactNode {
  return <Drawing label={properties.label} draw={(room) => drawBand(properties, room)} />;
}

const PLOT_LETTERS = 13;
/** Room at each side for the figures, in letters. */
const SIDE_LETTERS = 2.6;
/** Figures at the end stand at least so far apart, in letters. */
const APART_LETTERS = 1.15;

function drawBand(properties: Properties, { width, letter }: Room): { height: number; picture: ReactNode } {
  const { years, heights, steps, otherwise, sayValue } = properties;
  const small = 0.875 * letter;
  const top = 1.9 * small;
  const ground = top + PLOT_LETTERS * small;
  const [left, right] = [SIDE_LETTERS * small, width - SIDE_LETTERS * small];
  const first = years[0];
  const last = years.at(-1);
  if (first === undefined || last === undefined) throw new RangeError('a band has years');
  const shown = years.flatMap(({ low, high, otherwise: bare }) => [low, high, ...(otherwise === null ? [] : [bare])]);
  const x = scaleLinear([first.year, last.year], [left, right]);
  const y = scaleLinear([Math.min(...shown), Math.max(...shown)], [ground, top]).nice(4);
  const band = area<BandYear>()
    .x(({ year }) => x(year))
    .y0(({ low }) => y(low))
    .y1(({ high }) => y(high));
  const path = (of: (one: BandYear) => number): string =>
    line<BandYear>()
      .x(({ year }) => x(year))
      .y((one) => y(of(one)))([...years]) ?? '';
  const ends = apart(
    [
      { id: 'high', value: last.high, strong: false },
      { id: 'likely', value: last.likely, strong: true },
      { id: 'low', value: last.low, strong: false },
    ].map((end) => ({ ...end, at: y(end.value) })),
    APART_LETTERS * small,
    ground,
  );
  const bareUnder = last.otherwise <= last.likely;
  const middle = years[Math.floor(years.length / 2)] ?? last;
  return {
    height: ground + 3.1 * small,
    picture: (
      <>
        <path d={band([...years]) ?? ''} fill="var(--pigment-bone)" stroke="var(--ink)" strokeWidth="0.75" />
        <path d={path(({ likely }) => likely)} fill="none" stroke="var(--ink)" strokeWidth="2.5" />
        {otherwise !== null && (
          <>
            <path
              d={path((one) => one.otherwise)}
              fill="none"
              stroke="var(--ink)"
              strokeWidth="1.5"
              strokeDasharray="5 4"
            />
            <text
              x={x(middle.year)}
              y={y(middle.otherwise) + (bareUnder ? 1.15 : -0.45) * small}
              textAnchor="middle"
              fontSize={small}
              fontStyle="italic"
              fill="var(--ink)"
              stroke="var(--ground)"
              strokeWidth="3"
              paintOrder="stroke"
            >
              {otherwise}
            </text>
          </>
        )}
        {ends.map(({ id, value, strong, at }) => (
          <text
            key={id}
            x={right + 5}
            y={at}
            dominantBaseline="central"
            fontSize={small}
            fontWeight={strong ? 700 : 400}
            fill="var(--ink)"
          >
            {sayValue(value)}
          </text>
        ))}
        <Axes x={x} steps={steps} stepCount={4} y={y} heights={heights} small={small} />
      </>
    ),
  };
}

/** From the top down, each pushed below the one before; then up again from the ground, so that none falls out of the picture. */
function apart<End extends { readonly at: number }>(ends: readonly End[], gap: number, ground: number): readonly End[] {
  let above = Number.NEGATIVE_INFINITY;
  const pushed = ends.map((end) => {
    above = Math.max(end.at, above + gap);
    return { ...end, at: above };
  });
  let below = ground + gap;
  return pushed
    .toReversed()
    .map((end) => {
      below = Math.min(end.at, below - gap);
      return { ...end, at: below };
    })
    .toReversed();
}
