import { defineCard } from '../card.ts';

/** Geometry part of the composite: worked once a channel, so that the part that follows the flow is cheap. */
export interface DevelopingChannel {
  /** Fifth powers of the Lévêque constant and of the developed Nusselt number, on √A. */
  readonly leveque5: number;
  readonly developed5: number;
}

export function fifthPower(value: number): number {
  const square = value * value;
  return square * square * value;
}

const leveque = fifthPower(1.5 * 0.409);
const developed = 3.24 / (8 * Math.sqrt(Math.PI));
const fifthOfPi = fifthPower(Math.PI);

/** @param aspect short over long side */
export function prepareDeveloping(aspect: number): DevelopingChannel {
  const root = Math.sqrt(aspect);
  const friction =
    12 / (root * (1 + aspect) * (1 - ((192 * aspect) / fifthOfPi) * Math.tanh(Math.PI / (2 * aspect))));
  const third = Math.cbrt(friction);
  return {
    leveque5: leveque * friction * third * third,
    developed5: fifthPower(developed * friction) / root,
  };
}

/** Developed Nusselt number between plates of one temperature, on the hydraulic diameter: no rectangle does better. */
const developedBetweenPlates = 7.541;

/** The same, but held to the plates, which the composite overshoots in very narrow slots. @param aspect short over long side */
export function prepareHeldToPlates(aspect: number): DevelopingChannel {
  const { leveque5, developed5 } = prepareDeveloping(aspect);
  const plates5 = fifthPower((developedBetweenPlates * (1 + aspect)) / (2 * Math.sqrt(aspect)));
  return { leveque5, developed5: Math.min(developed5, plates5) };
}

const prandtlConstant = 1.664 ** 4.5;
const logBoundary = Math.log(2 * 0.564);

/**
 * Mean Nusselt number on √A of laminar flow that develops in velocity and temperature together, walls at one
 * temperature (composite of boundary layer, Lévêque and developed limits). On the log-mean basis: the warming of the air
 * counts beside it. Worked in logarithms: a power costs three times as much.
 * @param zStar L/(√A·Re_√A·Pr)
 */
export function nusseltDeveloping(channel: DevelopingChannel, zStar: number, prandtl: number): number {
  const logZ = Math.log(zStar);
  const long = 0.2 * Math.log(channel.leveque5 * Math.exp((-5 / 3) * logZ) + channel.developed5);
  const spread = 1 + prandtlConstant * Math.sqrt(prandtl * Math.sqrt(prandtl));
  const boundary = logBoundary - (2 / 9) * Math.log(spread) - 0.5 * logZ;
  const m = 2.27 + 1.65 * Math.cbrt(prandtl);
  const more = Math.max(long, boundary);
  const less = Math.min(long, boundary);
  return Math.exp(more + Math.log1p(Math.exp(m * (less - more))) / m);
}

export const card = defineCard({
  id: 'nusseltDeveloping',
  title: 'Heat transfer in a rectangular channel from the entrance on, laminar',
  equation:
    'Nu_A = ((A⁵ + D⁵)^(m/5) + B^m)^(1/m); A = 1.5·0.409·(F/z*)^(1/3); B = 2·0.564/(√(z*)·(1 + (1.664·Pr^(1/6))^4.5)^(2/9)); D = min(3.24·F/(8·√π·ε^0.1), 7.541·(1 + ε)/(2·√ε)); F = 12/(√ε·(1 + ε)·(1 − 192·ε/π⁵·tanh(π/(2·ε)))); m = 2.27 + 1.65·Pr^(1/3)',
  result: { name: 'mean Nusselt number on √A, log-mean basis', unit: '1', symbol: 'Nu_A' },
  symbols: { aspect: 'ε', zStar: 'z*', prandtl: 'Pr' },
  source: {
    key: 'muzychkaYovanovich2004',
    where: 'even wall temperature, mean: C₁ 3.24, C₂ 1.5, C₃ 0.409, C₄ 2',
  },
  range: { aspect: [0.01, 1], zStar: [1e-4, 10], prandtl: [0.1, 1000] },
  rangeFrom: 'memory',
  scatter: { sigma: 0.07, from: 'computed' },
  assumes: ['uniformWallTemperature', 'uniformInlet', 'smoothWall'],
  example: {
    given: { aspect: 0.25, zStar: 0.01, prandtl: 0.71 },
    printed: '9.365',
    kind: 'worked again',
    where: 'computed independently with the published constants',
  },
  evaluate: ({ aspect, zStar, prandtl }) => nusseltDeveloping(prepareHeldToPlates(aspect), zStar, prandtl),
});
