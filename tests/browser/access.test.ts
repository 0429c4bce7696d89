import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { withBrowser } from './bench.ts';
import { contrasts } from './contrasts.ts';
import { smallTargets, tooWide, unseenFocus } from './controls.ts';
import { views } from './views.ts';

const { openBench } = withBrowser();

const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const desktop = { viewport: { width: 1440, height: 900 } };

async function faults(page: Page, within: string): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .include(within)
    // Both are measured by means of our own, contrast in pictures too, and targets wherever they are.
    .options({
      runOnly: rules,
      resultTypes: ['violations'],
      rules: { 'color-contrast': { enabled: false }, 'target-size': { enabled: false } },
    })
    // There is one frame: no blank page has to be opened to bring results of many together.
    .setLegacyMode()
    .analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 200)).join(' ')}`);
}

/** WCAG 2.2, 1.4.10: 1280 px at 400 %. */
const enlarged = { viewport: { width: 320, height: 256 } };

/** What was found in each view, by name; each walk through them takes a quarter of a minute, so it looks for several things. */
type Found = Record<string, string[]>;

function note(found: Found, view: string, told: readonly string[]): void {
  if (told.length > 0) found[view] = [...(found[view] ?? []), ...told];
}

/** Texts that do not stand out; `drawn` gathers those in pictures, which axe does not see. */
async function faintTexts(page: Page, within: string, drawn: Set<string>): Promise<string[]> {
  const measured = await contrasts(page, within);
  expect(measured.length, within).toBeGreaterThan(0);
  for (const { text } of measured) if (text.startsWith('svg ')) drawn.add(text);
  return measured
    .filter(({ ratio, least }) => !(ratio >= least))
    .map(({ text, ratio }) => `${text}, ${ratio.toFixed(2)}`);
}

describe('in any view', () => {
  test('no fault is found, every text stands out, what is pressed is 24 px large, and the focus shows', {
    timeout: 400_000,
  }, async () => {
    const page = await openBench(desktop);
    const found: Found = {};
    const drawn = new Set<string>();
    const most = { targets: 0, stops: 0 };
    let looked = 0;
    for await (const { name, within } of views(page)) {
      // As opened it is looked at in page.test.ts.
      if (looked++ > 0) note(found, name, await faults(page, within));
      note(found, name, await faintTexts(page, within, drawn));
      const targets = await smallTargets(page, within);
      note(found, name, targets.small);
      await page.keyboard.press('Tab');
      const stops = await unseenFocus(page, within);
      note(found, name, stops.unseen);
      most.targets = Math.max(most.targets, targets.all);
      most.stops = Math.max(most.stops, stops.all);
    }
    expect(found).toEqual({});
    expect(looked).toBeGreaterThan(25);
    expect(drawn.size).toBeGreaterThan(50);
    expect(most.targets).toBeGreaterThan(80);
    expect(most.stops).toBeGreaterThan(60);
  });

  test('at 400 %, by touch and in the dark, nothing has to be scrolled sideways, every text stands out, all is large enough for a finger', {
    timeout: 300_000,
  }, async () => {
    const page = await openBench({ colorScheme: 'dark', hasTouch: true, ...enlarged });
    const found: Found = {};
    const drawn = new Set<string>();
    for await (const { name, within } of views(page)) {
      note(found, name, (await tooWide(page)).slice(0, 6));
      note(found, name, await faintTexts(page, within, drawn));
      note(found, name, (await smallTargets(page, within)).small);
      if (name.startsWith('values wrong')) note(found, name, await faults(page, within));
    }
    expect(found).toEqual({});
    expect(drawn.size).toBeGreaterThan(50);
  });
});
