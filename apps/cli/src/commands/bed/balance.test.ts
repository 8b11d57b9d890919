import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../../testing/garden.ts';

let home: Garden;
beforeEach(() => {
  home = garden();
});
afterEach(() => home.remove());

describe('bed balance', () => {
  const heaped = ['goat bedding=12barrows', 'grass clippings=8barrows', 'hedge chippings=6barrows'];

  it('tells the leak, what stops it, and the compost that is not accounted for', async () => {
    const text = flat(
      (
        await home.run([
          'bed',
          'balance',
          ...heaped,
          '--spread',
          '1barrow',
          '--crops',
          'kale=12m2',
          '--units',
          'metric',
        ])
      ).out,
    );
    expect(text).toContain('of nitrogen about');
    expect(text).toContain('Cheapest:');
    expect(text).toContain('should be there still');
    const much = flat((await home.run(['bed', 'balance', ...heaped, '--spread', '30barrows'])).out);
    expect(much).toContain('something is not written down');
  });

  it.each([
    [['bed', 'balance'], 'It is not said what'],
    [['bed', 'balance', 'straw=2bales', '--crops', 'plutonium=3m2'], 'plutonium'],
    [['bed', 'balance', 'straw=2bales', '--rain', 'snow'], 'sheltered, open'],
    [['bed', 'balance', 'straw=2bales', '--spread', 'lots and lots'], 'lots and lots'],
  ])('%j is refused in words', async (args, said) => {
    const { code, err } = await home.run(args);
    expect(code).not.toBe(0);
    expect(flat(err)).toContain(said);
  });
});
