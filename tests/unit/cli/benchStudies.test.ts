import { describe, expect, test } from 'vitest';
import { adviceStudy, checkStudy, fitStudy } from '../../../src/cli/benchStudies.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { promptPool } from '../../helpers/pools.ts';

const design = exampleById('prototype');
const nobody = async () => null;
const plain = (text: string) => text.replaceAll('\u202f', ' ');

async function told(report: ReturnType<typeof fitStudy.run>): Promise<string> {
  const said = await report;
  return plain(typeof said === 'string' ? said : said.sentence);
}

describe('the bench, asked on a terminal', () => {
  test('readings are held against the model, the warm-up with them', async () => {
    const report = await checkStudy.run(promptPool, design, {}, 'metric', nobody);
    if (typeof report === 'string') throw new Error(report);
    expect(plain(report.sentence)).toMatch(/^8 of 15 readings agree within their instruments/);
    expect(report.tables.map(({ id }) => id)).toContain('benchWarmUp');
  });

  test('a fit takes its unknowns by name, and says what to add where readings do not tell', async () => {
    const fitted = (unknowns: string, of = design) =>
      told(fitStudy.run(promptPool, of, { unknowns }, 'metric', nobody));
    expect(await fitted('bond, leak')).toMatch(/^The bond 0\.7/);
    const { temperatures } = design.readings;
    const few = { ...design, readings: { ...design.readings, temperatures: temperatures.slice(0, 1) } };
    expect(await fitted('bond,emissivity', few)).toMatch(/^Nothing was fitted: .* Or add a reading: /);
    expect(await fitted('glue')).toBe(
      'unknowns=: glue is none. There are bond, leak, slot, fan, emissivity.',
    );
    expect(await fitted('bond leak slot fan')).toBe('unknowns=: 3 at most.');
    expect(await fitted(' ')).toMatch(/^unknowns=: name one at least/);
  });

  test('a design without readings says so, and is advised all the same', async () => {
    const bare = exampleById('onePair');
    const none = /^This design has no readings\./;
    expect(await told(checkStudy.run(promptPool, bare, {}, 'metric', nobody))).toMatch(none);
    expect(await told(fitStudy.run(promptPool, bare, {}, 'metric', nobody))).toMatch(none);
    expect(adviceStudy.ask(bare, {}, 'metric')).toEqual({ design: bare });
    expect(adviceStudy.ask(bare, { unknowns: 'fan,bond,leak,slot' }, 'metric')).toEqual({
      design: bare,
      unknowns: ['bond', 'leak', 'slot', 'fan'],
    });
  });
});
