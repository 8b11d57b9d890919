import type { ProductRate } from '@loamwright/science';

/** How stuff lies on a bed: dug in, or left on top. */
export const layings = ['dug', 'top'] as const;
export type Lying = (typeof layings)[number];

/** So much of a material, in a measure. */
export interface PutStuff {
  readonly material: string;
  readonly amount: { readonly measure: string; readonly count: number };
}

/** What was reckoned, in pieces of an address: how it lies, then how much of each. */
export function carriedPath(
  lies: Lying,
  products: readonly Pick<ProductRate, 'material' | 'measure' | 'count'>[],
): readonly string[] {
  return [lies, ...products.map(({ material, measure, count }) => `${count} ${measure} ${material}`)];
}

/** Reads it back; a piece that nobody could have written is left out. */
export function readCarried(path: readonly string[]): { readonly lies: Lying; readonly stuff: readonly PutStuff[] } {
  const [first, ...rest] = path;
  return {
    lies: layings.find((one) => one === first) ?? 'dug',
    stuff: rest.flatMap((piece) => {
      const [count = '', measure = '', ...material] = piece.split(' ');
      const read = Number(count);
      return read > 0 && Number.isFinite(read) && material.length > 0
        ? [{ material: material.join(' '), amount: { measure, count: read } }]
        : [];
    }),
  };
}
