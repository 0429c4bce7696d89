import type { Design } from '../../model/design.ts';
import { bafflePanels } from './bafflePanels.ts';
import { bayPanels } from './bayPanels.ts';
import { type BoxMeasures, boxMeasures } from './boxMeasures.ts';
import { fanEndPanels } from './fanEndPanels.ts';
import { type Fault, faultsOf } from './faults.ts';
import { jointsOf } from './joints.ts';
import { type MilledFeature, milledFeatures } from './mills.ts';
import { type Panel, type PanelKey, roughSize } from './panel.ts';

/** Sheet of one thickness for all boxes. */
export interface SheetNeed {
  readonly thickness_m: number;
  readonly panels: number;
  /** Of the rough pieces, waste between them not counted. */
  readonly area_m2: number;
  /** Fewer stock sheets than this cannot be enough. */
  readonly leastSheets: number;
  readonly largest: PanelKey;
  /** Panels whose rough piece is larger than a stock sheet, either way round. */
  readonly tooLarge: readonly PanelKey[];
}

export interface CutList {
  readonly measures: BoxMeasures;
  readonly panels: readonly Panel[];
  readonly milled: readonly MilledFeature[];
  readonly sheets: readonly SheetNeed[];
  readonly faults: readonly Fault[];
}

/** The panels of one box, what mills they ask for, and the sheet for all boxes. Geometry alone; total for every design. */
export function cutList(design: Design): CutList {
  const measures = boxMeasures(design);
  const joints = jointsOf(design);
  const panels = [
    ...bayPanels(design, measures, joints),
    ...fanEndPanels(design, measures),
    ...bafflePanels(design, measures, joints),
  ];
  return {
    measures,
    panels,
    milled: milledFeatures(panels, design.cutting.cutter_m),
    sheets: sheetNeeds(design, panels),
    faults: faultsOf(design, measures, joints, panels),
  };
}

function sheetNeeds({ cutting }: Design, panels: readonly Panel[]): SheetNeed[] {
  const { boxes, edge_m, stockLength_m, stockWidth_m } = cutting;
  const stock_m = [Math.max(stockLength_m, stockWidth_m), Math.min(stockLength_m, stockWidth_m)] as const;
  const thicknesses = [...new Set(panels.map(({ thickness_m }) => thickness_m))].sort((a, b) => a - b);
  return thicknesses.map((thickness_m) => {
    const rough = panels
      .filter((panel) => panel.thickness_m === thickness_m)
      .map((panel) => {
        const { length_m, width_m } = roughSize(panel, edge_m);
        return { ...panel, length_m, width_m, area_m2: length_m * width_m };
      });
    const area_m2 = boxes * rough.reduce((sum, panel) => sum + panel.perBox * panel.area_m2, 0);
    const largest = rough.reduce((most, panel) => (panel.area_m2 > most.area_m2 ? panel : most));
    return {
      thickness_m,
      panels: boxes * rough.reduce((sum, { perBox }) => sum + perBox, 0),
      area_m2,
      leastSheets: Math.ceil((area_m2 / (stock_m[0] * stock_m[1])) * (1 - 1e-12)),
      largest: largest.key,
      tooLarge: rough
        .filter(
          ({ length_m, width_m }) =>
            Math.max(length_m, width_m) > stock_m[0] * (1 + 1e-9) ||
            Math.min(length_m, width_m) > stock_m[1] * (1 + 1e-9),
        )
        .map(({ key }) => key),
    };
  });
}
