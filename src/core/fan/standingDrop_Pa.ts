import { defineCard } from '../card.ts';

/**
 * Pressure that a fan takes while it stands still, on the velocity between hub and rim, either way. Blades at rest are a coarse
 * grid set askew; how many velocity heads they take nobody states, and fans differ widely.
 * @param slow_mPerS below about this speed the law turns linear, as every loss of the network does
 */
export function standingDrop_Pa(
  loss: number,
  velocity_mPerS: number,
  rho_kgPerM3: number,
  slow_mPerS = 0,
): number {
  return (
    0.5 *
    rho_kgPerM3 *
    loss *
    velocity_mPerS *
    Math.sqrt(velocity_mPerS * velocity_mPerS + slow_mPerS * slow_mPerS)
  );
}

export const card = defineCard({
  id: 'standingFan',
  title: 'A fan that stands still',
  equation: 'Δp = 0.5·K·ρ·v·√(v² + v_0²); v between hub and rim',
  result: { name: 'pressure', unit: 'Pa', symbol: 'Δp' },
  symbols: { loss: 'K', velocity_mPerS: 'v', rho_kgPerM3: 'ρ', slow_mPerS: 'v_0' },
  source: { key: 'commonPractice', where: 'blades at rest as a coarse grid, K about 3 to 30' },
  range: { loss: [3, 30] },
  rangeFrom: 'common practice',
  scatter: { sigma: 0.5, from: 'common practice' },
  assumes: ['turbulentLoss'],
  example: {
    given: { loss: 8, velocity_mPerS: 0.5, rho_kgPerM3: 1.2, slow_mPerS: 0 },
    printed: '1.2',
    kind: 'worked again',
    where: 'worked by hand',
  },
  evaluate: ({ loss, velocity_mPerS, rho_kgPerM3, slow_mPerS }) =>
    standingDrop_Pa(loss, velocity_mPerS, rho_kgPerM3, slow_mPerS),
});
