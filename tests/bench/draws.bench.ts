import { hash32 } from '../../src/core/solve/hash32.ts';
import { ordinaryRun, type SystemInput } from '../../src/core/system/input.ts';
import { nearbySolver } from '../../src/core/system/nearbySolver.ts';
import type { Outcome } from '../../src/core/system/outcome.ts';
import { solveSystem } from '../../src/core/system/solveSystem.ts';
import type { Design } from '../../src/model/design.ts';
import { eightResistors } from '../../src/model/examples/eightResistors.ts';
import { toCore } from '../../src/model/toCore.ts';
import { tryValues } from '../../src/studies/vary.ts';
import { neighbourOf } from '../helpers/neighbour.ts';
import { cost_ns } from './cost.ts';

/**
 * What one draw of a study costs: a neighbour of the eight-resistor example, three dozen inputs and all method factors moved by up
 * to 4 per cent, over one full solve of the same neighbours and over one `Math.pow` of the same run. Cost grows with the row.
 */
const run = { ...ordinaryRun, pulses: false };
const kept = 200;

let x = 1.1;
const pow_ns = cost_ns(() => {
  x = x > 2 ? 1.1 : x + 1e-7;
  return x ** 0.4371;
}, 400_000);

/** Draws one after the other, over and over. */
function perDraw_ns(neighbours: readonly SystemInput[], solve: (other: SystemInput) => Outcome): number {
  let next = 0;
  return cost_ns(() => {
    const outcome = solve(neighbours[next++ % kept] as SystemInput);
    return outcome.ok ? outcome.heat.exhaust_K : 0;
  }, 2 * kept);
}

function neighboursOf(input: SystemInput): SystemInput[] {
  return Array.from({ length: kept }, (_, draw) =>
    neighbourOf(
      input,
      Array.from({ length: 200 }, (_, i) => hash32(draw, i) / 2 ** 32),
    ),
  );
}

/** The same watts over more resistors, in a box as long as it takes. */
function row(count: number): Design {
  const [position] = eightResistors.positions;
  if (!position) throw new Error('the example has positions');
  return {
    ...eightResistors,
    positions: Array.from({ length: count }, () => ({ ...position, power_W: 32 / count })),
    box: { ...eightResistors.box, length_m: (eightResistors.box.length_m * count) / 8 },
  };
}

console.log('One draw near the eight-resistor example, against full solves and one Math.pow of the same run');
console.log(`  one Math.pow   ${pow_ns.toFixed(1)} ns`);
console.log('  resistors   full solve   nearby   nearby/full   nearby/Math.pow   draws a second and core');
for (const count of [8, 16, 32, 64]) {
  const input = toCore(row(count));
  const neighbours = neighboursOf(input);
  const full_ns = perDraw_ns(neighbours, (other) => solveSystem(other, run));
  const near_ns = perDraw_ns(neighbours, nearbySolver(input, run));
  const cells = [
    String(count).padStart(11),
    `${(full_ns / 1000).toFixed(1)} µs`.padStart(13),
    `${(near_ns / 1000).toFixed(1)} µs`.padStart(9),
    (near_ns / full_ns).toFixed(2).padStart(14),
    (near_ns / pow_ns).toFixed(0).padStart(18),
    Math.round(1e9 / near_ns)
      .toLocaleString('en-GB')
      .padStart(26),
  ];
  console.log(cells.join(''));
}

let moved = 0;
const trial_ns = cost_ns(() => {
  moved += 1e-7;
  const trial = tryValues(eightResistors, {
    'room.T_K': 313 + moved,
    'sink.k_WPerMK': 200 + moved,
    'bond.sheetK_WPerMK': 1 + moved,
    'fan.supply_V': 12 - moved,
    'positions[0].power_W': 4 + moved,
    'positions[7].power_W': 4 - moved,
  });
  return trial.ok ? trial.outputs.film_K : 0;
}, 1_000);
console.log(
  `  six values tried in the design, checked and solved in full: ${(trial_ns / 1000).toFixed(1)} µs`,
);
