import type { BuildUp, SoilCarbon } from '@loamwright/science';
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
