import { describe, expect, it } from 'vitest';
import { check } from '../catalogue/index.ts';
import { createDraws } from '../estimate/index.ts';
import { mildAir_degC } from '../heap/index.ts';
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

  it('says that stuff was taken as cold as the air, where it stays cold and nobody said how warm it comes', () => {
    const notesOf = (told: Partial<HeapRunInput>): readonly string[] => {
      const found = heapRun.run({ ...heapRun.example, days: 5, members: 8, acts: [], ...told }, needs);
      if (!found.ok) throw new RangeError(JSON.stringify(found.problems));
      return found.value.notes;
    };
    const winter = { weather: { still: { temp_degC: 2 } } };
    expect(notesOf(winter)).toEqual(expect.arrayContaining(['may-stay-cold', 'taken-cold']));
    expect(notesOf({ ...winter, start_degC: 2 })).not.toContain('taken-cold');
    const straw = { ingredients: [{ material: 'straw', amount: { measure: 'barrow', count: 4 } }] };
    const mild = notesOf({ ...straw, weather: { still: { temp_degC: mildAir_degC } } });
    expect(mild).toContain('may-stay-cold');
    expect(mild).not.toContain('taken-cold');
  });

  it('gets hot no later where its stuff comes warm into cold air, and has its warmth from the first', () => {
    const from = (start_degC: number) => {
      const winter = { weather: { still: { temp_degC: 2 } }, days: 20, members: 16, acts: [], start_degC };
      const found = heapRun.run({ ...heapRun.example, ...winter }, needs);
      if (!found.ok) throw new RangeError(JSON.stringify(found.problems));
      return found.value;
    };
    const [cold, warm] = [from(2), from(30)];
    expect([cold.core_degC.p50[0], warm.core_degC.p50[0]]).toEqual([2, 30]);
    expect(warm.heats.met).toBeGreaterThan(cold.heats.met);
  });

  it('has no climate whose warmest month is the colder', () => {
    const climate = { warmest_degC: 3, coldest_degC: 17, start_day: 80 };
    expect(check(heapRun.input, { ...kept, weather: { climate } })).toMatchObject({
      ok: false,
      problems: [{ wanted: 'no colder than the coldest month' }],
    });
  });
});
