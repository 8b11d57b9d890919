import { allMaterials } from '@loamwright/science';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { texturesFor } from './texture.ts';

describe('the textures of a picture', () => {
  it('never draws two materials alike, even where no colour can be seen', () => {
    const drawn = allMaterials.map(({ id, particle, class: kind }) => ({ id, particle, class: kind }));
    fc.assert(
      fc.property(fc.uniqueArray(fc.constantFrom(...drawn), { selector: ({ id }) => id, maxLength: 24 }), (some) => {
        const looks = [...texturesFor(some).values()].map(({ pattern, variant }) => `${pattern} ${variant}`);
        expect(new Set(looks).size).toBe(some.length);
      }),
    );
  });

  it('draws a material that lies in several layers the same in each', () => {
    const straw = { id: 'straw', particle: 'stringy', class: 'carbon-rich' };
    expect(texturesFor([straw, straw]).size).toBe(1);
  });
});
