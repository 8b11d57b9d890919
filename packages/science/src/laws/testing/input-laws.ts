import fc from 'fast-check';
import { expect } from 'vitest';
import { beanTestCalculation } from '../../inputs/bean-test.ts';
import { inputCheck } from '../../inputs/input-check.ts';
import { sprayedIds } from '../../inputs/parameters.ts';
import { allMaterials, doubtfulInputs } from '../../material/index.ts';
import { type LawsOf, law } from './law.ts';

const stuffs = fc.constantFrom(...[...allMaterials, ...doubtfulInputs].map(({ id }) => id));

export const inputLaws: Readonly<Record<string, LawsOf>> = {
  'input-check': {
    scale: 'no scale law because whether something may go in does not hang on how much of it there is',
    others: [
      law(inputCheck, {
        says: 'what may go into a slow heap may go into a hot one',
        cases: fc.tuple(stuffs, fc.constantFrom(...sprayedIds)),
        inputs: ([stuff, sprayed]) => (['slow', 'hot'] as const).map((heap) => ({ stuff, heap, sprayed })),
        expects: ([slow, hot]) => {
          if (slow?.verdict === 'yes') expect(hot?.verdict).toBe('yes');
        },
      }),
      law(inputCheck, {
        says: 'waiting longer never turns a yes into anything else',
        cases: fc.tuple(
          stuffs,
          fc.constantFrom(...sprayedIds),
          fc.double({ min: 0, max: 8, noNaN: true }),
          fc.double({ min: 0, max: 8, noNaN: true }),
        ),
        inputs: ([stuff, sprayed, weeks, more]) =>
          [weeks, weeks + more].map((since) => ({ stuff, heap: 'hot' as const, sprayed, weeks: since })),
        expects: ([sooner, later]) => {
          if (sooner?.verdict === 'yes') expect(later?.verdict).toBe('yes');
        },
      }),
    ],
  },
  'bean-test': {
    scale: 'no scale law because pots are counted and leaves are looked at',
    others: [
      law(beanTestCalculation, {
        says: 'stuff whose beans are hurt is never called clear, and nothing is where the controls are hurt',
        cases: fc.record({
          pots: fc.integer({ min: 1, max: 12 }),
          controls: fc.integer({ min: 0, max: 12 }),
          hurt: fc.constantFrom('none' as const, 'slight' as const, 'moderate' as const, 'severe' as const),
          controlsNormal: fc.boolean(),
          weeks: fc.double({ min: 0, max: 6, noNaN: true }),
        }),
        inputs: (input) => [input],
        expects: ([answer], { hurt, controlsNormal }) => {
          if (hurt !== 'none') expect(answer?.verdict).not.toBe('clear');
          if (!controlsNormal) expect(answer?.verdict).toBe('void');
        },
      }),
    ],
  },
};
