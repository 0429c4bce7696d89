import type { Drift } from '../core/system/drift.ts';
import { crossing_s } from '../core/system/timeline.ts';
import type { Design } from '../model/design.ts';
import type { Said } from './amount.ts';
import { duration, saidDuration } from './durations.ts';
import { saidAs, saidTemperature, withAmounts, worked } from './said.ts';
import type { DriftReport, UnitSystem } from './types.ts';
import { capital, fixed, kelvins, resistorName, temperature } from './words.ts';
import { driftFigure } from './working/figureIds.ts';

export function driftReport(design: Design, drift: Drift | null, system: UnitSystem): DriftReport | null {
  if (!drift) return null;
  const within = ppm(design.limits.settled).replace('+', '');
  const last = drift.warmUp.points.at(-1);
  const on = design.positions.flatMap((position, r) => (position.on ? [r] : []));
  if (on.length === 0 || !last) return null;
  const rows = drift.each.map((change, r) => ({
    label: capital(resistorName(r)),
    ...withAmounts({
      film: saidTemperature(last.films_K[r] ?? 0, system),
      drift: worked(saidPpm(change), driftFigure(r)),
      settled: saidDuration(drift.eachSettled_s[r] ?? 0),
    }),
  }));
  if (drift.whole !== null && drift.wholeSettled_s !== null) {
    rows.push({
      label: 'All together',
      ...withAmounts({
        film: saidAs('', null, 'temperature', system),
        drift: worked(saidPpm(drift.whole), driftFigure('whole')),
        settled: saidDuration(drift.wholeSettled_s),
      }),
    });
  }
  return { ...saidOf(drift, on, within), warmUp: warmUpOf(drift, system), rows, within };
}

/** Films this close to their end count as warm. */
const warm_K = 1;

function warmUpOf({ warmUp }: Drift, system: UnitSystem): string {
  const end_K = warmUp.points.at(-1)?.film_K ?? 0;
  const reached_s = crossing_s(warmUp.points, ({ film_K }) => end_K - warm_K - film_K) ?? 0;
  return `From a cold start the hottest film is within ${kelvins(warm_K, system)} of its ${temperature(end_K, system)} after ${duration(reached_s)}.`;
}

function saidOf(
  drift: Drift,
  on: readonly number[],
  within: string,
): Pick<DriftReport, 'sentence' | 'number'> {
  if (drift.whole !== null && drift.wholeSettled_s !== null) {
    return {
      sentence: `Self-heating changes the resistance of the whole by ${ppm(drift.whole)}; from a cold start it stays within ${within} of its final value after ${duration(drift.wholeSettled_s)}.`,
      number: { text: ppm(drift.whole), figure: driftFigure('whole'), of: 'change of the whole' },
    };
  }
  const far = on.reduce((most, r) =>
    Math.abs(drift.each[r] ?? 0) > Math.abs(drift.each[most] ?? 0) ? r : most,
  );
  const late = Math.max(...on.map((r) => drift.eachSettled_s[r] ?? 0));
  const most = ppm(drift.each[far] ?? 0);
  return {
    sentence: `Self-heating changes ${resistorName(far)} most, by ${most}; from a cold start all stay within ${within} of their final values after ${duration(late)}.`,
    number: { text: most, figure: driftFigure(far), of: `change of ${resistorName(far)}` },
  };
}

function saidPpm(share: number): Said {
  return { text: ppm(share), value: share * 1e6, unit: 'ppm' };
}

function ppm(share: number): string {
  const value = share * 1e6;
  const size = Math.abs(value);
  const text = fixed(value, size < 10 && size > 0 ? 1 : 0);
  return `${value > 0 ? '+' : ''}${text}\u202fppm`;
}
