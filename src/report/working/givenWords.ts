import { variableWords } from '../variables.ts';

/** What methods take, where the name of the variable alone would not tell; apart, for the first answer needs none of it. */
const names: Readonly<Record<string, string>> = {
  dT: 'temperature difference',
  p: 'pressure',
  p0: 'pressure on the curve at rated speed',
  dp: 'pressure',
  rho: 'density',
  mu: 'viscosity',
  nu: 'kinematic viscosity',
  alpha: 'thermal diffusivity',
  beta: 'thermal expansion',
  cp: 'specific heat',
  k: 'conductivity',
  h: 'heat transfer coefficient',
  R: 'resistance',
  UA: 'conductance of the surface to the air',
  each: 'pressure of each',
  behind: 'pressure of those behind',
  othersEnergy: 'sound energy of all others',
  free: 'open share',
  inARow: 'fans in a row',
  slow: 'speed below which it turns linear',
  zStar: 'z* (length over thermal entrance)',
  linear: 'linear temperature coefficient',
  square: 'square temperature coefficient',
};

/** A variable that is put into a method, as a reader says it. */
export function givenWords(variable: string): string {
  const [stem = variable] = variable.split('_');
  return names[stem] ?? variableWords(variable);
}
