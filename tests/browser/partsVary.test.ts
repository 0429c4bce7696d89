import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { answerTo, field, withBrowser } from './bench.ts';

const { openBench } = withBrowser();
const question = (page: Page) => page.getByRole('region', { name: 'What if parts vary?', exact: true });
const sentence = (page: Page) => answerTo(page, 'What if parts vary?').textContent();

test('boxes are drawn in the workers, the verdict tells how many hold, and when that is out of date', async () => {
  const page = await openBench();
  const here = question(page);
  await here.getByLabel('Boxes to draw').selectOption('3000');
  await here.getByLabel('Built together').fill('12');
  await here.getByRole('button', { name: 'Draw boxes' }).click();
  await here.getByText('All boxes drawn.').waitFor({ timeout: 30_000 });
  expect(await sentence(page)).toMatch(
    /^9\d of 100 boxes built like this hold, .* all twelve of a batch hold/,
  );
  await here
    .getByText('Hottest film below its limit, over all boxes drawn', { exact: true })
    .scrollIntoViewIfNeeded();
  await expect.poll(() => here.locator('svg .recharts-bar-rectangle').count()).toBeGreaterThan(10);
  const verdict = page.getByText(/As parts vary, 9\d of 100 boxes hold, all twelve in \d+ of 100\./);
  await expect.poll(() => verdict.count()).toBe(1);
  await field(page, 'Slot width').fill('18 mm');
  await expect.poll(() => page.getByText(/^Out of date: 9\d of 100 boxes held/).count()).toBe(1);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect.poll(() => verdict.count()).toBe(1);
});

test('on a phone nothing of it reaches beyond the page, its spreads neither', async () => {
  const page = await openBench({ viewport: { width: 390, height: 844 } });
  await question(page)
    .getByText(/^Change what varies/)
    .click();
  await expect.poll(() => question(page).getByRole('combobox').count()).toBeGreaterThan(40);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
});
