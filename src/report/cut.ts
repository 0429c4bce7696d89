import type { CutOutKind, FlatSpot, PanelKey } from '../studies/panels/panel.ts';

/** One kind of panel. Lengths are texts in `CutReport.unit`, so that a column says its unit once. */
export interface CutPanel {
  readonly key: PanelKey;
  /** Letter to write on the piece. */
  readonly mark: string;
  readonly name: string;
  /** Where it goes. */
  readonly purpose: string;
  /** Thickness and plastic. */
  readonly sheet: string;
  readonly length: string;
  readonly width: string;
  readonly roughLength: string;
  readonly roughWidth: string;
  readonly perBox: number;
  readonly inAll: number;
  /** What its outline does not say, empty where that is nothing. */
  readonly remark: string;
  readonly pattern: FlatPattern;
}

/** A panel as it lies on the bench, inside face up; x to the right, y up from its lower left corner. */
export interface FlatPattern {
  readonly length_m: number;
  readonly width_m: number;
  readonly corners: readonly FlatSpot[];
  readonly cutOuts: readonly PatternCutOut[];
  readonly lengthText: string;
  /** At the left edge, and at the right one where that is another length. */
  readonly leftText: string;
  readonly rightText: string | null;
  readonly spoken: string;
}

export interface PatternCutOut extends FlatSpot {
  readonly round: boolean;
  readonly width_m: number;
  readonly height_m: number;
  readonly scribed: boolean;
  readonly text: string;
}

export interface CutOutRow {
  readonly mark: string;
  readonly panel: string;
  readonly kind: CutOutKind;
  readonly name: string;
  readonly size: string;
  /** Its middle, from the lower left corner of the finished panel. */
  readonly fromLeft: string;
  readonly fromBelow: string;
}

/** A sloping panel: its parallel edges, how far apart they are, its bevels and all four corners. */
export interface SlopeRow {
  readonly mark: string;
  readonly panel: string;
  readonly fanEdge: string;
  readonly bayEdge: string;
  readonly apart: string;
  readonly endBevel: string;
  readonly longBevel: string;
  /** "0, 11", from left and from below; fan end low and high, then bay end low and high. */
  readonly corners: readonly string[];
}

export interface MillRow {
  readonly mark: string;
  readonly panel: string;
  readonly name: string;
  readonly widest: string;
  /** What the workshop's mill does: "fits, corners of radius 1.5", "too wide". */
  readonly own: string;
}

export interface SheetRow {
  readonly sheet: string;
  readonly panels: number;
  readonly area: string;
  readonly leastSheets: number;
  readonly largest: string;
  readonly fits: string;
}

export interface CutCaution {
  readonly key: string;
  readonly title: string;
  readonly text: string;
}

/** What has to be cut, for how many boxes. */
export interface CutReport {
  readonly sentence: string;
  /** Symbol of the unit of all its lengths. */
  readonly unit: string;
  /** Why the panels do not make the box; empty where they do. */
  readonly faults: readonly string[];
  /** Which panel overlaps which: what all sizes rest on. */
  readonly joints: readonly string[];
  /** Mills, corners, and what an error of a cut does to the gaps. */
  readonly fits: readonly string[];
  readonly remarks: readonly string[];
  readonly panels: readonly CutPanel[];
  readonly cutOuts: readonly CutOutRow[];
  readonly slopes: readonly SlopeRow[];
  readonly mills: readonly MillRow[];
  readonly sheets: readonly SheetRow[];
  readonly cautions: readonly CutCaution[];
}
