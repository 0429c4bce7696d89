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

test('of alike notes the farthest out speaks', () => {
  expect(
    noteRows([beyond('sink 1', 3000), beyond('sink 2', 9000), beyond('sink 3', 4000)], 'metric')[0]?.text,
  ).toContain('Reynolds number 9000');
  expect(noteRows([beyond('sink 1', 50), beyond('sink 2', 20)], 'metric')[0]?.text).toContain(
    'Reynolds number 20',
  );
});

test('the gravest stand first', () => {
  const info: Note = {
    code: 'tightGap',
    severity: 'info',
    variable: 'gap_m',
    value: 0.0002,
    low: 0.0004,
    high: null,
  };
  const caution: Note = { code: 'airRunsBack', severity: 'caution', variable: 'share', value: 0.25 };
  expect(noteRows([info, caution, beyond('sink 1', 5000)], 'metric').map((row) => row.severity)).toEqual([
    'beyond',
    'caution',
    'info',
  ]);
});

test.each<[Note, RegExp]>([
  [
    {
      code: 'transition',
      severity: 'caution',
      where: 'sink 2',
      variable: 'reynolds',
      value: 2500,
      low: 1500,
      high: 4000,
    },
    /at sink 2 .*Reynolds number 2500, between 1500 and 4000/,
  ],
  [
    { code: 'unevenFeed', severity: 'caution', variable: 'feedRatio', value: 0.8, low: null, high: 0.5 },
    /80\s% of .* more than 50\s%/,
  ],
  [
    {
      code: 'bondAboveGlass',
      severity: 'caution',
      where: 'resistor 1',
      variable: 'T_K',
      value: 373.15,
      low: null,
      high: 363.15,
    },
    /at resistor 1 reaches 100\s°C.* 90\s°C/,
  ],
  [
    {
      code: 'aboveRating',
      severity: 'caution',
      where: 'resistor 1',
      variable: 'power_W',
      value: 4,
      low: null,
      high: 3,
    },
    /carries 4\sW, above the 3\sW/,
  ],
  [{ code: 'severalPoints', severity: 'caution', variable: 'count', value: 2 }, /settle at 2 points/],
  [
    {
      code: 'secondOpinion',
      severity: 'caution',
      where: 'sink 1',
      card: card?.id ?? '',
      variable: 'ratio',
      value: 1.42,
      low: 0.8,
      high: 1.25,
    },
    /gives 1\.4 times .*at sink 1/,
  ],
  [
    { code: 'tightGap', severity: 'info', variable: 'gap_m', value: 0.0002, low: 0.0004, high: null },
    /gap of 0\.2\smm .* below 0\.4\smm/,
  ],
  [
    { code: 'fanObstructed', severity: 'caution', variable: 'space_m', value: 0.02, low: 0.057, high: null },
    /20\smm from the fan, closer than its diameter of 57\smm/,
  ],
  [
    { code: 'fanBackwards', severity: 'caution', where: 'fan 2', variable: 'speedRatio', value: 1 },
    /push air back through fan 2/,
  ],
  [{ code: 'bridgedDip', severity: 'caution' }, /curve has a dip .*another kind/],
  [
    { code: 'airRunsBack', severity: 'caution', variable: 'share', value: 0.25 },
    /runs backwards through a passage, 25\s% of the flow/,
  ],
  [
    { code: 'lyingFins', severity: 'caution', variable: 'tilt_rad', value: Math.PI / 2 },
    /^With the fins 90° from upright /,
  ],
])('$code is said with its numbers', (note, words) => {
  expect(noteRows([note], 'metric')[0]?.text).toMatch(words);
});
