import type { AirProperties } from '../../air/airProperties.ts';
import { card as conductivity } from '../../air/conductivity_WPerMK.ts';
import { card as density } from '../../air/density_kgPerM3.ts';
import { card as heatCapacity } from '../../air/heatCapacity_JPerKgK.ts';
import { card as moistFactor } from '../../air/moistFactor.ts';
import { card as saturation } from '../../air/saturationPressure_Pa.ts';
import { card as standardPressure } from '../../air/standardPressure_Pa.ts';
import { card as viscosity } from '../../air/viscosity_PaS.ts';
import type { LinkAir } from '../airPath.ts';
import { meanHeatCapacity, moistDensity, prandtlNumber } from './balances/airBalances.ts';
import { type Place, type Quantity, settled } from './book.ts';
import type { Telling } from './telling.ts';

/** Properties of the air in one place, told when they are asked for. */
export interface AirTold {
  readonly place: Place;
  readonly rho: () => Quantity;
  readonly mu: () => Quantity;
  readonly k: () => Quantity;
  readonly cp: () => Quantity;
  readonly prandtl: () => Quantity;
}

/** Pressure of the air: what the barometer reads, or what the altitude tells. */
export function airPressure(t: Telling): Quantity | number {
  const { altitude_m, pressure_Pa } = t.work.input.room;
  return pressure_Pa ?? t.card(standardPressure, t.at('room'), { altitude_m }, t.work.p_Pa);
}

function airIn(t: Telling, place: Place, air: AirProperties, T_K: Quantity | number): AirTold {
  const mu = () => t.card(viscosity, place, { T_K }, air.mu_PaS);
  const k = () => t.card(conductivity, place, { T_K }, air.k_WPerMK);
  const cp = () => t.card(heatCapacity, place, { T_K }, air.cp_JPerKgK);
  return {
    place,
    mu,
    k,
    cp,
    rho: () => {
      const { T_K: room_K, relativeHumidity } = t.work.input.room;
      const room = t.at('room');
      const p_Pa = airPressure(t);
      const saturation_Pa = t.card(saturation, room, { T_K: room_K });
      const moist = t.card(moistFactor, room, { saturation_Pa, p_Pa, relativeHumidity }, t.work.moist);
      const dry_kgPerM3 = t.card(density, place, { T_K, p_Pa });
      return t.balance(moistDensity, place, { moist, dry_kgPerM3 }, air.rho_kgPerM3);
    },
    prandtl: () =>
      t.balance(prandtlNumber, place, { mu_PaS: mu(), cp_JPerKgK: cp(), k_WPerMK: k() }, air.prandtl),
  };
}

/** Air of the room; its temperature is typed in. */
export function roomAir(t: Telling): AirTold {
  return airIn(t, t.at('room'), t.work.room, t.work.input.room.T_K);
}

export function sinkAir(t: Telling, s: number): AirTold {
  const air = t.work.inSink[s] as AirProperties;
  return airIn(t, t.at('sink', s), air, settled(air.T_K));
}

/** Air that a link carries. */
export function linkAir(t: Telling, air: LinkAir): AirTold {
  const { work } = t;
  if (typeof air === 'number') return sinkAir(t, air);
  const there = (part: 'plenum' | 'gap' | 'exhaust') =>
    airIn(t, t.at(part), work[part], settled(work[part].T_K));
  if (air === 'gap') return there('gap');
  if (work.reversed) return air === 'exhaust' ? roomAir(t) : there('exhaust');
  return air === 'room' ? roomAir(t) : there(air);
}

/** Specific heat that the balances of the air use. */
export function meanCp(t: Telling): Quantity {
  const { plenum, exhaust, cp_JPerKgK } = t.work;
  const entering_JPerKgK = airIn(t, t.at('plenum'), plenum, settled(plenum.T_K)).cp();
  const leaving_JPerKgK = airIn(t, t.at('exhaust'), exhaust, settled(exhaust.T_K)).cp();
  return t.balance(meanHeatCapacity, t.at('box'), { entering_JPerKgK, leaving_JPerKgK }, cp_JPerKgK);
}
