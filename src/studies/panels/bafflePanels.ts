import type { Design } from '../../model/design.ts';
import { baffleTabs } from './bayPanels.ts';
import { type BoxMeasures, unseen_m } from './boxMeasures.ts';
import type { Joints } from './joints.ts';
import { type Panel, rectangle, rectangularPanel } from './panel.ts';

/**
 * The baffle, with play all round between the walls, and the four strips of the collar that stand on it round the
 * sinks: the long ones cover the edges of the short ones. Where a wall is as near as the collar would be, it is the collar.
 */
export function bafflePanels(design: Design, box: BoxMeasures, joints: Joints): Panel[] {
  const { baffle } = design;
  if (!baffle.fitted) return [];
  const { bank, outletLength_m, outletWidth_m, sideRoom_m, endRoom_m } = box;
  const { fit_m, tab_m } = joints;
  const thickness_m = baffle.sheet_m;
  const bodyLength_m = box.length_m - 2 * fit_m;
  const bodyWidth_m = box.width_m - 2 * fit_m;
  const tabs = baffleTabs(box, joints);
  const slot = rectangle('slot', bodyLength_m / 2, bodyWidth_m / 2, bank.row_m, baffle.slotWidth_m);
  const high_m = baffle.standOff_m + bank.collar_m;
  const hasRoom = (room_m: number) => room_m >= thickness_m - unseen_m;
  const ends_m = endRoom_m > unseen_m ? 2 * thickness_m : 0;
  const panels: Panel[] = [];
  if (bodyLength_m > 0 && bodyWidth_m > 0)
    panels.push(
      rectangularPanel(
        { key: 'baffle', perBox: 1, thickness_m },
        bodyLength_m,
        bodyWidth_m,
        [slot],
        { bottom: tabs, top: tabs },
        tab_m,
      ),
    );
  if (sideRoom_m > unseen_m && hasRoom(sideRoom_m))
    panels.push(
      rectangularPanel({ key: 'collarSide', perBox: 2, thickness_m }, outletLength_m + ends_m, high_m),
    );
  if (endRoom_m > unseen_m && hasRoom(endRoom_m))
    panels.push(rectangularPanel({ key: 'collarEnd', perBox: 2, thickness_m }, outletWidth_m, high_m));
  return panels;
}
