import { describe, expect, test } from 'vitest';
import { createTracingStore, type Picture } from '../../../../src/store/tracing/tracingStore.ts';

const picture: Picture = {
  blob: new Blob(['dots']),
  name: 'sheet.png',
  owner: 'Invented',
  width: 800,
  height: 600,
};

function begin() {
  const store = createTracingStore('metric');
  const act = store.getState();
  act.setPicture(picture);
  return { store, act, tracing: () => store.getState().tracing };
}

describe('what a press puts', () => {
  test('is nothing without a picture', () => {
    expect(createTracingStore('metric').getState().put({ x: 1, y: 1 })).toBeNull();
  });

  test('is the marks of the axis that is asked for, then moves the one in hand', () => {
    const { store, act, tracing } = begin();
    expect(store.getState().step).toBe('flow');
    act.put({ x: 100, y: 500 });
    act.put({ x: 700, y: 500 });
    expect(tracing().axes.flow.marks.map(({ at }) => at?.x)).toEqual([100, 700]);
    act.put({ x: 690, y: 501 });
    expect(tracing().axes.flow.marks.map(({ at }) => at?.x)).toEqual([100, 690]);
    act.select(null);
    expect(act.put({ x: 300, y: 300 })).toBeNull();
  });

  test('is a point after the one in hand, or at the end; never beside the picture', () => {
    const { store, act, tracing } = begin();
    act.goTo('points');
    act.put({ x: 100, y: 100 });
    act.put({ x: 300, y: 200 });
    act.select({ kind: 'point', index: 0 });
    act.put({ x: 200, y: 150 });
    act.select(null);
    act.put({ x: 900, y: -5 });
    expect(tracing().points.map(({ x }) => x)).toEqual([100, 200, 300, 800]);
    expect(tracing().points[3]?.y).toBe(0);
    expect(store.getState().selected).toEqual({ kind: 'point', index: 3 });
  });
});

describe('the arrow keys', () => {
  test('move the thing in hand, and without one the cross', () => {
    const { store, act, tracing } = begin();
    act.nudge(null, 10, -1);
    expect(store.getState().cross).toEqual({ x: 410, y: 299 });
    const target = act.put(store.getState().cross);
    act.nudge(target, -1, 0);
    act.nudge(target, -1, 0);
    expect(tracing().axes.flow.marks[0].at).toEqual({ x: 408, y: 299 });
  });
});

describe('a value typed', () => {
  test('keeps its text, and its unit holds for the axis', () => {
    const { act, tracing } = begin();
    act.setText('flow', 1, '35 cfm');
    expect(tracing().axes.flow).toMatchObject({ unit: 'cfm', marks: [{ text: '' }, { text: '35 cfm' }] });
    act.setText('flow', 0, '35 Pa');
    expect(tracing().axes.flow).toMatchObject({
      unit: 'cfm',
      marks: [{ text: '35 Pa' }, { text: '35 cfm' }],
    });
  });
});

describe('taking back', () => {
  test('goes by whole edits: a drag, a run of arrow keys, the letters of a value are one each', () => {
    const { act, tracing } = begin();
    act.goTo('points');
    const target = act.put({ x: 100, y: 100 });
    if (target === null) throw new Error('nothing put');
    for (const x of [110, 120, 130]) act.move(target, { x, y: 100 });
    act.endEdit();
    for (let press = 0; press < 5; press++) act.nudge(target, 1, 0);
    act.endEdit();
    for (const text of ['6', '60', '60 Pa']) act.setText('pressure', 1, text);
    act.undo();
    expect(tracing().axes.pressure.marks[1].text).toBe('');
    act.undo();
    expect(tracing().points[0]?.x).toBe(130);
    act.undo();
    expect(tracing().points[0]?.x).toBe(100);
    act.undo();
    expect(tracing().points).toEqual([]);
  });

  test('brings back a picture with all that lay upon it', () => {
    const { store, act, tracing } = begin();
    act.put({ x: 100, y: 500 });
    act.setPicture({ ...picture, name: 'other.png' });
    expect(tracing().axes.flow.marks[0].at).toBeNull();
    act.undo();
    expect(store.getState().picture?.name).toBe('sheet.png');
    expect(tracing().axes.flow.marks[0].at).toEqual({ x: 100, y: 500 });
  });

  test('has an end', () => {
    const { store, act } = begin();
    for (let press = 0; press < 5; press++) act.undo();
    expect(store.getState().past).toEqual([]);
  });
});

test('a removed mark keeps its value; a removed point hands over to the one before it', () => {
  const { store, act, tracing } = begin();
  act.setText('flow', 0, '10');
  act.put({ x: 100, y: 500 });
  act.remove({ kind: 'mark', axis: 'flow', index: 0 });
  expect(tracing().axes.flow.marks[0]).toEqual({ at: null, text: '10' });
  act.goTo('points');
  for (const x of [10, 20, 30]) act.put({ x, y: 5 });
  act.remove({ kind: 'point', index: 2 });
  expect(store.getState().selected).toEqual({ kind: 'point', index: 1 });
});

test('points are put in order only when that is asked for', () => {
  const { act, tracing } = begin();
  act.goTo('points');
  for (const x of [300, 100, 200]) act.put({ x, y: 5 });
  expect(tracing().points.map(({ x }) => x)).toEqual([300, 100, 200]);
  act.sort([3, 1, 2]);
  expect(tracing().points.map(({ x }) => x)).toEqual([100, 200, 300]);
});
