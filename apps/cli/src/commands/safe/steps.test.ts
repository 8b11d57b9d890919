import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../../testing/garden.ts';

let home: Garden;
beforeEach(() => {
  home = garden();
});
afterEach(() => home.remove());

const log = ['safe', 'log', '60C', '61C', '60C', '--units', 'metric'];

describe('safe log --steps', () => {
  // Chance as in Haug 1993 (recalled), geometry of a half cylinder and a half ball: turnings to leave one part in a thousand.
  it('tells how many turnings so many tenfold steps take, more in a small heap than in a wide one', async () => {
    expect(flat((await home.run([...log, '--wide', '1m', '--steps', '3'])).out)).toMatch(
      /For 3 tenfold steps less it would take \d+ to \d+ turnings/u,
    );
    const turns = async (wide: string, steps: string): Promise<number> => {
      const { value } = await home.json([...log, '--wide', wide, '--steps', steps]);
      return (value as { coldSkin: { long: { turnsWanted: { p50: number } } } }).coldSkin.long.turnsWanted.p50;
    };
    expect(await turns('1m', '3')).toBeGreaterThan(await turns('2.5m', '3'));
    expect(await turns('1m', '3')).toBeGreaterThan(await turns('1m', '1'));
  });

  it.each([
    [['--steps', '3'], '--wide'],
    [['--wide', '1m', '--steps', '99'], '--steps'],
    [['--wide', '1m', '--steps', 'many'], '--steps'],
  ])('%j is asked again', async (options, words) => {
    const { code, err } = await home.run([...log, ...options]);
    expect(code).toBe(2);
    expect(flat(err)).toContain(words);
  });
});
