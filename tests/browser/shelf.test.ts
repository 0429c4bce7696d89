import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import type { BrowserContextOptions, Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { exampleById } from '../../src/model/examples/examples.ts';
import { setAt } from '../../src/model/path.ts';
import { ownEntry } from '../helpers/ownEntry.ts';
import { sampleOf } from '../helpers/sampleReport.ts';
import { chooseInList, descriptionOf, expectDrawn, field, verdict, withBrowser } from './bench.ts';

const { address, openBench, openPage } = withBrowser();
const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

const shelfButton = (page: Page, kind: string) =>
  page.getByRole('button', { name: `From the shelf… ${kind}`, exact: true });
const dialog = (page: Page) => page.getByRole('dialog');

async function openShelf(page: Page, part: string, kind: string): Promise<void> {
  await chooseInList(page, part);
  await shelfButton(page, kind).click();
  await dialog(page).waitFor();
}

const openFile = (page: Page, text: string, name = 'mine.json') =>
  page
    .getByLabel('File of shelf entries')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
const file = (...entries: unknown[]) => JSON.stringify({ format: 'throughfin-shelf', version: 1, entries });

async function keepPresentAs(page: Page, name: string): Promise<void> {
  await dialog(page).getByRole('button', { name: 'Keep the present values' }).click();
  await dialog(page).getByRole('textbox', { name: 'Name' }).fill(name);
  await page.keyboard.press('Enter');
  await dialog(page)
    .getByRole('radio', { name: `${name} yours` })
    .waitFor();
}

describe('choosing from the shelf', () => {
  test('goes by the keyboard alone; values, name and verdict follow, and the focus comes back', async () => {
    const page = await openBench();
    await chooseInList(page, 'Sinks');
    const button = shelfButton(page, 'Alloys');
    await button.focus();
    await page.keyboard.press('Enter');
    await expect
      .poll(() =>
        dialog(page)
          .getByRole('searchbox')
          .evaluate((box) => box === document.activeElement),
      )
      .toBe(true);
    await page.keyboard.type('cast');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    expect(await dialog(page).getByRole('radio', { name: 'EN AC-46000' }).isChecked()).toBe(true);
    await page.keyboard.press('Enter');

    await expect.poll(() => dialog(page).count()).toBe(0);
    expect(await field(page, 'Alloy').inputValue()).toBe('Cast aluminium EN AC-46000');
    expect(await field(page, 'Conductivity').inputValue()).toBe('110');
    const cast = setAt(exampleById('eightResistors'), 'sink.k_WPerMK', 110);
    await expect.poll(() => verdict(page).textContent()).toBe(sampleOf(cast).report.verdict.sentence);
    expect(await button.evaluate((element) => element === document.activeElement)).toBe(true);
    expect(await descriptionOf(button)).toBe('As “Cast aluminium EN AC-46000” on the shelf.');

    // What is typed afterwards stands.
    await field(page, 'Conductivity').fill('100');
    await expect.poll(() => descriptionOf(button)).toContain('Changed from “Cast aluminium EN AC-46000”');
    expect(await field(page, 'Conductivity').inputValue()).toBe('100');
  });

  test('is left by Escape without a change', async () => {
    const page = await openBench();
    await openShelf(page, 'Baffle', 'Stock thicknesses');
    await dialog(page).getByRole('radio', { name: '10 mm' }).check();
    await page.keyboard.press('Escape');
    await expect.poll(() => dialog(page).count()).toBe(0);
    expect(await field(page, 'Baffle sheet').inputValue()).toBe('3');
  });

  test('takes the place of a wrong text, in the unit that was typed there', async () => {
    const page = await openBench();
    await chooseInList(page, 'Baffle');
    await field(page, 'Baffle sheet').fill('0.1 in');
    await field(page, 'Baffle sheet').fill('abc');
    await page.getByText('Last good answer.').waitFor();
    await shelfButton(page, 'Stock thicknesses').click();
    await page.keyboard.type('1/8 in');
    await page.keyboard.press('Enter');
    expect(await field(page, 'Baffle sheet').inputValue()).toBe('0.125');
    await expect.poll(() => page.getByText('Last good answer.').count()).toBe(0);
  });

  test('sets chip and ceramic of one part only', async () => {
    const page = await openBench();
    await openShelf(page, 'Resistors', 'Chip sizes');
    await dialog(page).getByRole('radio', { name: '2010' }).check();
    await dialog(page).getByRole('button', { name: 'Set these values' }).click();
    expect(await field(page, 'Chip length').inputValue()).toBe('5');
    await shelfButton(page, 'Ceramics').click();
    await page.keyboard.type('nitride 170');
    await page.keyboard.press('Enter');
    expect(await field(page, 'Ceramic conductivity').inputValue()).toBe('170');
  });

  test.each([
    ['desktop', 'light', {}],
    ['phone', 'dark', phone],
  ] as const)(
    'shows no fault and no sideways scroll on a %s in the %s scheme',
    async (_, colorScheme, device) => {
      const page = await openBench({ colorScheme, ...device } satisfies BrowserContextOptions);
      await openShelf(page, 'Box', 'Sheet materials');
      await dialog(page).getByRole('radio', { name: 'FR-4' }).check();
      const scan = () => new AxeBuilder({ page }).include('dialog').analyze();
      expect((await scan()).violations.map(({ id }) => id)).toEqual([]);
      expect(await dialog(page).evaluate((box) => box.scrollWidth <= box.clientWidth)).toBe(true);
      await dialog(page).getByRole('button', { name: 'Keep the present values' }).click();
      await dialog(page).getByRole('textbox', { name: 'Name' }).fill('');
      await page.keyboard.press('Enter');
      await dialog(page).getByText('An entry needs a name.').waitFor();
      expect((await scan()).violations.map(({ id }) => id)).toEqual([]);
      expect(await dialog(page).evaluate((box) => box.scrollWidth <= box.clientWidth)).toBe(true);
    },
  );
});

describe('entries of one’s own', () => {
  test('are there after a reload, marked, and in the other window at once', async () => {
    const page = await openBench();
    await openShelf(page, 'Sinks', 'Alloys');
    const other = await page.context().newPage();
    await other.goto(address);
    await expectDrawn(other);
    await openShelf(other, 'Sinks', 'Alloys');

    await keepPresentAs(page, 'Bar 7');
    expect(
      await dialog(page)
        .getByRole('radio', { name: 'Bar 7' })
        .evaluate((radio) => radio === document.activeElement),
    ).toBe(true);
    await expect.poll(() => dialog(other).getByRole('radio', { name: 'Bar 7 yours' }).count()).toBe(1);
    await keepPresentAs(other, 'Bar 8');
    await expect.poll(() => dialog(page).getByRole('radio', { name: 'yours' }).count()).toBe(2);

    await page.reload();
    await openShelf(page, 'Sinks', 'Alloys');
    await expect.poll(() => dialog(page).getByRole('radio', { name: 'yours' }).count()).toBe(2);
    await dialog(page).getByRole('radio', { name: 'Bar 8' }).check();
    await dialog(page).getByRole('button', { name: 'Take it off the shelf' }).click();
    await expect.poll(() => dialog(page).getByRole('radio', { name: 'yours' }).count()).toBe(1);
    await page.keyboard.press('Enter');
    await expect.poll(() => dialog(page).getByRole('radio', { name: 'yours' }).count()).toBe(2);
  });

  test('can be used though the browser keeps nothing, which is told', async () => {
    const page = await openPage();
    await page.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('refused', 'SecurityError');
      };
    });
    await page.goto(address);
    await expectDrawn(page);
    await openShelf(page, 'Sinks', 'Alloys');
    await dialog(page).getByText('yours last until the page is closed').waitFor();
    await keepPresentAs(page, 'Bar 7');
    const wanted = page.waitForEvent('download');
    await dialog(page).getByRole('button', { name: 'Save my entries' }).click();
    const text = readFileSync(await (await wanted).path(), 'utf8');
    expect(JSON.parse(text)).toMatchObject({ format: 'throughfin-shelf', entries: [{ name: 'Bar 7' }] });
    await dialog(page).getByRole('button', { name: 'Set these values' }).click();
    expect(await field(page, 'Alloy').inputValue()).toBe('Bar 7');
  });

  test('of a file are taken in, or refused whole with the place and the reason', async () => {
    const page = await openBench();
    await openShelf(page, 'Sinks', 'Alloys');
    for (const [text, ...told] of [
      [
        file(ownEntry(), { ...ownEntry({ id: 'b' }), values: { k_WPerMK: 900, heat_JPerM3K: 2.4e6 } }),
        'entries[1].values.k_WPerMK',
        '1 to 500',
      ],
      ['{\n  oops', 'line 2, column 3', 'a key in'],
      ['{"format": "throughfin-design"}', 'format', 'throughfin-shelf'],
    ] as const) {
      await openFile(page, text, 'bad.json');
      const alert = dialog(page).getByRole('alert');
      for (const part of ['“bad.json” was not taken in', ...told])
        await expect.poll(() => alert.textContent()).toContain(part);
      expect(await dialog(page).getByRole('radio', { name: 'yours' }).count()).toBe(0);
    }
    await openFile(
      page,
      file(ownEntry(), ownEntry({ id: 'b', kind: 'tab', name: 'Strip', values: { tab_WPerMK: 300 } })),
    );
    await dialog(page).getByText('2 entries taken in.').waitFor();
    expect(await dialog(page).getByRole('alert').count()).toBe(0);
    expect(await dialog(page).getByRole('radio', { name: 'yours' }).count()).toBe(1);
    await page.keyboard.press('Escape');
    await openShelf(page, 'Second face', 'Metals for tabs');
    await dialog(page).getByRole('radio', { name: 'Strip' }).waitFor();
  });
});
