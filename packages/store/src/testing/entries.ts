import { canonicalBytes, type Entry, sha256Hex } from '@loamwright/daybook';
import { draft } from '@loamwright/daybook/testing';

export { chain, draft, holding, idOf, must, otherVersion } from '@loamwright/daybook/testing';

/** An entry as a later version of the program may write it: a newer header with a field unknown here, an unknown kind. */
export function fromTheFuture(number: number, device = 'phone-of-ada'): Entry {
  const header = {
    ...draft(number, {
      device,
      kind: 'moon-phase',
      kv: 9,
      body: { phase: 0.25, of: ['ø', '\u0000', '🌒', -0.5e-300] },
    }),
  };
  const unsealed = { ...header, v: 2, n: 1, prev: null, weather: { rain_mm: 3.5 } };
  return { ...unsealed, sum: sha256Hex(canonicalBytes(unsealed)) };
}

/** Bytes with their name. */
export function bytesOf(text: string): { readonly hash: string; readonly bytes: Uint8Array } {
  const bytes = new TextEncoder().encode(text);
  return { hash: sha256Hex(bytes), bytes };
}
