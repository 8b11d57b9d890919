import type { BedBudget, BedBudgetInput } from '@loamwright/science';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../../testing/garden.ts';

let home: Garden;
beforeAll(() => {
  home = garden();
});
afterAll(() => home.remove());

type Value = BedBudget & { readonly input: BedBudgetInput };

const budgetOf = async (args: readonly string[]): Promise<Value> =>
  (await home.json(['bed', 'budget', ...args])).value as Value;

describe('bed budget', () => {
  it('says what is wanted, had and short, then what to do, how wide it is and what to mind', async () => {
    const { code, out } = await home.run([
      'bed',
      'budget',
      'kale=10m2',
      'leeks=5m2',
      '--put',
      'compost=2barrows@2026-04-01',
      '--for',
      '2026',
      '--soil',
      'p=high',
      'ph=6.4',
      '--fertiliser',
      '12',
    ]);
    expect(code).toBe(0);
    const text = flat(out);
    expect(text).toMatch(/^The bed of 15 m² wants about \d+ g of nitrogen this season and has about \d+ g/u);
    expect(text).toContain('That gap is about');
    expect(text).toContain('> Only nitrogen is short');
    expect(text).toContain('Of finished compost, 8 published series have 0 to 39 %');
    expect(text).toContain('Not tested: potassium, organic matter, and salts');
    expect(text).toContain('! Local rules on heaps');
  });

  it('shows each source with its convention when asked for all', async () => {
    const { out } = await home.run(['bed', 'budget', 'kale=10m2', '--put', 'compost=1barrow', '--full']);
    const text = flat(out);
    expect(text).toContain(
      '20 % of all its nitrogen in the first year (Eghball B., Wienhold B. J., Gilley J. E. 2001: composted feedlot manure; printed so)',
    );
    expect(text).toContain('printed of the organic nitrogen, with the ammonium apart');
    expect(text).toContain('finished compost by C:N; printed so; recalled, not read');
  });

  it.each<readonly [string, readonly string[], Partial<BedBudgetInput>]>([
    ['crops by other words', ['french beans=2m2'], { crops: [{ crop: 'bean-snap-bush', area_m2: 2 }] }],
    [
      'a soil test',
      ['kale=1m2', '--soil', 'p=excessive', 'k=low', 'om=4', 'salts=0.8', 'ph=6.5'],
      {
        soilTest: {
          phosphorusClass: 'excessive',
          potassiumClass: 'low',
          organicMatter_pctDry: 4,
          conductivity_dSPerM: 0.8,
          pH: 6.5,
        },
      },
    ],
    [
      'what grew before',
      ['kale=1m2', '--before', 'hairy vetch', 'alfalfa'],
      { before: [{ what: 'hairy-vetch' }, { what: 'alfalfa' }] },
    ],
    [
      'grades with a price',
      ['kale=1m2', '--fertiliser', '20:10:10@1.40', '12'],
      {
        fertilisers: [
          { nitrogen_pctAsIs: 20, phosphate_pctAsIs: 10, potash_pctAsIs: 10, price_perKg: 1.4 },
          { nitrogen_pctAsIs: 12 },
        ],
      },
    ],
  ])('reads %s', async (_what, args, wanted) => {
    const { input } = await budgetOf(args);
    expect(input).toMatchObject(wanted);
  });

  it('counts what goes on from September for the next harvest', async () => {
    const ago = async (day: string): Promise<number | undefined> =>
      (await budgetOf(['kale=9m2', '--put', `compost=1barrow@${day}`, '--for', '2026'])).input.put?.[0]?.seasonsAgo;
    expect(await ago('2026-04-01')).toBe(0);
    expect(await ago('2025-10-01')).toBe(0);
    expect(await ago('2025-08-01')).toBe(1);
    expect(await ago('2023-03-01')).toBe(3);
  });

  it('takes a bed of the daybook with what was sown, spread and tested', async () => {
    const { value } = await home.json(['bed', 'budget', '--bed', 'kale', '--demo', '--for', '2026']);
    const { input } = value as Value;
    expect(input.crops).toHaveLength(1);
    expect(input.crops[0]?.crop).toBe('kale');
    expect(input.put?.length).toBeGreaterThan(0);
    expect(input.soilTest?.pH).toBeGreaterThan(4);
  });

  it.each<readonly [readonly string[], string]>([
    [[], 'no-crop-named'],
    [['mandrake=3m2'], 'unknown-crop'],
    [['kale'], 'crop-without-area'],
    [['kale=0m2'], 'measurement-unreadable'],
    [['kale=-3m2'], 'measurement-unreadable'],
    [['kale=3kg'], 'measurement-unreadable'],
    [['winter rye=3m2'], 'cover-crop'],
    [['kale=10m2', '--put', 'compost=5000barrows'], 'bed-absurd-rate'],
    [['kale=10m2', '--put', 'compost=2barrows@someday'], 'when-unreadable'],
    [['kale=10m2', '--put', 'compost=2barrows@2026-04-01', '--for', '2020'], 'spread-later'],
    [['kale=10m2', '--put', 'stardust=2barrows'], 'unknown-material'],
    [['kale=10m2', '--put', 'dog waste=1bucket'], 'not-for-heaps'],
    [['kale=10m2', '--soil', 'p=index3'], 'not-one-of'],
    [['kale=10m2', '--soil', 'ph=ninety'], 'number-unreadable'],
    [['kale=10m2', '--soil', 'ph=90'], 'too-big'],
    [['kale=10m2', '--soil', '__proto__=1'], 'not-one-of'],
    [['kale=10m2', '--before', 'kudzu'], 'unknown-crop'],
    [['kale=10m2', '--fertiliser', 'much'], 'grade-unreadable'],
    [['kale=10m2', '--fertiliser', '0'], 'too-small'],
    [['kale=10m2', '--fertiliser', '12@'], 'grade-unreadable'],
    [['kale=10m2', '--weather', 'monsoon'], 'not-one-of'],
    [['kale=10m2', '--days', '100'], 'measurement-unreadable'],
    [['kale=10m2', '--for', 'soon'], 'number-unreadable'],
    [['--bed', 'nowhere'], 'no-such-bed'],
    [[`${'a'.repeat(5000)}=3m2`], 'unknown-crop'],
  ])('refuses %j', async (args, code) => {
    const { ok, problems } = (await home.json(['bed', 'budget', ...args])) as unknown as {
      ok: boolean;
      problems: readonly { code: string; found: string }[];
    };
    expect(ok).toBe(false);
    expect(problems[0]?.code).toBe(code);
    expect(problems[0]?.found.length ?? 0).toBeLessThan(200);
  });
});
