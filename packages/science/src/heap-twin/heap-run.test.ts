import { describe, expect, it } from 'vitest';
import { check } from '../catalogue/index.ts';
import { createDraws } from '../estimate/index.ts';
import { heapRun } from './heap-run.ts';
import type { HeapRunInput } from './heap-run-input.ts';

const needs = { draws: createDraws() };
const kept: HeapRunInput = {
  ...heapRun.example,
  walls: 'insulated',
  cover: 'lid',
  shelter: 'open',
  weather: { still: { temp_degC: 5, wind_mPerS: 4 } },
  days: 12,
  members: 8,
  acts: [],
};

function coreOf(acts: HeapRunInput['acts']): readonly number[] {
  const found = heapRun.run({ ...kept, acts }, needs);
  if (!found.ok) throw new RangeError(JSON.stringify(found.problems));
  return found.value.core_degC.p50;
}

describe('what a heap would do', () => {
  it('leaves its standing as it was where a change does not name it, in whatever order the changes are told', () => {
    const named = coreOf([
      { at_day: 2, act: 'stand', cover: 'straw', walls: 'insulated', shelter: 'open' },
      { at_day: 5, act: 'stand', cover: 'straw', walls: 'none', shelter: 'open' },
    ]);
    expect(
      coreOf([
        { at_day: 5, act: 'stand', walls: 'none' },
        { at_day: 2, act: 'stand', cover: 'straw' },
      ]),
    ).toEqual(named);
    // And walls matter, or the two would be alike whatever stays.
    expect(coreOf([{ at_day: 2, act: 'stand', cover: 'straw' }])).not.toEqual(named);
  });

  it('asks for the care that its stuff asks for', () => {
    const found = heapRun.run(kept, needs);
    expect(found.ok && found.value.cautions).toContain('manure-pathogens');
  });

  it('has no climate whose warmest month is the colder', () => {
    const climate = { warmest_degC: 3, coldest_degC: 17, start_day: 80 };
    expect(check(heapRun.input, { ...kept, weather: { climate } })).toMatchObject({
      ok: false,
      problems: [{ wanted: 'no colder than the coldest month' }],
    });
  });
});
