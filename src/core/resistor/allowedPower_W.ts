import { defineCard } from '../card.ts';

/** Power a resistor may have at a temperature: full up to the knee, then a straight line to none. */
export function allowedPower_W(
  T_K: number,
  rated_W: number,
  fullPowerUpTo_K: number,
  zeroPowerAt_K: number,
): number {
  if (T_K <= fullPowerUpTo_K) return rated_W;
  return Math.max(0, (rated_W * (zeroPowerAt_K - T_K)) / (zeroPowerAt_K - fullPowerUpTo_K));
}

/** Temperature up to which a resistor may have a power (at most its rated one). */
export function allowedTemperature_K(
  power_W: number,
  rated_W: number,
  fullPowerUpTo_K: number,
  zeroPowerAt_K: number,
): number {
  return zeroPowerAt_K - (power_W / rated_W) * (zeroPowerAt_K - fullPowerUpTo_K);
}

export const card = defineCard({
  id: 'derating',
  title: 'Derating line of a resistor',
  equation: 'P = P_r·min(1, max(0, (T_0 − T)/(T_0 − T_f)))',
  result: { name: 'power', unit: 'W', symbol: 'P' },
  symbols: { T_K: 'T', rated_W: 'P_r', fullPowerUpTo_K: 'T_f', zeroPowerAt_K: 'T_0' },
  source: { key: 'chipConvention', where: 'film parts: 70 °C to 155 °C usual' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['ratedByTemperature'],
  example: {
    given: { T_K: 398.15, rated_W: 1, fullPowerUpTo_K: 343.15, zeroPowerAt_K: 428.15 },
    printed: '0.35',
    kind: 'handbook',
    where: 'data sheet of a film part: 35 % at 125 °C',
  },
  evaluate: ({ T_K, rated_W, fullPowerUpTo_K, zeroPowerAt_K }) =>
    allowedPower_W(T_K, rated_W, fullPowerUpTo_K, zeroPowerAt_K),
});
