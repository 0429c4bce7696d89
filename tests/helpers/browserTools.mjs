import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { findChromium, findProgram, howToGetChromium } from './findChromium.mjs';

const howToGetPdfinfo =
  'The print tests need pdfinfo, and it was not found. Install it (Debian, Ubuntu: sudo apt-get install poppler-utils; ' +
  'macOS: brew install poppler).';

/**
 * Finds Chromium and pdfinfo. As root on Debian or Ubuntu, installs what is missing; never upgrades what is there.
 * @returns {{ chromium: string, missing: null } | { missing: string }} what is missing, with what to do about it
 */
export function provideBrowserTools() {
  const packages = [];
  if (findChromium() === null && !process.env.CHROMIUM) packages.push('chromium', 'fonts-dejavu-core');
  if (findProgram('pdfinfo') === null) packages.push('poppler-utils');
  if (packages.length > 0 && mayInstall()) aptInstall(packages);
  const chromium = findChromium();
  if (chromium === null) return { missing: howToGetChromium };
  if (spawnSync(chromium, ['--version'], { stdio: 'ignore' }).status !== 0) {
    return { missing: `${chromium} does not start. ${howToGetChromium}` };
  }
  if (findProgram('pdfinfo') === null) return { missing: howToGetPdfinfo };
  return { chromium, missing: null };
}

function mayInstall() {
  return existsSync('/etc/debian_version') && process.getuid?.() === 0 && findProgram('apt-get') !== null;
}

/** @param {readonly string[]} packages */
function aptInstall(packages) {
  console.error(`Installing ${packages.join(', ')} (once)…`);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const apt = (/** @type {string[]} */ ...args) =>
    spawnSync('apt-get', args, { env, stdio: ['ignore', 2, 2] });
  apt('update', '-qq');
  apt('install', '-y', '-qq', '--no-upgrade', '--no-install-recommends', ...packages);
}
