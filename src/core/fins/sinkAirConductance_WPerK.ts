import { defineCard } from '../card.ts';

/**
 * Conductance from the mean air in a sink to the air that enters it, such that plate → mean air (UA) and mean air →
 * entering air in series give exactly the heat of a sink at one temperature with warming air, ε·ṁc_p with ε = 1 − e^−NTU.
 * Between 2ṁc_p (much air) and ṁc_p (little), nil without air. This is the one place where the warming of the air enters.
 */
export function sinkAirConductance_WPerK(UA_WPerK: number, capacityFlow_WPerK: number): number {
  if (!(capacityFlow_WPerK > 0)) return 0;
  const ntu = UA_WPerK / capacityFlow_WPerK;
  if (ntu < 1e-3) return 2 * capacityFlow_WPerK * (1 - (ntu / 6) * (1 - ntu / 6));
  const effectiveness = -Math.expm1(-ntu);
  return (capacityFlow_WPerK * effectiveness) / (1 - effectiveness / ntu);
}

export const card = defineCard({
  id: 'sinkAirConductance',
  title: 'Warming of the air along a sink',
  equation: 'G = C·ε/(1 − ε/N); ε = 1 − exp(−N); N = UA/C',
  result: { name: 'conductance, mean to entering air', unit: 'W/K', symbol: 'G' },
  symbols: { UA_WPerK: 'UA', capacityFlow_WPerK: 'C' },
  source: { key: 'incropera', where: 'ch. 11, one-stream exchanger; rearranged' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.001, from: 'computed' },
  assumes: ['uniformWallTemperature', 'uniformInlet'],
  example: {
    given: { UA_WPerK: 2, capacityFlow_WPerK: 2 },
    printed: '3.43656',
    kind: 'worked again',
    where: 'worked by hand: 1/(1/2 + 1/G) = 2·(1 − 1/e) = 1.26424',
  },
  evaluate: ({ UA_WPerK, capacityFlow_WPerK }) => sinkAirConductance_WPerK(UA_WPerK, capacityFlow_WPerK),
});
