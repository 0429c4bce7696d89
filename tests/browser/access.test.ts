import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { withBrowser } from './bench.ts';
import { contrasts } from './contrasts.ts';
import { views } from './views.ts';

const { openBench } = withBrowser();

const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const desktop = { viewport: { width: 1440, height: 900 } };
const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

async function faults(page: Page, within: string): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .include(within)
    .options({ runOnly: rules, resultTypes: ['violations'] })
    .analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 200)).join(' ')}`);
}

/** Names, roles and order are alike in both schemes, and colours are measured below: every view once is enough. */
test('no fault is found in any view', { timeout: 300_000 }, async () => {
  const page = await openBench(desktop);
  const found: Record<string, string[]> = {};
  let looked = 0;
  for await (const { name, within } of views(page)) {
    // As opened it is looked at in page.test.ts.
    const told = looked === 0 ? [] : await faults(page, within);
    if (told.length > 0) found[name] = told;
    looked++;
  }
  expect(found).toEqual({});
  expect(looked).toBeGreaterThan(15);
});

test('no fault is found on a phone, unfolded and with values wrong', { timeout: 300_000 }, async () => {
  const page = await openBench({ colorScheme: 'dark', ...phone });
  for await (const { name, within } of views(page)) {
    if (!name.startsWith('values wrong')) continue;
    expect(await faults(page, within)).toEqual([]);
    return;
  }
  expect.unreachable('there is no such view');
});

test.each(['light', 'dark'] as const)(
  'every text, drawn ones too, stands out from its ground in any view in the %s scheme',
  { timeout: 300_000 },
  async (colorScheme) => {
    const page = await openBench({ colorScheme, ...desktop });
    const faint = new Map<string, string>();
    const drawn = new Set<string>();
    for await (const { name, within } of views(page)) {
      const measured = await contrasts(page, within);
      expect(measured.length, name).toBeGreaterThan(0);
      for (const { text, ratio, least } of measured) {
        if (text.startsWith('svg ')) drawn.add(text);
        if (!(ratio >= least)) faint.set(`${text}, ${ratio.toFixed(2)}`, name);
      }
    }
    expect([...faint]).toEqual([]);
    expect(drawn.size).toBeGreaterThan(50);
  },
);
