/** A 32-bit hash of a name: FNV-1a (Fowler, Noll, Vo 1991) with MurmurHash3's finaliser (Appleby 2011). */
export function hashName(name: string, seed: number): number {
  let hash = (0x811c9dc5 ^ seed) >>> 0;
  for (let i = 0; i < name.length; i++) {
    hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193);
  }
  return finish(hash);
}

function finish(hash: number): number {
  let h = hash;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

/**
 * Nested uniform (Owen) scrambling of a 32-bit point by a seed.
 *
 * Source: Burley B. 2020, Practical hash-based Owen scrambling, J. Computer Graphics Techniques 9(4):1-20,
 * listing 3, after Laine S., Karras T. 2011.
 */
export function scramble(point: number, seed: number): number {
  let x = reverseBits(point);
  x = (x + seed) >>> 0;
  x ^= Math.imul(x, 0x6c50b47c);
  x ^= Math.imul(x, 0xb82f1e52);
  x ^= Math.imul(x, 0xc7afe638);
  x ^= Math.imul(x, 0x8d22f6e6);
  return reverseBits(x >>> 0);
}

function reverseBits(value: number): number {
  let x = value;
  x = ((x >>> 1) & 0x55555555) | ((x & 0x55555555) << 1);
  x = ((x >>> 2) & 0x33333333) | ((x & 0x33333333) << 2);
  x = ((x >>> 4) & 0x0f0f0f0f) | ((x & 0x0f0f0f0f) << 4);
  x = ((x >>> 8) & 0x00ff00ff) | ((x & 0x00ff00ff) << 8);
  return ((x >>> 16) | (x << 16)) >>> 0;
}

/** A permutation of 0 … count − 1 that depends only on the seed (Fisher and Yates, fed by hashes). */
export function permutation(count: number, seed: number): Uint32Array {
  const order = Uint32Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i--) {
    const j = finish(Math.imul(i, 0x9e3779b1) ^ seed) % (i + 1);
    const held = order[i] ?? 0;
    order[i] = order[j] ?? 0;
    order[j] = held;
  }
  return order;
}
