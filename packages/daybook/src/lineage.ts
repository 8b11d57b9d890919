import { bad, good, type Outcome } from '@loamwright/science';
import type { Holding, Layer } from './fold/holding.ts';
import { compareText } from './order.ts';

/** Part of a heap or a bed's compost that is of one material. */
export interface MaterialShare {
  readonly material: string;
  /** Part of the whole, by likely mass as it was put in. */
  readonly share: number;
  /** Likely mass as it was put in, kg. */
  readonly mass_kg: number;
}

/** What lineage is asked of. */
export interface LineageSubject {
  readonly type: 'heap' | 'bed';
  readonly id: string;
}

/**
 * What a heap or a bed is made of, by material, through everything that was fed, combined, split, screened and
 * spread; the largest share first. The shares add up to 1; there are none where nothing was written down.
 *
 * Shares are by the likely mass **as it was put in**. Materials rot at different speeds: of what is there now their
 * shares are others, and only a model of the heap can tell them. A heap that is gone is told as empty; `wentTo` says
 * where its matter is. Oversize from a screen comes back as the material it is stored under.
 *
 * Problem: `no-such-heap` or `no-such-bed`.
 */
export function lineageOf(holding: Holding, subject: LineageSubject): Outcome<readonly MaterialShare[]> {
  const layers = subject.type === 'heap' ? holding.heaps.get(subject.id)?.layers : layersOfBed(holding, subject.id);
  if (layers === undefined)
    return bad({
      code: `no-such-${subject.type}`,
      path: 'id',
      found: subject.id,
      wanted: `a ${subject.type} of the holding`,
    });
  return good(madeOf(layers));
}

function layersOfBed(holding: Holding, id: string): readonly Layer[] | undefined {
  return holding.beds.get(id)?.spreadings.flatMap(({ layers }) => layers);
}

/** Layers by material, the largest share first. */
export function madeOf(layers: readonly Layer[]): readonly MaterialShare[] {
  const massByMaterial = new Map<string, number>();
  for (const { put, mass_kg } of layers)
    massByMaterial.set(put.material, (massByMaterial.get(put.material) ?? 0) + mass_kg);
  const total_kg = [...massByMaterial.values()].reduce((sum, mass_kg) => sum + mass_kg, 0);
  if (total_kg <= 0) return [];
  return [...massByMaterial]
    .filter(([, mass_kg]) => mass_kg > 0)
    .map(([material, mass_kg]) => ({ material, share: mass_kg / total_kg, mass_kg }))
    .sort((a, b) => b.share - a.share || compareText(a.material, b.material));
}
