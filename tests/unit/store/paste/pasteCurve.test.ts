import { describe, expect, test } from 'vitest';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import { createDesignStore } from '../../../../src/store/designStore.ts';
import { fieldView } from '../../../../src/store/fieldView.ts';
import { pasteCurve } from '../../../../src/store/paste/pasteCurve.ts';
import { tableFixture, tableFixtures } from '../../../helpers/tableFixture.ts';

function paste(text: string, list = 'fan.curve', file?: string) {
  const store = createDesignStore(exampleById('eightResistors'));
  if (list.startsWith('moreFans')) store.getState().addFan();
  if (list.startsWith('extras')) store.getState().addExtra();
  const told = pasteCurve(store.getState().apply, list, text, file);
  const state = store.getState();
  return { store, state, told, curve: state.design.fan.curve };
}

const lPerMin = 60_000;
/** What every readable table of the folder holds. */
const inThem = [
  [0, 1250.5],
  [600.5, 1010],
  [1200, 640],
  [1500, 0],
] as const;

const refusals: Readonly<Record<string, RegExp>> = {
  'design.csv': /file of a program and no table/,
  'empty.csv': /^There is nothing in it\./,
  'halfUtf16.csv': /^This file begins as UTF-16LE, but does not go on like that\.$/,
  'markOnly.csv': /^There is nothing in it\./,
  'noHead.csv': /^This table has 3 columns and no head\./,
  'noPressure.csv':
    /^No column is the static pressure for certain\. Found: “flow \[m³\/h\]”, “n \[rpm\]”, “P \[W\]”\. Name it/,
  'oneColumn.csv': /^This table has one column; a curve needs two/,
  'openQuote.csv': /^Line 3: a quote is opened and never closed\./,
  'picture.csv': /^This is no text but a picture \(PNG\)\./,
  'prose.csv': /^(?:Line \d has|No |This table)/,
  'strangeUnit.csv': /^“mmWS” at the head of the static pressure is no unit known here\./,
  'tooWide.csv': /^Line 2 has 4 cells, and the head 2\. If a comma is the decimal mark/,
  'twoFlows.csv': /^2 columns could be the flow: “Q \[m³\/h\]”, “Q \[cfm\]”\. Leave one/,
  'webPage.csv': /^This is a web page/,
  'zeros.csv': /^Line 3: a character that is no text\./,
};
const faulty = 'outOfOrder.csv';

describe('a table of a fan curve', () => {
  test.each(tableFixtures.filter((name) => !(name in refusals) && name !== faulty))(
    'is read, however it is written: %s',
    (name) => {
      const { told, curve, state } = paste(tableFixture(name));
      expect(told.words).toMatch(/^4 points taken over: flow from .*, pressure from .*\. Undo/);
      expect(curve).toHaveLength(4);
      for (const [at, [flow, pressure]] of inThem.entries()) {
        expect(curve[at]?.flow_m3PerS).toBeCloseTo(flow / lPerMin, 12);
        expect(curve[at]?.dp_Pa).toBeCloseTo(pressure, 9);
      }
      expect(state.stale).toBe(false);
    },
  );

  test.each(Object.entries(refusals))('is refused with the reason, whole: %s', (name, reason) => {
    const said = () => {
      const { told, state } = paste(tableFixture(name));
      expect(told.ok).toBe(false);
      expect(state.design).toBe(exampleById('eightResistors'));
      return told.words;
    };
    const words = (() => {
      try {
        return said();
      } catch (fault) {
        return (fault as Error).message;
      }
    })();
    expect(words).toMatch(reason);
  });

  test('says which columns it took, and in which unit bare numbers are', () => {
    expect(paste('Q;p\n0;60\n10;0').told.words).toBe(
      '2 points taken over: flow from “Q”, pressure from “p”. Numbers without a unit are in m³/h and Pa. Undo brings back what was there.',
    );
    expect(paste('0 cfm\t60\n10 cfm\t0').told.words).toMatch(
      /flow from column 1, pressure from column 2\. Numbers without a unit are in Pa\./,
    );
  });

  test('without a head is two columns in turn, unless units in the cells turn them round', () => {
    const { curve } = paste('60 Pa\t0 m³/h\n0 Pa\t36 m³/h');
    expect(curve).toEqual([
      { flow_m3PerS: 0, dp_Pa: 60 },
      { flow_m3PerS: 0.01, dp_Pa: 0 },
    ]);
    expect(paste('0 Pa;60 Pa\n1 Pa;5 Pa').told.words).toMatch(/^Both columns are a pressure/);
    expect(paste('few;many\nno;none').told.words).toBe('No two columns of numbers found.');
  });

  test('takes a column that says static before one that does not, and P for a pressure beside a flow alone', () => {
    expect(paste('Q;p;p static\n0;70;60\n36;10;0').curve[0]?.dp_Pa).toBe(60);
    expect(paste('Q;P\n0;60\n36;0').curve[0]?.dp_Pa).toBe(60);
    expect(paste('Q;P;n\n0;60;1\n36;0;1').told.words).toMatch(/^No column is the static pressure/);
    expect(paste('flow [kg/s];p [Pa]\n0;60\n1;0').told.words).toMatch(/^No column is the flow/);
    expect(paste('flow;pressure (mmWS)\n0;60\n1;0').told.words).toMatch(/“mmWS”.*no unit known/);
    expect(paste('flow;pressure (static)\n0;60\n1;0').told.ok).toBe(true);
  });

  test('keeps its order, and what does not fit is told at its cell and nothing mended', () => {
    const { state, told, curve } = paste(tableFixture(faulty));
    expect(curve.map(({ flow_m3PerS }) => Math.round(flow_m3PerS * lPerMin * 10) / 10)).toEqual([
      1500, 0, 600.5, 600.5, 1200,
    ]);
    expect(told.words).toMatch(/ 4 cells do not fit; the first is told under the table\./);
    const wrong = Object.fromEntries(
      curve.flatMap((_, row) =>
        (['flow_m3PerS', 'dp_Pa'] as const).flatMap((key) => {
          const { problem, text } = fieldView(state, `fan.curve[${row}].${key}`);
          return problem === null ? [] : [[`${row} ${key}`, `${text}: ${problem}`]];
        }),
      ),
    );
    expect(wrong).toEqual({
      '0 dp_Pa': expect.stringMatching(/^0 Pa: A fan curve begins with the pressure/),
      '1 flow_m3PerS': expect.stringMatching(/^0 l\/min: Flow must rise from row to row/),
      '3 flow_m3PerS': expect.stringMatching(/^600\.5 l\/min: This flow stands twice/),
      '4 dp_Pa': expect.stringMatching(/^sixty: «sixty» is not a number/),
    });
    expect(state.stale).toBe(true);
  });

  test('tells nothing of a row that is right beside one that does not read', () => {
    const { state, told } = paste('flow [m³/h];p [Pa]\nnil;60\n10;5o\n20;40\nmany;0');
    expect(told.words).toMatch(/ 3 cells do not fit/);
    expect(state.problems.map(({ path }) => path)).toEqual([
      'fan.curve[0].flow_m3PerS',
      'fan.curve[1].dp_Pa',
      'fan.curve[3].flow_m3PerS',
    ]);
  });

  test('leaves out rows that hold no point, and keeps one that holds half of one', () => {
    const { state, curve } = paste('flow [m³/h];p [Pa];remark\n0;60;\n;;a pause\n10;;\n36;0;');
    expect(curve).toHaveLength(3);
    expect(fieldView(state, 'fan.curve[1].dp_Pa').problem).toMatch(/^Nothing stands here/);
  });

  test('has as many points as the schema allows, and not one more', () => {
    const rows = (count: number) => Array.from({ length: count }, (_, i) => `${i};${count - i}`).join('\n');
    expect(paste(rows(200)).curve).toHaveLength(200);
    expect(paste(rows(201)).told.words).toBe('That is 201 rows; at most 200 fit.');
    expect(paste(rows(101), 'extras[0].points').told.words).toBe('That is 101 rows; at most 100 fit.');
    expect(paste('0;60').told.words).toMatch(/at least two/);
  });

  test('of megabytes is not read at all', () => {
    expect(paste('1;2\n'.repeat(300_000)).told.words).toMatch(
      /^This text has 1\.2 million letters; it was not read/,
    );
  });

  test('notes the file it came from where nobody told where it is from', () => {
    const text = 'Q;p\n0;60\n10;0';
    const opened = paste(text, 'moreFans[0].curve', 'stand.csv');
    expect(opened.state.design.moreFans[0]?.curveSource).toBe('stand.csv');
    expect(opened.told.words).toMatch(/The name of the file stands under “Curve from”\./);
    opened.store.getState().setText('moreFans[0].curveSource', 'sheet 3, page 2');
    const again = pasteCurve(opened.state.apply, 'moreFans[0].curve', text, 'other.csv');
    expect(again.words).not.toMatch(/Curve from/);
    expect(opened.store.getState().design.moreFans[0]?.curveSource).toBe('sheet 3, page 2');
    expect(paste(text, 'extras[0].points', 'duct.csv').told.words).not.toMatch(/Curve from/);
    expect(paste(text).state.design.fan.curveSource).toBe('');
  });
});
