import {
  around,
  aroundShare,
  becauseOf,
  byTolerance,
  skewed,
  type UsualSpread,
  within,
  withinShare,
} from './usualSpread.ts';

/** Watts, volts and air. */
export const feeds: readonly UsualSpread[] = [
  ...becauseOf({ because: 'its own tolerance', source: 'chipConvention' }, 'resistor', [
    ['parts[].R_Ohm', 'resistance', byTolerance],
  ]),
  ...becauseOf({ because: 'watts go with the resistance', source: 'ohmJoule' }, 'resistor', [
    ['positions[].power_W', 'watts of each resistor', byTolerance],
  ]),
  ...becauseOf({ because: 'tolerance of the supply', source: 'assumption' }, 'box', [
    ['load.supply_V', 'supply of the load', byTolerance],
    ['load.supply_A', 'supply of the load', byTolerance],
    ['fan.supplySag', 'sag of the fan supply', byTolerance],
  ]),
  ...becauseOf({ because: 'copies of one fan, 5 to 10 %', source: 'commonPractice' }, 'box', [
    ['fan.curve[].flow_m3PerS', 'flow of the fan', aroundShare(0.05)],
    ['moreFans[].curve[].flow_m3PerS', 'flow of the other fans', aroundShare(0.05)],
  ]),
  ...becauseOf({ because: 'an ordinary 12 V supply holds 5 %', source: 'commonPractice' }, 'box', [
    ['fan.supply_V', 'fan supply', withinShare(0.05)],
    ['moreFans[].supply_V', 'supply of the other fans', withinShare(0.05)],
  ]),
  ...becauseOf({ because: 'copies of one fan', source: 'commonPractice' }, 'box', [
    ['fan.sound_dBA', 'sound of the fan', around(1.5)],
    ['moreFans[].sound_dBA', 'sound of the other fans', around(1.5)],
  ]),
  ...becauseOf({ because: 'rooms differ, and so do their days', source: 'assumption' }, 'box', [
    ['room.T_K', 'room temperature', within(2)],
  ]),
  ...becauseOf({ because: 'grilles as sold', source: 'assumption' }, 'batch', [
    ['inlet.guard.freeShare', 'free area of the guard', within(0.03)],
    ['outlet.freeShare', 'free area of the outlet', within(0.03)],
  ]),
  ...becauseOf({ because: 'filters and fittings as sold', source: 'commonPractice' }, 'batch', [
    ['inlet.filterLinear_PaSPerM', 'loss of the filter, linear', aroundShare(0.1)],
    ['inlet.filterQuadratic_PaS2PerM2', 'loss of the filter, square', aroundShare(0.1)],
    ['extras[].loss', 'extra losses', skewed(0.2)],
  ]),
];
