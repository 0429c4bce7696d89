import type { PassageKind } from '../core/system/outcome.ts';

/** What can be chosen in the drawing and has fields of its own. */
export type PartId =
  | 'fan'
  | 'guard'
  | 'filter'
  | 'neck'
  | 'plenum'
  | 'baffle'
  | 'sinks'
  | 'resistors'
  | 'bonds'
  | 'secondFace'
  | 'box'
  | 'outlet'
  | 'room'
  | 'load'
  | 'limits'
  | 'extras'
  | 'cutting';

/** Metres in the plane of the view: u to the right, v downward, as a drawer wants it. */
export interface Spot {
  readonly u_m: number;
  readonly v_m: number;
}

export interface Box extends Spot {
  readonly width_m: number;
  readonly height_m: number;
}

export type ShapeRole =
  | 'wall'
  | 'baffle'
  | 'slot'
  | 'collar'
  | 'fanFrame'
  | 'fanOpening'
  | 'fanHub'
  | 'guard'
  | 'filter'
  | 'neck'
  | 'plenum'
  | 'plate'
  | 'fins'
  | 'fin'
  | 'chip'
  | 'bond'
  | 'tab'
  | 'outlet';

export interface DrawingShape {
  readonly part: PartId;
  readonly role: ShapeRole;
  /** Sink or position number from 0, where the shape belongs to one. */
  readonly index: number | null;
  readonly box: Box;
  /** Corners where the shape is not a rectangle; `box` is then its bounds. */
  readonly corners: readonly Spot[] | null;
  /** Temperature in words, and 0 (room) … 1 (the film's limit) for a ramp; `null` where none is computed. */
  readonly temperature: string | null;
  readonly warmth: number | null;
  /** A resistor that is switched off. */
  readonly off: boolean;
}

/** A ribbon of air; all widths in one scale, so the branches add up to the trunk. */
export interface Stream {
  readonly id: string;
  readonly kind: PassageKind;
  readonly index: number;
  readonly share: number;
  readonly width_m: number;
  readonly points: readonly Spot[];
}

/** A measure in words: what a button on the drawing shows, says and edits. */
export interface Measure {
  readonly id: string;
  readonly part: PartId;
  /** Place of the input in the design, `null` for a measure that follows from others. */
  readonly path: string | null;
  /** Short, for the sheet: "side gap". */
  readonly label: string;
  readonly text: string;
  /** From the fullest to the value alone, for a drawing that may have no room: "side clearance 0.8 mm", …, "0.8 mm". */
  readonly words: readonly [full: string, short: string, value: string];
  /** With the name of the field, for those who do not see where it stands: "Side clearance, 0.8 mm". */
  readonly name: string;
  /** What is drawn for it has the size it says. */
  readonly toScale: boolean;
}

export interface Dimension extends Measure {
  readonly from: Spot;
  readonly to: Spot;
  /** Where the dimension line stands beside its measure. */
  readonly side: 'left' | 'right' | 'above' | 'below';
  /** A line between its ends, or a leader to a spot too small for one. */
  readonly drawnAs: 'line' | 'leader';
  /** u at which a leader downward best leaves the view, where the same is found all along the row; `null`: at its middle. */
  readonly clear_m: number | null;
  /** Edges that lie below others and belong to this measure; to be dashed. */
  readonly hidden: readonly (readonly [Spot, Spot])[];
  /** `main`: on every drawing; `more`: where there is room. */
  readonly prominence: 'main' | 'more';
}

/** A view without its dimensions, which come after the first paint. */
export interface ViewShapes {
  readonly bounds: Box;
  readonly shapes: readonly DrawingShape[];
  readonly streams: readonly Stream[];
}

export interface DrawingView extends ViewShapes {
  readonly dimensions: readonly Dimension[];
}

export interface DrawingPart {
  readonly part: PartId;
  /** Accessible name with the measure that matters and the temperature: "Sinks, 9, 57 °C at the hottest". */
  readonly name: string;
  /** Where it can be hit in each view; `null` where it does not show. */
  readonly section: Box | null;
  readonly plan: Box | null;
}

/** The box to scale: cut along the row seen from the side, and the row seen from above. Bonds are drawn thicker than they are. */
export interface DrawingShapes {
  readonly section: ViewShapes;
  readonly plan: ViewShapes;
  readonly parts: readonly DrawingPart[];
  readonly caption: string;
  /** What marks a measure that is drawn other than it says, on the screen. */
  readonly underlined: string;
  /** Width of the whole air stream in the section's scale. */
  readonly trunk_m: number;
}

export interface DrawingModel extends DrawingShapes {
  readonly section: DrawingView;
  readonly plan: DrawingView;
}
