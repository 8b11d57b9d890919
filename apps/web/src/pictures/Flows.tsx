import type { ReactNode } from 'react';
import { Drawing, type Room } from './Drawing.tsx';

/** One amount on its way: as long as it is much, and laid where the part of the whole that it is begins. All of a picture are of one unit. */
export interface Flow {
  readonly id: string;
  readonly text: string;
  readonly from: number;
  readonly length: number;
  /** What goes out of sight is drawn hollow. */
  readonly leaks: boolean;
}

interface Properties {
  readonly label: string;
  readonly flows: readonly Flow[];
}

/** Amounts under one another, each beneath the part of the one above that it came from. */
export function Flows({ label, flows }: Properties): ReactNode {
  return <Drawing label={label} draw={(room) => drawFlows(flows, room)} />;
}

const LEAST_PX = 2;

function drawFlows(flows: readonly Flow[], { width, letter }: Room): { height: number; picture: ReactNode } {
  const most = Math.max(...flows.map(({ from, length }) => from + length), Number.MIN_VALUE);
  const scale = (width - 2 * LEAST_PX) / most;
  const row = 2.5 * letter;
  const bar = 0.8 * letter;
  return {
    height: flows.length * row,
    picture: flows.map(({ id, text, from, length, leaks }, i) => (
      <g key={id}>
        <text x={0} y={i * row + letter} fontSize={0.9375 * letter} fill="var(--ink)">
          {text}
        </text>
        <rect
          x={LEAST_PX + from * scale}
          y={i * row + 1.3 * letter}
          width={Math.max(LEAST_PX, length * scale)}
          height={bar}
          fill={leaks ? 'none' : 'var(--pigment-bone)'}
          stroke="var(--ink)"
          strokeWidth="1.5"
          strokeDasharray={leaks ? '4 3' : undefined}
        />
      </g>
    )),
  };
}
