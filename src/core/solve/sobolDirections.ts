import { joeKuo2008 } from './joeKuo2008.ts';

/** Bits of a coordinate: enough for 2³² points. */
export const wordBits = 32;

/**
 * Direction numbers v₁ … v₃₂ of the first `dimensions` of Sobol’s sequence, each as a 32-bit fraction with its first
 * binary place on top. The first dimension halves (van der Corput); the others follow the recurrence of their primitive
 * polynomial from the numbers of Joe & Kuo 2008. Fewer come back where more are asked for than the table has (161).
 */
export function sobolDirections(dimensions: number): Uint32Array[] {
  const rows = joeKuo2008
    .trim()
    .split('\n')
    .slice(0, Math.max(0, dimensions - 1));
  const first = Uint32Array.from({ length: wordBits }, (_, i) => 2 ** (wordBits - 1 - i));
  return dimensions < 1 ? [] : [first, ...rows.map((row) => directionsOf(row.split(' ').map(Number)))];
}

function directionsOf([polynomial = 3, ...start]: readonly number[]): Uint32Array {
  const degree = start.length;
  const v = new Uint32Array(wordBits);
  for (let i = 0; i < wordBits; i++) {
    if (i < degree) {
      v[i] = (start[i] as number) << (wordBits - 1 - i);
      continue;
    }
    const back = v[i - degree] as number;
    let next = back ^ (back >>> degree);
    for (let k = 1; k < degree; k++) {
      if ((polynomial >>> (degree - k)) & 1) next ^= v[i - k] as number;
    }
    v[i] = next;
  }
  return v;
}
