import type { Design } from '../model/design.ts';
import { type CutList, cutList } from '../studies/panels/cutList.ts';
import { type CutOut, type Panel, roughSize } from '../studies/panels/panel.ts';
import type {
  CutCaution,
  CutOutRow,
  CutPanel,
  CutReport,
  FlatPattern,
  MillRow,
  SheetRow,
  SlopeRow,
} from './cut.ts';
import { cutRemarks } from './cutRemarks.ts';
import {
  cutLength,
  cutLengthWithUnit,
  cutOutNames,
  panelNames,
  panelPurposes,
  wordFault,
} from './cutWords.ts';
import { plain, quantity, unitOf } from './format.ts';
import type { UnitSystem } from './types.ts';
import { counted, listed } from './words.ts';

/** Letters that nobody takes for a figure. */
const marks = 'ABCDEFGHJKLMNP';

/** The panels of a design in words, rows and pictures. Total: a design that cannot be cut is told so. */
export function cutReport(design: Design, solvent: CutCaution | undefined, system: UnitSystem): CutReport {
  const list = cutList(design);
  const { cutting, box } = design;
  const panels = list.panels.map((panel, index) => cutPanel(panel, index, design, system));
  const named = new Map(panels.map((panel) => [panel.key, panel]));
  const mark = (key: CutPanel['key']) => named.get(key)?.mark ?? '';
  const faults = [
    ...list.faults.map((fault) => wordFault(fault, system)),
    ...shopFaults(list, design, system),
  ];
  const { joints, fits, remarks } = cutRemarks(design, list, system);
  const first = faults[0];
  return {
    sentence:
      first === undefined
        ? answer(list, cutting.boxes, box.material, system)
        : `These panels do not make the box yet. ${first}`,
    unit: unitOf('length', system),
    faults,
    joints,
    fits,
    remarks,
    panels,
    cutOuts: list.panels.flatMap((panel) => cutOutRows(panel, mark(panel.key), system)),
    slopes: list.panels.flatMap((panel) => slopeRows(panel, mark(panel.key), system)),
    mills: list.milled.map(({ panel, kind, widest_m, corner_m, fits: doesFit }): MillRow => {
      const corner = corner_m > 0 ? `, inner corners of radius ${cutLengthWithUnit(corner_m, system)}` : '';
      return {
        mark: mark(panel),
        panel: panelNames[panel],
        name: cutOutNames[kind],
        widest: cutLength(widest_m, system),
        own: doesFit ? `fits${corner}` : 'too wide',
      };
    }),
    sheets: list.sheets.map(
      (need): SheetRow => ({
        sheet: sheetName(need.thickness_m, box.material, system),
        panels: need.panels,
        area: quantity(need.area_m2, 'area', system, 3),
        leastSheets: need.leastSheets,
        largest: `${mark(need.largest)}, ${panelNames[need.largest]}`,
        fits: need.tooLarge.length === 0 ? 'every panel' : `not ${need.tooLarge.map(mark).join(', ')}`,
      }),
    ),
    cautions: cutCautions(design, solvent),
  };
}

function answer(list: CutList, boxes: number, material: string, system: UnitSystem): string {
  const perBox = list.panels.reduce((sum, panel) => sum + panel.perBox, 0);
  const sheets = list.sheets.map(
    ({ thickness_m, area_m2 }) =>
      `${quantity(area_m2, 'area', system, 3)} of ${sheetName(thickness_m, material, system)}`,
  );
  const all = boxes === 1 ? '' : `, ${plain(boxes * perBox, 9)} for ${boxes} boxes`;
  return `${counted(perBox, 'panel')} of ${counted(list.panels.length, 'kind')} make one box${all}: at least ${listed(sheets)}, waste not counted.`;
}

/** Thickness and plastic, which no column may part. */
function sheetName(thickness_m: number, material: string, system: UnitSystem): string {
  return `${cutLengthWithUnit(thickness_m, system)}\u00a0${material}`;
}

/** What the workshop's mill and stock cannot do. */
function shopFaults({ milled, panels, sheets }: CutList, { cutting }: Design, system: UnitSystem): string[] {
  const length = (value_m: number) => cutLengthWithUnit(value_m, system);
  const narrow = milled.find(({ fits }) => !fits);
  const tooLarge = sheets.flatMap((need) => need.tooLarge);
  const large = panels.find(({ key }) => tooLarge.includes(key));
  const found: string[] = [];
  if (narrow)
    found.push(
      `The mill of ${length(cutting.cutter_m)} is too wide for the ${cutOutNames[narrow.kind]} in the ${panelNames[narrow.panel].toLowerCase()}: take one of at most ${length(narrow.widest_m)}.`,
    );
  if (large) {
    const rough = roughSize(large, cutting.edge_m);
    found.push(
      `The ${panelNames[large.key].toLowerCase()}, ${length(rough.length_m)} by ${length(rough.width_m)} in the rough, is larger than the stock sheet of ${length(cutting.stockLength_m)} by ${length(cutting.stockWidth_m)}.`,
    );
  }
  return found;
}

function cutPanel(panel: Panel, index: number, { cutting, box }: Design, system: UnitSystem): CutPanel {
  const { key, perBox, thickness_m, length_m, width_m } = panel;
  const length = (value_m: number) => cutLength(value_m, system);
  const rough = roughSize(panel, cutting.edge_m);
  return {
    key,
    mark: marks[index] ?? `${index + 1}`,
    name: panelNames[key],
    purpose: panelPurposes[key],
    sheet: sheetName(thickness_m, box.material, system),
    length: length(length_m),
    width: length(width_m),
    roughLength: length(rough.length_m),
    roughWidth: length(rough.width_m),
    perBox,
    inAll: perBox * cutting.boxes,
    remark: remarkOn(panel, system),
    pattern: patternOf(panel, system),
  };
}

function remarkOn({ key, taper }: Panel, system: UnitSystem): string {
  if (taper) {
    const bevel = quantity(taper.endBevel_rad, 'angle', system, 3);
    return `inside face; ends bevelled ${bevel}`;
  }
  return key === 'baffle' ? 'play taken off' : '';
}

function patternOf(panel: Panel, system: UnitSystem): FlatPattern {
  const { key, length_m, width_m, corners, cutOuts, taper } = panel;
  const length = (value_m: number) => cutLength(value_m, system);
  const cut = cutOuts.filter(({ kind }) => kind !== 'hub').length;
  return {
    length_m,
    width_m,
    corners,
    cutOuts: cutOuts.map((each) => ({ ...each, scribed: each.kind === 'hub', text: sizeOf(each, system) })),
    lengthText: length(length_m),
    leftText: length(taper ? taper.fanEdge_m : width_m),
    rightText: taper ? length(taper.bayEdge_m) : null,
    spoken: `${panelNames[key]}, ${length(length_m)} by ${cutLengthWithUnit(width_m, system)}${cut > 0 ? `, ${counted(cut, 'cut-out')}` : ''}`,
  };
}

function sizeOf({ round, width_m, height_m }: CutOut, system: UnitSystem): string {
  const wide = cutLength(width_m, system);
  return round ? `⌀\u202f${wide}` : `${wide} × ${cutLength(height_m, system)}`;
}

function cutOutRows({ key, cutOuts }: Panel, mark: string, system: UnitSystem): CutOutRow[] {
  return cutOuts.map((each) => ({
    mark,
    panel: panelNames[key],
    kind: each.kind,
    name: cutOutNames[each.kind],
    size: sizeOf(each, system),
    fromLeft: cutLength(each.x_m, system),
    fromBelow: cutLength(each.y_m, system),
  }));
}

function slopeRows({ key, taper, corners }: Panel, mark: string, system: UnitSystem): SlopeRow[] {
  if (!taper) return [];
  const length = (value_m: number) => cutLength(value_m, system);
  const angle = (value_rad: number) => quantity(value_rad, 'angle', system, 3);
  const [fanLow, bayLow, bayHigh, fanHigh] = corners;
  return [
    {
      mark,
      panel: panelNames[key],
      fanEdge: length(taper.fanEdge_m),
      bayEdge: length(taper.bayEdge_m),
      apart: length(taper.slant_m),
      endBevel: angle(taper.endBevel_rad),
      longBevel: angle(taper.longBevel_rad),
      corners: [fanLow, fanHigh, bayLow, bayHigh].flatMap((spot) =>
        spot ? [`${length(spot.x_m)}, ${length(spot.y_m)}`] : [],
      ),
    },
  ];
}

function cutCautions({ box }: Design, solvent: CutCaution | undefined): CutCaution[] {
  const pvc = /\bpvc\b|vinyl/i.test(box.material)
    ? ' Overheated PVC gives off hydrogen chloride: never cut it with heat or a laser.'
    : '';
  return [
    {
      key: 'cutting',
      title: 'Saw, shear and mill',
      text: 'Wear eye protection, keep the guards on, clamp the sheet and keep hands off it. Strips and sloping panels are too small to be held by hand at a cutter: bevel them in a jig.',
    },
    {
      key: 'chips',
      title: 'Chips and fumes',
      text: `A blunt or fast mill melts plastic instead of cutting it: sharp tool, steady feed, chips drawn off, room aired.${pvc}`,
    },
    ...(solvent ? [solvent] : []),
  ];
}
