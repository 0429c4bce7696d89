import { execFileSync } from 'node:child_process';
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { exampleById } from '../../src/model/examples/examples.ts';
import type { TextColumn } from '../../src/report/types.ts';
import { furtherPages } from '../../src/ui/sheet/furtherPages.ts';
import { noStudies } from '../../src/ui/sheet/studyTables.ts';
import { sampleOf } from '../helpers/sampleReport.ts';
import { answerTo, chooseExample, expectDrawn, field, verdict, withBrowser } from './bench.ts';

const { openBench } = withBrowser();

async function print(page: Page, format: 'A4' | 'Letter') {
  const pdf = await page.pdf({ format });
  const info = execFileSync('pdfinfo', ['-'], { input: pdf }).toString();
  const text = execFileSync('pdftotext', ['-', '-'], { input: pdf }).toString();
  const said = text.replaceAll(/\s+/g, ' ');
  const isIn = (part: string) => said.includes(part);
  return {
    said,
    sheets: text.split('\f').filter((sheet) => sheet.trim() !== ''),
    pages: Number(/^Pages:\s+(\d+)$/m.exec(info)?.[1]),
    paper: /\((\w+)\)$/m.exec(info)?.[1],
    isIn,
  };
}

test.each(
  (['eightResistors', 'twoDozen', 'prototype'] as const).map(
    (id) => [exampleById(id).title, exampleById(id)] as const,
  ),
)(
  'printing “%s” from the bench gives its summary sheet on one page, of A4 and of Letter',
  async (title, design) => {
    const page = await openBench({ colorScheme: 'dark' });
    await chooseExample(page, title);
    await expectDrawn(page);
    const { report } = sampleOf(design);
    await expect.poll(() => verdict(page).textContent()).toBe(report.verdict.sentence);
    for (const format of ['A4', 'Letter'] as const) {
      const { pages, paper, said, isIn } = await print(page, format);
      expect(pages).toBe(1);
      expect(paper?.toLowerCase()).toBe(format.toLowerCase());
      for (const part of [title, 'Checked by, name and date', report.title.checksum])
        expect(isIn(part), part).toBe(true);
      expect(said.toLowerCase()).toContain(report.verdict.word);
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
    window.print();
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

/** Ticks pages in the dialog and prints; the pages stand until a print is over, here that of the caller. */
async function choosePages(page: Page, labels: readonly string[]): Promise<void> {
  await page.evaluate(() => {
    window.print = () => {};
  });
  await page.getByRole('button', { name: 'Print…' }).click();
  for (const label of labels) await page.getByRole('checkbox', { name: label, exact: true }).check();
  await page.getByRole('button', { name: 'Print the summary and these pages' }).click();
}

const squeeze = (text: string) => text.replaceAll(/\s+/g, ' ').trim();

/** The cells of a row that are printed as words; equations are set. */
const inWords = (columns: readonly TextColumn[]) => (cells: readonly string[]) =>
  cells.filter((_, i) => !columns[i]?.typeset);

test.each(['A4', 'Letter'] as const)(
  'pages chosen in the dialog follow the summary on %s, each with its head, with every word of their tables',
  async (format) => {
    const page = await openBench();
    await chooseExample(page, exampleById('twoDozen').title);
    const { report } = sampleOf(exampleById('twoDozen'));
    await expect.poll(() => verdict(page).textContent()).toBe(report.verdict.sentence);
    await choosePages(page, ['All inputs', 'Working', 'Panels to cut', 'Tables']);
    const { pages, sheets } = await print(page, format);
    expect(pages).toBeGreaterThan(8);
    expect(sheets).toHaveLength(pages);
    expect(squeeze(sheets[0] ?? '')).toContain(`1 of ${pages}`);
    sheets.slice(1).forEach((sheet, i) => {
      const said = squeeze(sheet);
      expect(said).toContain(`Page ${i + 2} of ${pages}`);
      expect(said).toContain(report.title.title);
      expect(said).toContain('Revision C');
      expect(said).toContain(`Checksum ${report.title.checksum}`);
      expect(said).toContain('Invented example');
    });
    // Cells are broken into lines, so words are looked for, not sentences.
    const printed = sheets
      .slice(1)
      .join(' ')
      .replaceAll(/[\s-]+/g, '');
    const tables = furtherPages.flatMap((further) => further.tables(report, noStudies));
    expect(tables.length).toBeGreaterThan(30);
    expect(tables.map(({ caption }) => caption)).toContain('Resistors along the row');
    for (const { caption, columns, rows } of tables)
      for (const cell of [caption, ...columns.map(({ head }) => head), ...rows.flatMap(inWords(columns))])
        for (const word of cell.split(/\s+/)) expect(printed, cell).toContain(word.replaceAll('-', ''));
  },
);

test('pages come only with the print that they were chosen for', async () => {
  const page = await openBench();
  await choosePages(page, ['All inputs']);
  expect((await print(page, 'A4')).pages).toBeGreaterThan(1);
  expect((await print(page, 'A4')).pages).toBe(1);
});

test('the gaps compared below the bench may go with it: what to cut, and every value', async () => {
  const page = await openBench();
  await expect.poll(() => answerTo(page, 'Which gap?').textContent()).toMatch(/^Cut the side clearance/);
  await choosePages(page, ['Which gap']);
  const { sheets, pages } = await print(page, 'A4');
  expect(pages).toBe(2);
  const said = squeeze(sheets[1] ?? '');
  expect(said).toContain('What to cut');
  expect(said).toMatch(/Cut the side clearance between 0\.4 mm and 1\.6 mm/);
  expect(said).toContain('0.8 mm, now');
  expect(said).toContain('no baffle does not hold');
});

test('a table that goes on over pages says so and has its heads again; no page runs over', async () => {
  const page = await openBench();
  await choosePages(page, ['Working']);
  const { sheets, pages } = await print(page, 'Letter');
  const working = sheets.slice(1);
  expect(working).toHaveLength(pages - 1);
  const methods = working.filter((sheet) => sheet.includes('Methods used'));
  expect(methods.length).toBeGreaterThan(1);
  methods.forEach((sheet, i) => {
    // Beside equations text is read from a page column by column.
    for (const head of ['Equation', 'Source', 'Range', 'Here', 'Scatter (1σ)'])
      expect(squeeze(sheet)).toContain(head);
    expect(sheet.includes('Methods used, continued')).toBe(i > 0);
  });
});

test('the dialog goes by Escape, and the focus comes back to the button', async () => {
  const page = await openBench({ viewport: { width: 390, height: 844 } });
  const button = page.getByRole('button', { name: 'Print…' });
  await button.click();
  await page.getByRole('dialog', { name: 'Print' }).waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('dialog', { name: 'Print' }).waitFor({ state: 'detached' });
  expect(await button.evaluate((element) => element === document.activeElement)).toBe(true);
});
