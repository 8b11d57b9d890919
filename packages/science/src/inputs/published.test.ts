import { describe, expect, it } from 'vitest';
import { check } from '../catalogue/index.ts';
import { createDraws } from '../estimate/index.ts';
import { allMaterials, doubtfulInputs } from '../material/index.ts';
import { type BeanTest, type BeanTestInput, beanTestCalculation } from './bean-test.ts';
import { heapKinds, type InputCheck, type InputCheckInput, inputCheck } from './input-check.ts';

const needs = { draws: createDraws() };

function may(input: InputCheckInput): InputCheck {
  const checked = check(inputCheck.input, input);
  const outcome = checked.ok ? inputCheck.run(checked.value, needs) : checked;
  if (!outcome.ok) throw new RangeError(JSON.stringify(outcome.problems));
  return outcome.value;
}

function beans(input: BeanTestInput): BeanTest {
  const outcome = beanTestCalculation.run(input, needs);
  if (!outcome.ok) throw new RangeError('an answer');
  return outcome.value;
}

describe('may this go in', () => {
  // Michigan State University Extension: fertiliser at once; weed-killer 2 to 3 mowings or 3 to 4 weeks; other sprays a week.
  it.each([
    ['fertiliser', {}, 'yes'],
    ['weed-killer', { mowings: 2 }, 'wait'],
    ['weed-killer', { mowings: 3 }, 'yes'],
    ['weed-killer', { weeks: 3 }, 'wait'],
    ['weed-killer', { weeks: 4 }, 'yes'],
    ['insecticide-fungicide', { weeks: 0.5 }, 'wait'],
    ['insecticide-fungicide', { weeks: 1 }, 'yes'],
    ['persistent', { weeks: 500 }, 'never'],
    ['unknown', {}, 'test-first'],
  ] as const)('clippings after %s %o: %s', (sprayed, since, verdict) => {
    expect(may({ stuff: 'grass-clippings', heap: 'slow', sprayed, ...since }).verdict).toBe(verdict);
  });

  // 21 CFR 112.53; a watershed fact sheet; Noble and Roberts 2004; Toronto Master Gardeners.
  it.each([
    ['human-waste', 'hot', 'never'],
    ['dog-cat-waste', 'hot', 'never'],
    ['rabbit-droppings', 'slow', 'yes'],
    ['diseased-plants', 'hot', 'yes'],
    ['diseased-plants', 'slow', 'not-here'],
    ['blighted-tubers', 'hot', 'never'],
    ['seeding-weeds', 'fed', 'not-here'],
    ['coal-ash', 'hot', 'never'],
    ['treated-wood', 'hot', 'never'],
    ['unknown-spray-hay-manure', 'hot', 'test-first'],
  ] as const)('%s into a %s heap: %s', (stuff, heap, verdict) => {
    expect(may({ stuff, heap }).verdict).toBe(verdict);
  });

  it('shows that experts differ over diseased plants', () => {
    expect(may({ stuff: 'diseased-plants', heap: 'hot' }).disputed?.source).toBe('toronto-blight');
  });

  it('answers for every material and doubtful input in every heap', () => {
    for (const { id } of [...allMaterials, ...doubtfulInputs])
      for (const heap of heapKinds) expect(may({ stuff: id, heap }).reason).not.toBe('');
  });
});

describe('the test with beans', () => {
  const done: BeanTestInput = { pots: 4, controls: 3, hurt: 'none', controlsNormal: true, weeks: 3 };

  // Oregon State and Washington State Universities; California on false alarms.
  it.each([
    [{}, 'clear'],
    [{ hurt: 'moderate' }, 'contaminated'],
    [{ hurt: 'slight' }, 'contaminated'],
    [{ hurt: 'severe', controlsNormal: false }, 'void'],
    [{ weeks: 1 }, 'too-soon'],
    [{ pots: 1 }, 'perhaps'],
    [{ hurt: 'slight', suspectParts: 3 }, 'perhaps'],
    [{ controls: 0, hurt: 'slight' }, 'perhaps'],
  ] as const)('%o: %s', (change, verdict) => {
    expect(beans({ ...done, ...change }).verdict).toBe(verdict);
  });

  it('tells how it is done', () => {
    expect(beans(done).how).toEqual({
      pots: { low: 3, high: 6 },
      pot_m: { low: 0.1, high: 0.13 },
      suspectParts: 2,
      seeds: 3,
      weeks: { low: 2, high: 3 },
    });
  });
});
