import {
  type Amount,
  createDraws,
  knownMaterial,
  type Material,
  materialById,
  sizeAmount,
  summarise,
} from '@loamwright/science';
import type { OwnMeasures } from '../device/settings.ts';
import type { Drawn } from '../pictures/texture.ts';

const draws = createDraws();

/** Likely volume of an amount as it lies, m³; null where it can't be told. */
export function likelyVolume_m3(material: string, amount: Amount, ownSizes: OwnMeasures): number | null {
  const known = knownMaterial(material);
  if (known === undefined) return null;
  const sized = sizeAmount(amount, { draws, material: known, name: material, ownSizes, path: '' });
  return sized.ok ? summarise(sized.value.volume_m3).p50 : null;
}

/** What a picture has to know of a material; an unknown one is drawn as crumbs. */
export function drawnMaterial(id: string): Drawn {
  const material: Material | undefined = materialById(id);
  return { id, particle: material?.particle ?? 'fine', class: material?.class ?? 'starter' };
}
