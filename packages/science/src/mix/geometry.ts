/** Height of a volume between straight walls, m. */
export function heightInBay_m(volume_m3: number, bay: { readonly width_m: number; readonly depth_m: number }): number {
  return volume_m3 / (bay.width_m * bay.depth_m);
}

/**
 * Volume of a long half-round heap twice as wide as high, m³.
 * Source: Strom and Finstein 1994, Manual on Composting Leaves, New Jersey DEP, Appendix A: A = πh²/2.
 */
export function halfRoundVolume_m3(heap: { readonly height_m: number; readonly length_m: number }): number {
  return ((Math.PI * heap.height_m ** 2) / 2) * heap.length_m;
}

/** Height of a long half-round heap of a volume and a length, m. */
export function halfRoundHeight_m(volume_m3: number, length_m: number): number {
  return Math.sqrt((2 * volume_m3) / (Math.PI * length_m));
}

/** Volume of a cone, m³. */
export function coneVolume_m3(heap: { readonly height_m: number; readonly radius_m: number }): number {
  return (Math.PI * heap.radius_m ** 2 * heap.height_m) / 3;
}
