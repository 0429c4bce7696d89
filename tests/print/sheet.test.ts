import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright';
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Design } from '../../src/model/design.ts';
import { exampleById } from '../../src/model/examples/examples.ts';
import type { Report, UnitSystem } from '../../src/report/types.ts';
import { roomOnPage, shrink } from '../../src/ui/sheet/fitPage.ts';
import { type SheetSize, sheetSizes } from '../../src/ui/sheet/measures.ts';
import { SheetPage } from '../../src/ui/sheet/SheetPage.tsx';
import { launchChromium } from '../browser/chromium.ts';
import { exampleIds, sampleOf } from '../helpers/sampleReport.ts';

const css = ['sheet', 'art', 'further']
  .map((name) => readFileSync(new URL(`../../src/ui/sheet/${name}.css`, import.meta.url), 'utf8'))
  .join('\n');
const papers = ['A4', 'Letter'] as const;
const systems = ['metric', 'inch'] as const;

let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await launchChromium();
  page = await browser.newPage({ colorScheme: 'dark' });
});

afterAll(async () => {
  await browser.close();
});

/** The sheet as it would be printed, fitted as the app fits it. */
async function show(report: Report, bench = ''): Promise<{ size: SheetSize; room: number }> {
  for (const size of sheetSizes) {
    const sheet = renderToStaticMarkup(createElement(SheetPage, { report, size, bench }));
    await page.setContent(
      `<!doctype html><html lang="en"><style>${css}</style><body><div id="root">SCREEN ONLY</div>${sheet}</body></html>`,
    );
    const room = await page.evaluate<number>(`(${roomOnPage.toString()})(document.querySelector('.sheet'))`);
    if (room >= 1) return { size, room };
    if (size === sheetSizes.at(-1)) {
      await page.evaluate(
        `(${shrink.toString()})(document.querySelector('.sheet'), ${roomOnPage.toString()})`,
      );
      return { size, room };
    }
  }
  throw new Error('no size of the sheet');
}

async function print(format: (typeof papers)[number]): Promise<{ pages: number; text: string }> {
  const pdf = await page.pdf({ format });
  const info = execFileSync('pdfinfo', ['-'], { input: pdf }).toString();
  const text = execFileSync('pdftotext', ['-layout', '-', '-'], { input: pdf }).toString();
  return { pages: Number(/Pages:\s+(\d+)/.exec(info)?.[1]), text };
}

/** Points of the smallest type on the sheet as it stands, drawings and zoom counted in. */
async function smallestType_pt(): Promise<number> {
  await page.emulateMedia({ media: 'print' });
  const smallest = await page.evaluate(() => {
    const sheet = document.querySelector<HTMLElement>('.sheet');
    if (!sheet) throw new Error('no sheet');
    const walker = document.createTreeWalker(sheet, NodeFilter.SHOW_TEXT);
    const zoom = Number(sheet.style.zoom || 1);
    let least = 99;
    while (walker.nextNode()) {
      const element = walker.currentNode.parentElement;
      if (!element || walker.currentNode.textContent?.trim() === '') continue;
      const size = Number.parseFloat(getComputedStyle(element).fontSize);
      const svg = element.closest('svg');
      const scale = svg ? svg.getBoundingClientRect().width / svg.viewBox.baseVal.width : zoom;
      least = Math.min(least, size * scale * 0.75);
    }
    return least;
  });
  await page.emulateMedia({ media: null });
  return smallest;
}

/** Elements whose words reach over their own edge or that of the page. */
function clipped(): Promise<string[]> {
  return page.evaluate(() => {
    const sheet = document.querySelector<HTMLElement>('.sheet');
    if (!sheet) throw new Error('no sheet');
    sheet.dataset.measured = '';
    const edge = sheet.getBoundingClientRect();
    const found = [...sheet.querySelectorAll<HTMLElement>('*')].filter((element) => {
      const box = element.getBoundingClientRect();
      const isOut = box.right > edge.right + 1 || box.left < edge.left - 1;
      return (
        isOut ||
        (element instanceof HTMLElement &&
          element.scrollWidth > element.clientWidth + 1 &&
          element.clientWidth > 0)
      );
    });
    delete sheet.dataset.measured;
    return found.map((element) => `${element.tagName} ${element.textContent?.slice(0, 60)}`);
  });
}

const eight = exampleById('eightResistors');
const dozen = exampleById('twoDozen');

/** As many resistors and kinds as a design may have, the longest words, every limit, a caution of every kind. */
const worst: Design = {
  ...dozen,
  title: 'A title as long as titles may be here, as long as that and longer still, up to its end'.slice(
    0,
    80,
  ),
  revision: 'Revision nought',
  remark: 'Anything worth keeping with the design, said at length. '.repeat(11).slice(0, 600),
  load: { ...dozen.load, duty: 0.5, period_s: 20, supply_V: 60 },
  parts: Array.from({ length: 32 }, (_, i) => ({
    ...(dozen.parts[i % 3] as Design['parts'][number]),
    name: `Invented chip of kind number ${i + 1}, with a long name, 6 × 3`,
    R_Ohm: 2000 + 100 * i,
    tcr2_perK2: 1e-7,
  })),
  positions: Array.from({ length: 64 }, (_, i) => ({
    part: i % 32,
    on: i % 7 !== 6,
    flipped: i > 31,
    power_W: 1,
  })),
  inlet: { ...dozen.inlet, guard: { ...dozen.inlet.guard, kind: 'none' } },
  outlet: { ...dozen.outlet, kind: 'none' },
  fan: {
    ...exampleById('dippingCurve').fan,
    sideBySide: 2,
    curveSource: 'an invented data sheet, its page and the volts of its curve, said at length. '
      .repeat(3)
      .slice(0, 200),
  },
  box: { ...dozen.box, length_m: 1.1 },
  limits: { ...dozen.limits, touchable: true, soundJudged: true },
};

const worstReports = { metric: sampleOf(worst, 'metric').report, inch: sampleOf(worst, 'inch').report };

function worstReport(system: UnitSystem): Report {
  const report = worstReports[system];
  const note =
    'A caution about the flow, the bond or the fan that has much to say for itself and ends late. ';
  return {
    ...report,
    title: {
      ...report.title,
      stale: 'A field was not right when this was printed: this is the last answer that went together.',
    },
    notes: Array.from({ length: 12 }, (_, i) => ({
      code: `${i}`,
      severity: 'caution',
      severityWord: 'Caution',
      text: `${i}: ${note.repeat(2)}`,
    })),
  };
}

const hardCases = [
  sampleOf({ ...eight, baffle: { ...eight.baffle, fitted: false } }).report,
  sampleOf({ ...eight, fan: { ...eight.fan, supply_V: 2 } }).report,
  sampleOf({ ...worst, fan: { ...worst.fan, supply_V: 2 } }, 'inch').report,
  worstReport('metric'),
  worstReport('inch'),
];

describe.each(papers)('on %s', (paper) => {
  test.each(exampleIds.flatMap((id) => systems.map((system) => [id, system] as const)))(
    'the sheet of %s in %s units is one page, with its title block and nothing of the screen',
    async (id, system) => {
      const { report } = sampleOf(exampleById(id), system);
      await show(report);
      const { pages, text } = await print(paper);
      expect(pages).toBe(1);
      const flat = text.replaceAll(/\s+/g, ' ');
      for (const part of [
        'Checked by, name and date',
        report.title.title,
        report.title.invented,
        report.title.checksum,
        'rated with fan',
        'rated without fan',
        'to act if it stops',
        ...report.fanStop.figures.map(({ value }) => value),
        ...report.limits.map(({ label }) => label),
      ])
        expect(flat).toContain(part.replaceAll(/\s+/g, ' '));
      expect(text).not.toContain('SCREEN ONLY');
    },
  );

  test('so it is with what the bench says, on the fullest page too', async () => {
    const bench =
      'Bench: 99 of 400 readings agree within their instruments; fitted to 385 readings: bond 0.812 ± 0.021, slot 1.12 ± 0.31, fan 0.94 ± 0.04, emissivity 1.2 ± 0.5 and leak 0.51 ± 0.21 mm.';
    for (const report of [sampleOf(exampleById('prototype')).report, worstReport('metric')]) {
      await show(report, bench);
      const { pages, text } = await print(paper);
      expect(pages).toBe(1);
      expect(text.replaceAll(/\s+/g, ' ')).toContain('fitted to 385 readings');
    }
  });

  test('so it is without a baffle, without an answer, and with the most and longest of everything', async () => {
    for (const report of hardCases) {
      await show(report);
      expect((await print(paper)).pages).toBe(1);
      expect(await clipped()).toEqual([]);
    }
  });
});

test('the examples print unshrunk, and no type on them is below 6.5 points', async () => {
  for (const id of exampleIds) {
    for (const system of systems) {
      const { room, size } = await show(sampleOf(exampleById(id), system).report);
      expect(room).toBeGreaterThanOrEqual(1);
      expect(size.drawing).toBeGreaterThanOrEqual(36);
      expect(await smallestType_pt()).toBeGreaterThanOrEqual(6.5);
      expect(await clipped()).toEqual([]);
    }
  }
});

test('with the most and longest of everything the smallest type is still 6 points', async () => {
  for (const system of systems) {
    await show(worstReport(system));
    expect(await smallestType_pt()).toBeGreaterThan(6);
  }
});

test('the verdict stands in type that can be read from two metres', async () => {
  // Capitals of 7 mm seen from 2 m subtend 12 minutes of arc; 5 are the least that a sound eye reads.
  await show(sampleOf(eight).report);
  await page.emulateMedia({ media: 'print' });
  const size_px = await page.evaluate(() =>
    Number.parseFloat(getComputedStyle(document.querySelector('.sheet-verdict') as Element).fontSize),
  );
  await page.emulateMedia({ media: null });
  const capital_mm = ((0.72 * size_px) / 96) * 25.4;
  expect(capital_mm).toBeGreaterThan(7);
});

test('the sheet is black on white though the reader’s scheme is dark, and unseen on a screen', async () => {
  await show(sampleOf(exampleById('onePair')).report);
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
