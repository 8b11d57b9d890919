import { fold } from '@loamwright/daybook';
import { testWriter } from '@loamwright/daybook/testing';
import { describe, expect, it } from 'vitest';
import { stuffed } from './own-stuff.ts';

const writer = testWriter();
writer.write('material-described', 'our-litter', { name: 'Litter of the goats', like: 'goat-bedding' });
writer.write('material-measured', 'straw', { moisture_pctWet: 30 });
writer.write('material-measured', 'straw', { density_kgPerM3AsIs: 60 });
const holding = fold(writer.entries);

describe('a material as the science takes it', () => {
  it('has what was last measured of each figure, and what an own one is like', () => {
    expect(stuffed('straw', [], holding)).toEqual({
      material: 'straw',
      measured: { moisture_pctWet: 30, densityLoose_kgPerM3AsIs: 60 },
    });
    expect(stuffed('our-litter', ['seeding-weeds'], holding)).toEqual({
      material: 'our-litter',
      like: 'goat-bedding',
      doubtful: ['seeding-weeds'],
    });
  });
});
