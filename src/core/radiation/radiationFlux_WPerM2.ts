import { defineCard } from '../card.ts';
import { stefanBoltzmann_WPerM2K4 } from './stefanBoltzmann_WPerM2K4.ts';

/** Heat that a small grey surface radiates to a much larger room of another temperature. */
export function radiationFlux_WPerM2(emissivity: number, T_K: number, room_K: number): number {
  const surface_K2 = T_K * T_K;
  const room_K2 = room_K * room_K;
  return emissivity * stefanBoltzmann_WPerM2K4 * (surface_K2 * surface_K2 - room_K2 * room_K2);
}

export const card = defineCard({
  id: 'radiationFlux',
  title: 'Radiation to the room',
  equation: 'q = ε·σ·(T⁴ − T_r⁴)',
  result: { name: 'heat flux', unit: 'W/m²', symbol: 'q' },
  symbols: { emissivity: 'ε', T_K: 'T', room_K: 'T_r' },
  constants: [
    { symbol: 'σ', says: 'Stefan–Boltzmann constant', value: stefanBoltzmann_WPerM2K4, unit: 'W/(m²·K⁴)' },
  ],
  source: { key: 'stefanBoltzmann', where: 'small grey body in a large room' },
  range: { emissivity: [0, 1] },
  rangeFrom: 'source',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['greyDiffuse', 'isothermalPlate'],
  example: {
    given: { emissivity: 1, T_K: 348.15, room_K: 298.15 },
    printed: '384.99',
    kind: 'worked again',
    where: 'black at 75 °C in 25 °C, separate computation',
  },
  evaluate: ({ emissivity, T_K, room_K }) => radiationFlux_WPerM2(emissivity, T_K, room_K),
});
