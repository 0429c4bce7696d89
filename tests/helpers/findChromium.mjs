import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

const places = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
];

export const howToGetChromium =
  'The browser tests need Chromium, and none was found. Install it (Debian, Ubuntu: sudo apt-get install chromium; ' +
  'macOS: brew install --cask chromium), or set CHROMIUM to the full path of a Chromium or Chrome.';

/** @param {string} file */
function isExecutable(file) {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/**
 * Full path of a program on the search path.
 * @param {string} name
 * @returns {string | null}
 */
export function findProgram(name) {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return folders.map((folder) => join(folder, name)).find(isExecutable) ?? null;
}

/**
 * Full path of a Chromium or Chrome: the one named by CHROMIUM, else the first found. A CHROMIUM that points nowhere
 * is a mistake to tell, not to work around.
 * @returns {string | null}
 */
export function findChromium() {
  const { CHROMIUM } = process.env;
  if (CHROMIUM) return isExecutable(CHROMIUM) ? CHROMIUM : null;
  for (const name of names) {
    const found = findProgram(name);
    if (found !== null) return found;
  }
  return places.find(isExecutable) ?? null;
}
