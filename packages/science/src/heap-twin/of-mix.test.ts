import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { weighMix } from '../mix/mix-input.ts';
import { stuffOfMix } from './of-mix.ts';

/** Share of the volatile matter of a material that rots fast, the middle of its draws. */
function fast_share(material: string): number {
  const mix = weighMix({ ingredients: [{ material, amount: { mass_kg: 10 } }] }, createDraws());
  if (!mix.ok) throw new RangeError(JSON.stringify(mix.problems));
  const shares = stuffOfMix(mix.value, { temp_degC: 15 })
    .map(
      ({ fast_kg, hemicellulose_kg, cellulose_kg, lignin_kg, inert_kg }) =>
        fast_kg / (fast_kg + hemicellulose_kg + cellulose_kg + lignin_kg + inert_kg),
    )
    .sort((some, other) => some - other);
  return shares[Math.floor(shares.length / 2)] ?? Number.NaN;
}

/** What is no cell wall, of the organic matter: both of 100 parts dry. */
const contents_share = (fibre_pctDry: number, ash_pctDry: number): number =>
  (100 - fibre_pctDry - ash_pctDry) / (100 - ash_pctDry);

describe('what rots fast', () => {
  // Neutral detergent fibre and ash as printed, read: ryegrass 42.8 and 12.6 (Sivanandarajah et al. 2025, table 2);
  // timothy hay 64.9 and 7.2 (PMC6817784, table 2), hay 60.4 and 6.05 (PMC8697880, table 2); cattle faeces 70.9 and 5.4
  // (Lucas et al. 1975). Ours is the middle of a range of six to sixteen tenths: a quarter off is near.
  it.each([
    ['grass-clippings', contents_share(42.8, 12.6)],
    ['hay-grass', (contents_share(64.9, 7.2) + contents_share(60.4, 6.05)) / 2],
    ['cattle-manure', contents_share(70.9, 5.4)],
  ])('of %s is near what is printed as no cell wall', (material, printed_share) => {
    expect(Math.abs(fast_share(material) / printed_share - 1)).toBeLessThan(0.25);
  });

  // Carmona-Cabello et al. 2020 (abstract, read): fat 25.7 to 33.2, starch 16.2 to 29.4, protein 18.3 to 23.5 % of the dry
  // matter of restaurant scraps; the rest is sugar, fibre and ash.
  it('of kitchen scraps lies between the least and the most of their fat, starch and protein', () => {
    expect(fast_share('kitchen-scraps')).toBeGreaterThan((25.7 + 16.2 + 18.3) / 100);
    expect(fast_share('kitchen-scraps')).toBeLessThan((33.2 + 29.4 + 23.5) / 100);
  });
});
