import type { AirProperties } from '../air/airProperties.ts';
import { narrowGap_WPerM2K } from '../conduction/narrowGap_WPerM2K.ts';
import { sinkAirConductance_WPerK } from '../fins/sinkAirConductance_WPerK.ts';
import { nusseltBySlope } from '../freeConvection/nusseltVerticalPlateChurchillChu1975.ts';
import { buoyancy_PerM3K, rayleigh } from '../freeConvection/rayleigh.ts';
import { channelEmissivity } from '../radiation/channelEmissivity.ts';
import { facingEmissivity } from '../radiation/facingEmissivity.ts';
import { radiationCoefficient_WPerM2K } from '../radiation/radiationCoefficient_WPerM2K.ts';
import type { BankGeometry } from './geometry.ts';
import type { GrilleInput, SystemInput } from './input.ts';

/** A gap closed by a slip of the saw still keeps this much air. */
export const least_m = 5e-5;

/** What of the walls beside one sink, and of the opening above it, follows from the drawing alone. */
export interface ShellFaces {
  /** Faces of the sink that look at a wall, and Σ area over gap. */
  readonly area_m2: number;
  readonly areaOverGap_m: number;
  /** Part of it behind a collar, and the room between collar and box wall; sheet of both. */
  readonly collared_m2: number;
  readonly collarSheet_m: number;
  readonly behind_m: number;
  /** Opening of the fin channels above, times its apparent emissivity and what the grille leaves free. */
  readonly seen_m2: number;
  /** Emissivity of sink and facing wall as one, of wall and wall, and of the outside. */
  readonly facing: number;
  readonly wallToWall: number;
  readonly sheet: number;
}

/** Conductances of the walls beside one sink at their present temperatures. */
export interface ShellHeat {
  /** Sink to gap air and gap air to wall, by conduction across half of the gap each. */
  toGap_WPerK: number;
  radiation_WPerK: number;
  carry_WPerK: number;
  /**
   * To the room, as tangents at the present temperatures: Q = G·(T − T_room) − offset. The colder a wall, the less of its
   * warmth it gives; a tangent knows, and the rounds of the solver settle sooner.
   */
  outwards_WPerK: number;
  outwardsOffset_W: number;
  upwards_WPerK: number;
  upwardsOffset_W: number;
  /** Outside of the box wall over the wall that faces the sink, both as rises over the room. */
  outerShare: number;
  /** Temperatures that all this was worked at, and the air of the gap that leaves the box. */
  plateAt_K: number;
  wallAt_K: number;
  outerAt_K: number;
  gapLeaving_kgPerS: number;
}

export function createShellHeat(): ShellHeat {
  return {
    toGap_WPerK: 1,
    radiation_WPerK: 0,
    carry_WPerK: 0,
    outwards_WPerK: 0,
    outwardsOffset_W: 0,
    upwards_WPerK: 0,
    upwardsOffset_W: 0,
    outerShare: 0.5,
    plateAt_K: 0,
    wallAt_K: 0,
    outerAt_K: 0,
    gapLeaving_kgPerS: 0,
  };
}

/** A face of a sink, and the gap to the wall that it looks at. */
export interface LookingFace {
  readonly area_m2: number;
  readonly gap_m: number;
}

/** Faces of one sink that look at a wall: along the collar and above it, at the ends of the row also outwards. */
export function lookingFaces(input: SystemInput, bank: BankGeometry, s: number): LookingFace[] {
  const { sink, box, baffle } = input;
  const high_m = sink.length_m;
  const collar_m = baffle ? bank.collar_m : 0;
  const depth_m = bank.sinkDepth_m[s] as number;
  const isEnd = s === 0 || s === bank.sinkCount - 1;
  const look = (area_m2: number, gap_m: number) => ({ area_m2, gap_m: Math.max(least_m, gap_m) });
  const faces = [
    look(2 * depth_m * collar_m, bank.side_m),
    look(2 * depth_m * (high_m - collar_m), (box.width_m - sink.width_m) / 2),
  ];
  if (!isEnd) return faces;
  return [
    ...faces,
    look(sink.width_m * collar_m, bank.end_m),
    look(sink.width_m * (high_m - collar_m), (box.length_m - bank.row_m) / 2),
  ];
}

export function shellFaces(input: SystemInput, bank: BankGeometry, s: number): ShellFaces {
  const { sink, box, baffle, factors } = input;
  const high_m = sink.length_m;
  const collar_m = baffle ? bank.collar_m : 0;
  const bay_m = Math.max(least_m, (box.width_m - sink.width_m) / 2);
  let area_m2 = 0;
  let areaOverGap_m = 0;
  for (const face of lookingFaces(input, bank, s)) {
    area_m2 += face.area_m2;
    areaOverGap_m += face.area_m2 / face.gap_m;
  }
  const emissivity = Math.min(1, sink.emissivity * factors.emissivity);
  const sheet = Math.min(1, box.sheetEmissivity * factors.emissivity);
  const open = freeShare(input.outlet);
  return {
    area_m2,
    areaOverGap_m,
    collared_m2: (area_m2 * collar_m) / high_m,
    collarSheet_m: baffle ? baffle.sheet_m : 0,
    behind_m: baffle ? Math.max(0, bay_m - bank.side_m - baffle.sheet_m) : 0,
    seen_m2: open * sink.width_m * sink.finHeight_m * channelEmissivity(emissivity, high_m / bank.finGap_m),
    facing: facingEmissivity(emissivity, sheet),
    wallToWall: facingEmissivity(sheet, sheet),
    sheet,
  };
}

/** Share of the opening above the fins through which the room sees them; nothing is known of a loss typed in. */
export function freeShare({ kind, freeShare: free }: GrilleInput): number {
  return kind === 'none' ? 1 : kind === 'ownLoss' ? 0 : free;
}

/** What the walls of all sinks meet alike. */
export interface ShellSurroundings {
  readonly input: SystemInput;
  readonly room: AirProperties;
  readonly entering_K: number;
  readonly cp_JPerKgK: number;
  /** Rayleigh number of the outside of a wall, per kelvin, and what its sixth root counts by. */
  readonly outsidePerK: number;
  readonly outsideSlope: number;
}

/** @returns g·β·L³/(ν·α) of the room's air on the height of the sinks */
export function outsidePerK(room: AirProperties, height_m: number): number {
  const nu = room.mu_PaS / room.rho_kgPerM3;
  return rayleigh(buoyancy_PerM3K(1 / room.T_K, nu, nu / room.prandtl), 1, height_m);
}

/**
 * Conductances beside one sink: across the gap by conduction and radiation, through the collar and the box wall, from its
 * outside by free convection and radiation, and upwards from the fin channels to what the room sees of them.
 * @param plateRise_K, wallRise_K over the entering air
 */
export function updateShell(
  heat: ShellHeat,
  faces: ShellFaces,
  around: ShellSurroundings,
  plateRise_K: number,
  wallRise_K: number,
  gapLeaving_kgPerS: number,
): void {
  const { room, input, entering_K } = around;
  const { box, sink, factors } = input;
  const room_K = room.T_K;
  const plate_K = entering_K + plateRise_K;
  const wall_K = entering_K + wallRise_K;
  heat.plateAt_K = plate_K;
  heat.wallAt_K = wall_K;
  heat.gapLeaving_kgPerS = gapLeaving_kgPerS;
  heat.toGap_WPerK = narrowGap_WPerM2K(room.k_WPerMK, 1) * faces.areaOverGap_m;
  heat.radiation_WPerK = faces.area_m2 * radiationCoefficient_WPerM2K(faces.facing, plate_K, wall_K);
  heat.carry_WPerK = sinkAirConductance_WPerK(
    2 * heat.toGap_WPerK,
    Math.max(0, gapLeaving_kgPerS) * around.cp_JPerKgK,
  );
  const up = radiationCoefficient_WPerM2K(1, plate_K, room_K);
  const upTangent = radiationCoefficient_WPerM2K(1, plate_K, plate_K);
  heat.upwards_WPerK = faces.seen_m2 * upTangent;
  heat.upwardsOffset_W = faces.seen_m2 * (upTangent - up) * (plate_K - room_K);

  const outer_K = room_K + heat.outerShare * (wall_K - room_K);
  heat.outerAt_K = outer_K;
  const nusselt = nusseltBySlope(around.outsidePerK * Math.abs(outer_K - room_K), around.outsideSlope);
  const convection = (nusselt * room.k_WPerMK * factors.outsideHeat) / sink.length_m;
  const outside = convection + radiationCoefficient_WPerM2K(faces.sheet, outer_K, room_K);
  const wall = box.sheet_m / box.sheet_WPerMK + 1 / outside;
  let collared_WPerK = 0;
  if (faces.collared_m2 > 0) {
    const between =
      faces.behind_m > least_m
        ? 1 /
          (room.k_WPerMK / faces.behind_m + radiationCoefficient_WPerM2K(faces.wallToWall, wall_K, outer_K))
        : 0;
    collared_WPerK = faces.collared_m2 / (faces.collarSheet_m / box.sheet_WPerMK + between + wall);
  }
  const outwards = collared_WPerK + (faces.area_m2 - faces.collared_m2) / wall;
  heat.outerShare = outwards / (outside * faces.area_m2);
  const rising =
    (convectionRises * convection + radiationCoefficient_WPerM2K(faces.sheet, outer_K, outer_K)) / outside +
    convection / outside -
    1;
  const steeper = outwards * Math.max(0, rising) * heat.outerShare;
  heat.outwards_WPerK = outwards + steeper;
  heat.outwardsOffset_W = steeper * (wall_K - room_K);
}

/** Free convection from a small plate goes with about this power of the difference, beyond the first; steers only. */
export const convectionRises = 0.2;

/** Rise of the facing wall over the entering air, where it and the gap are at rest with a sink at this rise. */
export function restingWall_K(heat: ShellHeat, plateRise_K: number, roomRise_K: number): number {
  const { toGap_WPerK: t, carry_WPerK, radiation_WPerK: rad, outwards_WPerK: out } = heat;
  const gap = 2 * t + carry_WPerK;
  const passed = (t * t) / gap;
  return ((rad + passed) * plateRise_K + out * roomRise_K + heat.outwardsOffset_W) / (t + rad + out - passed);
}
