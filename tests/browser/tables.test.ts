import { readFileSync } from 'node:fs';
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { chooseInList, withBrowser } from './bench.ts';

const { openBench } = withBrowser();
const fixture = (name: string) => readFileSync(new URL(`../fixtures/tables/${name}`, import.meta.url));

const curve = (page: Page) => page.getByRole('region', { name: 'Fan curve', exact: true });
const told = (page: Page) => curve(page).getByRole('status');
const cell = (page: Page, name: RegExp) => curve(page).getByRole('textbox', { name });

/** As from a folder of the reader's: over the place first, then let go. */
async function drop(page: Page, place: string, name: string, text: string): Promise<void> {
  await page.evaluate(
    ([selector = '', file = '', content = '']) => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([content], file));
      for (const type of ['dragover', 'drop'])
        document
          .querySelector(selector)
          ?.dispatchEvent(new DragEvent(type, { dataTransfer, bubbles: true, cancelable: true }));
    },
    [place, name, text],
  );
}

test('a fan curve comes from a file as spreadsheets write it, or is refused, and ten megabytes are never read', async () => {
  const page = await openBench();
  await chooseInList(page, 'Fan');
  const open = (name: string, buffer: Buffer) =>
    curve(page)
      .getByLabel(/^File: /)
      .setInputFiles({ name, mimeType: 'text/csv', buffer });

  await open('stand.txt', fixture('utf16LittleEnd.txt'));
  await expect
    .poll(() => told(page).textContent())
    .toMatch(/^4 points taken over: flow from “Airflow – l\/min”/);
  expect(await cell(page, /^Point 2, flow/).inputValue()).toBe('600,5 l/min');
  expect(await page.getByRole('textbox', { name: 'Curve from' }).first().inputValue()).toBe('stand.txt');

  for (const [name, reason] of [
    ['picture.csv', 'This is no text but a picture (PNG).'],
    ['openQuote.csv', 'Line 3: a quote is opened and never closed.'],
  ] as const) {
    await open(name, fixture(name));
    await expect.poll(() => told(page).textContent()).toBe(reason);
  }
  await open('log.csv', Buffer.alloc(10_000_000, '1;2\n'));
  await expect.poll(() => told(page).textContent()).toMatch(/^This file has 10 MB; it was not read/);
  expect(await cell(page, /^Point 2, flow/).inputValue()).toBe('600,5 l/min');

  // A design dropped beside the curve is a design; a table dropped onto it is no design.
  await drop(page, '[data-takes-files] td', 'dropped.csv', 'flow [l/s],pressure [Pa]\n0,60\n9,0\n');
  await expect.poll(() => told(page).textContent()).toMatch(/^2 points taken over/);
  await drop(page, 'h1', 'box.json', '{}');
  await page.getByRole('dialog', { name: 'This file was not opened' }).waitFor();
});
