import { readFileSync } from 'node:fs';
import type { Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { chooseExample, chooseOnDrawing, field, verdict, withBrowser } from './bench.ts';

const { openBench } = withBrowser();
const fixture = new URL('../fixtures/designs/v1/eight-resistors.throughfin.json', import.meta.url);
const good = JSON.parse(readFileSync(fixture, 'utf8')) as Record<string, unknown>;

function open(page: Page, text: string, name = 'box.throughfin.json'): Promise<void> {
  return page
    .getByLabel('Design file')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

function withoutKey(part: string, key: string): Record<string, unknown> {
  const { [key]: _, ...rest } = good[part] as Record<string, unknown>;
  return { ...good, [part]: rest };
}

const refusal = (page: Page) => page.getByRole('dialog', { name: 'This file was not opened' });

describe('a file that cannot be opened', () => {
  test('is refused whole, with place and reason, and the design stays as it was typed', async () => {
    const page = await openBench();
    await field(page, 'Side clearance').fill('1.2 mm');
    await field(page, 'Stand-off').fill('abc');
    await page.getByText('Last good answer.').waitFor();
    const before = await verdict(page).textContent();

    for (const [text, ...told] of [
      [JSON.stringify({ ...good, version: 7 }), 'version', 'Version 7 is newer'],
      ['{\n  "format": "throughfin-design",\n  oops\n}', 'line 3, column 3', 'a key in'],
      ['{"format": "recipe"}', 'format', 'not a Throughfin design'],
      [JSON.stringify(withoutKey('fan', 'rated_V')), 'fan.rated_V', 'This is missing', '0.5 to 500'],
      [
        JSON.stringify({ ...good, room: { T_K: 2000, altitude_m: 0, relativeHumidity: 0.5 } }),
        ...['room.T_K', 'This cannot be 2000', '80'],
      ],
      [`{"format": "${'x'.repeat(6_000_000)}"}`, '6.1 MB', 'at most 5 MB'],
      ['', 'The file is empty'],
    ] as const) {
      await open(page, text, 'not-good.json');
      await refusal(page).waitFor({ timeout: 5000 });
      const words = ((await refusal(page).textContent()) ?? '').replaceAll(/\s/g, ' ');
      for (const part of ['not-good.json', ...told]) expect(words).toContain(part);
      await page.keyboard.press('Escape');
      await expect.poll(() => page.getByRole('dialog').count()).toBe(0);

      expect(await verdict(page).textContent()).toBe(before);
      expect(await field(page, 'Side clearance').inputValue()).toBe('1.2 mm');
      expect(await field(page, 'Stand-off').inputValue()).toBe('abc');
    }
  });
});

describe('a saved design', () => {
  test('opens again with the same verdict', async () => {
    const page = await openBench();
    await field(page, 'Side clearance').fill('1/16 in');
    const wanted = page.waitForEvent('download');
    await page.keyboard.press('Control+s');
    const download = await wanted;
    expect(download.suggestedFilename()).toBe('eight-in-a-row-b.throughfin.json');
    const text = readFileSync(await download.path(), 'utf8');
    expect(JSON.parse(text)).toMatchObject({ baffle: { sideClearance_m: 0.0015875 } });
    const saved = await verdict(page).textContent();

    await chooseExample(page, 'One resistor, two sinks');
    await chooseOnDrawing(page, 'Baffle');
    await page.getByRole('checkbox', { name: 'Baffle fitted' }).uncheck();
    await expect.poll(() => verdict(page).textContent()).not.toBe(saved);
    await page.getByRole('button', { name: 'Designs…' }).click();
    const asked = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'A design from a file…' }).click();
    await (await asked).setFiles({
      name: 'box.json',
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    });
    await expect.poll(() => verdict(page).textContent()).toBe(saved);
    expect(await page.getByLabel('Title of the design').inputValue()).toBe('Eight in a row');
    expect(await page.getByRole('dialog').count()).toBe(0);
  });

  test('may be dropped onto the page', async () => {
    const page = await openBench();
    const text = JSON.stringify({ ...good, title: 'Dropped' });
    const transfer = await page.evaluateHandle((content) => {
      const data = new DataTransfer();
      data.items.add(new File([content], 'dropped.json', { type: 'application/json' }));
      return data;
    }, text);
    await page.dispatchEvent('main', 'dragover', { dataTransfer: transfer });
    await page.getByText('Drop the design file to open it').waitFor();
    await page.dispatchEvent('main', 'drop', { dataTransfer: transfer });
    await expect.poll(() => page.getByLabel('Title of the design').inputValue()).toBe('Dropped');
  });
});
