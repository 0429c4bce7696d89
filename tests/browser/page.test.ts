import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { launchChromium } from './chromium.ts';

const address = inject('address');
let browser: Browser;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

/** Opens the built page and keeps what goes wrong on the way and every address it asked for. */
async function open(page: Page) {
  const troubles: string[] = [];
  const addresses: string[] = [];
  page.on('pageerror', (error) => troubles.push(error.message));
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) troubles.push(message.text());
  });
  page.on('request', (request) => addresses.push(request.url()));
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      console.error(`blocked by the content policy: ${event.violatedDirective} ${event.blockedURI}`);
    });
  });
  await page.goto(address, { waitUntil: 'networkidle' });
  return { troubles, addresses };
}

describe.each(['light', 'dark'] as const)('the built page, %s', (colorScheme) => {
  let page: Page;
  let opened: Awaited<ReturnType<typeof open>>;

  beforeAll(async () => {
    const context = await browser.newContext({ colorScheme, viewport: { width: 1440, height: 900 } });
    page = await context.newPage();
    opened = await open(page);
  });

  test('stands up under its content policy without an error or a warning', async () => {
    expect(await page.title()).toContain('Throughfin');
    expect(await page.getByRole('main').textContent()).not.toBe('');
    expect(opened.troubles).toEqual([]);
  });

  test('asks nobody but its own server', () => {
    expect(opened.addresses.length).toBeGreaterThan(1);
    expect(opened.addresses.filter((each) => !each.startsWith(address))).toEqual([]);
  });

  test('has no accessibility fault that a program can find', async () => {
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual(
      [],
    );
  });
});

test('the content policy blocks what it should', async () => {
  const page = await browser.newPage();
  const { troubles } = await open(page);
  await page.evaluate(() => {
    document.body.insertAdjacentHTML('beforeend', '<style>body { color: red }</style>');
  });
  await expect.poll(() => troubles.join()).toContain('blocked by the content policy: style-src');
  await page.close();
});
