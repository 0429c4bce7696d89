import type { Design } from '../../../model/design.ts';

/** Place on the paper of a figure, x to the right and y down, in units of a text of 12 and a quarter. */
export type Point = readonly [x: number, y: number];

/** The paper that every figure is drawn on. */
export const paper = { width: 320, height: 144 } as const;

export type Tone =
  | 'metal'
  | 'sheet'
  | 'chip'
  | 'terminal'
  | 'bond'
  | 'solder'
  | 'open'
  | 'filament'
  | 'line'
  | 'hidden';

export interface Shape {
  readonly tone: Tone;
  /** Path of an SVG. */
  readonly d: string;
}

export interface Words {
  /** Where the first row stands, on its foot line. */
  readonly at: Point;
  readonly anchor: 'start' | 'middle' | 'end';
}

export interface LabelPlace extends Words {
  /** In so many rows; one where left out. */
  readonly rows?: number;
}

/** A length between two places; a short one has its arrows outside. */
export interface Span {
  readonly kind: 'span';
  readonly from: Point;
  readonly to: Point;
  /** The places on the part itself that thin lines lead from, where the arrows stand off it. */
  readonly feet?: readonly [Point, Point];
  /** On from `to`, towards the label. */
  readonly tail?: readonly Point[];
}

/** A thing that is counted, or a share: a line from its label to one of them. */
export interface Spot {
  readonly kind: 'spot';
  readonly at: Point;
  readonly way: readonly Point[];
}

/** An angle, between two directions from its corner; degrees, from the right downward. */
export interface Arc {
  readonly kind: 'arc';
  readonly corner: Point;
  readonly radius: number;
  readonly from_deg: number;
  readonly to_deg: number;
}

export type Mark = Span | Spot | Arc;

export interface Measure {
  /** The field it is typed in, indices left out: `parts[].length_m`. */
  readonly path: string;
  /** A field of a list that means the same of another thing of its kind. */
  readonly also?: string;
  readonly mark: Mark;
  readonly label: LabelPlace;
}

/** Words beside the measures: what a thing is, or what a view looks at. */
export interface Remark extends Words {
  readonly words: string;
  readonly spot?: Spot;
}

/** Kinds to choose among, each drawn; the one chosen stands out. */
export interface Kinds {
  readonly path: string;
  readonly options: readonly (LabelPlace & { readonly option: string })[];
}

/** A small picture that shows which measure is which; not to scale. */
export interface Figure {
  /** What it shows, for those who do not see it. */
  readonly shows: string;
  readonly shapes: readonly Shape[];
  /** The way of the air, each with its head at the end. */
  readonly air: readonly (readonly Point[])[];
  readonly measures: readonly Measure[];
  readonly remarks?: readonly Remark[];
  readonly kinds?: Kinds;
}

/** A figure may look different as the design stands. */
export type FigureOf = (design: Design) => Figure;
