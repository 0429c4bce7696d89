import { describe, expect, test } from 'vitest';
import { chooseExample, expectDrawn, field, verdict, withBrowser } from './bench.ts';

const { openBench } = withBrowser();

describe('the focus', () => {
  test('goes from the first stop to the last and is nowhere caught', async () => {
    const page = await openBench();
    // By element, not by place: what studies bring meanwhile moves places.
    const seen = await page.evaluateHandle(() => new Map<Element, number>());
    const place = () =>
      seen.evaluate((met) => {
        const here = document.activeElement;
        if (here === null || here === document.body) return -1;
        if (!met.has(here)) met.set(here, met.size);
        return met.get(here) ?? -1;
      });
    const stops: number[] = [];
    for (let press = 0; press < 400; press++) {
      await page.keyboard.press('Tab');
      const at = await place();
      if (stops.length > 0 && (at === -1 || at === stops[0])) break;
      stops.push(at);
    }
    expect(new Set(stops).size).toBe(stops.length);
    expect(stops.length).toBeGreaterThan(40);
    expect(stops.length).toBeLessThan(400);
  });
});

test('who wants no motion gets none', async () => {
  const page = await openBench({ reducedMotion: 'reduce' });
  /** Different pictures of all curves and bars in the frames after a change. */
  await page.evaluate(() => {
    const pictures = new Set<string>();
    const take = () => {
      pictures.add(
        [...document.querySelectorAll('main svg path')].map((path) => path.getAttribute('d')).join(),
      );
      document.documentElement.dataset.pictures = String(pictures.size);
      document.documentElement.dataset.moving = String(
        Math.max(Number(document.documentElement.dataset.moving ?? 0), document.getAnimations().length),
      );
      requestAnimationFrame(take);
    };
    take();
  });
  await chooseExample(page, 'One resistor, two sinks');
  await expectDrawn(page);
  await page.waitForTimeout(2500);
  const { pictures, moving } = await page.evaluate(() => ({ ...document.documentElement.dataset }));
  // One for the drawing, one for each chart: a chart that moved would give one for each frame.
  expect(Number(pictures)).toBeGreaterThan(1);
  expect(Number(pictures)).toBeLessThan(15);
  expect(moving).toBe('0');
  await page.getByRole('link', { name: 'Skip to the drawing' }).focus();
  const scrolling = await page.evaluate(
    () =>
      [...document.querySelectorAll('*')].filter((each) => getComputedStyle(each).scrollBehavior === 'smooth')
        .length,
  );
  expect(scrolling).toBe(0);
});

test('ten keys typed fast are told aloud at most once', async () => {
  const page = await openBench();
  // What is told on opening has been told.
  await page
    .getByRole('status')
    .filter({ hasText: (await verdict(page).textContent()) ?? '' })
    .waitFor({ state: 'attached' });
  await page.evaluate(() => {
    const told: string[] = [];
    const regions =
      '[role="status"], [role="alert"], [role="log"], output, [aria-live]:not([aria-live="off"])';
    new MutationObserver((changes) => {
      const touched = new Set(
        changes.map(({ target }) =>
          (target instanceof Element ? target : target.parentElement)?.closest(regions),
        ),
      );
      for (const region of touched) if (region?.textContent) told.push(region.textContent);
      document.documentElement.dataset.told = JSON.stringify(told);
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
  const clearance = field(page, 'Side clearance');
  const before = await verdict(page).textContent();
  await clearance.focus();
  await clearance.selectText();
  await page.keyboard.type('0.00012 in', { delay: 40 });
  await expect.poll(() => verdict(page).textContent()).not.toBe(before);
  await page.waitForTimeout(2500);
  const told = JSON.parse((await page.locator('html').getAttribute('data-told')) ?? '[]') as string[];
  expect(told).toEqual([await verdict(page).textContent()]);
});
