import type { Estimate, SoilWater } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { twoDigits } from './blend-words.ts';
import { depth, say, sayOf } from './saying.ts';

/** Water that a soil holds for plants, in sentences. A millimetre is a litre on a square metre. */
export function soilWaterReport(found: SoilWater): readonly Saying[] {
  return [
    say('soilWater.answer', {
      depth: depth(found.depth_m),
      water: litres(found.available_mm),
      range: rangeOf(found.available_mm),
      class: sayOf('soilWater.class', found.class),
    }),
    ...found.layers.map((layer) =>
      say('soilWater.layer', {
        top: depth(layer.top_m),
        bottom: depth(layer.bottom_m),
        water: litres(layer.available_mm),
      }),
    ),
    say('soilWater.by'),
    ...found.notes.map((id) => sayOf('soilWater.note', id)),
  ];
}

function litres(water_mm: Estimate): string {
  return String(twoDigits(water_mm).likely);
}

function rangeOf(water_mm: Estimate): string {
  const { low, high } = twoDigits(water_mm);
  return low === high ? String(low) : `${low}–${high}`;
}
