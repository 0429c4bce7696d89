import type { Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { exampleById } from '../../src/model/examples/examples.ts';
import { chooseExample, chooseInList, expectDrawn, withBrowser } from './bench.ts';

const { openBench } = withBrowser();
const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

/** Everything ordinary, the longest row with the most kinds, the most readings: the others show nothing wider. */
const widest = ['eightResistors', 'twoDozen', 'prototype'] as const;

/** What makes the page wider than the screen. */
function sticksOut(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const edge = document.documentElement.clientWidth;
    const width = document.documentElement.scrollWidth;
    if (width <= edge && innerWidth === 390) return [];
    const found = [...document.querySelectorAll('body *')].filter(
      (element) => element.getBoundingClientRect().right > 390.5,
    );
    return [`${width} px wide`, ...found.map((each) => each.outerHTML.slice(0, 120))];
  });
}

describe('on a phone', () => {
  test.each(widest.map((id) => exampleById(id).title))(
    '“%s” needs no sideways scrolling, whatever part is open',
    async (title) => {
      const page = await openBench(phone);
      await chooseExample(page, title);
      await expectDrawn(page);
      expect(await sticksOut(page)).toEqual([]);
      for (const part of ['Load', 'Fan', 'Resistors', 'Bond lines', 'Second face', 'Extra losses']) {
        await chooseInList(page, part);
        expect(await sticksOut(page)).toEqual([]);
      }
      await page.evaluate(() => {
        for (const details of document.querySelectorAll('details')) details.open = true;
      });
      expect(await sticksOut(page)).toEqual([]);
    },
  );

  test('the verdict stays in view from the first field to the last line', async () => {
    const page = await openBench(phone);
    const mark = page.getByRole('main').getByText('holds with little to spare', { exact: true }).first();
    const bottom = await page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
    expect(bottom).toBeGreaterThan(2000);
    for (const share of [0, 0.1, 0.25, 0.5, 0.75, 0.9, 1]) {
      await page.evaluate((y) => scrollTo({ top: y, behavior: 'instant' }), share * bottom);
      const place = await mark.boundingBox();
      const where = `scrolled by ${Math.round(share * 100)} %`;
      expect(place?.y ?? -1, where).toBeGreaterThanOrEqual(0);
      expect((place?.y ?? 1e9) + (place?.height ?? 0), where).toBeLessThan(844);
      const onTop = await page.evaluate(
        ([x = 0, y = 0]) => document.elementFromPoint(x, y)?.textContent ?? '',
        [(place?.x ?? 0) + 5, (place?.y ?? 0) + 5],
      );
      expect(onTop, where).toContain('holds with little to spare');
    }
  });

  test('everything to be touched is large enough for a finger', async () => {
    const page = await openBench(phone);
    await chooseInList(page, 'Fan');
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('button, select, summary, label:has(input[type=radio]), [data-invalid]')]
        .map((element) => ({ element, box: element.getBoundingClientRect() }))
        // 24 px by 24 px: WCAG 2.2, success criterion 2.5.8.
        .filter(({ box }) => box.width > 0 && (box.width < 24 || box.height < 24))
        .map(({ element, box }) => `${element.textContent} ${box.width} × ${box.height}`),
    );
    expect(small).toEqual([]);
  });
});
