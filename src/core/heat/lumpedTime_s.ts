import { defineCard } from '../card.ts';

/**
 * Time in which one body comes from one distance to its final temperature to a smaller one. Warming and cooling alike;
 * zero where it is that close already.
 */
export function lumpedTime_s(tau_s: number, dTStart_K: number, dTEnd_K: number): number {
  return tau_s * Math.log(Math.max(1, Math.abs(dTStart_K / dTEnd_K)));
}

export const card = defineCard({
  id: 'lumpedTime',
  title: 'Time of one body to a temperature',
  equation: 't = τ·ln(ΔT_1/ΔT_2)',
  result: { name: 'time', unit: 's', symbol: 't' },
  symbols: { tau_s: 'τ', dTStart_K: 'ΔT_1', dTEnd_K: 'ΔT_2' },
  source: { key: 'incropera', where: 'eq. 5.5' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['lumped', 'steadyProperties'],
  example: {
    given: { tau_s: 1, dTStart_K: 175, dTEnd_K: 1 },
    printed: '5.16',
    kind: 'worked example',
    where: 'ex. 5.1: from 25 °C to 199 °C in a stream of 200 °C',
  },
  evaluate: ({ tau_s, dTStart_K, dTEnd_K }) => lumpedTime_s(tau_s, dTStart_K, dTEnd_K),
});
