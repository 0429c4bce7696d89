import { defineCard } from '../card.ts';

/** Efficiency of a straight fin whose tip gives no heat; pass `height + thickness/2` for a tip in the open. */
export function finEfficiency(
  h_WPerM2K: number,
  k_WPerMK: number,
  thickness_m: number,
  height_m: number,
): number {
  const mH = height_m * Math.sqrt((2 * h_WPerM2K) / (k_WPerMK * thickness_m));
  return mH < 1e-6 ? 1 : Math.tanh(mH) / mH;
}

export const card = defineCard({
  id: 'finEfficiency',
  title: 'Straight fin',
  equation: 'η = tanh(m·H)/(m·H); m = √(2·h/(k·t))',
  result: { name: 'fin efficiency', unit: '1', symbol: 'η' },
  symbols: { h_WPerM2K: 'h', k_WPerMK: 'k', thickness_m: 't', height_m: 'H' },
  source: { key: 'incropera', where: 'ch. 3, straight fin of even thickness' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.01, from: 'common practice' },
  assumes: ['tipAdiabatic', 'oneDimensionalFin'],
  example: {
    given: { h_WPerM2K: 30, k_WPerMK: 200, thickness_m: 1e-3, height_m: 20e-3 },
    printed: '0.96183',
    kind: 'worked again',
    where: 'computed independently, no tip correction',
  },
  evaluate: ({ h_WPerM2K, k_WPerMK, thickness_m, height_m }) =>
    finEfficiency(h_WPerM2K, k_WPerMK, thickness_m, height_m),
});
