import { readFileSync } from 'node:fs';

/** @typedef {{ passed: number, failed: number, skipped: number }} Counts */

/**
 * Tests of one run, from the file its JSON reporter wrote. A test file that failed without a failed test, because it
 * could not be loaded or prepared, counts as one failure; so does a run that failed, or tested nothing, without one.
 * @param {string} report
 * @param {boolean} ok whether the run itself ended well
 * @returns {Counts}
 */
export function countTests(report, ok) {
  const run = read(report);
  if (run === null) return { passed: 0, failed: 1, skipped: 0 };
  const broken = run.testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.every((test) => test.status !== 'failed'),
  );
  const passed = run.numPassedTests;
  const failed = run.numFailedTests + broken.length;
  return {
    passed,
    failed: failed === 0 && (!ok || passed === 0) ? 1 : failed,
    skipped: run.numPendingTests + run.numTodoTests,
  };
}

/**
 * @param {string} report
 * @returns {{
 *   numPassedTests: number, numFailedTests: number, numPendingTests: number, numTodoTests: number,
 *   testResults: { status: string, assertionResults: { status: string }[] }[],
 * } | null}
 */
function read(report) {
  try {
    return JSON.parse(readFileSync(report, 'utf8'));
  } catch {
    return null;
  }
}
