import { createSpeaker } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import { groundOf } from './bed-ground.ts';

const speaker = createSpeaker({ locale: 'en', system: 'metric' });
const told = (crops: Parameters<typeof groundOf>[0], bed_m2 = 12) => {
  const { areas_m2, said } = groundOf(crops, bed_m2);
  return { areas_m2, said: said.map((one) => speaker.tell(one)).join(' ') };
};

describe('the ground of a bed', () => {
  it('is that of the one crop that stands there', () => {
    expect(told([{ name: 'kale', from: '2026-04-01' }])).toEqual({ areas_m2: [12], said: '' });
  });

  it('is shared evenly by crops that stand together and name no part, and that is said', () => {
    const { areas_m2, said } = told([
      { name: 'kale', from: '2026-04-01' },
      { name: 'leeks', from: '2026-06-01' },
    ]);
    expect(areas_m2).toEqual([6, 6]);
    expect(said).toContain('6 m² for kale and 6 m² for leeks');
  });

  it('is shared after those that name their part', () => {
    const { areas_m2, said } = told([
      { name: 'kale', from: '2026-04-01', area_m2: 4 },
      { name: 'leeks', from: '2026-04-01' },
      { name: 'squash', from: '2026-04-01' },
    ]);
    expect(areas_m2).toEqual([4, 4, 4]);
    expect(said).not.toContain('for kale');
  });

  it('is all of it for each of two crops that follow one another, also on the day of the harvest', () => {
    const crops = [
      { name: 'broad beans', from: '2026-03-01', until: '2026-07-10' },
      { name: 'leeks', from: '2026-07-10' },
    ];
    expect(told(crops)).toEqual({ areas_m2: [12, 12], said: '' });
  });

  it('goes by the day on which a crop stands closest with others, and never adds up to more than there is', () => {
    const { areas_m2 } = told([
      { name: 'lettuce', from: '2026-03-01', until: '2026-06-01' },
      { name: 'kale', from: '2026-04-01' },
      { name: 'leeks', from: '2026-07-01' },
    ]);
    expect(areas_m2).toEqual([6, 6, 6]);
  });

  it('that is filled twice over is told, and leaves a crop without a part out', () => {
    const { areas_m2, said } = told([
      { name: 'kale', from: '2026-04-01', area_m2: 12 },
      { name: 'squash', from: '2026-04-01', area_m2: 8 },
      { name: 'leeks', from: '2026-05-01' },
    ]);
    expect(areas_m2).toEqual([12, 8, undefined]);
    expect(said).toContain('fill 20 m², and the bed has 12 m²');
    expect(said).toContain('No ground is left for leeks');
  });

  it('of a guessed size keeps its range', () => {
    const crops = ['kale', 'leeks'].map((name) => ({ name, from: '2026-04-01' }));
    expect(groundOf(crops, { p10: 8, p50: 10, p90: 14 }).areas_m2[1]).toEqual({ p10: 4, p50: 5, p90: 7 });
  });
});
