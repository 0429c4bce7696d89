import { execFileSync } from 'node:child_process';
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { examples } from '../../src/model/examples/examples.ts';
import { sampleOf } from '../helpers/sampleReport.ts';
import { chooseExample, expectDrawn, field, verdict, withBrowser } from './bench.ts';

const { openBench } = withBrowser();

async function print(page: Page, format: 'A4' | 'Letter') {
  const pdf = await page.pdf({ format });
  const info = execFileSync('pdfinfo', ['-'], { input: pdf }).toString();
  const text = execFileSync('pdftotext', ['-', '-'], { input: pdf }).toString();
  const isIn = (part: string) => text.replaceAll(/\s+/g, ' ').includes(part);
  return { pages: Number(/^Pages:\s+(\d+)$/m.exec(info)?.[1]), paper: /\((\w+)\)$/m.exec(info)?.[1], isIn };
}

test.each(examples.map(({ design }) => [design.title, design] as const))(
  'printing “%s” from the bench gives its summary sheet on one page, of A4 and of Letter',
  async (title, design) => {
    const page = await openBench({ colorScheme: 'dark' });
    await chooseExample(page, title);
    await expectDrawn(page);
    const { report } = sampleOf(design);
    await expect.poll(() => verdict(page).textContent()).toBe(report.verdict.sentence);
    for (const format of ['A4', 'Letter'] as const) {
      const { pages, paper, isIn } = await print(page, format);
      expect(pages).toBe(1);
      expect(paper?.toLowerCase()).toBe(format.toLowerCase());
      for (const part of [title, 'Checked, name and date', report.verdict.word])
        expect(isIn(part), part).toBe(true);
      for (const part of ['Skip to the drawing', 'Part to edit', 'Designs…'])
        expect(isIn(part), part).toBe(false);
    }
  },
);

test('the sheet is of what stands in the fields, however soon it is printed after the last key', async () => {
  const page = await openBench();
  await page.evaluate(() => {
    window.print = () => {
      window.dispatchEvent(new Event('beforeprint'));
      document.documentElement.dataset.printed = document.querySelector('.sheet')?.textContent ?? '';
    };
  });
  await field(page, 'Side clearance').fill('1.25 mm');
  // Both in one task, so that nothing can settle between.
  await field(page, 'Title of the design').evaluate((input: HTMLInputElement) => {
    const setValue = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set;
    setValue?.call(input, 'At the last moment');
    input.dispatchEvent(new Event('input', { bubbles: true }));
    [...document.querySelectorAll('button')].find(({ textContent }) => textContent === 'Print')?.click();
  });
  const printed = await page.locator('html').getAttribute('data-printed');
  expect(printed).toContain('At the last moment');
  expect(printed).toContain('1.25');
});

test('a sheet printed while a field is wrong says that it is the last answer that went together', async () => {
  const page = await openBench();
  await field(page, 'Side clearance').fill('abc');
  await expect
    .poll(() => page.locator('.sheet').textContent())
    .toContain('this is the last answer that went together');
  const { pages, isIn } = await print(page, 'A4');
  expect(pages).toBe(1);
  expect(isIn('A field was not right')).toBe(true);
});
