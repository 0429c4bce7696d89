import { describe, expect, test } from 'vitest';
import { exampleById } from '../../src/model/examples/examples.ts';
import { sampleOf } from '../helpers/sampleReport.ts';
import { answerTo, expectDrawn, field, percentThroughFins, verdict, withBrowser } from './bench.ts';

const { address, openPage, openBench } = withBrowser();
const { report } = sampleOf(exampleById('eightResistors'));

describe('the first visit', () => {
  test('opens with the eight resistors, their verdict and what the computation says of the air', async () => {
    const page = await openBench();
    expect(await page.getByLabel('Title of the design').inputValue()).toBe('Eight in a row');
    expect(await verdict(page).textContent()).toBe(report.verdict.sentence);
    expect(await answerTo(page, 'Where does the air go?').textContent()).toBe(report.air?.sentence);
    expect(await percentThroughFins(page)).toBeCloseTo(100 * (report.air?.shares[0]?.share ?? 0), 0);
  });

  test('is told aloud once, when the verdict has stood still', async () => {
    const page = await openBench();
    const said = page.getByRole('status').filter({ hasText: report.verdict.sentence });
    await said.waitFor({ state: 'attached' });
    expect(await said.count()).toBe(1);
  });

  test('has a content policy that lets nothing in line run', async () => {
    const page = await openPage();
    await page.goto(address);
    const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self'");
    expect(policy).not.toContain('unsafe');
  });

  test('shows form and verdict before the charts, whose scripts come later and from files of their own', async () => {
    const page = await openPage();
    const html = await (await page.request.get(address)).text();
    const first = [...html.matchAll(/(?:src|href)="\.\/([^"]+\.js)"/g)].map(([, path]) => path ?? '');
    expect(first.length).toBeGreaterThan(0);
    for (const path of first)
      expect(await (await page.request.get(address + path)).text()).not.toMatch(/recharts/);

    const held: string[] = [];
    let release = () => {};
    const gate = new Promise<void>((resolve) => {
      release = resolve;
    });
    await page.route('**/*.js', async (route) => {
      const path = route.request().url().slice(address.length);
      if (!first.includes(path)) {
        held.push(path);
        await gate;
      }
      await route.continue();
    });
    await page.goto(address, { waitUntil: 'commit' });
    await expect.poll(() => verdict(page).textContent()).toBe(report.verdict.sentence);
    await field(page, 'Side clearance').fill('2');
    await expect.poll(() => verdict(page).textContent()).not.toBe(report.verdict.sentence);
    expect(held.length).toBeGreaterThan(0);
    expect(await page.locator('.recharts-cartesian-axis').count()).toBe(0);
    release();
    await expectDrawn(page);
  });
});
