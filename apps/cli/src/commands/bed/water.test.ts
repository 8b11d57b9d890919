import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../../testing/garden.ts';

let home: Garden;
beforeEach(() => {
  home = garden();
});
afterEach(() => home.remove());

describe('bed water', () => {
  it('lecture slides, Relating Texture to Hydraulics: three layers hold 205 mm, a middling amount', async () => {
    const args = ['bed', 'water', '5%=30cm', '15%=100cm', '20%=20cm', '--units', 'metric'];
    expect(flat((await home.run(args)).out)).toContain('hold about 210 L of water for plants on each square metre');
    expect((await home.json(args)).value).toMatchObject({ class: 'moderate', depth_m: 1.5 });
  });

  it('takes textures, and the organic matter of the top layer', async () => {
    const water = async (om: string): Promise<number> => {
      const { value } = await home.json(['bed', 'water', 'loam=30cm', 'clay-loam=70cm', '--om', om]);
      return (value as { available_mm: { p50: number } }).available_mm.p50;
    };
    expect(await water('5')).toBeGreaterThan(await water('1'));
  });

  it.each([
    [['mud=3cm'], 'sandy-loam'],
    [['loam=thick'], 'can’t be read'],
    [['loam'], 'can’t be read'],
    [['90%=30cm'], '60'],
  ])('%j is asked again', async (layers, words) => {
    const { code, err } = await home.run(['bed', 'water', ...layers]);
    expect(code).toBe(2);
    expect(flat(err)).toContain(words);
  });
});
