import { defineCard } from '../card.ts';

/**
 * Nusselt number on the fin gap of a plate-fin sink, on the INLET temperature: its low-flow limit is the warming of the
 * air itself, so nothing may be added for that. Second opinion beside the channel model, never used together with it.
 * @param reynoldsStar (ρ·V·b/μ)·(b/L)
 */
export function nusseltPlateFinInletBasis(reynoldsStar: number, prandtl: number): number {
  const developed = 0.5 * reynoldsStar * prandtl;
  const root = Math.sqrt(reynoldsStar);
  const boundary = 0.664 * root * Math.cbrt(prandtl) * Math.sqrt(1 + 3.65 / root);
  return 1 / Math.cbrt(1 / (developed * developed * developed) + 1 / (boundary * boundary * boundary));
}

export const card = defineCard({
  id: 'nusseltPlateFinInletBasis',
  title: 'Plate-fin sink on its entering air',
  equation: 'Nu_b = ((Re*·Pr/2)^(−3) + (0.664·√(Re*)·Pr^(1/3)·√(1 + 3.65/√(Re*)))^(−3))^(−1/3)',
  result: { name: 'Nusselt number on the fin gap, inlet basis', unit: '1', symbol: 'Nu_b' },
  symbols: { reynoldsStar: 'Re*', prandtl: 'Pr' },
  source: { key: 'teertstra2000', where: 'composite of channel and boundary layer' },
  range: { reynoldsStar: [0.26, 175], prandtl: [0.6, 0.8] },
  rangeFrom: 'memory',
  scatter: { sigma: 0.03, from: 'computed' },
  assumes: ['uniformWallTemperature', 'uniformInlet'],
  example: {
    given: { reynoldsStar: 10, prandtl: 0.71 },
    printed: '2.4210',
    kind: 'worked again',
    where: 'computed; boundary-layer solution 2.4673',
  },
  evaluate: ({ reynoldsStar, prandtl }) => nusseltPlateFinInletBasis(reynoldsStar, prandtl),
});
