import { defineBalance, each, total } from '../balance.ts';

/** Ohm’s law for the ways of loading a row; Joule’s is a card. */
export const givenWatts = defineBalance({
  id: 'givenWatts',
  title: 'Watts as typed in',
  equation: 'P = d·P_0; nil where it is off',
  result: { name: 'mean watts', variable: 'power_W', symbol: 'P' },
  symbols: { given_W: 'P_0', duty: 'd' },
  words: { given_W: 'watts while it is on', duty: 'share of time that the load is on' },
  evaluate: ({ given_W, duty }) => given_W * duty,
});

export const lowEnd = defineBalance({
  id: 'lowEnd',
  title: 'Resistance at the low end of its tolerance',
  equation: 'R_l = R·(1 − δ)',
  result: { name: 'least resistance', variable: 'low_Ohm', symbol: 'R_l' },
  symbols: { R_Ohm: 'R', tolerance: 'δ' },
  words: { R_Ohm: 'resistance' },
  evaluate: ({ R_Ohm, tolerance }) => R_Ohm * (1 - tolerance),
});

export const highEnd = defineBalance({
  id: 'highEnd',
  title: 'Resistance at the high end of its tolerance',
  equation: 'R_h = R·(1 + δ)',
  result: { name: 'greatest resistance', variable: 'high_Ohm', symbol: 'R_h' },
  symbols: { R_Ohm: 'R', tolerance: 'δ' },
  words: { R_Ohm: 'resistance' },
  evaluate: ({ R_Ohm, tolerance }) => R_Ohm * (1 + tolerance),
});

export const mostVoltsFed = defineBalance({
  id: 'mostVoltsFed',
  title: 'Supply at the high end of its tolerance',
  equation: 'V_h = V·(1 + δ)',
  result: { name: 'greatest supply voltage', variable: 'supply_V', symbol: 'V_h' },
  symbols: { supply_V: 'V', tolerance: 'δ' },
  words: { supply_V: 'supply voltage' },
  evaluate: ({ supply_V, tolerance }) => supply_V * (1 + tolerance),
});

export const mostAmpsFed = defineBalance({
  id: 'mostAmpsFed',
  title: 'Supply at the high end of its tolerance',
  equation: 'I_h = I·(1 + δ)',
  result: { name: 'greatest supply current', variable: 'supply_A', symbol: 'I_h' },
  symbols: { supply_A: 'I', tolerance: 'δ' },
  words: { supply_A: 'supply current' },
  evaluate: ({ supply_A, tolerance }) => supply_A * (1 + tolerance),
});

export const otherOhms = defineBalance<string>({
  id: 'otherOhms',
  title: 'Resistance of all others in the string',
  equation: 'S = Σ R_i',
  result: { name: 'resistance of all others', variable: 'others_Ohm', symbol: 'S' },
  symbols: { 'R_Ohm#': 'R_#' },
  words: { 'R_Ohm#': 'resistance # of the others that are on' },
  evaluate: (given) => total(given, 'R_Ohm'),
});

export const otherOhmsLow = defineBalance<string>({
  id: 'otherOhmsLow',
  title: 'Least resistance of all others in the string',
  equation: 'S = Σ R_i·(1 − δ_i)',
  result: { name: 'least resistance of all others', variable: 'others_Ohm', symbol: 'S' },
  symbols: { 'R_Ohm#': 'R_#', 'tolerance#': 'δ_#' },
  words: { 'R_Ohm#': 'resistance # of the others that are on', 'tolerance#': 'its tolerance' },
  evaluate: (given) => {
    const tolerances = each(given, 'tolerance');
    return each(given, 'R_Ohm').reduce((sum, R, i) => sum + R * (1 - (tolerances[i] as number)), 0);
  },
});

export const stringCurrent = defineBalance({
  id: 'stringCurrent',
  title: 'Current through a string',
  equation: 'I = V/(R + S)',
  result: { name: 'current', variable: 'current_A', symbol: 'I' },
  symbols: { supply_V: 'V', R_Ohm: 'R', others_Ohm: 'S' },
  words: { supply_V: 'supply voltage', R_Ohm: 'resistance', others_Ohm: 'resistance of all others' },
  evaluate: ({ supply_V, R_Ohm, others_Ohm }) => supply_V / (R_Ohm + others_Ohm),
});

export const ohmCurrent = defineBalance({
  id: 'ohmCurrent',
  title: 'Current by Ohm’s law',
  equation: 'I = V/R',
  result: { name: 'current', variable: 'current_A', symbol: 'I' },
  symbols: { supply_V: 'V', R_Ohm: 'R' },
  words: { supply_V: 'supply voltage', R_Ohm: 'resistance' },
  evaluate: ({ supply_V, R_Ohm }) => supply_V / R_Ohm,
});

export const setCurrent = defineBalance<string>({
  id: 'setCurrent',
  title: 'Share of the current in a parallel set',
  equation: 'I = I_0/(R·(1/R + Σ 1/(R_i·(1 + δ_i))))',
  result: { name: 'current', variable: 'current_A', symbol: 'I' },
  symbols: { supply_A: 'I_0', R_Ohm: 'R', 'R_Ohm#': 'R_#', 'tolerance#': 'δ_#' },
  words: {
    supply_A: 'supply current',
    R_Ohm: 'resistance',
    'R_Ohm#': 'resistance # of the others that are on',
    'tolerance#': 'its tolerance, 0 for nominal watts',
  },
  evaluate: (given) => {
    const tolerances = each(given, 'tolerance');
    const own = 1 / (given.R_Ohm as number);
    const others = each(given, 'R_Ohm').reduce(
      (sum, R, i) => sum + 1 / (R * (1 + (tolerances[i] as number))),
      0,
    );
    return ((given.supply_A as number) * own) / (own + others);
  },
});

export const worstInString = defineBalance({
  id: 'worstInString',
  title: 'Resistance that takes most watts in a string: as near to the others as its tolerance lets it',
  equation: 'R_w = min(R_h, max(R_l, S))',
  result: { name: 'resistance at the worst corner', variable: 'R_Ohm', symbol: 'R_w' },
  symbols: { high_Ohm: 'R_h', low_Ohm: 'R_l', others_Ohm: 'S' },
  words: {
    high_Ohm: 'greatest resistance',
    low_Ohm: 'least resistance',
    others_Ohm: 'least resistance of all others',
  },
  evaluate: ({ high_Ohm, low_Ohm, others_Ohm }) => Math.min(high_Ohm, Math.max(low_Ohm, others_Ohm)),
});

export const worstInSet = defineBalance<string>({
  id: 'worstInSet',
  title: 'Resistance that takes most watts in a set: as near to the others as its tolerance lets it',
  equation: 'R_w = 1/min(1/R_l, max(1/R_h, Σ 1/(R_i·(1 + δ_i))))',
  result: { name: 'resistance at the worst corner', variable: 'R_Ohm', symbol: 'R_w' },
  symbols: { high_Ohm: 'R_h', low_Ohm: 'R_l', 'R_Ohm#': 'R_#', 'tolerance#': 'δ_#' },
  words: {
    high_Ohm: 'greatest resistance',
    low_Ohm: 'least resistance',
    'R_Ohm#': 'resistance # of the others that are on',
    'tolerance#': 'its tolerance',
  },
  evaluate: (given) => {
    const tolerances = each(given, 'tolerance');
    const others = each(given, 'R_Ohm').reduce(
      (sum, R, i) => sum + 1 / (R * (1 + (tolerances[i] as number))),
      0,
    );
    return 1 / Math.min(1 / (given.low_Ohm as number), Math.max(1 / (given.high_Ohm as number), others));
  },
});

export const voltsOfWatts = defineBalance({
  id: 'voltsOfWatts',
  title: 'Volts across an element that takes its watts',
  equation: 'V = √(P·R)',
  result: { name: 'voltage', variable: 'voltage_V', symbol: 'V' },
  symbols: { power_W: 'P', R_Ohm: 'R' },
  words: { power_W: 'watts while it is on', R_Ohm: 'greatest resistance' },
  evaluate: ({ power_W, R_Ohm }) => Math.sqrt(power_W * R_Ohm),
});

export const ohmVolts = defineBalance({
  id: 'ohmVolts',
  title: 'Volts across an element by Ohm’s law',
  equation: 'V = I·R',
  result: { name: 'voltage', variable: 'voltage_V', symbol: 'V' },
  symbols: { current_A: 'I', R_Ohm: 'R' },
  words: { R_Ohm: 'resistance' },
  evaluate: ({ current_A, R_Ohm }) => current_A * R_Ohm,
});

export const setVolts = defineBalance<string>({
  id: 'setVolts',
  title: 'Volts across a parallel set',
  equation: 'V = I/Σ 1/(R_i·(1 + δ_i))',
  result: { name: 'voltage', variable: 'voltage_V', symbol: 'V' },
  symbols: { supply_A: 'I', 'R_Ohm#': 'R_#', 'tolerance#': 'δ_#' },
  words: {
    supply_A: 'supply current',
    'R_Ohm#': 'resistance # of those that are on',
    'tolerance#': 'its tolerance',
  },
  evaluate: (given) => {
    const tolerances = each(given, 'tolerance');
    return (
      (given.supply_A as number) /
      each(given, 'R_Ohm').reduce((sum, R, i) => sum + 1 / (R * (1 + (tolerances[i] as number))), 0)
    );
  },
});

export const wattSum = defineBalance<string>({
  id: 'wattSum',
  title: 'Watts of all together',
  equation: 'P = Σ P_i',
  result: { name: 'watts', variable: 'power_W', symbol: 'P' },
  symbols: { 'power_W#': 'P_#' },
  words: { 'power_W#': 'watts of part #' },
  evaluate: (given) => total(given, 'power_W'),
});

export const loadBalances = [
  givenWatts,
  lowEnd,
  highEnd,
  mostVoltsFed,
  mostAmpsFed,
  otherOhms,
  otherOhmsLow,
  stringCurrent,
  ohmCurrent,
  setCurrent,
  worstInString,
  worstInSet,
  voltsOfWatts,
  ohmVolts,
  setVolts,
  wattSum,
] as const;
