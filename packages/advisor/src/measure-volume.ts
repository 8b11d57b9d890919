import {
  good,
  knownMaterial,
  type Needs,
  type Outcome,
  type OwnSizes,
  sizeAmount,
  summarise,
} from '@loamwright/science';

/** What one of a measure holds of compost, m³, its likely volume. Problems: those of measures. */
export function measureVolume_m3(
  measure: string,
  ownSizes: OwnSizes | undefined,
  { draws }: Pick<Needs, 'draws'>,
): Outcome<number> {
  const material = knownMaterial('finished-compost');
  if (material === undefined) throw new RangeError('the tables have finished compost');
  const sized = sizeAmount({ measure, count: 1 }, { draws, material, name: 'spread', ownSizes, path: 'measure' });
  return sized.ok ? good(summarise(sized.value.volume_m3).p50) : sized;
}
