import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { exampleById } from '../../src/model/examples/examples.ts';
import { sampleOf } from '../helpers/sampleReport.ts';
import { field, verdict, withBrowser } from './bench.ts';

const { openBench } = withBrowser();

interface Focused {
  readonly role: string;
  readonly name: string;
  /** Whether it, or the label around it, shows that it has the focus. */
  readonly shown: boolean;
}

function focused(page: Page): Promise<Focused> {
  return page.evaluate(() => {
    const element = document.activeElement as HTMLElement;
    const label = 'labels' in element ? (element.labels as NodeListOf<HTMLElement>)[0] : undefined;
    const isOutlined = (each: Element | null | undefined) =>
      each != null &&
      getComputedStyle(each).outlineStyle !== 'none' &&
      getComputedStyle(each).outlineWidth !== '0px';
    const borderOf = (each: Element) => getComputedStyle(each).borderTopColor;
    const titled = element.getAttribute('aria-label') === 'Title of the design';
    return {
      role: element.tagName.toLowerCase(),
      name: element.getAttribute('aria-label') ?? label?.textContent ?? element.textContent ?? '',
      shown:
        isOutlined(element) ||
        isOutlined(label) ||
        isOutlined(element.parentElement) ||
        (titled && borderOf(element) !== 'rgba(0, 0, 0, 0)'),
    };
  });
}

/** Presses Tab until what is wanted has the focus; every stop on the way has to show itself. */
async function tabTo(page: Page, name: RegExp, key = 'Tab'): Promise<void> {
  const stops: string[] = [];
  for (let press = 0; press < 120; press++) {
    await page.keyboard.press(key);
    const stop = await focused(page);
    stops.push(`${stop.role} ${stop.name}`);
    if (stop.role !== 'body') expect(stop, 'a stop that nobody sees').toMatchObject({ shown: true });
    if (name.test(stop.name)) return;
  }
  throw new Error(`no way to ${name} by ${key}: ${stops.join(' · ')}`);
}

test('the whole job is done without a mouse: part, value, verdict, table, print', async () => {
  const page = await openBench();
  await page.evaluate(() => {
    window.print = () => document.documentElement.setAttribute('data-printed', 'yes');
  });
  const before = await verdict(page).textContent();

  await tabTo(page, /^Skip to the drawing/);
  await page.keyboard.press('Enter');
  await tabTo(page, /^Fan, /);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Fan', exact: true }).waitFor();
  await tabTo(page, /^Baffle, /);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Baffle', exact: true }).waitFor();

  await tabTo(page, /^Side clearance \(/);
  await page.keyboard.type('1/8 in');
  const eight = exampleById('eightResistors');
  const expected = sampleOf({ ...eight, baffle: { ...eight.baffle, sideClearance_m: 0.0254 / 8 } });
  await expect.poll(() => verdict(page).textContent()).toBe(expected.report.verdict.sentence);
  expect(expected.report.verdict.sentence).not.toBe(before);

  await tabTo(page, /^Table: Fan curve/);
  await page.keyboard.press('Enter');
  await page.getByRole('table').first().waitFor();
  expect(await page.getByRole('row').count()).toBeGreaterThan(5);

  await tabTo(page, /^Print…$/, 'Shift+Tab');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Print the one-page summary' }).waitFor();
  await page.keyboard.press('Enter');
  expect(await page.locator('html').getAttribute('data-printed')).toBe('yes');
});

test('the list of parts is one stop, and the arrows go along it', async () => {
  const page = await openBench();
  await tabTo(page, /Baffle$/);
  await page.keyboard.press('ArrowRight');
  await page.getByRole('heading', { name: 'Sinks', exact: true }).waitFor();
  await page.keyboard.press('Tab');
  expect((await focused(page)).name).toMatch(/^Fins/);
});

test('the arrow keys nudge a number by its last digit and leave its unit alone', async () => {
  const page = await openBench();
  const clearance = field(page, 'Side clearance');
  await clearance.fill('1.6 mm');
  await clearance.press('ArrowUp');
  expect(await clearance.inputValue()).toBe('1.7 mm');
  await clearance.press('ArrowDown');
  await clearance.press('ArrowDown');
  expect(await clearance.inputValue()).toBe('1.5 mm');
});
