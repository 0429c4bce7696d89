import { boxFans } from '../../core/system/fans.ts';
import { fansStopped, ordinaryRun, type Run, type SystemInput } from '../../core/system/input.ts';
import { nominalTotal_W } from '../../core/system/loadOf.ts';
import type { Conditions } from './types.ts';

/** A box as it was run on the bench. */
export interface OnBench {
  readonly input: SystemInput;
  readonly run: Run;
}

/**
 * The box at the watts, room and fan volts of a reading, all as measured: nothing at its worst, no sag. Watts keep their shares
 * among the resistors; fans of other kinds have their supply in the proportion of the first. Pulses are not followed: means were read.
 * @returns `null` for watts in a box that has no load to be scaled
 */
export function onBench(input: SystemInput, { load_W, room_K, fan_V }: Conditions): OnBench | null {
  const given_W = nominalTotal_W(input);
  if (!(given_W > 0) && load_W > 0) return null;
  const { fan, load, room } = input;
  const times = fan.supply_V > 0 ? fan_V / fan.supply_V : null;
  const scale = given_W > 0 ? (load.scale * load_W) / given_W : load.scale;
  const there: SystemInput = {
    ...input,
    room: { ...room, T_K: room_K },
    load: { ...load, atWorst: false, scale },
    fan: {
      ...fan,
      supply_V: fan_V,
      others: fan.others.map((other) => ({
        ...other,
        supply_V: times === null ? (other.rated_V * fan_V) / fan.rated_V : other.supply_V * times,
      })),
    },
  };
  const turns = boxFans(there).some(({ speedRatio }) => speedRatio > 0);
  return { input: there, run: { ...(turns ? ordinaryRun : fansStopped), pulses: false } };
}

/** Equal for readings that one answer, or one course of temperatures, gives. */
export function conditionsKey({ load_W, room_K, fan_V, time_s }: Conditions): string {
  return [load_W, room_K, fan_V, time_s === null ? 'settled' : 'course'].join(' ');
}
