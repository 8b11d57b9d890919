import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { highsSolver } from '../solver/index.ts';
import { mixSolve } from './mix-solve.ts';
import type { MixSolution, MixSolveInput } from './solution.ts';

const needs = { draws: createDraws(), solver: highsSolver(await loadHighs()) };

function solved(input: MixSolveInput): MixSolution {
  const outcome = mixSolve.run(input, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const buckets = (material: string, count: number) => ({ material, amount: { measure: 'bucket-20l', count } });
const garden = [buckets('horse-manure-straw', 10), buckets('autumn-leaves', 20), buckets('wood-ash', 6)];
const ashIn = ({
  use,
  fetch = [],
}: Pick<MixSolution, 'use'> & { readonly fetch?: MixSolution['alternatives'][number]['fetch'] }) =>
  [...use, ...fetch].filter(({ material }) => material === 'wood-ash').reduce((all, { count }) => all + count, 0);

describe('ash and lime', () => {
  it('are kept apart, in every answer and in what would mend it, and that is told', () => {
    const solution = solved({ stock: garden });
    expect(ashIn(solution)).toBe(0);
    expect(solution.use.find(({ material }) => material === 'wood-ash')?.because).toBe('dusted');
    for (const other of solution.alternatives) expect(ashIn(other)).toBe(0);
    const alone = solved({ stock: [buckets('wood-ash', 5), buckets('ground-limestone', 2)] });
    expect(alone.use.every(({ count }) => count === 0)).toBe(true);
    const fetched = alone.mends.flatMap(({ fetch }) => fetch.map(({ material }) => material));
    expect(fetched).not.toContain('wood-ash');
  });

  it('go in where the grower says how much', () => {
    const stock = [...garden.slice(0, 2), { ...buckets('wood-ash', 6), atLeast: 1, atMost: 1 }];
    expect(ashIn(solved({ stock }))).toBe(1);
  });
});
