import { defineCard } from '../card.ts';
import { type PulseTrain, pulsePeak_K } from './pulsePeak_K.ts';

/** Lowest rise of one body under a settled pulse train, just before each pulse. */
export function pulseValley_K(train: PulseTrain): number {
  return pulsePeak_K(train) * Math.exp(-(train.period_s - train.on_s) / train.tau_s);
}

export const card = defineCard({
  id: 'pulseValley',
  title: 'One body under pulses, valley',
  equation: 'ΔT = ΔT_p·exp(−(t_2 − t_1)/τ); ΔT_p = P·R·(1 − exp(−t_1/τ))/(1 − exp(−t_2/τ))',
  result: { name: 'temperature rise', unit: 'K', symbol: 'ΔT' },
  symbols: { power_W: 'P', R_KPerW: 'R', tau_s: 'τ', on_s: 't_1', period_s: 't_2' },
  source: { key: 'ownComputation', where: 'two exponential pieces that join' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['lumped', 'steadyProperties'],
  example: {
    given: { power_W: 10, R_KPerW: 8, tau_s: 25, on_s: 10, period_s: 40 },
    printed: '9.9534',
    kind: 'worked again',
    where: 'worked by hand',
  },
  evaluate: pulseValley_K,
});
