import { describe, expect, it } from 'vitest';
import { isGood, lastLine, sumTallies, tallyOf } from './tally.mjs';

const file = (status: string, ...statuses: readonly string[]) => ({
  status,
  assertionResults: statuses.map((one) => ({ status: one })),
});

describe('the count of a run', () => {
  it('counts passed, failed, and everything that did not run', () => {
    const report = {
      testResults: [file('passed', 'passed', 'skipped', 'todo', 'pending'), file('failed', 'failed', 'passed')],
    };
    expect(tallyOf(report, 1)).toEqual({ passed: 2, failed: 1, skipped: 3 });
  });

  it('counts a file that could not be loaded as one failure', () => {
    expect(tallyOf({ testResults: [file('failed'), file('passed', 'passed')] }, 1)).toEqual({
      passed: 1,
      failed: 1,
      skipped: 0,
    });
  });

  it('counts a file whose clearing away failed as one failure', () => {
    expect(tallyOf({ testResults: [file('failed', 'passed', 'passed')] }, 1)).toEqual({
      passed: 2,
      failed: 1,
      skipped: 0,
    });
  });

  it('counts a run that failed with nothing to show as one failure', () => {
    expect(tallyOf(undefined, 1)).toEqual({ passed: 0, failed: 1, skipped: 0 });
    expect(tallyOf({ testResults: [file('passed', 'passed')] }, 1)).toEqual({ passed: 1, failed: 1, skipped: 0 });
  });

  it('adds up', () => {
    const tallies = [
      { passed: 1, failed: 2, skipped: 3 },
      { passed: 10, failed: 20, skipped: 30 },
    ];
    expect(sumTallies(tallies)).toEqual({ passed: 11, failed: 22, skipped: 33 });
  });
});

describe('the last line', () => {
  it('names what was skipped only where something was', () => {
    expect(lastLine({ passed: 12, failed: 0, skipped: 0 })).toBe('12 passed, 0 failed');
    expect(lastLine({ passed: 12, failed: 1, skipped: 3 })).toBe('12 passed, 1 failed, 3 skipped');
  });
});

describe('a good run', () => {
  it('has no failure and at least one test', () => {
    expect(isGood({ passed: 1, failed: 0, skipped: 0 }, true)).toBe(true);
    expect(isGood({ passed: 1, failed: 1, skipped: 0 }, false)).toBe(false);
    expect(isGood({ passed: 0, failed: 0, skipped: 0 }, false)).toBe(false);
  });

  it('may skip at a desk and not on CI', () => {
    expect(isGood({ passed: 1, failed: 0, skipped: 1 }, false)).toBe(true);
    expect(isGood({ passed: 1, failed: 0, skipped: 1 }, true)).toBe(false);
  });
});
