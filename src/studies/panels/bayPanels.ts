import type { Design } from '../../model/design.ts';
import { type BoxMeasures, unseen_m } from './boxMeasures.ts';
import { type Joints, notches, tabsAlong } from './joints.ts';
import { circle, type Panel, rectangle, rectangularPanel } from './panel.ts';

/**
 * The bay. The floor lies under all walls; the side walls stand on it and cover the edges of end and front wall, which
 * stand between them; the front wall ends at the plenum's height and leaves the mouth below it open; the top lies on all.
 */
export function bayPanels(design: Design, box: BoxMeasures, joints: Joints): Panel[] {
  const { wall_m, length_m, width_m, height_m, plenum_m, baffleTop_m } = box;
  const { fit_m, tab_m } = joints;
  const outer = { length_m: length_m + 2 * wall_m, width_m: width_m + 2 * wall_m };
  const front_m = height_m - plenum_m;
  const thickness_m = wall_m;

  const underSide = tabsAlong(outer.length_m, wall_m, joints);
  const underEnd = tabsAlong(width_m, wall_m, joints);
  const besideEnd = tabsAlong(height_m, wall_m, joints);
  const besideFront = tabsAlong(front_m, wall_m, joints);
  const besideBaffle = design.baffle.fitted ? baffleTabs(box, joints).at_m : [];

  const floor = rectangularPanel({ key: 'floor', perBox: 1, thickness_m }, outer.length_m, outer.width_m, [
    ...notches(underSide, 'bottom', outer, 0, joints),
    ...notches(underSide, 'top', outer, 0, joints),
    ...notches(underEnd, 'right', outer, wall_m, joints),
  ]);
  const wall = { length_m: outer.length_m, width_m: height_m };
  const sheet_m = design.baffle.sheet_m;
  const side = rectangularPanel(
    { key: 'side', perBox: 2, thickness_m },
    wall.length_m,
    wall.width_m,
    [
      ...notches(besideEnd, 'right', wall, 0, joints),
      ...notches(besideFront, 'left', wall, plenum_m, joints),
      ...besideBaffle.map((at_m) =>
        rectangle(
          'mortise',
          wall_m + fit_m + at_m,
          plenum_m + sheet_m / 2,
          tab_m + 2 * fit_m,
          sheet_m + 2 * fit_m,
        ),
      ),
    ],
    { bottom: underSide },
    tab_m,
  );
  const hole_m = design.cutting.wireHole_m;
  const end = rectangularPanel(
    { key: 'end', perBox: 1, thickness_m },
    width_m,
    height_m,
    hole_m > 0 ? [circle('wireHole', width_m / 2, (baffleTop_m + height_m) / 2, hole_m)] : [],
    { bottom: underEnd, left: besideEnd, right: besideEnd },
    tab_m,
  );
  const front = rectangularPanel(
    { key: 'front', perBox: 1, thickness_m },
    width_m,
    front_m,
    [],
    { left: besideFront, right: besideFront },
    tab_m,
  );
  return [floor, side, end, front, ...topPanel(box)];
}

/** None where the outlet is as large as the bay: it is open above then. */
function topPanel({
  wall_m,
  length_m,
  width_m,
  outletLength_m,
  outletWidth_m,
  sideRoom_m,
  endRoom_m,
}: BoxMeasures): Panel[] {
  if (sideRoom_m <= unseen_m && endRoom_m <= unseen_m) return [];
  const outlet = rectangle(
    'outlet',
    wall_m + length_m / 2,
    wall_m + width_m / 2,
    outletLength_m,
    outletWidth_m,
  );
  return [
    rectangularPanel(
      { key: 'top', perBox: 1, thickness_m: wall_m },
      length_m + 2 * wall_m,
      width_m + 2 * wall_m,
      [outlet],
    ),
  ];
}

/** Tabs of the baffle through the side walls, along its body; they also bridge the play round it. */
export function baffleTabs({ length_m, wall_m }: BoxMeasures, joints: Joints) {
  return tabsAlong(length_m - 2 * joints.fit_m, wall_m + joints.fit_m, joints);
}
