import { conductivity_WPerMK } from './conductivity_WPerMK.ts';
import { density_kgPerM3 } from './density_kgPerM3.ts';
import { heatCapacity_JPerKgK } from './heatCapacity_JPerKgK.ts';
import { viscosity_PaS } from './viscosity_PaS.ts';

/** What the air is like in one place. Written over at every iteration, so that the solve allocates nothing. */
export interface AirProperties {
  T_K: number;
  rho_kgPerM3: number;
  mu_PaS: number;
  k_WPerMK: number;
  cp_JPerKgK: number;
  prandtl: number;
}

export function createAirProperties(): AirProperties {
  return { T_K: 0, rho_kgPerM3: 0, mu_PaS: 0, k_WPerMK: 0, cp_JPerKgK: 0, prandtl: 0 };
}

/** Fills `air` for a temperature and a pressure; humidity enters through the density factor only. */
export function airProperties(air: AirProperties, T_K: number, p_Pa: number, moistFactor: number): void {
  const mu = viscosity_PaS(T_K);
  const k = conductivity_WPerMK(T_K);
  const cp = heatCapacity_JPerKgK(T_K);
  air.T_K = T_K;
  air.rho_kgPerM3 = density_kgPerM3(T_K, p_Pa) * moistFactor;
  air.mu_PaS = mu;
  air.k_WPerMK = k;
  air.cp_JPerKgK = cp;
  air.prandtl = (mu * cp) / k;
}
