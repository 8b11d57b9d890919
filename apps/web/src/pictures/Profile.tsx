import { type ReactNode, useId } from 'react';
import { drawnMaterial } from '../mix/science.ts';
import { fillOf, Patterns } from './Patterns.tsx';
import { texturesFor } from './texture.ts';

interface Properties {
  /** What it is made of, the largest share first; shares add up to 1. */
  readonly shares: readonly { readonly material: string; readonly share: number }[];
}

const WIDTH = 64;
const HEIGHT = 56;
/** A heap as it settles: steep sides, round shoulders. */
const MOUND = 'M2 55 C 6 30 10 8 26 5 C 34 3 42 4 48 10 C 56 20 59 40 62 55 Z';
/** Materials below this share make a line too thin to be seen. */
const THINNEST = 0.03;

/** A heap cut through, small: what it is made of, as layers as thick as their share. For the eye only: the words stand beside it. */
export function Profile({ shares }: Properties): ReactNode {
  const prefix = useId().replace(/[^a-zA-Z0-9]/gu, '');
  const seen = shares.filter(({ share }) => share >= THINNEST);
  const textures = texturesFor(seen.map(({ material }) => drawnMaterial(material)));
  const total = seen.reduce((sum, { share }) => sum + share, 0);
  let bottom = HEIGHT - 1;
  const mound = `${prefix}-mound`;
  return (
    <svg className="profile" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
      <Patterns prefix={prefix} textures={textures} />
      <clipPath id={mound}>
        <path d={MOUND} />
      </clipPath>
      <g clipPath={`url(#${mound})`}>
        {seen.map(({ material, share }) => {
          const height = ((HEIGHT - 5) * share) / total;
          bottom -= height;
          return (
            <path
              key={material}
              d={`M0 ${bottom + height} V${bottom} Q${WIDTH / 2} ${bottom - 3} ${WIDTH} ${bottom} V${bottom + height} Z`}
              fill={fillOf(prefix, material)}
              stroke="var(--ink)"
              strokeWidth="0.75"
            />
          );
        })}
      </g>
      <path d={MOUND} fill="none" stroke="var(--ink)" strokeWidth="1.25" />
      <path d={`M0 ${HEIGHT - 1} H${WIDTH}`} stroke="var(--ink)" strokeWidth="2" />
    </svg>
  );
}
