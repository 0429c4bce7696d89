import fc from 'fast-check';
import type { Factors, SystemInput } from '../../src/core/system/input.ts';

/** Thirty-odd inputs and all method factors of a design, each moved by up to `spread` to either side. */
export function neighbourOf(input: SystemInput, shares: readonly number[], spread = 0.04): SystemInput {
  let next = 0;
  const by = () => 1 + spread * (2 * (shares[next++ % shares.length] as number) - 1);
  const { room, load, sink, bond, fan, plenum, baffle, box, secondFace } = input;
  const thickness = by();
  const factors = Object.fromEntries(
    Object.entries(input.factors).map(([key, value]) => [key, value * by()]),
  );
  return {
    ...input,
    room: { ...room, T_K: room.T_K + 100 * (by() - 1), relativeHumidity: room.relativeHumidity * by() },
    load: { ...load, supply: load.supply * by() },
    positions: input.positions.map((position) => ({
      ...position,
      part: {
        ...position.part,
        R_Ohm: position.part.R_Ohm * by(),
        thickness_m: position.part.thickness_m * thickness,
      },
      power_W: position.power_W * by(),
    })),
    sink: {
      ...sink,
      k_WPerMK: sink.k_WPerMK * by(),
      length_m: sink.length_m * by(),
      finHeight_m: sink.finHeight_m * by(),
      finThickness_m: sink.finThickness_m * by(),
      plate_m: sink.plate_m * by(),
      emissivity: sink.emissivity * (2 - by()),
    },
    bond: { ...bond, k_WPerMK: bond.k_WPerMK * by(), filament_m: bond.filament_m * by() },
    secondFace: { ...secondFace, tabThickness_m: secondFace.tabThickness_m * by() },
    fan: { ...fan, supply_V: fan.supply_V * by(), power_W: fan.power_W * by() },
    plenum: { ...plenum, height_m: plenum.height_m * by() },
    baffle: baffle && {
      ...baffle,
      slotWidth_m: baffle.slotWidth_m * by(),
      sideClearance_m: baffle.sideClearance_m * by(),
      endClearance_m: baffle.endClearance_m * by(),
      leakGap_m: baffle.leakGap_m * by(),
    },
    box: { ...box, headroom_m: box.headroom_m * by(), sheet_WPerMK: box.sheet_WPerMK * by() },
    factors: factors as unknown as Factors,
  };
}

/** As many shares as a neighbour of eight resistors reads, and more. */
export const arbitraryShares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), {
  minLength: 60,
  maxLength: 60,
});
