import { describe, expect, test } from 'vitest';
import { chooseInList, chooseOnDrawing, field, withBrowser } from './bench.ts';

const { openBench } = withBrowser();

describe('what if the fan stops', () => {
  test('both ratings stand side by side, with the time to act and a chart with limits', async () => {
    const page = await openBench();
    const question = page.getByRole('region', { name: 'What if the fan stops?' });
    await expect.poll(() => question.textContent()).toMatch(/with fan[\d.]+\sW.*without fan[\d.]+\sW/);
    const [running, stopped] = await question.locator('dl b').allTextContents();
    expect(Number.parseFloat(running ?? '')).toBeGreaterThan(Number.parseFloat(stopped ?? ''));
    expect(await question.locator('p').first().textContent()).toMatch(/after \d+\s(s|min)/);
    const table = question.getByRole('region', { name: 'Limits after the fan stops, soonest first' });
    expect(await table.getByRole('row').count()).toBeGreaterThan(3);
  });

  test('a box turned on its side may carry less without its fan, and says why', async () => {
    const page = await openBench();
    const question = page.getByRole('region', { name: 'What if the fan stops?' });
    const without = async () =>
      Number.parseFloat((await question.locator('dl b').allTextContents())[1] ?? '');
    const upright = await without();
    await chooseOnDrawing(page, 'Box');
    const tilt = field(page, 'Tilt');
    await tilt.fill('90°');
    await tilt.blur();
    await expect.poll(without).toBeLessThan(upright);
  });

  test('a load in pulses is followed through the pulse', async () => {
    const page = await openBench();
    await chooseInList(page, 'Load');
    await field(page, 'Duty').fill('20 %');
    const period = field(page, 'Period');
    await period.fill('20 s');
    await period.blur();
    const hold = page.getByRole('region', { name: 'Will it hold?' });
    await expect.poll(() => hold.textContent()).toMatch(/Film in the pulse/);
    await expect.poll(() => hold.textContent()).toMatch(/On for 4\.0\ss of every 20\ss/);
  });
});
