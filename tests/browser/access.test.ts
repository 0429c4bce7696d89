import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { chooseOnDrawing, field, withBrowser } from './bench.ts';

const { openBench } = withBrowser();

const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

async function faults(page: Page, within = 'html'): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .include(within)
    .options({ runOnly: rules, resultTypes: ['violations'] })
    .analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 200)).join(' ')}`);
}

/**
 * Contrast of every text in the charts against what is painted behind it, by the relative luminance of WCAG 2.2.
 * Programs that look for faults pass over text in an SVG.
 */
function chartContrasts(page: Page): Promise<{ text: string; ratio: number }[]> {
  return page.evaluate(() => {
    const pen = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
    if (pen === null) throw new Error('no canvas');
    const paint = (colour: string) => {
      pen.clearRect(0, 0, 1, 1);
      pen.fillStyle = colour;
      pen.fillRect(0, 0, 1, 1);
      return [...pen.getImageData(0, 0, 1, 1).data];
    };
    const luminance = (rgb: number[]) => {
      const [r = 0, g = 0, b = 0] = rgb.map((byte) => {
        const share = byte / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const behind = (element: Element): number[] => {
      for (let up: Element | null = element; up; up = up.parentElement) {
        const ground = paint(getComputedStyle(up).backgroundColor);
        if (ground[3] === 255) return ground;
      }
      return [255, 255, 255, 255];
    };
    return [...document.querySelectorAll('svg.recharts-surface text')].map((text) => {
      const lights = [luminance(paint(getComputedStyle(text).fill)), luminance(behind(text))];
      return {
        text: text.textContent ?? '',
        ratio: (Math.max(...lights) + 0.05) / (Math.min(...lights) + 0.05),
      };
    });
  });
}

describe.each(['light', 'dark'] as const)('in the %s scheme', (colorScheme) => {
  test.each([
    ['desktop', { viewport: { width: 1440, height: 900 } }],
    ['phone', { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }],
  ] as const)(
    'no fault is found on a %s, with a part chosen, values wrong and tables open',
    async (_, device) => {
      const page = await openBench({ colorScheme, ...device });
      await chooseOnDrawing(page, 'Fan');
      await field(page, 'Point 2, flow').fill('abc');
      await field(page, 'Fan supply').fill('nonsense');
      await page.getByText('Table: Limits, most urgent first').click();
      await page.getByText('Table: Fan curve and the box’s own curve').click();
      await page.getByRole('region', { name: 'Fan curve and the box’s own curve' }).waitFor();
      await page.getByText('Last good answer.').waitFor();
      expect(await faults(page)).toEqual([]);
    },
  );

  test('no fault is found in the message about a refused file', async () => {
    const page = await openBench({ colorScheme });
    await page.getByLabel('Design file').setInputFiles({
      name: 'broken.json',
      mimeType: 'application/json',
      buffer: Buffer.from('{'),
    });
    await page.getByRole('dialog').waitFor();
    expect(await faults(page, 'dialog')).toEqual([]);
  });

  test('every text in the charts stands out from its ground by 4.5 to 1', async () => {
    const page = await openBench({ colorScheme });
    const contrasts = await chartContrasts(page);
    expect(contrasts.length).toBeGreaterThan(20);
    expect(contrasts.filter(({ ratio }) => !(ratio >= 4.5))).toEqual([]);
  });
});
