import { defineBalance, each } from '../balance.ts';

/** Walls beside the sinks: between gap, sheet and room. Watts that leave to the room stand in the network as tangents. */
export const gapConductance = defineBalance<string>({
  id: 'gapConductance',
  title: 'From the faces of a sink to the air in the gaps beside it',
  equation: 'G = Σ h_i·A_i',
  result: { name: 'conductance', variable: 'toGap_WPerK', symbol: 'G' },
  symbols: { 'h_WPerM2K#': 'h_#', 'area_m2#': 'A_#' },
  words: { 'h_WPerM2K#': 'heat transfer coefficient at face #', 'area_m2#': 'area of face #' },
  assumes: ['gapAirMixed'],
  evaluate: (given) => {
    const areas = each(given, 'area_m2');
    return each(given, 'h_WPerM2K').reduce((sum, h, i) => sum + h * (areas[i] as number), 0);
  },
});

export const areaConductance = defineBalance({
  id: 'areaConductance',
  title: 'Coefficient times area',
  equation: 'G = h·A',
  result: { name: 'conductance', variable: 'G_WPerK', symbol: 'G' },
  symbols: { h_WPerM2K: 'h', area_m2: 'A' },
  words: { h_WPerM2K: 'heat transfer coefficient', area_m2: 'area' },
  evaluate: ({ h_WPerM2K, area_m2 }) => h_WPerM2K * area_m2,
});

export const doubled = defineBalance({
  id: 'doubled',
  title: 'Both halves of a gap',
  equation: 'UA = 2·G',
  result: { name: 'conductance', variable: 'UA_WPerK', symbol: 'UA' },
  symbols: { toGap_WPerK: 'G' },
  words: { toGap_WPerK: 'conductance from one wall to the air between' },
  evaluate: ({ toGap_WPerK }) => 2 * toGap_WPerK,
});

export const gapAir = defineBalance({
  id: 'gapAir',
  title: 'Air of the gaps beside one sink that leaves the box',
  equation: 'ṁ = max(0, ṁ_g)',
  result: { name: 'mass flow', variable: 'massFlow_kgPerS', symbol: 'ṁ' },
  symbols: { gap_kgPerS: 'ṁ_g' },
  words: { gap_kgPerS: 'its share of the air in the side gaps, of the end gap too at the ends of the row' },
  evaluate: ({ gap_kgPerS }) => Math.max(0, gap_kgPerS),
});

export const depthOverGap = defineBalance({
  id: 'depthOverGap',
  title: 'Depth of a fin channel over its gap',
  equation: 'λ = L/b',
  result: { name: 'depth over gap', variable: 'depthRatio', symbol: 'λ' },
  symbols: { length_m: 'L', gap_m: 'b' },
  words: { length_m: 'length of the fins', gap_m: 'gap between fins' },
  evaluate: ({ length_m, gap_m }) => length_m / gap_m,
});

export const seenOpening = defineBalance({
  id: 'seenOpening',
  title: 'Opening of the fin channels as the room sees it',
  equation: 'A_s = f·w·H·ε_a',
  result: { name: 'area of a black body', variable: 'seen_m2', symbol: 'A_s' },
  symbols: { open: 'f', width_m: 'w', height_m: 'H', apparent: 'ε_a' },
  words: {
    open: 'share that the outlet leaves open to the eye',
    width_m: 'width of a sink',
    height_m: 'height of the fins',
    apparent: 'apparent emissivity',
  },
  evaluate: (g) => g.open * g.width_m * g.height_m * g.apparent,
});

export const heldEmissivity = defineBalance({
  id: 'heldEmissivity',
  title: 'Emissivity with what was fitted or drawn',
  equation: 'ε = min(1, F·ε_0)',
  result: { name: 'emissivity', variable: 'emissivity', symbol: 'ε' },
  symbols: { factor: 'F', own: 'ε_0' },
  words: { factor: 'factor on emissivity', own: 'emissivity of the surface' },
  evaluate: ({ factor, own }) => Math.min(1, own * factor),
});

export const kinematic = defineBalance({
  id: 'kinematic',
  title: 'Kinematic viscosity',
  equation: 'ν = μ/ρ',
  result: { name: 'kinematic viscosity', variable: 'nu_m2PerS', symbol: 'ν' },
  symbols: { mu_PaS: 'μ', rho_kgPerM3: 'ρ' },
  evaluate: ({ mu_PaS, rho_kgPerM3 }) => mu_PaS / rho_kgPerM3,
});

export const diffusivity = defineBalance({
  id: 'diffusivity',
  title: 'Thermal diffusivity',
  equation: 'α = ν/Pr',
  result: { name: 'thermal diffusivity', variable: 'alpha_m2PerS', symbol: 'α' },
  symbols: { nu_m2PerS: 'ν', prandtl: 'Pr' },
  words: { nu_m2PerS: 'kinematic viscosity' },
  evaluate: ({ nu_m2PerS, prandtl }) => nu_m2PerS / prandtl,
});

export const expansion = defineBalance({
  id: 'expansion',
  title: 'Thermal expansion of an ideal gas',
  equation: 'β = 1/T',
  result: { name: 'expansion', variable: 'beta_PerK', symbol: 'β' },
  symbols: { T_K: 'T' },
  words: { T_K: 'temperature of the room' },
  evaluate: ({ T_K }) => 1 / T_K,
});

export const difference = defineBalance({
  id: 'difference',
  title: 'Difference of two temperatures, without its sign',
  equation: 'ΔT = √((T_1 − T_2)²)',
  result: { name: 'temperature difference', variable: 'dT_K', symbol: 'ΔT' },
  symbols: { first_K: 'T_1', second_K: 'T_2' },
  words: { first_K: 'first temperature', second_K: 'second temperature' },
  evaluate: ({ first_K, second_K }) => Math.abs(first_K - second_K),
});

export const outsideConvection = defineBalance({
  id: 'outsideConvection',
  title: 'Free convection outside',
  equation: 'h = F·Nu·k/L',
  result: { name: 'heat transfer coefficient', variable: 'h_WPerM2K', symbol: 'h' },
  symbols: { factor: 'F', nusselt: 'Nu', k_WPerMK: 'k', length_m: 'L' },
  words: {
    factor: 'factor on free convection outside, 1 where nothing was drawn',
    nusselt: 'Nusselt number',
    k_WPerMK: 'conductivity of the room’s air',
    length_m: 'height of the sinks',
  },
  evaluate: ({ factor, nusselt, k_WPerMK, length_m }) => (nusselt * k_WPerMK * factor) / length_m,
});

export const sideBySide = defineBalance({
  id: 'sideBySide',
  title: 'Coefficients side by side',
  equation: 'h = h_1 + h_2',
  result: { name: 'heat transfer coefficient', variable: 'h_WPerM2K', symbol: 'h' },
  symbols: { first_WPerM2K: 'h_1', second_WPerM2K: 'h_2' },
  words: { first_WPerM2K: 'by the air', second_WPerM2K: 'by radiation' },
  evaluate: ({ first_WPerM2K, second_WPerM2K }) => first_WPerM2K + second_WPerM2K,
});

export const throughWall = defineBalance({
  id: 'throughWall',
  title: 'From the inside of the box wall to the room, per area',
  equation: 'r = t/k + 1/h',
  result: { name: 'resistance of an area', variable: 'r_m2KPerW', symbol: 'r' },
  symbols: { sheet_m: 't', k_WPerMK: 'k', h_WPerM2K: 'h' },
  words: {
    sheet_m: 'thickness of the sheet',
    k_WPerMK: 'conductivity of the sheet',
    h_WPerM2K: 'heat transfer coefficient outside',
  },
  evaluate: ({ sheet_m, k_WPerMK, h_WPerM2K }) => sheet_m / k_WPerMK + 1 / h_WPerM2K,
});

export const betweenWalls = defineBalance({
  id: 'betweenWalls',
  title: 'Through still air between two walls, per kelvin',
  equation: 'h = k/b + h_r',
  result: { name: 'heat transfer coefficient', variable: 'h_WPerM2K', symbol: 'h' },
  symbols: { k_WPerMK: 'k', gap_m: 'b', radiation_WPerM2K: 'h_r' },
  words: {
    k_WPerMK: 'conductivity of the air',
    gap_m: 'room between collar and box wall',
    radiation_WPerM2K: 'by radiation',
  },
  evaluate: ({ k_WPerMK, gap_m, radiation_WPerM2K }) => k_WPerMK / gap_m + radiation_WPerM2K,
});

export const throughCollar = defineBalance({
  id: 'throughCollar',
  title: 'Through collar and box wall to the room',
  equation: 'G = A/(t/k + 1/h + r)',
  result: { name: 'conductance', variable: 'G_WPerK', symbol: 'G' },
  symbols: { area_m2: 'A', sheet_m: 't', k_WPerMK: 'k', between_WPerM2K: 'h', wall_m2KPerW: 'r' },
  words: {
    area_m2: 'area behind the collar',
    sheet_m: 'thickness of the collar',
    k_WPerMK: 'conductivity of the sheet',
    between_WPerM2K: 'between collar and box wall',
    wall_m2KPerW: 'box wall to the room',
  },
  evaluate: (g) => g.area_m2 / (g.sheet_m / g.k_WPerMK + 1 / g.between_WPerM2K + g.wall_m2KPerW),
});

export const throughBoth = defineBalance({
  id: 'throughBoth',
  title: 'Through a collar that lies on the box wall',
  equation: 'G = A/(t/k + r)',
  result: { name: 'conductance', variable: 'G_WPerK', symbol: 'G' },
  symbols: { area_m2: 'A', sheet_m: 't', k_WPerMK: 'k', wall_m2KPerW: 'r' },
  words: {
    area_m2: 'area behind the collar',
    sheet_m: 'thickness of the collar',
    k_WPerMK: 'conductivity of the sheet',
    wall_m2KPerW: 'box wall to the room',
  },
  evaluate: (g) => g.area_m2 / (g.sheet_m / g.k_WPerMK + g.wall_m2KPerW),
});

export const outOfWall = defineBalance({
  id: 'outOfWall',
  title: 'From the sheet that faces a sink to the room',
  equation: 'G = G_c + (A − A_c)/r',
  result: { name: 'conductance', variable: 'G_WPerK', symbol: 'G' },
  symbols: { collared_WPerK: 'G_c', area_m2: 'A', collared_m2: 'A_c', wall_m2KPerW: 'r' },
  words: {
    collared_WPerK: 'through the collar',
    area_m2: 'faces that look at a wall',
    collared_m2: 'of them behind a collar',
    wall_m2KPerW: 'box wall to the room',
  },
  evaluate: (g) => g.collared_WPerK + (g.area_m2 - g.collared_m2) / g.wall_m2KPerW,
});

export const outsideShare = defineBalance({
  id: 'outsideShare',
  title: 'Outside of the box wall over the sheet that faces the sink, as rises over the room',
  equation: 's = G/(h·A)',
  result: { name: 'share of the rise', variable: 'outerShare', symbol: 's' },
  symbols: { out_WPerK: 'G', h_WPerM2K: 'h', area_m2: 'A' },
  words: {
    out_WPerK: 'sheet to the room',
    h_WPerM2K: 'heat transfer coefficient outside',
    area_m2: 'faces that look at a wall',
  },
  evaluate: ({ out_WPerK, h_WPerM2K, area_m2 }) => out_WPerK / (h_WPerM2K * area_m2),
});

export const steeper = defineBalance({
  id: 'steeper',
  title: 'How much more a warmer wall gives, as a tangent',
  equation: 'ΔG = G·s·max(0, (0.2·h_c + h_t)/h + h_c/h − 1)',
  result: { name: 'conductance', variable: 'G_WPerK', symbol: 'ΔG' },
  symbols: {
    out_WPerK: 'G',
    outerShare: 's',
    convection_WPerM2K: 'h_c',
    tangent_WPerM2K: 'h_t',
    outside_WPerM2K: 'h',
  },
  words: {
    out_WPerK: 'sheet to the room',
    outerShare: 'share of the rise outside',
    convection_WPerM2K: 'free convection outside',
    tangent_WPerM2K: 'slope of the radiation',
    outside_WPerM2K: 'heat transfer coefficient outside',
  },
  evaluate: (g) =>
    g.out_WPerK *
    g.outerShare *
    Math.max(
      0,
      (0.2 * g.convection_WPerM2K + g.tangent_WPerM2K) / g.outside_WPerM2K +
        g.convection_WPerM2K / g.outside_WPerM2K -
        1,
    ),
});

export const tangentSum = defineBalance({
  id: 'tangentSum',
  title: 'Conductance as a tangent',
  equation: 'G_t = G + ΔG',
  result: { name: 'conductance', variable: 'G_WPerK', symbol: 'G_t' },
  symbols: { plain_WPerK: 'G', more_WPerK: 'ΔG' },
  words: { plain_WPerK: 'as it is', more_WPerK: 'what a warmer wall gives more' },
  evaluate: ({ plain_WPerK, more_WPerK }) => plain_WPerK + more_WPerK,
});

export const tangentOffset = defineBalance({
  id: 'tangentOffset',
  title: 'Watts by which the tangent says too much',
  equation: 'P = ΔG·(T_w − T_r)',
  result: { name: 'watts', variable: 'power_W', symbol: 'P' },
  symbols: { more_WPerK: 'ΔG', wall_K: 'T_w', room_K: 'T_r' },
  words: {
    more_WPerK: 'what a warmer wall gives more',
    wall_K: 'temperature of the sheet',
    room_K: 'temperature of the room',
  },
  evaluate: ({ more_WPerK, wall_K, room_K }) => more_WPerK * (wall_K - room_K),
});

export const upwardsOffset = defineBalance({
  id: 'upwardsOffset',
  title: 'Watts by which the tangent of the radiation upwards says too much',
  equation: 'P = A_s·(h_t − h_u)·(T_p − T_r)',
  result: { name: 'watts', variable: 'power_W', symbol: 'P' },
  symbols: { seen_m2: 'A_s', tangent_WPerM2K: 'h_t', up_WPerM2K: 'h_u', plate_K: 'T_p', room_K: 'T_r' },
  words: {
    seen_m2: 'opening as the room sees it',
    tangent_WPerM2K: 'slope of the radiation',
    up_WPerM2K: 'radiation as a coefficient',
    plate_K: 'temperature of the plates',
    room_K: 'temperature of the room',
  },
  evaluate: (g) => g.seen_m2 * (g.tangent_WPerM2K - g.up_WPerM2K) * (g.plate_K - g.room_K),
});

export const pastGap = defineBalance({
  id: 'pastGap',
  title: 'From a sink past the air of the gap to the wall',
  equation: 'G_p = G²/(2·G + C)',
  result: { name: 'conductance', variable: 'past_WPerK', symbol: 'G_p' },
  symbols: { toGap_WPerK: 'G', carry_WPerK: 'C' },
  words: { toGap_WPerK: 'wall to the air between', carry_WPerK: 'that air to the entering air' },
  evaluate: ({ toGap_WPerK: g, carry_WPerK }) => (g * g) / (2 * g + carry_WPerK),
});

export const byGap = defineBalance({
  id: 'byGap',
  title: 'From a wall of the gap with its air',
  equation: 'G_c = G·C/(2·G + C)',
  result: { name: 'conductance', variable: 'carried_WPerK', symbol: 'G_c' },
  symbols: { toGap_WPerK: 'G', carry_WPerK: 'C' },
  words: { toGap_WPerK: 'wall to the air between', carry_WPerK: 'that air to the entering air' },
  evaluate: ({ toGap_WPerK: g, carry_WPerK }) => (g * carry_WPerK) / (2 * g + carry_WPerK),
});

export const sharedByPlates = defineBalance({
  id: 'sharedByPlates',
  title: 'What both plates of a sink share',
  equation: 'G = z·(G_1 + G_2)',
  result: { name: 'conductance', variable: 'G_WPerK', symbol: 'G' },
  symbols: { share: 'z', first_WPerK: 'G_1', second_WPerK: 'G_2' },
  words: {
    share: 'share of one plate: a half where there are two',
    first_WPerK: 'by radiation',
    second_WPerK: 'by the air of the gap',
  },
  evaluate: ({ share, first_WPerK, second_WPerK }) => share * (first_WPerK + second_WPerK),
});

export const acrossWithGap = defineBalance({
  id: 'acrossWithGap',
  title: 'From plate to plate, through the fins and past the gap',
  equation: 'G = G_f + 0.25·G_p',
  result: { name: 'conductance', variable: 'G_WPerK', symbol: 'G' },
  symbols: { across_WPerK: 'G_f', past_WPerK: 'G_p' },
  words: { across_WPerK: 'through the fins', past_WPerK: 'past the air of the gap' },
  evaluate: ({ across_WPerK, past_WPerK }) => across_WPerK + 0.25 * past_WPerK,
});

export const ofPlate = defineBalance({
  id: 'ofPlate',
  title: 'Watts that a plate gains by its tangents',
  equation: 'P = z·(G·θ_r + P_0)',
  result: { name: 'watts', variable: 'power_W', symbol: 'P' },
  symbols: { share: 'z', out_WPerK: 'G', roomRise_K: 'θ_r', offset_W: 'P_0' },
  words: {
    share: 'share of one plate: a half where there are two',
    out_WPerK: 'upwards to the room, as a tangent',
    roomRise_K: 'room over the entering air',
    offset_W: 'watts by which the tangent says too much',
  },
  evaluate: ({ share, out_WPerK, roomRise_K, offset_W }) => share * (out_WPerK * roomRise_K + offset_W),
});

export const givenOff = defineBalance({
  id: 'givenOff',
  title: 'Watts that walls and opening beside one sink give off',
  equation: 'Q = G_w·(θ_w − θ_r) − P_w + G_u·(θ_p − θ_r) − P_u',
  result: { name: 'watts', variable: 'power_W', symbol: 'Q' },
  symbols: {
    out_WPerK: 'G_w',
    wallRise_K: 'θ_w',
    roomRise_K: 'θ_r',
    outOffset_W: 'P_w',
    up_WPerK: 'G_u',
    plateRise_K: 'θ_p',
    upOffset_W: 'P_u',
  },
  words: {
    out_WPerK: 'sheet to the room, as a tangent',
    wallRise_K: 'rise of the sheet over the entering air',
    roomRise_K: 'room over the entering air',
    outOffset_W: 'watts by which that tangent says too much',
    up_WPerK: 'upwards, as a tangent',
    plateRise_K: 'mean rise of the plates',
    upOffset_W: 'watts by which that tangent says too much',
  },
  evaluate: (g) =>
    g.out_WPerK * (g.wallRise_K - g.roomRise_K) -
    g.outOffset_W +
    g.up_WPerK * (g.plateRise_K - g.roomRise_K) -
    g.upOffset_W,
});

export const gapCarried = defineBalance({
  id: 'gapCarried',
  title: 'Watts that the air in the gaps beside one sink takes',
  equation: 'Q = C·G·(θ_p + θ_w)/(2·G + C)',
  result: { name: 'watts', variable: 'power_W', symbol: 'Q' },
  symbols: { carry_WPerK: 'C', toGap_WPerK: 'G', plateRise_K: 'θ_p', wallRise_K: 'θ_w' },
  words: {
    carry_WPerK: 'air of the gap to the entering air',
    toGap_WPerK: 'wall to the air between',
    plateRise_K: 'mean rise of the plates',
    wallRise_K: 'rise of the sheet',
  },
  evaluate: ({ carry_WPerK: c, toGap_WPerK: g, plateRise_K, wallRise_K }) =>
    (c * g * (plateRise_K + wallRise_K)) / (2 * g + c),
});

export const shellBalances = [
  gapConductance,
  areaConductance,
  doubled,
  gapAir,
  depthOverGap,
  seenOpening,
  heldEmissivity,
  kinematic,
  diffusivity,
  expansion,
  difference,
  outsideConvection,
  sideBySide,
  throughWall,
  betweenWalls,
  throughCollar,
  throughBoth,
  outOfWall,
  outsideShare,
  steeper,
  tangentSum,
  tangentOffset,
  upwardsOffset,
  pastGap,
  byGap,
  sharedByPlates,
  acrossWithGap,
  ofPlate,
  givenOff,
  gapCarried,
] as const;
