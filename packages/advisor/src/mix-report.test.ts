import { fold } from '@loamwright/daybook';
import { testWriter } from '@loamwright/daybook/testing';
import {
  buildCard,
  createDraws,
  highsSolver,
  type MixSolution,
  type MixSolveInput,
  mixSolve,
} from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { buildCardReport, mixReport } from './index.ts';

const needs = { draws: createDraws(), solver: highsSolver(await loadHighs()) };
const us = createSpeaker({ locale: 'en', system: 'us' });
const empty = fold([]);

function solved(input: MixSolveInput): MixSolution {
  const outcome = mixSolve.run(input, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const barrows = (material: string, count: number) => ({ material, amount: { measure: 'barrow', count } }) as const;
const grass = solved({ stock: [barrows('grass-clippings', 6)] });

describe('a mix in words', () => {
  const solution = solved(mixSolve.example);
  const report = mixReport(solution, empty);

  it('is one sentence in which every amount can be touched', () => {
    const parts = us.tellParts(report.answer);
    const amounts = parts.filter(({ place }) => place?.endsWith('.amount'));
    expect(amounts.map(({ place }) => place)).toEqual(report.use.map((_, i) => `stuff[${i}].amount`));
    for (const [i, { count }] of report.use.entries()) expect(amounts[i]?.text).toContain(String(count));
    expect(us.tell(report.answer)).toMatch(/^Lay \d.*: .*\.$/u);
  });

  it('leaves out nothing that the solver used, left or lacks', () => {
    expect(report.use.map(({ material, count }) => [material, count])).toEqual(
      solution.use.filter(({ count }) => count > 0).map(({ material, count }) => [material, count]),
    );
    expect([...report.use, ...report.unused]).toHaveLength(solution.use.length);
    expect(report.lacks).toHaveLength(solution.lacks.length);
    expect(report.mends).toHaveLength(solution.mends.length);
  });

  it('says what is said about heating with its chances, and promises nothing', () => {
    const heat = report.heat.map((saying) => us.tell(saying)).join(' ');
    expect(heat).toContain('of 256 draws');
    expect(heat).toContain('It is no promise.');
    expect(us.tell(report.answer)).not.toMatch(/\bhot\b|Monday|Thursday|will be/u);
  });

  it('says why each material may go on', () => {
    for (const { permit } of report.use)
      expect(us.tell(permit.said)).toMatch(/: (allowed|only in a hot, logged heap) \(/u);
  });

  it('names a material of the grower’s own as they do', () => {
    const writer = testWriter();
    writer.write('material-described', 'our-litter', { name: 'Litter of the goats', like: 'goat-bedding' });
    const own = solved({
      stock: [{ ...barrows('our-litter', 4), like: 'goat-bedding' }, barrows('straw', 9)],
    });
    expect(us.tell(mixReport(own, fold(writer.entries)).answer)).toContain('of Litter of the goats');
  });
});

describe('a mix that can’t be good', () => {
  const report = mixReport(grass, empty);

  it('of nothing but grass is told as poor, with what is short and what would mend it', () => {
    expect(report.standing).toBe('poor');
    expect(us.tell(report.answer)).toContain('not a mix that handbooks would call reasonable');
    expect(report.lacks.length).toBeGreaterThan(0);
    expect(report.mends.map((saying) => us.tell(saying)).join(' ')).toMatch(/With \d+ barrows of \w+/u);
    expect(report.heat.map((saying) => us.tell(saying)).join(' ')).toContain('do not count on it getting hot');
  });

  it('of nothing says so', () => {
    expect(us.tell(mixReport(solved({ stock: [] }), empty).answer)).toBe('There is nothing here to build a heap of.');
  });
});

describe('a build card in words', () => {
  const outcome = buildCard.run(buildCard.example, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  const card = outcome.value;
  const report = buildCardReport(card, empty);

  it('has a line for every layer, to scale, and for its water', () => {
    expect(report.layers.map(({ bottom_m, height_m }) => [bottom_m, height_m])).toEqual(
      card.layers.map(({ bottom_m, height_m }) => [bottom_m, height_m]),
    );
    expect(us.tell(report.layers[0]?.said ?? report.height)).toMatch(/^Base: .*hedge chippings\.$/u);
    const watered = report.layers.filter(({ water }) => water !== null).length;
    expect(watered).toBe(card.layers.filter(({ water_L }) => water_L > 0).length);
  });

  it('tells chopping, notes, permits and the starter', () => {
    expect(report.chop).toHaveLength(card.chop.length);
    expect(report.notes).toHaveLength(card.notes.length);
    expect(report.permits).toHaveLength(buildCard.example.mix.length);
    expect(report.layers.some(({ starter }) => starter !== null)).toBe(true);
  });
});
