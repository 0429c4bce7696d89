import type { Locator, Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { exampleById, examples } from '../../src/model/examples/examples.ts';
import { sampleOf } from '../helpers/sampleReport.ts';
import { chooseExample, chooseOnDrawing, field, percentThroughFins, verdict, withBrowser } from './bench.ts';

const { openBench } = withBrowser();
const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

const drawing = (page: Page) => page.getByRole('region', { name: 'The box, to scale' });
const measure = (page: Page, name: string) =>
  drawing(page).getByRole('button', { name: new RegExp(`^${name}(?: [^,]*)?, .*change`) });
const editor = (page: Page, name: string) => page.getByRole('group', { name: `${name}, on the drawing` });
const textBox = (page: Page, name: string) => editor(page, name).getByRole('textbox');

/** The panel's own box, while one stands on the drawing too. */
const inPanel = (page: Page, name: string) =>
  page.locator('section', { has: page.locator('#part-heading') }).getByRole('textbox', {
    name: new RegExp(`^${name}\\b`),
  });

function sentenceWith(sideClearance_m: number): string {
  const eight = exampleById('eightResistors');
  return sampleOf({ ...eight, baffle: { ...eight.baffle, sideClearance_m } }).report.verdict.sentence;
}

function isFocused(control: Locator): Promise<boolean> {
  return control.evaluate((element) => element === document.activeElement);
}

/** Whether a box lies within the figure and the window. */
function placeOf(box: Locator) {
  return box.evaluate((element) => {
    const own = element.getBoundingClientRect();
    const figure = element.closest('figure')?.getBoundingClientRect() ?? own;
    return {
      inFigure:
        own.left >= figure.left - 0.5 &&
        own.right <= figure.right + 0.5 &&
        own.top >= figure.top - 0.5 &&
        own.bottom <= figure.bottom + 0.5,
      inWindow: own.left >= 0 && own.right <= innerWidth && own.top >= 0 && own.bottom <= innerHeight,
    };
  });
}

describe('a measure on the drawing', () => {
  test('is changed at its spot by the mouse: verdict, drawing and panel follow every key', async () => {
    const page = await openBench();
    await chooseOnDrawing(page, 'Fan');
    const before = await percentThroughFins(page);
    await measure(page, 'Side clearance').click();
    await page.getByRole('heading', { name: 'Baffle', exact: true }).waitFor();
    expect(await placeOf(editor(page, 'Side clearance'))).toEqual({ inFigure: true, inWindow: true });
    expect(await textBox(page, 'Side clearance').inputValue()).toBe('0.8');
    await page.keyboard.type('1/8 in');
    await expect.poll(() => verdict(page).textContent()).toBe(sentenceWith(0.0254 / 8));
    expect(await inPanel(page, 'Side clearance').inputValue()).toBe('1/8 in');
    expect(await percentThroughFins(page)).toBeLessThan(before - 5);
    await expect
      .poll(() => measure(page, 'Side clearance').getAttribute('aria-label'))
      .toMatch(/^Side clearance, 3\.175\smm, change$/);
    // Elsewhere, on nothing.
    await page.mouse.click(5, 5);
    await expect.poll(() => editor(page, 'Side clearance').count()).toBe(0);
    expect(await field(page, 'Side clearance').inputValue()).toBe('1/8 in');
  });

  test('is changed by keyboard alone: part, measure, text, back to the measure', async () => {
    const page = await openBench();
    const first = drawing(page).getByRole('button', { name: /^Load, / });
    await first.focus();
    const names: string[] = [];
    const here = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');
    for (let press = 0; press < 40; press++) {
      const name = await here();
      names.push(name);
      if (name.startsWith('Side clearance')) break;
      await page.keyboard.press('Tab');
    }
    const parts = sampleOf(exampleById('eightResistors')).report.drawing.parts.map(({ name }) => name);
    expect(names.slice(0, parts.length)).toEqual(parts);
    expect(names.at(-1)).toMatch(/^Side clearance, 0\.8\smm, change$/);
    await page.keyboard.press('Enter');
    expect(await isFocused(textBox(page, 'Side clearance'))).toBe(true);
    await page.keyboard.type('2');
    await expect.poll(() => verdict(page).textContent()).toBe(sentenceWith(0.002));
    await page.keyboard.press('ArrowUp');
    await expect.poll(() => verdict(page).textContent()).toBe(sentenceWith(0.003));
    await page.keyboard.press('Escape');
    expect(await editor(page, 'Side clearance').count()).toBe(0);
    expect(await isFocused(measure(page, 'Side clearance'))).toBe(true);
    expect(await field(page, 'Side clearance').inputValue()).toBe('3');
  });

  test('is changed by a finger on a phone, the box within the drawing and the window', async () => {
    const page = await openBench(phone);
    for (const [name, text, full = name] of [
      ['Side clearance', '1.6'],
      ['End clearance', '1'],
      ['Fin length', '30'],
      ['Frame', '62'],
      ['Plate', '1.5', 'Plate thickness'],
    ] as const) {
      await measure(page, name).tap();
      await expect.poll(() => isFocused(textBox(page, full))).toBe(true);
      await expect
        .poll(() => placeOf(editor(page, full)), { message: name })
        .toEqual({ inFigure: true, inWindow: true });
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
      await expect.poll(() => editor(page, full).count()).toBe(0);
      expect(await measure(page, name).getAttribute('aria-label'), name).toContain(`${text}\u202fmm`);
    }
  });

  test('keeps a wrong text, says what is allowed and is marked until it is mended', async () => {
    const page = await openBench();
    await measure(page, 'Collar height').click();
    await page.keyboard.type('99 mm');
    await editor(page, 'Collar height')
      .getByText(/At most their length, 25\smm/)
      .waitFor();
    await page.keyboard.press('Enter');
    const marked = drawing(page).getByRole('button', { name: /^Collar height, .*has an entry to mend$/ });
    expect(await marked.textContent()).toMatch(/^!/);
    await marked.click();
    expect(await textBox(page, 'Collar height').inputValue()).toBe('99 mm');
    await page.keyboard.type('20');
    await expect.poll(() => marked.count()).toBe(0);
  });
});

/** Buttons and texts of the drawing whose boxes lie on one another or out of the paper, and targets too small. */
function faults(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const figure = document.querySelector('figure');
    if (figure === null) return ['no drawing'];
    const paper = figure.getBoundingClientRect();
    const found = [...figure.querySelectorAll('button, svg text, figure span[style]')].map((element) => ({
      name: element.getAttribute('aria-label') ?? element.textContent ?? '',
      // The field drawn on the paper; what answers to a finger round it may be larger.
      seen: (element.querySelector('span') ?? element).getBoundingClientRect(),
      touched: element.matches('button') ? element.getBoundingClientRect() : null,
    }));
    const told: string[] = [];
    const apart = (a: DOMRect, b: DOMRect) =>
      a.right <= b.left + 0.5 ||
      b.right <= a.left + 0.5 ||
      a.bottom <= b.top + 0.5 ||
      b.bottom <= a.top + 0.5;
    found.forEach((a, index) => {
      if (a.seen.left < paper.left || a.seen.right > paper.right) told.push(`${a.name} leaves the paper`);
      if (a.touched && Math.min(a.touched.width, a.touched.height) < 24) told.push(`${a.name} is small`);
      for (const b of found.slice(index + 1)) {
        if (!apart(a.seen, b.seen)) told.push(`${a.name} on ${b.name}`);
        else if (a.touched && b.touched && !apart(a.touched, b.touched))
          told.push(`one cannot touch ${a.name} without ${b.name}`);
      }
    });
    return told;
  });
}

describe.each([1440, 768, 390, 320])('at %i px', (width) => {
  test('no measure, number or temperature lies on another, in any example', async () => {
    const page = await openBench({ viewport: { width, height: 900 } });
    for (const { design } of examples) {
      await chooseExample(page, design.title);
      await measure(page, 'Plenum height').waitFor();
      expect(await faults(page), design.title).toEqual([]);
      expect(
        await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        ),
        design.title,
      ).toBeLessThanOrEqual(0);
    }
    expect(await drawing(page).getByRole('button').count()).toBeGreaterThan(25);
  });
});

describe('on a phone', () => {
  test('a part chosen on the drawing takes the reader to its fields, the verdict still in view', async () => {
    const page = await openBench({ ...phone, reducedMotion: 'reduce' });
    for (const choose of [
      (part: string) =>
        drawing(page)
          .getByRole('button', { name: new RegExp(`^${part}, `) })
          .tap(),
      (part: string) =>
        page.getByRole('group', { name: 'Part to edit' }).locator('label', { hasText: part }).tap(),
    ]) {
      for (const part of ['Plenum', 'Sinks']) {
        await choose(part);
        const heading = page.getByRole('heading', { name: part, exact: true });
        await expect.poll(() => isFocused(heading)).toBe(true);
        const top = (await heading.boundingBox())?.y ?? 0;
        const mark = await page
          .getByRole('main')
          .getByText(/^holds with little to spare$/)
          .first()
          .boundingBox();
        expect(mark?.y ?? -1).toBeGreaterThanOrEqual(0);
        expect(top).toBeGreaterThan((mark?.y ?? 0) + (mark?.height ?? 0));
        expect(top).toBeLessThan(300);
      }
    }
  });

  test('the fields stand straight under the drawing, the list of parts after them', async () => {
    const page = await openBench(phone);
    const bottomOf = async (element: Locator) => {
      const box = await element.boundingBox();
      return (box?.y ?? 0) + (box?.height ?? 0);
    };
    const heading = page.locator('#part-heading');
    const gap = ((await heading.boundingBox())?.y ?? 0) - (await bottomOf(page.locator('figure').first()));
    expect(gap).toBeGreaterThanOrEqual(0);
    expect(gap).toBeLessThan(40);
    const list = page.getByRole('group', { name: 'Part to edit' });
    expect((await list.boundingBox())?.y ?? 0).toBeGreaterThan(await bottomOf(field(page, 'Baffle sheet')));
  });

  test('the arrow keys go along the list of parts without leaving it', async () => {
    const page = await openBench({ viewport: { width: 390, height: 844 } });
    await page.getByRole('radio', { name: /^Baffle/ }).focus();
    await page.keyboard.press('ArrowRight');
    await page.getByRole('heading', { name: 'Sinks', exact: true }).waitFor();
    expect(await isFocused(page.getByRole('radio', { name: /^Sinks/ }))).toBe(true);
  });
});
