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
    'Nu_√A = {[(C₂C₃(fRe_√A/z*)^⅓)⁵ + (C₁·fRe_√A/(8√π·ε^0.1))⁵]^(m/5) + (C₄·f(Pr)/√z*)^m}^(1/m), m = 2.27 + 1.65·Pr^⅓',
  result: { name: 'mean Nusselt number on √A, log-mean basis', unit: '1' },
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
  evaluate: ({ aspect, zStar, prandtl }) => nusseltDeveloping(prepareDeveloping(aspect), zStar, prandtl),
});
