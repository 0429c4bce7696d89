import { describe, expect, test } from 'vitest';
import type { Design } from '../../../../src/model/design.ts';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import { compareReport } from '../../../../src/report/compare/compareReport.ts';
import { tableData } from '../../../../src/report/tableData.ts';
import { compareJob } from '../../../../src/studies/compare/compare.ts';
import { runJob } from '../../../../src/studies/job.ts';

const eight = exampleById('eightResistors');
const plain = (text: string) => text.replaceAll('\u202f', ' ');

function compare(design: Design, ...others: readonly Design[]) {
  const question = { design, others };
  const made = compareReport(question, runJob(compareJob, question), 'metric');
  const texts = (key: string) =>
    made.results
      .find((row) => row.key === key)
      ?.cells.map(({ text, mark }) => plain(`${text} ${mark}`.trim())) ?? [];
  return { ...made, texts };
}

const quiet: Design = { ...eight, variant: 'quiet', fan: { ...eight.fan, supply_V: 8 } };
const thin: Design = { ...eight, variant: 'thin', bond: { ...eight.bond, filament_m: 1e-4 } };
const still: Design = { ...eight, variant: 'still', fan: { ...eight.fan, supply_V: 3 } };

describe('designs side by side', () => {
  test('a design beside itself: no difference, nothing best, nothing worst', () => {
    const made = compare(eight, eight);
    expect(made.inputs).toEqual([]);
    for (const { cells } of made.results) for (const cell of cells) expect(cell.standing).toBe(null);
    expect(made.sentence).toMatch(/^No input differs/);
  });

  test('a design fitted to readings says to how many, and what differs for it', () => {
    const fitted = { ...eight.fitted, readings: 12, bondFactor: 0.83, bondWithin: 0.06 };
    const { inputs } = compare(eight, { ...eight, fitted, variant: 'fitted to 12 readings' });
    expect(inputs.map(({ label, cells }) => [label, ...cells.map(plain)])).toEqual([
      ['Fitted to readings', '0', '12'],
      ['Fit to readings: bond factor', '1', '0.83'],
      ['Fit to readings: bond factor, within', '0 %', '6 %'],
    ]);
  });

  test('say first which is coolest, which quietest, and which hold', () => {
    const { sentence } = compare(eight, quiet, thin);
    expect(plain(sentence)).toMatch(
      /^C is coolest: \d\.\d K below A; B is quietest; C may carry most\. .*hold/,
    );
  });

  test('the coolest is measured against the next where it is the one on the bench', () => {
    expect(plain(compare(thin, eight, quiet).sentence)).toMatch(/^A is coolest: \d\.\d K below B;/);
  });

  test('mark best and worst in words, and what is in between not at all', () => {
    const { texts } = compare(eight, quiet, thin);
    expect(texts('film')).toEqual([
      expect.stringMatching(/^\d+( °C|\.\d °C)$/),
      expect.stringMatching(/ hottest$/),
      expect.stringMatching(/ coolest$/),
    ]);
    expect(texts('sound')[0]).toBe(texts('sound')[2]);
    expect(texts('sound')[1]).toMatch(/quietest$/);
    expect(texts('pressure').join()).not.toMatch(/most|least|best/);
  });

  test('one without an answer has no numbers and is no best', () => {
    const { texts, sentence, remarks } = compare(eight, still);
    expect(texts('film')[1]).toBe('–');
    expect(texts('verdict')).toEqual(['Holds with little to spare best', 'No answer worst']);
    expect(sentence).toContain('B has no answer');
    expect(remarks[1]).toMatch(/still: No answer: the fan gets 3/);
  });

  test('both without an answer are no reason to break', () => {
    expect(compare(still, { ...still, fan: { ...still.fan, supply_V: 2 } }).sentence).toMatch(
      /Both have no answer/,
    );
  });

  test('name every input that differs, with the part it belongs to', () => {
    const other: Design = {
      ...eight,
      remark: 'Changed. '.repeat(20),
      baffle: { ...eight.baffle, sideClearance_m: 0.001, fitted: false },
      fan: { ...eight.fan, supply_V: 9 },
      positions: eight.positions.map((position, i) => ({ ...position, on: i > 0, power_W: 3 + i / 10 })),
    };
    const rows = compare(eight, other).inputs;
    const said = Object.fromEntries(rows.map(({ label, cells }) => [label, cells.map(plain)]));
    expect(said['Baffle: side clearance']).toEqual(['0.8 mm', '1 mm']);
    expect(said['Baffle fitted']).toEqual(['yes', 'no']);
    expect(said['Fan supply']).toEqual(['12 V', '9 V']);
    expect(said['Resistors that are off']).toEqual(['none', '1']);
    expect(said['Watts given along the row']).toEqual(['4 W each', '3 W to 3.7 W, 26.8 W in all']);
    expect(said.Remark?.[1]).toHaveLength(60);
  });

  test('say shortly of a curve that it differs, and of a value all digits where few are alike', () => {
    const curve = eight.fan.curve.map((point, i) => (i === 2 ? { ...point, dp_Pa: 34 } : point));
    const other = {
      ...eight,
      fan: { ...eight.fan, curve },
      box: { ...eight.box, length_m: 0.150001 },
    };
    const { inputs } = compare(eight, other);
    expect(inputs.map(({ label }) => label)).toEqual(['Fan curve', 'Box: inside length']);
    expect(plain(inputs[0]?.cells[1] ?? '')).toMatch(/ m³\/h, 6 points, other points between$/);
    expect(inputs[0]?.cells[0]).not.toMatch(/other/);
    expect(inputs[1]?.cells.map(plain)).toEqual(['150 mm', '150.001 mm']);
  });

  test('other kinds of box are compared all the same', () => {
    const { inputs, sentence } = compare(eight, exampleById('onePair'), exampleById('twoDozen'));
    const labels = inputs.map(({ label }) => label);
    for (const label of ['Resistors along the row', 'Kinds of resistor', 'Part 1: resistance', 'Fan curve'])
      expect(labels).toContain(label);
    expect(sentence).toMatch(/coolest/);
  });

  test('go into a file one design a line, each column in one unit, best and worst in words', () => {
    const [results, inputs] = compare(eight, thin).tables;
    if (!results || !inputs) throw new Error('no tables');
    const { heads, rows } = tableData(results);
    expect(heads).toContain('Hottest film, °C');
    expect(rows).toHaveLength(2);
    expect(rows[1]?.at(heads.indexOf('Best at'))).toMatch(/hottest film \(coolest\)/);
    expect(inputs.columns.map(({ head }) => head)).toEqual([
      'Input',
      'A, Eight in a row',
      'B, Eight in a row · thin',
    ]);
  });
});
