import type { Fault, FaultCode, FaultData } from '../studies/panels/faults.ts';
import type { CutOutKind, PanelKey } from '../studies/panels/panel.ts';
import { amount, plain, quantity, unitOf } from './format.ts';
import type { UnitSystem } from './types.ts';

export const panelNames: Readonly<Record<PanelKey, string>> = {
  floor: 'Floor',
  side: 'Side wall',
  end: 'End wall',
  front: 'Front wall',
  top: 'Top',
  fanPlate: 'Fan plate',
  neckTop: 'Neck-down, top or bottom',
  neckSide: 'Neck-down, side',
  baffle: 'Baffle',
  collarSide: 'Collar, long strip',
  collarEnd: 'Collar, short strip',
};

export const panelPurposes: Readonly<Record<PanelKey, string>> = {
  floor: 'under all walls',
  side: 'along the row, on the floor',
  end: 'between the side walls, far from the fan',
  front: 'between the side walls, over the mouth of the plenum',
  top: 'on all walls, round the outlet',
  fanPlate: 'carries the fan',
  neckTop: 'from the fan plate to the front, over the edges of the sides',
  neckSide: 'from the fan plate to the front, between top and bottom',
  baffle: 'between plenum and sinks',
  collarSide: 'on the baffle, beside the sinks',
  collarEnd: 'on the baffle, before and behind the row',
};

export const cutOutNames: Readonly<Record<CutOutKind, string>> = {
  fanOpening: 'fan opening',
  mouth: 'fan opening, as far as the mouth',
  hub: 'hub circle, scribed only',
  fanScrew: 'fan screw',
  slot: 'slot under the fins',
  outlet: 'outlet',
  wireHole: 'wire hole',
  notch: 'notch for a tab',
  mortise: 'slot for a tab of the baffle',
};

/** Decimals that a shop can measure. */
const decimals: Readonly<Record<UnitSystem, number>> = { metric: 2, inch: 3 };

/** A length to cut, without its unit: a hundredth of a millimetre or a thousandth of an inch. */
export function cutLength(value_m: number, system: UnitSystem): string {
  return plain(Number(amount(value_m, 'length', system).toFixed(decimals[system])), 9);
}

export function cutLengthWithUnit(value_m: number, system: UnitSystem): string {
  return `${cutLength(value_m, system)}\u202f${unitOf('length', system)}`;
}

interface Say {
  readonly length: (value_m: number) => string;
  readonly angle: (value_rad: number) => string;
}

type Words = { readonly [C in FaultCode]: (data: FaultData[C], say: Say) => string };

/** What cannot be, then what would do. */
const faultWords: Words = {
  mouthTooSmall: ({ fanWidth_m, fanHeight_m, width_m, height_m }, say) =>
    `Without a neck-down the fan opening, ${say.length(fanWidth_m)} wide and ${say.length(fanHeight_m)} high, meets a mouth of ${say.length(width_m)} by ${say.length(height_m)}: its rim blows against the plate. Give the neck-down a length.`,
  neckTooSteep: ({ slope_rad }, say) =>
    `The panels of the neck-down would slope by ${say.angle(slope_rad)} against the axis, too steep to bevel. They are left out: make the neck-down longer, or leave it away.`,
  collarHasNoRoom: ({ where, room_m, sheet_m }, say) =>
    `${where === 'side' ? 'Beside' : 'Beyond the ends of'} the row ${say.length(room_m)} is left for a collar of ${say.length(sheet_m)} sheet. Its strips there are left out: make the box ${where === 'side' ? 'wider' : 'longer'} by ${say.length(2 * (sheet_m - room_m))}, or the sheet thinner.`,
  slotPastBaffle: ({ along, slot_m, baffle_m }, say) =>
    `The slot is ${say.length(slot_m)} ${along ? 'long' : 'wide'} and the baffle only ${say.length(baffle_m)}: no sheet is left round it.`,
  slotUnderCollar: ({ slot_m, collar_m }, say) =>
    `The slot, ${say.length(slot_m)} wide, reaches under the collar, which is ${say.length(collar_m)} wide inside: its strips would stand on nothing. Make the slot no wider than that.`,
  pitchUnknown: ({ frame_m }, say) =>
    `No usual screw pitch is known for a fan frame of ${say.length(frame_m)}: the plate has no screw holes for it. Enter the pitch as measured.`,
  pitchPastFrame: ({ pitch_m, frame_m }, say) =>
    `Screws ${say.length(pitch_m)} apart lie outside a frame of ${say.length(frame_m)}.`,
  noTabs: ({ edge_m, tab_m }, say) =>
    `An edge of ${say.length(edge_m)} is too short for a tab of ${say.length(tab_m)} and has none: butt it, or make the tabs at most ${say.length(edge_m / 2)} long.`,
  outside: ({ panel, kind }) =>
    `${panelNames[panel]}: the ${cutOutNames[kind]} does not lie within the panel.`,
  meet: ({ panel, one, other }) =>
    one === other
      ? `${panelNames[panel]}: two cut-outs meet, each ${cutOutNames[one]}.`
      : `${panelNames[panel]}: ${cutOutNames[one]} and ${cutOutNames[other]} meet.`,
};

export function wordFault(fault: Fault, system: UnitSystem): string {
  const say: Say = {
    length: (value_m) => cutLengthWithUnit(value_m, system),
    angle: (value_rad) => quantity(value_rad, 'angle', system, 3),
  };
  // Code and data belong together by the type of Fault, which indexing by a union cannot follow.
  const sentence = faultWords[fault.code] as (data: unknown, say: Say) => string;
  return sentence(fault, say);
}
