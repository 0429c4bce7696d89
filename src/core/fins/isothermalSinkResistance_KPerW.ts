import { defineCard } from '../card.ts';

/** Plate over entering air, per watt, of a sink at one temperature: 1/(ε·ṁc_p). Finite for any positive flow. */
export function isothermalSinkResistance_KPerW(UA_WPerK: number, capacityFlow_WPerK: number): number {
  return 1 / (capacityFlow_WPerK * -Math.expm1(-UA_WPerK / capacityFlow_WPerK));
}

export const card = defineCard({
  id: 'isothermalSinkResistance',
  title: 'Sink at one temperature with warming air',
  equation: 'R = 1/(ε·C); ε = 1 − exp(−UA/C)',
  result: { name: 'thermal resistance', unit: 'K/W', symbol: 'R' },
  symbols: { UA_WPerK: 'UA', capacityFlow_WPerK: 'C' },
  source: { key: 'incropera', where: 'ch. 11, effectiveness of one stream' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.001, from: 'computed' },
  assumes: ['uniformWallTemperature'],
  example: {
    given: { UA_WPerK: 0.8, capacityFlow_WPerK: 2.38 },
    printed: '1.47183',
    kind: 'worked again',
    where: 'computed independently',
  },
  evaluate: ({ UA_WPerK, capacityFlow_WPerK }) =>
    isothermalSinkResistance_KPerW(UA_WPerK, capacityFlow_WPerK),
});
