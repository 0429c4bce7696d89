import {
  aroundShare,
  becauseOf,
  pointed,
  skewed,
  type UsualSpread,
  within,
  withinShare,
} from './usualSpread.ts';

/** What things are made of, and how well they are joined. */
export const stuffs: readonly UsualSpread[] = [
  ...becauseOf({ because: 'line as sold, and how far it is pressed', source: 'commonPractice' }, 'box', [
    ['bond.filament_m', 'thickness of the bond', aroundShare(0.1)],
  ]),
  ...becauseOf({ because: 'samples against the data sheet', source: 'materialHandbook' }, 'batch', [
    ['bond.sheetK_WPerMK', 'conductivity of the bond', skewed(0.2)],
    ['parts[].coating_WPerMK', 'conductivity of the coating', skewed(0.2)],
  ]),
  ...becauseOf({ because: 'how the adhesive spreads', source: 'assumption' }, 'box', [
    ['bond.voidShare', 'voids in the bond', pointed(0.05)],
    ['bond.contact_m2KPerW', 'contact resistance of the bond', skewed(0.3)],
    ['secondFace.solder_m', 'thickness of the solder', skewed(0.3)],
  ]),
  ...becauseOf({ because: 'makers and grades', source: 'materialHandbook' }, 'batch', [
    ['bond.filament_WPerMK', 'conductivity of the filament', withinShare(0.1)],
    ['parts[].ceramic_WPerMK', 'conductivity of the ceramic', withinShare(0.15)],
    ['secondFace.tab_WPerMK', 'conductivity of the tabs', withinShare(0.05)],
    ['box.sheet_WPerMK', 'conductivity of the walls', withinShare(0.15)],
    ['box.sheetEmissivity', 'emissivity of the walls', withinShare(0.05)],
    ['sink.emissivity', 'emissivity of the sinks', withinShare(0.1)],
  ]),
  ...becauseOf({ because: 'temper and lot', source: 'aluminumAssociation' }, 'batch', [
    ['sink.k_WPerMK', 'conductivity of the sinks', withinShare(0.05)],
  ]),
  ...becauseOf({ because: 'printed and fired thickness', source: 'assumption' }, 'batch', [
    ['parts[].coating_m', 'thickness of the coating', skewed(0.3)],
  ]),
  ...becauseOf({ because: 'chips as broken and fired', source: 'commonPractice' }, 'batch', [
    ['parts[].length_m', 'length of the chips', within(1.5e-4)],
    ['parts[].width_m', 'width of the chips', within(1.5e-4)],
    ['parts[].thickness_m', 'thickness of the chips', within(1e-4)],
  ]),
];
