import type { Holding } from '@loamwright/daybook';
import { materialById } from '@loamwright/science';
import type { OwnAtBins } from './draft.ts';

/** The name that the holding gave a material of its own. */
export function ownName(holding: Holding, material: string): string | undefined {
  return materialById(material) === undefined ? holding.materials.get(material)?.described?.body.name : undefined;
}

/** What the bins keep of one of the holding's own: they are shown before the daybook is open. */
export function ownAtBins(holding: Holding, material: string): OwnAtBins | undefined {
  const body = materialById(material) === undefined ? holding.materials.get(material)?.described?.body : undefined;
  return body === undefined ? undefined : { name: body.name, ...(body.like !== undefined && { like: body.like }) };
}
