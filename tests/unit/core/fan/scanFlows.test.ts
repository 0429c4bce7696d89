import { describe, expect, test } from 'vitest';
import { scanFlows } from '../../../../src/core/fan/scanFlows.ts';
import { preparePchip } from '../../../../src/core/solve/pchip.ts';

describe('scanFlows', () => {
  const falling = preparePchip([0, 1, 2, 4], [50, 40, 30, 0]);
  const dipping = preparePchip([0, 1, 2, 4], [50, 20, 30, 0]);

  test('asks a falling curve at its points alone', () => {
    expect(scanFlows(falling, 1, 4)).toEqual([4e-6, 1, 2, 4]);
  });

  test('looks closely where pressure rises with flow', () => {
    const flows = scanFlows(dipping, 1, 4);
    const rising = flows.filter((flow) => flow > 1 && flow < 2);
    expect(rising).toHaveLength(39); // a quarter of the way in a quarter of 160 steps
    expect(flows.filter((flow) => flow <= 1 || flow >= 2)).toEqual([4e-6, 1, 2, 4]);
    for (let i = 1; i < flows.length; i++) expect(flows[i]).toBeGreaterThan(flows[i - 1] as number);
  });

  test('goes with the fan’s speed, and no farther than asked', () => {
    expect(scanFlows(falling, 0.5, 2)).toEqual([2e-6, 0.5, 1, 2]);
    expect(scanFlows(falling, 1, 3)).toEqual([3e-6, 1, 2, 3]);
  });

  test('begins at rest where the first point has flow, closely if the curve rises there', () => {
    const [start, ...rest] = scanFlows(preparePchip([1, 2, 4], [30, 20, 0]), 1, 4);
    expect([start, ...rest]).toEqual([4e-6, 1, 2, 4]);
    const rising = scanFlows(preparePchip([1, 2, 4], [10, 20, 0]), 1, 4);
    expect(rising.filter((flow) => flow < 1)).toHaveLength(40);
  });
});
