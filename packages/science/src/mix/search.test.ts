import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { highsSolver, type MilpSolver, writeLp } from '../solver/index.ts';
import { bandTable } from './bands.ts';
import { mixParameters } from './parameters.ts';
import type { Portion } from './portion.ts';
import { type Choice, mixProgramme, referenceDryOf_kgPerM3, type Wanted } from './programme.ts';
import { costOf, search } from './search.ts';

const solver: MilpSolver = highsSolver(await loadHighs());

/** A repeatable stream of numbers in [0, 1): Park and Miller 1988, the minimal standard generator. */
function stream(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return (state - 1) / 2147483646;
  };
}

/** A made-up material: 10 to 100 L a step, dry or wet, rich or woody. */
function anyChoice(next: () => number, rank: number, most: number): Choice {
  const volume_m3 = 0.01 + 0.09 * next();
  const wet_kg = volume_m3 * (40 + 700 * next());
  const dry_kg = wet_kg * (0.1 + 0.85 * next());
  const volatileSolids_kg = dry_kg * (0.6 + 0.38 * next());
  const carbon_kg = volatileSolids_kg / 1.8;
  const nitrogen_kg = carbon_kg / (8 + 150 * next() ** 2);
  const step: Portion = {
    wet_kg,
    dry_kg,
    volatileSolids_kg,
    carbon_kg,
    degradableCarbon_kg: carbon_kg / 2,
    nitrogen_kg,
    availableNitrogen_kg: nitrogen_kg / 2,
    phosphorus_kg: 0,
    potassium_kg: 0,
    volume_m3,
  };
  const highest = Math.floor((most + 1) * next());
  return { step, lowest: Math.floor(next() * 1.3 * Math.min(1, highest)), highest, rank };
}

function anyProgramme(seed: number, materials: number, most: number): { choices: readonly Choice[]; wanted: Wanted } {
  const next = stream(seed);
  const choices = Array.from({ length: materials }, (_, i) => anyChoice(next, i, most));
  const { carbonToNitrogen_ratio, moisture_pctWet, freeAirSpace_pctVolume, density_kgPerM3AsIs } = bandTable.goals;
  const wanted: Wanted = {
    volume_m3: 0.1 + next(),
    goals: [
      ['carbonToNitrogen_ratio', carbonToNitrogen_ratio],
      ['moisture_pctWet', moisture_pctWet],
      ['freeAirSpace_pctVolume', freeAirSpace_pctVolume],
      ...(next() < 0.5 ? [] : [['density_kgPerM3AsIs', density_kgPerM3AsIs] as const]),
    ],
    packing_share: 0.7 + 0.3 * next(),
    mostWater_L: next() < 0.3 ? 20 * next() : Number.POSITIVE_INFINITY,
    floor_m3: 0,
    fills: true,
    referenceDry_kgPerM3: 150,
  };
  return {
    choices,
    wanted: { ...wanted, referenceDry_kgPerM3: referenceDryOf_kgPerM3(choices, wanted.packing_share) },
  };
}

/**
 * The objective worked out afresh from its definition in `docs/models/mix-solve.md`, sharing no code with
 * the programme: plain sums, then each band's miss in soft edges over the wanted volume.
 */
function objective(steps: readonly number[], water_L: number, choices: readonly Choice[], wanted: Wanted): number {
  const of = (key: keyof Portion): number => choices.reduce((sum, { step }, i) => sum + step[key] * (steps[i] ?? 0), 0);
  const wet = of('wet_kg') + water_L;
  const dry = of('dry_kg');
  const volume = of('volume_m3') * wanted.packing_share;
  const solids_m3 = of('volatileSolids_kg') / 1600 + (dry - of('volatileSolids_kg')) / 2500;
  const filled = solids_m3 + (wet - dry) / 1000;
  const dryWanted = wanted.volume_m3 * wanted.referenceDry_kgPerM3;
  const miss: Readonly<Record<string, (at: number) => number>> = {
    carbonToNitrogen_ratio: (at) => (of('carbon_kg') - at * of('nitrogen_kg')) / ((dryWanted * 0.48) / 30) / 5,
    moisture_pctWet: (at) => (wet - dry - (at / 100) * wet) / (dryWanted / 0.45) / 0.05,
    freeAirSpace_pctVolume: (at) => ((1 - at / 100) * volume - filled) / wanted.volume_m3 / 0.05,
    density_kgPerM3AsIs: (at) => (wet - at * volume) / wanted.volume_m3 / 59.3,
  };
  let cost = 0;
  for (const [quantity, { preferred, reasonable }] of wanted.goals) {
    const { low, high } = preferred;
    const edge = {
      carbonToNitrogen_ratio: 5,
      moisture_pctWet: 5,
      freeAirSpace_pctVolume: 5,
      density_kgPerM3AsIs: 59.3,
    }[quantity];
    const aim =
      low !== undefined && high !== undefined
        ? { low: low + (high - low) / 4, high: high - (high - low) / 4 }
        : { low: low === undefined ? undefined : low + edge, high: high === undefined ? undefined : high - edge };
    for (const [band, weight] of [
      [aim, 0.1],
      [preferred, 1],
      [reasonable, 20],
    ] as const) {
      if (band.low !== undefined) cost += weight * Math.max(0, -(miss[quantity]?.(band.low) ?? Number.NaN));
      if (band.high !== undefined) cost += weight * Math.max(0, miss[quantity]?.(band.high) ?? Number.NaN);
    }
  }
  const largest = Math.max(0, ...choices.filter(({ highest }) => highest > 0).map(({ step }) => step.volume_m3));
  const slack = Math.min(0.25, (wanted.packing_share * largest) / 2 / wanted.volume_m3);
  const share = volume / wanted.volume_m3;
  cost += 10 * Math.max(0, 1 - slack - share) + 20 * Math.max(0, share - 1 - slack);
  cost += choices.reduce(
    (sum, { step, rank }, i) => sum + (0.01 * (1 + 0.01 * rank) * step.volume_m3 * (steps[i] ?? 0)) / wanted.volume_m3,
    0,
  );
  return cost + (0.01 * water_L) / (1000 * wanted.volume_m3);
}

/** The least cost over water for fixed steps: the cost is convex in water, so thirds close in on it. */
function bestWater(steps: readonly number[], choices: readonly Choice[], wanted: Wanted): number {
  let low = 0;
  let high = Math.min(wanted.mostWater_L, 3000);
  for (let i = 0; i < 120; i++) {
    const third = (high - low) / 3;
    if (objective(steps, low + third, choices, wanted) <= objective(steps, high - third, choices, wanted))
      high -= third;
    else low += third;
  }
  return objective(steps, (low + high) / 2, choices, wanted);
}

/** Every combination of steps. */
function combinations(choices: readonly Choice[]): readonly (readonly number[])[] {
  return choices.reduce<readonly (readonly number[])[]>(
    (made, { lowest, highest }) =>
      made.flatMap((steps) => Array.from({ length: highest - lowest + 1 }, (_, i) => [...steps, lowest + i])),
    [[]],
  );
}

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
