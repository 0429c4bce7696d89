import { describe, expect, test } from 'vitest';
import { bankGeometry } from '../../../../src/core/system/geometry.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';

const base = sampleInput(2);

describe('bankGeometry', () => {
  test('lays sinks and resistors in a row: worked by hand', () => {
    const bank = bankGeometry(base);
    // Outer sinks one plate, the inner one two: 12, 14, 12 mm; chips 20 µm + 0.6 + bond 0.15, tab 0.5 + solder 0.1 + bond 0.15.
    expect(bank.sinkDepth_m.map((d) => Math.round(d * 1e6))).toEqual([12000, 14000, 12000]);
    for (const stack of bank.stack_m) expect(stack).toBeCloseTo(1.52e-3, 12);
    expect(bank.row_m).toBeCloseTo(41.04e-3, 12);
  });

  test('has plates only where a resistor sits', () => {
    const bank = bankGeometry({ ...base, hasLastSink: false });
    expect(bank.present).toEqual([true, true, false]);
    expect(bank.plateBefore).toEqual([false, true, false]);
    expect(bank.plateAfter).toEqual([true, true, false]);
    expect(bank.sinkDepth_m[2]).toBe(0);
  });

  test('divides the width between fins and gaps', () => {
    const { finGap_m, channels } = bankGeometry(base);
    expect(channels).toBe(8);
    expect(channels * finGap_m + 9 * 0.8e-3).toBeCloseTo(25e-3, 12);
  });

  test.each([
    ['tabs', 1.52e-3],
    ['bonded', 0.92e-3],
    ['free', 0.77e-3],
  ] as const)('with a second face that is %s a resistor takes %f m', (way, depth) => {
    const bank = bankGeometry({ ...base, secondFace: { ...base.secondFace, way } });
    expect(bank.stack_m[0]).toBeCloseTo(depth, 12);
  });

  test('leaves the clearances of the baffle round the row, or the room in the bay without one', () => {
    expect(bankGeometry(base).side_m).toBe(0.8e-3);
    const open = bankGeometry({ ...base, baffle: null });
    expect(open.side_m).toBeCloseTo(10e-3, 12);
    expect(open.end_m).toBeCloseTo((0.15 - 41.04e-3) / 2, 12);
    expect(open.collar_m).toBe(25e-3);
  });

  test('has no clearance in a bay that is too small', () => {
    const tight = bankGeometry({
      ...base,
      baffle: null,
      box: { ...base.box, length_m: 0.03, width_m: 0.02 },
    });
    expect([tight.side_m, tight.end_m]).toEqual([0, 0]);
  });

  test('guides the gap air no farther than the sinks are long', () => {
    if (!base.baffle) throw new Error('the sample has a baffle');
    expect(bankGeometry({ ...base, baffle: { ...base.baffle, collar_m: 1 } }).collar_m).toBe(25e-3);
  });
});
