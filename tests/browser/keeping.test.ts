import type { Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { chooseDesign, chooseExample, expectDrawn, field, verdict, withBrowser } from './bench.ts';

const { address, openBench, openPage, openTab } = withBrowser();
const title = (page: Page) => page.getByLabel('Title of the design');
const keptRow = (page: Page, name: RegExp) =>
  page.getByRole('region', { name: 'Kept in this browser' }).getByRole('button', { name });
/** A design is written 0.4 s after it stopped changing. */
const settle = (page: Page) => page.waitForTimeout(900);

describe('what was typed', () => {
  test('is still there after a reload, as it was typed, wrong texts too', async () => {
    const page = await openBench();
    await title(page).fill('Kept');
    await field(page, 'Side clearance').fill('1/16 in');
    await field(page, 'Stand-off').fill('abc');
    const before = await verdict(page).textContent();
    await settle(page);
    await page.reload();
    await expect.poll(() => title(page).inputValue()).toBe('Kept');
    expect(await field(page, 'Side clearance').inputValue()).toBe('1/16 in');
    expect(await field(page, 'Stand-off').inputValue()).toBe('abc');
    await page.getByText('Last good answer.').waitFor();
    expect(await verdict(page).textContent()).toBe(before);
  });

  test('is kept at once where the page is left before its time', async () => {
    const page = await openBench();
    await title(page).fill('Left in a hurry');
    await page.goto('about:blank');
    await page.goto(address);
    await expect.poll(() => title(page).inputValue()).toBe('Left in a hurry');
  });

  test('can be taken back and done again by key, whole edits at a time', async () => {
    const page = await openBench();
    const before = await verdict(page).textContent();
    await field(page, 'Side clearance').click();
    await page.keyboard.press('Control+a');
    await page.keyboard.type('2 mm', { delay: 20 });
    await page.keyboard.press('Tab');
    const after = await verdict(page).textContent();
    expect(after).not.toBe(before);
    await page.keyboard.press('Control+z');
    expect(await field(page, 'Side clearance').inputValue()).toBe('0.8');
    await expect.poll(() => verdict(page).textContent()).toBe(before);
    await page.keyboard.press('Control+Shift+z');
    expect(await field(page, 'Side clearance').inputValue()).toBe('2 mm');
    await expect.poll(() => verdict(page).textContent()).toBe(after);
  });
});

describe('several designs', () => {
  test('are kept by name, with variants, and are opened, removed and put back', async () => {
    const page = await openBench();
    await title(page).fill('First box');
    await chooseDesign(page, 'Go on as a variant');
    await title(page).fill('First box, tight');
    await field(page, 'Side clearance').fill('0.5 mm');
    await chooseExample(page, 'One resistor, two sinks');
    await chooseDesign(page, /^First box, rev/);
    await expect.poll(() => title(page).inputValue()).toBe('First box');
    expect(await field(page, 'Side clearance').inputValue()).toBe('0.8');

    await page.getByRole('button', { name: 'Designs…' }).click();
    await page.getByRole('button', { name: /^Remove First box, tight/ }).click();
    await expect.poll(() => keptRow(page, /^First box, tight/).count()).toBe(0);
    await page.getByRole('button', { name: 'Put it back' }).click();
    await keptRow(page, /^First box, tight/).click();
    await expect.poll(() => field(page, 'Side clearance').inputValue()).toBe('0.5 mm');
  });
});

describe('two tabs on one design', () => {
  async function twoTabs() {
    const one = await openBench();
    await title(one).fill('Shared');
    await settle(one);
    const two = await openTab(one);
    await expect.poll(() => title(two).inputValue()).toBe('Shared');
    return { one, two };
  }

  test('show one another’s changes while only one is typed in', async () => {
    const { one, two } = await twoTabs();
    await field(one, 'Side clearance').fill('1.2 mm');
    await expect.poll(() => field(two, 'Side clearance').inputValue()).toBe('1.2 mm');
    await two.getByText('This design was changed in another tab').waitFor();
  });

  test('never overwrite each other: both designs stay, one as a variant', async () => {
    const { one, two } = await twoTabs();
    // As if both were typed in within the same moment: the second tab hears nothing of the first.
    await two.evaluate(() => {
      BroadcastChannel.prototype.postMessage = () => {};
    });
    await field(two, 'Side clearance').fill('1.4 mm');
    await settle(two);
    await field(one, 'Side clearance').fill('1.2 mm');
    const question = one.getByRole('dialog', { name: 'Changed in two tabs' });
    await question.waitFor();
    await question.getByRole('button', { name: 'Keep both, mine as a variant' }).click();
    await expect.poll(() => one.getByRole('dialog').count()).toBe(0);
    expect(await field(one, 'Side clearance').inputValue()).toBe('1.2 mm');
    await one.getByRole('button', { name: 'Designs…' }).click();
    await expect.poll(() => keptRow(one, /^Shared/).count()).toBe(2);
  });
});

describe('a browser that does not keep', () => {
  async function openRefusing(refuse: () => void) {
    const page = await openPage();
    await page.addInitScript(refuse);
    await page.goto(address);
    await expectDrawn(page);
    return page;
  }

  test.each([
    [
      'refuses its store',
      () => {
        IDBFactory.prototype.open = () => {
          throw new DOMException('not allowed', 'SecurityError');
        };
      },
      'keeps nothing between visits',
    ],
    [
      'has no room left',
      () => {
        IDBObjectStore.prototype.put = () => {
          throw new DOMException('full', 'QuotaExceededError');
        };
      },
      'no room left',
    ],
  ])('because it %s says so, offers the file, and asks before anything is lost', async (_, refuse, words) => {
    const page = await openRefusing(refuse);
    await title(page).fill('Mine');
    const notice = page.getByRole('status').filter({ hasText: words });
    await notice.waitFor();
    await chooseDesign(page, 'A new design');
    const question = page.getByRole('dialog', { name: 'Replace the design on the bench?' });
    await question.getByRole('button', { name: 'Keep it' }).click();
    await page.keyboard.press('Escape');
    expect(await title(page).inputValue()).toBe('Mine');
    const saved = page.waitForEvent('download');
    await notice.getByRole('button', { name: 'Save as a file' }).click();
    expect((await saved).suggestedFilename()).toBe('mine-b.throughfin.json');
  });
});

describe('a link that holds the design', () => {
  test('opens the same design in another browser, and is gone from the address', async () => {
    const page = await openBench();
    await title(page).fill('By link');
    await field(page, 'Side clearance').fill('1.2 mm');
    const expected = await verdict(page).textContent();
    await chooseDesign(page, 'Make a link…');
    const box = page.getByRole('dialog').getByRole('textbox');
    await expect.poll(() => box.inputValue()).toMatch(/#box1=/);
    const link = await box.inputValue();
    expect(await page.getByRole('dialog').textContent()).toContain(
      `${link.length.toLocaleString('en-GB')} characters`,
    );

    const other = await openPage();
    await other.goto(link);
    await expect.poll(() => title(other).inputValue()).toBe('By link');
    await expect.poll(() => verdict(other).textContent()).toBe(expected);
    expect(other.url()).toBe(`${address}`);
    await settle(other);
    await other.reload();
    await expect.poll(() => title(other).inputValue()).toBe('By link');
  });

  test('that was damaged on its way is refused, and what was there stays', async () => {
    const page = await openBench();
    await title(page).fill('Mine');
    await settle(page);
    for (const fragment of ['#box1=H4sIAAAAAAAAA6tWKkktLlGyUlAqS8wpTVWqBQCvpJrMFQAAAA', '#box1=***']) {
      await page.goto('about:blank');
      await page.goto(address + fragment);
      const refusal = page.getByRole('dialog', { name: 'This link was not opened' });
      await refusal.getByText(/damaged/).waitFor();
      await refusal.getByRole('button', { name: 'Close' }).click();
      await expect.poll(() => title(page).inputValue()).toBe('Mine');
    }
  });
});
