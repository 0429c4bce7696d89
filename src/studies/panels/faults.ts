import type { Design } from '../../model/design.ts';
import { baffleTabs } from './bayPanels.ts';
import { type BoxMeasures, unseen_m } from './boxMeasures.ts';
import { fitsMouth } from './fanEndPanels.ts';
import { type Joints, tabsAlong } from './joints.ts';
import type { CutOut, CutOutKind, Panel, PanelKey } from './panel.ts';

/** Why the panels, as listed, do not make the box: each with what was found and what would be allowed. */
export interface FaultData {
  readonly mouthTooSmall: {
    readonly fanWidth_m: number;
    readonly fanHeight_m: number;
    readonly width_m: number;
    readonly height_m: number;
  };
  readonly neckTooSteep: { readonly slope_rad: number };
  readonly collarHasNoRoom: {
    readonly where: 'side' | 'end';
    readonly room_m: number;
    readonly sheet_m: number;
  };
  readonly slotPastBaffle: { readonly along: boolean; readonly slot_m: number; readonly baffle_m: number };
  readonly slotUnderCollar: { readonly slot_m: number; readonly collar_m: number };
  readonly pitchUnknown: { readonly frame_m: number };
  readonly pitchPastFrame: { readonly pitch_m: number; readonly frame_m: number };
  readonly noTabs: { readonly edge_m: number; readonly tab_m: number };
  readonly outside: { readonly panel: PanelKey; readonly kind: CutOutKind };
  readonly meet: { readonly panel: PanelKey; readonly one: CutOutKind; readonly other: CutOutKind };
}

export type FaultCode = keyof FaultData;

export type Fault<C extends FaultCode = FaultCode> = {
  readonly [K in C]: { readonly code: K } & FaultData[K];
}[C];

export function faultsOf(
  design: Design,
  box: BoxMeasures,
  joints: Joints,
  panels: readonly Panel[],
): Fault[] {
  return [
    ...fanFaults(box),
    ...baffleFaults(design, box, joints),
    ...tabFaults(design, box, joints),
    ...panels.flatMap(cutOutFaults),
  ];
}

function fanFaults(box: BoxMeasures): Fault[] {
  const found: Fault[] = [];
  if (box.tooSteep_rad !== null) found.push({ code: 'neckTooSteep', slope_rad: box.tooSteep_rad });
  if (!box.neck && !fitsMouth(box))
    found.push({
      code: 'mouthTooSmall',
      fanWidth_m: box.fanWidth_m,
      fanHeight_m: box.fanHeight_m,
      width_m: box.width_m,
      height_m: box.plenum_m,
    });
  const seen = new Set<number>();
  for (const { pitch_m, frame_m } of box.lanes) {
    if (seen.has(frame_m)) continue;
    seen.add(frame_m);
    if (pitch_m === null) found.push({ code: 'pitchUnknown', frame_m });
    else if (pitch_m >= frame_m) found.push({ code: 'pitchPastFrame', pitch_m, frame_m });
  }
  return found;
}

function baffleFaults({ baffle }: Design, box: BoxMeasures, { fit_m }: Joints): Fault[] {
  if (!baffle.fitted) return [];
  const found: Fault[] = [];
  const { row_m } = box.bank;
  const length_m = box.length_m - 2 * fit_m;
  const width_m = box.width_m - 2 * fit_m;
  if (row_m >= length_m)
    found.push({ code: 'slotPastBaffle', along: true, slot_m: row_m, baffle_m: length_m });
  if (baffle.slotWidth_m >= width_m)
    found.push({ code: 'slotPastBaffle', along: false, slot_m: baffle.slotWidth_m, baffle_m: width_m });
  else if (baffle.slotWidth_m > box.outletWidth_m * (1 + 1e-9))
    found.push({ code: 'slotUnderCollar', slot_m: baffle.slotWidth_m, collar_m: box.outletWidth_m });
  const rooms = [
    ['side', box.sideRoom_m],
    ['end', box.endRoom_m],
  ] as const;
  for (const [where, room_m] of rooms)
    if (room_m > unseen_m && room_m < baffle.sheet_m - unseen_m)
      found.push({ code: 'collarHasNoRoom', where, room_m, sheet_m: baffle.sheet_m });
  return found;
}

/** Edges that asked for tabs and are too short for one; they are butted. */
function tabFaults({ baffle }: Design, box: BoxMeasures, joints: Joints): Fault[] {
  if (!joints.slotted) return [];
  const { length_m, width_m, height_m, plenum_m, wall_m } = box;
  const edges_m = [width_m, height_m, height_m - plenum_m, length_m + 2 * wall_m];
  const short_m = edges_m.filter((edge_m) => tabsAlong(edge_m, wall_m, joints).at_m.length === 0);
  if (baffle.fitted && baffleTabs(box, joints).at_m.length === 0) short_m.push(length_m);
  return short_m.length === 0 ? [] : [{ code: 'noTabs', edge_m: Math.min(...short_m), tab_m: joints.tab_m }];
}

/** Half of a micrometre: what meets by a rounding error does not meet. */
const slack_m = 5e-7;

function cutOutFaults({ key, cutOuts, length_m, width_m }: Panel): Fault[] {
  const found = new Map<string, Fault>();
  const cut = cutOuts.filter(({ kind }) => kind !== 'hub');
  cut.forEach((one, i) => {
    if (!isInside(one, length_m, width_m))
      found.set(one.kind, { code: 'outside', panel: key, kind: one.kind });
    for (const other of cut.slice(i + 1))
      if (doMeet(one, other))
        found.set(`${one.kind} ${other.kind}`, {
          code: 'meet',
          panel: key,
          one: one.kind,
          other: other.kind,
        });
  });
  return [...found.values()];
}

/** A notch ends at the very edge; everything else has to leave some sheet. */
export function isInside(cut: CutOut, length_m: number, width_m: number): boolean {
  const least_m = cut.kind === 'notch' ? -slack_m : slack_m;
  return (
    cut.x_m - cut.width_m / 2 >= least_m &&
    cut.y_m - cut.height_m / 2 >= least_m &&
    cut.x_m + cut.width_m / 2 <= length_m - least_m &&
    cut.y_m + cut.height_m / 2 <= width_m - least_m
  );
}

export function doMeet(one: CutOut, other: CutOut): boolean {
  const dx_m = Math.abs(one.x_m - other.x_m);
  const dy_m = Math.abs(one.y_m - other.y_m);
  if (one.round && other.round) return Math.hypot(dx_m, dy_m) < (one.width_m + other.width_m) / 2 - slack_m;
  if (!one.round && !other.round)
    return (
      dx_m < (one.width_m + other.width_m) / 2 - slack_m &&
      dy_m < (one.height_m + other.height_m) / 2 - slack_m
    );
  const [ring, square] = one.round ? [one, other] : [other, one];
  const beyondX_m = Math.max(0, dx_m - square.width_m / 2);
  const beyondY_m = Math.max(0, dy_m - square.height_m / 2);
  return Math.hypot(beyondX_m, beyondY_m) < ring.width_m / 2 - slack_m;
}
