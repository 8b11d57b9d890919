import type { MaterialReport } from '@loamwright/advisor';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../../testing/garden.ts';

let home: Garden;
beforeEach(() => {
  home = garden();
});
afterEach(() => home.remove());

const at = (day: number) => ({ at: `2026-07-${day}T11:00:00.000Z` });

async function fact(
  material: string,
  property: string,
): Promise<{ from: string; p10: number; p50: number; p90: number }> {
  const { value } = await home.json(['material', material]);
  const found = (value as MaterialReport).facts.find((one) => one.property === property);
  const now = found?.now;
  if (found === undefined || typeof now !== 'object') throw new Error(`${material} has no ${property} with a range`);
  return { from: found.from, ...now };
}

async function mixMoisture(): Promise<number> {
  const { value } = await home.json(['mix', 'straw=4 bales', 'grass=2 barrows', '--exact']);
  return (value as { moisture_pctWet: { value: { p50: number } } }).moisture_pctWet.value.p50;
}

describe('the page of a material', () => {
  it('tells every figure with its range, its source and how it was read', async () => {
    const told = flat((await home.run(['material', 'wheat straw'])).out);
    expect(told).toContain('wheat straw: rich in carbon. On a heap: allowed: plain plant stuff.');
    expect(told).toMatch(/water: about [\d.]+ % \([\d.]+–[\d.]+ %\); .*(read in the source|worked out|from memory)/u);
    expect(told).toContain('! Fire:');
  });

  it('is found by any of its names, and asks where several go by it', async () => {
    expect((await home.run(['material', 'horse', 'muck'])).out).toContain('horse manure with straw');
    expect((await home.json(['material', 'browns'])).problems?.[0]?.code).toBe('which-material');
    expect((await home.json(['material', 'bacon'])).problems?.[0]?.code).toBe('not-for-heaps');
    const { value } = await home.json(['material', '--find', 'oak']);
    expect(value).toContainEqual({ id: 'oak-leaves', name: 'oak leaves', class: 'carbon-rich' });
  });

  it('lists one’s own and what lies in store, or every one', async () => {
    expect((await home.json(['material'])).value).toEqual([]);
    await home.run(['log', 'stock', 'straw=3bales']);
    await home.run(['material', 'Pit muck', '--like', 'goat bedding']);
    const ids = async (...more: readonly string[]): Promise<readonly string[]> =>
      ((await home.json(['material', ...more])).value as readonly { id: string }[]).map(({ id }) => id);
    expect(await ids()).toEqual(['pit-muck', 'straw']);
    expect((await ids('--all')).length).toBeGreaterThan(130);
  });
});

describe('a material as it is here', () => {
  it('is corrected in a word: what was said takes the place of what is published, in every mix from then on', async () => {
    const before = await mixMoisture();
    expect((await home.run(['material', 'straw', '--is', 'damp'])).out).toContain('straw described: water about 45 %');
    expect(await fact('straw', 'moisture_pctWet')).toMatchObject({ from: 'described', p50: 45 });
    expect(await mixMoisture()).toBeGreaterThan(before + 5);
    await home.run(['material', 'straw', '--is', '60-70%']);
    expect(await fact('straw', 'moisture_pctWet')).toMatchObject({ p10: 60, p90: 70 });
  });

  it('is measured: the range before and after is told, and the last measurement counts', async () => {
    const before = await fact('wood chips', 'moisture_pctWet');
    const dried = await home.run(['material', 'wood chips', '--wet', '100g', '--dry', '65g', '--units', 'metric']);
    expect(flat(dried.out)).toMatch(/water: between [\d.]+–[\d.]+ % before; now 3[\d.]+–3[\d.]+ %, likeliest 3\d %/u);
    const after = await fact('wood chips', 'moisture_pctWet');
    expect(after.from).toBe('measured');
    // M = 100 (wet − dry) / wet (Cornell): 35 %, within the two points of an oven and a kitchen scale.
    expect(Math.abs(after.p50 - 35)).toBeLessThan(2);
    expect(after.p90 - after.p10).toBeLessThan(before.p90 - before.p10);
    await home.run(['material', 'wood chips', '--wet', '100g', '--dry', '50g'], at(16));
    expect(Math.abs((await fact('wood chips', 'moisture_pctWet')).p50 - 50)).toBeLessThan(2);
  });

  it('counts no measurement that is older than the words that describe it anew', async () => {
    await home.run(['material', 'straw', '--wet', '100g', '--dry', '88g'], at(15));
    await home.run(['material', 'straw', '--is', 'wet'], at(17));
    expect(await fact('straw', 'moisture_pctWet')).toMatchObject({ from: 'described', p50: 68 });
    await home.run(['material', 'straw', '--wet', '100g', '--dry', '40g'], at(18));
    expect(await fact('straw', 'moisture_pctWet')).toMatchObject({ from: 'measured' });
  });

  // O8: 20 L, 1 kg empty, 10 kg full is 450 kg/m3 (Cooperband and Zabaleta).
  it('is weighed in a bucket and shaken down', async () => {
    const bucket = ['--full', '10kg', '--empty', '1kg', '--holds', '20L', '--units', 'metric'];
    const { value } = await home.json(['material', 'coffee grounds', ...bucket]);
    expect(value).toMatchObject({ changes: [{ property: 'densityLoose_kgPerM3AsIs' }] });
    const loose = await fact('coffee grounds', 'densityLoose_kgPerM3AsIs');
    expect(loose.p10).toBeLessThan(450);
    expect(loose.p90).toBeGreaterThan(420);
    await home.run(['material', 'leaves', '--filled', '30cm', '--settled', '24cm']);
    expect(await fact('leaves', 'densityPacked_kgPerM3AsIs')).toMatchObject({ from: 'measured' });
  });

  it('says when it is another stuff than the published one, and lets the finding take its place', async () => {
    const dried = ['material', 'straw', '--wet', '100g', '--dry', '30g', '--microwave', '--units', 'metric'];
    const { out } = await home.run(dried);
    expect(flat(out)).toContain('not what such stuff usually is');
    expect(flat(out)).toContain('! Never leave the microwave');
    await home.run([...dried, '--instead'], at(16));
    const now = await fact('straw', 'moisture_pctWet');
    expect(now.from).toBe('described');
    expect(Math.abs(now.p50 - 70)).toBeLessThan(1);
  });

  it('of one’s own is like a known one, but for what is said of it, and is mixed by its name', async () => {
    await home.run(['material', 'Quarry mulch', '--like', 'wood chips', '--ratio', '70-90', '--weight', '200kg/m3']);
    const own = await fact('quarry mulch', 'carbonToNitrogen_ratio');
    expect(own).toMatchObject({ from: 'described', p10: 70, p90: 90 });
    const page = flat((await home.run(['material', 'Quarry mulch'])).out);
    expect(page).toContain('Your own material, like wood chips');
    expect(flat((await home.run(['mix', 'quarry mulch=3 barrows', 'grass=2 barrows'])).out)).toContain('Quarry mulch');
    await home.run(['material', 'quarry mulch', '--is', 'damp']);
    expect(await fact('quarry mulch', 'carbonToNitrogen_ratio')).toMatchObject({ p10: 70, p90: 90 });
    expect(await fact('quarry mulch', 'moisture_pctWet')).toMatchObject({ from: 'described', p50: 45 });
  });

  it.each<readonly [readonly string[], string]>([
    [['straw', '--is', 'soggy'], 'figure-unreadable'],
    [['straw', '--is', '140'], 'figure-unreadable'],
    [['straw', '--squeeze', 'soggy'], 'squeeze-unknown'],
    [['straw', '--wet', '100g'], 'check-half'],
    [['straw', '--full', '10kg', '--empty', '1kg'], 'check-half'],
    [['straw', '--wet', '100', '--dry', 'some'], 'measurement-unreadable'],
    [['straw', '--wet', '50g', '--dry', '60g'], 'too-big'],
    [['straw', '--ratio', '10000'], 'figure-beyond'],
    [['straw', '--ratio', '0.1-40'], 'figure-beyond'],
    [['straw', '--nitrogen', '60'], 'figure-beyond'],
    [['straw', '--weight', '50000kg/m3'], 'figure-beyond'],
    [['straw', '--full', '3kg', '--empty', '1kg', '--holds', 'hat'], 'unknown-measure'],
    [['straw', '--like', 'hay'], 'name-taken'],
    [['…', '--like', 'hay'], 'name-unusable'],
    [['Mulch of ours', '--like', 'xqzzt'], 'unknown-material'],
  ])('asks again for %j: %s', async (args, problem) => {
    const { ok, problems } = await home.json(['material', ...args]);
    expect(ok).toBe(false);
    expect(problems?.map(({ code }) => code)).toContain(problem);
    const { err } = await home.run(['material', ...args]);
    expect(err).not.toContain(problem);
    expect(err).not.toMatch(/\w_\w|\b[a-z]+\.[a-z]/u);
    expect((await home.json(['daybook'])).value).toEqual([]);
  });
});
