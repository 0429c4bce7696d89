import { defineCard } from '../card.ts';

/**
 * How far a fan warms the air it moves. Where its motor stands in the stream all of its electrical watts end there: those in
 * the windings at once, those in the air as soon as it comes to rest.
 */
export function fanHeatRise_K(
  power_W: number,
  flow_m3PerS: number,
  rho_kgPerM3: number,
  cp_JPerKgK: number,
): number {
  return power_W / (rho_kgPerM3 * flow_m3PerS * cp_JPerKgK);
}

export const card = defineCard({
  id: 'fanHeat',
  title: 'Watts of the fan in the air',
  equation: 'ΔT = P/(ρ·Q·c_p)',
  result: { name: 'temperature rise', unit: 'K', symbol: 'ΔT' },
  symbols: { power_W: 'P', flow_m3PerS: 'Q', rho_kgPerM3: 'ρ', cp_JPerKgK: 'c_p' },
  source: { key: 'incropera', where: 'ch. 1, energy balance of a stream' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.1, from: 'common practice' },
  assumes: ['steady'],
  example: {
    given: { power_W: 2.4, flow_m3PerS: 20 / 3600, rho_kgPerM3: 1.184, cp_JPerKgK: 1006 },
    printed: '0.3627',
    kind: 'worked again',
    where: '2.4 W into 20 m³/h, worked by hand',
  },
  evaluate: ({ power_W, flow_m3PerS, rho_kgPerM3, cp_JPerKgK }) =>
    fanHeatRise_K(power_W, flow_m3PerS, rho_kgPerM3, cp_JPerKgK),
});
