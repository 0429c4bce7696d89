import { expect, test } from 'vitest';
import type { Note } from '../../../src/core/card.ts';
import { cards } from '../../../src/core/cards.ts';
import { noteRows } from '../../../src/report/noteRows.ts';

const card = cards[0];
const beyond = (where: string, value: number): Note => ({
  code: 'outsideRange',
  severity: 'beyond',
  card: card?.id ?? '',
  where,
  variable: 'reynolds',
  value,
  low: 100,
  high: 2300,
});

test('alike notes at several places are said once, with the places', () => {
  const rows = noteRows([beyond('sink 1', 5000), beyond('sink 2', 5000)], 'metric');
  expect(rows).toHaveLength(1);
  expect(rows[0]?.text).toContain('at sink 1 and sink 2');
  expect(rows[0]?.text).toContain(card?.title ?? 'no card');
});

test('many places are counted, not listed', () => {
  const rows = noteRows(
    ['1', '2', '3', '4', '5'].map((n) => beyond(`sink ${n}`, 5000)),
    'metric',
  );
  expect(rows[0]?.text).toContain('at sink 1 and 4 more places');
});

test('says which end of the range was left', () => {
  expect(noteRows([beyond('sink 1', 5000)], 'metric')[0]?.text).toMatch(/Reynolds number 5000 is above 2300/);
  expect(noteRows([beyond('sink 1', 20)], 'metric')[0]?.text).toMatch(/Reynolds number 20 is below 100/);
});

test('a code without words is a mistake of ours and says so', () => {
  expect(() => noteRows([{ code: 'nobodyWordedThis', severity: 'info' }], 'metric')).toThrow(
    'nobodyWordedThis',
  );
});
