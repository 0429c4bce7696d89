import { defineCard } from '../card.ts';
import { evaluatePchip, preparePchip } from '../solve/pchip.ts';

const xStar = [0.0005, 0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2];
const nusselt = [34.17, 25.17, 18.84, 13.29, 10.675, 9.133, 8.177, 7.859, 7.7];
const curve = preparePchip(xStar.map(Math.log), nusselt.map(Math.log));
const out = new Float64Array(2);

/**
 * Mean Nusselt number between plates at one temperature, air, velocity and temperature developing together: a table from
 * an own boundary-layer solution, interpolated in logarithms; beyond its ends the flat plate and developed limits.
 * Reference for the composite; log-mean basis. @param at L/(D_h·Re·Pr)
 */
export function nusseltPlatesDeveloping(at: number): number {
  if (at < (xStar[0] as number)) return (nusselt[0] as number) * Math.sqrt((xStar[0] as number) / at);
  if (at > 0.2) return 7.541 + (0.159 * 0.2) / at;
  evaluatePchip(curve, Math.log(at), out);
  return Math.exp(out[0] as number);
}

export const card = defineCard({
  id: 'nusseltPlatesDeveloping',
  title: 'Heat transfer between plates from the entrance on, air, laminar',
  equation: 'Nu = table(x*); Pr 0.71',
  result: { name: 'mean Nusselt number on the hydraulic diameter, log-mean basis', unit: '1', symbol: 'Nu' },
  symbols: { xStar: 'x*' },
  source: { key: 'ownComputation', where: 'boundary-layer marching, extrapolated to no step' },
  range: { xStar: [0.0005, 0.2] },
  rangeFrom: 'computed',
  scatter: { sigma: 0.005, from: 'computed' },
  assumes: ['uniformWallTemperature', 'uniformInlet'],
  example: {
    given: { xStar: 0.01 },
    printed: '10.675',
    kind: 'worked again',
    where: 'a knot of the table itself; a second, coarser marching gives 10.680',
  },
  evaluate: (given) => nusseltPlatesDeveloping(given.xStar),
});
