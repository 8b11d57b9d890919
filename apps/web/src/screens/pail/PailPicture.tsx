import type { Holding } from '@loamwright/daybook';
import { likely, type PailCover } from '@loamwright/science';
import type { ReactNode } from 'react';
import { nameOf } from '../../mix/amount.ts';
import { ownName } from '../../mix/own-name.ts';
import { drawnMaterial } from '../../mix/science.ts';
import { type DrawnLayer, Layers } from '../../pictures/Layers.tsx';
import { marksFor } from '../../pictures/marks.ts';
import { useSpeaker } from '../../shell/words.tsx';
import type { Reckoned } from './asked.ts';

/** How wide and deep stuff is taken to lie in a bin that nobody measured, and a pail that is tipped out by itself. */
const UNMEASURED_m = 1;
const TIPPED_m = 0.4;

interface Properties {
  readonly reckoned: Reckoned;
  readonly holding: Holding;
}

/** The bin cut through: what is left of its layers, and on top this pail with its cover. */
export function PailPicture({ reckoned: { found, bay, puts }, holding }: Properties): ReactNode {
  const speaker = useSpeaker();
  const isAlone = found.layers.length === 0;
  const side_m = isAlone && bay === undefined ? TIPPED_m : UNMEASURED_m;
  const { width_m, depth_m } = bay ?? { width_m: side_m, depth_m: side_m };
  const heaped = [
    ...byMonth(found),
    ...puts.map(({ material, volume_m3 = 0 }) => ({ material, volume_m3: likely(volume_m3) })),
  ];
  const heaped_m3 = heaped.reduce((sum, { volume_m3 }) => sum + volume_m3, 0);
  // Stuff lies closer in the bin than in a pail: it is drawn as high as the answer tells.
  const closer = isAlone || found.now === undefined ? 1 : found.now.volume_m3.p50 / heaped_m3;
  const layers = heaped.map(
    ({ material, volume_m3 }): DrawnLayer => ({
      material: drawnMaterial(holding.materials.get(material)?.described?.body.like ?? material),
      thickness_m: (closer * volume_m3) / (width_m * depth_m),
      name: nameOf(speaker, material, ownName(holding, material)),
      amount: '',
    }),
  );
  const height_m = layers.reduce((sum, { thickness_m }) => sum + thickness_m, 0);
  const label = speaker.say(isAlone ? 'app.pail.picture-alone' : 'app.pail.picture', {
    layers: speaker.list([...new Set(layers.map(({ name }) => name))]),
  });
  return (
    <figure className="picture">
      <Layers
        label={label}
        layers={layers}
        width_m={width_m}
        height_m={bay?.height_m ?? null}
        marks={marksFor(speaker, Math.max(height_m, bay?.height_m ?? 0))}
        tallest={220}
      />
    </figure>
  );
}

interface Heaped {
  readonly material: string;
  readonly volume_m3: number;
}

/** What is left of the layers, from the ground up; of one month each material is drawn as one. */
function byMonth({ layers }: PailCover): readonly Heaped[] {
  const merged = new Map<string, Heaped>();
  for (const { material, age_days, volume_m3, left } of layers) {
    const key = `${Math.floor(age_days / MONTH_DAYS)} ${material}`;
    const before = merged.get(key)?.volume_m3 ?? 0;
    merged.set(key, { material, volume_m3: before + volume_m3.p50 * left.volume_share.p50 });
  }
  return [...merged.values()];
}

const MONTH_DAYS = 30;
