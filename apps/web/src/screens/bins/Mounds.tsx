import { type ReactNode, useId } from 'react';
import { useSettings } from '../../device/settings.ts';
import { nameOf } from '../../mix/amount.ts';
import type { BinItem } from '../../mix/draft.ts';
import { drawnMaterial, likelyVolume_m3 } from '../../mix/science.ts';
import { fillOf, Patterns } from '../../pictures/Patterns.tsx';
import { texturesFor } from '../../pictures/texture.ts';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import './mounds.css';

/** Width of the largest mound, px. */
const LARGEST = 118;
const SMALLEST = 22;
/** Drawn as a litre, where nobody can tell. */
const UNKNOWN_M3 = 0.001;

/** What lies at the bins, as mounds of one scale: twice as wide is eight times as much. */
export default function Mounds({
  items,
  label,
}: {
  readonly items: readonly BinItem[];
  readonly label: string;
}): ReactNode {
  const speaker = useSpeaker();
  const { measures_L } = useSettings();
  const prefix = useId().replace(/[^a-zA-Z0-9]/gu, '');
  const textures = texturesFor(
    items.map(({ material, own }) => ({ ...drawnMaterial(own?.like ?? material), id: material })),
  );
  const sides = items.map(({ material, own, amount }) =>
    Math.cbrt(likelyVolume_m3(own?.like ?? material, amount, measures_L) ?? UNKNOWN_M3),
  );
  const scale = LARGEST / Math.max(...sides);
  return (
    <figure className="picture mounds" aria-label={label}>
      <ul>
        {items.map(({ material, own }, i) => {
          const width = Math.max(SMALLEST, (sides[i] ?? 0) * scale);
          return (
            <li key={material}>
              <svg viewBox={`0 0 ${width} ${width * 0.55}`} style={{ width, height: width * 0.55 }} aria-hidden="true">
                <Patterns
                  prefix={`${prefix}${i}`}
                  textures={new Map([...textures].filter(([id]) => id === material))}
                />
                <path
                  d={moundPath(width, width * 0.55)}
                  fill={fillOf(`${prefix}${i}`, material)}
                  stroke="var(--ink)"
                  strokeWidth="1"
                />
              </svg>
              <a href={to('material', material)}>{nameOf(speaker, material, own?.name)}</a>
            </li>
          );
        })}
      </ul>
      <figcaption>{speaker.say('app.bins.pictureTold')}</figcaption>
    </figure>
  );
}

/** A heap as it slides off a barrow: steep in the middle, running out at the foot. */
function moundPath(width: number, height: number): string {
  const [w, h] = [width, height - 1];
  return `M0.5 ${h} C ${0.16 * w} ${h} ${0.24 * w} ${0.1 * h} ${0.46 * w} 1 S ${0.8 * w} ${h} ${w - 0.5} ${h} Z`;
}
