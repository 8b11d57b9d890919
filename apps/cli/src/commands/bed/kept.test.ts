import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../../testing/garden.ts';

let home: Garden;
beforeEach(() => {
  home = garden();
});
afterEach(() => home.remove());

const told = async (args: readonly string[]): Promise<string> => flat((await home.run([...args])).out);

describe('a bed from setting up to harvest', () => {
  it('is set up, sown, put on, tested and harvested, and tells so', async () => {
    expect(await told(['bed', 'show'])).toContain('No bed is written down yet');
    await home.run(['bed', 'set', 'Kale', '12m2', '--depth', '20cm']);
    await home.run(['bed', 'sow', 'kale', 'kale']);
    await home.run(['bed', 'put', 'kale', 'goat bedding=2barrows', '--mulch']);
    await home.run(['bed', 'test', 'p=100ppm', '--method', 'bray-1', '--ph', '6.4', '--keep', 'kale']);
    const page = await told(['bed', 'show', 'kale', '--units', 'metric']);
    expect(page).toContain('12 m²: kale.');
    expect(page).toContain('of nitrogen this season');
    expect(page).toContain('Soil of Kale tested');
    expect(page).toContain('goat bedding');
    await home.run(['bed', 'harvest', 'kale', 'kale', '--mass', '4kg', '--last']);
    const { value } = await home.json(['bed', 'show', 'kale']);
    expect((value as { done: readonly unknown[] }).done).toHaveLength(4);
    // The test makes the soil's class known to the budget: far too much phosphorus bears no compost.
    expect(await told(['spread', 'compost', '--bed', 'kale'])).toContain('far too much phosphorus');
  });

  it('is told by its sides, and keeps them as they were typed', async () => {
    await home.run(['bed', 'set', 'Kale', '4x8ft', '--depth', '20cm']);
    await home.run(['bed', 'set', 'Kale', '--depth', '25cm']);
    expect(await told(['bed', 'show', 'kale', '--units', 'us'])).toContain('32 ft²');
    await home.run(['bed', 'sow', 'kale', 'kale', '--area', '1.2x1m']);
    const taken = (await home.run(['take'])).out;
    expect(taken).toContain('"entered":{"/area_m2":{"words":"4x8ft"},"/depth_m":{"amount":25,"unit":"cm"}}');
    expect(taken).toContain('"entered":{"/area_m2":{"words":"1.2x1m"}}');
  });

  it('keeps phosphorus and potassium each by the method it was drawn out with', async () => {
    await home.run(['bed', 'set', 'Kale', '12m2']);
    const typed = ['bed', 'test', 'p=20ppm@olsen', 'k=300ppm', '--method', 'ammonium acetate'];
    const { value } = await home.json(typed);
    expect((value as { input: { figures: readonly object[] } }).input.figures).toMatchObject([
      { element: 'phosphorus', method: 'olsen' },
      { element: 'potassium', method: 'ammonium-acetate' },
    ]);
    // Each is judged by tables of its own method, and neither asks for one.
    expect((value as { figures: readonly { ask: readonly string[] }[] }).figures.map(({ ask }) => ask)).toEqual([
      [],
      [],
    ]);
    expect(await told(typed)).toContain('phosphorus, 20ppm: ');
    await home.run([...typed, '--keep', 'kale']);
    const taken = (await home.run(['take'])).out;
    expect(taken).toContain('"method":"olsen"');
    expect(taken).toContain('"method":"ammonium-acetate"');
  });

  it('is altered by its name, and keeps what was not said', async () => {
    await home.run(['bed', 'set', 'Kale', '12m2', '--depth', '20cm']);
    await home.run(['bed', 'set', 'kale', '10m2']);
    const { value } = await home.json(['bed', 'show']);
    expect((value as { beds: readonly unknown[] }).beds).toHaveLength(1);
    expect(await told(['bed', 'show', '--units', 'metric'])).toContain('10 m²');
  });

  it.each([
    [['bed', 'set', 'Kale'], 'area is missing'],
    [['bed', 'set', ' ', '3m2'], 'It is not said what'],
    [['bed', 'set', 'Kale', '0m2'], 'can’t be read'],
    [['bed', 'set', 'Kale', '4x8x2ft'], 'can’t be read'],
    [['bed', 'set', 'Kale', '0.0001m2'], 'has 0.0001 m²: what would do is 0.01 to 100000 m²'],
    [['bed', 'set', 'Kale', '4000x2500m'], 'has 10000000 m²'],
    [['bed', 'set', 'Kale', '12m2', '--depth', '40m'], 'is worked 40 m deep: what would do is 0.02 to 2 m'],
    [['bed', 'budget', 'kale=0.0001m2'], 'has 0.0001 m²'],
    [['bed', 'sow', 'nowhere', 'kale'], 'There is no bed called'],
    [['bed', 'test'], 'It is not said what'],
    [['bed', 'test', 'p=84ppm@guess'], 'must be one of: mehlich-3, bray-1'],
    [['bed', 'show', 'nowhere'], 'There is no bed called'],
  ])('%j is refused in words', async (args, said) => {
    const { code, err } = await home.run(args);
    expect(code).not.toBe(0);
    expect(flat(err)).toContain(said);
  });

  it('keeps a crop of two words, known or not, as it is called', async () => {
    await home.run(['bed', 'set', 'Kale', '12m2']);
    await home.run(['bed', 'sow', 'kale', 'Bush Beans']);
    await home.run(['bed', 'sow', 'kale', 'Aunt May’s greens']);
    const page = await told(['bed', 'show', 'kale']);
    expect(page).toContain('bush beans sown');
    expect(page).toContain('Aunt May’s greens');
  });

  it('shares a bed among two crops that stand together, in every answer of it', async () => {
    await home.run(['bed', 'set', 'Kale', '12m2']);
    await home.run(['bed', 'sow', 'kale', 'kale']);
    await home.run(['bed', 'sow', 'kale', 'leeks']);
    const parts = '6 m² for kale and 6 m² for leeks';
    for (const args of [
      ['bed', 'show', 'kale'],
      ['bed', 'budget', '--bed', 'kale'],
      ['spread', 'compost', '--bed', 'kale'],
    ])
      expect(await told([...args, '--units', 'metric'])).toContain(parts);
    await home.run(['bed', 'put', 'kale', 'hen manure=10kg']);
    expect(await told(['bed', 'balance', '--units', 'metric'])).toContain(`Kale: How much of the bed`);
    const { value } = await home.json(['bed', 'balance']);
    expect(
      (value as { input: { crops: readonly { area_m2: number }[] } }).input.crops.map((one) => one.area_m2),
    ).toEqual([6, 6]);
    await home.run(['bed', 'sow', 'kale', 'squash', '--area', '30m2']);
    expect(await told(['bed', 'show', 'kale', '--units', 'metric'])).toContain('fill 30 m², and the bed has 12 m²');
  });

  it('tells that what is written down can’t be, and not that nothing is sown', async () => {
    await home.run(['bed', 'set', 'Kale', '1m2']);
    await home.run(['bed', 'sow', 'kale', 'kale']);
    await home.run(['bed', 'put', 'kale', 'compost=100000barrows']);
    expect(await told(['bed', 'show', 'kale'])).toContain('can’t be: look for a slip');
  });

  it('refuses a harvest that weighs nothing and a pH that no soil has', async () => {
    await home.run(['bed', 'set', 'Kale', '12m2']);
    expect(flat((await home.run(['bed', 'harvest', 'kale', 'kale', '--mass', '-3kg'])).err)).toContain('--mass');
    expect(flat((await home.run(['bed', 'test', '--keep', 'kale', '--ph', '15'])).err)).toContain('--ph is 15');
    expect(flat((await home.run(['bed', 'test', '--keep', 'kale'])).err)).toContain('It is not said what');
  });
});

describe('a heap of the daybook shared among beds', () => {
  beforeEach(async () => {
    await home.run(['bed', 'set', 'Kale', '12m2']);
    await home.run(['bed', 'set', 'Leeks', '4m2']);
    await home.run(['build', 'straw=8barrows', 'grass clippings=6barrows', '--name', 'Spring heap', '--bay', '1x1x1m']);
  });

  it('in whole barrows by area, and written down so that nothing is left of it', async () => {
    const asked = ['spread', '--heap', 'spring heap', '--share', '4'];
    expect(await told(asked)).toContain('3 barrows on Kale');
    await home.run([...asked, '--keep', '--mulch']);
    expect(await told(['bed', 'show', 'kale'])).toContain('3 barrows of Spring heap spread on Kale.');
    expect(await told(['bed', 'show', 'leeks'])).toContain('1 barrow of Spring heap spread on Leeks.');
  });

  it('in part leaves the rest in the heap, and a heap that is gone is refused', async () => {
    await home.run(['spread', '--heap', 'spring heap', '--there', '4', '--share', '1', '--over', 'kale', '--keep']);
    expect(await told(['bed', 'show', 'kale'])).toContain('1 barrow of Spring heap spread on Kale.');
    // One of four is gone: three are there, whatever the heap was reckoned to come to.
    const rest = 'What is left of it comes to about 3 barrows';
    expect(await told(['heap', 'spring heap'])).toContain(rest);
    expect(await told(['spread', '--heap', 'spring heap', '--over', 'kale'])).toContain(rest);
    const { value } = await home.json(['spread', '--heap', 'spring heap', '--over', 'kale']);
    expect(value).toMatchObject({ measures: 3, shares: [{ count: 3 }] });
    await home.run(['spread', '--heap', 'spring heap', '--over', 'kale', '--keep']);
    const { code, err } = await home.run(['spread', '--heap', 'spring heap', '--there', '3', '--keep']);
    expect(code).not.toBe(0);
    expect(flat(err)).toContain('Nothing is left of “Spring heap”');
  });

  it('is counted as it is reckoned to yield where nobody counted it', async () => {
    const { value } = await home.json(['spread', '--heap', 'spring heap']);
    expect((value as { measures: number }).measures).toBeGreaterThan(0);
  });

  it.each([
    [['--share', '0'], '--share'],
    [['--share', '2.5'], '--share'],
    [['--over', 'nowhere'], 'There is no bed called'],
    [['--by-need'], 'wants'],
  ])('%j is refused in words', async (more, said) => {
    const { code, err } = await home.run(['spread', '--heap', 'spring heap', ...more]);
    expect(code).not.toBe(0);
    expect(flat(err)).toContain(said);
  });
});
