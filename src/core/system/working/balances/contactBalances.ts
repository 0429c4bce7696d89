import { defineBalance } from '../balance.ts';

/** Between the methods of conduction and the heat network. */
export const rectangle = defineBalance({
  id: 'rectangle',
  title: 'Area of a face',
  equation: 'A = L·w',
  result: { name: 'area', variable: 'area_m2', symbol: 'A' },
  symbols: { length_m: 'L', width_m: 'w' },
  words: { length_m: 'length', width_m: 'width' },
  evaluate: ({ length_m, width_m }) => length_m * width_m,
});

export const manyFaces = defineBalance({
  id: 'manyFaces',
  title: 'Area of several equal faces',
  equation: 'A = n·L·w',
  result: { name: 'area', variable: 'area_m2', symbol: 'A' },
  symbols: { count: 'n', length_m: 'L', width_m: 'w' },
  words: { count: 'how many', length_m: 'one side', width_m: 'other side' },
  evaluate: ({ count, length_m, width_m }) => count * length_m * width_m,
});

export const fittedConductivity = defineBalance({
  id: 'fittedConductivity',
  title: 'Conductivity of the adhesive with what was fitted or drawn',
  equation: 'k = F·k_0',
  result: { name: 'conductivity', variable: 'k_WPerMK', symbol: 'k' },
  symbols: { factor: 'F', k_WPerMK: 'k_0' },
  words: { factor: 'factor on the conductivity', k_WPerMK: 'design conductivity of the adhesive' },
  evaluate: ({ factor, k_WPerMK }) => k_WPerMK * factor,
});

export const filamentInBond = defineBalance({
  id: 'filamentInBond',
  title: 'Filament that finds room in a bond',
  equation: 'ℓ = min(ℓ_0, A/d)',
  result: { name: 'length of filament', variable: 'filamentLength_m', symbol: 'ℓ' },
  symbols: { laid_m: 'ℓ_0', area_m2: 'A', filament_m: 'd' },
  words: {
    laid_m: 'length of filament in one bond',
    area_m2: 'area of the bond',
    filament_m: 'diameter of the filament',
  },
  evaluate: ({ laid_m, area_m2, filament_m }) => Math.min(laid_m, area_m2 / filament_m),
});

export const inSeries = defineBalance({
  id: 'inSeries',
  title: 'Layers one behind the other',
  equation: 'R = R_1 + R_2',
  result: { name: 'thermal resistance', variable: 'R_KPerW', symbol: 'R' },
  symbols: { first_KPerW: 'R_1', second_KPerW: 'R_2' },
  words: { first_KPerW: 'first layer', second_KPerW: 'second layer' },
  evaluate: ({ first_KPerW, second_KPerW }) => first_KPerW + second_KPerW,
});

export const sourceRatio = defineBalance({
  id: 'sourceRatio',
  title: 'Radius of the source over that of the plate, both as circles of their area',
  equation: 'ε = min(1, √(A_s/A_p))',
  result: { name: 'ratio of radii', variable: 'radiusRatio', symbol: 'ε' },
  symbols: { source_m2: 'A_s', plate_m2: 'A_p' },
  words: { source_m2: 'area of the source', plate_m2: 'area of the plate' },
  evaluate: ({ source_m2, plate_m2 }) => Math.min(1, Math.sqrt(source_m2 / plate_m2)),
});

export const plateDepth = defineBalance({
  id: 'plateDepth',
  title: 'Thickness of the plate over its radius as a circle',
  equation: 'τ = t/√(A_p/π)',
  result: { name: 'ratio', variable: 'thicknessRatio', symbol: 'τ' },
  symbols: { thickness_m: 't', plate_m2: 'A_p' },
  words: { thickness_m: 'thickness of the plate', plate_m2: 'area of the plate' },
  evaluate: ({ thickness_m, plate_m2 }) => thickness_m / Math.sqrt(plate_m2 / Math.PI),
});

export const biotNumber = defineBalance({
  id: 'biotNumber',
  title: 'Biot number of the plate',
  equation: 'Bi = h·√(A_p/π)/k',
  result: { name: 'Biot number', variable: 'biot', symbol: 'Bi' },
  symbols: { h_WPerM2K: 'h', plate_m2: 'A_p', k_WPerMK: 'k' },
  words: {
    h_WPerM2K: 'heat transfer coefficient on the plate',
    plate_m2: 'area of the plate',
    k_WPerMK: 'conductivity of the sink',
  },
  evaluate: ({ h_WPerM2K, plate_m2, k_WPerMK }) => (h_WPerM2K * Math.sqrt(plate_m2 / Math.PI)) / k_WPerMK,
});

export const contactConductance = defineBalance({
  id: 'contactConductance',
  title: 'From a chip into a plate: everything on the way',
  equation: 'G = 1/(R_a + R_b + R_p + F·R_s)',
  result: { name: 'conductance', variable: 'G_WPerK', symbol: 'G' },
  symbols: { ahead_KPerW: 'R_a', bond_KPerW: 'R_b', plate_KPerW: 'R_p', factor: 'F', spreading_KPerW: 'R_s' },
  words: {
    ahead_KPerW: 'ahead of the bond: coating, or tabs and solder',
    bond_KPerW: 'bond line',
    plate_KPerW: 'straight through the plate',
    factor: 'factor on spreading, 1 where nothing was drawn',
    spreading_KPerW: 'spreading in the plate',
  },
  evaluate: (g) => 1 / (g.ahead_KPerW + g.bond_KPerW + g.plate_KPerW + g.factor * g.spreading_KPerW),
});

export const conductance = defineBalance({
  id: 'conductance',
  title: 'Conductance of a resistance',
  equation: 'G = 1/R',
  result: { name: 'conductance', variable: 'G_WPerK', symbol: 'G' },
  symbols: { R_KPerW: 'R' },
  words: { R_KPerW: 'thermal resistance' },
  evaluate: ({ R_KPerW }) => 1 / R_KPerW,
});

export const contactBalances = [
  rectangle,
  manyFaces,
  fittedConductivity,
  filamentInBond,
  inSeries,
  sourceRatio,
  plateDepth,
  biotNumber,
  contactConductance,
  conductance,
] as const;
