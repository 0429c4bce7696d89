import type { Locator, Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import type { Design } from '../../src/model/design.ts';
import { exampleById } from '../../src/model/examples/examples.ts';
import { setAt } from '../../src/model/path.ts';
import { sampleOf } from '../helpers/sampleReport.ts';
import {
  answerTo,
  chooseInList,
  chooseOnDrawing,
  descriptionOf,
  field,
  percentThroughFins,
  verdict,
  withBrowser,
} from './bench.ts';

const { openBench } = withBrowser();
const eight = exampleById('eightResistors');
const air = (page: Page) => answerTo(page, 'Where does the air go?');

/** What the computation says of the example with these values, in SI. */
function said(changes: Readonly<Record<string, number | boolean>>) {
  const design = Object.entries(changes).reduce<Design>(
    (changed, [path, value]) => setAt(changed, path, value),
    eight,
  );
  const { report } = sampleOf(design);
  return { verdict: report.verdict.sentence, air: report.air?.sentence };
}

async function expectSaid(page: Page, changes: Readonly<Record<string, number | boolean>>) {
  const expected = said(changes);
  await expect.poll(() => verdict(page).textContent()).toBe(expected.verdict);
  await expect.poll(() => air(page).textContent()).toBe(expected.air);
}

describe('units as people type them', () => {
  test('a wider side clearance, in whichever way a sixteenth of an inch is written, takes air from the fins', async () => {
    const page = await openBench();
    await chooseOnDrawing(page, 'Baffle');
    const clearance = field(page, 'Side clearance');
    const before = await percentThroughFins(page);

    await clearance.fill('1/16 in');
    await expectSaid(page, { 'baffle.sideClearance_m': 0.0254 / 16 });
    const after = await percentThroughFins(page);
    expect(after).toBeLessThan(before - 2);
    expect(await clearance.inputValue()).toBe('1/16 in');
    await page.getByRole('button', { name: /^Baffle, side clearance 1\.58/ }).waitFor();

    const sentence = await air(page).textContent();
    for (const text of ['0.0625"', '1.5875 mm', '1,5875 mm', '62.5 mil', '1587,5 µm']) {
      await clearance.fill('0.8 mm');
      await expect.poll(() => percentThroughFins(page)).toBe(before);
      await clearance.fill(text);
      await expect.poll(() => air(page).textContent()).toBe(sentence);
      expect(await clearance.inputValue()).toBe(text);
    }
    for (const text of ['1.6 mm', '1,6 mm']) {
      await clearance.fill(text);
      await expectSaid(page, { 'baffle.sideClearance_m': 0.0016 });
      await clearance.fill('0.8 mm');
    }
  });

  test('a bare number is in the unit that was typed last in that field', async () => {
    const page = await openBench();
    const clearance = field(page, 'Side clearance');
    await clearance.fill('1/16 in');
    await clearance.fill('0.05');
    await expectSaid(page, { 'baffle.sideClearance_m': 0.05 * 0.0254 });
  });

  test('a fan curve takes cubic feet per minute and inches of water', async () => {
    const page = await openBench();
    await chooseOnDrawing(page, 'Fan');
    await field(page, 'Point 6, flow').fill('35 cfm');
    const cfm_m3PerS = 0.3048 ** 3 / 60;
    await expectSaid(page, { 'fan.curve[5].flow_m3PerS': 35 * cfm_m3PerS });
    await field(page, 'Point 4, pressure').fill('0.12 inH2O');
    // Conventional inch of water, 249.08891 Pa (NIST SP 811, B.8).
    await expectSaid(page, {
      'fan.curve[5].flow_m3PerS': 35 * cfm_m3PerS,
      'fan.curve[3].dp_Pa': 0.12 * 249.08891,
    });
  });

  test('a room of 104 °F is one of 40 °C', async () => {
    const page = await openBench();
    const before = await verdict(page).textContent();
    await chooseInList(page, 'Room');
    const room = field(page, 'Room temperature');
    await room.fill('50 °C');
    await expectSaid(page, { 'room.T_K': 323.15 });
    await room.fill('104 °F');
    await expect.poll(() => verdict(page).textContent()).toBe(before);
    await room.fill('104');
    expect(await verdict(page).textContent()).toBe(before);
  });
});

/** The message stands right below the field, and can be seen. */
async function expectBeside(page: Page, control: Locator, message: string) {
  const [box, note] = [
    await control.boundingBox(),
    await page.getByText(message, { exact: true }).first().boundingBox(),
  ];
  expect(box).not.toBeNull();
  expect(note).not.toBeNull();
  const below = (note?.y ?? 0) - ((box?.y ?? 0) + (box?.height ?? 0));
  expect(below).toBeGreaterThanOrEqual(0);
  expect(below).toBeLessThan(20);
}

describe('what cannot be', () => {
  test('stays as typed, is told beside the field with what is allowed, and leaves the last good answer', async () => {
    const page = await openBench();
    const clearance = field(page, 'Side clearance');
    const [asItWas, wider] = [said({}), said({ 'baffle.sideClearance_m': 0.004 })];
    expect(wider.verdict).not.toBe(asItWas.verdict);
    for (const [text, wrong, allowed] of [
      ['abc', '«abc» is not a number', '1.6 mm'],
      ['12 V', '«12 V» is a voltage', '1.6 mm'],
      ['', 'Nothing stands here', '1.6 mm'],
      ['-3 mm', 'Out of bounds', '0 to 200 mm'],
      ['900 m', 'Out of bounds', '0 to 0.2 m'],
      ['1,234', 'can be read as', '1.234'],
    ] as const) {
      await clearance.fill('4 mm');
      await expect.poll(() => verdict(page).textContent()).toBe(wider.verdict);
      const [held, share] = [await verdict(page).textContent(), await percentThroughFins(page)];

      await clearance.fill(text);
      await page.getByText('Last good answer.').waitFor();
      expect(await clearance.inputValue()).toBe(text);
      expect(await clearance.getAttribute('aria-invalid')).toBe('true');
      const told = await descriptionOf(clearance);
      expect(told).toContain(wrong);
      expect(told.replaceAll(/\s/g, ' ')).toContain(allowed);
      await expectBeside(page, clearance, told);
      expect(await verdict(page).textContent()).toBe(held);
      expect(await percentThroughFins(page)).toBe(share);

      await clearance.fill('0.8 mm');
      await expect.poll(() => verdict(page).textContent()).toBe(asItWas.verdict);
      expect(await page.getByText('Last good answer.').count()).toBe(0);
      expect(await clearance.getAttribute('aria-invalid')).toBe('false');
      expect(await descriptionOf(clearance)).not.toContain(wrong);
    }
  });

  test('nothing on the bench moves while a wrong value stands, nor what comes first below it', async () => {
    const page = await openBench();
    const places = () =>
      page.evaluate(() =>
        [
          ...document.querySelectorAll(
            '#bench > div:first-of-type :is(h2, label, input), nav[aria-label="Questions"]',
          ),
        ].map((element) => {
          const { x, y } = element.getBoundingClientRect();
          return `${element.textContent} ${Math.round(x)} ${Math.round(y)}`;
        }),
      );
    const before = await places();
    await field(page, 'Stand-off').fill('nonsense');
    await page.getByText('Last good answer.').waitFor();
    const moved = (await places()).filter((place, index) => place !== before[index]);
    expect(moved.filter((place) => !place.includes('has an entry to mend'))).toEqual([]);
  });

  test('from the notice of a wrong value one gets to its field, though another part is open', async () => {
    const page = await openBench();
    await field(page, 'Side clearance').fill('abc');
    await chooseOnDrawing(page, 'Fan');
    await page.getByRole('button', { name: 'Mend: Side clearance' }).click();
    await expect
      .poll(() => field(page, 'Side clearance').evaluate((box) => box === document.activeElement))
      .toBe(true);
    expect(await field(page, 'Side clearance').inputValue()).toBe('abc');
  });

  test('values that do not go together are told with what would', async () => {
    const page = await openBench();
    const held = await verdict(page).textContent();
    await chooseOnDrawing(page, 'Box');
    const length = field(page, 'Inside length');
    await length.fill('10 cm');
    await page.getByText('Last good answer.').waitFor();
    expect(await descriptionOf(length)).toMatch(/The row needs .* and the box is .* long inside/);
    expect(await verdict(page).textContent()).toBe(held);
  });
});

test('without its baffle the box does not hold, and with it again it does', async () => {
  const page = await openBench();
  const before = await verdict(page).textContent();
  expect(before).toMatch(/^Holds/);
  const fitted = page.getByRole('checkbox', { name: 'Baffle fitted' });
  await fitted.uncheck();
  await expectSaid(page, { 'baffle.fitted': false });
  expect(await verdict(page).textContent()).toMatch(/^Does not hold/);
  expect(await page.getByRole('textbox', { name: /^Side clearance/ }).count()).toBe(0);
  await fitted.check();
  await expect.poll(() => verdict(page).textContent()).toBe(before);
  await field(page, 'Side clearance').waitFor();
});
