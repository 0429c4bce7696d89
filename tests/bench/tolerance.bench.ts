import { isMainThread } from 'node:worker_threads';
import { nodePool, serveStudies } from '../../src/cli/nodePool.ts';
import { eightResistors } from '../../src/model/examples/eightResistors.ts';

/**
 * 100,000 draws of the eight-resistor example as the page asks them: drawn, put into the design, checked, solved and
 * summed up, by one worker and by two in the same run.
 */
const draws = 100_000;
const aim_s = 10;

async function seconds(workers: number): Promise<number> {
  const pool = nodePool(new URL(import.meta.url), workers);
  const ask = (count: number) =>
    pool.run('tolerance', { design: eightResistors, draws: count, seed: 1, boxes: 12, methods: true }).result;
  // Workers are started, and their code is compiled, before the clock runs.
  await ask(4000);
  const start_ms = performance.now();
  await ask(draws);
  const taken_s = (performance.now() - start_ms) / 1000;
  pool.stop();
  return taken_s;
}

if (isMainThread) {
  const one_s = await seconds(1);
  const two_s = await seconds(2);
  const perCore = (taken_s: number, workers: number) =>
    `${Math.round(draws / taken_s / workers).toLocaleString('en-GB')} draws a second and core`;
  console.log(`${draws.toLocaleString('en-GB')} draws of the eight-resistor example`);
  console.log(`  one worker   ${one_s.toFixed(1).padStart(5)} s, ${perCore(one_s, 1)}`);
  console.log(`  two workers  ${two_s.toFixed(1).padStart(5)} s, ${perCore(two_s, 2)}`);
  console.log(
    `  two are ${(one_s / two_s).toFixed(2)} × as fast as one; aim ${aim_s} s: ${two_s <= aim_s ? 'met' : 'NOT met'}`,
  );
} else {
  serveStudies();
}
