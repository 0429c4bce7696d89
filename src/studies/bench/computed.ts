import { meanPlate_K } from '../../core/system/meanPlate_K.ts';
import type { Outcome } from '../../core/system/outcome.ts';
import type { TimePoint } from '../../core/system/timeline.ts';
import type { Computed, NoAnswer, Reading } from './types.ts';

const none = (why: NoAnswer): Computed => ({ value: null, why });
const found = (value: number | null | undefined, why: NoAnswer): Computed =>
  value === null || value === undefined || !Number.isFinite(value) ? none(why) : { value, why: null };

/** What a settled box has where a reading was taken. Volts are those that were set: what a reading lacks is lost on the way. */
export function settledAt(reading: Reading, outcome: Outcome): Computed {
  if (reading.kind === 'voltage') return { value: reading.fan_V, why: null };
  if (!outcome.ok) return none(outcome.reason);
  const { air, heat } = outcome;
  const at = reading.number - 1;
  switch (reading.kind) {
    case 'pressure':
      return found(air.plenum_Pa, 'notFollowed');
    case 'flow':
      return found(air.flow_m3PerS, 'notFollowed');
    case 'sound':
      return found(air.sound_dBA, 'nothingTurns');
    case 'temperature':
      switch (reading.where) {
        case 'onFilm':
          return found(heat.positions[at]?.film_K, 'noSuchResistor');
        case 'onTerminal':
          return found(heat.positions[at]?.joint_K, 'noSuchResistor');
        case 'onSink':
          return found(meanPlate_K(heat.sinks[at]), 'noSuchSink');
        case 'onSheet':
          return found(heat.sinks[at]?.outside_K, 'noSuchSink');
        default:
          return found(heat.exhaust_K, 'notFollowed');
      }
  }
}

/** The same at one moment of a course of temperatures. */
export function courseAt(reading: Reading, point: TimePoint | undefined): Computed {
  if (!point) return none('notFollowed');
  const at = reading.number - 1;
  switch (reading.where) {
    case 'onFilm':
      return found(point.films_K[at], 'noSuchResistor');
    case 'onTerminal':
      return found(point.joints_K[at], 'noSuchResistor');
    case 'onSink':
      return found(point.sinks_K[at], 'noSuchSink');
    case 'onSheet':
      return found(point.outsides_K[at], 'noSuchSink');
    default:
      return found(point.exhaust_K, 'notFollowed');
  }
}
