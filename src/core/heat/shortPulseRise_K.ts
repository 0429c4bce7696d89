import { defineCard } from '../card.ts';

/** A solid as a short pulse meets it. */
export interface DeepSolid {
  readonly flux_WPerM2: number;
  readonly time_s: number;
  readonly k_WPerMK: number;
  readonly rho_kgPerM3: number;
  readonly cp_JPerKgK: number;
}

/**
 * Rise of the surface of a solid under an even flux, while the heat has not yet reached the far side: a film on its
 * ceramic in the first milliseconds. Good until about t²·ρc/(4k) for a layer of thickness t.
 */
export function shortPulseRise_K(solid: DeepSolid): number {
  const { flux_WPerM2, time_s, k_WPerMK, rho_kgPerM3, cp_JPerKgK } = solid;
  return 2 * flux_WPerM2 * Math.sqrt(time_s / (Math.PI * k_WPerMK * rho_kgPerM3 * cp_JPerKgK));
}

export const card = defineCard({
  id: 'shortPulseRise',
  title: 'Surface under a very short pulse',
  equation: 'ΔT = 2·q·√(t/(π·k·c))',
  result: { name: 'temperature rise', unit: 'K', symbol: 'ΔT' },
  symbols: { flux_WPerM2: 'q', time_s: 't', k_WPerMK: 'k', heat_JPerM3K: 'c' },
  source: { key: 'carslawJaeger1959', where: 'semi-infinite solid, constant flux' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['deepSolid', 'evenFilmHeat', 'steadyProperties'],
  example: {
    given: { flux_WPerM2: 1e6, time_s: 1e-3, k_WPerMK: 27, heat_JPerM3K: 3900 * 880 },
    printed: '3.7068',
    kind: 'worked again',
    where: 'alumina, 1 W/mm² for 1 ms, worked by hand',
  },
  evaluate: ({ heat_JPerM3K, ...solid }) =>
    shortPulseRise_K({ ...solid, rho_kgPerM3: 1, cp_JPerKgK: heat_JPerM3K }),
});
