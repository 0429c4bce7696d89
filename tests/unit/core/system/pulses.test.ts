import { describe, expect, test } from 'vitest';
import { shortPulseRise_K } from '../../../../src/core/heat/shortPulseRise_K.ts';
import type { SystemInput } from '../../../../src/core/system/input.ts';
import { sampleInput, samplePart } from '../../../helpers/sampleInput.ts';
import { solved } from '../../../helpers/solved.ts';

const base = sampleInput(3, 3);
const pulsed = (duty: number, period_s: number): SystemInput => ({
  ...base,
  load: { ...base.load, duty, period_s },
});
const pulseOf = (duty: number, period_s: number) => {
  const { pulse } = solved(pulsed(duty, period_s));
  if (!pulse) throw new Error('a load that goes has pulses');
  return pulse;
};

describe('films in pulses', () => {
  test('are not asked after where the load stays on, or never comes', () => {
    expect(solved(base).pulse).toBeNull();
    expect(solved(pulsed(0, 1)).pulse).toBeNull();
  });

  test('very quick ones leave the film at its mean', () => {
    const { peak_K, valley_K, position } = pulseOf(0.5, 1e-4);
    const mean_K = solved(pulsed(0.5, 1e-4)).heat.positions[position]?.film_K ?? 0;
    expect(peak_K - mean_K).toBeLessThan(0.3);
    expect(peak_K).toBeGreaterThan(mean_K);
    expect(valley_K).toBeLessThan(mean_K);
  });

  test('very long ones take it where the load that stays takes it, at the same flow', () => {
    const { peak_K, single_K, position } = pulseOf(0.9, 1e5);
    const on_K = solved(base).heat.positions[position]?.film_K ?? 0;
    expect(Math.abs(peak_K - on_K)).toBeLessThan(0.5); // conductances of the mean load
    expect(Math.abs(single_K - on_K)).toBeLessThan(0.5);
  });

  test('longer periods of the same duty swing wider', () => {
    let before = 0;
    for (const period_s of [0.001, 0.01, 0.1, 1, 10, 100]) {
      const { peak_K, valley_K } = pulseOf(0.2, period_s);
      expect(peak_K - valley_K).toBeGreaterThan(before);
      before = peak_K - valley_K;
    }
  });

  test('a pulse far shorter than the chip’s own time is that of a solid without an end', () => {
    const on_s = 1e-4;
    const { single_K } = pulseOf(0.1, on_s / 0.1);
    const published = shortPulseRise_K({
      flux_WPerM2: 3 / (samplePart.length_m * samplePart.width_m),
      time_s: on_s,
      k_WPerMK: samplePart.ceramic_WPerMK,
      rho_kgPerM3: 1,
      cp_JPerKgK: samplePart.ceramicHeat_JPerM3K,
    });
    expect((single_K - base.room.T_K) / published).toBeGreaterThan(0.99);
    expect((single_K - base.room.T_K) / published).toBeLessThan(1.08); // terminals at the film take nothing in the model of the solid
  });

  test('the trace runs through one period, highest where the load goes', () => {
    const { trace, on_s, period_s, peak_K } = pulseOf(0.3, 10);
    const top = trace.reduce((most, point) => (point.film_K > most.film_K ? point : most));
    expect(top.time_s).toBeCloseTo(on_s, 9);
    expect(top.film_K).toBeCloseTo(peak_K, 6);
    expect(trace[trace.length - 1]?.time_s).toBeCloseTo(period_s, 9);
  });

  test('are judged: a film that only its pulses overheat does not hold', () => {
    const part = { ...samplePart, zeroPowerAt_K: 336, fullPowerUpTo_K: 320, deratedBy: 'film' as const };
    const input = pulsed(0.1, 100);
    const tender = { ...input, positions: input.positions.map((p) => ({ ...p, part, power_W: 4 })) };
    const { limits, verdict } = solved(tender);
    expect(limits.find(({ key }) => key === 'film')?.state).not.toBe('fails');
    expect(verdict).toMatchObject({ state: 'fails', limit: { key: 'pulse' } });
  });
});
