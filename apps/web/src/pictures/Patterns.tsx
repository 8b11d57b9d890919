import type { ReactNode } from 'react';
import type { Pattern, Texture } from './texture.ts';

interface Properties {
  /** Begins every id, so that two pictures on one page don't share theirs. */
  readonly prefix: string;
  readonly textures: ReadonlyMap<string, Texture>;
}

/** Side of the tile that each pattern repeats in, px. */
const TILE = 16;

/** Side of the square the strokes below are drawn in. */
const DRAWN = 18;

/** The fill of a material in the picture whose patterns have this prefix. */
export function fillOf(prefix: string, material: string): string {
  return `url(#${prefix}-${material})`;
}

/** The patterns of one picture: a pigment with strokes over it. */
export function Patterns({ prefix, textures }: Properties): ReactNode {
  return (
    <defs>
      {[...textures].map(([material, { pattern, pigment, variant }]) => (
        <pattern
          key={material}
          id={`${prefix}-${material}`}
          width={TILE}
          height={TILE}
          viewBox={`0 0 ${DRAWN} ${DRAWN}`}
          patternUnits="userSpaceOnUse"
          patternTransform={variant === 0 ? undefined : `rotate(${variant * 67}) scale(${1 + 0.25 * variant})`}
        >
          <rect width={DRAWN} height={DRAWN} fill={`var(--pigment-${pigment})`} />
          <g
            fill="none"
            stroke={pigment === 'soot' || pigment === 'moss' ? 'var(--pattern-light)' : 'var(--pigment-ink)'}
            strokeWidth="var(--stroke)"
            strokeLinecap="round"
            strokeLinejoin="round"
            strokeOpacity="var(--pattern-strength)"
          >
            {strokes[pattern]}
          </g>
        </pattern>
      ))}
    </defs>
  );
}

const strokes: Readonly<Record<Pattern, ReactNode>> = {
  stalks: <path d="M1 6 L10 3 M8 11 L17 8 M2 16 L9 13.5 M12 16 L17 14.5" />,
  leaves: <path d="M2 5 q3 -4 6 0 q-3 4 -6 0 M11 12 q3 -4 6 0 q-3 4 -6 0 M3 14 q2 -3 4.5 0 M11.5 3.5 q2 -3 4.5 0" />,
  grains: <path d="M3 3 h.1 M9 5 h.1 M15 2 h.1 M6 10 h.1 M12 11 h.1 M2 15 h.1 M9 16 h.1 M16 15 h.1" strokeWidth="2" />,
  paste: <path d="M1 5 q3 -3 5 0 t5 0 M7 13 q3 -3 5 0 t5 0" />,
  chips: <path d="M2 3 l5 -1 l2 4 l-5 2 z M11 10 l5 1 l-1 5 l-5 -2 z M12 3 l3 1 M3 13 l3 2" />,
  sheets: <path d="M0 3.5 H18 M0 9 H18 M0 14.5 H18" strokeLinecap="butt" />,
  pellets: (
    <>
      <circle cx="4.5" cy="4.5" r="2" />
      <circle cx="13" cy="8" r="2" />
      <circle cx="6" cy="14" r="2" />
    </>
  ),
  lumps: <path d="M2 4 l4 -2 l3 3 l-3 3 l-4 -1 z M10 12 l4 -2 l3 3 l-3 3 l-4 -1 z" fill="currentColor" />,
  waves: <path d="M0 5 q4.5 -3 9 0 t9 0 M0 13 q4.5 -3 9 0 t9 0" />,
};
