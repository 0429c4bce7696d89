import type { Design } from '../model/design.ts';
import type { PartId } from './drawing.ts';
import { amount, plain, quantity } from './format.ts';
import type { InputGroup, InputRow, UnitSystem } from './types.ts';
import { counted, share, temperature, times } from './words.ts';

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
  const group = (part: PartId, title: string, rows: InputRow[]): InputGroup => ({ part, title, rows });
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

function row(label: string, value: string): InputRow {
  return { label, value };
}

function roomRows({ room }: Design, { heat, system }: Shows): InputRow[] {
  return [
    row(
      'air taken in',
      `${heat(room.T_K)}, ${quantity(room.altitude_m, 'altitude', system)} up, ${share(room.relativeHumidity)} humid`,
    ),
  ];
}

function loadRows({ load }: Design, { volts, system }: Shows): InputRow[] {
  const amps = quantity(load.supply_A, 'current', system, 3);
  const ways: Readonly<Record<Design['load']['excitation'], string>> = {
    wattsEach: 'watts given for each',
    seriesVolts: `${volts(load.supply_V)} across the series string`,
    seriesAmps: `${amps} through the series string`,
    parallelVolts: `${volts(load.supply_V)} across the parallel set`,
    parallelAmps: `${amps} into the parallel set`,
    switched: `each switched across ${volts(load.supply_V)}`,
  };
  return [
    row(
      'fed by',
      load.excitation === 'wattsEach'
        ? ways.wattsEach
        : `${ways[load.excitation]}, up to ${share(load.supplyTolerance)} more`,
    ),
    row('judged', `${load.atWorst ? 'at worst tolerance' : 'at nominal watts'}, duty ${share(load.duty)}`),
  ];
}

function resistorRows({ parts, positions }: Design, { system, length, heat }: Shows): InputRow[] {
  return parts.flatMap((part, index) => {
    const used = positions.filter((position) => position.part === index).length;
    if (used === 0) return [];
    const edges = [part.length_m, part.width_m].map((edge) => plain(amount(edge, 'length', system), 3));
    const size = `${edges.join(' × ')} × ${length(part.thickness_m)}`;
    return [
      row(
        `${used} × ${part.name}`,
        `${quantity(part.R_Ohm, 'resistance', system)} ±${share(part.tolerance)}, ${quantity(part.rated_W, 'power', system)} to ${heat(part.fullPowerUpTo_K)}, none at ${heat(part.zeroPowerAt_K)}, ${size}`,
      ),
    ];
  });
}

function fanRows({ fan }: Design, { volts, length, system }: Shows): InputRow[] {
  const first = fan.curve[0];
  const last = fan.curve.at(-1);
  const ends =
    first && last
      ? `${quantity(first.dp_Pa, 'pressure', system)} to ${quantity(last.flow_m3PerS, 'volumeFlow', system)}, ${fan.curve.length} points`
      : '';
  return [
    row('fan', fan.name),
    row('supply', `${volts(fan.supply_V)}, rated ${volts(fan.rated_V)}, starts at ${volts(fan.start_V)}`),
    row('curve', ends),
    row('size', `${length(fan.size_m)} frame, ${length(fan.opening_m)} opening, ${length(fan.hub_m)} hub`),
  ];
}

function openingRows({ inlet, outlet, extras }: Design, { system }: Shows): InputRow[] {
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
  return [
    row('guard', words(inlet.guard)),
    row('filter', inlet.filter ? 'fitted' : 'none'),
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

function plenumRows({ plenum }: Design, { length, system }: Shows): InputRow[] {
  return [
    row('plenum', `${length(plenum.height_m)} high`),
    row(
      'neck-down',
      `${quantity(plenum.neckAngle_rad, 'angle', system)}, ${length(plenum.neckLength_m)} long`,
    ),
  ];
}

function baffleRows({ baffle }: Design, { length }: Shows): InputRow[] {
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

function sinkRows({ sink }: Design, { length, k }: Shows): InputRow[] {
  const missing = [
    sink.first ? '' : 'none before the first resistor',
    sink.last ? '' : 'none after the last',
  ].filter((text) => text !== '');
  return [
    row(
      'fins',
      `${sink.finCount} of ${length(sink.finThickness_m)}, ${length(sink.finHeight_m)} high, ${length(sink.length_m)} long`,
    ),
    row('plate', `${length(sink.plate_m)}, ${length(sink.width_m)} wide`),
    row('alloy', `${sink.material}, ${k(sink.k_WPerMK)}, emissivity ${plain(sink.emissivity, 2)}`),
    ...(missing.length > 0 ? [row('end sinks', missing.join(', '))] : []),
  ];
}

function bondRows({ bond }: Design, { length, k, heat }: Shows): InputRow[] {
  return [
    row('bond', `${bond.material}, ${k(bond.sheetK_WPerMK)}, ${share(bond.designShare)} of it counted on`),
    row('line', `${length(bond.filament_m)} filament, ${share(bond.voidShare)} voids`),
    row('bears', `${heat(bond.serviceLimit_K)}, glass transition ${heat(bond.glassTransition_K)}`),
  ];
}

function secondFaceRows({ secondFace }: Design, { length, k }: Shows): InputRow[] {
  if (secondFace.way === 'free') return [row('second face', 'free')];
  if (secondFace.way === 'bonded') return [row('second face', 'bonded like the first')];
  return [
    row(
      'tabs',
      `${secondFace.tabCount} of ${length(secondFace.tabWidth_m)} × ${length(secondFace.tabThickness_m)}, ${length(secondFace.tabLength_m)} free, ${k(secondFace.tab_WPerMK)}`,
    ),
  ];
}

function boxRows({ box }: Design, { length, heat }: Shows): InputRow[] {
  return [
    row('bay', `${length(box.length_m)} × ${length(box.width_m)} inside, headroom ${length(box.headroom_m)}`),
    row('sheet', `${box.material}, ${length(box.sheet_m)}, may have ${heat(box.softening_K)}`),
  ];
}

function limitInputs({ limits }: Design, { heat }: Shows): InputRow[] {
  const touch = limits.touchable ? `touch ${heat(limits.touch_K)}, ` : '';
  return [
    row('limits', `${touch}joint ${heat(limits.joint_K)}, exhaust ${heat(limits.exhaust_K)}`),
    row('spare wanted', `${times(limits.spareFactor)} on every rise`),
  ];
}
