import type { Design } from '../../model/design.ts';
import { patternOf } from '../../model/path.ts';
import type { PartId } from '../../report/drawing.ts';

export interface GroupField {
  readonly path: string;
  /** Whether the value matters as the design stands; left out where it always does. */
  readonly when?: (design: Design) => boolean;
}

export interface FieldGroup {
  readonly part: PartId;
  readonly title: string;
  readonly fields: readonly GroupField[];
  /** Lists that the part edits besides, with editors of their own. */
  readonly lists: readonly ('positions' | 'parts' | 'fan.curve' | 'moreFans' | 'extras')[];
}

const always = (...paths: string[]): GroupField[] => paths.map((path) => ({ path }));
const only = (when: (design: Design) => boolean, ...paths: string[]): GroupField[] =>
  paths.map((path) => ({ path, when }));

const hasVolts = ({ load }: Design) => ['seriesVolts', 'parallelVolts', 'switched'].includes(load.excitation);
const hasAmps = ({ load }: Design) => ['seriesAmps', 'parallelAmps'].includes(load.excitation);
const hasSupply = ({ load }: Design) => load.excitation !== 'wattsEach';
const hasBaffle = ({ baffle }: Design) => baffle.fitted;
const hasFilter = ({ inlet }: Design) => inlet.filter;
const hasPulses = ({ load }: Design) => load.duty < 1;
const hasBarometer = ({ room }: Design) => room.pressureFrom === 'barometer';
const hasTabs = ({ secondFace }: Design) => secondFace.way === 'tabs';
const isOpen = (of: (design: Design) => Design['outlet']) => ({
  freeShare: (design: Design) => !['none', 'ownLoss'].includes(of(design).kind),
  loss: (design: Design) => of(design).kind === 'ownLoss',
});
const guard = isOpen((design) => design.inlet.guard);
const outlet = isOpen((design) => design.outlet);

/** Inputs by the part that they belong to: the job first, then the way of the air, then what bounds it. */
export const fieldGroups: readonly FieldGroup[] = [
  {
    part: 'load',
    title: 'Load',
    fields: [
      ...always('load.excitation'),
      ...only(hasVolts, 'load.supply_V'),
      ...only(hasAmps, 'load.supply_A'),
      ...only(hasSupply, 'load.supplyTolerance'),
      ...always('load.duty'),
      ...only(hasPulses, 'load.period_s'),
      ...always('load.atWorst'),
    ],
    lists: [],
  },
  {
    part: 'room',
    title: 'Room',
    fields: [
      ...always('room.T_K', 'room.pressureFrom'),
      ...only((design) => !hasBarometer(design), 'room.altitude_m'),
      ...only(hasBarometer, 'room.pressure_Pa'),
      ...always('room.relativeHumidity', 'room.listening_m'),
    ],
    lists: [],
  },
  {
    part: 'guard',
    title: 'Inlet guard',
    fields: [
      ...always('inlet.guard.kind'),
      ...only(guard.freeShare, 'inlet.guard.freeShare'),
      ...only(guard.loss, 'inlet.guard.loss'),
      ...only(({ inlet }) => inlet.guard.kind !== 'none', 'inlet.guardBlocked'),
    ],
    lists: [],
  },
  {
    part: 'filter',
    title: 'Filter',
    fields: [
      ...always('inlet.filter'),
      ...only(
        hasFilter,
        'inlet.filterLinear_PaSPerM',
        'inlet.filterQuadratic_PaS2PerM2',
        'inlet.filterBlocked',
      ),
    ],
    lists: [],
  },
  {
    part: 'fan',
    title: 'Fan',
    fields: [
      ...always(
        'fan.name',
        'fan.curveSource',
        'fan.supply_V',
        'fan.rated_V',
        'fan.start_V',
        'fan.power_W',
        'fan.rotation_PerS',
        'fan.sideBySide',
        'fan.inARow',
        'fan.size_m',
        'fan.opening_m',
        'fan.hub_m',
        'fan.depth_m',
        'fan.blades',
        'fan.standingLoss',
        'fan.inletSpace_m',
        'fan.sound_dBA',
        'fan.soundAt_m',
        'fan.speedLoss',
      ),
      ...only(({ load }) => load.atWorst, 'fan.supplySag'),
    ],
    lists: ['fan.curve', 'moreFans'],
  },
  {
    part: 'neck',
    title: 'Neck-down',
    fields: always('plenum.neckLength_m', 'plenum.neckAngle_rad'),
    lists: [],
  },
  { part: 'plenum', title: 'Plenum', fields: always('plenum.height_m'), lists: [] },
  {
    part: 'baffle',
    title: 'Baffle',
    fields: [
      ...always('baffle.fitted'),
      ...only(
        hasBaffle,
        'baffle.sideClearance_m',
        'baffle.endClearance_m',
        'baffle.slotWidth_m',
        'baffle.standOff_m',
        'baffle.collar_m',
        'baffle.leakGap_m',
        'baffle.sheet_m',
      ),
    ],
    lists: [],
  },
  {
    part: 'sinks',
    title: 'Sinks',
    fields: always(
      'sink.finCount',
      'sink.finThickness_m',
      'sink.finHeight_m',
      'sink.length_m',
      'sink.width_m',
      'sink.plate_m',
      'sink.material',
      'sink.k_WPerMK',
      'sink.heat_JPerM3K',
      'sink.emissivity',
      'sink.first',
      'sink.last',
    ),
    lists: [],
  },
  { part: 'resistors', title: 'Resistors', fields: [], lists: ['positions', 'parts'] },
  {
    part: 'bonds',
    title: 'Bond lines',
    fields: always(
      'bond.material',
      'bond.sheetK_WPerMK',
      'bond.designShare',
      'bond.filament_m',
      'bond.filament_WPerMK',
      'bond.filamentLength_m',
      'bond.voidShare',
      'bond.contact_m2KPerW',
      'bond.serviceLimit_K',
      'bond.glassTransition_K',
    ),
    lists: [],
  },
  {
    part: 'secondFace',
    title: 'Second face',
    fields: [
      ...always('secondFace.way'),
      ...only(
        hasTabs,
        'secondFace.tabCount',
        'secondFace.tabWidth_m',
        'secondFace.tabThickness_m',
        'secondFace.tabLength_m',
        'secondFace.tab_WPerMK',
        'secondFace.tabLanding_m',
        'secondFace.solder_m',
        'secondFace.solder_WPerMK',
      ),
      ...always('secondFace.terminalLength_m'),
    ],
    lists: [],
  },
  {
    part: 'box',
    title: 'Box',
    fields: always(
      'box.length_m',
      'box.width_m',
      'box.headroom_m',
      'box.tilt_rad',
      'box.sheet_m',
      'box.material',
      'box.sheet_WPerMK',
      'box.sheetEmissivity',
      'box.sheetHeat_JPerM3K',
      'box.softening_K',
    ),
    lists: [],
  },
  {
    part: 'outlet',
    title: 'Outlet grille',
    fields: [
      ...always('outlet.kind'),
      ...only(outlet.freeShare, 'outlet.freeShare'),
      ...only(outlet.loss, 'outlet.loss'),
    ],
    lists: [],
  },
  { part: 'extras', title: 'Extra losses', fields: [], lists: ['extras'] },
  {
    part: 'limits',
    title: 'Limits',
    fields: [
      ...always(
        'limits.spareFactor',
        'limits.joint_K',
        'limits.exhaust_K',
        'limits.wall_K',
        'limits.settled',
        'limits.touchable',
      ),
      ...only(({ limits }) => limits.touchable, 'limits.touch_K'),
      ...always('limits.soundJudged'),
      ...only(({ limits }) => limits.soundJudged, 'limits.sound_dBA'),
    ],
    lists: [],
  },
  {
    part: 'cutting',
    title: 'Panels to cut',
    fields: [
      ...always('cutting.boxes', 'cutting.joint'),
      ...only(({ cutting }) => cutting.joint === 'slotted', 'cutting.tab_m'),
      ...always(
        'cutting.fit_m',
        'cutting.cutter_m',
        'cutting.edge_m',
        'cutting.fanHole_m',
        'cutting.fanPitch_m',
        'cutting.wireHole_m',
        'cutting.stockLength_m',
        'cutting.stockWidth_m',
      ),
    ],
    lists: [],
  },
];

/** Inputs of the title block, which is no part of the box. */
export const titleFields = ['title', 'variant', 'revision', 'remark', 'invented'] as const;

export function groupOf(part: PartId): FieldGroup {
  const group = fieldGroups.find((each) => each.part === part);
  if (group === undefined) throw new Error(`no fields for ${part}`);
  return group;
}

/** The part to choose to get at this place; `null` for the title block. */
export function partOf(path: string): PartId | null {
  const pattern = patternOf(path);
  const owner = fieldGroups.find(
    ({ fields, lists }) =>
      fields.some((field) => field.path === pattern) || lists.some((list) => pattern.startsWith(list)),
  );
  return owner?.part ?? null;
}
