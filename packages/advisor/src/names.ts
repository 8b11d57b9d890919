import type { Holding } from '@loamwright/daybook';
import { isMessageKey, type Place, type Saying } from '@loamwright/words';
import { say } from './saying.ts';

/** A name that a person gave. */
function named(name: string): Saying {
  return say('advisor.named', { name });
}

/** A material's name: the holding's own for it, else that of the tables, else its id. */
export function materialName(holding: Holding, id: string): Saying {
  const own = holding.materials.get(id)?.described?.body.name;
  if (own !== undefined) return named(own);
  const key = `material.${id}.name`;
  return isMessageKey(key) ? say(key) : named(id);
}

/** "3 barrows of straw": an amount of a material. */
export function someOf(holding: Holding, id: string, amount: Place): Saying {
  const key = `material.${id}.some`;
  const own = holding.materials.get(id)?.described ?? null;
  if (own === null && isMessageKey(key)) return say(key, { amount });
  return say('advisor.some', { amount, material: materialName(holding, id) });
}

export function heapName(holding: Holding, id: string): Saying {
  return named(holding.heaps.get(id)?.name ?? id);
}

export function bayName(holding: Holding, id: string): Saying {
  return named(holding.bays.get(id)?.setUp.body.name ?? id);
}

export function bedName(holding: Holding, id: string): Saying {
  return named(holding.beds.get(id)?.setUp.body.name ?? id);
}
