import type { PulseOutcome } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import { duration } from './durations.ts';
import { amount, unitOf } from './format.ts';
import type { PulseReport, UnitSystem } from './types.ts';
import { resistorName, roundTicks, temperature } from './words.ts';

export function pulseReport(design: Design, pulse: PulseOutcome, system: UnitSystem): PulseReport {
  const { position, on_s, period_s, peak_K, valley_K, single_K, trace } = pulse;
  const show = (T_K: number) => amount(T_K, 'temperature', system);
  const decimals = peak_K - valley_K < 5 ? 1 : 0;
  const says = (T_K: number) => temperature(T_K, system, decimals);
  const [per, unit] =
    period_s < 1e-3 ? [1e6, 'µs'] : period_s < 1 ? [1e3, 'ms'] : period_s < 600 ? [1, 's'] : [1 / 60, 'min'];
  const part = design.parts[design.positions[position]?.part ?? 0];
  const limit_K = part?.zeroPowerAt_K ?? peak_K;
  const near = limit_K - peak_K < 3 * (peak_K - valley_K);
  return {
    sentence: `On for ${duration(on_s)} of every ${duration(period_s)}, the film of ${resistorName(position)} swings between ${says(valley_K)} and ${says(peak_K)} once it has settled; one pulse into the cold box takes it to ${says(single_K)}.`,
    chart: {
      id: 'pulse',
      caption: 'Hottest film over one period',
      xLabel: 'since the load came on',
      xUnit: unit,
      yUnit: unitOf('temperature', system),
      lines: [
        {
          key: 'film',
          label: 'film',
          style: 'solid',
          points: trace.map(({ time_s, film_K }) => ({ x: time_s * per, y: show(film_K) })),
        },
      ],
      levels: near ? [{ label: 'film limit', y: show(limit_K), style: 'solid' }] : [],
      marks: [{ label: says(peak_K), x: on_s * per, y: show(peak_K) }],
      xTicks: roundTicks(0, period_s * per),
      yTicks: roundTicks(show(valley_K), show(near ? Math.max(limit_K, peak_K) : peak_K)),
      spoken: `The film of ${resistorName(position)} rises from ${says(valley_K)} to ${says(peak_K)} while the load is on, and falls back.`,
    },
  };
}
