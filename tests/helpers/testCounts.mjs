import { readFileSync } from 'node:fs';

/** @typedef {{ passed: number, failed: number, skipped: number }} Counts */

/**
 * Tests of one run, from the file its JSON reporter wrote. A test file that could not even be loaded counts as one
 * failure, and so does a run that failed, or tested nothing, without a failed test to show.
 * @param {string} report
 * @param {boolean} ok whether the run itself ended well
 * @returns {Counts}
 */
export function countTests(report, ok) {
  const run = read(report);
  if (run === null) return { passed: 0, failed: 1, skipped: 0 };
  const unloaded = run.testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.length === 0,
  );
  const passed = run.numPassedTests;
  const failed = run.numFailedTests + unloaded.length;
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
 *   testResults: { status: string, assertionResults: unknown[] }[],
 * } | null}
 */
function read(report) {
  try {
    return JSON.parse(readFileSync(report, 'utf8'));
  } catch {
    return null;
  }
}
