import type { BuildUp, BuildUpInput, SoilCarbon, SoilCarbonInput } from '@loamwright/science';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../../testing/garden.ts';

let home: Garden;
beforeAll(() => {
  home = garden();
});
afterAll(() => home.remove());

describe('bed years', () => {
  it('says where organic matter, water, phosphorus and potassium go', async () => {
    const { code, out } = await home.run([
      ...['bed', 'years', 'kale=10m2', '--put', 'compost=2barrows', '--depth', '20cm', '--texture', 'loam'],
      ...['--air', '9C', '--soil', 'om=3', 'p=high'],
    ]);
    expect(code).toBe(0);
    const text = flat(out);
    expect(text).toMatch(
      /^In 20 years organic matter goes from about 3\.0 % to about \d+\.\d %: it rises in \d+ of 256/u,
    );
    expect(text).toContain('a survey of measurements would say');
    expect(flat((await home.run(['bed', 'years', '--put', 'straw=1kg', '--units', 'us'])).out)).not.toMatch(
      /litre|metre|m²|4 to 17/u,
    );
    expect(text).toMatch(/Phosphorus \(P₂O₅\): about .+ builds up/u);
    expect(text).toContain('The test is high: bring on less or none');
    expect(text).toContain('no compost: compost is taken between manure and peat');
    expect(text).not.toContain('was not tested');
  });

  it('works from nothing but a plan, and says how little that is', async () => {
    const { value } = await home.json(['bed', 'years', '--put', 'straw=10kg', '--years', '5']);
    const { carbon, buildUp } = value as { carbon: SoilCarbon; buildUp: BuildUp };
    expect(carbon.notes).toEqual(['not-tested', 'texture-guessed', 'climate-guessed']);
    expect(carbon.years).toHaveLength(6);
    expect(buildUp.years).toBe(5);
    expect(buildUp.phosphate.overYears_harvests).toBeUndefined();
  });

  it.each([
    [['--depth', '9m'], 'too-big', '--depth'],
    [['--texture', 'mud'], 'not-one-of', '--texture'],
    [['--put', 'compost=9000barrows'], 'bed-absurd-rate', '--put'],
    [['--years', '2.5'], 'wrong-type', '--years'],
    [['--area', '0m2'], 'measurement-unreadable', '--area'],
  ])('refuses %j', async (args, code, path) => {
    const { problems } = (await home.json(['bed', 'years', ...args])) as unknown as {
      problems: readonly { code: string; path: string }[];
    };
    expect(problems[0]).toMatchObject({ code, path });
  });
});

describe('bed years of a bed of the daybook', () => {
  let kept: Garden;
  beforeAll(async () => {
    kept = garden();
    await kept.run(['bed', 'set', 'Kale', '12m2', '--depth', '20cm', '--texture', 'sandy loam']);
    await kept.run(['bed', 'sow', 'kale', 'kale']);
    await kept.run(['bed', 'put', 'kale', 'goat bedding=2barrows', 'straw=10kg']);
    await kept.run(['bed', 'test', 'p=100ppm', '--method', 'bray-1', '--om', '3.4', '--keep', 'kale']);
  });
  afterAll(() => kept.remove());

  interface Told {
    readonly input: { readonly carbon: SoilCarbonInput; readonly up: BuildUpInput };
    readonly from: Readonly<Record<string, string>>;
  }
  const told = async (args: readonly string[]): Promise<Told> =>
    (await kept.json(['bed', 'years', ...args])).value as unknown as Told;

  it.each([[['Kale']], [['--bed', 'kale']]])('%j takes all of it from there, and says so', async (args) => {
    const { input, from } = await told(args);
    expect(input.carbon).toMatchObject({ area_m2: 12, depth_m: 0.2, texture: 'sandy-loam', organicMatter_pctDry: 3.4 });
    expect(input.up).toMatchObject({ crops: [{ crop: 'kale', area_m2: 12 }], phosphorusClass: 'excessive' });
    expect(input.up.plan.map(({ material }) => material)).toEqual(['goat-bedding', 'straw']);
    expect(new Set(Object.values(from))).toEqual(new Set(['daybook']));
    expect(Object.keys(from)).toHaveLength(7);
    const text = flat((await kept.run(['bed', 'years', ...args, '--units', 'metric'])).out);
    expect(text).toMatch(
      /From the daybook: its area, 12 m², its depth, 20 cm, its soil, sandy loam, organic matter, 3\.4 %/u,
    );
    expect(text).toContain('phosphorus (far too high)');
    expect(text).toContain('harvests of kale');
    expect(text).not.toContain('As you said');
    expect(text).not.toContain('Nobody said what soil');
  });

  it('lets what is typed outrank it, and says which is which', async () => {
    const args = ['Kale', 'leeks=4m2', '--put', 'compost=1barrow', '--depth', '30cm', '--soil', 'om=5'];
    const { input, from } = await told(args);
    expect(input.carbon).toMatchObject({ area_m2: 12, depth_m: 0.3, texture: 'sandy-loam', organicMatter_pctDry: 5 });
    expect(input.up.plan.map(({ material }) => material)).toEqual(['finished-compost']);
    expect(input.up.crops.map(({ crop }) => crop)).toEqual(['leek']);
    expect(from).toEqual({
      ...{ area: 'daybook', texture: 'daybook', phosphorus: 'daybook' },
      ...{ depth: 'typed', organicMatter: 'typed', put: 'typed', crops: 'typed' },
    });
    const text = flat((await kept.run(['bed', 'years', ...args])).out);
    expect(text).toMatch(/As you said: its depth, .+ of finished compost each year, and harvests of leek/u);
  });

  it('says what is guessed of a bed of which nothing but its area is known', async () => {
    await kept.run(['bed', 'set', 'Bare', '5m2']);
    const text = flat((await kept.run(['bed', 'years', 'Bare'])).out);
    expect(text).toContain('Nothing is written down that went on it lately');
    expect(text).toContain('Nobody said what soil it is');
  });

  it.each([
    [['nowhere'], 'There is no bed called'],
    [['--bed', 'nowhere'], 'There is no bed called'],
    [['leeks'], 'On how much leeks stands is not said. What would do: leeks=10m2'],
    [['Kale', '--last', '0'], '--last'],
    [['Kale', '--last', 'many'], '--last'],
    [['Kale', 'squash'], 'What would do: squash=10m2'],
  ])('%j is refused in words', async (args, said) => {
    const { code, err } = await kept.run(['bed', 'years', ...args]);
    expect(code).not.toBe(0);
    expect(flat(err)).toContain(said);
  });
});
