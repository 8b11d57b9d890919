/**
 * Closed forms of conduction with a film at the surface, for a slab of half-thickness L, a cylinder or a sphere of
 * radius L. Source: Carslaw and Jaeger 1959, Conduction of heat in solids, sections 3.11, 7.7 and 9.4; the forms recalled.
 */
export type Body = 'slab' | 'sphere';

const MOST_TERMS = 60;

/** Roots of ζ tan ζ = Bi (slab) or 1 − ζ cot ζ = Bi (sphere), one in each branch, by halving. */
export function root(body: Body, biot: number, term: number): number {
  const miss = (zeta: number): number =>
    body === 'slab'
      ? zeta * Math.sin(zeta) - biot * Math.cos(zeta)
      : (1 - biot) * Math.sin(zeta) - zeta * Math.cos(zeta);
  let low = body === 'slab' ? term * Math.PI : term * Math.PI + (term === 0 ? 1e-9 : 0);
  let high = body === 'slab' ? (term + 0.5) * Math.PI : (term + 1) * Math.PI;
  const sign = Math.sign(miss(high));
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2;
    if (Math.sign(miss(middle)) === sign) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** The weight of a term. */
export function weight(body: Body, zeta: number): number {
  if (body === 'slab') return (4 * Math.sin(zeta)) / (2 * zeta + Math.sin(2 * zeta));
  return (4 * (Math.sin(zeta) - zeta * Math.cos(zeta))) / (2 * zeta - Math.sin(2 * zeta));
}

/** What is left of the first excess over the air, at a place from the middle (0) to the surface (1). */
export function left_share(body: Body, biot: number, fourier: number, place: number): number {
  let sum = 0;
  for (let term = 0; term < MOST_TERMS; term++) {
    const zeta = root(body, biot, term);
    const shape = body === 'slab' ? Math.cos(zeta * place) : place === 0 ? 1 : Math.sin(zeta * place) / (zeta * place);
    sum += weight(body, zeta) * Math.exp(-zeta * zeta * fourier) * shape;
  }
  return sum;
}
