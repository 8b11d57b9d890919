import { daybookLines, heapReport, heapsOverview, stockReport } from '@loamwright/advisor';
import { fold } from '@loamwright/daybook';
import { quarryLane } from '@loamwright/demo';
import { createDraws } from '@loamwright/science';
import { createSpeaker, type Saying } from '@loamwright/words';
import { describe, expect, it } from 'vitest';

const entries = quarryLane({ startDay: '2025-03-01', seed: 1 });
const now = '2026-03-01T12:00:00.000Z';
const holding = fold(entries, { now });
const needs = { draws: createDraws() };

describe.each(['us', 'metric'] as const)('the demo’s year, told in %s units', (system) => {
  const speaker = createSpeaker({ locale: 'en', system });
  const expectTold = (saying: Saying): void => expect(speaker.tell(saying)).not.toMatch(/undefined|NaN|\{/u);

  it('has a report for every heap', () => {
    for (const id of holding.heaps.keys()) {
      const report = heapReport(holding, id, now, needs);
      if (!report.ok) throw new Error(JSON.stringify(report.problems));
      const { headline, act, safety, acts, layers, lines, made, madeNote } = report.value;
      for (const saying of [headline, act.what, act.because, act.waiting, madeNote, ...act.checks, ...safety]) {
        expectTold(saying);
      }
      for (const { said } of [...acts, ...layers, ...lines, ...made]) expectTold(said);
    }
  });

  it('has a line for every entry and everything in store', () => {
    const told = daybookLines(entries, holding);
    expect(told).toHaveLength(entries.length);
    for (const { said, typed, remarks } of told) for (const saying of [said, ...typed, ...remarks]) expectTold(saying);
    for (const { said } of stockReport(holding, now).lines) expectTold(said);
  });

  it('begins the overview with the heap that asks for something', () => {
    const { heaps } = heapsOverview(holding, now, needs);
    expect(heaps.length).toBeGreaterThan(3);
    expect(heaps[0]?.act.urgency).not.toBe('no-hurry');
    for (const { headline } of heaps) expectTold(headline);
  });
});
