import type { Design } from '../model/design.ts';
import type { PartId } from './drawing.ts';
import { amount, plain, quantity } from './format.ts';
import type { InputGroup, InputRow, UnitSystem } from './types.ts';
import { counted, plain0, share, temperature, times } from './words.ts';

type Show = (value: number) => string;
interface Shows {
  readonly system: UnitSystem;
  readonly length: Show;
  readonly volts: Show;
  readonly k: Show;
  readonly heat: Show;
}

/** The inputs that matter, in the order of the air's way and then the heat's, several measures to a line. */
export function inputGroups(design: Design, system: UnitSystem): InputGroup[] {
  const show: Shows = {
    system,
    length: (value) => quantity(value, 'length', system),
    volts: (value) => quantity(value, 'voltage', system, 3),
    k: (value) => quantity(value, 'conductivity', system, 3),
    heat: (value) => temperature(value, system),
  };
  const group = (part: PartId, title: string, rows: Row[]): InputGroup => ({
    part,
    title,
    rows: rows.map((each) => ({ ...each, elsewhere: elsewhere[part]?.includes(each.label) ?? false })),
  });
  return [
    group('room', 'Room', roomRows(design, show)),
    group('load', 'Load', loadRows(design, show)),
    group('resistors', 'Resistors', resistorRows(design, show)),
    group('fan', 'Fan', fanRows(design, show)),
    group('guard', 'Openings', openingRows(design, show)),
    group('plenum', 'Plenum', plenumRows(design, show)),
    group('baffle', 'Baffle', baffleRows(design, show)),
    group('sinks', 'Sinks', sinkRows(design, show)),
    group('bonds', 'Bonds', bondRows(design, show)),
    group('secondFace', 'Second face', secondFaceRows(design, show)),
    group('box', 'Box', boxRows(design, show)),
    group('limits', 'Limits', limitInputs(design, show)),
  ];
}

type Row = Omit<InputRow, 'elsewhere'>;

/** What a drawing with dimensions, the fan's chart and the table of limits say by themselves. */
const elsewhere: Readonly<Partial<Record<PartId, readonly string[]>>> = {
  fan: ['size'],
  plenum: ['plenum', 'neck-down'],
  baffle: ['clearance'],
  bonds: ['bears'],
  box: ['bay'],
  limits: ['limits'],
};

function row(label: string, value: string): Row {
  return { label, value };
}

function roomRows({ room }: Design, { heat, system }: Shows): Row[] {
  const pressure =
    room.pressureFrom === 'barometer'
      ? `${quantity(room.pressure_Pa, 'airPressure', system, 4)} by barometer`
      : `${quantity(room.altitude_m, 'altitude', system)} up`;
  return [row('air taken in', `${heat(room.T_K)}, ${pressure}, ${share(room.relativeHumidity)} humid`)];
}

function loadRows({ load }: Design, { volts, system }: Shows): Row[] {
  const amps = quantity(load.supply_A, 'current', system, 3);
  const ways: Readonly<Record<Design['load']['excitation'], string>> = {
    wattsEach: 'watts given for each',
    seriesVolts: `${volts(load.supply_V)} across the series string`,
    seriesAmps: `${amps} through the series string`,
    parallelVolts: `${volts(load.supply_V)} across the parallel set`,
    parallelAmps: `${amps} into the parallel set`,
    switched: `each switched across ${volts(load.supply_V)}`,
  };
  const period = load.duty < 1 ? ` of ${quantity(load.period_s, 'time', system)}` : '';
  return [
    row(
      'fed by',
      load.excitation === 'wattsEach'
        ? ways.wattsEach
        : `${ways[load.excitation]}, up to ${share(load.supplyTolerance)} more`,
    ),
    row(
      'judged',
      `${load.atWorst ? 'at worst tolerance' : 'at nominal watts'}, duty ${share(load.duty)}${period}`,
    ),
  ];
}

function resistorRows({ parts, positions }: Design, { system, length, heat }: Shows): Row[] {
  return parts.flatMap((part, index) => {
    const used = positions.filter((position) => position.part === index).length;
    if (used === 0) return [];
    const edges = [part.length_m, part.width_m].map((edge) => plain(amount(edge, 'length', system), 3));
    const size = `${edges.join(' × ')} × ${length(part.thickness_m)}`;
    return [
      row(
        `${used} × ${part.name}`,
        `${quantity(part.R_Ohm, 'resistance', system)} ±${share(part.tolerance)}, ${quantity(part.rated_W, 'power', system)} to ${heat(part.fullPowerUpTo_K)}, none at ${heat(part.zeroPowerAt_K)}, ${drift(part, system)}, ${size}`,
      ),
    ];
  });
}

function drift({ tcr_perK, tcr2_perK2 }: Design['parts'][number], system: UnitSystem): string {
  const square =
    tcr2_perK2 === 0 ? '' : ` and ${quantity(tcr2_perK2, 'squareTemperatureCoefficient', system, 3)}`;
  return `${quantity(tcr_perK, 'temperatureCoefficient', system, 3)}${square}`;
}

function fanRows({ fan, moreFans, load }: Design, { volts, length, system }: Shows): Row[] {
  const several = [
    fan.sideBySide > 1 ? `${fan.sideBySide} side by side` : '',
    fan.inARow > 1 ? `${fan.inARow} in a row` : '',
  ];
  const worn = [
    load.atWorst && fan.supplySag > 0 ? `may sag ${share(fan.supplySag)}` : '',
    fan.speedLoss > 0 ? `${share(fan.speedLoss)} slower with age` : '',
  ];
  const supply = [
    volts(fan.supply_V),
    `rated ${volts(fan.rated_V)}`,
    `starts at ${volts(fan.start_V)}`,
    ...worn,
  ];
  const otherFan = (other: Design['moreFans'][number]) =>
    said([
      `${other.name} ${other.place}`,
      volts(other.supply_V),
      curveEnds(other, system),
      fromSource(other),
      soundOf(other, system),
    ]);
  return [
    row('fan', said([fan.name, ...several])),
    row('supply', said(supply)),
    row('curve', said([curveEnds(fan, system), fromSource(fan)])),
    ...(moreFans.length === 0 ? [] : [row('and', moreFans.map(otherFan).join('; '))]),
    row(
      'size',
      said([
        `${length(fan.size_m)} frame`,
        `${length(fan.opening_m)} opening`,
        `${length(fan.hub_m)} hub`,
        counted(fan.blades, 'blade'),
        quantity(fan.rotation_PerS, 'rotation', system),
        soundOf(fan, system),
      ]),
    ),
  ];
}

type Kind = Design['moreFans'][number] | Design['fan'];

function curveEnds({ curve }: Kind, system: UnitSystem): string {
  const first = curve[0];
  const last = curve.at(-1);
  return first && last
    ? `${quantity(first.dp_Pa, 'pressure', system)} to ${quantity(last.flow_m3PerS, 'volumeFlow', system)}, ${curve.length} points`
    : '';
}

/** A longer source is cut: all of it stands among all inputs. */
const mostLetters = 60;

function fromSource({ curveSource }: Kind): string {
  if (curveSource === '') return '';
  return curveSource.length > mostLetters
    ? `from ${curveSource.slice(0, mostLetters - 1).trimEnd()}…`
    : `from ${curveSource}`;
}

function soundOf({ sound_dBA, soundAt_m }: Kind, system: UnitSystem): string {
  return `${quantity(sound_dBA, 'soundLevel', system)} at ${quantity(soundAt_m, 'distance', system)}`;
}

/** What there is to say, in one line. */
function said(words: readonly string[]): string {
  return words.filter((word) => word !== '').join(', ');
}

function openingRows({ inlet, outlet, extras }: Design, { system }: Shows): Row[] {
  const kinds: Readonly<Record<Design['outlet']['kind'], string>> = {
    none: 'none',
    wire: 'round wires',
    punched: 'punched sheet',
    square: 'square bars',
    ownLoss: 'own loss',
  };
  const words = (grille: Design['outlet']) => {
    if (grille.kind === 'none') return kinds.none;
    return grille.kind === 'ownLoss'
      ? `loss ${plain(grille.loss)}`
      : `${kinds[grille.kind]}, ${share(grille.freeShare)} free`;
  };
  const dust = (blocked: number) => (blocked === 0 ? '' : `${share(blocked)} blocked by dust`);
  const isOpen = inlet.guard.kind === 'none';
  return [
    row('guard', said([words(inlet.guard), isOpen ? '' : dust(inlet.guardBlocked)])),
    row('filter', inlet.filter ? said(['fitted', dust(inlet.filterBlocked)]) : 'none'),
    row('outlet', words(outlet)),
    ...extras.map((extra) =>
      row(
        extra.name,
        extra.points.length > 1
          ? `${counted(extra.points.length, 'measured point')}`
          : `loss ${plain(extra.loss)} on ${quantity(extra.area_m2, 'area', system)}`,
      ),
    ),
  ];
}

function plenumRows({ plenum }: Design, { length, system }: Shows): Row[] {
  return [
    row('plenum', `${length(plenum.height_m)} high`),
    row(
      'neck-down',
      `${quantity(plenum.neckAngle_rad, 'angle', system)}, ${length(plenum.neckLength_m)} long`,
    ),
  ];
}

function baffleRows({ baffle }: Design, { length }: Shows): Row[] {
  if (!baffle.fitted) return [row('baffle', 'not fitted')];
  return [
    row(
      'slot',
      `${length(baffle.slotWidth_m)} wide, sheet ${length(baffle.sheet_m)}, stand-off ${length(baffle.standOff_m)}`,
    ),
    row(
      'clearance',
      `${length(baffle.sideClearance_m)} at the sides, ${length(baffle.endClearance_m)} at the ends`,
    ),
    row('collar and leak', `collar ${length(baffle.collar_m)}, leak ${length(baffle.leakGap_m)}`),
  ];
}

function sinkRows({ sink }: Design, { length, k }: Shows): Row[] {
  const missing = said([
    sink.first ? '' : 'none before the first resistor',
    sink.last ? '' : 'none after the last',
  ]);
  return [
    row(
      'fins',
      `${sink.finCount} of ${length(sink.finThickness_m)}, ${length(sink.finHeight_m)} high, ${length(sink.length_m)} long`,
    ),
    row('plate', `${length(sink.plate_m)}, ${length(sink.width_m)} wide`),
    row('alloy', `${sink.material}, ${k(sink.k_WPerMK)}, emissivity ${plain(sink.emissivity, 2)}`),
    ...(missing === '' ? [] : [row('end sinks', missing)]),
  ];
}

function bondRows({ bond }: Design, { length, k, heat }: Shows): Row[] {
  return [
    row('bond', `${bond.material}, ${k(bond.sheetK_WPerMK)}, ${share(bond.designShare)} of it counted on`),
    row('line', `${length(bond.filament_m)} filament, ${share(bond.voidShare)} voids`),
    row('bears', `${heat(bond.serviceLimit_K)}, glass transition ${heat(bond.glassTransition_K)}`),
  ];
}

function secondFaceRows({ secondFace }: Design, { length, k }: Shows): Row[] {
  if (secondFace.way === 'free') return [row('second face', 'free')];
  if (secondFace.way === 'bonded') return [row('second face', 'bonded like the first')];
  return [
    row(
      'tabs',
      `${secondFace.tabCount} of ${length(secondFace.tabWidth_m)} × ${length(secondFace.tabThickness_m)}, ${length(secondFace.tabLength_m)} free, ${k(secondFace.tab_WPerMK)}`,
    ),
  ];
}

function boxRows({ box }: Design, { length, heat, k, system }: Shows): Row[] {
  const tilt = box.tilt_rad === 0 ? '' : `tilted ${quantity(box.tilt_rad, 'angle', system)}`;
  return [
    row(
      'bay',
      said([
        `${length(box.length_m)} × ${length(box.width_m)} inside`,
        `headroom ${length(box.headroom_m)}`,
        tilt,
      ]),
    ),
    row(
      'sheet',
      `${box.material}, ${length(box.sheet_m)}, ${k(box.sheet_WPerMK)}, to ${heat(box.softening_K)}`,
    ),
  ];
}

function limitInputs({ limits, room }: Design, { heat, system }: Shows): Row[] {
  const bare = (T_K: number) => plain0(amount(T_K, 'temperature', system));
  const sound = limits.soundJudged
    ? `${quantity(limits.sound_dBA, 'soundLevel', system)} at ${quantity(room.listening_m, 'distance', system)}`
    : '';
  return [
    row(
      'limits',
      said([
        limits.touchable ? `touch ${bare(limits.touch_K)}` : '',
        `joint ${bare(limits.joint_K)}`,
        `exhaust ${bare(limits.exhaust_K)}`,
        `wall ${heat(limits.wall_K)}`,
        sound,
      ]),
    ),
    row('spare', `${times(limits.spareFactor)}; settled within ${plain(limits.settled * 1e6)}\u202fppm`),
  ];
}
