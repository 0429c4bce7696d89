import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { withBrowser } from './bench.ts';

const { openBench } = withBrowser();

const dialog = (page: Page) => page.getByRole('dialog');
const focusedName = (page: Page) => page.evaluate(() => document.activeElement?.getAttribute('aria-label'));

test('a number leads to its working and back by keyboard alone, from a limit and from a table', async () => {
  const page = await openBench();
  const limit = page.getByRole('button', {
    name: /^93\s°C, Film, hottest spot, resistor 4: how is it computed\?$/,
  });
  await limit.focus();
  const name = await focusedName(page);
  await page.keyboard.press('Enter');
  await dialog(page)
    .getByRole('heading', { name: /^Limit: film, hottest spot, resistor 4: 93/ })
    .waitFor();
  // The equation is set: a quotient has a line, and the values put in end with the figure itself.
  await expect
    .poll(() => dialog(page).locator('article math').nth(1).textContent())
    .toMatch(/=\s*3\d\d(\.\d+)?\s*K$/);
  const link = dialog(page)
    .locator('article')
    .getByRole('link', { name: /^step / })
    .first();
  await link.focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => page.evaluate(() => document.activeElement?.closest('details')?.open)).toBe(true);
  await page.keyboard.press('Escape');
  await expect.poll(() => dialog(page).count()).toBe(0);
  expect(await focusedName(page)).toBe(name);

  await page.getByText('Table: Every sink').focus();
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: /Hottest plate, Sink 1: how/ }).waitFor();
  await page.keyboard.press('Tab');
  // A table that scrolls is a stop of its own.
  if (!(await focusedName(page))?.includes('how is it')) await page.keyboard.press('Tab');
  expect(await focusedName(page)).toMatch(/Hottest plate, Sink 1: how is it computed\?$/);
  await page.keyboard.press('Enter');
  await dialog(page)
    .getByRole('heading', { name: /^Hottest plate of sink 1: / })
    .waitFor();
  await page.keyboard.press('Escape');
  await expect.poll(() => focusedName(page)).toMatch(/Hottest plate, Sink 1/);
  // Of a table only the first number is a stop; arrows lead to the others.
  await page.keyboard.press('ArrowDown');
  expect(await focusedName(page)).toMatch(/Hottest plate, Sink 2: how is it computed\?$/);
  await page.keyboard.press('ArrowRight');
  expect(await focusedName(page)).toMatch(/Sink 2: how is it computed\?$/);
});

test('every number that offers a working has one', async () => {
  const page = await openBench();
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
  });
  await expect.poll(() => page.locator('[data-figure]').count()).toBeGreaterThan(150);
  const offered = await page.evaluate(() => [
    ...new Set(
      [...document.querySelectorAll<HTMLElement>('[data-figure]')].map(({ dataset }) => dataset.figure ?? ''),
    ),
  ]);
  await page.locator('[data-figure="flow"]').first().click();
  await dialog(page)
    .getByRole('heading', { name: /^Air moved: / })
    .waitFor();
  const worked = await dialog(page)
    .getByRole('combobox', { name: 'Figure' })
    .locator('option')
    .evaluateAll((options) => options.map((option) => (option as HTMLOptionElement).value));
  expect(offered.filter((id) => !worked.includes(id))).toEqual([]);
});
