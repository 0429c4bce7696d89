import { defineBalance } from '../balance.ts';

/** Between channel and heat network: one sink at its flow. */
export const lengthInDiameters = defineBalance({
  id: 'lengthInDiameters',
  title: 'Length of a channel in hydraulic diameters',
  equation: 'λ = L/D_h',
  result: { name: 'length over diameter', variable: 'lengthOverDiameter', symbol: 'λ' },
  symbols: { length_m: 'L', hydraulic_m: 'D_h' },
  words: { length_m: 'length of the channel', hydraulic_m: 'hydraulic diameter' },
  evaluate: ({ length_m, hydraulic_m }) => length_m / hydraulic_m,
});

export const thermalEntrance = defineBalance({
  id: 'thermalEntrance',
  title: 'Length of a channel as its thermal entrance counts it',
  equation: 'z* = L·D_h/(b·H·Re·Pr)',
  result: { name: 'length over thermal entrance, on √A', variable: 'zStar', symbol: 'z*' },
  symbols: { length_m: 'L', hydraulic_m: 'D_h', gap_m: 'b', height_m: 'H', reynolds: 'Re', prandtl: 'Pr' },
  words: {
    length_m: 'length of the channel',
    hydraulic_m: 'hydraulic diameter',
    gap_m: 'gap between fins',
    height_m: 'height of the fins',
  },
  evaluate: (g) => (g.length_m * g.hydraulic_m) / (g.gap_m * g.height_m * g.reynolds * g.prandtl),
});

export const nusseltOnDiameter = defineBalance({
  id: 'nusseltOnDiameter',
  title: 'Nusselt number on the hydraulic diameter',
  equation: 'Nu = Nu_A·D_h/√(b·H)',
  result: { name: 'Nusselt number, laminar', variable: 'nusselt', symbol: 'Nu' },
  symbols: { onRoot: 'Nu_A', hydraulic_m: 'D_h', gap_m: 'b', height_m: 'H' },
  words: {
    onRoot: 'Nusselt number on √A',
    hydraulic_m: 'hydraulic diameter',
    gap_m: 'gap between fins',
    height_m: 'height of the fins',
  },
  evaluate: ({ onRoot, hydraulic_m, gap_m, height_m }) =>
    (hydraulic_m / Math.sqrt(gap_m * height_m)) * onRoot,
});

export const largerNusselt = defineBalance({
  id: 'largerNusselt',
  title: 'The larger of laminar and turbulent heat transfer',
  equation: 'Nu = max(Nu_1, Nu_2)',
  result: { name: 'Nusselt number', variable: 'nusselt', symbol: 'Nu' },
  symbols: { laminar: 'Nu_1', turbulent: 'Nu_2' },
  words: { laminar: 'Nusselt number, laminar', turbulent: 'Nusselt number, turbulent' },
  evaluate: ({ laminar, turbulent }) => Math.max(laminar, turbulent),
});

export const transitionNusselt = defineBalance({
  id: 'transitionNusselt',
  title: 'Heat transfer between laminar and turbulent, straight from Re 2300 to 4000',
  equation: 'Nu = max(Nu_1, Nu_2 + (Nu_3 − Nu_2)·(Re − 2300)/(4000 − 2300))',
  result: { name: 'Nusselt number', variable: 'nusselt', symbol: 'Nu' },
  symbols: { laminar: 'Nu_1', start: 'Nu_2', end: 'Nu_3', reynolds: 'Re' },
  words: {
    laminar: 'Nusselt number, laminar',
    start: 'laminar Nusselt number at Re 2300',
    end: 'turbulent Nusselt number at Re 4000',
  },
  evaluate: ({ laminar, start, end, reynolds }) =>
    Math.max(laminar, start + ((reynolds - 2300) / (4000 - 2300)) * (end - start)),
});

export const heatTransfer = defineBalance({
  id: 'heatTransfer',
  title: 'Heat transfer coefficient in the channels',
  equation: 'h = F·Nu·k/D_h',
  result: { name: 'heat transfer coefficient', variable: 'h_WPerM2K', symbol: 'h' },
  symbols: { factor: 'F', nusselt: 'Nu', k_WPerMK: 'k', hydraulic_m: 'D_h' },
  words: {
    factor: 'factor on heat transfer, 1 where nothing was fitted or drawn',
    nusselt: 'Nusselt number',
    k_WPerMK: 'conductivity of the air',
    hydraulic_m: 'hydraulic diameter',
  },
  evaluate: ({ factor, nusselt, k_WPerMK, hydraulic_m }) => (factor * nusselt * k_WPerMK) / hydraulic_m,
});

export const finAcross = defineBalance({
  id: 'finAcross',
  title: 'Through a fin from plate to plate',
  equation: 'G = k·t·L·m/sinh(m·H); m = √(2·h/(k·t))',
  result: { name: 'conductance of one fin, plate to plate', variable: 'across_WPerK', symbol: 'G' },
  symbols: { h_WPerM2K: 'h', k_WPerMK: 'k', thickness_m: 't', height_m: 'H', length_m: 'L' },
  words: {
    h_WPerM2K: 'heat transfer coefficient',
    k_WPerMK: 'conductivity of the sink',
    thickness_m: 'thickness of a fin',
    height_m: 'height of the fins',
    length_m: 'length of the fins',
  },
  assumes: ['oneDimensionalFin'],
  evaluate: (g) => {
    const m = Math.sqrt((2 * g.h_WPerM2K) / (g.k_WPerMK * g.thickness_m));
    const mH = m * g.height_m;
    const section = g.k_WPerMK * g.thickness_m * g.length_m;
    return mH > 1e-6 ? (section * m) / Math.sinh(Math.min(mH, 300)) : section / g.height_m;
  },
});

export const acrossAll = defineBalance({
  id: 'acrossAll',
  title: 'Through all fins from plate to plate',
  equation: 'G = n·G_f',
  result: { name: 'conductance plate to plate', variable: 'across_WPerK', symbol: 'G' },
  symbols: { channels: 'n', fin_WPerK: 'G_f' },
  words: { channels: 'channels, each with half a fin at either side', fin_WPerK: 'conductance of one fin' },
  evaluate: ({ channels, fin_WPerK }) => channels * fin_WPerK,
});

export const plateToAir = defineBalance({
  id: 'plateToAir',
  title: 'From one plate to the air between its fins',
  equation: 'G = n·(b·L·h + G_f)',
  result: { name: 'conductance plate to air', variable: 'plateToAir_WPerK', symbol: 'G' },
  symbols: { channels: 'n', gap_m: 'b', length_m: 'L', h_WPerM2K: 'h', fin_WPerK: 'G_f' },
  words: {
    channels: 'channels of a sink',
    gap_m: 'gap between fins',
    length_m: 'length of the fins',
    h_WPerM2K: 'heat transfer coefficient',
    fin_WPerK: 'conductance of one fin, from this plate',
  },
  evaluate: (g) => g.channels * (g.gap_m * g.length_m * g.h_WPerM2K + g.fin_WPerK),
});

export const efficiencyOfFin = defineBalance({
  id: 'efficiencyOfFin',
  title: 'Fin efficiency: heat taken over heat of a fin as hot as its root all over',
  equation: 'η = G_f·N/(2·h·H·L)',
  result: { name: 'fin efficiency', variable: 'efficiencyShare', symbol: 'η' },
  symbols: { fin_WPerK: 'G_f', plates: 'N', h_WPerM2K: 'h', height_m: 'H', length_m: 'L' },
  words: {
    fin_WPerK: 'conductance of one fin, from one plate',
    plates: 'plates that the fin stands on',
    h_WPerM2K: 'heat transfer coefficient',
    height_m: 'height of the fins',
    length_m: 'length of the fins',
  },
  evaluate: (g) => (g.fin_WPerK * g.plates) / (2 * g.h_WPerM2K * g.height_m * g.length_m),
});

export const bothPlates = defineBalance({
  id: 'bothPlates',
  title: 'From all plates of a sink to its air',
  equation: 'UA = N·G',
  result: { name: 'conductance of the whole sink to its air', variable: 'UA_WPerK', symbol: 'UA' },
  symbols: { plates: 'N', plateToAir_WPerK: 'G' },
  words: { plates: 'plates', plateToAir_WPerK: 'conductance of one plate to the air' },
  evaluate: ({ plates, plateToAir_WPerK }) => plates * plateToAir_WPerK,
});

export const leavingAir = defineBalance({
  id: 'leavingAir',
  title: 'Air that leaves the box instead of going round in it',
  equation: 'ṁ_l = max(ṁ·f, 10⁻¹⁵)',
  result: { name: 'mass flow that leaves', variable: 'leaving_kgPerS', symbol: 'ṁ_l' },
  symbols: { massFlow_kgPerS: 'ṁ', leavingShare: 'f' },
  words: {
    massFlow_kgPerS: 'mass flow through the fins',
    leavingShare: 'share of all streams upwards that leaves, 1 where none runs back',
  },
  evaluate: ({ massFlow_kgPerS, leavingShare }) => Math.max(massFlow_kgPerS * leavingShare, 1e-15),
});

export const capacityFlow = defineBalance({
  id: 'capacityFlow',
  title: 'Heat that a stream takes per kelvin',
  equation: 'C = ṁ·c_p',
  result: { name: 'capacity flow', variable: 'capacityFlow_WPerK', symbol: 'C' },
  symbols: { massFlow_kgPerS: 'ṁ', cp_JPerKgK: 'c_p' },
  words: { massFlow_kgPerS: 'mass flow that leaves', cp_JPerKgK: 'specific heat of the air' },
  evaluate: ({ massFlow_kgPerS, cp_JPerKgK }) => massFlow_kgPerS * cp_JPerKgK,
});

export const sinkResistance = defineBalance({
  id: 'sinkResistance',
  title: 'Sink to entering air, per watt',
  equation: 'R = 1/UA + 1/G',
  result: { name: 'thermal resistance', variable: 'R_KPerW', symbol: 'R' },
  symbols: { UA_WPerK: 'UA', carry_WPerK: 'G' },
  words: {
    UA_WPerK: 'conductance of the sink to its air',
    carry_WPerK: 'conductance from the mean air to the entering air',
  },
  evaluate: ({ UA_WPerK, carry_WPerK }) => 1 / UA_WPerK + 1 / carry_WPerK,
});

export const plateCoefficient = defineBalance({
  id: 'plateCoefficient',
  title: 'What a plate gives to the air, per its own area',
  equation: 'h_p = G/(w·L)',
  result: { name: 'heat transfer coefficient on the plate', variable: 'plateH_WPerM2K', symbol: 'h_p' },
  symbols: { plateToAir_WPerK: 'G', width_m: 'w', length_m: 'L' },
  words: {
    plateToAir_WPerK: 'conductance of one plate to the air',
    width_m: 'width of the plate',
    length_m: 'length of the plate',
  },
  evaluate: ({ plateToAir_WPerK, width_m, length_m }) => plateToAir_WPerK / (width_m * length_m),
});

export const sinkBalances = [
  lengthInDiameters,
  thermalEntrance,
  nusseltOnDiameter,
  largerNusselt,
  transitionNusselt,
  heatTransfer,
  finAcross,
  acrossAll,
  plateToAir,
  efficiencyOfFin,
  bothPlates,
  leavingAir,
  capacityFlow,
  sinkResistance,
  plateCoefficient,
] as const;
