import type { Locator, Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { verdict, withBrowser } from './bench.ts';

const { openBench } = withBrowser();

const shortList = (page: Page) => page.getByRole('list', { name: 'The best changes', exact: true });
const title = (page: Page) => page.getByLabel('Title of the design');
const variant = (page: Page) => page.getByRole('textbox', { name: 'Variant', exact: true });

/** Whether all of it can be seen without scrolling. */
async function isInView(page: Page, piece: Locator): Promise<boolean> {
  const box = await piece.boundingBox();
  const size = page.viewportSize();
  return box !== null && size !== null && box.y >= 0 && box.y + box.height <= size.height;
}

describe('what to change first', () => {
  test('stands on the desk without pushing drawing, verdict or limits out of view; a press tries it', async () => {
    const page = await openBench();
    const first = page.getByRole('link', { name: /^First, / });
    await first.waitFor();
    const limits = page.getByRole('list', { name: 'Limits, most urgent first' });
    for (const piece of [first, verdict(page), page.getByText('Each edit shows here'), limits])
      expect(await isInView(page, piece)).toBe(true);
    expect(await isInView(page, page.getByRole('region', { name: 'The box, to scale' }))).toBe(true);

    const before = await verdict(page).textContent();
    await shortList(page).getByRole('button').first().click();
    await page.getByText('Last edit:').waitFor();
    await page.keyboard.press('Control+z');
    await expect.poll(() => verdict(page).textContent()).toBe(before);
  });
});

describe('designs side by side', () => {
  test('come from changes made as variants, and are opened from there; on a phone they scroll in their own frame', async () => {
    const page = await openBench({ viewport: { width: 390, height: 844 } });
    await title(page).fill('My box');
    const list = page.getByRole('list', { name: 'Changes, most kelvin first' });
    await list
      .getByRole('button', { name: /^As a variant: / })
      .first()
      .click();
    await expect.poll(() => variant(page).inputValue()).not.toBe('');
    const table = page.getByRole('region', { name: 'Designs side by side' });
    await table.waitFor();
    expect(await table.getByRole('columnheader').allTextContents()).toEqual([
      expect.stringMatching(/^A My box · /),
      'B My box',
    ]);
    const frames = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(frames).toBeLessThanOrEqual(0);

    await page.getByRole('button', { name: 'Open My box', exact: true }).click();
    await expect.poll(() => variant(page).count()).toBe(0);
    await expect.poll(() => table.getByRole('columnheader').first().textContent()).toBe('A My box');
  });
});
