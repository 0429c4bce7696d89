import { defineBalance, each, total } from '../balance.ts';

/** The heat network read out: every place by its neighbours, every figure by its steps. */
export const fanRise = defineBalance({
  id: 'fanRise',
  title: 'Air that enters the bank',
  equation: 'T_e = T_r + ΔT',
  result: { name: 'temperature of the entering air', variable: 'entering_K', symbol: 'T_e' },
  symbols: { room_K: 'T_r', dT_K: 'ΔT' },
  words: { room_K: 'temperature of the room', dT_K: 'what the fans warm it by' },
  evaluate: ({ room_K, dT_K }) => room_K + dT_K,
});

export const nodeRise = defineBalance<string>({
  id: 'nodeRise',
  title: 'Heat balance of one place: watts in, watts out',
  equation: 'θ = (P + Σ G_i·θ_i)/(G_0 + Σ G_i)',
  result: { name: 'rise over the entering air', variable: 'rise_K', symbol: 'θ' },
  symbols: { power_W: 'P', 'G_WPerK#': 'G_#', 'otherRise_K#': 'θ_#', toAir_WPerK: 'G_0' },
  words: {
    power_W: 'watts that come in here',
    'G_WPerK#': 'conductance to neighbour #',
    'otherRise_K#': 'rise of neighbour #',
    toAir_WPerK: 'conductance to the entering air and the room',
  },
  assumes: ['steady', 'lumped'],
  evaluate: (given) => {
    const rises = each(given, 'otherRise_K');
    const flows = each(given, 'G_WPerK').reduce((sum, G, i) => sum + G * (rises[i] as number), 0);
    return ((given.power_W as number) + flows) / ((given.toAir_WPerK as number) + total(given, 'G_WPerK'));
  },
});

export const atTemperature = defineBalance({
  id: 'atTemperature',
  title: 'Temperature of one place',
  equation: 'T = T_e + θ',
  result: { name: 'temperature', variable: 'T_K', symbol: 'T' },
  symbols: { entering_K: 'T_e', hereRise_K: 'θ' },
  words: { entering_K: 'temperature of the entering air', hereRise_K: 'rise over it' },
  evaluate: ({ entering_K, hereRise_K }) => entering_K + hereRise_K,
});

export const wattsBetween = defineBalance({
  id: 'wattsBetween',
  title: 'Watts from one place to another',
  equation: 'q = G·(θ_1 − θ_2)',
  result: { name: 'watts', variable: 'power_W', symbol: 'q' },
  symbols: { G_WPerK: 'G', fromRise_K: 'θ_1', toRise_K: 'θ_2' },
  words: { G_WPerK: 'conductance between them', fromRise_K: 'rise here', toRise_K: 'rise there' },
  evaluate: ({ G_WPerK, fromRise_K, toRise_K }) => G_WPerK * (fromRise_K - toRise_K),
});

export const stepBetween = defineBalance({
  id: 'stepBetween',
  title: 'Step between two places',
  equation: 'ΔT = θ_1 − θ_2',
  result: { name: 'step', variable: 'dT_K', symbol: 'ΔT' },
  symbols: { upperRise_K: 'θ_1', lowerRise_K: 'θ_2' },
  words: { upperRise_K: 'rise of the warmer place', lowerRise_K: 'rise of the cooler place' },
  evaluate: ({ upperRise_K, lowerRise_K }) => upperRise_K - lowerRise_K,
});

export const stepByWatts = defineBalance({
  id: 'stepByWatts',
  title: 'Step that watts make in a resistance',
  equation: 'ΔT = q·R',
  result: { name: 'step', variable: 'dT_K', symbol: 'ΔT' },
  symbols: { power_W: 'q', R_KPerW: 'R' },
  words: { power_W: 'watts through it', R_KPerW: 'thermal resistance' },
  evaluate: ({ power_W, R_KPerW }) => power_W * R_KPerW,
});

export const stepInPlate = defineBalance({
  id: 'stepInPlate',
  title: 'Step from a plate to the bond on it',
  equation: 'ΔT = q·(R_p + F·R_s)',
  result: { name: 'step', variable: 'dT_K', symbol: 'ΔT' },
  symbols: { power_W: 'q', plate_KPerW: 'R_p', factor: 'F', spreading_KPerW: 'R_s' },
  words: {
    power_W: 'watts through it',
    plate_KPerW: 'straight through the plate',
    factor: 'factor on spreading, 1 where nothing was drawn',
    spreading_KPerW: 'spreading in the plate',
  },
  evaluate: (g) => g.power_W * (g.plate_KPerW + g.factor * g.spreading_KPerW),
});

export const stepAtChip = defineBalance({
  id: 'stepAtChip',
  title: 'Step from the bond to the film',
  equation: 'ΔT = q·R + θ_f − θ_s',
  result: { name: 'step', variable: 'dT_K', symbol: 'ΔT' },
  symbols: { power_W: 'q', ahead_KPerW: 'R', filmRise_K: 'θ_f', startRise_K: 'θ_s' },
  words: {
    power_W: 'watts through it',
    ahead_KPerW: 'ahead of the bond: coating, or tabs and solder',
    filmRise_K: 'rise of the film',
    startRise_K: 'rise of the chip where this way begins',
  },
  evaluate: ({ power_W, ahead_KPerW, filmRise_K, startRise_K }) =>
    power_W * ahead_KPerW + (filmRise_K - startRise_K),
});

export const ladderSum = defineBalance<string>({
  id: 'ladderSum',
  title: 'From the room to the film, step by step',
  equation: 'T = T_r + Σ ΔT_i',
  result: { name: 'temperature of the film', variable: 'film_K', symbol: 'T' },
  symbols: { room_K: 'T_r', 'dT_K#': 'ΔT_#' },
  words: { room_K: 'temperature of the room', 'dT_K#': 'step #' },
  evaluate: (given) => (given.room_K as number) + total(given, 'dT_K'),
});

export const bondFace = defineBalance({
  id: 'bondFace',
  title: 'Hottest spot of the bond lines of one resistor',
  equation: 'T = max(T_1 − q_1·R_1, T_2 − q_2·R_2)',
  result: { name: 'temperature of the bond', variable: 'bond_K', symbol: 'T' },
  symbols: {
    film_K: 'T_1',
    film_W: 'q_1',
    film_KPerW: 'R_1',
    second_K: 'T_2',
    second_W: 'q_2',
    second_KPerW: 'R_2',
  },
  words: {
    film_K: 'temperature of the film',
    film_W: 'watts by the film face',
    film_KPerW: 'coating',
    second_K: 'temperature where the other way begins, nil where there is none',
    second_W: 'watts by the second face',
    second_KPerW: 'tabs and solder',
  },
  evaluate: (g) => Math.max(g.film_K - g.film_W * g.film_KPerW, g.second_K - g.second_W * g.second_KPerW),
});

export const bondFaceOf = defineBalance({
  id: 'bondFaceOf',
  title: 'Hottest spot of the bond line of one resistor',
  equation: 'T = max(0, T_1 − q·R)',
  result: { name: 'temperature of the bond', variable: 'bond_K', symbol: 'T' },
  symbols: { chip_K: 'T_1', power_W: 'q', ahead_KPerW: 'R' },
  words: {
    chip_K: 'temperature of the chip where this way begins',
    power_W: 'watts through it',
    ahead_KPerW: 'ahead of the bond: coating, or tabs and solder',
  },
  evaluate: ({ chip_K, power_W, ahead_KPerW }) => Math.max(0, chip_K - power_W * ahead_KPerW),
});

export const noBond = defineBalance({
  id: 'noBond',
  title: 'A resistor without a bond',
  equation: 'T = 0',
  result: { name: 'temperature of the bond', variable: 'bond_K', symbol: 'T' },
  symbols: {},
  evaluate: () => 0,
});

export const hotterPlate = defineBalance({
  id: 'hotterPlate',
  title: 'The hotter plate of a sink',
  equation: 'T = max(T_1, T_2)',
  result: { name: 'temperature of the plate', variable: 'plate_K', symbol: 'T' },
  symbols: { before_K: 'T_1', after_K: 'T_2' },
  words: { before_K: 'plate before', after_K: 'plate after' },
  evaluate: ({ before_K, after_K }) => Math.max(before_K, after_K),
});

export const airLeaving = defineBalance({
  id: 'airLeaving',
  title: 'Air that leaves a sink',
  equation: 'T = T_e + Q/C',
  result: { name: 'temperature of the air', variable: 'airOut_K', symbol: 'T' },
  symbols: { entering_K: 'T_e', power_W: 'Q', capacityFlow_WPerK: 'C' },
  words: {
    entering_K: 'temperature of the entering air',
    power_W: 'watts into the air',
    capacityFlow_WPerK: 'heat that the stream takes per kelvin',
  },
  evaluate: ({ entering_K, power_W, capacityFlow_WPerK }) => entering_K + power_W / capacityFlow_WPerK,
});

export const outsideOfWall = defineBalance({
  id: 'outsideOfWall',
  title: 'Outside of the box wall',
  equation: 'T = T_r + s·(T_f − T_r)',
  result: { name: 'temperature outside', variable: 'outside_K', symbol: 'T' },
  symbols: { room_K: 'T_r', outerShare: 's', facing_K: 'T_f' },
  words: {
    room_K: 'temperature of the room',
    outerShare: 'share of the rise',
    facing_K: 'sheet that faces the sink',
  },
  evaluate: ({ room_K, outerShare, facing_K }) => room_K + outerShare * (facing_K - room_K),
});

export const exhaustMix = defineBalance({
  id: 'exhaustMix',
  title: 'Air that leaves the box, mixed',
  equation: 'T = min(T_h, T_e + Q/(√(ṁ²)·c_p))',
  result: { name: 'temperature of the exhaust', variable: 'exhaust_K', symbol: 'T' },
  symbols: { hottest_K: 'T_h', entering_K: 'T_e', carried_W: 'Q', massFlow_kgPerS: 'ṁ', cp_JPerKgK: 'c_p' },
  words: {
    hottest_K: 'hottest place of all',
    entering_K: 'temperature of the entering air',
    carried_W: 'watts that the air carries',
    massFlow_kgPerS: 'mass flow through the fans',
    cp_JPerKgK: 'specific heat of the air',
  },
  evaluate: (g) =>
    Math.min(
      g.hottest_K,
      g.entering_K + g.carried_W / (Math.max(Math.abs(g.massFlow_kgPerS), 1e-15) * g.cp_JPerKgK),
    ),
});

export const heatBalances = [
  fanRise,
  nodeRise,
  atTemperature,
  wattsBetween,
  stepBetween,
  stepByWatts,
  stepInPlate,
  stepAtChip,
  ladderSum,
  bondFace,
  bondFaceOf,
  noBond,
  hotterPlate,
  airLeaving,
  outsideOfWall,
  exhaustMix,
] as const;
