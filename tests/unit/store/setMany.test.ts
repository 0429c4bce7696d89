import { describe, expect, test, vi } from 'vitest';
import { solveSystem } from '../../../src/core/system/solveSystem.ts';
import { defaultDesign } from '../../../src/model/defaults.ts';
import { createDesignStore } from '../../../src/store/designStore.ts';

describe('several values at once', () => {
  test('are one edit: one solve, drafts of these places gone, others kept', () => {
    const solve = vi.fn(solveSystem);
    const store = createDesignStore(defaultDesign, solve);
    store.getState().setText('sink.k_WPerMK', 'abc');
    store.getState().setText('sink.plate_m', '1/16 in');
    solve.mockClear();
    store
      .getState()
      .setMany({ 'sink.material': 'X', 'sink.k_WPerMK': 120, 'sink.heat_JPerM3K': 2.4e6 }, 'Alloy');
    const { design, drafts, problems, solvedDesign } = store.getState();
    expect(solve).toHaveBeenCalledTimes(1);
    expect(design.sink).toMatchObject({
      material: 'X',
      k_WPerMK: 120,
      heat_JPerM3K: 2.4e6,
      plate_m: 0.0015875,
    });
    expect(Object.keys(drafts)).toEqual(['sink.plate_m']);
    expect(problems).toEqual([]);
    expect(solvedDesign).toBe(design);
  });

  test('are taken all or not at all', () => {
    const store = createDesignStore(defaultDesign);
    const before = store.getState().design;
    expect(() =>
      store.getState().setMany({ 'sink.k_WPerMK': 120, 'sink.heat_JPerM3K': -1 }, 'Alloy'),
    ).toThrow('sink.heat_JPerM3K cannot be -1');
    expect(store.getState().design).toBe(before);
  });
});
