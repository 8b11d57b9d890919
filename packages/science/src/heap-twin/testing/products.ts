import { root, weight } from './series.ts';

/**
 * Cooling of boxes and cylinders with a film on all of their surface, as products of the slab's and the long cylinder's
 * series. Source: Carslaw and Jaeger 1959, Conduction of heat in solids, sections 1.15, 6.2 and 8.4; the forms recalled.
 */

/** Bessel's functions of the first kind of orders 0 and 1, by their power series; for arguments up to 40. */
export function bessel(order: 0 | 1, x: number): number {
  let term = order === 0 ? 1 : x / 2;
  let sum = term;
  for (let k = 1; k < 200; k++) {
    term *= -(x * x) / 4 / (k * (k + order));
    sum += term;
    if (Math.abs(term) < 1e-17) break;
  }
  return sum;
}

/** Roots of ζ J₁(ζ) = Bi J₀(ζ), one between the zeros of J₁ and J₀. */
export function cylinderRoot(biot: number, term: number): number {
  const miss = (zeta: number): number => zeta * bessel(1, zeta) - biot * bessel(0, zeta);
  const step = 0.05;
  let low = 1e-9;
  for (let found = -1; ; low += step) {
    if (miss(low) < 0 === miss(low + step) < 0) continue;
    found++;
    if (found === term) break;
  }
  let high = low + step;
  const sign = Math.sign(miss(high));
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2;
    if (Math.sign(miss(middle)) === sign) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** The weight of a term of the cylinder. */
export function cylinderWeight(zeta: number): number {
  const j0 = bessel(0, zeta);
  const j1 = bessel(1, zeta);
  return ((2 / zeta) * j1) / (j0 * j0 + j1 * j1);
}

const TERMS = 8;

/** What is left at the middle of a slab, and at the axis of a long cylinder, of the first excess. */
export function slabLeft(biot: number, fourier: number): number {
  return series(fourier, (term) => {
    const zeta = root('slab', biot, term);
    return [zeta, weight('slab', zeta)];
  });
}

export function cylinderLeft(biot: number, fourier: number): number {
  return series(fourier, (term) => {
    const zeta = cylinderRoot(biot, term);
    return [zeta, cylinderWeight(zeta)];
  });
}

function series(fourier: number, of: (term: number) => readonly [number, number]): number {
  let sum = 0;
  for (let term = 0; term < TERMS; term++) {
    const [zeta, first] = of(term);
    sum += first * Math.exp(-zeta * zeta * fourier);
  }
  return sum;
}
