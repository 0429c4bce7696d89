import { expect, test } from 'vitest';
import { saysTable } from '../../../src/report/studyReport.ts';

test('what a study says is a table of one column for print', () => {
  const says = saysTable('says', 'What to cut', {
    sentence: 'Cut it so.',
    remarks: ['Mind this.'],
    tables: [],
  });
  expect(says).toMatchObject({ id: 'says', caption: 'What to cut', rows: [['Cut it so.'], ['Mind this.']] });
});
