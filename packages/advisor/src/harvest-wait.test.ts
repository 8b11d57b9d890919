import { fold } from '@loamwright/daybook';
import { testWriter } from '@loamwright/daybook/testing';
import { createDraws, likely } from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import { heapFacts, heapReport, heapYieldInput, waitNotes } from './index.ts';

const needs = { draws: createDraws() };
const speaker = createSpeaker({ locale: 'en', system: 'metric' });
const at = (day: number): string => `2026-05-${String(day).padStart(2, '0')}T12:00:00.000Z`;
const now = '2026-06-01T12:00:00.000Z';

/** A heap of straw and goat bedding, half of it spread on the kale, and then all that was left. */
function spreadOut(material = 'goat-bedding', raw = true, workedIn = true) {
  const writer = testWriter();
  writer.write('bed-set-up', 'kale', { name: 'Kale', area_m2: 12 }, { happened: at(1) });
  const layers = [
    { material: 'straw', mass_kg: 60, raw: false },
    { material, mass_kg: 180, raw },
  ];
  writer.write('heap-built', 'heap', { name: 'Heap', layers }, { happened: at(1) });
  writer.write('spread', 'kale', { of: { type: 'heap', id: 'heap', share: 0.5 }, workedIn }, { happened: at(9) });
  writer.write('spread', 'kale', { of: { type: 'heap', id: 'heap', share: 1 }, workedIn }, { happened: at(9) });
  const holding = fold(writer.entries, { now });
  const heap = holding.heaps.get('heap');
  if (heap === undefined) throw new RangeError('no heap');
  return { holding, heap };
}

describe('a heap that was spread', () => {
  it('keeps its make-up: on its page, for what it comes to, and for the rules of the place', () => {
    const { holding, heap } = spreadOut();
    expect(heap.phase).toBe('gone');
    const report = heapReport(holding, 'heap', now, needs);
    if (!report.ok) throw new RangeError('reported');
    expect(report.value.made.map(({ material, share }) => [material, share])).toEqual([
      ['goat-bedding', 0.75],
      ['straw', 0.25],
    ]);
    expect(speaker.tell(report.value.madeNote)).toContain('before it was taken');
    expect(report.value.safety.map((said) => speaker.tell(said)).join()).toContain('It counts as raw');
    const ingredients = heapYieldInput(heap, holding, now)?.ingredients ?? [];
    const masses = ingredients.map(({ amount }) => ('mass_kg' in amount ? likely(amount.mass_kg) : Number.NaN));
    expect(masses.reduce((sum, kg) => sum + kg, 0)).toBeCloseTo(240, 9);
    expect(heapFacts(heap, holding).stuff).toContain('farm-manure');
  });

  it('is begun anew by what is laid on once it was empty', () => {
    const { holding } = spreadOut();
    const writer = testWriter();
    for (const { kind, body, about, happened } of holding.inForce)
      writer.write(kind as never, about[0]?.id ?? '', body as never, { happened });
    writer.write('heap-fed', 'heap', { layers: [{ material: 'leaves', mass_kg: 10 }] }, { happened: at(12) });
    const heap = fold(writer.entries, { now }).heaps.get('heap');
    expect(heap?.went).toEqual([]);
    expect(heap?.layers.map(({ put }) => put.material)).toEqual(['leaves']);
  });

  // 7 CFR 205.203(c)(1): raw manure is incorporated 120 days before harvest where the crop touches soil, 90 where it does not.
  it('tells from which day the bed may be harvested', () => {
    const { holding, heap } = spreadOut();
    const told = waitNotes(holding, heap, now, needs).map((said) => speaker.tell(said));
    expect(told).toHaveLength(1);
    expect(told[0]).toContain('Kale on 9 May 2026');
    expect(told[0]).toContain('from 6 September 2026 where the crop touches soil');
    expect(told[0]).toContain('from 7 August 2026 where it does not');
  });

  it('left on top promises no day', () => {
    const { holding, heap } = spreadOut('goat-bedding', true, false);
    const told = waitNotes(holding, heap, now, needs).map((said) => speaker.tell(said));
    expect(told.join()).toContain('counts from the day it is worked in, 120 days');
  });

  it('of nothing raw asks for no wait', () => {
    const { holding, heap } = spreadOut('leaves', false);
    expect(waitNotes(holding, heap, now, needs)).toEqual([]);
  });
});
