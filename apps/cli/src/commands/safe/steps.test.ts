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
      /So that no more than one part in 1,000 was never at heat it would take \d+ to \d+ turnings/u,
    );
    const turns = async (wide: string, steps: string): Promise<number> => {
      const { value } = await home.json([...log, '--wide', wide, '--steps', steps]);
      return (value as { coldSkin: { long: { turnsWanted: { p50: number } } } }).coldSkin.long.turnsWanted.p50;
    };
    expect(await turns('1m', '3')).toBeGreaterThan(await turns('2.5m', '3'));
    expect(await turns('1m', '3')).toBeGreaterThan(await turns('1m', '1'));
  });

  it('says that a wide heap wants no turning for a single step', async () => {
    expect(flat((await home.run([...log, '--wide', '12m', '--steps', '1'])).out)).toContain(
      'So that no more than one part in 10 was never at heat it wants no turning.',
    );
  });

  it('counts on chance only where something was turned', async () => {
    const still = flat((await home.run([...log, '--wide', '1m'])).out);
    expect(still).toContain('Nothing turned it, so about');
    expect(still).not.toContain('by chance');
    const turned = flat((await home.run([...log, '--wide', '1m', '--turned', '2'])).out);
    expect(turned).toMatch(
      /After 1 turning about \d+ to \d+ % of it may never have been at heat, if it mixed by chance/u,
    );
  });

  it.each([
    [['--steps', '3'], '--wide'],
    [['--wide', '1m', '--steps', '99'], '--steps'],
    [['--wide', '1m', '--steps', 'many'], '--steps is many; it wants 1, 2, 3 … 7.'],
    [['--wide', '1m', '--steps', '-1'], '1; it wants 1, 2, 3 … 7.'],
    [['--wide', '1m', '--steps', '0'], '--steps is 0; it wants 1, 2, 3 … 7.'],
    [['--wide', '1m', '--steps', '2.5'], '--steps is 2.5; it wants 1, 2, 3 … 7.'],
    [['--wide', '1m', '--steps', '8'], '--steps is 8; it wants 1, 2, 3 … 7.'],
  ])('%j is asked again', async (options, words) => {
    const { code, err } = await home.run([...log, ...options]);
    expect(code).toBe(2);
    expect(flat(err)).toContain(words);
  });
});
