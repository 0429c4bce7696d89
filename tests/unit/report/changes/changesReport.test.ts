import { describe, expect, test } from 'vitest';
import type { Design } from '../../../../src/model/design.ts';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import { changesReport } from '../../../../src/report/changes/changesReport.ts';
import { changeWords } from '../../../../src/report/changes/changeWords.ts';
import { tableData } from '../../../../src/report/tableData.ts';
import { changesJob } from '../../../../src/studies/changes/changes.ts';
import { runJob } from '../../../../src/studies/job.ts';

const eight = exampleById('eightResistors');
const plain = (text: string) => text.replaceAll('\u202f', ' ');

function report(design: Design, system: 'metric' | 'inch' = 'metric') {
  const result = runJob(changesJob, { design });
  if (result === null) throw new Error('no result');
  const made = changesReport(design, result, system);
  return { ...made, row: (key: string) => made.rows.find((each) => each.key === key), result };
}

describe('what to change first', () => {
  const made = report(eight);

  test('says the first with its kelvin and its cost, then the next, then the verdict', () => {
    expect(plain(made.sentence)).toMatch(
      /^First, take the thinnest spacer filament: \d\.\d K at the derating line, for a part to buy and work at assembly\. Next, .+: \d\.\d K; .+: \d\.\d K\. With the best three at once the box /,
    );
    expect(plain(made.first)).toMatch(/^First, take the thinnest spacer filament: \d\.\d K\.$/);
    expect(made.head).toBe('Gain at the derating line');
  });

  test('has three for a short list, all of them in the long one', () => {
    expect(made.best).toHaveLength(3);
    const keys = made.rows.map(({ key }) => key);
    for (const { key } of made.best) expect(keys).toContain(key);
  });

  test('says each with both ends, and calls the edit and the variant after it', () => {
    const row = made.row('filamentThinnest');
    expect(plain(row?.detail ?? '')).toBe('0.15 mm → 0.1 mm');
    expect(plain(row?.edit ?? '')).toBe('Filament 0.15 mm → 0.1 mm');
    expect(row?.variant).toBe('filament 0.1 mm');
    expect(row?.costs).toBe('buy, assembly');
    expect(made.row('flipAlternate')?.edit).toBe('Every second turned, resistors 2, 4, 6 and 8');
    expect(made.row('flipAlternate')?.variant).toBe('every second turned');
    expect(made.row('lessLoad')).toMatchObject({ isLast: true, costs: 'less load' });
  });

  test('tells the film beside the limit, and sound and air where they change', () => {
    expect(plain(made.row('fanBehind')?.sound ?? '')).toBe('+3.0 dB');
    expect(made.row('fanBehind')?.flow).toMatch(/^\+/);
    expect(made.row('voidsHalved')).toMatchObject({ sound: '–', flow: '–' });
    const [table] = made.tables;
    expect(table?.columns.map(({ head }) => head).slice(2, 4)).toEqual([
      'Gain at the derating line',
      'At the hottest film',
    ]);
    const bonded = table?.rows.find(([does]) => does === changeWords.secondBonded.does);
    expect(bonded?.[2]).toMatch(/^−/);
    expect(bonded?.[3]).not.toMatch(/^−/);
  });

  test('ends its table with the best at once, and whether they add up', () => {
    const rows = made.tables[0]?.rows ?? [];
    expect(rows.slice(-2).map(([does]) => does)).toEqual(['The best two at once', 'The best three at once']);
    expect(made.together[0]?.compared).toMatch(/one by one/);
  });

  test('says of what cannot be made why not', () => {
    expect(made.leftOut.map(({ key }) => key)).toContain('finsMore');
    const why = made.leftOut.find(({ key }) => key === 'finsMore')?.why;
    expect(plain(why ?? '')).toBe(
      'The slots would be 1.89 mm wide, less than now, 2.23 mm, and less than the end mill, 3 mm.',
    );
    const short = report({ ...eight, box: { ...eight.box, length_m: 0.136 } });
    expect(short.leftOut.find(({ key }) => key === 'finsHigher')?.why).toContain('Make the box longer');
  });

  test('gives a file bare numbers', () => {
    const [table] = made.tables;
    if (table === undefined) throw new Error('no table');
    const { heads, rows } = tableData(table);
    expect(heads[2]).toBe('Gain at the derating line, K');
    expect(rows[0]?.[2]).toBeCloseTo(made.result.tried[0]?.gain?.limit_K ?? 0, 4);
  });

  test('speaks in the reader’s units', () => {
    const inch = report(eight, 'inch');
    expect(inch.sentence).toMatch(/°F at the derating line/);
    expect(inch.row('filamentThinnest')?.variant).toBe('filament 0.003937 in');
  });
});

test('every name fits the field for it', () => {
  for (const design of [eight, exampleById('onePair'), exampleById('twoDozen')])
    for (const { variant } of report(design).rows) expect(variant.length).toBeLessThanOrEqual(40);
});

test('an adhesive from the shelf is told by name and by the figure it is taken for', () => {
  const row = report({ ...eight, bond: { ...eight.bond, sheetK_WPerMK: 0.2 } }).row('adhesiveBetter');
  expect(plain(row?.detail ?? '')).toBe('Filled epoxy: 0.2 W/(m·K) → 1 W/(m·K)');
  expect(row?.variant).toBe('adhesive Filled epoxy');
});

test('where what gives first is no temperature, it says so', () => {
  const { remarks, hasOtherFilm, head } = report(exampleById('onePair'));
  expect(remarks[0]).toContain('what gives first, the rated power, is no temperature');
  expect([head, hasOtherFilm]).toEqual(['Gain at the hottest film', false]);
});

test('without an answer it says what brings one, and where the film comes to', () => {
  const made = report({ ...eight, fan: { ...eight.fan, supply_V: 4 } });
  expect(plain(made.sentence)).toMatch(
    /^There is no answer as it is\. First, feed the fan its rated volts: then there is one, with the hottest film at \d+ °C, for another setting\.$/,
  );
  expect(made.head).toBe('Hottest film with it');
  expect(plain(made.row('fanRated')?.gain ?? '')).toMatch(/^\d+ °C$/);
  expect(made.together).toEqual([]);
  const none = report({ ...eight, fan: { ...eight.fan, rated_V: 3, supply_V: 3 } });
  expect(none.sentence).toMatch(/none of the changes tried brings one by itself/);
  expect(none.first).toBe('Nothing tried here gains anything.');
});

test('where nothing helps, it offers less load and says what that gains', () => {
  const result = runJob(changesJob, { design: eight });
  if (result === null) throw new Error('no result');
  const last = result.tried.filter(({ key }) => key === 'lessLoad');
  const made = changesReport(eight, { ...result, tried: last, together: [] }, 'metric');
  expect(plain(made.sentence)).toMatch(
    /^Nothing tried here gains as much as 0\.1 K at the derating line, but a tenth less load: \d+\.\d K\.$/,
  );
  expect(made.best.map(({ key }) => key)).toEqual(['lessLoad']);
});
