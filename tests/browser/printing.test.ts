import { execFileSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { examples } from '../../src/model/examples/examples.ts';
import { sampleOf } from '../helpers/sampleReport.ts';
import { chooseExample, expectDrawn, withBrowser } from './bench.ts';

const { openBench } = withBrowser();

test.each(examples.map(({ design }) => [design.title, design] as const))(
  'printing “%s” from the bench gives its summary sheet on one page, of A4 and of Letter',
  async (title, design) => {
    const page = await openBench({ colorScheme: 'dark' });
    await chooseExample(page, title);
    await expectDrawn(page);
    const { report } = sampleOf(design);
    await page.getByText(report.verdict.sentence).first().waitFor();
    await page.emulateMedia({ media: 'print' });
    for (const format of ['A4', 'Letter'] as const) {
      const pdf = await page.pdf({ format });
      const info = execFileSync('pdfinfo', ['-'], { input: pdf }).toString();
      expect(info).toMatch(/^Pages:\s+1$/m);
      expect(info).toContain(format === 'A4' ? '(A4)' : '(letter)');
      const text = execFileSync('pdftotext', ['-layout', '-', '-'], { input: pdf }).toString();
      expect(text).toContain(title);
      expect(text).toContain('Checked, name and date');
      expect(text.toLowerCase()).toContain(report.verdict.word);
      expect(text).not.toContain('Skip to the drawing');
      expect(text).not.toContain('Part to edit');
    }
  },
);
