import type { Design } from '../model/design.ts';
import { type BoxMeasures, unseen_m } from '../studies/panels/boxMeasures.ts';
import type { CutList } from '../studies/panels/cutList.ts';
import { cutLengthWithUnit, cutOutNames, panelNames } from './cutWords.ts';
import { quantity } from './format.ts';
import type { UnitSystem } from './types.ts';
import { percent } from './words.ts';

interface Remarks {
  readonly joints: readonly string[];
  readonly fits: readonly string[];
  readonly remarks: readonly string[];
}

/** Angles that differ by less are the same to a saw. */
const sameAngle_rad = (2 * Math.PI) / 180;
/** As far as a saw blade usually tilts; common practice, no source. */
const mostBevel_rad = Math.PI / 4;
/** An error of a cut that is easily made, to show what it does. */
const slip_m = { metric: 1e-4, inch: 1.27e-4 } as const;

/** What has to be known beside the sizes. */
export function cutRemarks(design: Design, list: CutList, system: UnitSystem): Remarks {
  const length = (value_m: number) => cutLengthWithUnit(value_m, system);
  return {
    joints: jointWords(design, list, length),
    fits: [...millWords(design, list, length), ...gapWords(design, list.measures, length, system)],
    remarks: [
      ...sizeWords(design, list, length),
      ...fanWords(design, list.measures, length, system),
      ...bayWords(design, list.measures, length),
    ],
  };
}

type Length = (value_m: number) => string;

function jointWords({ cutting, baffle, box }: Design, { measures }: CutList, length: Length): string[] {
  const slotted = cutting.joint === 'slotted';
  const words = [
    `Floor and top have the full outside size. The side walls stand on the floor and cover the edges of the end wall and the front wall, which stand between them and are as wide as the box inside.`,
    slotted
      ? `Tabs ${length(cutting.tab_m)} long on walls and baffle reach through the sheet they meet and end flush with its outside; notches and slots are larger by ${length(cutting.fit_m)} on each side. The top is not tabbed, so that it can be taken off.`
      : 'All joints are butted and cemented or screwed; every edge is cut square but for the neck-down’s.',
  ];
  if (measures.neck) {
    words.push(
      `The sloping panels take the whole length of the neck-down, between the fan plate and the front face of the box, where they land on the edges of side walls and floor and on the front wall. Both plates come on top of that length. Top and bottom cover the edges of the sides; sizes are those of the inside faces.`,
    );
    if (Math.abs(measures.neck.corner_rad) > 1e-3)
      words.push(
        'Where they taper both ways, their long edges are a little off square: bevel those of the sides to lie flat, and dress top and bottom flush.',
      );
  } else if (measures.tooSteep_rad === null) {
    words.push('Without a neck-down the fan plate lies flat on the front of the box.');
  }
  if (baffle.fitted) {
    words.push(
      `The baffle lies between the walls with ${length(cutting.fit_m)} of play all round${slotted ? ', held by its tabs' : ': cement it, or rest it on strips of your own along the walls'}. The strips of the collar stand on it, the long ones over the edges of the short ones.`,
    );
    if (cutting.fit_m > baffle.leakGap_m)
      words.push(
        `The play is wider than the leak under the baffle that the answer counts, ${length(baffle.leakGap_m)}: seal the seat, or enter the play as the leak.`,
      );
  }
  if (baffle.fitted && baffle.sheet_m !== box.sheet_m)
    words.push(`Walls are of ${length(box.sheet_m)} sheet, baffle and collar of ${length(baffle.sheet_m)}.`);
  return words;
}

function millWords({ cutting }: Design, { milled }: CutList, length: Length): string[] {
  const words: string[] = [];
  const narrowest = milled[0];
  if (narrowest) {
    const name = `${cutOutNames[narrowest.kind]} in the ${panelNames[narrowest.panel].toLowerCase()}`;
    words.push(
      `The narrowest feature to mill is the ${name}: any mill up to ${length(narrowest.widest_m)} cuts it, and so ${narrowest.fits ? 'does' : 'does not'} yours of ${length(cutting.cutter_m)}. Holes for screws and leads are drilled.`,
    );
  }
  const slot = milled.find(({ kind }) => kind === 'slot');
  if (slot && slot.corner_m > 0)
    words.push(
      `Your mill leaves corners of radius ${length(slot.corner_m)} in the slot under the fins; they take ${percent(slot.cornerShare)} of it, at the outer corners of the end sinks. The collar is built of strips, so its inner corners are square and the sinks need no relief.`,
    );
  if (cutting.joint === 'slotted')
    words.push(
      `A milled slot has round corners and a tab has square ones: let the mill run past each inner corner by half its diameter, a dog-bone, or round the tabs with a file.`,
    );
  return words;
}

/** Gaps that nobody cuts: what errors of the cuts round them do. */
function gapWords(
  { baffle, sink }: Design,
  { outletWidth_m }: BoxMeasures,
  length: Length,
  system: UnitSystem,
): string[] {
  if (!baffle.fitted) return [];
  const gap_m = baffle.sideClearance_m;
  const slip = slip_m[system];
  return [
    `The side clearance of ${length(gap_m)} is a gap, not a cut: half of what the collar, ${length(outletWidth_m)} wide inside, has over the sink’s ${length(sink.width_m)}. Errors of both add: ${length(slip)} wrong on each leaves anything from ${length(Math.max(0, gap_m - slip))} to ${length(gap_m + slip)} on each side, and a row off the middle gives to one side what it takes from the other. Set the collar round the sinks with shims.`,
  ];
}

function sizeWords({ box, plenum }: Design, { measures, panels }: CutList, length: Length): string[] {
  const { wall_m, width_m, height_m } = measures;
  const plate = panels.find(({ key }) => key === 'fanPlate');
  const top_m = height_m + (panels.some(({ key }) => key === 'top') ? wall_m : 0);
  const plateHigh_m = plate?.width_m ?? 0;
  const below_m = plateHigh_m / 2 - plenum.height_m / 2 - wall_m;
  const highest_m = Math.max(top_m, plenum.height_m / 2 + plateHigh_m / 2);
  const lowest_m = wall_m + Math.max(0, below_m);
  const long_m = 3 * wall_m + box.length_m + (measures.neck?.length_m ?? 0);
  const wide_m = Math.max(width_m + 2 * wall_m, plate?.length_m ?? 0);
  const words = [
    `Outside, without the fan, the box is ${length(long_m)} long, ${length(wide_m)} wide and ${length(highest_m + lowest_m)} high.`,
  ];
  if (below_m > unseen_m)
    words.push(
      `The fan plate, centred on the mouth, reaches ${length(below_m)} below the underside of the floor: the box needs feet at least as high.`,
    );
  return words;
}

function fanWords(design: Design, measures: BoxMeasures, length: Length, system: UnitSystem): string[] {
  const { fan, moreFans, inlet, plenum } = design;
  const words: string[] = [];
  const practice = measures.lanes.find(
    ({ pitch_m, pitchFrom }) => pitch_m !== null && pitchFrom === 'practice',
  );
  if (practice?.pitch_m)
    words.push(
      `Fan screws ${length(practice.pitch_m)} apart are usual for a frame of ${length(practice.frame_m)} (common practice, no source): measure your fan before you drill.`,
    );
  if (measures.neck && practice?.pitch_m && practice.pitch_m < practice.opening_m)
    words.push(
      'The fan screws come out inside the neck-down: tap the plate, or set inserts, before it is closed.',
    );
  if (measures.lanes.some(({ frame_m }) => frame_m !== fan.size_m))
    words.push(
      'Further fans are taken to have a frame with the same rim as the first round their own openings.',
    );
  const attached = [
    inlet.guard.kind === 'none' ? '' : 'guard',
    inlet.filter ? 'filter' : '',
    fan.inARow > 1 || moreFans.some(({ place }) => place === 'behind') ? 'fans in a row' : '',
  ].filter((word) => word !== '');
  if (attached.length > 0)
    words.push(`On the same screws, and in no panel: ${attached.join(', ')}. Take the screws long enough.`);
  if (measures.neck) {
    const angles_rad = [measures.neck.topSlope_rad, measures.neck.sideSlope_rad].map(
      (slope) => 2 * Math.abs(slope),
    );
    const [least_rad, most_rad] = [Math.min(...angles_rad), Math.max(...angles_rad)];
    const angle = (value_rad: number) => quantity(value_rad, 'angle', system, 3);
    if (most_rad / 2 > mostBevel_rad)
      words.push(
        `A bevel of ${angle(most_rad / 2)} is more than a saw tilts: make the neck-down longer, or file it.`,
      );
    if (plenum.neckAngle_rad < least_rad - sameAngle_rad || plenum.neckAngle_rad > most_rad + sameAngle_rad)
      words.push(
        `With these sizes the angle of the neck-down is ${angle(angles_rad[0] ?? 0)} between top and bottom and ${angle(angles_rad[1] ?? 0)} between its sides; the answer counts ${angle(plenum.neckAngle_rad)}. Enter the angle that is built, or change the length.`,
      );
  }
  return words;
}

function bayWords({ cutting, baffle }: Design, measures: BoxMeasures, length: Length): string[] {
  const { sideRoom_m, endRoom_m } = measures;
  const words: string[] = [];
  if (baffle.fitted && sideRoom_m <= unseen_m && endRoom_m > unseen_m)
    words.push('Beside the row the box walls themselves are the collar.');
  if (baffle.fitted && endRoom_m <= unseen_m && sideRoom_m > unseen_m)
    words.push('Beyond the row end wall and front wall themselves are the collar.');
  if (sideRoom_m <= unseen_m && endRoom_m <= unseen_m)
    words.push(
      `The outlet is as large as the bay: there is no top${baffle.fitted ? ', and the walls are the collar' : ''}. A grille lies on the walls.`,
    );
  words.push(
    cutting.wireHole_m > 0
      ? `The wire hole of ${length(cutting.wireHole_m)} lies above the baffle; close it round the leads, or it leaks.`
      : 'No hole is cut for the leads: they leave by the outlet, or enter a wire hole.',
  );
  return words;
}
