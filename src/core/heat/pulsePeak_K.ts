import { defineCard } from '../card.ts';

/** A load that comes and goes for ever: on for a part of each period. */
export interface PulseTrain {
  readonly power_W: number;
  readonly R_KPerW: number;
  readonly tau_s: number;
  readonly on_s: number;
  readonly period_s: number;
}

/** Highest rise of one body under a settled pulse train, at the end of each pulse. */
export function pulsePeak_K(train: PulseTrain): number {
  const { power_W, R_KPerW, tau_s, on_s, period_s } = train;
  return (power_W * R_KPerW * Math.expm1(-on_s / tau_s)) / Math.expm1(-period_s / tau_s);
}

export const card = defineCard({
  id: 'pulsePeak',
  title: 'One body under pulses, peak',
  equation: 'ΔT = P·R·(1 − exp(−t_1/τ))/(1 − exp(−t_2/τ))',
  result: { name: 'temperature rise', unit: 'K', symbol: 'ΔT' },
  symbols: { power_W: 'P', R_KPerW: 'R', tau_s: 'τ', on_s: 't_1', period_s: 't_2' },
  source: { key: 'ownComputation', where: 'two exponential pieces that join' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['lumped', 'steadyProperties'],
  example: {
    given: { power_W: 10, R_KPerW: 8, tau_s: 25, on_s: 10, period_s: 40 },
    printed: '33.0463',
    kind: 'worked again',
    where: 'worked by hand',
  },
  evaluate: pulsePeak_K,
});
