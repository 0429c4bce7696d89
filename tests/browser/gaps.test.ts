import { describe, expect, test } from 'vitest';
import { withBrowser } from './bench.ts';

const { openBench } = withBrowser();

describe('which gap', () => {
  test('a list typed as people write it is compared, a row taken by a key and taken back', async () => {
    const page = await openBench();
    const question = page.getByRole('region', { name: 'Which gap?' });
    await expect.poll(() => question.locator('p').first().textContent()).toMatch(/^Cut the side clearance/);

    await question.getByLabel('Values, side clearance').fill('0, 1/32 in, 0.8 mm, 1.5');
    const names = () => question.getByRole('rowheader').allTextContents();
    await expect
      .poll(async () => (await names()).map((name) => name.replaceAll('\u202f', ' ')))
      .toEqual(['0 mm', '0.794 mm', '0.8 mm now', '1.5 mm', 'no baffle']);
    await expect.poll(() => question.locator('.recharts-surface').count()).toBeGreaterThanOrEqual(2);

    const wide = question.getByRole('button', { name: /^1\.5\smm$/ });
    await wide.focus();
    await page.keyboard.press('Enter');
    await expect.poll(names).toContain('1.5\u202fmm now');
    expect(await wide.evaluate((button) => document.activeElement === button)).toBe(true);
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(names).toContain('0.8\u202fmm now');
  });

  test('two gaps make a map with the line where the verdict changes, which can be saved as a picture', async () => {
    const page = await openBench();
    const question = page.getByRole('region', { name: 'Which gap?' });
    await question.getByLabel('Against', { exact: true }).selectOption({ label: 'Slot width' });
    await question.getByLabel('Values, side clearance').fill('0 to 10 by 2');
    await question.getByLabel('Values, slot width').fill('2 to 22 by 4');
    const map = question.getByRole('img', { name: /^Film margin over side clearance and slot width/ });
    await map.waitFor();
    await expect.poll(() => question.textContent()).toContain('Hatched, beyond the heavy line');
    await expect.poll(() => question.locator('p').first().textContent()).toMatch(/over part of this map/);

    const download = page.waitForEvent('download');
    await question.getByRole('button', { name: /^Save as SVG: Film margin/ }).click();
    const saved = await (await download).createReadStream();
    let svg = '';
    for await (const chunk of saved) svg += String(chunk);
    expect(svg).toContain('<pattern');
    expect(svg).toContain('slot width, mm');
    expect(svg).not.toMatch(/var\(--|color-mix/);
  });
});
