import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled, root } from '../../src/cli/prepare.mjs';
import { provideBrowserTools } from './browserTools.mjs';
import { runProgram } from './runProgram.mjs';
import { countTests } from './testCounts.mjs';

/**
 * @typedef {object} Result
 * @property {boolean} ok
 * @property {string} output whole output of the step, shown if it failed
 * @property {string} [detail] a few words for its line
 * @property {import('./testCounts.mjs').Counts} [counts] only where the step runs tests
 */

/**
 * One line after the other; what stands on one line runs at the same time: there is a core for the longest of them, and
 * one for the others.
 * @type {readonly (readonly { name: string, run: () => Promise<Result> }[])[]}
 */
const lines = [
  [
    { name: 'typecheck', run: () => runScript('typecheck') },
    { name: 'lint', run: () => runScript('lint') },
    { name: 'deps', run: () => runScript('deps') },
    { name: 'knip', run: () => runScript('knip') },
  ],
  [{ name: 'build', run: buildAfresh }],
  [
    { name: 'core', run: () => runTests('core') },
    { name: 'ui', run: () => runTests('ui') },
  ],
  [{ name: 'browser', run: runBrowserTests }],
  [{ name: 'size', run: runSize }],
];
const steps = lines.flat();

/**
 * `npm test`: every check in turn, also after a failure, so that one run tells everything. The last line has the
 * tests of all projects; a failed step that is no test counts as one failure.
 * @param {readonly string[]} wanted names of steps; all if empty
 */
export async function runSuite(wanted) {
  const unknown = wanted.filter((name) => !steps.some((step) => step.name === name));
  if (unknown.length > 0) {
    console.error(`No step ${unknown.join(', ')}. Steps: ${steps.map(({ name }) => name).join(' ')}`);
    process.exitCode = 2;
    return;
  }
  if (!ensureInstalled()) {
    console.log('0 passed, 1 failed');
    process.exitCode = 1;
    return;
  }
  const results = [];
  for (const line of lines) {
    const chosen = line.filter(({ name }) => wanted.length === 0 || wanted.includes(name));
    results.push(...(await Promise.all(chosen.map(runStep))));
  }
  conclude(results);
}

/** @param {{ name: string, run: () => Promise<Result> }} step */
async function runStep({ name, run }) {
  const start_ms = performance.now();
  const result = await run();
  const time = `${((performance.now() - start_ms) / 1000).toFixed(1)} s`;
  const word = result.ok ? 'ok    ' : 'FAILED';
  if (!result.ok) console.log(result.output.trimEnd());
  console.log(`${word} ${name.padEnd(10)} ${time.padStart(7)}  ${result.detail ?? ''}`.trimEnd());
  return result;
}

/** @param {readonly Result[]} results */
function conclude(results) {
  const sum = { passed: 0, failed: 0, skipped: 0 };
  for (const { ok, counts = { passed: 0, failed: Number(!ok), skipped: 0 } } of results) {
    sum.passed += counts.passed;
    sum.failed += counts.failed;
    sum.skipped += counts.skipped;
  }
  const ranTests = results.some(({ counts }) => counts !== undefined);
  const isGood = sum.failed === 0 && results.every(({ ok }) => ok) && (sum.passed > 0 || !ranTests);
  process.exitCode = isGood ? 0 : 1;
  console.log(
    `${sum.passed} passed, ${sum.failed} failed${sum.skipped > 0 ? `, ${sum.skipped} skipped` : ''}`,
  );
}

/**
 * @param {string} name a script of package.json
 * @returns {Promise<Result>}
 */
function runScript(name) {
  return runProgram('npm', ['run', '--silent', name]);
}

/** Without what an earlier build left, so that nothing later can pass on it. */
function buildAfresh() {
  rmSync(join(root, 'dist'), { recursive: true, force: true });
  return runScript('build');
}

/** @returns {Promise<Result>} */
async function runSize() {
  const result = await runScript('size');
  return { ...result, detail: result.output.trim().split('\n').at(-1) ?? '' };
}

/**
 * @param {string} project of the vitest section in vite.config.ts
 * @param {NodeJS.ProcessEnv} [env]
 * @returns {Promise<Result>}
 */
async function runTests(project, env) {
  const report = join(root, '.cache', `${project}.json`);
  rmSync(report, { force: true });
  const { ok, output } = await runProgram(
    process.execPath,
    [
      join(root, 'node_modules/vitest/vitest.mjs'),
      'run',
      `--project=${project}`,
      '--reporter=default',
      '--reporter=json',
      `--reporter=${join(root, 'tests/helpers/evidence/reporter.ts')}`,
      `--outputFile.json=${report}`,
    ],
    env,
  );
  const counts = countTests(report, ok);
  const detail = `${counts.passed} passed${counts.failed > 0 ? `, ${counts.failed} failed` : ''}`;
  return { ok: ok && counts.failed === 0, output, detail, counts };
}

/** @returns {Promise<Result>} */
async function runBrowserTests() {
  const tools = provideBrowserTools();
  if (tools.missing !== null) return { ok: false, output: tools.missing };
  return runTests('browser', { CHROMIUM: tools.chromium });
}
