import type { Heap, Holding } from '@loamwright/daybook';
import { likely, type Quantity } from '@loamwright/science';
import type { ReactNode } from 'react';
import { nameOf } from '../../mix/amount.ts';
import { ownName } from '../../mix/own-name.ts';
import { drawnMaterial } from '../../mix/science.ts';
import { type DrawnLayer, Layers } from '../../pictures/Layers.tsx';
import { marksFor } from '../../pictures/marks.ts';
import { useSpeaker } from '../../shell/words.tsx';

/** A heap that nobody has read yet, cut through: what lies in it, from the ground up, as it was put in. */
export function StuffPicture({ heap, holding }: { readonly heap: Heap; readonly holding: Holding }): ReactNode {
  const speaker = useSpeaker();
  const bay = holding.bays.get(heap.bay ?? '')?.setUp.body;
  const size = heap.built?.body.size;
  const width_m = sideOf(size?.width_m ?? bay?.width_m);
  const depth_m = sideOf(size?.depth_m ?? bay?.depth_m);
  const volumes = heap.layers.map(
    ({ put, share }) => share * (put.volume_m3 === undefined ? 0 : likely(put.volume_m3)),
  );
  const total_m3 = volumes.reduce((sum, volume) => sum + volume, 0);
  if (total_m3 <= 0) return <p className="section quiet">{speaker.say('app.heap.noPicture')}</p>;
  const height_m = size?.height_m === undefined ? total_m3 / (width_m * depth_m) : likely(size.height_m);
  const bayHeight_m = bay?.height_m === undefined ? null : likely(bay.height_m);
  const layers = heap.layers.map(
    ({ put }, i): DrawnLayer => ({
      material: drawnMaterial(put.material),
      thickness_m: (height_m * (volumes[i] ?? 0)) / total_m3,
      name: nameOf(speaker, put.material, ownName(holding, put.material)),
      amount: '',
    }),
  );
  return (
    <figure className="picture">
      <Layers
        label={speaker.say('app.layers.picture', { layers: speaker.list(layers.map(({ name }) => name)) })}
        layers={layers}
        width_m={width_m}
        height_m={bayHeight_m}
        marks={marksFor(speaker, Math.max(height_m, bayHeight_m ?? 0))}
      />
      <figcaption>{speaker.say('app.heap.noPicture')}</figcaption>
    </figure>
  );
}

/** A metre, where nobody said. */
function sideOf(side: Quantity | undefined): number {
  return side === undefined ? 1 : likely(side);
}
