import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { answerTo, withBrowser } from './bench.ts';

const { openBench } = withBrowser();
const question = (page: Page) => page.getByRole('region', { name: 'What size do I need?', exact: true });
const sentence = (page: Page) => answerTo(page, 'What size do I need?').textContent();

test('sizes follow the design in the workers; fins are found on demand, drawn, and one set is taken and undone', async () => {
  const page = await openBench();
  await expect.poll(() => sentence(page)).toMatch(/lacks the 1\.25/);
  await question(page).getByLabel('Target').selectOption({ label: 'Kelvin below every limit' });
  await expect.poll(() => sentence(page)).toMatch(/^Kept 10/);
  await question(page).getByRole('button', { name: 'Find the best fins' }).click();
  const found = question(page).getByRole('region', { name: /^Best fins of every count/ });
  await expect.poll(() => found.getByRole('row').count(), { timeout: 30_000 }).toBeGreaterThan(3);
  await question(page)
    .getByText('Coolest film at every sound level', { exact: true })
    .scrollIntoViewIfNeeded();
  await expect.poll(() => question(page).locator('svg .recharts-line').count()).toBe(3);
  await found.getByRole('button', { name: /^Take: 7 fins/ }).click();
  await expect.poll(() => page.getByText(/7 fins of 1/).count()).toBeGreaterThan(0);
  await expect
    .poll(() =>
      question(page)
        .getByText(/of the design or the rules before/)
        .count(),
    )
    .toBe(1);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect
    .poll(() =>
      question(page)
        .getByText(/of the design or the rules before/)
        .count(),
    )
    .toBe(0);
});

test('on a phone nothing of it reaches beyond the page', async () => {
  const page = await openBench({ viewport: { width: 390, height: 844 } });
  await question(page).scrollIntoViewIfNeeded();
  await expect.poll(() => question(page).getByRole('listitem').count()).toBeGreaterThan(10);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
});
