import type { ReactNode } from 'react';

/** A rule drawn as the lines of a soil profile are: close at the top, wider and thinner below. */
export function Strata(): ReactNode {
  return (
    <svg className="strata" viewBox="0 0 360 12" preserveAspectRatio="none" aria-hidden="true">
      <g fill="none" stroke="currentColor" vectorEffect="non-scaling-stroke">
        <path strokeWidth="2.2" vectorEffect="non-scaling-stroke" d="M0 2.2 C 60 1.2 120 3 180 2 S 300 1.4 360 2.4" />
        <path strokeWidth="1" vectorEffect="non-scaling-stroke" d="M0 5.4 C 70 6.4 130 4.6 200 5.6 S 310 6.2 360 5.2" />
        <path
          strokeWidth="0.6"
          vectorEffect="non-scaling-stroke"
          d="M0 9.4 C 50 8.6 140 10.4 220 9.2 S 320 10 360 9.6"
        />
      </g>
    </svg>
  );
}
