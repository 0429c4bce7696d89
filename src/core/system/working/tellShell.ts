import { card as narrowGap } from '../../conduction/narrowGap_WPerM2K.ts';
import { card as warming } from '../../fins/sinkAirConductance_WPerK.ts';
import { card as outsidePlate } from '../../freeConvection/nusseltVerticalPlateChurchillChu1975.ts';
import { card as rayleigh } from '../../freeConvection/rayleigh.ts';
import { card as channelEmissivity } from '../../radiation/channelEmissivity.ts';
import { card as facing } from '../../radiation/facingEmissivity.ts';
import { card as radiation } from '../../radiation/radiationCoefficient_WPerM2K.ts';
import type { SinkPath } from '../heatLayout.ts';
import { freeShare, least_m, lookingFaces, type ShellFaces, type ShellHeat } from '../shell.ts';
import {
  areaConductance,
  betweenWalls,
  byGap,
  depthOverGap,
  difference,
  diffusivity,
  doubled,
  expansion,
  gapAir,
  gapConductance,
  heldEmissivity,
  kinematic,
  outOfWall,
  outsideConvection,
  outsideShare,
  pastGap,
  seenOpening,
  sideBySide,
  steeper,
  tangentOffset,
  tangentSum,
  throughBoth,
  throughCollar,
  throughWall,
  upwardsOffset,
} from './balances/shellBalances.ts';
import { capacityFlow } from './balances/sinkBalances.ts';
import { always, type Place, type Quantity, settled } from './book.ts';
import { meanCp, roomAir } from './tellAir.ts';
import { numbered, type Telling } from './telling.ts';
import { finGapOf } from './tellLosses.ts';

/** Ways of one sink to the sheet beside it and to the room. */
export interface ShellTold {
  readonly toGap_WPerK: Quantity;
  readonly radiation_WPerK: Quantity;
  readonly carry_WPerK: Quantity;
  /** Past the air of the gap, and with it. */
  readonly past_WPerK: Quantity;
  readonly carried_WPerK: Quantity;
  readonly outwards_WPerK: Quantity;
  readonly outwardsOffset_W: Quantity;
  readonly upwards_WPerK: Quantity;
  readonly upwardsOffset_W: Quantity;
  readonly outerShare: Quantity;
}

/** All that the working of one sink's walls needs. */
interface Walls {
  readonly t: Telling;
  readonly s: number;
  readonly place: Place;
  readonly faces: ShellFaces;
  readonly heat: ShellHeat;
  readonly sinkEmissivity: Quantity | number;
  readonly sheetEmissivity: Quantity | number;
}

export function tellShell(t: Telling, s: number, nodes: SinkPath | null): ShellTold | null {
  const faces = t.work.heat.faces[s];
  const heat = t.work.shellHeat[s];
  if (!nodes || !faces || !heat) return null;
  const { sink, box, factors } = t.work.input;
  const emissivity = (own: number) =>
    factors.emissivity === 1
      ? own
      : t.balance(heldEmissivity, t.at('box'), { factor: factors.emissivity, own });
  const walls: Walls = {
    t,
    s,
    place: t.at('sink', s),
    faces,
    heat,
    sinkEmissivity: emissivity(sink.emissivity),
    sheetEmissivity: emissivity(box.sheetEmissivity),
  };
  return { ...tellGap(walls), ...tellUpwards(walls), ...tellOutside(walls) };
}

/** Across the gap: by its air and by radiation. */
function tellGap({ t, s, place, faces, heat, sinkEmissivity, sheetEmissivity }: Walls) {
  const { input, bank } = t.work;
  const looking = lookingFaces(input, bank, s);
  const k_WPerMK = roomAir(t).k();
  const coefficients = looking.map(({ gap_m }) => t.card(narrowGap, place, { k_WPerMK, gap_m }));
  const areas = looking.map(({ area_m2 }) => area_m2);
  const toGap_WPerK = t.balance(
    gapConductance,
    place,
    { ...numbered('h_WPerM2K', coefficients), ...numbered('area_m2', areas) },
    heat.toGap_WPerK,
  );
  const pair = { first: sinkEmissivity, second: sheetEmissivity };
  const emissivity = t.card(facing, t.at('box'), pair, faces.facing);
  const between = { emissivity, T_K: settled(heat.plateAt_K), room_K: settled(heat.wallAt_K) };
  const h_WPerM2K = t.card(radiation, place, between);
  const across = { h_WPerM2K, area_m2: faces.area_m2 };
  const radiation_WPerK = t.balance(areaConductance, place, across, heat.radiation_WPerK);
  const massFlow_kgPerS = t.balance(gapAir, place, { gap_kgPerS: settled(heat.gapLeaving_kgPerS) });
  const cp_JPerKgK = meanCp(t);
  const given = {
    UA_WPerK: t.balance(doubled, place, { toGap_WPerK }),
    capacityFlow_WPerK: t.balance(capacityFlow, place, { massFlow_kgPerS, cp_JPerKgK }),
  };
  const carry_WPerK = t.card(warming, place, given, heat.carry_WPerK);
  return {
    toGap_WPerK,
    radiation_WPerK,
    carry_WPerK,
    past_WPerK: t.balance(pastGap, place, { toGap_WPerK, carry_WPerK }),
    carried_WPerK: t.balance(byGap, place, { toGap_WPerK, carry_WPerK }),
  };
}

/** From the fin channels to what the room sees of them, as a tangent. */
function tellUpwards({ t, place, faces, heat, sinkEmissivity }: Walls) {
  const { sink, outlet, room } = t.work.input;
  const depthRatio = t.balance(depthOverGap, t.at('box'), { length_m: sink.length_m, gap_m: finGapOf(t) });
  const apparent = t.card(channelEmissivity, t.at('box'), { emissivity: sinkEmissivity, depthRatio });
  const opening = { open: freeShare(outlet), width_m: sink.width_m, height_m: sink.finHeight_m, apparent };
  const seen_m2 = t.balance(seenOpening, t.at('box'), opening, faces.seen_m2);
  const plate_K = settled(heat.plateAt_K);
  const tangent_WPerM2K = t.card(radiation, place, { emissivity: always(1), T_K: plate_K, room_K: plate_K });
  const up_WPerM2K = t.card(radiation, place, { emissivity: always(1), T_K: plate_K, room_K: room.T_K });
  const upwards = { h_WPerM2K: tangent_WPerM2K, area_m2: seen_m2 };
  const offset = { seen_m2, tangent_WPerM2K, up_WPerM2K, plate_K, room_K: room.T_K };
  return {
    upwards_WPerK: t.balance(areaConductance, place, upwards, heat.upwards_WPerK),
    upwardsOffset_W: t.balance(upwardsOffset, place, offset, heat.upwardsOffset_W),
  };
}

/** From the facing sheet through the box wall to the room, as a tangent. */
function tellOutside(walls: Walls) {
  const { t, place, faces, heat, sheetEmissivity } = walls;
  const { box, room } = t.work.input;
  const convection_WPerM2K = tellOutsideAir(walls);
  const outer_K = settled(heat.outerAt_K);
  const own = { emissivity: sheetEmissivity, T_K: outer_K };
  const outside_WPerM2K = t.balance(sideBySide, place, {
    first_WPerM2K: convection_WPerM2K,
    second_WPerM2K: t.card(radiation, place, { ...own, room_K: room.T_K }),
  });
  const wall_m2KPerW = t.balance(throughWall, place, {
    sheet_m: box.sheet_m,
    k_WPerMK: box.sheet_WPerMK,
    h_WPerM2K: outside_WPerM2K,
  });
  const collared_WPerK = tellCollar(walls, wall_m2KPerW);
  const { area_m2, collared_m2 } = faces;
  const out_WPerK = t.balance(outOfWall, place, { collared_WPerK, area_m2, collared_m2, wall_m2KPerW });
  const outer = { out_WPerK, h_WPerM2K: outside_WPerM2K, area_m2 };
  const outerShare = t.balance(outsideShare, place, outer, heat.outerShare);
  const tangent_WPerM2K = t.card(radiation, place, { ...own, room_K: outer_K });
  const rising = { out_WPerK, outerShare, convection_WPerM2K, tangent_WPerM2K, outside_WPerM2K };
  const more_WPerK = t.balance(steeper, place, rising);
  const offset = { more_WPerK, wall_K: settled(heat.wallAt_K), room_K: room.T_K };
  return {
    outerShare,
    outwards_WPerK: t.balance(tangentSum, place, { plain_WPerK: out_WPerK, more_WPerK }, heat.outwards_WPerK),
    outwardsOffset_W: t.balance(tangentOffset, place, offset, heat.outwardsOffset_W),
  };
}

/** Free convection from the outside of the box wall. */
function tellOutsideAir({ t, place, heat }: Walls): Quantity {
  const { input } = t.work;
  const air = roomAir(t);
  const length_m = input.sink.length_m;
  const prandtl = air.prandtl();
  const nu_m2PerS = t.balance(kinematic, air.place, { mu_PaS: air.mu(), rho_kgPerM3: air.rho() });
  const alpha_m2PerS = t.balance(diffusivity, air.place, { nu_m2PerS, prandtl });
  const beta_PerK = t.balance(expansion, air.place, { T_K: input.room.T_K });
  const dT_K = t.balance(difference, place, { first_K: settled(heat.outerAt_K), second_K: input.room.T_K });
  const number = t.card(rayleigh, place, { beta_PerK, nu_m2PerS, alpha_m2PerS, dT_K, length_m });
  const nusselt = t.card(outsidePlate, place, { rayleigh: number, prandtl });
  const given = { factor: input.factors.outsideHeat, nusselt, k_WPerMK: air.k(), length_m };
  return t.balance(outsideConvection, place, given);
}

/** Through the collar, where there is one. */
function tellCollar(walls: Walls, wall_m2KPerW: Quantity): Quantity {
  const { t, place, faces, heat, sheetEmissivity } = walls;
  if (!(faces.collared_m2 > 0)) return always(0);
  const k_WPerMK = t.work.input.box.sheet_WPerMK;
  const collar = { area_m2: faces.collared_m2, sheet_m: faces.collarSheet_m, k_WPerMK, wall_m2KPerW };
  if (!(faces.behind_m > least_m)) return t.balance(throughBoth, place, collar);
  const pair = { first: sheetEmissivity, second: sheetEmissivity };
  const emissivity = t.card(facing, t.at('box'), pair, faces.wallToWall);
  const seen = { emissivity, T_K: settled(heat.wallAt_K), room_K: settled(heat.outerAt_K) };
  const between_WPerM2K = t.balance(betweenWalls, place, {
    k_WPerMK: roomAir(t).k(),
    gap_m: faces.behind_m,
    radiation_WPerM2K: t.card(radiation, place, seen),
  });
  return t.balance(throughCollar, place, { ...collar, between_WPerM2K });
}
