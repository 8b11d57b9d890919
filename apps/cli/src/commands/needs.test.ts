import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../testing/garden.ts';

let home: Garden;
beforeEach(() => {
  home = garden();
});
afterEach(() => home.remove());

interface Found {
  readonly water: { readonly decision: string };
  readonly nitrogen: readonly { readonly goal_ratio: number; readonly nitrogen_kg: { readonly p50: number } }[];
}

describe('needs', () => {
  it.each([
    ['leaves=1000kg', 'add-water', 40, /To rot hot it lacks nitrogen/u],
    ['chips=1yd3', 'add-water', 60, /begin with the lesser amount/u],
    ['grass=10kg', 'too-wet', 40, /It needs no nitrogen\./u],
  ])('%s: %s, nitrogen to %d first', async (stuff, decision, ratio, said) => {
    const { ok, value } = await home.json(['needs', stuff]);
    const { water, nitrogen } = value as Found;
    expect(ok).toBe(true);
    expect(water.decision).toBe(decision);
    expect(nitrogen[0]?.goal_ratio).toBe(ratio);
    expect(nitrogen[1]?.nitrogen_kg.p50).toBeGreaterThanOrEqual(nitrogen[0]?.nitrogen_kg.p50 ?? Number.NaN);
    expect(flat((await home.run(['needs', stuff])).out)).toMatch(said);
  });

  it('asks for a scale where the weight decides, and not where it was weighed', async () => {
    expect(flat((await home.run(['needs', 'leaves=20 leaf bags'])).out)).toContain('weigh three bags');
    expect(flat((await home.run(['needs', 'leaves=200kg'])).out)).not.toContain('weigh three bags');
  });

  it.each([
    [['needs'], 'nothing-named'],
    [['needs', 'nonsuch=1kg'], 'unknown-material'],
    [['needs', 'leaves'], 'ingredient-unreadable'],
    [['needs', 'leaves=0kg'], 'amount-unreadable'],
  ])('asks again for %j', async (args, code) => {
    const { problems } = await home.json(args);
    expect(problems?.map((problem) => problem.code)).toContain(code);
  });
});
