import type { Factors } from '../../core/system/input.ts';
import { spreadName } from '../../model/spreads/spreads.ts';
import type { OutputKey, Outputs } from '../../studies/outputs.ts';
import type { Influence, ShareEstimate } from '../../studies/tolerance/result.ts';
import type { Said } from '../amount.ts';
import { plain } from '../format.ts';
import { saidAs, saidPercent, saidQuantity, saidTemperature, saidTimes } from '../said.ts';
import type { UnitSystem } from '../types.ts';
import { fixed, kelvins } from '../words.ts';

/** What the factor of a method multiplies, in a sentence. */
export const factorWords: Readonly<Record<keyof Factors, string>> = {
  channelHeat: 'heat from fins to air',
  channelFriction: 'friction between the fins',
  minorLoss: 'loss at edges and turns',
  slotLoss: 'loss at the baffle slot',
  bondConductivity: 'what the thread does in the bond',
  fanFlow: 'what the fan delivers',
  spreading: 'spreading in the plates',
  standingFan: 'loss of a fan at a stand',
  outsideHeat: 'heat from the outside of the box',
  emissivity: 'radiation between the fins',
};

export function influenceName({ of }: Influence): string {
  if (of.is === 'method') return `method for ${factorWords[of.factor]}`;
  return spreadName(of.path);
}

/** The same as the end of a sentence. */
export function influencePhrase(influence: Influence): string {
  const { of } = influence;
  return of.is === 'method'
    ? `how well ${factorWords[of.factor]} is known`
    : `the ${influenceName(influence)}`;
}

type Say = (value: number, system: UnitSystem) => Said;

const degrees: Say = (T_K, system) => saidTemperature(T_K, system, 1);

export const outputWords: Readonly<Record<OutputKey, readonly [label: string, say: Say]>> = {
  film_K: ['Hottest film', degrees],
  filmMargin_K: [
    'Film below its limit',
    (dT_K, system) => saidAs(kelvins(dT_K, system, 1), dT_K, 'temperatureDifference', system),
  ],
  loadFactor: ['Load up to', (factor) => saidTimes(factor)],
  joint_K: ['Hottest solder joint', degrees],
  bond_K: ['Hottest bond line', degrees],
  plate_K: ['Hottest plate', degrees],
  exhaust_K: ['Exhaust air', degrees],
  flow_m3PerS: ['Air moved', (flow, system) => saidQuantity(flow, 'volumeFlow', system, 3)],
  fanPressure_Pa: ['Fan pressure', (dp, system) => saidQuantity(dp, 'pressure', system, 3)],
  finShare: ['Through the fins', (part) => saidPercent(part)],
  sound_dBA: ['Sound', (level, system) => saidQuantity(level, 'soundLevel', system, 3)],
};
export const outputOrder = Object.keys(outputWords) as (keyof Outputs)[];

/** "97 of 100"; of a thousand or more where a hundred would hide the difference from all or none. */
export function ofSo(share: number): string {
  const rest = Math.min(share, 1 - share);
  const whole = rest === 0 ? 100 : ([100, 1000, 10_000].find((each) => rest * each >= 0.95) ?? 100_000);
  return `${plain(Math.round(share * whole), 6)} of ${plain(whole, 6)}`;
}

/** Both ends of where a share of a hundred lies. */
export function betweenWords({ low, high }: ShareEstimate): string {
  const decimals = high - low < 0.002 ? 2 : 1;
  return `${fixed(100 * low, decimals)} to ${fixed(100 * high, decimals)}`;
}

const numerals = [
  '',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

export function numeral(count: number): string {
  return numerals[count] ?? plain(count, 6);
}
