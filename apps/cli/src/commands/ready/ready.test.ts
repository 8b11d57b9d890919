import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../../testing/garden.ts';

let home: Garden;
beforeEach(() => {
  home = garden();
});
afterEach(() => home.remove());

describe('yield', () => {
  it('a heap of the daybook, with what it was built to', async () => {
    await home.run([
      'build',
      'straw=8barrows',
      'grass clippings=6barrows',
      '--name',
      'Spring heap',
      '--bay',
      '1.2x1.2x1.2m',
      '--water',
      '40L',
    ]);
    const { value } = await home.json(['yield', '--heap', 'spring heap']);
    expect(value).toMatchObject({ basis: 'rotting', measure: 'barrow' });
    const text = flat((await home.run(['yield', '--heap', 'spring heap', '--ready', '150L', '--units', 'metric'])).out);
    expect(text).toContain('of compost');
    expect(text).toContain('phosphorus stays');
  });

  it('nothing but a volume, and past heaps that sharpen it', async () => {
    const alone = await home.json(['yield', '--built', '1m3']);
    const with_ = await home.json(['yield', '--built', '1m3', '--past', '1m3=0.48m3', '1.2m3=0.6m3']);
    expect(alone.value).toMatchObject({ basis: 'volume', pastHeaps: 0 });
    expect(with_.value).toMatchObject({ pastHeaps: 2, notes: ['not-listed', 'own-heaps'] });
  });

  it.each([
    [['yield'], 'It is not said what'],
    [['yield', '--built', '1m3', '--ready', '2m3'], 'less than 1 m³'],
    [['yield', 'straw=2bales', '--ash', '3'], '--ash is 3'],
    [['yield', '--built', '0L'], '--built is 0'],
    [['yield', '--heap', 'no such'], 'There is no heap called'],
    [['yield', '--past', '1m3=2m3', '--built', '1m3'], '--past'],
    [['yield', 'straw=2bales', '--ready', '5m3'], '--ready is 5 m³'],
    [['yield', '--built', '1m3', '--rain', 'snow'], 'sheltered, open'],
  ])('%j is refused in words', async (args, said) => {
    const { code, err } = await home.run(args);
    expect(code).not.toBe(0);
    expect(flat(err)).toContain(said);
  });
});

describe('ripe', () => {
  it('who has measured nothing is told the test that costs nothing, and no promise', async () => {
    const text = flat((await home.run(['ripe'])).out);
    expect(text).toContain('Cannot be shown yet');
    expect(text).toContain('20 cress seeds');
    expect(text).toContain('does not mean free of germs');
  });

  it('what is found ripe of a heap of today is doubted, and that of an old one is not', async () => {
    const build = (name: string, when: string) =>
      home.run([
        'build',
        'straw=3barrows',
        'grass clippings=3barrows',
        '--bay',
        '1x1x1m',
        '--name',
        name,
        '--when',
        when,
      ]);
    await build('Heap of today', 'today');
    await build('Heap of spring', '3 months ago');
    const said = async (name: string) =>
      flat((await home.run(['ripe', '--heap', name, '--seedlings', '34/38/40', '--rise', '8C'])).out);
    expect(await said('Heap of today')).toMatch(/^What was measured would be ripe, but this heap was begun today/u);
    expect(await said('Heap of spring')).toMatch(/^Ripe, by what was measured/u);
  });

  it('seedlings counted side by side, a flask in °F and a C:N', async () => {
    const { value } = await home.json(['ripe', '--seedlings', '17/20', '--rise', '14F', '--ratio', '18']);
    expect(value).toMatchObject({ state: 'ripe', california: 'mature', flaskClass: 'V' });
  });

  it('breath told as CO₂ is the same as told as carbon', async () => {
    const carbon = await home.json(['ripe', '--breath', '4']);
    const gas = await home.json(['ripe', '--breath-co2', '14.656']);
    expect((carbon.value as { limits: unknown }).limits).toEqual((gas.value as { limits: unknown }).limits);
  });

  it('what is kept of a heap adds up over days, until stuff goes in again', async () => {
    const at = (day: number) => ({ at: `2026-07-${String(day).padStart(2, '0')}T12:00:00.000Z` });
    await home.run(
      ['build', 'goat bedding=8barrows', 'straw=2barrows', '--bay', '1.2x1.2x1.2m', '--name', 'Old heap'],
      at(1),
    );
    const kept = await home.run(
      ['ripe', '--heap', 'old heap', '--keep', '--seedlings', '17/20', '--units', 'metric'],
      at(3),
    );
    expect(flat(kept.out)).toContain('Old heap tried for ripeness: seedlings 85 % of those beside it.');
    await home.run(['ripe', '--heap', 'Old heap', '--keep', '--rise', '8C', '--smell', 'earthy'], at(9));
    const state = async (day: number): Promise<unknown> =>
      ((await home.json(['ripe', '--heap', 'Old heap'], at(day))).value as { state: unknown }).state;
    expect(await state(10)).toBe('ripe');
    const sour = await home.json(['ripe', '--heap', 'Old heap', '--smell', 'sour'], at(10));
    expect(sour.value).toMatchObject({ state: 'unripe', input: { measured: { selfHeating_K: 8 } } });
    await home.run(['feed', 'Old heap', 'scraps=1pail'], at(11));
    expect(await state(12)).toBe('not-shown');
  });

  it.each([
    [['ripe', '--keep', '--smell', 'earthy'], '--heap is missing'],
    [['ripe', '--heap', 'no such', '--smell', 'earthy'], 'There is no heap called'],
    [['ripe', '--seedlings', '5/0'], 'at least 10'],
    [['ripe', '--seedlings', '30/20'], '30 came up, and 20 were sown in each pot'],
    [['ripe', '--seedlings', '12/41/40'], '41 came up, and 40 were sown in each pot'],
    [['ripe', '--rise', '80C'], '--rise is 80'],
    [['ripe', '--nitrate', '5'], '--ammonium is missing'],
    [['ripe', '--ammonium', '1e9'], 'no number'],
    [['ripe', '--seedlings', '1/1'], 'at least 10'],
    [['ripe', '--smell', 'sweet'], 'earthy, none, ammonia, sour'],
  ])('%j is refused in words', async (args, said) => {
    const { code, err } = await home.run(args);
    expect(code).not.toBe(0);
    expect(flat(err)).toContain(said);
  });
});
