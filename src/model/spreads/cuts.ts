import { becauseOf, type UsualSpread, within, withinShare } from './usualSpread.ts';

/** Measures that come from a shear, a mill or a hand. */
export const cuts: readonly UsualSpread[] = [
  ...becauseOf({ because: 'sheared and milled in a small shop', source: 'assumption' }, 'box', [
    ['baffle.slotWidth_m', 'slot width', within(2e-4)],
    ['baffle.standOff_m', 'stand-off of the baffle', within(2e-4)],
    ['baffle.sideClearance_m', 'side clearance', within(2e-4)],
    ['baffle.endClearance_m', 'end clearance', within(2e-4)],
    ['baffle.collar_m', 'height of the collar', within(2e-4)],
    ['plenum.height_m', 'height of the plenum', within(2e-4)],
    ['box.length_m', 'length of the box', within(2e-4)],
    ['box.width_m', 'width of the box', within(2e-4)],
    ['box.headroom_m', 'headroom', within(2e-4)],
  ]),
  ...becauseOf({ because: 'glued by hand', source: 'assumption' }, 'box', [
    ['baffle.leakGap_m', 'leak under the baffle', within(1e-4)],
    ['plenum.neckAngle_rad', 'neck-down angle', within(Math.PI / 90)],
  ]),
  ...becauseOf({ because: 'slots milled or sawn one by one', source: 'commonPractice' }, 'box', [
    ['sink.finThickness_m', 'thickness of the fins', within(5e-5)],
    ['sink.finHeight_m', 'height of the fins', within(1e-4)],
    ['sink.plate_m', 'thickness of the plates', within(1e-4)],
    ['sink.width_m', 'width of the sinks', within(1e-4)],
  ]),
  ...becauseOf({ because: 'sawn to length', source: 'commonPractice' }, 'box', [
    ['sink.length_m', 'length of the fins', within(2e-4)],
  ]),
  ...becauseOf({ because: 'laid and bent by hand', source: 'assumption' }, 'box', [
    ['bond.filamentLength_m', 'length of filament', withinShare(0.2)],
    ['secondFace.tabLength_m', 'free length of the tabs', within(5e-4)],
    ['secondFace.tabLanding_m', 'landing of the tabs', within(5e-4)],
  ]),
  ...becauseOf({ because: 'sheet as bought, true to about 5 %', source: 'commonPractice' }, 'batch', [
    ['baffle.sheet_m', 'thickness of the baffle', withinShare(0.05)],
    ['box.sheet_m', 'thickness of the walls', withinShare(0.05)],
    ['secondFace.tabThickness_m', 'thickness of the tabs', withinShare(0.05)],
  ]),
];
