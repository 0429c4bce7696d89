import { describe, expect, test } from 'vitest';
import type { Design } from '../../../src/model/design.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import type { ReadingList } from '../../../src/model/readings.ts';
import { createDesignStore } from '../../../src/store/designStore.ts';
import { fieldView } from '../../../src/store/fieldView.ts';
import {
  addReading,
  presentConditions,
  removeReading,
  sameConditionsBelow,
  withoutFit,
} from '../../../src/store/readingEdits.ts';

function bench(design: Design = exampleById('eightResistors')) {
  const store = createDesignStore(design);
  const state = () => store.getState();
  return {
    state,
    readings: () => state().design.readings,
    add: (list: ReadingList) => state().apply((entered) => addReading(entered, list), 'Added'),
  };
}

const box = (list: ReadingList, row: number, key: string) => `readings.${list}[${row}].${key}`;

describe('a reading is added', () => {
  test('under the conditions of the design, its box empty until somebody types', () => {
    const { state, readings, add } = bench();
    add('temperatures');
    expect(readings().temperatures).toMatchObject([
      { where: 'onFilm', number: 1, within_K: 1.5, load_W: 32, room_K: 313.15, fan_V: 12, settled: true },
    ]);
    const view = fieldView(state(), box('temperatures', 0, 'reading_K'));
    expect([view.text, view.problem]).toEqual(['', expect.stringMatching(/^Nothing stands here/)]);
    // An empty box is no reading: the answer stays that of before.
    expect(state().stale).toBe(true);
    state().setText(box('temperatures', 0, 'reading_K'), '68.2');
    expect(state().stale).toBe(false);
    expect(state().solvedDesign.readings.temperatures[0]?.reading_K).toBeCloseTo(341.35, 9);
  });

  test('with the conditions, the instrument and the next place of the row before', () => {
    const { state, readings, add } = bench();
    add('temperatures');
    state().setValue(box('temperatures', 0, 'where'), 'onSink');
    state().setText(box('temperatures', 0, 'load_W'), '20');
    state().setText(box('temperatures', 0, 'within_K'), '0.5');
    add('temperatures');
    add('pressures');
    expect(readings().temperatures[1]).toMatchObject({
      where: 'onSink',
      number: 2,
      load_W: 20,
      within_K: 0.5,
    });
    // Of another quantity: an instrument of its own, and the conditions of the last one there is.
    expect(readings().pressures[0]).toMatchObject({ load_W: 20, within_Pa: 1 });
  });

  test('its instrument an ordinary one for what is to be read, in round numbers', () => {
    const { state, readings, add } = bench(exampleById('onePair'));
    for (const list of ['flows', 'voltages', 'sounds'] as const) add(list);
    expect(readings().voltages[0]?.within_V).toBe(0.06);
    expect(readings().sounds[0]?.within_dBA).toBe(1.5);
    // 5 % of the 3.75 m³/h computed.
    expect((readings().flows[0]?.within_m3PerS ?? 0) * 3600).toBeCloseTo(0.19, 9);
    expect(fieldView(state(), box('flows', 0, 'within_m3PerS')).text).toBe('0.19');
  });

  test('one edit each, which takes its box along when undone', () => {
    const { state, readings, add } = bench();
    add('flows');
    add('flows');
    expect(state().undo()?.name).toBe('Added');
    expect(readings().flows).toHaveLength(1);
    expect(Object.keys(state().drafts)).toEqual([box('flows', 0, 'reading_m3PerS')]);
  });

  test('but not beyond what a list holds', () => {
    const full = bench({
      ...exampleById('prototype'),
      readings: {
        ...exampleById('prototype').readings,
        sounds: Array.from({ length: 100 }, () => ({
          reading_dBA: 30,
          within_dBA: 1,
          load_W: 1,
          room_K: 300,
          fan_V: 12,
        })),
      },
    });
    expect(full.add('sounds')).toBe('This list has room for 100 rows, and all are taken.');
  });

  test('of a box in a string: its watts are those of all resistors', () => {
    expect(presentConditions(exampleById('onePair'))).toEqual({ load_W: 1.6, room_K: 298.15, fan_V: 12 });
  });
});

test('the unit typed in one cell is that of its column', () => {
  const { state, add } = bench();
  add('temperatures');
  state().setText(box('temperatures', 0, 'reading_K'), '150 °F');
  add('temperatures');
  state().setText(box('temperatures', 1, 'reading_K'), '160');
  expect(state().design.readings.temperatures[1]?.reading_K).toBeCloseTo(344.261, 3);
});

test('a row is taken out with what was typed in it, and the rows below close up', () => {
  const { state, readings, add } = bench();
  for (const text of ['60', '70', 'warm']) {
    add('temperatures');
    state().setText(box('temperatures', readings().temperatures.length - 1, 'reading_K'), text);
  }
  state().apply((entered) => removeReading(entered, 'temperatures', 1), 'Removed');
  expect(readings().temperatures).toHaveLength(2);
  expect(fieldView(state(), box('temperatures', 1, 'reading_K')).text).toBe('warm');
});

test('watts, room and fan volts of a row go to all below it, wrong texts included, and to no other', () => {
  const { state, readings } = bench(exampleById('prototype'));
  state().setText(box('temperatures', 8, 'fan_V'), 'slow');
  state().apply((entered) => sameConditionsBelow(entered, 'temperatures', 7), 'Same');
  expect(readings().temperatures.map(({ fan_V }) => fan_V)).toEqual([
    12, 12, 12, 12, 12, 12, 12, 8, 8, 8, 8, 8,
  ]);
  expect(readings().temperatures[9]).toMatchObject({ room_K: 296.85, settled: false, time_s: 60 });
  expect(state().stale).toBe(false);
});

test('the fit is taken out: handbook values again, and undo brings it back', () => {
  const eight = exampleById('eightResistors');
  const { state } = bench({
    ...eight,
    fitted: { ...eight.fitted, readings: 12, bondFactor: 0.8, bondWithin: 0.05 },
  });
  state().apply(withoutFit, 'Fit taken out');
  expect(state().design.fitted).toEqual(eight.fitted);
  state().undo();
  expect(state().design.fitted.bondFactor).toBe(0.8);
});
