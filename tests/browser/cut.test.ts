import type { Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { answerTo, chooseExample, chooseInList, field, withBrowser } from './bench.ts';

const { openBench } = withBrowser();
const question = (page: Page) => page.getByRole('region', { name: 'What has to be cut?', exact: true });
const list = (page: Page) => question(page).getByRole('region', { name: 'List of panels' });

/** Cells of the row of one panel. */
async function rowOf(page: Page, mark: string): Promise<string[]> {
  const row = list(page)
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: mark, exact: true }) });
  const cells = await row.getByRole('cell').allTextContents();
  return cells.map((cell) => cell.replaceAll(/\s/g, ' '));
}

async function fill(page: Page, label: string, text: string) {
  const box = field(page, label);
  await box.fill(text);
  await box.blur();
}

describe('what has to be cut', () => {
  test('the list follows the number of boxes, and no other answer does', async () => {
    const page = await openBench();
    await expect
      .poll(() => rowOf(page, 'B'))
      .toEqual(expect.arrayContaining(['Side wall', '156', '76', '2']));
    const verdict = await answerTo(page, 'Will it hold?').textContent();
    await chooseInList(page, 'Panels to cut');
    await fill(page, 'Boxes', '12');
    await expect
      .poll(async () => (await rowOf(page, 'B')).slice(2, 8))
      .toEqual(['156', '76', '158', '78', '2', '24']);
    await expect.poll(() => answerTo(page, 'What has to be cut?').textContent()).toMatch(/192 for 12 boxes/);
    const picture = question(page).getByRole('figure').filter({ hasText: 'Side wall' });
    expect(await picture.textContent()).toContain('2 × a box, 24 in all');
    expect(await answerTo(page, 'Will it hold?').textContent()).toBe(verdict);
  });

  test('the list is in inches where lengths are', async () => {
    const page = await openBench();
    const inch = page.getByRole('radio', { name: 'Inch units' });
    await page.getByRole('group', { name: 'Units shown' }).locator('label').filter({ has: inch }).click();
    await expect.poll(() => list(page).getByRole('columnheader').allTextContents()).toContain('Length, in');
    expect(await rowOf(page, 'A')).toEqual(expect.arrayContaining(['6.142', '2.008']));
  });

  test('tabs and slots may be asked for, and bring the length of a tab with them', async () => {
    const page = await openBench();
    await chooseInList(page, 'Panels to cut');
    await page.getByRole('combobox', { name: /^Joints/ }).selectOption({ label: 'tabs and slots' });
    await expect.poll(() => rowOf(page, 'C')).toEqual(expect.arrayContaining(['End wall', '51', '79']));
    await fill(page, 'Tab length', '20');
    await question(page).getByText('Table: Cut-outs').click();
    const cutOuts = question(page).getByRole('region', { name: /^Cut-outs/ });
    await expect.poll(() => cutOuts.textContent()).toContain('20.2 × 3.2');
  });

  test('a box that cannot be closed says so first, with what would do', async () => {
    const page = await openBench();
    await chooseInList(page, 'Neck-down');
    await fill(page, 'Neck-down length', '0');
    await expect
      .poll(() => answerTo(page, 'What has to be cut?').textContent())
      .toMatch(/do not make the box yet.*Give the neck-down a length/);
  });

  test('another design brings its own panels, and nothing reaches past a narrow screen', async () => {
    const page = await openBench({ viewport: { width: 390, height: 844 } });
    const floor = async () => (await rowOf(page, 'A'))[2];
    await expect.poll(floor).toBe('156');
    await chooseExample(page, 'Two dozen, partly off');
    await expect.poll(floor).not.toBe('156');
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  });
});
