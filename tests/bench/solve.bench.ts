import { airProperties, createAirProperties } from '../../src/core/air/airProperties.ts';
import { createAirState, gradientStep } from '../../src/core/airflow/network.ts';
import { solveHeatNetwork } from '../../src/core/heat/network.ts';
import { ordinaryRun } from '../../src/core/system/input.ts';
import { solveSystem } from '../../src/core/system/solveSystem.ts';
import { prepareWork, spreadAir } from '../../src/core/system/work.ts';
import { eightResistors } from '../../src/model/examples/eightResistors.ts';
import { toCore } from '../../src/model/toCore.ts';
import { cost_ns } from './cost.ts';

/**
 * Cost of one full solve of the eight-resistor example in units of one `Math.pow` measured in the same run, with its
 * parts. A ratio, so that it means the same on a slow and on a fast machine; the median of several rounds.
 */
const input = toCore(eightResistors);

let x = 1.1;
const pow_ns = cost_ns(() => {
  x = x > 2 ? 1.1 : x + 1e-7;
  return x ** 0.4371;
}, 400_000);

const full_ns = cost_ns(() => {
  const outcome = solveSystem(input);
  return outcome.ok ? outcome.heat.exhaust_K : 0;
}, 2_000);

const work = prepareWork(input, ordinaryRun);
spreadAir(work);
const state = createAirState(work.path);
state.rho.set(work.flow.rho);
state.mu.set(work.flow.mu);
state.massFlow.fill(1e-4);
const properties = createAirProperties();
const parts: [string, number][] = [
  ['prepare geometry and networks', cost_ns(() => prepareWork(input, ordinaryRun).p_Pa, 3_000)],
  ['one step of the air network', cost_ns(() => gradientStep(work.path, state, -1, 0), 5_000)],
  ['one solve of the heat network', cost_ns(() => Number(solveHeatNetwork(work.heat.network)), 5_000)],
  [
    'air properties once',
    cost_ns(() => {
      airProperties(properties, 300 + (x % 1), 101325, 1);
      return properties.k_WPerMK;
    }, 100_000),
  ],
];

const outcome = solveSystem(input);
const ratio = (ns: number) => (ns / pow_ns).toFixed(ns / pow_ns < 10 ? 1 : 0).padStart(7);
console.log('Full solve of the eight-resistor example, in units of one Math.pow of the same run');
console.log(`  one Math.pow            ${pow_ns.toFixed(1)} ns`);
console.log(
  `  full solve           ${ratio(full_ns)} × Math.pow   (${(full_ns / 1000).toFixed(1)} µs, ${outcome.ok ? outcome.balance.iterations : 0} iterations; at most 1500, aim 800)`,
);
for (const [name, ns] of parts) console.log(`  ${name.padEnd(32)} ${ratio(ns)} × Math.pow`);
