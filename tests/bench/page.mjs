import { chromium } from 'playwright';
import { preview } from 'vite';
import { ensureBuilt, root } from '../../src/cli/prepare.mjs';
import { findChromium, howToGetChromium } from '../helpers/findChromium.mjs';

/** @param {number} time_ms */
export const rest = (time_ms) => new Promise((resolve) => setTimeout(resolve, time_ms));

/**
 * The built page with the eight-resistor example in real Chromium, on a desk.
 * @param {(page: import('playwright').Page) => Promise<void>} work
 */
export async function onPage(work) {
  const executablePath = findChromium();
  if (executablePath === null) throw new Error(howToGetChromium);
  if (!ensureBuilt()) throw new Error('the app could not be built');
  const server = await preview({ root, logLevel: 'error', preview: { host: '127.0.0.1', port: 4695 } });
  const browser = await chromium.launch({
    executablePath,
    chromiumSandbox: false,
    args: ['--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking'],
  });
  try {
    const context = await browser.newContext({
      viewport: { width: 1440, height: 900 },
      serviceWorkers: 'block',
    });
    const page = await context.newPage();
    await page.goto(server.resolvedUrls?.local[0] ?? '');
    await work(page);
  } finally {
    await browser.close();
    await server.close();
  }
}
