import type { Page } from 'playwright';
import { expect } from 'vitest';
import { chooseDesign, chooseInList, expectDrawn, field } from './bench.ts';
import { paintSheet } from './sheetPicture.ts';

export interface View {
  readonly name: string;
  /** What to look at: the whole page, or what has changed since the view before. */
  readonly within: string;
}

const partPanel = 'section:has(> #part-heading)';
/** Drawing, fields and answer, without the questions below. */
const bench = '#bench > div:has(> [aria-labelledby="drawing-heading"])';

/**
 * Brings a page into every state that a visitor can see, one after the other: parts, folds and file dialogs are found
 * in the page itself, so that a new one is looked at without being named here.
 */
export async function* views(page: Page): AsyncGenerator<View> {
  yield { name: 'as opened', within: 'html' };
  for (const part of await partsOf(page)) {
    await chooseInList(page, part);
    // The tables of a part come a moment later.
    await page.waitForLoadState('networkidle');
    yield { name: part, within: partPanel };
  }
  await unfold(page);
  yield { name: 'everything unfolded', within: 'html' };

  await page.locator('[data-figure="limit:film"]').first().click();
  await page.getByRole('heading', { name: 'What it rests on' }).waitFor();
  await page.locator('dialog details').nth(2).evaluate(open);
  await page.locator('dialog details').nth(-1).evaluate(open);
  yield { name: 'the working of a figure', within: 'dialog' };
  await closeDialog(page);

  await page.getByLabel('Boxes to draw').selectOption('1000');
  await page.getByRole('button', { name: 'Draw boxes' }).click();
  await page.getByText('All boxes drawn.').waitFor();
  await unfold(page);
  yield { name: 'boxes drawn as parts vary', within: '#what-if-parts-vary' };

  await page.locator('#what-is-it-checked-against').scrollIntoViewIfNeeded();
  await page.getByLabel('Subject', { exact: true }).selectOption({ label: 'Sound' });
  await page.getByText(/^Sound: \d+ checks/).click();
  yield { name: 'checks of one subject', within: '#what-is-it-checked-against' };

  const against = page.getByLabel('Against', { exact: true });
  await against.selectOption({ label: 'Slot width' });
  await page.getByRole('img', { name: /^Film margin over/ }).waitFor();
  const values = page.getByLabel('Values, side clearance');
  const usual = await values.inputValue();
  await values.fill('tight');
  yield { name: 'a map of two gaps, and a list that does not read', within: '#which-gap' };
  await values.fill(usual);
  await against.selectOption({ label: 'this gap alone' });

  await chooseInList(page, 'Fan');
  await field(page, 'Fan supply').fill('nonsense');
  await field(page, 'Point 2, flow').fill('abc');
  await page.getByText('Last good answer.').waitFor();
  await chooseInList(page, 'Baffle');
  await field(page, 'Side clearance').fill('');
  await field(page, 'Slot width').fill('90 mm');
  yield { name: 'values wrong, the last good answer', within: bench };

  await openFile(page, '{"format": "recipe"}');
  yield { name: 'a file refused', within: 'dialog' };
  await closeDialog(page);

  await page.getByRole('button', { name: 'Designs…' }).click();
  yield { name: 'the designs', within: 'dialog' };
  await page.getByRole('button', { name: 'Make a link…' }).click();
  await page.getByRole('dialog', { name: 'A link that holds this design' }).waitFor();
  yield { name: 'a link', within: 'dialog' };
  await closeDialog(page);
  await page.getByRole('button', { name: 'Print…' }).click();
  await page.getByRole('dialog').waitFor();
  yield { name: 'what to print', within: 'dialog' };
  await closeDialog(page);

  await page.getByRole('button', { name: 'Keep this as it is and go on as a variant' }).click();
  await page.getByRole('region', { name: 'Designs side by side' }).waitFor();
  await unfold(page);
  yield { name: 'designs side by side', within: '#compare' };
  await page.evaluate(() => window.scrollTo({ top: 0, behavior: 'instant' }));

  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await page.getByLabel('Title of the design').fill('Kept nowhere');
  await chooseDesign(page, 'A new design');
  await page.getByRole('dialog', { name: 'Replace the design' }).waitFor();
  yield { name: 'a design about to be replaced, kept nowhere', within: 'dialog' };
  await page.getByRole('button', { name: 'Replace', exact: true }).click();
  await expectDrawn(page);
  yield { name: 'a new design', within: partPanel };

  await chooseInList(page, 'Sinks');
  await page
    .getByRole('button', { name: /^From the shelf/ })
    .first()
    .click();
  await page.getByRole('dialog').waitFor();
  yield { name: 'the shelf', within: 'dialog' };
  await closeDialog(page);
  yield* traced(page);
  await chooseInList(page, 'Sinks');
  await page.getByRole('button', { name: /^Fin length, .*change$/ }).click();
  yield { name: 'a measure open on the drawing', within: bench };

  await chooseInList(page, 'Room');
  await field(page, 'Room temperature').fill('78 °C');
  await expect.poll(() => page.getByRole('main').textContent()).toContain('Does not hold');
  yield { name: 'a box that does not hold', within: bench };

  await page.dispatchEvent('main', 'dragover', {
    dataTransfer: await page.evaluateHandle(() => {
      const carried = new DataTransfer();
      carried.items.add(new File(['{}'], 'box.json', { type: 'application/json' }));
      return carried;
    }),
  });
  await page.getByText('Drop the design file to open it').waitFor();
  yield { name: 'a file above the page', within: '#root > [role="status"]:not(.unseen)' };
}

/** A curve on its way from a picture, by key alone; the browser has no room for it any more. */
async function* traced(page: Page): AsyncGenerator<View> {
  await chooseInList(page, 'Fan');
  // On the smallest window the notice that nothing is kept lies over it.
  await page.getByRole('button', { name: 'From a picture… Fan curve' }).press('Enter');
  await page.getByRole('dialog').waitFor();
  yield { name: 'a picture to choose', within: 'dialog' };
  const buffer = await paintSheet(page, {
    width: 400,
    height: 300,
    turned_rad: 0,
    flow: { from: 0, to: 60, step: 20 },
    pressure: { log: false, printed: [0, 40] },
    curve: [
      [0, 36],
      [55, 0],
    ],
  });
  await page
    .getByLabel('Picture of a data sheet')
    .setInputFiles({ name: 'sheet.png', mimeType: 'image/png', buffer });
  const cross = page.locator('#trace-cross');
  /** Moves the cross by tens of pixels and puts there what is asked for. */
  const put = async (arrow: string, tens: number) => {
    await cross.focus();
    for (let press = 0; press < tens; press++) await page.keyboard.press(`Shift+${arrow}`);
    await page.keyboard.press('Enter');
  };
  await put('ArrowLeft', 4);
  await page.keyboard.type('0');
  await put('ArrowRight', 8);
  await page.keyboard.type('60 Pa');
  yield { name: 'an axis with a value that does not read', within: 'dialog' };
  await page.getByLabel(/^Printed at flow mark 2/).fill('60');
  await page.keyboard.press('Enter');
  await put('ArrowLeft', 8);
  await page.keyboard.type('0');
  await put('ArrowUp', 6);
  await page.keyboard.type('40');
  await page.keyboard.press('Enter');
  await put('ArrowDown', 1);
  await put('ArrowRight', 4);
  await put('ArrowLeft', 2);
  await page
    .getByRole('dialog')
    .getByText(/^Point 3: Flow must rise/)
    .waitFor();
  yield { name: 'points read off a picture, one out of order', within: 'dialog' };
  await closeDialog(page);
}

export async function partsOf(page: Page): Promise<string[]> {
  const labels = page.getByRole('group', { name: 'Part to edit' }).locator('label');
  return labels.evaluateAll((found) =>
    found.map((label) =>
      [...label.childNodes]
        .filter((node) => node.nodeType === Node.TEXT_NODE)
        .map((node) => node.textContent)
        .join(''),
    ),
  );
}

export async function unfold(page: Page): Promise<void> {
  // What is folded may hold folds that are made only then.
  await expect
    .poll(() =>
      page.evaluate(() => {
        const closed = [...document.querySelectorAll<HTMLDetailsElement>('details:not([open])')];
        for (const details of closed) details.open = true;
        return closed.length;
      }),
    )
    .toBe(0);
}

function open(fold: Element): void {
  (fold as HTMLDetailsElement).open = true;
}

async function closeDialog(page: Page): Promise<void> {
  await page.keyboard.press('Escape');
  await expect.poll(() => page.getByRole('dialog').count()).toBe(0);
}

async function openFile(page: Page, text: string): Promise<void> {
  await page.getByLabel('Design file').setInputFiles({
    name: 'not-good.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
  await page.getByRole('dialog').waitFor();
}
