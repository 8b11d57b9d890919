import type { ScaleLinear } from 'd3-scale';
import type { ReactNode } from 'react';

interface Properties {
  /** What stands along the foot, and its figures. */
  readonly x: ScaleLinear<number, number>;
  readonly steps: string;
  readonly stepCount: number;
  /** What the heights are, over the picture. */
  readonly y: ScaleLinear<number, number>;
  readonly heights: string;
  /** Size of the small letters. */
  readonly small: number;
}

/** The foot and the left side of a picture of heights over steps, with their figures and words. */
export function Axes({ x, steps, stepCount, y, heights, small }: Properties): ReactNode {
  const [left = 0, right = 0] = x.range();
  const [ground = 0, top = 0] = y.range();
  return (
    <>
      <text x={0} y={small} fontSize={small} fill="var(--ink-quiet)">
        {heights}
      </text>
      {y.ticks(4).map((tick) => (
        <g key={tick}>
          <path d={`M${left - 5} ${y(tick)} h5`} stroke="var(--ink)" strokeWidth="1" />
          <text
            x={left - 7}
            y={y(tick)}
            dominantBaseline="central"
            textAnchor="end"
            fontSize={small}
            fill="var(--ink-quiet)"
          >
            {tick}
          </text>
        </g>
      ))}
      <path d={`M${left} ${top} V${ground} H${right}`} fill="none" stroke="var(--ink)" strokeWidth="1.5" />
      {x.ticks(stepCount).map((step) => (
        <text
          key={step}
          x={x(step)}
          y={ground + 1.3 * small}
          textAnchor="middle"
          fontSize={small}
          fill="var(--ink-quiet)"
        >
          {step}
        </text>
      ))}
      <text
        x={(left + right) / 2}
        y={ground + 2.6 * small}
        textAnchor="middle"
        fontSize={small}
        fill="var(--ink-quiet)"
      >
        {steps}
      </text>
    </>
  );
}
