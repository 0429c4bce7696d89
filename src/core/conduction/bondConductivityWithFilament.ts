import { defineCard } from '../card.ts';

/** Below this relative distance of the two conductivities the closed form loses digits and its series is used. */
const NEARLY_EQUAL = 1e-3;

export interface FilamentBond {
  readonly adhesive_WPerMK: number;
  readonly filament_WPerMK: number;
  readonly filament_m: number;
  /** Total length laid in the bond. */
  readonly filamentLength_m: number;
  readonly area_m2: number;
}

/**
 * Conductivity of a bond line that is kept open by round spacer filaments as thick as the line itself.
 * Column model: heat goes straight, through filament and adhesive in series at each place across the filament, and the
 * columns lie side by side. It is the lower of two simple bounds; the mean by volume is the upper one.
 */
export function bondConductivityWithFilament(bond: FilamentBond): number {
  const footprintShare = (bond.filament_m * bond.filamentLength_m) / bond.area_m2;
  const underFilament_WPerMK = columnsAcrossFilament_WPerMK(bond.adhesive_WPerMK, bond.filament_WPerMK);
  return bond.adhesive_WPerMK * (1 - footprintShare) + underFilament_WPerMK * footprintShare;
}

/** ½∫cosθ/(a + b·cosθ) dθ over the half turn, with a = 1/k of the adhesive and a + b = 1/k of the filament. */
function columnsAcrossFilament_WPerMK(adhesive_WPerMK: number, filament_WPerMK: number): number {
  const a = 1 / adhesive_WPerMK;
  const b = 1 / filament_WPerMK - a;
  const contrast = b / a;
  if (Math.abs(contrast) < NEARLY_EQUAL) {
    const third = 2 / 3 - contrast * ((3 * Math.PI) / 16);
    return adhesive_WPerMK * (1 - contrast * (Math.PI / 4 - contrast * third));
  }
  const quarterTurn = (2 / (a + b)) * inverseTangentOverRoot((b - a) / (a + b));
  return (Math.PI / 2 - a * quarterTurn) / b;
}

/** artanh(√u)/√u, which is arctan(√−u)/√−u below zero and 1 at zero. */
function inverseTangentOverRoot(u: number): number {
  if (Math.abs(u) < 1e-8) return 1 + u / 3;
  const root = Math.sqrt(Math.abs(u));
  return (u > 0 ? Math.atanh(root) : Math.atan(root)) / root;
}

export const card = defineCard({
  id: 'bondConductivityWithFilament',
  title: 'Bond line with spacer filaments, columns',
  equation:
    'k = k_a·(1 − s) + k_c·s; s = d·ℓ/A; k_c = (π/2 − 2·w·k_f/k_a)/(1/k_f − 1/k_a); w = artanh(√u)/√u; u = 1 − 2·k_f/k_a; w = arctan(√(−u))/√(−u) where u is below nil',
  result: { name: 'conductivity of the bond line', unit: 'W/(m·K)', symbol: 'k' },
  symbols: {
    adhesive_WPerMK: 'k_a',
    filament_WPerMK: 'k_f',
    filament_m: 'd',
    filamentLength_m: 'ℓ',
    area_m2: 'A',
  },
  source: { key: 'ownComputation', where: 'round filament cut into straight columns' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.02, from: 'common practice' },
  assumes: ['perfectBond', 'straightHeatFlow'],
  example: {
    given: {
      adhesive_WPerMK: 1,
      filament_WPerMK: 0.25,
      filament_m: 0.15e-3,
      filamentLength_m: 12e-3,
      area_m2: 20e-6,
    },
    printed: '0.938',
    kind: 'computed elsewhere',
    where: 'two 0.15 mm nylon filaments × 6 mm in 20 mm², numerical integration',
  },
  evaluate: bondConductivityWithFilament,
});
