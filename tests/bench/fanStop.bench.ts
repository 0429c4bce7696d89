import { fansStopped } from '../../src/core/system/input.ts';
import { solveSystem } from '../../src/core/system/solveSystem.ts';
import { afterFanStop, ordinaryTimeline, warmUp } from '../../src/core/system/timeline.ts';
import { eightResistors } from '../../src/model/examples/eightResistors.ts';
import { toCore } from '../../src/model/toCore.ts';
import { fanStop } from '../../src/studies/fanStop.ts';
import { cost_ns } from './cost.ts';

/** What the bad day costs, in full solves of the same example measured in the same run. */
const input = toCore(eightResistors);

const full_ns = cost_ns(() => {
  const outcome = solveSystem(input);
  return outcome.ok ? outcome.heat.exhaust_K : 0;
}, 1_500);
const rows: [string, number, string][] = [
  [
    'fans stopped, settled',
    cost_ns(() => {
      const outcome = solveSystem(input, fansStopped);
      return outcome.ok ? outcome.heat.exhaust_K : 0;
    }, 800),
    'at most 2',
  ],
  [
    '600 s with a stop of the fan',
    cost_ns(
      () =>
        afterFanStop(input, { ...ordinaryTimeline, horizon_s: 600, untilSettled: false })?.points.length ?? 0,
      120,
    ),
    'at most 60, aim 20',
  ],
  ['fan stop until nothing moves', cost_ns(() => afterFanStop(input)?.points.length ?? 0, 80), ''],
  ['warm-up until nothing moves', cost_ns(() => warmUp(input)?.points.length ?? 0, 80), ''],
  ['the whole question: both ratings, times', cost_ns(() => fanStop(input).reached.length, 30), ''],
];
console.log('What if the fan stops, in full solves of the eight-resistor example of the same run');
console.log(`  one full solve                           ${(full_ns / 1000).toFixed(1)} µs`);
for (const [name, ns, limit] of rows)
  console.log(`  ${name.padEnd(40)} ${(ns / full_ns).toFixed(2).padStart(7)} ×   ${limit}`);
