import type { Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { chooseInList, field, withBrowser } from './bench.ts';

const { address, openBench, openPage } = withBrowser();

const parts = [
  'Fan',
  'Inlet guard',
  'Neck-down',
  'Plenum',
  'Sinks',
  'Resistors',
  'Bond lines',
  'Box',
  'Outlet grille',
  'Baffle',
  'Second face',
];

const panel = (page: Page) =>
  page.getByRole('region', { name: /./ }).filter({ has: page.locator('#part-heading') });
const figure = (page: Page) => panel(page).getByRole('img').first();
const line = (page: Page, path: string) => figure(page).locator(`[data-path="${path}"]`);

interface Look {
  readonly texts: number;
  /** What a draughtsman would strike out, in words. */
  readonly faults: string[];
  readonly smallest_px: number;
  readonly faintest: number;
}

/** Measures the figure on the page as it is painted: its texts, what they lie on, and what runs through them. */
function look(page: Page): Promise<Look> {
  return figure(page).evaluate((svg: SVGSVGElement) => {
    const pen = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
    const toScreen = svg.getScreenCTM();
    if (pen === null || toScreen === null) throw new Error('nothing is painted');
    const luminance = (colour: string) => {
      pen.clearRect(0, 0, 1, 1);
      pen.fillStyle = colour;
      pen.fillRect(0, 0, 1, 1);
      const [r = 0, g = 0, b = 0] = [...pen.getImageData(0, 0, 1, 1).data].map((byte) => {
        const share = byte / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const ground = luminance(getComputedStyle(document.documentElement).backgroundColor);
    const paper = svg.getBoundingClientRect();
    const leaves = [...svg.querySelectorAll('text')].flatMap((text) => {
      const rows = [...text.querySelectorAll('tspan')];
      return rows.length > 0 ? rows : [text];
    });
    const texts = leaves.map((leaf) => {
      const { left, right, top, bottom } = leaf.getBoundingClientRect();
      const light = luminance(getComputedStyle(leaf).fill);
      return {
        words: leaf.textContent ?? '',
        size_px: Number.parseFloat(getComputedStyle(leaf).fontSize) * toScreen.a,
        contrast: (Math.max(light, ground) + 0.05) / (Math.min(light, ground) + 0.05),
        box: { left, right, top: top + 1.5, bottom: bottom - 1.5 },
      };
    });

    const faults: string[] = [];
    for (const [index, { words, box }] of texts.entries()) {
      if (box.left < paper.left - 0.5 || box.right > paper.right + 0.5)
        faults.push(`${words}: over the side`);
      if (box.top < paper.top - 0.5 || box.bottom > paper.bottom + 0.5)
        faults.push(`${words}: over the edge`);
      for (const { words: others, box: other } of texts.slice(index + 1)) {
        if (
          box.left < other.right &&
          other.left < box.right &&
          box.top < other.bottom &&
          other.top < box.bottom
        )
          faults.push(`${words}: over ${others}`);
      }
    }
    for (const path of svg.querySelectorAll('path')) {
      const length = path.getTotalLength();
      const isFilled = getComputedStyle(path).fill !== 'none';
      const crossed = new Set<string>();
      for (let along = 0; along <= length; along += 1) {
        const { x, y } = path.getPointAtLength(along).matrixTransform(toScreen);
        for (const { words, box } of texts)
          if (x > box.left && x < box.right && y > box.top && y < box.bottom) crossed.add(words);
      }
      for (const { words, box } of texts) {
        const middle = new DOMPoint((box.left + box.right) / 2, (box.top + box.bottom) / 2);
        if (isFilled && path.isPointInFill(middle.matrixTransform(toScreen.inverse()))) crossed.add(words);
      }
      for (const words of crossed)
        faults.push(`${words}: under a line or on a shape, ${path.getAttribute('d')}`);
    }
    return {
      texts: texts.length,
      faults,
      smallest_px: Math.min(...texts.map(({ size_px }) => size_px)),
      faintest: Math.min(...texts.map(({ contrast }) => contrast)),
    };
  });
}

async function expectClean(page: Page, what: string): Promise<void> {
  await figure(page).waitFor();
  const { texts, faults, smallest_px, faintest } = await look(page);
  expect(texts, what).toBeGreaterThanOrEqual(2);
  expect(faults, what).toEqual([]);
  expect(smallest_px, what).toBeGreaterThanOrEqual(11);
  expect(faintest, what).toBeGreaterThanOrEqual(4.5);
}

// Places depend on width and words, not on the scheme, and colours on the scheme alone: either is looked at in full once.
describe('every figure', () => {
  test.each([
    ['light, in millimetres on a desktop', 'light', 'mm', { width: 1440, height: 900 }],
    ['dark, in inches on the narrowest phone', 'dark', 'in', { width: 320, height: 700 }],
  ] as const)('is clean and legible: %s', { timeout: 60_000 }, async (_, colorScheme, system, viewport) => {
    const page = await openBench({ colorScheme, viewport });
    await page.getByText(system, { exact: true }).first().click();
    expect(
      await page.getByRole('radio', { name: system === 'in' ? 'Inch units' : 'Metric units' }).isChecked(),
    ).toBe(true);
    for (const part of parts) {
      await chooseInList(page, part);
      await expectClean(page, part);
    }
    for (const way of ['bonded', 'free']) {
      await page.getByRole('combobox', { name: 'Second face' }).selectOption(way);
      await expectClean(page, way);
    }
    await chooseInList(page, 'Baffle');
    await page.getByRole('checkbox', { name: 'Baffle fitted' }).uncheck();
    await expect.poll(() => figure(page).getAttribute('aria-label')).toContain('without a baffle');
    await expectClean(page, 'no baffle');
  });
});

describe('a measure in a figure', () => {
  test('takes the cursor to its field when clicked, and stands out while the field has it', async () => {
    const page = await openBench();
    await chooseInList(page, 'Baffle');
    const collar = line(page, 'baffle.collar_m');
    const weight = () =>
      collar
        .locator('path')
        .nth(2)
        .evaluate((path) => getComputedStyle(path).strokeWidth);
    await page.mouse.move(2, 2);
    expect(await collar.getAttribute('data-strong')).toBe('false');
    const plain = await weight();

    await collar.getByText('Collar').click();
    expect(await field(page, 'Collar height').evaluate((box) => box === document.activeElement)).toBe(true);
    await page.mouse.move(2, 2);
    await expect.poll(() => collar.getAttribute('data-strong')).toBe('true');
    expect(await weight()).not.toBe(plain);

    await page.keyboard.press('Tab');
    await expect.poll(() => line(page, 'baffle.leakGap_m').getAttribute('data-strong')).toBe('true');
    expect(await collar.getAttribute('data-strong')).toBe('false');

    await page.getByText('Opening under the fins, along the whole row.').hover();
    await expect.poll(() => line(page, 'baffle.slotWidth_m').getAttribute('data-strong')).toBe('true');
  });

  test('is no stop on the way of the keyboard', async () => {
    const page = await openBench();
    await chooseInList(page, 'Baffle');
    await figure(page).waitFor();
    await page.getByRole('heading', { name: 'Baffle', exact: true }).focus();
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('field-baffle.fitted');
  });
});

describe('the panel of a part', () => {
  test('shows all fields of the baffle under its figure in a window 900 px high', async () => {
    const page = await openBench();
    await chooseInList(page, 'Baffle');
    await page.evaluate(() => window.scrollTo(0, 0));
    const last = await field(page, 'Baffle sheet').boundingBox();
    expect((last?.y ?? 900) + (last?.height ?? 0)).toBeLessThan(900);
  });

  test('keeps room for its figure until that has come, so that nothing moves', async () => {
    const page = await openPage();
    let send = () => {};
    const sent = new Promise<void>((resolve) => {
      send = resolve;
    });
    await page.route(/PartFigure/, async (route) => {
      await sent;
      await route.continue();
    });
    await page.goto(address);
    await chooseInList(page, 'Baffle');
    const first = page.getByRole('checkbox', { name: 'Baffle fitted' });
    const before = await first.boundingBox();
    expect(await figure(page).count()).toBe(0);
    send();
    await figure(page).waitFor();
    expect(await first.boundingBox()).toEqual(before);
  });

  test('stays off the printed sheet and inside the page at 400 % of a desktop', async () => {
    const page = await openBench({ viewport: { width: 360, height: 225 } });
    await chooseInList(page, 'Sinks');
    const box = await figure(page).boundingBox();
    expect((box?.x ?? -1) >= 0 && (box?.x ?? 0) + (box?.width ?? 999) <= 360).toBe(true);
    await page.emulateMedia({ media: 'print' });
    expect(await figure(page).isVisible()).toBe(false);
  });
});
