import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright';
import { afterAll, afterEach, beforeAll, expect, inject } from 'vitest';
import { launchChromium } from './chromium.ts';

const desktop = { viewport: { width: 1440, height: 900 } } as const;

interface Kind {
  readonly address?: string;
  readonly serviceWorkers?: 'allow' | 'block';
}

/** What stands in for a service worker says so. */
const blockedWorker = 'Service Worker registration blocked by Playwright';

/**
 * One browser for the tests of a file, one context for each call; whatever a page complains of, or asks of anybody but
 * its own server, fails the test that opened it. Every context is a first visit, on which a service worker would load
 * the whole app once more and answer in place of what a test has put there: only its own tests let it.
 */
export function withBrowser({ address = inject('address'), serviceWorkers = 'block' }: Kind = {}) {
  let browser: Browser;
  let troubles: string[] = [];

  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterEach(async () => {
    for (const context of browser.contexts()) await context.close();
    const told = troubles;
    troubles = [];
    expect(told).toEqual([]);
  });
  afterAll(() => browser.close());

  /** A page that is not yet loaded, watched. */
  const openPage = async (options: BrowserContextOptions = {}): Promise<Page> => {
    const context = await browser.newContext({ ...desktop, serviceWorkers, ...options });
    context.setDefaultTimeout(8000);
    context.on('weberror', (fault) => troubles.push(fault.error().message));
    context.on('console', (message) => {
      if (['error', 'warning'].includes(message.type()) && message.text() !== blockedWorker)
        troubles.push(message.text());
    });
    context.on('request', (request) => {
      if (!request.url().startsWith(address) && !request.url().startsWith('blob:'))
        troubles.push(`asked ${request.url()}`);
    });
    await context.addInitScript(() => {
      document.addEventListener('securitypolicyviolation', (event) => {
        console.error(`blocked by the content policy: ${event.violatedDirective} ${event.blockedURI}`);
      });
    });
    return context.newPage();
  };

  /** The built app, its charts drawn. */
  const openBench = async (options: BrowserContextOptions = {}): Promise<Page> => {
    const page = await openPage(options);
    await page.goto(address);
    await expectDrawn(page);
    return page;
  };
  /** The built app once more, in another tab of the same browser. */
  const openTab = async (beside: Page): Promise<Page> => {
    const page = await beside.context().newPage();
    await page.goto(address);
    await expectDrawn(page);
    return page;
  };
  return { address, openPage, openBench, openTab };
}

/** Waits until all charts of the report stand with their ticks; those of studies come when they are looked at. */
export async function expectDrawn(page: Page): Promise<void> {
  await expect
    .poll(() => page.locator('svg:has(.recharts-cartesian-axis-tick-value)').count())
    .toBeGreaterThanOrEqual(7);
}

/** The answer to a question: the sentence below it. */
export function answerTo(page: Page, question: string): Locator {
  return page.getByRole('region', { name: question, exact: true }).getByRole('paragraph').first();
}

export function verdict(page: Page): Locator {
  return answerTo(page, 'Will it hold?');
}

/** Percent of the fan’s air that goes through the fins, as the drawing's key says. */
export async function percentThroughFins(page: Page): Promise<number> {
  const row = page.getByRole('list', { name: 'Streams of air' }).getByRole('listitem');
  return Number.parseFloat((await row.filter({ hasText: 'through the fins' }).textContent()) ?? '');
}

/** Presses the item number of a part on the drawing. */
export async function chooseOnDrawing(page: Page, part: string): Promise<void> {
  await page
    .getByRole('region', { name: 'The box, to scale' })
    .getByRole('button', { name: new RegExp(`^${part}(,|$)`) })
    .click();
  await page.getByRole('heading', { name: part, exact: true }).waitFor();
}

/** Chooses a part in the list under the drawing, where those are too that cannot be drawn. */
export async function chooseInList(page: Page, part: string): Promise<void> {
  const radio = page.getByRole('radio', { name: new RegExp(`^${part}(,|$)`) });
  await page.getByRole('group', { name: 'Part to edit' }).locator('label').filter({ has: radio }).click();
  await page.getByRole('heading', { name: part, exact: true }).waitFor();
}

/** Presses a button in the list of designs. */
export async function chooseDesign(page: Page, name: string | RegExp): Promise<void> {
  await page.getByRole('button', { name: 'Designs…' }).click();
  await page.getByRole('dialog', { name: 'Designs' }).getByRole('button', { name }).click();
}

export async function chooseExample(page: Page, title: string): Promise<void> {
  await chooseDesign(page, `Example: ${title}`);
  await expect.poll(() => page.getByLabel('Title of the design').inputValue()).toBe(title);
}

/** The text box of the design's input with this label, its unit left out; questions have inputs of their own. */
export function field(page: Page, label: string): Locator {
  const ofTheDesign = page.locator('[id^="field-"], header input');
  return page.getByRole('textbox', { name: new RegExp(`^${label}\\b`) }).and(ofTheDesign);
}

/** What a screen reader adds to a control: the visible text of what describes it. */
export function descriptionOf(control: Locator): Promise<string> {
  return control.evaluate((element) => {
    const id = element.getAttribute('aria-describedby') ?? '';
    const note = document.getElementById(id);
    if (note === null) return `no element ${id}`;
    const walker = document.createTreeWalker(note, NodeFilter.SHOW_TEXT, (text) =>
      text.parentElement?.checkVisibility({ visibilityProperty: true })
        ? NodeFilter.FILTER_ACCEPT
        : NodeFilter.FILTER_REJECT,
    );
    let said = '';
    while (walker.nextNode()) said += walker.currentNode.textContent;
    return said;
  });
}
