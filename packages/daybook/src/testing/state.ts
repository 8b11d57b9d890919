import type { Holding } from '../fold/holding.ts';

/** A state as text, maps and sets in their own order: two states are the same exactly when their texts are. */
export function stateText(holding: Holding): string {
  return JSON.stringify(holding, (_key, value: unknown) => {
    if (value instanceof Map) return { map: [...value] };
    if (value instanceof Set) return { set: [...value] };
    return value;
  });
}
