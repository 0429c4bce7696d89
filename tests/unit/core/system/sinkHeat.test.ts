import { describe, expect, test } from 'vitest';
import { airProperties, createAirProperties } from '../../../../src/core/air/airProperties.ts';
import { prepareNusselt } from '../../../../src/core/channel/channelNusselt.ts';
import { finEfficiency } from '../../../../src/core/fins/finEfficiency.ts';
import { bankGeometry } from '../../../../src/core/system/geometry.ts';
import { createSinkHeat, updateSinkHeat } from '../../../../src/core/system/sinkHeat.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';

const input = sampleInput(2);
const bank = bankGeometry(input);
const air = createAirProperties();
airProperties(air, 310, 101325, 1);

function sinkAt(s: number, massFlow: number, factor = 1) {
  const state = createSinkHeat(
    bank,
    prepareNusselt(bank.finGap_m, input.sink.finHeight_m, input.sink.length_m),
    s,
  );
  updateSinkHeat(state, bank, input.sink, massFlow, Math.max(massFlow, 0), air, air.cp_JPerKgK, factor);
  return state;
}

describe('updateSinkHeat', () => {
  test('has the velocity of the air in its channels', () => {
    const { velocity_mPerS } = sinkAt(1, 1e-3);
    expect(velocity_mPerS * air.rho_kgPerM3 * 8 * bank.finGap_m * 10e-3).toBeCloseTo(1e-3, 12);
  });

  test('an outer sink has one plate and no way across, an inner one two and one', () => {
    expect([sinkAt(0, 1e-3).plates, sinkAt(1, 1e-3).plates]).toEqual([1, 2]);
    expect(sinkAt(0, 1e-3).across_WPerK).toBe(0);
    expect(sinkAt(1, 1e-3).across_WPerK).toBeGreaterThan(0);
  });

  test('fins of an inner sink are as good as fins of half the height', () => {
    const outer = sinkAt(0, 1e-3);
    const inner = sinkAt(1, 1e-3);
    const { k_WPerMK, finThickness_m, finHeight_m } = input.sink;
    expect(outer.finEfficiency).toBeCloseTo(
      finEfficiency(outer.h_WPerM2K, k_WPerMK, finThickness_m, finHeight_m),
      12,
    );
    expect(inner.finEfficiency).toBeCloseTo(
      finEfficiency(inner.h_WPerM2K, k_WPerMK, finThickness_m, finHeight_m / 2),
      12,
    );
  });

  test('does not mind which way the air goes, and stays finite without any', () => {
    expect(sinkAt(1, -1e-3).plateToAir_WPerK).toBe(sinkAt(1, 1e-3).plateToAir_WPerK);
    for (const value of Object.values(sinkAt(1, 0)))
      if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
  });

  test('air that goes round in the box is carried nowhere', () => {
    expect(sinkAt(1, -1e-3).carry_WPerK).toBe(0);
    expect(sinkAt(1, 1e-3).carry_WPerK).toBeGreaterThan(0);
  });

  test('takes the factor on its heat transfer coefficient', () => {
    expect(sinkAt(1, 1e-3, 1.2).h_WPerM2K).toBeCloseTo(1.2 * sinkAt(1, 1e-3).h_WPerM2K, 10);
  });
});
