import fc from 'fast-check';
import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { catalogue } from '../all.ts';
import type { Needs, Outcome, Problem } from '../catalogue/index.ts';
import { createDraws } from '../estimate/index.ts';
import { highsSolver } from '../solver/index.ts';
import { fromSchema, nearExample, otherwiseOrdered, type Schema } from './testing/generate.ts';
import { expectSound } from './testing/sound.ts';
import { lawTable } from './testing/table.ts';

const needs: Needs = { draws: createDraws(), solver: highsSolver(await loadHighs()) };

/** What comes out over the wire. */
function written(value: unknown): unknown {
  return JSON.parse(JSON.stringify(value));
}

/** The same answer; or the same problems, which come in the order in which the input was written. */
function expectSame(one: Outcome<unknown>, other: Outcome<unknown>): void {
  if (one.ok || other.ok) expect(one).toEqual(other);
  else expect(placesOf(one.problems)).toEqual(placesOf(other.problems));
}

function placesOf(problems: readonly Problem[]): readonly string[] {
  return problems.map(({ code, path }) => `${code} at ${path}`).sort();
}

/** Inputs tried of each kind; a solver, the physical model and a bed over many years take their time. */
const RUNS = 150;
const runsOfTheSlow: Readonly<Record<string, number>> = {
  'mix-solve': 15,
  'heap-run': 15,
  'heap-size': 6,
  'soil-carbon': 50,
};
/** Of the inputs near an example so many must be answered and not refused. */
const LEAST_ANSWERED = 1 / 3;
/** The example of a run has four materials, weather and an act: several change at once, and oftener to what cannot be, such as an act after the end. */
const leastAnswered: Readonly<Record<string, number>> = { 'heap-run': 1 / 6 };
/** A person waits no longer, on the slowest machine; a loop without end shows itself so. */
const LONGEST_MS = 10_000;

describe('the table of laws', () => {
  it('holds every calculation of the catalogue, and no other', () => {
    expect(Object.keys(lawTable).sort()).toEqual(catalogue.map(({ id }) => id).sort());
  });

  it.each(Object.entries(lawTable))('%s has a law besides, and one of scale or the reason why none', (_id, laws) => {
    expect(laws.others.length).toBeGreaterThan(0);
    if (typeof laws.scale === 'string') expect(laws.scale).toMatch(/^no scale law because \w+/u);
  });
});

describe.each(
  Object.entries(lawTable).flatMap(([id, { scale, others }]) => {
    const stated = typeof scale === 'string' ? others : [scale, ...others];
    return stated.map((one) => [id, one.says, one] as const);
  }),
)('%s', (_id, says, { holds }) => {
  it(says, () => holds(needs));
});

describe.each(catalogue.map((calculation) => [calculation.id, calculation] as const))('%s', (id, calculation) => {
  const schema = calculation.inputSchema() as Schema;
  const answers = z.fromJSONSchema(calculation.outputSchema() as Parameters<typeof z.fromJSONSchema>[0]);
  const numRuns = runsOfTheSlow[id] ?? RUNS;

  function isSound(input: unknown): boolean {
    const begun = performance.now();
    const outcome = calculation.reckon(input, needs);
    expect(performance.now() - begun).toBeLessThan(LONGEST_MS);
    expectSound(outcome, calculation);
    if (outcome.ok) expect(answers.safeParse(written(outcome.value)).error).toBeUndefined();
    expectSame(calculation.reckon(otherwiseOrdered(input), needs), outcome);
    return outcome.ok;
  }

  it('is sound and the same every time, whatever its schema lets through', () => {
    fc.assert(
      fc.property(fromSchema(schema), (input) => {
        isSound(input);
      }),
      { seed: 41, numRuns },
    );
  });

  it('is sound near its example, and mostly answers there', () => {
    let answered = 0;
    fc.assert(
      fc.property(nearExample(calculation.example, schema), (input) => {
        if (isSound(input)) answered += 1;
      }),
      { seed: 41, numRuns },
    );
    // Else the generator tries the gate only, and not what lies behind it.
    expect(answered).toBeGreaterThan(numRuns * (leastAnswered[id] ?? LEAST_ANSWERED));
  });
});
