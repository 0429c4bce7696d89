import { execFileSync } from 'node:child_process';
import type { Page } from 'playwright';
import { afterAll, beforeAll, beforeEach, describe, expect, inject, test } from 'vitest';
import { chooseInList, expectDrawn, field, verdict, withBrowser } from './bench.ts';
import { type Edition, serveVersions } from './versionServer.ts';

const server = await serveVersions();
const { address, openPage } = withBrowser({ address: server.address, serviceWorkers: 'allow' });
let first: Edition;
let second: Edition;

beforeAll(async () => {
  first = await server.edition('first');
  second = await server.edition('second');
});
beforeEach(async () => {
  server.serve(first);
  server.wellAgain();
  await server.reopen();
});
afterAll(() => server.remove());

/** A visit, until everything is stored. */
async function visit(page: Page): Promise<void> {
  await page.goto(address);
  await page.getByText('Works without network.').waitFor();
  await expectDrawn(page);
}

async function cutNetwork(page: Page): Promise<void> {
  await page.context().setOffline(true);
  await server.close();
}

const versionOn = (page: Page) =>
  page.locator('meta[name="version"]').getAttribute('content', { timeout: 8000 });
const versionsStored = async (page: Page) =>
  (await page.evaluate(() => caches.keys())).map((name) => name.split(' ').at(-1));
const offer = (page: Page) => page.getByText('A newer Throughfin is ready.');
const openNewer = (page: Page) => page.getByRole('button', { name: 'Open the newer version' });

/** As the page does by itself once an hour and on every visit. */
function askForUpdate(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    return (
      registration?.update().then(
        () => 'asked',
        (error: Error) => error.name,
      ) ?? 'no worker'
    );
  });
}

describe('without network, after one visit', () => {
  test('the page opens again with its charts, answers what is typed, and prints', async () => {
    const page = await openPage();
    await visit(page);
    await cutNetwork(page);
    await page.reload();
    await expectDrawn(page);
    const before = await verdict(page).textContent();
    await field(page, 'Side clearance').fill('1/8 in');
    await expect.poll(() => verdict(page).textContent()).not.toBe(before);
    // A part that nobody has opened yet.
    await chooseInList(page, 'Resistors');
    await page.getByRole('button', { name: 'Add a resistor' }).waitFor();
    const pdf = await page.pdf({ format: 'A4' });
    expect(execFileSync('pdfinfo', ['-'], { input: pdf }).toString()).toMatch(/^Pages:\s+1$/m);
    expect(execFileSync('pdftotext', ['-', '-'], { input: pdf }).toString()).toContain('Eight in a row');
  });

  test('it opens in a new tab, by whatever address leads to it', async () => {
    const page = await openPage();
    await visit(page);
    await cutNetwork(page);
    for (const path of ['', 'index.html', '?from=home', '#bench']) {
      const tab = await page.context().newPage();
      await tab.goto(address + path);
      await expectDrawn(tab);
      await tab.close();
    }
  });

  test('the first page itself still loads what it had not loaded', async () => {
    const page = await openPage();
    await visit(page);
    await cutNetwork(page);
    await chooseInList(page, 'Resistors');
    await page.getByRole('button', { name: 'Add a resistor' }).waitFor();
  });
});

describe('a newer version', () => {
  test('waits until it is wanted, keeps right and wrong entries over the change, and leaves the other tab alone', async () => {
    const page = await openPage();
    await visit(page);
    const other = await page.context().newPage();
    await visit(other);
    server.serve(second);
    expect(await askForUpdate(page)).toBe('asked');
    await offer(page).waitFor();
    await offer(other).waitFor();
    await page.reload();
    await offer(page).waitFor();
    expect(await versionOn(page)).toBe(first.version);

    await field(page, 'Side clearance').fill('1/16 in');
    await field(page, 'Stand-off').fill('abc');
    await page.getByText('Last good answer.').waitFor();
    const before = await verdict(page).textContent();
    await field(other, 'Title of the design').fill('Another box');
    await other.evaluate(() => document.documentElement.setAttribute('data-same', 'yes'));
    await openNewer(page).click();
    await expect.poll(() => versionOn(page).catch(() => null)).toBe(second.version);
    await expectDrawn(page);
    expect(await field(page, 'Side clearance').inputValue()).toBe('1/16 in');
    expect(await field(page, 'Stand-off').inputValue()).toBe('abc');
    expect(await field(page, 'Title of the design').inputValue()).toBe('Eight in a row');
    expect(await verdict(page).textContent()).toBe(before);
    await page.getByText('Last good answer.').waitFor();
    await page.getByText('Works without network.').waitFor();
    expect(await offer(page).count()).toBe(0);

    expect(await versionOn(other)).toBe(first.version);
    expect(await other.locator('html').getAttribute('data-same')).toBe('yes');
    expect(await offer(other).count()).toBe(1);
    // Longer than the worker waits before it clears up: what the other tab needs is still there, and nowhere else.
    await page.waitForTimeout(4000);
    expect(await versionsStored(page)).toEqual([first.version, second.version]);
    await cutNetwork(page);
    await chooseInList(other, 'Resistors');
    await other.getByRole('button', { name: 'Add a resistor' }).waitFor();

    await openNewer(other).click();
    await expect.poll(() => versionOn(other).catch(() => null)).toBe(second.version);
    expect(await field(other, 'Title of the design').inputValue()).toBe('Another box');
    await expect.poll(() => versionsStored(other)).toEqual([second.version]);
  });

  test('opens by itself where all tabs were closed', async () => {
    const page = await openPage();
    await visit(page);
    server.serve(second);
    await askForUpdate(page);
    await offer(page).waitFor();
    const context = page.context();
    await page.close();
    // The browser takes a moment to see that the last tab is gone; a tab that opens before gets the older version.
    const opened = async () => {
      const tab = await context.newPage();
      await visit(tab);
      const version = await versionOn(tab);
      await tab.close();
      return version;
    };
    await expect.poll(opened).toBe(second.version);
  });

  test('that may wait is offered in the line at the foot', async () => {
    const page = await openPage();
    await visit(page);
    server.serve(second);
    await askForUpdate(page);
    await page.getByRole('button', { name: 'Later' }).click();
    expect(await offer(page).count()).toBe(0);
    await page.getByRole('contentinfo').getByRole('button', { name: 'Open the newer version' }).click();
    await expect.poll(() => versionOn(page).catch(() => null)).toBe(second.version);
  });

  test('does not open while the browser refuses to keep what is typed, unless that is wanted', async () => {
    const page = await openPage();
    await visit(page);
    server.serve(second);
    await askForUpdate(page);
    await page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await field(page, 'Title of the design').fill('Mine');
    await openNewer(page).click();
    await page.getByText('This browser would not keep what you typed.').waitFor();
    expect(await versionOn(page)).toBe(first.version);
    await page.getByRole('button', { name: 'Open without it' }).click();
    await expect.poll(() => versionOn(page).catch(() => null)).toBe(second.version);
  });

  test.each([
    ['breaks off in the middle of a file', () => server.fail(/ListEditors.*js$/, 'breaks off')],
    ['lacks a file', () => server.fail(/ListEditors.*js$/, 'lacks')],
    // As while files are being copied onto a server: the list is new, a part is not.
    [
      'gives its page for a part that is not there yet',
      () => server.fail(/ListEditors.*js$/, 'gives its page'),
    ],
  ])('does not take the place of the good one where its download %s', async (_, trouble) => {
    const page = await openPage();
    await visit(page);
    server.serve(second);
    trouble();
    expect(await askForUpdate(page)).not.toBe('no worker');
    await expect
      .poll(() =>
        page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.installing ?? null),
      )
      .toBe(null);
    expect(await offer(page).count()).toBe(0);
    await page.context().setOffline(true);
    await page.reload();
    await expectDrawn(page);
    expect(await versionOn(page)).toBe(first.version);

    await page.context().setOffline(false);
    server.wellAgain();
    await askForUpdate(page);
    await openNewer(page).click();
    await expect.poll(() => versionOn(page).catch(() => null)).toBe(second.version);
  });
});

describe('what is stored', () => {
  test('heals by itself where a file was harmed and another one lost', async () => {
    const page = await openPage();
    await visit(page);
    const lengths = () =>
      page.evaluate(async () => {
        const [name = ''] = await caches.keys();
        const cache = await caches.open(name);
        const found: Record<string, number> = {};
        for (const { url } of await cache.keys())
          found[url] = (await (await cache.match(url))?.text())?.length ?? 0;
        return found;
      });
    const whole = await lengths();
    await page.evaluate(async (kept) => {
      const [name = ''] = await caches.keys();
      const cache = await caches.open(name);
      const harmed = kept.find((url) => /\/Details-.*js$/.test(url)) ?? '';
      const lost = kept.find((url) => /\/index-.*js$/.test(url)) ?? '';
      await cache.put(harmed, new Response('half a fi', { headers: { 'Content-Type': 'text/javascript' } }));
      await cache.delete(lost);
    }, Object.keys(whole));
    expect(await lengths()).not.toEqual(whole);
    // A visit to the page's picture wakes the worker's upkeep and does not trip over what is broken.
    const tab = await page.context().newPage();
    await tab.goto(`${address}icon.svg`);
    await expect.poll(lengths).toEqual(whole);
    await cutNetwork(page);
    await page.reload();
    await expectDrawn(page);
  });
});

describe('a browser that stores nothing', () => {
  test.each([
    [
      'because it knows no workers',
      async (page: Page) =>
        page.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker')),
    ],
    [
      'because it refuses',
      async (page: Page) =>
        page.addInitScript(() => {
          ServiceWorkerContainer.prototype.register = () =>
            Promise.reject(new DOMException('no', 'SecurityError'));
        }),
    ],
  ])('%s works as ever and promises nothing', async (_, refuse) => {
    const page = await openPage();
    await refuse(page);
    await page.goto(address);
    await expectDrawn(page);
    await page.getByText(`Version ${first.version.replace('+', ', build ')}`).waitFor();
    await page.waitForTimeout(500);
    expect(await page.getByText('Works without network.').count()).toBe(0);
    const before = await verdict(page).textContent();
    await field(page, 'Side clearance').fill('3 mm');
    await expect.poll(() => verdict(page).textContent()).not.toBe(before);
  });
});

describe('installing', () => {
  test('finds a manifest with a name, colours and icons of the sizes they claim', async () => {
    const page = await openPage();
    await visit(page);
    const client = await page.context().newCDPSession(page);
    const { errors, url, data } = await client.send('Page.getAppManifest');
    expect(errors).toEqual([]);
    expect(url).toBe(`${address}throughfin.webmanifest`);
    const { installabilityErrors } = await client.send('Page.getInstallabilityErrors');
    expect(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== 'in-incognito')).toEqual(
      [],
    );
    const { icons } = JSON.parse(data ?? '') as { icons: { src: string; sizes: string }[] };
    for (const { src, sizes } of icons.filter(({ sizes }) => sizes !== 'any')) {
      const size = await page.evaluate(async (path) => {
        const image = new Image();
        image.src = path;
        await image.decode();
        return `${image.naturalWidth}x${image.naturalHeight}`;
      }, src);
      expect(size).toBe(sizes);
    }
  });

  test('meets a server that has the browser ask for the worker and the page anew each time', async () => {
    for (const path of ['', 'serviceWorker.js', 'throughfin.webmanifest']) {
      const response = await fetch(inject('address') + path);
      expect(response.headers.get('Cache-Control'), path).toBe('no-cache');
    }
    const { headers } = await fetch(`${inject('address')}serviceWorker.js`);
    expect(headers.get('Content-Type')).toMatch(/javascript/);
  });
});
