import { boxFans } from '../../core/system/fans.ts';
import type { SystemInput } from '../../core/system/input.ts';
import { nominalTotal_W } from '../../core/system/loadOf.ts';
import { solveSystem } from '../../core/system/solveSystem.ts';
import { ratedLoad } from '../ratedLoad.ts';
import { type OnBench, onBench } from './conditions.ts';
import type { AdvisedRun, Conditions, NoAnswer } from './types.ts';

export const advisedRuns: readonly AdvisedRun[] = ['nominal', 'reduced', 'stopped'];

/** A way to run the box for readings that does it no harm. */
export type Runnable =
  | { readonly ok: true; readonly conditions: Conditions; readonly bench: OnBench }
  | { readonly ok: false; readonly why: NoAnswer };

/** Of its supply, or of its start voltage: less fan, but one that turns for sure. */
const reducedShare = 0.6;
const aboveStart = 1.15;

/**
 * The box of the design as it would be run: its load, or so much of it that every limit holds with the spare asked for, rounded
 * down; its room; its fan at its supply, at less, or at a stand.
 */
export function runnable(input: SystemInput, way: AdvisedRun): Runnable {
  const fan_V = voltsOf(input, way);
  if (fan_V === null) return { ok: false, why: 'nothingTurns' };
  const asked = { room_K: input.room.T_K, fan_V, time_s: null };
  const given_W = Number(nominalTotal_W(input).toPrecision(4));
  const whole = onBench(input, { ...asked, load_W: given_W });
  if (!whole) return { ok: false, why: 'noLoad' };
  if (way !== 'stopped' && whole.run.fans === 'stopped') return { ok: false, why: 'nothingTurns' };
  const rated = ratedLoad(whole.input, whole.run);
  const conditions = {
    ...asked,
    load_W: rated && rated.total_W < given_W ? downToTwoDigits(rated.total_W) : given_W,
  };
  const bench = onBench(input, conditions) ?? whole;
  const outcome = solveSystem(bench.input, bench.run);
  return outcome.ok ? { ok: true, conditions, bench } : { ok: false, why: outcome.reason };
}

function voltsOf(input: SystemInput, way: AdvisedRun): number | null {
  if (way === 'stopped') return 0;
  const { supply_V, start_V } = input.fan;
  if (way === 'nominal') return boxFans(input).some(({ speedRatio }) => speedRatio > 0) ? supply_V : null;
  const reduced_V = Math.round(10 * Math.max(reducedShare * supply_V, aboveStart * start_V)) / 10;
  return reduced_V < 0.9 * supply_V ? reduced_V : null;
}

/** Rounded to the safe side, to what one sets on a bench supply. */
function downToTwoDigits(watts: number): number {
  if (!(watts > 0)) return 0;
  const unit = 10 ** (Math.floor(Math.log10(watts)) - 1);
  return Number((Math.floor(watts / unit + 1e-9) * unit).toPrecision(2));
}
