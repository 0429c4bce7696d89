import { defineCard } from '../card.ts';
import { gravity_mPerS2 } from './gravity_mPerS2.ts';

/**
 * Pressure that drives a column of lighter air up through colder surroundings. With the friction and the losses of the way it
 * gives the published relations of a vertical channel: the narrow one within a tenth, wider ones up to a fifth below, since
 * it pays for entering and leaving.
 */
export function draught_Pa(around_kgPerM3: number, inside_kgPerM3: number, rise_m: number): number {
  return (around_kgPerM3 - inside_kgPerM3) * gravity_mPerS2 * rise_m;
}

export const card = defineCard({
  id: 'draught',
  title: 'Draught of a warm column',
  equation: 'Δp = (ρ_r − ρ)·g·H; H plumb',
  result: { name: 'pressure', unit: 'Pa', symbol: 'Δp' },
  symbols: { around_kgPerM3: 'ρ_r', inside_kgPerM3: 'ρ', rise_m: 'H', elenbaas: 'El' },
  constants: [{ symbol: 'g', says: 'acceleration of free fall', value: gravity_mPerS2, unit: 'm/s²' }],
  aside: { elenbaas: 'says how wide the column is; judged, not reckoned with' },
  source: { key: 'douglasFluids', where: 'hydrostatics of two columns' },
  range: { elenbaas: [null, 60] },
  rangeFrom: 'computed',
  scatter: { sigma: 0.2, from: 'computed' },
  assumes: ['dryIdealGas', 'stillRoom', 'quietPlenum'],
  example: {
    given: { around_kgPerM3: 1.2, inside_kgPerM3: 1.0, rise_m: 0.1, elenbaas: 1 },
    printed: '0.196133',
    kind: 'worked again',
    where: 'worked by hand with g = 9.80665 m/s²',
  },
  evaluate: ({ around_kgPerM3, inside_kgPerM3, rise_m }) =>
    draught_Pa(around_kgPerM3, inside_kgPerM3, rise_m),
});
