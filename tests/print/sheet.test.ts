import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright';
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Design } from '../../src/model/design.ts';
import { exampleById } from '../../src/model/examples/examples.ts';
import type { UnitSystem } from '../../src/report/types.ts';
import { fitPage } from '../../src/ui/sheet/fitPage.ts';
import { SheetPage } from '../../src/ui/sheet/SheetPage.tsx';
import { launchChromium } from '../browser/chromium.ts';
import { exampleIds, sampleOf } from '../helpers/sampleReport.ts';

const css = readFileSync(new URL('../../src/ui/sheet/sheet.css', import.meta.url), 'utf8');
const papers = ['A4', 'Letter'] as const;

let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await launchChromium();
  page = await browser.newPage({ colorScheme: 'dark' });
});

afterAll(async () => {
  await browser.close();
});

async function show(design: Design, system: UnitSystem = 'metric'): Promise<void> {
  const sheet = renderToStaticMarkup(createElement(SheetPage, { report: sampleOf(design, system).report }));
  await page.setContent(
    `<!doctype html><html lang="en"><style>${css}</style><body><div id="root">SCREEN ONLY</div>${sheet}</body></html>`,
  );
  await page.evaluate(`(${fitPage.toString()})(document.querySelector('.sheet'))`);
}

async function print(format: (typeof papers)[number]): Promise<{ pages: number; text: string }> {
  const pdf = await page.pdf({ format });
  const info = execFileSync('pdfinfo', ['-'], { input: pdf }).toString();
  const text = execFileSync('pdftotext', ['-layout', '-', '-'], { input: pdf }).toString();
  return { pages: Number(/Pages:\s+(\d+)/.exec(info)?.[1]), text };
}

describe.each(papers)('on %s', (paper) => {
  test.each(exampleIds)(
    'the sheet of %s is one page, with the title block on it and nothing of the screen',
    async (id) => {
      await show(exampleById(id));
      const { pages, text } = await print(paper);
      expect(pages).toBe(1);
      expect(text).toContain('Checked, name and date');
      expect(text).toContain(exampleById(id).title);
      expect(text).not.toContain('SCREEN ONLY');
    },
  );

  test('so it is in inches, without a baffle, without an answer, and with the longest words', async () => {
    const design = exampleById('eightResistors');
    const long: Design = {
      ...exampleById('twoDozen'),
      title: 'A title as long as titles may be here, '.repeat(2),
      remark: 'Anything worth keeping with the design, said at length. '.repeat(10),
    };
    const cases: [Design, UnitSystem][] = [
      [design, 'inch'],
      [{ ...design, baffle: { ...design.baffle, fitted: false } }, 'metric'],
      [{ ...design, fan: { ...design.fan, supply_V: 2 } }, 'metric'],
      [long, 'metric'],
    ];
    for (const [changed, system] of cases) {
      await show(changed, system);
      expect((await print(paper)).pages).toBe(1);
    }
  });
});

test('the examples print at no less than nine tenths of full size', async () => {
  for (const id of exampleIds) {
    await show(exampleById(id));
    const zoom = await page.evaluate(() => document.querySelector<HTMLElement>('.sheet')?.style.zoom ?? '');
    expect(zoom === '' ? 1 : Number(zoom)).toBeGreaterThan(0.9);
  }
});

test('the sheet is black on white though the reader’s scheme is dark, and unseen on a screen', async () => {
  await show(exampleById('onePair'));
  const look = () =>
    page.evaluate(() => {
      const sheet = document.querySelector('.sheet');
      const style = sheet ? getComputedStyle(sheet) : null;
      return [style?.display, style?.color, style?.backgroundColor];
    });
  expect((await look())[0]).toBe('none');
  await page.emulateMedia({ media: 'print' });
  expect(await look()).toEqual(['block', 'rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
  await page.emulateMedia({ media: null });
});
