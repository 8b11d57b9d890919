import { isMessageKey } from '@loamwright/words';
import { expect } from 'vitest';
import type { ListedCalculation, Outcome } from '../../catalogue/index.ts';
import { cautionIds } from '../../caution/index.ts';

/** What is added up in binary may differ from its bound in the last digits. */
const ROUNDING = 1e-9;

/** Percentages that are differences, and so may be below 0. */
const differences: ReadonlySet<string> = new Set(['nitrogenAtRiskMore_pctNitrogen', 'wetLost_pctWet']);

/** Everything that must hold of any answer of any calculation, whatever it was asked. */
export function expectSound(outcome: Outcome<unknown>, { cautions }: ListedCalculation): void {
  if (!outcome.ok) {
    expect(outcome.problems.length).toBeGreaterThan(0);
    for (const { code, path, found, wanted } of outcome.problems) {
      expect(isMessageKey(`problem.${code}`), `words for ${code}`).toBe(true);
      for (const text of [path, found, wanted]) expect(text).toBeTypeOf('string');
    }
    return;
  }
  visit(outcome.value, '', (value, path, name) => {
    if (typeof value === 'number') {
      expect(Number.isFinite(value), `${path} is ${value}`).toBe(true);
      return;
    }
    if (typeof value !== 'object' || value === null) return;
    if ('p10' in value && 'p50' in value && 'p90' in value) {
      for (const [at, one] of momentsOf(value as Ordered | Course)) expectOrdered(one, path + at);
    }
    if ('met' in value && 'of' in value) expectCounted(value as Counted, path);
    if (name === 'cautions') {
      for (const id of value as readonly never[]) {
        expect(cautionIds, path).toContain(id);
        expect(cautions, `${path}: not among those it says it may show`).toContain(id);
      }
    }
  });
  visit(outcome.value, '', (value, path, name) => {
    if (!/_pct[A-Z]/u.test(name) || differences.has(name)) return;
    for (const one of numbersOf(value)) {
      expect(one, path).toBeGreaterThanOrEqual(-ROUNDING);
      expect(one, path).toBeLessThanOrEqual(100 + ROUNDING);
    }
  });
}

interface Ordered {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

/** A range at each time of a course. */
interface Course {
  readonly p10: readonly number[];
  readonly p50: readonly number[];
  readonly p90: readonly number[];
}

/** One range, or those of a course with their places. */
function momentsOf(range: Ordered | Course): readonly (readonly [string, Ordered])[] {
  if (!isCourse(range)) return [['', range]];
  const { p10, p50, p90 } = range;
  expect([p10.length, p90.length]).toEqual([p50.length, p50.length]);
  return p50.map((middle, t) => [`[${t}]`, { p10: p10[t] ?? Number.NaN, p50: middle, p90: p90[t] ?? Number.NaN }]);
}

function isCourse(range: Ordered | Course): range is Course {
  return Array.isArray(range.p50);
}

function expectOrdered({ p10, p50, p90 }: Ordered, path: string): void {
  expect(p10, `${path}: p10 above p50`).toBeLessThanOrEqual(p50);
  expect(p50, `${path}: p50 above p90`).toBeLessThanOrEqual(p90);
}

interface Counted {
  readonly met: number;
  readonly of: number;
}

function expectCounted({ met, of }: Counted, path: string): void {
  expect(Number.isInteger(met) && met >= 0 && met <= of, `${path}: ${met} of ${of}`).toBe(true);
}

/** A number; the three of an estimate; or those of the value that is judged. */
function numbersOf(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  if ('value' in value) return numbersOf(value.value);
  if ('p50' in value) return Object.values(value).filter((one) => typeof one === 'number');
  return [];
}

/** Walks data, telling each value's path and the name of the field it stands in. */
function visit(
  data: unknown,
  name: string,
  tell: (value: unknown, path: string, name: string) => void,
  path = '',
): void {
  tell(data, path, name);
  if (Array.isArray(data)) {
    for (const [i, item] of data.entries()) visit(item, '', tell, `${path}[${i}]`);
  } else if (typeof data === 'object' && data !== null) {
    for (const [key, value] of Object.entries(data)) visit(value, key, tell, path === '' ? key : `${path}.${key}`);
  }
}
