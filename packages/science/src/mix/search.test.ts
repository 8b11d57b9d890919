import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { highsSolver, type MilpSolver, writeLp } from '../solver/index.ts';
import { mixParameters } from './parameters.ts';
import { mixProgramme } from './programme.ts';
import { costOf, search } from './search.ts';
import { anyProgramme, bestWater, combinations, objective } from './testing/programmes.ts';

const solver: MilpSolver = highsSolver(await loadHighs());

/** Objectives agree to a millionth of the larger; what either solver allows as tolerance stays below that. */
const AGREEMENT = 1e-6;
function expectNear(found: number, wanted: number): void {
  expect(Math.abs(found - wanted), `${found} for ${wanted}`).toBeLessThanOrEqual(
    AGREEMENT * Math.max(1, Math.abs(wanted)),
  );
}

describe('the programme', () => {
  it.each(Array.from({ length: 30 }, (_, i) => i + 1))(
    'finds what trying every combination finds (seed %i)',
    (seed) => {
      const { choices, wanted } = anyProgramme(seed, 3, 5);
      const found = search(choices, wanted, solver);
      if (!found.ok) throw new Error(JSON.stringify(found.problems));
      const least = Math.min(...combinations(choices).map((steps) => bestWater(steps, choices, wanted)));
      expectNear(found.value.cost, least);
      expectNear(objective(found.value.steps, found.value.water_L, choices, wanted), least);
    },
  );

  it('tells the objective in its parts', () => {
    const { choices, wanted } = anyProgramme(7, 6, 8);
    const found = search(choices, wanted, solver);
    if (!found.ok) throw new Error(JSON.stringify(found.problems));
    expectNear(costOf(choices, found.value, wanted), found.value.cost);
  });

  it('rests on the weights that the objective of this test was written with', () => {
    const { aimWeight, preferredWeight, reasonableWeight, volumeWeight, overfullWeight } = mixParameters.solver;
    const weights = [aimWeight, preferredWeight, reasonableWeight, volumeWeight, overfullWeight];
    expect(weights.map(({ value }) => value)).toEqual([0.1, 1, 20, 10, 20]);
  });
});

const glpsol = spawnSync('glpsol', ['--version']);
const hasGlpsol = glpsol.status === 0;

/** The objective GLPK reaches on a programme. */
function glpkCost(lp: string): number {
  const folder = mkdtempSync(join(tmpdir(), 'mix-'));
  try {
    const [model, report] = [join(folder, 'mix.lp'), join(folder, 'mix.out')];
    writeFileSync(model, lp);
    execFileSync('glpsol', ['--lp', model, '--write', report], { stdio: 'ignore' });
    // "s mip ROWS COLUMNS STATUS OBJECTIVE", or "s bas ROWS COLUMNS PRIMAL DUAL OBJECTIVE" without whole variables.
    const solution = /^s (?:mip|bas) .* (\S+)$/m.exec(readFileSync(report, 'utf8'));
    return Number(solution?.[1] ?? Number.NaN);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

describe.skipIf(!hasGlpsol)(
  hasGlpsol ? 'against GLPK' : 'against GLPK (not run: glpsol, Debian package glpk-utils, is not installed)',
  () => {
    it.each(Array.from({ length: 25 }, (_, i) => i + 101))('reaches the same optimum (seed %i)', (seed) => {
      const { choices, wanted } = anyProgramme(seed, 2 + (seed % 11), 12);
      const found = search(choices, wanted, solver);
      if (!found.ok) throw new Error(JSON.stringify(found.problems));
      expectNear(found.value.cost, glpkCost(writeLp(mixProgramme(choices, wanted, true))));
    });

    it.each(Array.from({ length: 10 }, (_, i) => i + 201))('and the same relaxed one (seed %i)', (seed) => {
      const { choices, wanted } = anyProgramme(seed, 12, 20);
      const found = search(choices, wanted, solver, false);
      if (!found.ok) throw new Error(JSON.stringify(found.problems));
      expectNear(found.value.cost, glpkCost(writeLp(mixProgramme(choices, wanted, false))));
    });
  },
);
