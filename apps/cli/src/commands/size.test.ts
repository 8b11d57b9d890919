import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../testing/garden.ts';

let home: Garden;
beforeEach(() => {
  home = garden();
});
afterEach(() => home.remove());

describe('size', () => {
  it('O02 of the question bank: a bin of 4 ft boards through winter', async () => {
    const { code, out } = await home.run(['size', '4x4x4ft', '--air', '5F', '--units', 'us']);
    expect(code).toBe(0);
    const text = flat(out);
    expect(text).toContain('only behind thick straw');
    expect(text).toContain('From spring to autumn it may do as it stands.');
    expect(text).toContain('frozen store');
    expect(text).toContain('Size alone heats no poor mix');
    expect(text).toContain('5 °F');
  });

  it('the three sizes that were read: 9 ft³ is asked about', async () => {
    const nine = flat((await home.run(['size', '9ft3'])).out);
    expect(nine).toContain('3 × 3 × 3 ft');
    expect(flat((await home.run(['size', '1yd3'])).out)).not.toContain('Is it really 9 cubic feet?');
    const { value } = await home.json(['size', '9ft3']);
    expect(value).toMatchObject({ decision: 'insulate-for-three-seasons' });
  });

  it('a bay by its name, once it was measured', async () => {
    await home.run(['log', 'bay', 'Left bay', '1.2x1.2x1.2m', '--units', 'metric']);
    const { value } = await home.json(['size', 'left bay', '--insulated']);
    expect(value).toMatchObject({ input: { size: { width_m: 1.2 }, insulated: true }, decision: 'winter' });
  });

  it.each([
    [['size', 'huge'], 'can’t be read'],
    [['size', '1.2x1.2'], 'can’t be read'],
    [['size', '0.001m3', '--air', 'cold'], 'air'],
    [['size', '0m3'], 'No heap measures “0m3”'],
    [['size', '1x1x1cm', '--units', 'metric'], 'sides from 0.1 m to 100 m, no more than 10 m high'],
    [['size', '100x100x9m'], 'No heap measures “100x100x9m”'],
    [['size', '1.2x1.2x1m', '--air', '-300C'], '--air is -300'],
    [['size', '1.2x1.2x1m', '--core', '500C'], '--core is 500'],
    [['size', '1e9buckets'], '“1e9buckets”'],
  ])('%j is asked again', async (args, words) => {
    const { code, err } = await home.run(args);
    expect(code).toBe(2);
    expect(flat(err)).toContain(words);
  });
});
