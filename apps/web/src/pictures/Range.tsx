import { area, curveBasis } from 'd3-shape';
import type { ReactNode } from 'react';
import { Drawing, type Room } from './Drawing.tsx';

interface Properties {
  readonly label: string;
  /** The three points of an estimate, in the order p10, p50, p90, with their words. */
  readonly marks: readonly [RangeMark, RangeMark, RangeMark];
}

export interface RangeMark {
  readonly value: number;
  readonly text: string;
}

/** An uncertain figure as a mound: where it stands high the figure is likely, and it runs out on both sides. */
export function Range(properties: Properties): ReactNode {
  return <Drawing label={properties.label} draw={(room) => drawRange(properties, room)} />;
}

/** Standard deviations from the middle to p10 and p90 of a normal distribution. */
const Z_P90 = 1.2816;
const REACH = 2.6;
const STEPS = 48;

function drawRange({ marks }: Properties, { width, letter }: Room): { height: number; picture: ReactNode } {
  const [low, middle, high] = marks.map(({ value }) => value) as [number, number, number];
  const below = (middle - low) / Z_P90;
  const above = (high - middle) / Z_P90;
  const from = middle - REACH * below;
  const to = middle + REACH * above;
  const edge = 3.2 * letter;
  const x = (value: number): number =>
    to > from ? edge + ((width - 2 * edge) * (value - from)) / (to - from) : width / 2;
  const tall = 4 * letter;
  const ground = tall + 6;
  const points = Array.from({ length: STEPS + 1 }, (_, i) => {
    const z = -REACH + (2 * REACH * i) / STEPS;
    return { at: x(middle + z * (z < 0 ? below : above)), height: tall * Math.exp(-0.5 * z * z) };
  });
  const mound = area<(typeof points)[number]>()
    .x(({ at }) => at)
    .y0(ground)
    .y1(({ height }) => ground - height)
    .curve(curveBasis);
  return {
    height: ground + 2 * letter,
    picture: (
      <>
        <path d={mound(points) ?? ''} fill="var(--pigment-bone)" stroke="var(--ink)" strokeWidth="1" />
        <path d={`M0 ${ground} H${width}`} stroke="var(--ink)" strokeWidth="1.5" />
        {marks.map(({ value, text }, i) => (
          <g key={`${value}${text}`}>
            <path
              d={`M${x(value)} ${ground + 5} V${ground - tall * (i === 1 ? 1 : Math.exp(-0.5 * Z_P90 * Z_P90))}`}
              stroke="var(--ink)"
              strokeWidth={i === 1 ? 2 : 1}
              strokeDasharray={i === 1 ? undefined : '3 3'}
            />
            <text
              x={x(value)}
              y={ground + 1.45 * letter}
              textAnchor="middle"
              fontSize={0.9375 * letter}
              fontWeight={i === 1 ? 700 : 400}
              fill="var(--ink)"
            >
              {text}
            </text>
          </g>
        ))}
      </>
    ),
  };
}
