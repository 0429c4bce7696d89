import { describe, expect, test } from 'vitest';
import { changesStudy, compareStudy } from '../../../src/cli/changeStudies.ts';
import type { Design } from '../../../src/model/design.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { changesJob } from '../../../src/studies/changes/changes.ts';
import { runJob } from '../../../src/studies/job.ts';
import { promptPool } from '../../helpers/pools.ts';

const design = exampleById('onePair');

test('what to change first is asked on a terminal without further ado', () => {
  const question = changesStudy.ask(design);
  const report = changesStudy.report(question, runJob(changesJob, question), 'metric');
  expect(report.sentence).toMatch(/^First, /);
  expect(report.tables.map(({ id }) => id)).toEqual(['changes', 'changesLeftOut']);
  expect(changesStudy.report(question, null, 'metric').tables).toEqual([]);
});

describe('designs side by side on a terminal', () => {
  const files: Readonly<Record<string, Design>> = { 'b.json': { ...design, variant: 'b' } };
  const compare = (given: string) =>
    compareStudy.run(promptPool, design, { with: given }, 'metric', async (file) => files[file] ?? null);

  test('are the files named, the first on the left', async () => {
    const report = await compare('b.json');
    expect(typeof report === 'string' ? [] : report.tables[0]?.rows.map(([letter]) => letter)).toEqual([
      'A',
      'B',
    ]);
  });

  test('are not too many, not too few, and all of them readable', async () => {
    expect(await compare('')).toContain('Name design files after with=');
    expect(await compare('a,b,c,d,e,f')).toBe('At most 5 designs beside the first.');
    expect(await compare('c.json')).toBe('c.json was not opened.');
  });
});
