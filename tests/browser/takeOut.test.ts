import { readFileSync } from 'node:fs';
import type { Download, Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { solveCommand } from '../../src/cli/solveCommand.ts';
import { readNumber } from '../../src/io/cellNumbers.ts';
import { readCsv } from '../../src/io/csv.ts';
import { serialiseDesign } from '../../src/model/serialiseDesign.ts';
import { tableData } from '../../src/report/tableData.ts';
import { reportTables } from '../../src/report/tables.ts';
import { sampleExample } from '../helpers/sampleReport.ts';
import { expectDrawn, withBrowser } from './bench.ts';

const { address, openPage, openBench } = withBrowser();
const { design, report } = sampleExample('eightResistors');

async function textOf(download: Download): Promise<string> {
  return readFileSync(await download.path(), 'utf8');
}

/** Presses a button, by the keyboard as it may be out of sight, and waits for the file. */
async function fileFrom(page: Page, name: string | RegExp): Promise<Download> {
  // Chromium takes no more than ten downloads a second from one page; nobody presses as fast as a test.
  await page.waitForTimeout(120);
  const wanted = page.waitForEvent('download');
  const button = page.getByRole('button', { name, exact: typeof name === 'string' }).first();
  await button.focus();
  await page.keyboard.press('Enter');
  return wanted;
}

async function labelsOf(page: Page, kind: string): Promise<string[]> {
  const buttons = await page.getByRole('button', { name: `Save as ${kind}: ` }).all();
  const labels = await Promise.all(buttons.map((button) => button.getAttribute('aria-label')));
  return [...new Set(labels.map((label) => label ?? ''))];
}

const openAll = (page: Page) =>
  page.evaluate(() => {
    for (const details of document.querySelectorAll('main details')) details.setAttribute('open', '');
  });

/** Same words; same numbers but for the last digits, in which machines may differ. */
function expectAlike(found: unknown, wanted: unknown, place: string): void {
  if (typeof wanted === 'number' && typeof found === 'number') {
    const size = Math.max(Math.abs(wanted), 1e-9);
    expect([place, Math.abs(found - wanted) <= 1e-6 * size || [found, wanted]]).toEqual([place, true]);
  } else if (typeof wanted === 'object' && wanted !== null && typeof found === 'object' && found !== null) {
    expect([place, ...Object.keys(found)]).toEqual([place, ...Object.keys(wanted)]);
    for (const [key, value] of Object.entries(wanted))
      expectAlike((found as Record<string, unknown>)[key], value, `${place}.${key}`);
  } else {
    expect([place, found]).toEqual([place, wanted]);
  }
}

describe('tables', () => {
  test('all come out as CSV with the numbers of the report, and none of their units', async () => {
    const page = await openBench();
    await openAll(page);
    const tables = new Map(reportTables(report).map((table) => [table.caption, table]));
    const labels = await labelsOf(page, 'CSV');
    let numbers = 0;
    for (const label of labels) {
      const table = [...tables.values()].find(({ caption }) => label === `Save as CSV: ${caption}`);
      // Charts are saved under their own caption, their twin tables under theirs.
      if (!table) continue;
      const download = await fileFrom(page, label);
      expect(download.suggestedFilename()).toMatch(/^eight-in-a-row-b-[a-z-]+\.csv$/);
      const text = await textOf(download);
      expect(text.charCodeAt(0)).toBe(0xfeff);
      expect(text.replaceAll('\r\n', '')).not.toContain('\r');
      const read = readCsv(text);
      if (!read.ok) throw new Error(read.reason);
      const [heads = [], ...rows] = read.table.rows;
      const wanted = tableData(table);
      expect(heads).toEqual(wanted.heads);
      expect(rows).toHaveLength(wanted.rows.length);
      rows.forEach((row, r) => {
        row.forEach((cell, c) => {
          const value = wanted.rows[r]?.[c] ?? '';
          if (typeof value !== 'number') expect(cell).toBe(value);
          else {
            numbers++;
            expectAlike(readNumber(cell, '.'), value, `${label} ${r} ${c}`);
          }
        });
      });
      tables.delete(table.caption);
    }
    expect(numbers).toBeGreaterThan(300);
    // Those that stand on the page in another shape than a table.
    expect([...tables.keys()]).toEqual(['Key figures', 'Cautions', 'Methods used']);
  });

  test('come out together in one file, each under its caption', async () => {
    const page = await openBench();
    const download = await fileFrom(page, 'All tables as CSV');
    expect(download.suggestedFilename()).toBe('eight-in-a-row-b-tables.csv');
    const lines = (await textOf(download)).split('\r\n').map((line) => line.replaceAll('"', ''));
    for (const { caption } of reportTables(report)) expect(lines).toContain(caption);
  });
});

test('the report comes out as the JSON that the terminal prints', async () => {
  const page = await openBench();
  const download = await fileFrom(page, 'Report as JSON');
  expect(download.suggestedFilename()).toBe('eight-in-a-row-b-report.json');
  let printed = '';
  await solveCommand(['--json', 'box.json'], {
    size_B: () => Promise.resolve(1),
    read: () => Promise.resolve(serialiseDesign(design)),
    out: (text) => {
      printed += text;
    },
    err: () => {},
  });
  expectAlike(JSON.parse(await textOf(download)), JSON.parse(printed), 'report');
});

/** What a reader of XML finds in a picture. */
function inside(page: Page, svg: string) {
  return page.evaluate((text) => {
    const parsed = new DOMParser().parseFromString(text, 'application/xml');
    const all = [...parsed.querySelectorAll('*')];
    const attributes = all.flatMap((element) =>
      [...element.attributes].map(({ name, value }) => ({ name, value })),
    );
    const ids = new Set(all.map(({ id }) => id).filter(Boolean));
    return {
      fault: parsed.querySelector('parsererror')?.textContent ?? '',
      root: parsed.documentElement.localName,
      size: ['width', 'height'].map((name) => Number(parsed.documentElement.getAttribute(name))),
      title: parsed.querySelector('svg > title')?.textContent ?? '',
      desc: parsed.querySelector('svg > desc')?.textContent ?? '',
      texts: all.filter(({ localName }) => localName === 'text').map(({ textContent }) => textContent ?? ''),
      names: [...new Set(attributes.map(({ name }) => name))],
      paints: attributes
        .filter(({ name }) => ['fill', 'stroke', 'stop-color'].includes(name))
        .map(({ value }) => value),
      loose: attributes
        .flatMap(({ value }) => [...value.matchAll(/url\(#([^)]*)\)/g)].map(([, id]) => id ?? ''))
        .filter((id) => !ids.has(id)),
      circles: [...parsed.querySelectorAll('circle')].map((circle) => ({
        x: Number(circle.getAttribute('cx')),
        y: Number(circle.getAttribute('cy')),
        r: Number(circle.getAttribute('r')),
        said: circle.nextElementSibling?.textContent ?? '',
      })),
    };
  }, svg);
}

describe('pictures', () => {
  test('of every figure are SVG that stands alone, with title, ticks and owner, in plain colours', async () => {
    const page = await openBench();
    await openAll(page);
    const labels = await labelsOf(page, 'SVG');
    // Ten figures of the report, one for each panel to cut, and those of studies that are done.
    expect(labels.length).toBeGreaterThanOrEqual(10 + report.cut.panels.length);
    for (const label of labels) {
      const caption = label.replace('Save as SVG: ', '');
      const download = await fileFrom(page, label);
      expect(download.suggestedFilename()).toMatch(/^eight-in-a-row-b-[a-z-]+\.svg$/);
      const svg = await textOf(download);
      expect(svg).not.toMatch(
        /var\(|light-dark\(|oklab|color-mix|style=|class=|<script|<image|foreignObject/,
      );
      expect(svg.replace('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|xlink|href/);
      const found = await inside(page, svg);
      expect(found).toMatchObject({ fault: '', root: 'svg', loose: [] });
      expect(found.title).toBe(`${caption} – Eight in a row, revision B, ${(await today(page)) ?? ''}`);
      expect(found.desc.length).toBeGreaterThan(20);
      if (caption === 'Where the fan’s air goes') expect(svg).toContain('spreadMethod="repeat"');
      for (const paint of found.paints) expect(paint).toMatch(/^(#[0-9a-f]{6}|none|url\(#p\d+\))$/);
      expect(found.names.filter((name) => /^(on|data-|aria-)/.test(name))).toEqual([]);
      expect(found.texts).toEqual(expect.arrayContaining([caption, 'Invented example, not a built box']));
      const ticks = await page.evaluate((name) => {
        const figure = [...document.querySelectorAll('figure')].find((each) =>
          [...each.querySelectorAll('button')].some((button) => button.getAttribute('aria-label') === name),
        );
        return [...(figure?.querySelectorAll('.recharts-cartesian-axis-tick-value') ?? [])].map(
          (tick) => tick.textContent ?? '',
        );
      }, label);
      expect(found.texts).toEqual(expect.arrayContaining(ticks));
    }
  });

  test('are the same in the dark, on white', async () => {
    const light = await openBench({ colorScheme: 'light' });
    const dark = await openBench({ colorScheme: 'dark' });
    for (const label of ['Save as SVG: The box, to scale', 'Save as SVG: Fan against box']) {
      const [one, other] = await Promise.all(
        [light, dark].map(async (page) => textOf(await fileFrom(page, label))),
      );
      expect(other).toBe(one);
      expect(other).toMatch(/<rect x="0" y="0" width="\d+" height="[\d.]+" fill="#ffffff"\/>/);
    }
  });

  test('as PNG have three times the pixels, white around and something in the middle', async () => {
    const page = await openBench({ colorScheme: 'dark' });
    for (const what of [
      'The box, to scale',
      'Where the fan’s air goes',
      'From the room to the hottest film',
    ]) {
      const { size } = await inside(page, await textOf(await fileFrom(page, `Save as SVG: ${what}`)));
      const download = await fileFrom(page, `Save as PNG: ${what}`);
      expect(download.suggestedFilename()).toMatch(/\.png$/);
      const png = readFileSync(await download.path());
      expect(png.subarray(1, 4).toString()).toBe('PNG');
      const seen = await page.evaluate(async (base64) => {
        const bytes = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
        const image = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
        const canvas = document.createElement('canvas');
        canvas.width = image.width;
        canvas.height = image.height;
        const pen = canvas.getContext('2d');
        if (pen === null) throw new Error('no canvas');
        pen.drawImage(image, 0, 0);
        const pixels = new Uint32Array(pen.getImageData(0, 0, image.width, image.height).data.buffer);
        const white = 0xffffffff;
        return {
          size: [image.width, image.height],
          isCornerWhite: pixels[0] === white,
          colours: new Set(pixels).size,
          white: pixels.filter((pixel) => pixel === white).length / pixels.length,
        };
      }, png.toString('base64'));
      expect(seen.size).toEqual(size.map((length) => 3 * length));
      expect(seen.isCornerWhite).toBe(true);
      expect(seen.colours).toBeGreaterThan(20);
      expect(seen.white).toBeGreaterThan(0.3);
      expect(seen.white).toBeLessThan(0.97);
    }
  });

  test('of the drawing carry its item numbers in their circles, their names, and no choice', async () => {
    const page = await openBench();
    const numbered = await page
      .getByRole('region', { name: 'The box, to scale' })
      .locator('figure button[aria-pressed]')
      .evaluateAll((buttons) =>
        buttons.map((button) => ({
          number: button.textContent ?? '',
          name: button.getAttribute('aria-label') ?? '',
        })),
      );
    expect(numbered.length).toBeGreaterThan(8);
    const svg = await textOf(await fileFrom(page, 'Save as SVG: The box, to scale'));
    const found = await inside(page, svg);
    const balloons = found.circles.filter(({ r }) => r > 10);
    expect(balloons.map(({ said }) => said)).toEqual(numbered.map(({ number }) => number));
    const flat = found.texts.map((text) => text.replaceAll(/\s/g, ' '));
    for (const { number, name } of numbered)
      expect(flat).toContain(`${number} ${name}`.replaceAll(/\s/g, ' '));
    const shown = await page
      .locator('figure')
      .first()
      .locator('svg text')
      .evaluateAll((texts) => texts.map(({ textContent }) => textContent ?? ''));
    expect(shown.length).toBeGreaterThan(8);
    expect(found.texts).toEqual(expect.arrayContaining(shown));
    const focus = await page.evaluate(() => {
      const probe = document.body.appendChild(document.createElement('i'));
      probe.style.color = 'var(--focus)';
      const [r = 0, g = 0, b = 0] = getComputedStyle(probe).color.match(/\d+/g)?.map(Number) ?? [];
      return `#${[r, g, b].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
    });
    expect(found.paints).not.toContain(focus);
  });

  test('take a turned text over the drawing along, where it stands', async () => {
    const page = await openBench();
    const middle = await page
      .locator('figure')
      .first()
      .evaluate((figure) => {
        const frame = figure.querySelector('svg')?.parentElement;
        const button = document.createElement('button');
        button.textContent = '77 mm';
        Object.assign(button.style, { position: 'absolute', left: '120px', top: '90px' });
        button.style.transform = 'translate(-50%, -50%) rotate(-90deg)';
        frame?.append(button);
        const own = button.getBoundingClientRect();
        const from = frame?.getBoundingClientRect();
        return [own.left + own.width / 2 - (from?.left ?? 0), own.top + own.height / 2 - (from?.top ?? 0)];
      });
    const svg = await textOf(await fileFrom(page, 'Save as SVG: The box, to scale'));
    const place = await page.evaluate((text) => {
      const host = document.body.appendChild(document.createElement('div'));
      const parsed = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
      host.append(document.importNode(parsed, true));
      const found = [...host.querySelectorAll('text')].find(({ textContent }) => textContent === '77 mm');
      const box = found?.getBoundingClientRect() ?? new DOMRect();
      const root = host.querySelector('svg')?.getBoundingClientRect() ?? new DOMRect();
      host.remove();
      return [
        box.left + box.width / 2 - root.left,
        box.top + box.height / 2 - root.top,
        box.width,
        box.height,
      ];
    }, svg);
    const [x = 0, y = 0, width = 0, height = 0] = place;
    // Sixteen pixels of white around the figure.
    expect(Math.abs(x - 16 - (middle[0] ?? 0))).toBeLessThan(2);
    expect(Math.abs(y - 16 - (middle[1] ?? 0))).toBeLessThan(2);
    expect(height).toBeGreaterThan(1.5 * width);
  });

  test('that cannot be painted are told in a sentence, and the SVG is still to be had', async () => {
    const page = await openPage();
    await page.addInitScript(() => {
      HTMLCanvasElement.prototype.toBlob = (done) => done(null);
    });
    await page.goto(address);
    await expectDrawn(page);
    await page.getByRole('button', { name: 'Save as PNG: Fan against box' }).press('Enter');
    const told = page.getByText('This browser could not paint the PNG. The SVG shows the same.');
    await told.waitFor();
    await page.mouse.move(0, 0);
    expect(await told.evaluate((text) => getComputedStyle(text.parentElement ?? text).opacity)).toBe('1');
    expect(await textOf(await fileFrom(page, 'Save as SVG: Fan against box'))).toContain('<svg');
    await expect.poll(() => told.count()).toBe(0);
  });
});

function today(page: Page): Promise<string | null> {
  return page.evaluate(() =>
    new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric' }).format(new Date()),
  );
}

describe('the row under a figure', () => {
  const opacity = (page: Page) =>
    page
      .getByRole('button', { name: 'Save as SVG: Fan against box' })
      .evaluate((button) => getComputedStyle(button.parentElement ?? button).opacity);

  test('shows under the mouse and under the keyboard, and is no target below 24 pixels', async () => {
    const page = await openBench();
    await page.mouse.move(0, 0);
    expect(await opacity(page)).toBe('0');
    const button = page.getByRole('button', { name: 'Save as SVG: Fan against box' });
    await button.focus();
    expect(await opacity(page)).toBe('1');
    await page.getByRole('button', { name: 'Print' }).focus();
    expect(await opacity(page)).toBe('0');
    await page.getByRole('figure', { name: 'Fan against box' }).hover();
    expect(await opacity(page)).toBe('1');
    const box = await button.boundingBox();
    expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(24);
  });

  test('is always there where nothing hovers', async () => {
    const page = await openBench({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
    expect(await opacity(page)).toBe('1');
  });

  test('adds no more than two stops on the keyboard’s way to the answer, and is never on paper', async () => {
    const page = await openBench();
    const before = await page.evaluate(() => {
      const question = document.getElementById('will-it-hold-heading');
      return [...document.querySelectorAll('[aria-label^="Save as"]')]
        .filter(
          (button) => (question?.compareDocumentPosition(button) ?? 0) & Node.DOCUMENT_POSITION_PRECEDING,
        )
        .map((button) => button.getAttribute('aria-label'));
    });
    expect(before).toEqual(['Save as SVG: The box, to scale', 'Save as PNG: The box, to scale']);
    await page.emulateMedia({ media: 'print' });
    for (const button of await page.getByRole('button', { name: 'Save as', includeHidden: true }).all())
      expect(await button.isVisible()).toBe(false);
  });
});
