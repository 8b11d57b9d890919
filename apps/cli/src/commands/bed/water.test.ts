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
    expect(flat((await home.run(args)).out)).toContain('hold about 210 L/m² of water for plants');
    expect((await home.json(args)).value).toMatchObject({ class: 'moderate', depth_m: 1.5 });
  });

  it('takes textures, and the organic matter of the top layer', async () => {
    const water = async (om: string): Promise<number> => {
      const { value } = await home.json(['bed', 'water', 'loam=30cm', 'clay-loam=70cm', '--om', om]);
      return (value as { available_mm: { p50: number } }).available_mm.p50;
    };
    expect(await water('5')).toBeGreaterThan(await water('1'));
  });

  it('names the layer whose organic matter was taken: less beneath the top', async () => {
    const args = ['bed', 'water', 'loam=30cm', 'clay-loam=70cm', '--units', 'metric'];
    const told = flat((await home.run([...args, '--om', '4'])).out);
    expect(told).toContain('Organic matter at 30 cm to 100 cm was not told: 1 % is taken.');
    expect(told).not.toContain('--om');
    const untold = flat((await home.run(args)).out);
    expect(untold).toContain('Organic matter at 0 cm to 30 cm was not told: 3.5 % is taken.');
    expect(untold).toContain('--om');
  });

  it('is told in the units of whoever reads', async () => {
    // 205 mm are 8.07 in, and an inch is 62.3 gallons on 100 ft² (NIST SP 811, B.8).
    const { out } = await home.run(['bed', 'water', '5%=30cm', '15%=100cm', '20%=20cm', '--units', 'us']);
    expect(flat(out)).toContain('hold about 500 gal/100 ft² of water for plants');
    expect(out).not.toContain('metre');
  });

  it.each([
    [[], 'loam=30cm'],
    [['mud=3cm'], 'sandy-loam'],
    [['loam=thick'], 'can’t be read'],
    [['loam'], 'can’t be read'],
    [['90%=30cm'], '90%=30cm is 90; it wants 0 to 60.'],
    [['loam=30cm', 'clay=30cm', '--stones', '101'], '--stones is 101, which is too much'],
    [['loam=30cm', '--om', '30'], '--om is 30; it wants 0 to 25.'],
    [['loam=30m'], 'loam=30m is 30, which is too much; it wants ≤ 10'],
  ])('%j is asked again', async (layers, words) => {
    const { code, err } = await home.run(['bed', 'water', ...layers]);
    expect(code).toBe(2);
    expect(flat(err)).toContain(words);
    expect(err).not.toContain('error:');
    expect(err.match(/--stones/gu)?.length ?? 1).toBe(1);
  });
});
