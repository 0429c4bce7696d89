import { defineCard } from '../card.ts';

/** Rise of one body over its surroundings after a time of constant power, from equilibrium. */
export function lumpedRise_K(power_W: number, R_KPerW: number, tau_s: number, time_s: number): number {
  return -power_W * R_KPerW * Math.expm1(-time_s / tau_s);
}

export const card = defineCard({
  id: 'lumpedRise',
  title: 'One body after a step of power',
  equation: 'ΔT = P·R·(1 − exp(−t/τ))',
  result: { name: 'temperature rise', unit: 'K', symbol: 'ΔT' },
  symbols: { power_W: 'P', R_KPerW: 'R', tau_s: 'τ', time_s: 't' },
  source: { key: 'incropera', where: 'ch. 5, lumped capacitance' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['lumped', 'steadyProperties'],
  example: {
    given: { power_W: 10, R_KPerW: 3, tau_s: 120, time_s: 60 },
    printed: '11.8041',
    kind: 'worked again',
    where: 'worked by hand',
  },
  evaluate: ({ power_W, R_KPerW, tau_s, time_s }) => lumpedRise_K(power_W, R_KPerW, tau_s, time_s),
});
