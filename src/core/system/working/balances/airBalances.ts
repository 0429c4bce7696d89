import { defineBalance, total } from '../balance.ts';

/** Air as it is: what follows from the properties of dry air by definition. */
export const moistDensity = defineBalance({
  id: 'moistDensity',
  title: 'Density of the moist air',
  equation: 'ρ = m·ρ_d',
  result: { name: 'density', variable: 'rho_kgPerM3', symbol: 'ρ' },
  symbols: { moist: 'm', dry_kgPerM3: 'ρ_d' },
  words: { moist: 'density of moist over dry air', dry_kgPerM3: 'density of dry air' },
  evaluate: ({ moist, dry_kgPerM3 }) => dry_kgPerM3 * moist,
});

export const prandtlNumber = defineBalance({
  id: 'prandtlNumber',
  title: 'Prandtl number',
  equation: 'Pr = μ·c_p/k',
  result: { name: 'Prandtl number', variable: 'prandtl', symbol: 'Pr' },
  symbols: { mu_PaS: 'μ', cp_JPerKgK: 'c_p', k_WPerMK: 'k' },
  evaluate: ({ mu_PaS, cp_JPerKgK, k_WPerMK }) => (mu_PaS * cp_JPerKgK) / k_WPerMK,
});

export const meanHeatCapacity = defineBalance({
  id: 'meanHeatCapacity',
  title: 'Specific heat of the air on its way',
  equation: 'c_p = (c_1 + c_2)/2; of the air that enters and of the air that leaves',
  result: { name: 'specific heat', variable: 'cp_JPerKgK', symbol: 'c_p' },
  symbols: { entering_JPerKgK: 'c_1', leaving_JPerKgK: 'c_2' },
  words: { entering_JPerKgK: 'specific heat in the plenum', leaving_JPerKgK: 'specific heat of the exhaust' },
  evaluate: ({ entering_JPerKgK, leaving_JPerKgK }) => 0.5 * (entering_JPerKgK + leaving_JPerKgK),
});

export const volumeFlow = defineBalance({
  id: 'volumeFlow',
  title: 'Air moved, as the room’s air',
  equation: 'Q = ṁ/ρ',
  result: { name: 'volume flow', variable: 'flow_m3PerS', symbol: 'Q' },
  symbols: { massFlow_kgPerS: 'ṁ', rho_kgPerM3: 'ρ' },
  words: { rho_kgPerM3: 'density of the room’s air' },
  evaluate: ({ massFlow_kgPerS, rho_kgPerM3 }) => massFlow_kgPerS / rho_kgPerM3,
});

export const massSum = defineBalance<string>({
  id: 'massSum',
  title: 'What enters the bank leaves it by some way',
  equation: 'ṁ = Σ ṁ_i',
  result: { name: 'mass flow through the fans', variable: 'massFlow_kgPerS', symbol: 'ṁ' },
  symbols: { 'massFlow_kgPerS#': 'ṁ_#' },
  words: { 'massFlow_kgPerS#': 'mass flow by way #' },
  assumes: ['steady'],
  evaluate: (given) => total(given, 'massFlow_kgPerS'),
});

export const flowShare = defineBalance<string>({
  id: 'flowShare',
  title: 'Share of the air',
  equation: 's = Σ ṁ_i/ṁ',
  result: { name: 'share of the air moved', variable: 'share', symbol: 's' },
  symbols: { 'massFlow_kgPerS#': 'ṁ_#', whole_kgPerS: 'ṁ' },
  words: { 'massFlow_kgPerS#': 'mass flow by way #', whole_kgPerS: 'mass flow through the fans' },
  evaluate: (given) => total(given, 'massFlow_kgPerS') / (given.whole_kgPerS as number),
});

export const pressureMeeting = defineBalance<string>({
  id: 'pressureMeeting',
  title: 'Where fan and box meet: what is given is what is taken',
  equation: 'r = Σ Δp_i − p − Δp_d; nil within rounding',
  result: { name: 'what the stages take less what fans and draught give', variable: 'left_Pa', symbol: 'r' },
  symbols: { 'drop_Pa#': 'Δp_#', fan_Pa: 'p', draught_Pa: 'Δp_d' },
  words: {
    'drop_Pa#': 'what stage # takes',
    fan_Pa: 'pressure of the fans',
    draught_Pa: 'draught outside the bank',
  },
  evaluate: (given) => total(given, 'drop_Pa') - (given.fan_Pa as number) - (given.draught_Pa as number),
});

export const draughtSum = defineBalance<string>({
  id: 'draughtSum',
  title: 'Draught outside the bank',
  equation: 'Δp_d = Σ Δp_i',
  result: { name: 'draught', variable: 'draught_Pa', symbol: 'Δp_d' },
  symbols: { 'lift_Pa#': 'Δp_#' },
  words: { 'lift_Pa#': 'draught of stage #' },
  evaluate: (given) => total(given, 'lift_Pa'),
});

export const curveReading = defineBalance({
  id: 'curveReading',
  title: 'Read between two points of a curve',
  equation:
    'p = p_1 + t·(a + t·(b + t·c)); t = (Q − Q_1)/(Q_2 − Q_1); a = s_1·(Q_2 − Q_1); b = 3·(p_2 − p_1) − 2·a − s_2·(Q_2 − Q_1); c = a + s_2·(Q_2 − Q_1) − 2·(p_2 − p_1)',
  result: { name: 'pressure on the curve', variable: 'p_Pa', symbol: 'p' },
  symbols: {
    flow_m3PerS: 'Q',
    before_m3PerS: 'Q_1',
    after_m3PerS: 'Q_2',
    before_Pa: 'p_1',
    after_Pa: 'p_2',
    before_PaSPerM3: 's_1',
    after_PaSPerM3: 's_2',
  },
  words: {
    flow_m3PerS: 'flow at which it is read',
    before_m3PerS: 'flow of the point before',
    after_m3PerS: 'flow of the point after',
    before_Pa: 'pressure of the point before',
    after_Pa: 'pressure of the point after',
    before_PaSPerM3: 'slope at the point before, of the monotone curve through all points',
    after_PaSPerM3: 'slope at the point after',
  },
  evaluate: (g) => {
    const h = g.after_m3PerS - g.before_m3PerS;
    const rise = g.after_Pa - g.before_Pa;
    const t = (g.flow_m3PerS - g.before_m3PerS) / h;
    const a = g.before_PaSPerM3 * h;
    const end = g.after_PaSPerM3 * h;
    return g.before_Pa + t * (a + t * (3 * rise - 2 * a - end + t * (a + end - 2 * rise)));
  },
});

export const curveBeyond = defineBalance({
  id: 'curveBeyond',
  title: 'Read beyond the last point of a curve, straight on',
  equation: 'p = p_1 + s_1·(Q − Q_1)',
  result: { name: 'pressure on the curve', variable: 'p_Pa', symbol: 'p' },
  symbols: { flow_m3PerS: 'Q', end_m3PerS: 'Q_1', end_Pa: 'p_1', end_PaSPerM3: 's_1' },
  words: {
    flow_m3PerS: 'flow at which it is read',
    end_m3PerS: 'flow of the end point',
    end_Pa: 'pressure of the end point',
    end_PaSPerM3: 'slope at the end point',
  },
  evaluate: ({ flow_m3PerS, end_m3PerS, end_Pa, end_PaSPerM3 }) =>
    end_Pa + end_PaSPerM3 * (flow_m3PerS - end_m3PerS),
});

export const airBalances = [
  moistDensity,
  prandtlNumber,
  meanHeatCapacity,
  volumeFlow,
  massSum,
  flowShare,
  pressureMeeting,
  draughtSum,
  curveReading,
  curveBeyond,
] as const;
