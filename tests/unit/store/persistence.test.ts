import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { defaultDesign } from '../../../src/model/defaults.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { createDesignStore } from '../../../src/store/designStore.ts';
import { fieldView } from '../../../src/store/fieldView.ts';
import { type Keep, keepLastDesign, restoreLastDesign } from '../../../src/store/persistence.ts';

function memory(): Keep & { readonly kept: Map<string, unknown> } {
  const kept = new Map<string, unknown>();
  return {
    kept,
    read: (key) => Promise.resolve(kept.get(key)),
    write: (key, value) => Promise.resolve(void kept.set(key, structuredClone(value))),
  };
}
const refusing: Keep = {
  read: () => Promise.reject(new Error('private window')),
  write: () => Promise.reject(new Error('disk full')),
};

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

describe('the last design', () => {
  test('is kept a moment after the last change, with units, and comes back', async () => {
    const keep = memory();
    const store = createDesignStore(defaultDesign);
    const stop = keepLastDesign(store, keep);
    store.getState().setText('sink.plate_m', '1/16 in');
    await vi.advanceTimersByTimeAsync(200);
    store.getState().setText('room.T_K', '30 °C');
    expect(keep.kept.size).toBe(0);
    await vi.advanceTimersByTimeAsync(400);
    expect(store.getState().keeping).toBe('kept');
    stop();

    const next = createDesignStore(exampleById('onePair'));
    expect(await restoreLastDesign(next, keep)).toBe(true);
    expect(next.getState().solvedDesign).toEqual(store.getState().solvedDesign);
    expect(fieldView(next.getState(), 'sink.plate_m')).toMatchObject({ text: '0.0625', unit: 'in' });
  });

  test('is the last one that went together', async () => {
    const keep = memory();
    const store = createDesignStore(defaultDesign);
    keepLastDesign(store, keep);
    store.getState().setText('room.T_K', '30 °C');
    store.getState().setText('fan.hub_m', '59 mm');
    await vi.advanceTimersByTimeAsync(400);
    const next = createDesignStore(exampleById('onePair'));
    await restoreLastDesign(next, keep);
    expect(next.getState().design).toMatchObject({
      fan: { hub_m: defaultDesign.fan.hub_m },
      room: { T_K: 303.15 },
    });
  });

  test('is not kept any more after it was stopped', async () => {
    const keep = memory();
    const store = createDesignStore(defaultDesign);
    const stop = keepLastDesign(store, keep);
    store.getState().setText('room.T_K', '30 °C');
    stop();
    await vi.advanceTimersByTimeAsync(1000);
    expect(keep.kept.size).toBe(0);
  });

  test('is missed without harm where the browser keeps nothing', async () => {
    const store = createDesignStore(defaultDesign);
    expect(await restoreLastDesign(store, refusing)).toBe(false);
    expect(store.getState().keeping).toBe('refused');
    keepLastDesign(store, refusing);
    store.getState().setText('room.T_K', '30 °C');
    await vi.advanceTimersByTimeAsync(400);
    expect(store.getState()).toMatchObject({ keeping: 'refused', stale: false });
  });

  test.each([
    ['nothing', undefined],
    ['something else', 7],
    ['a broken design', { design: { ...defaultDesign, room: null }, system: 'metric', units: {} }],
    ['a newer design', { design: { ...defaultDesign, version: 9 }, system: 'metric', units: {} }],
  ])('is not restored from %s', async (_what, kept) => {
    const store = createDesignStore(defaultDesign);
    const before = store.getState();
    expect(
      await restoreLastDesign(store, { read: () => Promise.resolve(kept), write: () => Promise.resolve() }),
    ).toBe(false);
    expect(store.getState()).toBe(before);
  });

  test('does not overwrite what was typed while it was looked for', async () => {
    const keep = memory();
    const first = createDesignStore(defaultDesign);
    keepLastDesign(first, keep);
    first.getState().setText('room.T_K', '30 °C');
    await vi.advanceTimersByTimeAsync(400);
    const store = createDesignStore(defaultDesign);
    const restoring = restoreLastDesign(store, keep);
    store.getState().setText('title', 'mine');
    expect(await restoring).toBe(false);
    expect(store.getState().design.title).toBe('mine');
  });
});
