import type { Factors, SystemInput } from '../../core/system/input.ts';
import type { Unknown } from './types.ts';

/**
 * An unknown as it is fitted: a factor by its logarithm, so that it stays above nil; the leak in millimetres, which may be none.
 * Either way 1 is as much as one may be wrong by and still believe it, and the scale that all are weighed on.
 */
export interface FittedUnknown {
  readonly factor: keyof Factors | null;
  /** Present value as fitted; `null` where the design has no such thing. */
  readonly read: (input: SystemInput) => number | null;
  readonly write: (input: SystemInput, fitted: number) => SystemInput;
  /** The unknown itself, factor or metres, and back. */
  readonly toValue: (fitted: number) => number;
  readonly low: number;
  readonly high: number;
  /** Step of differences. */
  readonly step: number;
  /** In a design of 1 % more, or 0.1 mm more: change of what is fitted. */
  readonly little: number;
}

/** One metre in the unit that the leak is fitted in. */
const perMetre = 1000;
const mostLeak_m = 0.005;
/** Factors beyond these are no scatter of a method: something else is wrong. */
const mostFactor = 20;

const factorOf = (factor: keyof Factors, inDesign: (input: SystemInput) => boolean): FittedUnknown => ({
  factor,
  read: (input) => (inDesign(input) ? Math.log(input.factors[factor]) : null),
  write: (input, fitted) => ({ ...input, factors: { ...input.factors, [factor]: Math.exp(fitted) } }),
  toValue: Math.exp,
  low: -Math.log(mostFactor),
  high: Math.log(mostFactor),
  step: 0.01,
  little: Math.log(1.01),
});

const always = () => true;
const hasBaffle = ({ baffle }: SystemInput) => baffle !== null;

const leak: FittedUnknown = {
  factor: null,
  read: ({ baffle }) => (baffle ? baffle.leakGap_m * perMetre : null),
  write: (input, fitted) =>
    input.baffle ? { ...input, baffle: { ...input.baffle, leakGap_m: fitted / perMetre } } : input,
  toValue: (fitted) => fitted / perMetre,
  low: 0,
  high: mostLeak_m * perMetre,
  step: 0.02,
  little: 0.1,
};

export const fittedUnknowns: Readonly<Record<Unknown, FittedUnknown>> = {
  bond: factorOf('bondConductivity', always),
  leak,
  slot: factorOf('slotLoss', hasBaffle),
  fan: factorOf('fanFlow', always),
  emissivity: factorOf('emissivity', always),
};

/** Standard uncertainties in the half width of an interval of 95 % of a normal distribution. */
export const coverage = 1.959964;

/** An unknown whose 95 % are wider than this, as fitted, is not told: a factor of e, a millimetre of leak. */
export const believable = 1;

/** Half width of 95 %, as told: relative for a factor, metres for the leak. @param sigma of what is fitted */
export function withinOf(unknown: Unknown, sigma: number): number {
  return unknown === 'leak' ? (coverage * sigma) / perMetre : Math.sinh(Math.min(50, coverage * sigma));
}

/** The other way: one standard uncertainty of what is fitted. */
export function sigmaOf(unknown: Unknown, within: number): number {
  return unknown === 'leak' ? (within * perMetre) / coverage : Math.asinh(within) / coverage;
}
