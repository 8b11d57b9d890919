import { describe, expect, it } from 'vitest';
import { check } from '../catalogue/index.ts';
import { createDraws } from '../estimate/index.ts';
import { mildAir_degC } from '../heap/index.ts';
import { USUAL_DOME } from './heap-follow.ts';
import { shapeOn, tallestHeap_m } from './heap-place.ts';
import { heapRun } from './heap-run.ts';
import type { HeapRunInput } from './heap-run-input.ts';
import type { HeapShape } from './shape.ts';

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
      const winter = { weather: { still: { temp_degC: -5 } }, days: 20, members: 16, acts: [], start_degC };
      const found = heapRun.run({ ...heapRun.example, ...winter }, needs);
      if (!found.ok) throw new RangeError(JSON.stringify(found.problems));
      return found.value;
    };
    const [cold, warm] = [from(-5), from(30)];
    expect([cold.core_degC.p50[0], warm.core_degC.p50[0]]).toEqual([-5, 30]);
    expect(warm.heats.met).toBeGreaterThan(cold.heats.met);
  });

  it('keeps its blanket as deep as it lay when its walls change', () => {
    const met = (acts: HeapRunInput['acts']) => {
      const told = { ...kept, cover: 'straw' as const, coverDepth_m: 0.9, walls: 'none' as const, days: 12, acts };
      const found = heapRun.run(told, needs);
      if (!found.ok) throw new RangeError(JSON.stringify(found.problems));
      return found.value.core_degC.p50;
    };
    expect(met([{ at_day: 3, act: 'stand', walls: 'none' }])).toEqual(met([]));
  });

  it('that has no nitrogen loses none of it', () => {
    const ingredients = [{ material: 'charcoal', amount: { mass_kg: 40 } }];
    const found = heapRun.run({ ...heapRun.example, ingredients, acts: [], days: 5, members: 8 }, needs);
    expect(found.ok && found.value.nitrogenLost_pctNitrogen.p50).toBe(0);
  });

  describe('turned into another bay or form', () => {
    const from: HeapShape = { form: 'box', width_m: 1.2, depth_m: 1.2, height_m: 1 };
    const turnedInto = (into: HeapShape | undefined, told: Partial<HeapRunInput> = {}) => {
      const acts = [{ at_day: 3, act: 'turn' as const, into }];
      const found = heapRun.run({ ...kept, shape: from, days: 6, acts, ...told }, needs);
      if (!found.ok) throw new RangeError(JSON.stringify(found.problems));
      return found.value;
    };

    it('of the form it has, it is turned where it lies', () => {
      const {
        places: [moved],
        ...there
      } = turnedInto(from);
      const {
        places: [stayed],
        ...here
      } = turnedInto(undefined);
      expect(there).toEqual(here);
      // It is fullest on the first day, which lies in the first place of both.
      expect(moved?.volume_m3).toEqual(stayed?.volume_m3);
    });

    it('of half the ground, it stands twice as high as of the whole, for as much stuff fills it', () => {
      const whole = turnedInto(from).places[1];
      const half = turnedInto({ ...from, width_m: 0.6 }).places[1];
      expect(half?.volume_m3).toEqual(whole?.volume_m3);
      expect((half?.height_m.p50 ?? Number.NaN) / (whole?.height_m.p50 ?? Number.NaN)).toBeCloseTo(2, 9);
      expect(whole?.height_m.p50).toBeCloseTo((whole?.volume_m3.p50 ?? Number.NaN) / 1.2 ** 2, 9);
    });

    it('says so where it stands higher than heaps are commonly held to bear, and not where a drum or a trench holds it', () => {
      const slim: HeapShape = { ...from, width_m: 0.6, depth_m: 0.6 };
      const tower = turnedInto(slim);
      expect(tower.places[1]?.height_m.p50).toBeGreaterThan(tallestHeap_m);
      expect(tower.notes).toContain('stands-high');
      expect(turnedInto(undefined, { shape: slim }).notes).toContain('stands-high');
      expect(turnedInto(from).notes).not.toContain('stands-high');
      expect(turnedInto({ form: 'drum', diameter_m: 2, length_m: 1 }).notes).not.toContain('stands-high');
    });

    it('of another form is another heap, from that day on and no earlier', () => {
      const cone = turnedInto({ form: 'cone', diameter_m: 2, height_m: 0.5 });
      const box = turnedInto(from);
      const before = cone.day.filter((day) => day < 3).length;
      expect(cone.core_degC.p50.slice(0, before)).toEqual(box.core_degC.p50.slice(0, before));
      expect(cone.core_degC.p50.at(-1)).not.toBe(box.core_degC.p50.at(-1));
      expect(cone.places.map(({ from_day, form }) => [from_day, form])).toEqual([
        [0, 'box'],
        [3, 'cone'],
      ]);
    });

    it('lies in the last place that it was turned into, in whatever order they are told', () => {
      const cone: HeapShape = { form: 'cone', diameter_m: 2, height_m: 1 };
      const told = {
        shape: from,
        acts: [
          { at_day: 9, act: 'turn' as const, into: cone },
          { at_day: 4, act: 'turn' as const, into: { ...from, width_m: 2 } },
          { at_day: 6, act: 'turn' as const },
        ],
      };
      expect([0, 3.9, 4, 8, 9, 40].map((day) => shapeOn(told, day))).toEqual([
        from,
        from,
        { ...from, width_m: 2 },
        { ...from, width_m: 2 },
        cone,
        cone,
      ]);
      expect(shapeOn({}, 5)).toEqual(USUAL_DOME);
    });
  });

  it('has no climate whose warmest month is the colder', () => {
    const climate = { warmest_degC: 3, coldest_degC: 17, start_day: 80 };
    expect(check(heapRun.input, { ...kept, weather: { climate } })).toMatchObject({
      ok: false,
      problems: [{ wanted: 'no colder than the coldest month' }],
    });
  });
});
