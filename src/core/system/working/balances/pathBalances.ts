import { defineBalance, total } from '../balance.ts';

/** Between the loss methods and the pressure of one link. */
export const freeShare = defineBalance({
  id: 'freeShare',
  title: 'Open share that dust has left',
  equation: 'f = f_0·(1 − b)',
  result: { name: 'open share', variable: 'free', symbol: 'f' },
  symbols: { clean: 'f_0', blocked: 'b' },
  words: { clean: 'open share as bought', blocked: 'share that dust has closed' },
  evaluate: ({ clean, blocked }) => clean * (1 - blocked),
});

export const dustedLoss = defineBalance({
  id: 'dustedLoss',
  title: 'Loss as typed in, with dust',
  equation: 'K = K_0/(1 − b)²',
  result: { name: 'loss coefficient', variable: 'loss', symbol: 'K' },
  symbols: { own: 'K_0', blocked: 'b' },
  words: { own: 'loss coefficient as typed in', blocked: 'share that dust has closed' },
  evaluate: ({ own, blocked }) => own / ((1 - blocked) * (1 - blocked)),
});

export const lossSum = defineBalance<string>({
  id: 'lossSum',
  title: 'Losses of one stretch together',
  equation: 'K = F·Σ K_i',
  result: { name: 'loss coefficient', variable: 'loss', symbol: 'K' },
  symbols: { factor: 'F', 'loss#': 'K_#' },
  words: { factor: 'factor on losses, 1 where nothing was fitted or drawn', 'loss#': 'loss coefficient #' },
  evaluate: (given) => total(given, 'loss') * (given.factor as number),
});

export const areaRatio = defineBalance({
  id: 'areaRatio',
  title: 'Narrow over wide area',
  equation: 'σ = A_1/A_2',
  result: { name: 'ratio of areas', variable: 'ratio', symbol: 'σ' },
  symbols: { narrow_m2: 'A_1', wide_m2: 'A_2' },
  words: { narrow_m2: 'narrow area', wide_m2: 'wide area' },
  evaluate: ({ narrow_m2, wide_m2 }) => narrow_m2 / wide_m2,
});

export const openShare = defineBalance({
  id: 'openShare',
  title: 'Open share of the face of the fins',
  equation: 'σ = b/(b + t)',
  result: { name: 'open share', variable: 'sigma', symbol: 'σ' },
  symbols: { gap_m: 'b', thickness_m: 't' },
  words: { gap_m: 'gap between fins', thickness_m: 'thickness of a fin' },
  evaluate: ({ gap_m, thickness_m }) => gap_m / (gap_m + thickness_m),
});

export const crackHeads = defineBalance({
  id: 'crackHeads',
  title: 'Velocity heads lost in a crack',
  equation: 'K = 1/C_d²',
  result: { name: 'loss coefficient', variable: 'loss', symbol: 'K' },
  symbols: { discharge: 'C_d' },
  words: { discharge: 'discharge coefficient' },
  evaluate: ({ discharge }) => 1 / (discharge * discharge),
});

export const quotient = defineBalance({
  id: 'quotient',
  title: 'Length over width of the crack',
  equation: 'λ = s/b',
  result: { name: 'length over width', variable: 'lengthOverGap', symbol: 'λ' },
  symbols: { length_m: 's', gap_m: 'b' },
  words: { length_m: 'thickness of the sheet', gap_m: 'width of the crack' },
  evaluate: ({ length_m, gap_m }) => length_m / gap_m,
});

export const airSpeed = defineBalance({
  id: 'airSpeed',
  title: 'Air speed',
  equation: 'v = ṁ/(ρ·A)',
  result: { name: 'air speed', variable: 'velocity_mPerS', symbol: 'v' },
  symbols: { massFlow_kgPerS: 'ṁ', rho_kgPerM3: 'ρ', area_m2: 'A' },
  words: { massFlow_kgPerS: 'mass flow by this way', area_m2: 'area that the speed belongs to' },
  assumes: ['incompressible'],
  evaluate: ({ massFlow_kgPerS, rho_kgPerM3, area_m2 }) => massFlow_kgPerS / (rho_kgPerM3 * area_m2),
});

export const slowSpeed = defineBalance({
  id: 'slowSpeed',
  title: 'Speed below which a loss turns linear',
  equation: 'v_0 = μ/(ρ·s)',
  result: { name: 'speed at a Reynolds number of one', variable: 'slow_mPerS', symbol: 'v_0' },
  symbols: { mu_PaS: 'μ', rho_kgPerM3: 'ρ', size_m: 's' },
  words: { size_m: 'size of the opening' },
  evaluate: ({ mu_PaS, rho_kgPerM3, size_m }) => mu_PaS / (rho_kgPerM3 * size_m),
});

export const headsLost = defineBalance({
  id: 'headsLost',
  title: 'Pressure that velocity heads cost',
  equation: 'Δp = 0.5·K·ρ·v·√(v² + v_0²)',
  result: { name: 'pressure', variable: 'drop_Pa', symbol: 'Δp' },
  symbols: { loss: 'K', rho_kgPerM3: 'ρ', velocity_mPerS: 'v', slow_mPerS: 'v_0' },
  words: {
    loss: 'loss coefficient',
    velocity_mPerS: 'air speed',
    slow_mPerS: 'speed below which it turns linear',
  },
  assumes: ['turbulentLoss'],
  evaluate: ({ loss, rho_kgPerM3, velocity_mPerS: v, slow_mPerS: v0 }) =>
    0.5 * rho_kgPerM3 * loss * v * Math.sqrt(v * v + v0 * v0),
});

export const filterDrop = defineBalance({
  id: 'filterDrop',
  title: 'Filter by its maker’s two terms',
  equation: 'Δp = v·(a + b·√(v²))',
  result: { name: 'pressure', variable: 'drop_Pa', symbol: 'Δp' },
  symbols: { velocity_mPerS: 'v', linear_PaSPerM: 'a', quadratic_PaS2PerM2: 'b' },
  words: {
    velocity_mPerS: 'air speed',
    linear_PaSPerM: 'linear term',
    quadratic_PaS2PerM2: 'quadratic term',
  },
  evaluate: ({ velocity_mPerS: v, linear_PaSPerM, quadratic_PaS2PerM2 }) =>
    v * (linear_PaSPerM + quadratic_PaS2PerM2 * Math.abs(v)),
});

export const filterArea = defineBalance({
  id: 'filterArea',
  title: 'Area of the filter that dust has left',
  equation: 'A = A_0·(1 − b)',
  result: { name: 'area', variable: 'area_m2', symbol: 'A' },
  symbols: { whole_m2: 'A_0', blocked: 'b' },
  words: { whole_m2: 'whole area', blocked: 'share that dust has closed' },
  evaluate: ({ whole_m2, blocked }) => whole_m2 * (1 - blocked),
});

export const hydraulicDiameter = defineBalance({
  id: 'hydraulicDiameter',
  title: 'Hydraulic diameter of a rectangle',
  equation: 'D_h = 2·b·H/(b + H)',
  result: { name: 'hydraulic diameter', variable: 'hydraulic_m', symbol: 'D_h' },
  symbols: { gap_m: 'b', height_m: 'H' },
  words: { gap_m: 'one side of the channel', height_m: 'other side of the channel' },
  evaluate: ({ gap_m, height_m }) => (2 * gap_m * height_m) / (gap_m + height_m),
});

export const sideRatio = defineBalance({
  id: 'sideRatio',
  title: 'Short over long side of a channel',
  equation: 'α = min(b, H)/max(b, H)',
  result: { name: 'ratio of sides', variable: 'aspect', symbol: 'α' },
  symbols: { gap_m: 'b', height_m: 'H' },
  words: { gap_m: 'one side of the channel', height_m: 'other side of the channel' },
  evaluate: ({ gap_m, height_m }) => Math.min(gap_m, height_m) / Math.max(gap_m, height_m),
});

export const reynoldsNumber = defineBalance({
  id: 'reynoldsNumber',
  title: 'Reynolds number',
  equation: 'Re = max(ρ·√(v²)·D_h/μ, 10⁻¹⁸)',
  result: { name: 'Reynolds number on the hydraulic diameter', variable: 'reynolds', symbol: 'Re' },
  symbols: { rho_kgPerM3: 'ρ', velocity_mPerS: 'v', hydraulic_m: 'D_h', mu_PaS: 'μ' },
  words: { velocity_mPerS: 'air speed', hydraulic_m: 'hydraulic diameter' },
  evaluate: ({ rho_kgPerM3, velocity_mPerS, hydraulic_m, mu_PaS }) =>
    Math.max((rho_kgPerM3 * Math.abs(velocity_mPerS) * hydraulic_m) / mu_PaS, 1e-18),
});

export const entranceLength = defineBalance({
  id: 'entranceLength',
  title: 'Length of a channel as its entrance counts it',
  equation: 'x⁺ = L/(D_h·Re)',
  result: { name: 'length over entrance', variable: 'xPlus', symbol: 'x⁺' },
  symbols: { length_m: 'L', hydraulic_m: 'D_h', reynolds: 'Re' },
  words: { length_m: 'length of the channel', hydraulic_m: 'hydraulic diameter' },
  evaluate: ({ length_m, hydraulic_m, reynolds }) => length_m / (hydraulic_m * reynolds),
});

export const transitionFriction = defineBalance({
  id: 'transitionFriction',
  title: 'Friction between laminar and turbulent, straight from Re 2300 to 4000',
  equation:
    'f = f_1 + (f_2 − f_1)·(Re − 2300)/(4000 − 2300); f_1 = √(3.44²·D_h·2300/L + F²)/2300; F laminar and developed',
  result: { name: 'friction factor, Fanning', variable: 'friction', symbol: 'f' },
  symbols: { turbulent: 'f_2', reynolds: 'Re', hydraulic_m: 'D_h', length_m: 'L', developed: 'F' },
  words: {
    turbulent: 'friction factor at Re 4000',
    hydraulic_m: 'hydraulic diameter',
    length_m: 'length of the channel',
    developed: 'f·Re, laminar and developed',
  },
  evaluate: ({ turbulent, reynolds, hydraulic_m, length_m, developed }) => {
    const start = Math.sqrt((3.44 * 3.44 * hydraulic_m * 2300) / length_m + developed * developed) / 2300;
    return start + ((turbulent - start) * (reynolds - 2300)) / (4000 - 2300);
  },
});

export const largerFriction = defineBalance({
  id: 'largerFriction',
  title: 'The larger of laminar and turbulent friction',
  equation: 'φ = max(F, f·Re)',
  result: { name: 'friction factor times Reynolds number', variable: 'frictionReynolds', symbol: 'φ' },
  symbols: { laminar: 'F', friction: 'f', reynolds: 'Re' },
  words: { laminar: 'f·Re, laminar', friction: 'friction factor beyond laminar flow' },
  evaluate: ({ laminar, friction, reynolds }) => Math.max(laminar, friction * reynolds),
});

export const channelDrop = defineBalance({
  id: 'channelDrop',
  title: 'Pressure that a channel takes: friction and ends',
  equation: 'Δp = 2·F·φ·μ·L·v/D_h² + 0.5·K·ρ·v·√(v² + v_0²)',
  result: { name: 'pressure', variable: 'drop_Pa', symbol: 'Δp' },
  symbols: {
    factor: 'F',
    frictionReynolds: 'φ',
    mu_PaS: 'μ',
    length_m: 'L',
    velocity_mPerS: 'v',
    hydraulic_m: 'D_h',
    loss: 'K',
    rho_kgPerM3: 'ρ',
    slow_mPerS: 'v_0',
  },
  words: {
    factor: 'factor on friction, 1 where nothing was fitted or drawn',
    frictionReynolds: 'friction factor, Fanning, times Reynolds number',
    length_m: 'length of the channel',
    velocity_mPerS: 'air speed',
    hydraulic_m: 'hydraulic diameter',
    loss: 'loss coefficient of the ends',
    slow_mPerS: 'speed below which end losses turn linear',
  },
  assumes: ['incompressible'],
  evaluate: (g) => {
    const v = g.velocity_mPerS;
    const friction =
      (2 * g.factor * g.frictionReynolds * g.mu_PaS * g.length_m * v) / (g.hydraulic_m * g.hydraulic_m);
    return friction + 0.5 * g.loss * g.rho_kgPerM3 * v * Math.sqrt(v * v + g.slow_mPerS * g.slow_mPerS);
  },
});

export const finGap = defineBalance({
  id: 'finGap',
  title: 'Clear gap between two fins',
  equation: 'b = (w − n·t)/(n − 1)',
  result: { name: 'gap between fins', variable: 'gap_m', symbol: 'b' },
  symbols: { width_m: 'w', count: 'n', thickness_m: 't' },
  words: { width_m: 'width of a sink', count: 'fins of a sink', thickness_m: 'thickness of a fin' },
  evaluate: ({ width_m, count, thickness_m }) => (width_m - count * thickness_m) / (count - 1),
});

export const turnedRound = defineBalance({
  id: 'turnedRound',
  title: 'The air runs the other way',
  equation: 'Δp = −p',
  result: { name: 'pressure', variable: 'drop_Pa', symbol: 'Δp' },
  symbols: { drop_Pa: 'p' },
  words: { drop_Pa: 'pressure at the same flow forwards' },
  evaluate: ({ drop_Pa }) => -drop_Pa,
});

export const pathBalances = [
  finGap,
  turnedRound,
  freeShare,
  dustedLoss,
  lossSum,
  areaRatio,
  openShare,
  crackHeads,
  quotient,
  airSpeed,
  slowSpeed,
  headsLost,
  filterDrop,
  filterArea,
  hydraulicDiameter,
  sideRatio,
  reynoldsNumber,
  entranceLength,
  transitionFriction,
  largerFriction,
  channelDrop,
] as const;
