import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { pailCover } from './pail-cover.ts';
import type { PailCoverInput } from './pail-input.ts';
import { covered, pails } from './testing/pails.ts';

const needs = { draws: createDraws() };

/** Every number in an answer. */
function numbersIn(data: unknown): readonly number[] {
  if (typeof data === 'number') return [data];
  return typeof data === 'object' && data !== null ? Object.values(data).flatMap(numbersIn) : [];
}

/** Every estimate in an answer. */
function estimatesIn(data: unknown): readonly { p10: number; p50: number; p90: number }[] {
  if (typeof data !== 'object' || data === null) return [];
  if ('p10' in data && 'p50' in data && 'p90' in data) return [data as { p10: number; p50: number; p90: number }];
  return Object.values(data).flatMap(estimatesIn);
}

function pailTimes(input: PailCoverInput, times: number): PailCoverInput {
  return {
    ...input,
    pail: input.pail.map((one) => {
      const { amount } = one;
      if (!('measure' in amount) || typeof amount.count !== 'number') throw new Error('pails are counted here');
      return { ...one, amount: { ...amount, count: times * amount.count } };
    }),
  };
}

const plenty = pails.map(
  ({ dry, ...rest }): PailCoverInput => ({
    ...rest,
    ...(dry === undefined ? {} : { dry: dry.map(({ material }) => ({ material })) }),
  }),
);

describe('laws of the pail', () => {
  it('never NaN, never endless, never negative, ranges in order, and the answer fits its schema', () => {
    fc.assert(
      fc.property(pails, (input) => {
        const outcome = pailCover.run(input, needs);
        if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
        expect(numbersIn(outcome.value).every((one) => Number.isFinite(one) && one >= 0)).toBe(true);
        expect(estimatesIn(outcome.value).every(({ p10, p50, p90 }) => p10 <= p50 && p50 <= p90)).toBe(true);
        expect(pailCover.output.safeParse(outcome.value).error).toBeUndefined();
      }),
      { seed: 3, numRuns: 60 },
    );
  });

  it('more in the pail never wants less dry stuff, and so many times the pail wants as many times of it', () => {
    fc.assert(
      fc.property(plenty, fc.double({ min: 1, max: 5, noNaN: true }), (input, times) => {
        const once = covered(input).options;
        const more = covered(pailTimes(input, times)).options;
        expect(more.map(({ material }) => material)).toEqual(once.map(({ material }) => material));
        more.forEach(({ better, least }, i) => {
          const before = once[i];
          if (before === undefined) throw new Error('one option each');
          // Rounding of floats only.
          expect(better.wet_kg.p50).toBeCloseTo(times * before.better.wet_kg.p50, 6);
          expect(least.wet_kg.p50).toBeCloseTo(times * before.least.wet_kg.p50, 6);
        });
      }),
      { seed: 4, numRuns: 40 },
    );
  });

  it('a wetter pail never wants less dry stuff (same dry mass, C:N unchanged)', () => {
    const mass_kg = 10;
    const dryAt = (moisture_pctWet: number): readonly number[] =>
      covered({
        pail: [
          {
            material: 'kitchen-scraps',
            amount: { mass_kg: mass_kg / (1 - moisture_pctWet / 100) },
            described: { moisture_pctWet },
          },
        ],
      }).options.map(({ better }) => better.wet_kg.p50);
    fc.assert(
      fc.property(
        fc.double({ min: 30, max: 90, noNaN: true }),
        fc.double({ min: 0, max: 8, noNaN: true }),
        (at, more) => {
          const drier = dryAt(at);
          dryAt(at + more).forEach((kg, i) => {
            expect(kg).toBeGreaterThanOrEqual((drier[i] ?? Number.NaN) - 1e-9);
          });
        },
      ),
      { seed: 5, numRuns: 40 },
    );
  });

  it('an older bin is never fuller, and what lies in it never weighs more', () => {
    const at = (age_days: number) =>
      covered({
        pail: [{ material: 'kitchen-scraps', amount: { measure: 'pail', count: 1 } }],
        layers: [
          { material: 'kitchen-scraps', amount: { measure: 'pail', count: 9 }, age_days },
          { material: 'straw', amount: { measure: 'bucket-20l', count: 9 }, age_days },
        ],
      }).now;
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 500 }), fc.integer({ min: 0, max: 500 }), (age_days, more) => {
        const young = at(age_days);
        const old = at(age_days + more);
        expect(old?.volume_m3.p50).toBeLessThanOrEqual((young?.volume_m3.p50 ?? Number.NaN) + 1e-12);
        expect(old?.stuff?.wet_kg.p50).toBeLessThanOrEqual((young?.stuff?.wet_kg.p50 ?? Number.NaN) + 1e-9);
      }),
      { seed: 6, numRuns: 30 },
    );
  });

  it('the same question has the same answer', () => {
    expect(covered(pailCover.example)).toEqual(covered(pailCover.example));
  });
});
