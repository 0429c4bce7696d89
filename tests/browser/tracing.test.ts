import type { Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { evaluatePchip, preparePchip } from '../../src/core/solve/pchip.ts';
import { readFragment } from '../../src/io/shareLink.ts';
import { chooseDesign, chooseInList, field, withBrowser } from './bench.ts';
import { type DrawnSheet, paintSheet, placeIn } from './sheetPicture.ts';

const { address, openPage } = withBrowser();

/** An invented fan with a dip, pressure over flow. */
const withDip = (flow: number) => 36 * (1 - (flow / 55) ** 2) - 7 * Math.exp(-(((flow - 16) / 6) ** 2));
const linear: DrawnSheet = {
  width: 900,
  height: 640,
  turned_rad: 0.018,
  flow: { from: 0, to: 60, step: 10 },
  pressure: { log: false, printed: [0, 10, 20, 30, 40] },
  curve: Array.from({ length: 111 }, (_, index) => [index / 2, withDip(index / 2)] as const),
};
/** Another, that only falls, on a sheet in cfm over a logarithmic pressure in inches of water. */
const falling = (flow: number) => 0.2 * Math.exp(-flow / 14);
const logarithmic: DrawnSheet = {
  width: 800,
  height: 600,
  turned_rad: -0.025,
  flow: { from: 0, to: 40, step: 10 },
  pressure: { log: true, printed: [0.01, 0.1, 1] },
  curve: Array.from({ length: 81 }, (_, index) => [index / 2, falling(index / 2)] as const),
};

const dialogOf = (page: Page) => page.getByRole('dialog', { name: 'Fan curve from a picture' });
const sheetOf = (page: Page) => page.getByRole('img', { name: /^Data sheet/ });
const value = (page: Page, name: string) =>
  page.getByRole('textbox', { name: new RegExp(`^Printed at ${name}`) });
const point = (page: Page, number: number) =>
  page.getByRole('button', { name: new RegExp(`^Point ${number}: `) });

async function openTracing(page: Page): Promise<void> {
  await chooseInList(page, 'Fan');
  await page.getByRole('button', { name: 'From a picture… Fan curve' }).click();
  await dialogOf(page).waitFor();
}

/** Presses the place of a value on the sheet. */
async function press(page: Page, sheet: DrawnSheet, flow: number, pressure: number): Promise<void> {
  const box = await sheetOf(page).boundingBox();
  if (box === null) throw new Error('no picture');
  const { x, y } = placeIn(sheet, flow, pressure);
  const zoom = box.width / sheet.width;
  await page.mouse.click(box.x + x * zoom, box.y + y * zoom);
}

async function markAxes(page: Page, sheet: DrawnSheet, units: readonly [string, string]): Promise<void> {
  const { from, to } = sheet.flow;
  const [low = 0, high = 0] = [sheet.pressure.printed[0], sheet.pressure.printed.at(-1)];
  await press(page, sheet, from, low);
  // Whoever has put a mark types its value at once.
  await expect
    .poll(() => value(page, 'flow mark 1').evaluate((box) => box === document.activeElement))
    .toBe(true);
  await page.keyboard.type(String(from));
  await press(page, sheet, to, low);
  await page.keyboard.type(`${to} ${units[0]}`);
  await page.keyboard.press('Enter');
  if (sheet.pressure.log) await page.getByLabel('Logarithmic').check();
  await press(page, sheet, from, low);
  await page.keyboard.type(String(low).replace('.', ','));
  await press(page, sheet, from, high);
  await page.keyboard.type(`${high} ${units[1]}`);
  await page.keyboard.press('Enter');
}

/** The fan's curve as it stands in the fields, in the units of its sheet. */
async function curveInFields(page: Page, count: number): Promise<[number, number][]> {
  const read = async (name: string) => Number(await field(page, name).inputValue());
  const rows: [number, number][] = [];
  for (let row = 1; row <= count; row++)
    rows.push([await read(`Point ${row}, flow`), await read(`Point ${row}, pressure`)]);
  return rows;
}

/** Largest deviation of the curve through these points from the true one, as a share of the full scale. */
function deviation(
  rows: readonly (readonly [number, number])[],
  truth: (flow: number) => number,
  full: number,
) {
  const curve = preparePchip(
    rows.map(([flow]) => flow),
    rows.map(([, pressure]) => pressure),
  );
  const out = new Float64Array(2);
  const last = rows.at(-1)?.[0] ?? 0;
  const flows = Array.from({ length: 200 }, (_, index) => (index / 199) * last);
  return Math.max(
    ...flows.map((flow) => {
      evaluatePchip(curve, flow, out);
      return Math.abs((out[0] ?? 0) - truth(flow)) / full;
    }),
  );
}

describe('a data sheet turned by a degree', () => {
  test('is chosen, marked and read to within one percent of full scale, kept over a reload, and in no link', async () => {
    const page = await openPage();
    await page.goto(address);
    const picture = await paintSheet(page, linear);
    await openTracing(page);
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Choose a picture…' }).click();
    await (await chooser).setFiles({ name: 'invented-sheet.png', mimeType: 'image/png', buffer: picture });
    await sheetOf(page).waitFor();
    await markAxes(page, linear, ['m3/h', 'Pa']);

    const flows = [0, 5, 9, 13, 16, 19, 22.5, 26, 31, 37, 43, 49, 55];
    for (const flow of [0, 9, 5]) await press(page, linear, flow, withDip(flow));
    const values = dialogOf(page).getByRole('region', { name: 'Points and their values' });
    expect(await values.textContent()).toContain('Point 3: Flow must rise from row to row');
    // What has just been put is in hand.
    await page.keyboard.press('Delete');
    expect(await point(page, 2).evaluate((button) => button === document.activeElement)).toBe(true);
    await page.keyboard.press('Delete');
    for (const flow of flows.slice(1)) await press(page, linear, flow, withDip(flow));
    expect(await values.textContent()).toMatch(/the pressure rises with the flow.*a dip/);

    // A pixel is 60 m³/h over 720 px.
    const before = Number.parseFloat((await point(page, 6).getAttribute('aria-label'))?.slice(9) ?? '');
    await point(page, 6).press('ArrowRight');
    const after = Number.parseFloat((await point(page, 6).getAttribute('aria-label'))?.slice(9) ?? '');
    expect(after - before).toBeCloseTo(60 / 720, 1);
    await point(page, 6).press('ArrowLeft');

    await page.getByRole('button', { name: 'Go on: take it over' }).click();
    await dialogOf(page).getByRole('textbox', { name: 'Curve from' }).fill('invented sheet, 12 V');
    await page.getByRole('button', { name: 'Take the points over' }).click();
    await page.getByText('Taken over: 13 points.').waitFor();
    await page.keyboard.press('Escape');
    const rows = await curveInFields(page, flows.length);
    for (const [row, flow] of flows.entries()) {
      expect(Math.abs((rows[row]?.[0] ?? 0) - flow) / 60).toBeLessThan(0.01);
      expect(Math.abs((rows[row]?.[1] ?? 0) - withDip(flow)) / 40).toBeLessThan(0.01);
    }
    expect(deviation(rows, withDip, 40)).toBeLessThan(0.01);
    expect(await field(page, 'Curve from').inputValue()).toBe('invented sheet, 12 V');

    await chooseDesign(page, 'Make a link…');
    const box = page.getByRole('dialog').getByRole('textbox').first();
    await expect.poll(() => box.inputValue()).toContain('#');
    const link = await box.inputValue();
    const shared = await readFragment(new URL(link).hash);
    expect(shared.ok && shared.text).toContain('invented sheet, 12 V');
    expect(shared.ok && shared.text).not.toMatch(/invented-sheet\.png|blob|base64/);
    await page.keyboard.press('Escape');

    await page.waitForTimeout(500);
    await page.reload();
    await openTracing(page);
    await sheetOf(page).waitFor();
    expect(await point(page, 13).count()).toBe(1);
    await page.getByRole('button', { name: /^Flow axis/ }).click();
    expect(await value(page, 'flow mark 2').inputValue()).toBe('60 m3/h');
  });
});

describe('a sheet with a logarithmic axis', () => {
  test('is dropped, read to within one percent in its own units, and taken back by undo', async () => {
    const page = await openPage();
    await page.goto(address);
    const picture = await paintSheet(page, logarithmic);
    await openTracing(page);
    const carried = await page.evaluateHandle(
      (bytes) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([new Uint8Array(bytes)], 'log.png', { type: 'image/png' }));
        return transfer;
      },
      [...picture],
    );
    await page.getByRole('region', { name: 'Steps' }).dispatchEvent('drop', { dataTransfer: carried });
    await sheetOf(page).waitFor();
    await markAxes(page, logarithmic, ['cfm', 'inH2O']);
    const flows = [0, 4, 8, 12, 16, 20, 25, 30, 35, 40];
    for (const flow of flows) await press(page, logarithmic, flow, falling(flow));
    await page.getByRole('button', { name: 'Go on: take it over' }).click();
    await page.getByRole('button', { name: 'Take the points over' }).click();
    await page.keyboard.press('Escape');
    const rows = await curveInFields(page, flows.length);
    expect(deviation(rows, falling, 0.2)).toBeLessThan(0.01);
    await page.keyboard.press('Control+z');
    await expect.poll(() => field(page, 'Point 1, pressure').inputValue()).not.toBe(String(rows[0]?.[1]));
  });
});
