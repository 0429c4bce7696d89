import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { answerTo, chooseExample, verdict, withBrowser } from './bench.ts';

const { openBench } = withBrowser();
const title = 'Does the bench agree?';
const question = (page: Page) => page.getByRole('region', { name: title, exact: true });

test('readings are typed and pasted, held against the model, fitted, kept as a variant and printed', async () => {
  const page = await openBench();
  await chooseExample(page, 'One resistor, two sinks');
  const here = question(page);
  for (const [add, reading] of [
    ['Add a temperature', '47.2'],
    ['Add a pressure', '24.5 Pa'],
    ['Add a flow', '3.7 m³/h'],
  ] as const) {
    await here.getByRole('button', { name: add }).click();
    await page.keyboard.type(reading);
  }
  await expect.poll(() => answerTo(page, title).textContent()).toMatch(/of 3 readings/);

  await here.locator('summary', { hasText: 'Paste a table of readings' }).click();
  await here
    .getByRole('textbox', { name: 'Paste a table of readings' })
    .fill(
      [
        'where\treading\twithin\ttime',
        'film 1\t47,5 °C\t0,5\t',
        'terminal 1\t40,1 °C\t0,5\t',
        'sink 1\t31,2 °C\t0,5\t',
        'sink 2\t29,8 °C\t0,5\t',
        'film 1\t45,1 °C\t0,5\t30 s',
      ].join('\n'),
    );
  await here.getByRole('button', { name: 'Take it over' }).click();
  await here.getByText('5 readings taken over.', { exact: false }).waitFor();
  await expect.poll(() => answerTo(page, title).textContent()).toMatch(/of 8 readings/);
  await here.getByText('How far each reading is off', { exact: true }).scrollIntoViewIfNeeded();
  await expect.poll(() => here.locator('svg .recharts-scatter-symbol').count()).toBe(8);

  await here.getByRole('button', { name: 'Fit to the readings' }).click();
  await here.getByText('Fitted to these readings.').waitFor();
  await here.getByRole('button', { name: 'Keep the fitted design as a variant' }).click();
  await here.getByText('Kept as the variant “fitted to 8 readings”', { exact: false }).waitFor();
  await expect.poll(() => verdict(page).textContent()).toContain('(fitted to 8 readings)');
  await expect
    .poll(() => here.getByText(/^This design is fitted to 8 readings: bond 0\.[78]/).count())
    .toBe(1);
  await expect.poll(() => answerTo(page, title).textContent()).toMatch(/^All 8 readings agree/);

  await page.evaluate(() => {
    window.print = () => {};
  });
  await page.getByRole('button', { name: 'Print…' }).click();
  await page.getByLabel('Bench check').check();
  await page.getByRole('button', { name: 'Print the summary and these pages' }).click();
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
  await expect
    .poll(() => page.locator('.sheet').textContent())
    .toMatch(/Bench: all 8 readings agree within their instruments; fitted to 8 readings: bond 0\.[78]/);
  await expect.poll(() => page.locator('.sheet-further .before').count()).toBe(8);
  expect(await page.locator('section.sheet-further').first().textContent()).toContain('Terminal 1');
});

test('on a phone every reading is a card, and nothing reaches beyond the page', async () => {
  const page = await openBench({ viewport: { width: 320, height: 700 } });
  await chooseExample(page, 'A prototype on the bench');
  const box = question(page).getByRole('textbox', { name: 'Temperature 1, reading (°C)' });
  await box.scrollIntoViewIfNeeded();
  await expect.poll(() => answerTo(page, title).textContent()).toMatch(/^8 of 15 readings/);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
});
