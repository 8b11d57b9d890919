import fc from 'fast-check';
import { expect } from 'vitest';
import { type Calculation, check, type Needs, type Outcome } from '../../catalogue/index.ts';

/** Something physics or arithmetic demands of a calculation, with its conditions in words. */
export interface Law {
  readonly says: string;
  /** Tries it; throws where it is broken, or where hardly any case could be tried. */
  readonly holds: (needs: Needs) => void;
}

/** The laws of one calculation. A calculation that has none of scale says why. */
export interface LawsOf {
  readonly scale: Law | NoScaleLaw;
  readonly others: readonly Law[];
}

/** Why twice the stuff is no question here. */
export type NoScaleLaw = `no scale law because ${string}`;

/** A solver takes its time. */
export const RUNS_OF_A_SOLVER = 8;
const RUNS = 30;

/**
 * A law over several answers of one calculation: inputs are made from a case, and what must hold of their answers is
 * expected. A case of which one input has no answer is left out; most must have.
 */
export function law<Input, Output, Case>(
  calculation: Calculation<Input, Output>,
  told: {
    readonly says: string;
    readonly cases: fc.Arbitrary<Case>;
    readonly inputs: (one: Case) => readonly Input[];
    readonly expects: (answers: readonly Output[], one: Case, needs: Needs) => void;
    readonly runs?: number | undefined;
  },
): Law {
  const { says, cases, inputs, expects, runs = RUNS } = told;
  return {
    says,
    holds: (needs) => {
      let tried = 0;
      let met = 0;
      fc.assert(
        fc.property(cases, (one) => {
          met += 1;
          const outcomes = inputs(one).map((input) => checkedRun(calculation, input, needs));
          const answers = outcomes.flatMap((outcome) => (outcome.ok ? [outcome.value] : []));
          if (answers.length < outcomes.length) return;
          tried += 1;
          expects(answers, one, needs);
        }),
        { seed: 47, numRuns: runs },
      );
      expect(2 * tried, `${calculation.id}: most cases have an answer`).toBeGreaterThan(met);
    },
  };
}

/** What the catalogue would answer: the schema comes first. */
function checkedRun<Input, Output>(
  calculation: Calculation<Input, Output>,
  input: Input,
  needs: Needs,
): Outcome<Output> {
  const checked = check(calculation.input, input);
  return checked.ok ? calculation.run(checked.value, needs) : checked;
}

/** Binary sums differ in their last digits when they are added in another order. */
const ROUNDING = 1e-9;

/** The last part of a name that stands for an amount: so much for twice the stuff as well. */
const amounts = /_(?:kg|g|L|m3)$/u;

/**
 * So many times the stuff: every amount so many times over (names ending in kg, g, L or m3, and those named in
 * `alsoAmounts`), everything else the same. `aside` names what hangs on size itself.
 */
export function scaleLaw<Input, Output, Case extends Input>(
  calculation: Calculation<Input, Output>,
  told: {
    readonly says: string;
    readonly cases: fc.Arbitrary<Case>;
    readonly times: (input: Case, by: number) => Input;
    readonly alsoAmounts?: readonly string[] | undefined;
    readonly aside?: readonly string[] | undefined;
    readonly runs?: number | undefined;
  },
): Law {
  const { says, cases, times, alsoAmounts = [], aside = [], runs } = told;
  return law(calculation, {
    says,
    runs,
    cases: fc.tuple(cases, fc.double({ min: 0.25, max: 8, noNaN: true })),
    inputs: ([input, by]) => [input, times(input, by)],
    expects: ([once, more], [, by]) => expectScaled(once, more, { by, alsoAmounts, aside }),
  });
}

interface Scaling {
  readonly by: number;
  readonly alsoAmounts: readonly string[];
  readonly aside: readonly string[];
}

function expectScaled(once: unknown, more: unknown, scaling: Scaling, path = '', isAmount = false): void {
  if (typeof once === 'number') {
    const expected = isAmount ? once * scaling.by : once;
    expect(Math.abs(Number(more) - expected), `${path}: ${more}, not ${expected}`).toBeLessThanOrEqual(
      ROUNDING * Math.max(1, Math.abs(expected)),
    );
    return;
  }
  if (typeof once !== 'object' || once === null) {
    expect(more, path).toBe(once);
    return;
  }
  const other = more as Readonly<Record<string, unknown>>;
  for (const [key, value] of Object.entries(once)) {
    if (scaling.aside.includes(key)) continue;
    const named = Array.isArray(once) || /^p\d0$/u.test(key) ? isAmount : amounts.test(key);
    expectScaled(value, other[key], scaling, `${path}.${key}`, named || scaling.alsoAmounts.includes(key));
  }
}

/** At least as much, as far as binary sums tell. */
export function expectNoLess(more: number, less: number, what: string): void {
  expect(more, what).toBeGreaterThanOrEqual(less - ROUNDING * Math.max(1, Math.abs(less)));
}
