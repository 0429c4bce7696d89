import { expect, test } from 'vitest';
import { createDesignStore } from '../../../../src/store/designStore.ts';
import { fieldView } from '../../../../src/store/fieldView.ts';
import { takeTracing } from '../../../../src/store/tracing/takeTracing.ts';

const rows = [
  ['0', '0.15'],
  ['20', '0.1'],
  ['35.2', '0'],
] as const;
const units = { flow: 'cfm', pressure: 'inH2O' };

test('traced points become a curve in the units of their sheet, as one edit that may be undone', () => {
  const store = createDesignStore();
  const act = store.getState();
  const before = act.design;
  expect(
    act.apply((entered) => takeTracing(entered, 'fan.curve', rows, units), 'Curve from a picture'),
  ).toBeNull();
  const { design, problems } = store.getState();
  expect(problems).toEqual([]);
  expect(design.fan.curve).toHaveLength(3);
  expect(design.fan.curve[2]?.flow_m3PerS).toBeCloseTo((35.2 * 0.028316846592) / 60, 12);
  expect(design.fan.curve[0]?.dp_Pa).toBeCloseTo(0.15 * 249.08891, 9);
  expect(fieldView(store.getState(), 'fan.curve[1].flow_m3PerS')).toMatchObject({ text: '20', unit: 'cfm' });
  expect(act.undo()?.name).toBe('Curve from a picture');
  expect(store.getState().design).toBe(before);
});

test('one point is no curve', () => {
  const store = createDesignStore();
  const told = store
    .getState()
    .apply((entered) => takeTracing(entered, 'fan.curve', rows.slice(0, 1), units), 'Curve from a picture');
  expect(told).toBe('A curve needs at least two rows.');
});
