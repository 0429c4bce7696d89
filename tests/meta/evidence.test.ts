import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { cards } from '../../src/core/cards.ts';
import { sources } from '../../src/core/sources.ts';
import { loadChecks } from '../../src/report/evidence/loadChecks.ts';
import { flatten, isAllowed } from '../../src/report/evidence/totals.ts';
import { differences } from '../helpers/evidence/compare.ts';
import { formatChecks, gatherChecks } from '../helpers/evidence/gather.ts';
import { withEvidence } from '../helpers/evidence/readme.ts';
import { projectFiles } from '../helpers/projectFiles.ts';
import type { KeptCheck } from '../helpers/published.ts';
import { sampleCheck, sampleGroup } from '../helpers/sampleChecks.ts';

const { test: _, ...keptCheck } = sampleCheck();
const kept: KeptCheck = {
  source: 'lienhard',
  where: 'ex. 2.8',
  kind: 'worked example',
  check: keptCheck,
};
const radiation = 'tests/published/radiation/coefficient.test.ts';

describe('what a run made', () => {
  test('stands by file and source, files in order, checks as they came', () => {
    const other = { ...kept, kind: 'measured' } as const;
    const groups = gatherChecks([
      { file: radiation, title: 'one', checks: [kept, other] },
      { file: radiation, title: 'two', checks: [kept] },
      { file: 'tests/published/air/dryAir.test.ts', title: 'three', checks: [kept] },
    ]);
    expect(groups.map(({ subject, kind, checks }) => [subject, kind, checks.map((c) => c.test)])).toEqual([
      ['air', 'worked example', ['three']],
      ['radiation', 'worked example', ['one', 'two']],
      ['radiation', 'measured', ['one']],
    ]);
  });

  test('has the subject and the title that a check brings along', () => {
    const [group] = gatherChecks([
      {
        file: 'tests/meta/cards.test.ts',
        title: 'x',
        checks: [{ ...kept, subject: 'heat', title: 'Warm-up' }],
      },
    ]);
    expect(group).toMatchObject({ subject: 'transient', checks: [{ test: 'Warm-up' }] });
  });

  test('is written a check a line, and read again the same', () => {
    const groups = [sampleGroup({ checks: [sampleCheck(), sampleCheck({ test: 'another' })] })];
    expect(
      formatChecks(groups)
        .split('\n')
        .filter((line) => line.includes('"test"')),
    ).toHaveLength(2);
    expect(JSON.parse(formatChecks(groups))).toEqual(groups);
  });
});

describe('a file that is not what a run made', () => {
  const group = sampleGroup();
  const name = `${group.file}: a plate: at 60 °C: coefficient`;
  const withCheck = (over: Parameters<typeof sampleCheck>[0]) => [
    sampleGroup({ checks: [sampleCheck(over)] }),
  ];

  test('is told apart by what is new, gone or different', () => {
    expect(differences([group], [group])).toEqual([]);
    expect(differences([], [group])).toEqual([`new: ${name}`]);
    expect(differences([group], [])).toEqual([`gone: ${name}`]);
    expect(differences([group], withCheck({ computed: 10.05 }))).toEqual([`10.04 became 10.05: ${name}`]);
    expect(differences([group], [sampleGroup({ kind: 'handbook' })])).toEqual([
      `of another source, kind or method: ${name}`,
    ]);
    expect(differences([group], withCheck({ allowed: [-0.01, 0.01] }))).toHaveLength(1);
  });

  test('takes the last bit of another machine for the same', () => {
    expect(differences([group], withCheck({ computed: 10.0401, deviation: 0.00401 }))).toEqual([]);
  });

  test('counts a check that stands there twice', () => {
    const twice = sampleGroup({ checks: [sampleCheck(), sampleCheck()] });
    expect(differences([twice], [group])).toEqual([`gone: ${name} (2)`]);
  });
});

// A run that writes it anew does so after this.
describe.skipIf(process.env.UPDATE)('the evidence kept with the program', () => {
  test('is of every file of published checks, and of no other', async () => {
    const files = new Set((await loadChecks()).map(({ file }) => file));
    const published = projectFiles('tests/published', ['.test.ts']).map(({ path }) => path);
    expect([...files].sort()).toEqual(['tests/meta/cards.test.ts', ...published].sort());
  });

  test('has a check of every card, names cards and sources that there are, and lets none be farther off than allowed', async () => {
    const checks = flatten(await loadChecks());
    const ids = new Set(cards.map(({ id }) => id));
    const named = new Set(checks.flatMap(({ methods = [] }) => methods));
    expect([...named].filter((id) => !ids.has(id))).toEqual([]);
    expect([...ids].filter((id) => !named.has(id))).toEqual([]);
    // A key that was mistyped would be taken for a citation.
    expect(checks.filter(({ source }) => !(source in sources) && !/\s/.test(source))).toEqual([]);
    expect(checks.filter((check) => !isAllowed(check))).toEqual([]);
  });

  test('is what the readme says of it', async () => {
    const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
    expect(readme).toBe(withEvidence(readme, await loadChecks()));
  });

  test('needs its place in the readme', () => {
    expect(() => withEvidence('# Throughfin', [])).toThrow('no place for the evidence');
  });
});
