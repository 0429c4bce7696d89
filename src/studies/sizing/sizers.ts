import { splitLoad } from '../../core/resistor/splitLoad.ts';
import { bankGeometry } from '../../core/system/geometry.ts';
import type { Design } from '../../model/design.ts';
import { fieldAt } from '../../model/fields.ts';
import { getAt, type Path } from '../../model/path.ts';
import { supplyKindOf, toCore } from '../../model/toCore.ts';
import type { Values } from '../vary.ts';
import type { Range } from './findEdge.ts';

export type SizerId =
  | 'load'
  | 'fanSupply'
  | 'speedLoss'
  | 'clearance'
  | 'sideClearance'
  | 'endClearance'
  | 'leak'
  | 'slot'
  | 'bond'
  | 'finLength'
  | 'plenum'
  | 'guardDust'
  | 'filterDust'
  | 'room'
  | 'altitude'
  | 'pressure';

/** One measure that is driven as far as the target lets it go. */
export interface Sizer extends Range {
  readonly id: SizerId;
  /** What is put into the design for a value of the measure. */
  readonly values: (value: number) => Values;
}

type Build = (design: Design) => Omit<Sizer, 'id'> | null;

/** All that may be asked of this design, in the order in which it is told. */
export function sizersOf(design: Design): Sizer[] {
  return Object.entries(builders).flatMap(([id, build]) => {
    const sizer = build(design);
    return sizer !== null && sizer.high > sizer.low ? [{ id: id as SizerId, ...sizer }] : [];
  });
}

const builders: Readonly<Record<SizerId, Build>> = {
  load,
  fanSupply,
  speedLoss: (design) => single(design, 'fan.speedLoss', 'most', 'even'),
  clearance,
  sideClearance: (design) => gap(design, 'baffle.sideClearance_m', roomBeside_m(design)),
  endClearance: (design) => gap(design, 'baffle.endClearance_m', roomBeyond_m(design)),
  leak: (design) => gap(design, 'baffle.leakGap_m', Number.POSITIVE_INFINITY),
  slot,
  bond: (design) => single(design, 'bond.filament_m', 'most', 'ratio'),
  finLength,
  plenum: (design) => single(design, 'plenum.height_m', 'least', 'ratio'),
  guardDust: (design) =>
    design.inlet.guard.kind === 'none' ? null : single(design, 'inlet.guardBlocked', 'most', 'even'),
  filterDust: (design) =>
    design.inlet.filter ? single(design, 'inlet.filterBlocked', 'most', 'even') : null,
  room: (design) => single(design, 'room.T_K', 'most', 'even'),
  altitude: (design) =>
    design.room.pressureFrom === 'altitude' ? single(design, 'room.altitude_m', 'most', 'even') : null,
  pressure: (design) =>
    design.room.pressureFrom === 'barometer' ? single(design, 'room.pressure_Pa', 'least', 'even') : null,
};

/** A measure that is one input, anywhere between its hard limits. */
function single(design: Design, path: Path, want: Range['want'], spread: Range['spread']): Omit<Sizer, 'id'> {
  const [low, high] = hardOf(path);
  return { low, high, now: numberAt(design, path), want, spread, values: (value) => ({ [path]: value }) };
}

/** Most that a load may be multiplied by. */
const mostTimes = 100;

/** Watts are multiplied; volts or amps that make them, by the root. */
function load(design: Design): Omit<Sizer, 'id'> | null {
  const { excitation } = design.load;
  const kind = supplyKindOf[excitation];
  if (!(loadOf_W(design) > 0)) return null;
  const range = { low: 1e-3, now: 1, want: 'most', spread: 'ratio' } as const;
  if (kind === null) {
    const most_W = Math.max(...design.positions.map(({ power_W }) => power_W));
    const values = (factor: number) =>
      Object.fromEntries(
        design.positions.map(({ power_W }, index) => [`positions[${index}].power_W`, power_W * factor]),
      );
    return { ...range, high: Math.min(mostTimes, hardOf('positions[0].power_W')[1] / most_W), values };
  }
  const path = kind === 'volts' ? 'load.supply_V' : 'load.supply_A';
  const supply = numberAt(design, path);
  const high = Math.min(mostTimes, (hardOf(path)[1] / supply) ** 2);
  return { ...range, high, values: (factor) => ({ [path]: supply * Math.sqrt(factor) }) };
}

/** Mean watts of all positions together, as the box is judged by them: nominal, or at worst tolerance. */
export function loadOf_W(design: Design): number {
  const { load, positions } = toCore(design);
  const { nominal_W, worst_W } = splitLoad({
    ...load,
    kind: load.excitation,
    resistors: positions.map(({ part, on, power_W }) => ({ ...part, on, power_W })),
  });
  return (load.atWorst ? worst_W : nominal_W).reduce((sum, power_W) => sum + power_W, 0);
}

/** Slower than this share of its rated voltage no fan is asked to turn. */
const leastShare = 0.02;

/**
 * Volts of the first kind of fan, the others in their proportion: from where it just starts, its supply sagging as it may,
 * up to rated voltage, or to the present one where that is more.
 */
function fanSupply({ fan, moreFans, load }: Design): Omit<Sizer, 'id'> | null {
  const sag = load.atWorst ? fan.supplySag : 0;
  const least = Math.max(fan.start_V, leastShare * fan.rated_V);
  const starts = least / (1 - sag);
  // Rounding must not leave it a hair short of starting.
  const low = starts * (1 - sag) < least ? starts * (1 + 1e-12) : starts;
  const now = fan.supply_V;
  const shareOf = (kind: { rated_V: number; supply_V: number }) =>
    kind.supply_V > 0 ? Math.max(1, kind.rated_V / kind.supply_V) : Number.POSITIVE_INFINITY;
  const share = Math.min(...[fan, ...moreFans].map(shareOf));
  const high = now > 0 ? now * share : fan.rated_V;
  const values = (volts: number) => ({
    'fan.supply_V': volts,
    ...(now > 0 &&
      Object.fromEntries(
        moreFans.map(({ supply_V }, index) => [`moreFans[${index}].supply_V`, (supply_V * volts) / now]),
      )),
  });
  return { low, high, now, want: 'least', spread: 'even', values };
}

/** Clearance all round the row: sides and ends alike. */
function clearance(design: Design): Omit<Sizer, 'id'> | null {
  const { fitted, sideClearance_m, endClearance_m } = design.baffle;
  if (!fitted) return null;
  return {
    low: 0,
    high: Math.min(roomBeside_m(design), roomBeyond_m(design)),
    now: Math.max(sideClearance_m, endClearance_m),
    want: 'most',
    spread: 'fromLow',
    values: (value) => ({ 'baffle.sideClearance_m': value, 'baffle.endClearance_m': value }),
  };
}

function gap(design: Design, path: Path, most_m: number): Omit<Sizer, 'id'> | null {
  if (!design.baffle.fitted) return null;
  const range = single(design, path, 'most', 'fromLow');
  return { ...range, high: Math.min(range.high, most_m) };
}

function roomBeside_m({ box, sink }: Design): number {
  return Math.max(0, (box.width_m - sink.width_m) / 2);
}

function roomBeyond_m(design: Design): number {
  return Math.max(0, (design.box.length_m - bankGeometry(toCore(design)).row_m) / 2);
}

function slot(design: Design): Omit<Sizer, 'id'> | null {
  if (!design.baffle.fitted) return null;
  const range = single(design, 'baffle.slotWidth_m', 'least', 'ratio');
  return { ...range, high: Math.min(range.high, design.box.width_m) };
}

/** Fins cut shorter; a collar higher than they would be comes down with them. */
function finLength(design: Design): Omit<Sizer, 'id'> {
  const { collar_m } = design.baffle;
  return {
    ...single(design, 'sink.length_m', 'least', 'ratio'),
    values: (value) => ({ 'sink.length_m': value, 'baffle.collar_m': Math.min(collar_m, value) }),
  };
}

/** Least and most that an input may be. */
export function hardOf(path: Path): readonly [number, number] {
  const field = fieldAt(path);
  return field.kind === 'quantity' || field.kind === 'count' ? field.hard : [0, 0];
}

function numberAt(design: Design, path: Path): number {
  return Number(getAt(design, path));
}
