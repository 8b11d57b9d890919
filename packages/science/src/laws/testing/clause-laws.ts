import fc from 'fast-check';
import { expect } from 'vitest';
import { clauseCheck } from '../../clauses/clause-check.ts';
import type { Clause, ClauseCheck, ClauseCheckInput, HeapFacts } from '../../clauses/clause-check-io.ts';
import { distanceKinds, plainKinds } from '../../clauses/clause-check-io.ts';
import { namedIds, stuffIds } from '../../clauses/stuff.ts';
import { type LawsOf, law } from './law.ts';

const metres = fc.double({ min: 0.2, max: 40, noNaN: true });
const named = fc.uniqueArray(fc.constantFrom(...namedIds), { minLength: 1, maxLength: 3 });

const clause: fc.Arbitrary<Clause> = fc.oneof(
  metres.map((most_m3): Clause => ({ kind: 'volume', most_m3, perLot_m2: 500 })),
  metres.map((most_m): Clause => ({ kind: 'height', most_m: most_m / 10 })),
  metres.map((most_m2): Clause => ({ kind: 'footprint', most_m2 })),
  metres.map((most): Clause => ({ kind: 'lot-share', most_pctOfLot: most })),
  fc.tuple(metres, metres).map(([long_m, short_m]): Clause => ({ kind: 'sides', long_m, short_m })),
  fc.tuple(fc.constantFrom(...distanceKinds), metres).map(([kind, least_m]): Clause => ({ kind, least_m })),
  named.map((stuff): Clause => ({ kind: 'bars', stuff })),
  fc.tuple(named, fc.boolean()).map(([stuff, only]): Clause => ({ kind: 'allows', stuff, only })),
  fc.constantFrom(...plainKinds).map((kind): Clause => ({ kind })),
);

/** Every fact but the volume. */
type Told = { readonly [Fact in Exclude<keyof HeapFacts, 'volume_m3'>]-?: NonNullable<HeapFacts[Fact]> };

const heap: fc.Arbitrary<Told> = fc.record({
  width_m: metres,
  depth_m: metres,
  height_m: metres.map((long) => long / 10),
  lot_m2: fc.double({ min: 100, max: 5000, noNaN: true }),
  fromLine_m: metres,
  fromHouse_m: metres,
  fromWater_m: metres,
  stuff: fc.uniqueArray(fc.constantFrom(...stuffIds), { minLength: 1, maxLength: 4 }),
  rearYard: fc.boolean(),
  covered: fc.boolean(),
  enclosed: fc.boolean(),
  scrapsBuried: fc.boolean(),
});

const cases: fc.Arbitrary<ClauseCheckInput & { heap: Told }> = fc
  .tuple(fc.array(clause, { minLength: 1, maxLength: 5 }), heap)
  .map(([clauses, facts]) => ({ codes: [{ of: 'Our town', whose: 'town', clauses }], heap: facts }));

const findings = (found: ClauseCheck | undefined) => found?.codes.flatMap((code) => code.findings) ?? [];

/** Where the first passes, so does the second; its failures are a part of the first one's. */
function expectNoWorse(first: ClauseCheck | undefined, second: ClauseCheck | undefined): void {
  const better = findings(second);
  findings(first).forEach(({ verdict }, i) => {
    if (verdict === 'pass') expect(better[i]?.verdict).toBe('pass');
  });
}

const share = fc.double({ min: 0.1, max: 1, noNaN: true });

export const clauseLaws: Readonly<Record<string, LawsOf>> = {
  'clause-check': {
    scale: 'no scale law because a clause is a limit: twice the heap is held against the same one',
    others: [
      law(clauseCheck, {
        says: 'a heap that is smaller in all its measures fails no clause that the larger one passed',
        cases: fc.tuple(cases, share),
        inputs: ([input, by]) => {
          const { width_m, depth_m, height_m } = input.heap;
          return [
            input,
            {
              ...input,
              heap: { ...input.heap, width_m: width_m * by, depth_m: depth_m * by, height_m: height_m * by },
            },
          ];
        },
        expects: ([large, small]) => expectNoWorse(large, small),
      }),
      law(clauseCheck, {
        says: 'a heap that stands farther off fails no clause that it passed nearer by',
        cases: fc.tuple(cases, share),
        inputs: ([input, by]) => {
          const { fromLine_m, fromHouse_m, fromWater_m } = input.heap;
          const farther = {
            fromLine_m: fromLine_m / by,
            fromHouse_m: fromHouse_m / by,
            fromWater_m: fromWater_m / by,
          };
          return [input, { ...input, heap: { ...input.heap, ...farther } }];
        },
        expects: ([near, far]) => expectNoWorse(near, far),
      }),
      law(clauseCheck, {
        says: 'where a clause fails, that leads, however good the log; and a log changes no clause',
        cases,
        inputs: (input) => [input, { ...input, logMeets: true }, { ...input, logMeets: false }],
        expects: ([without, good, poor]) => {
          expect(good?.codes).toEqual(without?.codes);
          expect(poor?.codes).toEqual(without?.codes);
          const fails = findings(without).some(({ verdict }) => verdict === 'fail');
          for (const one of [without, good, poor]) expect(one?.standing === 'clause-fails').toBe(fails);
        },
      }),
      law(clauseCheck, {
        says: 'a heap of which nothing was told passes and fails nothing: the grower did not say',
        cases,
        inputs: (input) => [{ ...input, heap: {} }],
        expects: ([told]) => {
          for (const { verdict, why } of findings(told)) {
            expect(verdict).toBe('not-stated');
            expect(why).toBe('grower-silent');
          }
        },
      }),
      law(clauseCheck, {
        says: 'a clause more never makes a code pass that did not',
        cases: fc.tuple(cases, clause),
        inputs: ([input, more]) => [
          input,
          {
            ...input,
            codes: input.codes.map((code) => ({ ...code, clauses: [...code.clauses, more] })),
          },
        ],
        expects: ([fewer, more], [, { kind }]) => {
          // A clause about stuff may end a silence; a failure it never ends.
          if (fewer?.standing === 'clause-fails') expect(more?.standing).toBe('clause-fails');
          if (fewer?.standing === 'ask-first' && kind !== 'allows' && kind !== 'bars' && kind !== 'scraps-buried')
            expect(more?.standing).not.toBe('clauses-pass');
        },
      }),
    ],
  },
};
