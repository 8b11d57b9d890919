import { type HeapRunAnswer, type HeapRunInput, isTooHigh, type PlaceFilled, shapeOn } from '@loamwright/science';
import type { Saying } from '@loamwright/words';

/** How high it stands in each bay that it lies in, save where it is too high, which a note tells; of a drum or a trench whether it holds so much. */
export function roomWords(input: HeapRunInput, { places }: HeapRunAnswer): readonly Saying[] {
  return places.flatMap((place) => (isTooHigh(place) ? [] : roomOf(input, place)));
}

function roomOf(input: HeapRunInput, { from_day, volume_m3, height_m }: PlaceFilled): readonly Saying[] {
  const shape = shapeOn(input, from_day);
  const then = from_day > 0;
  if (shape.form === 'box') {
    const height = { figure: height_m, unit: 'm', as: 'length' } as const;
    const places = { height, range: { ...height, asRange: true }, day: Number(from_day.toFixed(1)) };
    return [{ key: then ? 'cli.heapRun.high.turned' : 'cli.heapRun.high', places }];
  }
  const holds_m3 =
    shape.form === 'drum'
      ? Math.PI * (shape.diameter_m / 2) ** 2 * shape.length_m
      : shape.form === 'trench'
        ? shape.width_m * shape.depth_m * shape.length_m
        : Number.POSITIVE_INFINITY;
  if (volume_m3.p50 <= holds_m3) return [];
  const volume = { figure: volume_m3, unit: 'm3', as: 'bulkVolume' } as const;
  const holds = { figure: holds_m3, unit: 'm3', as: 'bulkVolume' } as const;
  const places = { volume, range: { ...volume, asRange: true }, holds, day: Number(from_day.toFixed(1)) };
  return [{ key: then ? 'cli.heapRun.overfull.turned' : 'cli.heapRun.overfull', places }];
}
