import { defineCard } from '../card.ts';

/**
 * One fin as conductances, to `out`: `out[0]` from a plate to the air, `out[1]` from plate to plate through the fin.
 * With both ends on plates it is the exact two-ended fin; with an open tip only the first counts and the tip gives no heat.
 */
export function finBetweenPlates(
  out: Float64Array,
  h_WPerM2K: number,
  k_WPerMK: number,
  thickness_m: number,
  height_m: number,
  length_m: number,
  bothEnds: boolean,
): void {
  const m = Math.sqrt((2 * h_WPerM2K) / (k_WPerMK * thickness_m));
  const mH = m * height_m;
  const section = k_WPerMK * thickness_m * length_m;
  if (!bothEnds) {
    out[0] = section * m * Math.tanh(mH);
    out[1] = 0;
    return;
  }
  // tanh(x/2) and sinh(x), both from eˣ − 1. It overflows long after anything has ceased to get across.
  const grown = Math.expm1(Math.min(mH, 300));
  out[0] = (section * m * grown) / (grown + 2);
  out[1] = mH > 1e-6 ? (2 * section * m * (grown + 1)) / (grown * (grown + 2)) : section / height_m;
}

export const card = defineCard({
  id: 'finBetweenPlates',
  title: 'Fin between two plates',
  equation: 'G = k·t·L·m·tanh(m·H/N); m = √(2·h/(k·t)); N plates that the fin stands on',
  result: { name: 'conductance plate to air, one end', unit: 'W/K', symbol: 'G' },
  symbols: { h_WPerM2K: 'h', k_WPerMK: 'k', thickness_m: 't', height_m: 'H', length_m: 'L', plates: 'N' },
  source: { key: 'incropera', where: 'ch. 3, fin with two given end temperatures' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.01, from: 'common practice' },
  assumes: ['oneDimensionalFin', 'uniformWallTemperature', 'tipAdiabatic'],
  example: {
    given: { h_WPerM2K: 30, k_WPerMK: 200, thickness_m: 1e-3, height_m: 40e-3, length_m: 50e-3, plates: 2 },
    printed: '0.057710',
    kind: 'worked again',
    where:
      'half of it is the fin of 20 mm with an adiabatic tip: η 0.96183, 2hHLη = 0.057710, worked by hand',
  },
  evaluate: ({ h_WPerM2K, k_WPerMK, thickness_m, height_m, length_m, plates }) => {
    const out = new Float64Array(2);
    finBetweenPlates(out, h_WPerM2K, k_WPerMK, thickness_m, height_m, length_m, plates === 2);
    return out[0] as number;
  },
});
