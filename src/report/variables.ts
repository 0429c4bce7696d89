import { dimensionOfName } from '../units/suffix.ts';
import { plain, quantity } from './format.ts';
import type { UnitSystem } from './types.ts';

/** Variables of methods whose name alone would not tell a reader what they are. */
const names: Readonly<Record<string, string>> = {
  T: 'temperature',
  reynolds: 'Reynolds number',
  rayleigh: 'Rayleigh number',
  prandtl: 'Prandtl number',
  elenbaas: 'Elenbaas number',
  aspect: 'gap over height',
  xPlus: 'x⁺ (length over Dh·Re)',
  xStar: 'x* (length over Dh·Re·Pr)',
  biot: 'Biot number',
  sigma: 'open share σ',
  depthRatio: 'depth over gap',
};

/** A variable as a reader says it: `finThickness_m` → "fin thickness". */
export function variableWords(variable: string): string {
  const [stem = variable] = variable.split('_');
  return names[stem] ?? stem.replace(/([a-z0-9])([A-Z])/g, '$1 $2').toLowerCase();
}

/** A variable's value in the reader's unit, by the suffix of its name. */
export function variableText(variable: string, value: number, system: UnitSystem): string {
  const dimension = dimensionOfName(variable);
  return dimension === null ? plain(value) : quantity(value, dimension, system, 3);
}
