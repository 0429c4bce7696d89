import { defineCard } from '../card.ts';

/**
 * Apparent emissivity of the opening of a fin channel as if its walls were evenly lit: exact for shallow channels,
 * too high for deep ones (by 15 % at five gaps deep and ε 0.1, by half at twenty). Kept as the simple second opinion.
 * @param depthRatio channel depth over gap
 */
export function channelEmissivityQuick(emissivity: number, depthRatio: number): number {
  const areaRatio = 1 + 2 * depthRatio;
  return (emissivity * areaRatio) / (1 + emissivity * (areaRatio - 1));
}

export const card = defineCard({
  id: 'channelEmissivityQuick',
  title: 'Fin channel as a radiator, evenly lit walls',
  equation: 'ε_a = 1/(1 + (1/ε − 1)/(1 + 2·λ)); λ is depth over gap',
  result: { name: 'apparent emissivity of the opening', unit: '1', symbol: 'ε_a' },
  symbols: { emissivity: 'ε', depthRatio: 'λ' },
  source: { key: 'siegelHowell', where: 'grey cavity of even radiosity' },
  range: { depthRatio: [0, 2] },
  rangeFrom: 'computed',
  scatter: { sigma: 0.03, from: 'computed' },
  assumes: ['greyDiffuse', 'isothermalPlate', 'longGroove'],
  example: {
    given: { emissivity: 0.1, depthRatio: 20 / 3.9 },
    printed: '0.556',
    kind: 'worked again',
    where: 'gap 3.9 mm, fins 20 mm, ε 0.1, worked by hand',
  },
  evaluate: ({ emissivity, depthRatio }) => channelEmissivityQuick(emissivity, depthRatio),
});
