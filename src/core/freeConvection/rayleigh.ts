import { defineCard } from '../card.ts';
import { gravity_mPerS2 } from './gravity_mPerS2.ts';

/** gβ/(να): what the air contributes to the Rayleigh number, per kelvin and cubic metre. */
export function buoyancy_PerM3K(beta_PerK: number, nu_m2PerS: number, alpha_m2PerS: number): number {
  return (gravity_mPerS2 * beta_PerK) / (nu_m2PerS * alpha_m2PerS);
}

/** Rayleigh number of a surface: buoyancy over friction and conduction, on any length. */
export function rayleigh(buoyancy_PerM3K: number, dT_K: number, length_m: number): number {
  return buoyancy_PerM3K * dT_K * length_m * length_m * length_m;
}

export const card = defineCard({
  id: 'rayleigh',
  title: 'Rayleigh number',
  equation: 'Ra = g·β·ΔT·L³/(ν·α)',
  result: { name: 'Rayleigh number', unit: '1', symbol: 'Ra' },
  symbols: { beta_PerK: 'β', nu_m2PerS: 'ν', alpha_m2PerS: 'α', dT_K: 'ΔT', length_m: 'L' },
  constants: [{ symbol: 'g', says: 'acceleration of free fall', value: gravity_mPerS2, unit: 'm/s²' }],
  source: { key: 'incropera', where: 'ch. 9' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['dryIdealGas', 'stillRoom'],
  example: {
    given: { beta_PerK: 0.0025, nu_m2PerS: 26.4e-6, alpha_m2PerS: 38.3e-6, dT_K: 209, length_m: 0.71 },
    printed: '1.813e9',
    kind: 'worked example',
    where: 'ex. 9.2',
    within: 0.001,
    because: 'the source rounds g to 9.8 m/s²',
  },
  evaluate: ({ beta_PerK, nu_m2PerS, alpha_m2PerS, dT_K, length_m }) =>
    rayleigh(buoyancy_PerM3K(beta_PerK, nu_m2PerS, alpha_m2PerS), dT_K, length_m),
});
