import type { LayerWater, SoilWater } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { twoDigits } from './blend-words.ts';
import { depth, liquidCover, say, sayOf } from './saying.ts';

/** Water that a soil holds for plants, in sentences. */
export function soilWaterReport(found: SoilWater): readonly Saying[] {
  return [
    say('soilWater.answer', {
      depth: depth(found.depth_m),
      water: liquidCover(found.available_mm),
      range: { ...liquidCover(found.available_mm), asRange: true },
      class: sayOf('soilWater.class', found.class),
    }),
    ...found.layers.map((layer) =>
      say('soilWater.layer', { span: spanOf(layer), water: liquidCover(layer.available_mm) }),
    ),
    ...organicWords(found.layers),
    say('soilWater.by'),
    ...found.notes.map((id) => sayOf('soilWater.note', id)),
  ];
}

function spanOf({ top_m, bottom_m }: LayerWater): Saying {
  return say('soilWater.span', { top: depth(top_m), bottom: depth(bottom_m) });
}

/** Which layers' organic matter was taken and how much, the layers of one figure together. */
function organicWords(layers: readonly LayerWater[]): readonly Saying[] {
  const taken = new Map<number, readonly Saying[]>();
  for (const layer of layers) {
    if (layer.organicTaken_pctDry === undefined) continue;
    const { likely } = twoDigits(layer.organicTaken_pctDry);
    taken.set(likely, [...(taken.get(likely) ?? []), spanOf(layer)]);
  }
  return [
    ...[...taken].map(([pct, spans]) => say('soilWater.organic', { layers: spans, pct })),
    ...(layers[0]?.organicTaken_pctDry === undefined ? [] : [say('soilWater.organic.top')]),
  ];
}
