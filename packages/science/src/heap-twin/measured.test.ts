import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Found, findAll, type Lost, loseAll, measuredHeaps, trials, withTables } from './testing/measured.ts';
import written from './testing/measured-found.json' with { type: 'json' };

const then: readonly Found[] = written.found;
const lostThen: readonly Lost[] = written.lost;
const page = readFileSync(new URL('../../../../docs/models/heap-twin-measured.md', import.meta.url), 'utf8');
const now = findAll();
const lostNow = loseAll();

describe('the measured heaps', () => {
  it('have found figures each, and the page tells them', () => {
    expect(then.map(({ id }) => id)).toEqual(measuredHeaps.map(({ id }) => id));
    expect(lostThen.map(({ id }) => id)).toEqual(trials.map(({ id }) => id));
    expect(withTables(page, then, lostThen)).toBe(page);
  });

  // What is written is what the model gives now: half a kelvin for the last digits of another machine’s arithmetic, which
  // a heap near igniting multiplies. After a change of the model or its figures: node scripts/measured-heaps.mjs.
  it.each(now.map((found) => [found.id, found] as const))('%s is off by what is written', (id, found) => {
    const before = then.find((one) => one.id === id);
    expect(Math.abs(found.peak_degC.p50 - (before?.peak_degC.p50 ?? Number.NaN))).toBeLessThan(0.5);
    expect(Math.abs((found.meanOff_K ?? 0) - (before?.meanOff_K ?? 0))).toBeLessThan(0.5);
    expect(found.inBand).toBe(before?.inBand);
  });

  // What may be said of the model before any reading. A band of p10 to p90 ought to hold four in five; it holds seven of
  // ten highest readings and 16 of all 22, for heaps that heat fast start too slowly in it (the page says how). These bounds
  // keep it from growing worse.
  it('have their highest within the band of the model for most, and their readings for more than half', () => {
    const told = now.flatMap(({ measuredPeak_degC, peak_degC }) =>
      measuredPeak_degC === undefined ? [] : [{ measured: measuredPeak_degC, peak_degC }],
    );
    const held = told.filter(({ measured, peak_degC: { p10, p90 } }) => measured >= p10 - 1 && measured <= p90 + 1);
    expect(told.length).toBeGreaterThanOrEqual(10);
    expect(held.length).toBeGreaterThanOrEqual(told.length / 2);
    const readings = now.reduce((sum, one) => sum + one.readings, 0);
    const inBand = now.reduce((sum, { inBand: count = 0 }) => sum + count, 0);
    expect(inBand).toBeGreaterThan(readings / 2);
  });

  it.each(lostNow.map((lost) => [lost.id, lost] as const))('%s loses what is written', (id, lost) => {
    const before = lostThen.find((one) => one.id === id);
    const apart = lost.nitrogenLost_pctNitrogen.p50 - (before?.nitrogenLost_pctNitrogen.p50 ?? Number.NaN);
    expect(Math.abs(apart)).toBeLessThan(0.5);
  });

  // Shah et al. (abstract, read): sheeted heaps lost least nitrogen, then roofed, open, turned. The model has that order but for
  // turned ones, which lose as open ones do. Eklind and Kirchmann 2000 (abstract, read): household waste 70 %, with litter
  // 43 to 62; the model is below both, as the page tells. Their half keeps it from growing worse.
  it('of manure lose nitrogen within what was published of manure: sheeted least, open more than roofed', () => {
    const loss = (id: string): number =>
      lostNow.find((one) => one.id === id)?.nitrogenLost_pctNitrogen.p50 ?? Number.NaN;
    for (const id of ['cattle-sheeted', 'cattle-roofed', 'cattle-open', 'cattle-turned', 'feedlot']) {
      expect(loss(id), id).toBeGreaterThan(6);
      expect(loss(id), id).toBeLessThan(42);
    }
    expect(loss('cattle-roofed')).toBeGreaterThan(loss('cattle-sheeted'));
    expect(loss('cattle-open')).toBeGreaterThan(loss('cattle-roofed'));
    expect(loss('cattle-turned')).toBeGreaterThan(loss('cattle-roofed'));
    expect(loss('household-alone')).toBeGreaterThan(loss('household-straw'));
    expect(loss('household-alone')).toBeGreaterThan(70 / 2);
    expect(loss('household-straw')).toBeGreaterThan(43 / 2);
  });

  it('are told with a chance out of so many, not as certain', () => {
    for (const { heats } of now) expect(heats.of).toBe(64);
  });
});
