/** @typedef {{ passed: number, failed: number, skipped: number }} Tally */

/**
 * What is read of the JSON report of vitest.
 * @typedef {object} Report
 * @property {readonly { status: string, assertionResults: readonly { status: string }[] }[]} testResults
 */

/**
 * Counts the tests of a run. A file that failed without a failed test in it (it could not be loaded, or its
 * setting up or clearing away failed) counts as one failure, and so does a run that failed with none to show.
 * @param {Report | undefined} report nothing when the run left none
 * @param {number} exitCode of the run
 * @returns {Tally}
 */
export function tallyOf(report, exitCode) {
  const tally = { passed: 0, failed: 0, skipped: 0 };
  for (const file of report?.testResults ?? []) {
    const statuses = file.assertionResults.map(({ status }) => status);
    const failed = statuses.filter((status) => status === 'failed').length;
    const passed = statuses.filter((status) => status === 'passed').length;
    tally.passed += passed;
    tally.failed += file.status === 'failed' ? Math.max(failed, 1) : failed;
    tally.skipped += statuses.length - passed - failed;
  }
  if (exitCode !== 0 && tally.failed === 0) tally.failed = 1;
  return tally;
}

/**
 * @param {readonly Tally[]} tallies
 * @returns {Tally}
 */
export function sumTallies(tallies) {
  return {
    passed: sum(tallies.map(({ passed }) => passed)),
    failed: sum(tallies.map(({ failed }) => failed)),
    skipped: sum(tallies.map(({ skipped }) => skipped)),
  };
}

/**
 * @param {readonly number[]} numbers
 * @returns {number}
 */
function sum(numbers) {
  return numbers.reduce((all, one) => all + one, 0);
}

/**
 * The last line of `npm test`.
 * @param {Tally} tally
 * @returns {string}
 */
export function lastLine({ passed, failed, skipped }) {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}

/**
 * Whether the run is good: nothing failed, something ran, and on CI nothing was left out.
 * @param {Tally} tally
 * @param {boolean} isCi
 * @returns {boolean}
 */
export function isGood({ passed, failed, skipped }, isCi) {
  return failed === 0 && passed > 0 && (skipped === 0 || !isCi);
}
