import { defineBalance } from '../balance.ts';

/** Limits: margins and the load that they let pass. */
export const marginKelvin = defineBalance({
  id: 'marginKelvin',
  title: 'Margin: what is allowed less what is',
  equation: 'm = T_l − T',
  result: { name: 'margin', variable: 'margin_K', symbol: 'm' },
  symbols: { limit_K: 'T_l', value_K: 'T' },
  words: { limit_K: 'allowed', value_K: 'at the worst place' },
  evaluate: ({ limit_K, value_K }) => limit_K - value_K,
});

export const loadFactorOfRise = defineBalance({
  id: 'loadFactorOfRise',
  title: 'Load up to: allowed rise over rise, both over the entering air',
  equation: 'f = max(0, (T_l − T_e)/(T − T_e))',
  result: { name: 'factor on the load', variable: 'loadFactor', symbol: 'f' },
  symbols: { limit_K: 'T_l', entering_K: 'T_e', value_K: 'T' },
  words: { limit_K: 'allowed', entering_K: 'temperature of the entering air', value_K: 'at the worst place' },
  evaluate: ({ limit_K, entering_K, value_K }) =>
    Math.max(0, (limit_K - entering_K) / (value_K - entering_K)),
});

export const loadFactorOfWatts = defineBalance({
  id: 'loadFactorOfWatts',
  title: 'Load up to: rated over present watts',
  equation: 'f = P_r/P',
  result: { name: 'factor on the load', variable: 'loadFactor', symbol: 'f' },
  symbols: { rated_W: 'P_r', power_W: 'P' },
  words: { rated_W: 'rated watts', power_W: 'present watts' },
  evaluate: ({ rated_W, power_W }) => rated_W / power_W,
});

export const loadFactorOfVolts = defineBalance({
  id: 'loadFactorOfVolts',
  title: 'Load up to: watts go with the square of volts',
  equation: 'f = (V_l/V)²',
  result: { name: 'factor on the load', variable: 'loadFactor', symbol: 'f' },
  symbols: { limit_V: 'V_l', value_V: 'V' },
  words: { limit_V: 'volts allowed', value_V: 'most volts' },
  evaluate: ({ limit_V, value_V }) => (limit_V / value_V) ** 2,
});

export const allowedBySlope = defineBalance({
  id: 'allowedBySlope',
  title: 'Temperature up to which a part may have its watts',
  equation: 'T_l = T_0 − min(P, P_r)/P_r·(T_0 − T_f)',
  result: { name: 'temperature allowed', variable: 'limit_K', symbol: 'T_l' },
  symbols: { zero_K: 'T_0', power_W: 'P', rated_W: 'P_r', full_K: 'T_f' },
  words: {
    zero_K: 'temperature at which the derating line ends',
    power_W: 'present watts',
    rated_W: 'rated watts',
    full_K: 'temperature up to which it may have all',
  },
  evaluate: ({ zero_K, power_W, rated_W, full_K }) =>
    zero_K - (Math.min(power_W, rated_W) / rated_W) * (zero_K - full_K),
});

export const loadFactorOfSlope = defineBalance({
  id: 'loadFactorOfSlope',
  title: 'Load up to: where the rise meets the derating line',
  equation: 'f = max(0, (T_0 − T_e)/(P/P_r·(T_0 − T_f) + max(0, T − T_e)))',
  result: { name: 'factor on the load', variable: 'loadFactor', symbol: 'f' },
  symbols: { zero_K: 'T_0', entering_K: 'T_e', power_W: 'P', rated_W: 'P_r', full_K: 'T_f', value_K: 'T' },
  words: {
    zero_K: 'temperature at which the derating line ends',
    entering_K: 'temperature of the entering air',
    power_W: 'present watts',
    rated_W: 'rated watts',
    full_K: 'temperature up to which it may have all',
    value_K: 'temperature that the maker derates by',
  },
  evaluate: (g) =>
    Math.max(
      0,
      (g.zero_K - g.entering_K) /
        ((g.power_W / g.rated_W) * (g.zero_K - g.full_K) + Math.max(0, g.value_K - g.entering_K)),
    ),
});

export const wattsRated = defineBalance({
  id: 'wattsRated',
  title: 'Watts that this box may carry',
  equation: 'P = f·P_0',
  result: { name: 'watts', variable: 'power_W', symbol: 'P' },
  symbols: { factor: 'f', power_W: 'P_0' },
  words: {
    factor: 'multiple of the load at which the first limit is met, found by solving again and again',
    power_W: 'watts of the load as given',
  },
  evaluate: ({ factor, power_W }) => factor * power_W,
});

export const spareLeft = defineBalance({
  id: 'spareLeft',
  title: 'Spare at that load',
  equation: 'x = f/(F·s)',
  result: { name: 'what is left, one where the limit is just met', variable: 'leftShare', symbol: 'x' },
  symbols: { loadFactor: 'f', spare: 'F', swing: 's' },
  words: {
    loadFactor: 'load up to, at the last solve',
    spare: 'spare asked for on every rise, 1 for a maker’s own figure',
    swing: 'swing of the films in pulses, 1 without',
  },
  evaluate: ({ loadFactor, spare, swing }) => loadFactor / (spare * swing),
});

export const limitBalances = [
  marginKelvin,
  loadFactorOfRise,
  loadFactorOfWatts,
  loadFactorOfVolts,
  allowedBySlope,
  loadFactorOfSlope,
  wattsRated,
  spareLeft,
] as const;
