import { type Browser, chromium } from 'playwright';
import { findChromium, howToGetChromium } from '../helpers/findChromium.mjs';

/** Starts the machine's own Chromium, quiet and without a network of its own. */
export function launchChromium(): Promise<Browser> {
  const executablePath = findChromium();
  if (executablePath === null) throw new Error(howToGetChromium);
  return chromium.launch({
    executablePath,
    chromiumSandbox: false,
    args: [
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}
