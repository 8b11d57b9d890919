import '@loamwright/words/later';
import { type BedMoment, bedArea_m2, compostOf, seasonOf } from '@loamwright/advisor';
import type { Bed, Holding, Spreading } from '@loamwright/daybook';
import { likely } from '@loamwright/science';
import type { ReactNode } from 'react';
import { useBook } from '../../keep/useBook.ts';
import { nameOf } from '../../mix/amount.ts';
import { drawnMaterial, likelyVolume_m3 } from '../../mix/science.ts';
import { type DrawnLayer, Layers } from '../../pictures/Layers.tsx';
import { useSpeaker } from '../../shell/words.tsx';

/** A spade's depth, where nobody said how deep the bed is worked. */
const USUAL_DEPTH_M = 0.2;
/** Thinner layers would not be seen. */
const LEAST_DRAWN_M = 0.008;

/** What was put on this season over the soil that is worked, cut through. */
export function BedPicture({ bed, moment }: { readonly bed: Bed; readonly moment: BedMoment }): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const season = seasonOf(moment.now, moment.zone);
  const laid = bed.spreadings
    .filter(({ told }) => seasonOf(told.entry.happened, moment.zone) === season)
    .flatMap((one) => layerOf(one));
  if (laid.length === 0) return null;
  const depth_m = bed.setUp.body.depth_m === undefined ? USUAL_DEPTH_M : likely(bed.setUp.body.depth_m);
  const soil: DrawnLayer = {
    material: drawnMaterial('soil'),
    thickness_m: depth_m,
    name: speaker.say('bedPage.soil'),
    amount: speaker.likely(depth_m, 'm', 'depth'),
  };
  return (
    <figure className="picture">
      <Layers
        label={speaker.say('bedPage.picture')}
        layers={[soil, ...laid]}
        width_m={2 * depth_m}
        height_m={null}
        marks={[]}
        tallest={180}
      />
    </figure>
  );

  function layerOf(spreading: Spreading): readonly DrawnLayer[] {
    const { material, volume_m3 } = volumeOf(spreading, holding);
    if (volume_m3 === null) return [];
    const deep_m = volume_m3 / bedArea_m2(bed);
    return [
      {
        material: drawnMaterial(material),
        thickness_m: Math.max(LEAST_DRAWN_M, deep_m),
        name: nameOf(speaker, material, holding.materials.get(material)?.described?.body.name),
        amount: speaker.likely(deep_m, 'm', 'depth'),
      },
    ];
  }
}

function volumeOf(
  { told: { body } }: Spreading,
  holding: Holding,
): { readonly material: string; readonly volume_m3: number | null } {
  const { of, mass_kg, volume_m3 } = body;
  const heap = of.type === 'heap' ? holding.heaps.get(of.id) : undefined;
  const material = of.type === 'material' ? of.id : heap === undefined ? 'finished-compost' : compostOf(heap);
  if (volume_m3 !== undefined) return { material, volume_m3: likely(volume_m3) };
  const mass = of.type === 'material' ? of.mass_kg : mass_kg;
  return { material, volume_m3: mass === undefined ? null : likelyVolume_m3(material, { mass_kg: mass }, {}) };
}
