import { fansStopped, ordinaryRun, type Run, type SystemInput } from '../core/system/input.ts';
import type { Outcome } from '../core/system/outcome.ts';
import { solveSystem } from '../core/system/solveSystem.ts';
import { pulseSwing, ratedLoad } from './ratedLoad.ts';

/** Rated watts over one condition of the room. */
export interface DeratingCurve {
  /** Kelvin or metres, rising. */
  readonly at: readonly number[];
  /** Nil where not even the smallest load holds; `null` where there is no answer. */
  readonly running_W: readonly (number | null)[];
  readonly stopped_W: readonly (number | null)[];
}

/** Hottest film over the voltage at the fan, at the load as given. */
export interface SupplyCurve {
  readonly supply_V: readonly number[];
  /** `null` where the fan does not start or the box has no answer. */
  readonly film_K: readonly (number | null)[];
}

/** Rated load over the temperature of the room, with and without fans. */
export function deratingOverAmbient(
  input: SystemInput,
  at_K: readonly number[],
  swings = swingsOf(input),
): DeratingCurve {
  return curve(swings, at_K, (T_K) => ({ ...input, room: { ...input.room, T_K } }));
}

/** Rated load over altitude, with and without fans; the pressure of the standard atmosphere there. */
export function deratingOverAltitude(
  input: SystemInput,
  at_m: readonly number[],
  swings = swingsOf(input),
): DeratingCurve {
  return curve(swings, at_m, (altitude_m) => ({
    ...input,
    room: { ...input.room, altitude_m, pressure_Pa: null },
  }));
}

/** How far films swing in pulses, with and without fans, over their mean rises: hardly a matter of the room. */
export interface Swings {
  readonly running: number;
  readonly stopped: number;
}

export function swingsOf(
  input: SystemInput,
  running: Outcome = solveSystem(input),
  stopped: Outcome = solveSystem(input, fansStopped),
): Swings {
  return { running: running.ok ? pulseSwing(running) : 1, stopped: stopped.ok ? pulseSwing(stopped) : 1 };
}

function curve(swings: Swings, at: readonly number[], place: (value: number) => SystemInput): DeratingCurve {
  const watts = (run: Run, swing: number) =>
    at.map((value) => ratedLoad(place(value), run, swing)?.total_W ?? null);
  return {
    at,
    running_W: watts(ordinaryRun, swings.running),
    stopped_W: watts(fansStopped, swings.stopped),
  };
}

/** Hottest film over the supply of all fans, each in its own proportion. @param supply_V of the first kind of fan */
export function filmOverSupply(input: SystemInput, supply_V: readonly number[]): SupplyCurve {
  const { fan } = input;
  return {
    supply_V,
    film_K: supply_V.map((volts) => {
      const share = fan.supply_V > 0 ? volts / fan.supply_V : 1;
      const others = fan.others.map((other) => ({ ...other, supply_V: other.supply_V * share }));
      const outcome = solveSystem(
        { ...input, fan: { ...fan, supply_V: volts, supplySag: 0, others } },
        { ...ordinaryRun, pulses: false },
      );
      return outcome.ok ? (outcome.heat.positions[outcome.heat.hottest]?.film_K ?? null) : null;
    }),
  };
}
