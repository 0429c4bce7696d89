import { onPage, rest } from './page.mjs';

/**
 * 100,000 boxes drawn in real Chromium on the built page: how long that takes, and how long the page could not have taken
 * a key meanwhile. The reference is the same page at rest for as long.
 */
const draws = '100000';

/** @param {import('playwright').Page} page */
const longTasks = (page) =>
  page.evaluate(() => {
    const { tasks } = /** @type {{ tasks: number[] }} */ (/** @type {unknown} */ (window));
    return tasks.splice(0);
  });

/** @param {string} name @param {readonly number[]} tasks */
function report(name, tasks) {
  const longest = Math.max(0, ...tasks);
  console.log(`  ${name.padEnd(14)} ${tasks.length} tasks over 50 ms, the longest ${longest.toFixed(0)} ms`);
}

await onPage(async (page) => {
  const question = page.locator('#what-if-parts-vary');
  await question.waitFor();
  await question.scrollIntoViewIfNeeded();
  await question.getByLabel('Boxes to draw').selectOption(draws);
  await rest(4000);
  await page.evaluate(() => {
    const tasks = /** @type {number[]} */ ([]);
    Object.assign(window, { tasks });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) tasks.push(duration);
    }).observe({ type: 'longtask' });
  });
  const start_ms = performance.now();
  await question.getByRole('button', { name: 'Draw boxes' }).click();
  await question.getByText('All boxes drawn.').waitFor({ timeout: 120_000 });
  const taken_ms = performance.now() - start_ms;
  await rest(500);
  const drawing = await longTasks(page);
  await rest(taken_ms);
  const resting = await longTasks(page);
  console.log(
    `${Number(draws).toLocaleString('en-GB')} boxes drawn in the page: ${(taken_ms / 1000).toFixed(1)} s`,
  );
  report('while drawing', drawing);
  report('at rest', resting);
});
