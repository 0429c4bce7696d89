import { defineBalance, each } from '../balance.ts';

/** Resistances, or conductances for the power −1, of all at one change each, added up. */
function ohmsAt(given: Readonly<Record<string, number>>, change: string, power: 1 | -1): number {
  const changes = each(given, change);
  return each(given, 'R_Ohm').reduce((sum, R, i) => sum + (R * (1 + (changes[i] as number))) ** power, 0);
}

/** Over time: drift, pulses, and how long after a stop. */
export const driftBetween = defineBalance({
  id: 'driftBetween',
  title: 'Change of a resistance from the room to its settled temperature',
  equation: 'δ = (1 + δ_1)/(1 + δ_2) − 1',
  result: { name: 'relative change', variable: 'change', symbol: 'δ' },
  symbols: { hot: 'δ_1', cold: 'δ_2' },
  words: { hot: 'change from 25 °C to the settled film', cold: 'change from 25 °C to the room' },
  evaluate: ({ hot, cold }) => (1 + hot) / (1 + cold) - 1,
});

export const overReference = defineBalance({
  id: 'overReference',
  title: 'Film over the temperature that coefficients are given from',
  equation: 'ΔT = T − 298.15',
  result: { name: 'temperature difference', variable: 'dT_K', symbol: 'ΔT' },
  symbols: { T_K: 'T' },
  words: { T_K: 'temperature of the film' },
  evaluate: ({ T_K }) => T_K - 298.15,
});

/** What the change of a whole is made of, resistor by resistor. */
const wholeOfEach = {
  result: { name: 'relative change', variable: 'change', symbol: 'δ' },
  symbols: { 'R_Ohm#': 'R_#', 'hot#': 'δ_#', 'cold#': 'ε_#' },
  words: {
    'R_Ohm#': 'resistance #',
    'hot#': 'its change from 25 °C to the settled film',
    'cold#': 'its change from 25 °C to the room',
  },
};

export const driftOfString = defineBalance<string>({
  id: 'driftOfString',
  title: 'Change of the whole string',
  equation: 'δ = (Σ R_i·(1 + δ_i))/(Σ R_i·(1 + ε_i)) − 1',
  ...wholeOfEach,
  evaluate: (given) => ohmsAt(given, 'hot', 1) / ohmsAt(given, 'cold', 1) - 1,
});

export const driftOfSet = defineBalance<string>({
  id: 'driftOfSet',
  title: 'Change of the whole set',
  equation: 'δ = (Σ 1/(R_i·(1 + ε_i)))/(Σ 1/(R_i·(1 + δ_i))) − 1',
  ...wholeOfEach,
  evaluate: (given) => ohmsAt(given, 'cold', -1) / ohmsAt(given, 'hot', -1) - 1,
});

export const pulseFlux = defineBalance({
  id: 'pulseFlux',
  title: 'Watts of a pulse over the face of the chip',
  equation: 'q = P/(d·A)',
  result: { name: 'heat flux', variable: 'flux_WPerM2', symbol: 'q' },
  symbols: { power_W: 'P', duty: 'd', area_m2: 'A' },
  words: { power_W: 'mean watts', duty: 'share of time that the load is on', area_m2: 'area of the chip' },
  evaluate: ({ power_W, duty, area_m2 }) => power_W / duty / area_m2,
});

export const pulseOn = defineBalance({
  id: 'pulseOn',
  title: 'Length of a pulse',
  equation: 't = d·T',
  result: { name: 'time', variable: 'on_s', symbol: 't' },
  symbols: { duty: 'd', period_s: 'T' },
  words: { duty: 'share of time that the load is on', period_s: 'time of one on and one off' },
  evaluate: ({ duty, period_s }) => duty * period_s,
});

export const beyondLayers = defineBalance({
  id: 'beyondLayers',
  title: 'What layers cannot follow in a pulse too short to see the back of the ceramic',
  equation: 'ΔT = max(0, ΔT_s − ΔT_l); nil where t is above s²·c/(8·k)',
  result: { name: 'rise', variable: 'beyondRise_K', symbol: 'ΔT' },
  symbols: {
    endlessRise_K: 'ΔT_s',
    layersRise_K: 'ΔT_l',
    on_s: 't',
    thickness_m: 's',
    heat_JPerM3K: 'c',
    k_WPerMK: 'k',
  },
  words: {
    endlessRise_K: 'rise on a solid without an end',
    layersRise_K: 'rise of one pulse, marched through the layers',
    on_s: 'length of a pulse',
    thickness_m: 'thickness of the ceramic',
    heat_JPerM3K: 'heat of the ceramic',
    k_WPerMK: 'conductivity of the ceramic',
  },
  evaluate: (g) =>
    g.on_s > (g.thickness_m * g.thickness_m * g.heat_JPerM3K) / (8 * g.k_WPerMK)
      ? 0
      : Math.max(0, g.endlessRise_K - g.layersRise_K),
});

export const pulseTop = defineBalance({
  id: 'pulseTop',
  title: 'Film at the end of a pulse',
  equation: 'T = T_e + θ + ΔT',
  result: { name: 'temperature of the film', variable: 'film_K', symbol: 'T' },
  symbols: { entering_K: 'T_e', marchedRise_K: 'θ', beyondRise_K: 'ΔT' },
  words: {
    entering_K: 'temperature of the entering air',
    marchedRise_K: 'rise at the end of a pulse of a settled train, marched through the layers of the ceramic',
    beyondRise_K: 'what layers cannot follow',
  },
  evaluate: ({ entering_K, marchedRise_K, beyondRise_K }) => entering_K + marchedRise_K + beyondRise_K,
});

export const momentReached = defineBalance({
  id: 'momentReached',
  title: 'The moment at which a margin is used up, on a smooth curve through all steps',
  equation: 't = t_1 + s·(t_2 − t_1)',
  result: { name: 'time after the stop', variable: 'time_s', symbol: 't' },
  symbols: { before_s: 't_1', share: 's', after_s: 't_2' },
  words: {
    before_s: 'last step before it',
    share: 'share of the way, where the curve through the margins passes nil',
    after_s: 'first step after it',
  },
  evaluate: ({ before_s, share, after_s }) => before_s + share * (after_s - before_s),
});

export const stillHolds = defineBalance({
  id: 'stillHolds',
  title: 'Every limit holds for good',
  equation: 'm = m_1',
  result: { name: 'least margin at the end', variable: 'margin_K', symbol: 'm' },
  symbols: { least_K: 'm_1' },
  words: { least_K: 'least margin at the end of the run' },
  evaluate: ({ least_K }) => least_K,
});

export const timeBalances = [
  driftBetween,
  overReference,
  driftOfString,
  driftOfSet,
  pulseFlux,
  pulseOn,
  beyondLayers,
  pulseTop,
  momentReached,
  stillHolds,
] as const;
