let sink = 0;

function median(values: number[]): number {
  const sorted = values.sort((a, b) => a - b);
  return sorted[sorted.length >> 1] as number;
}

/** Nanoseconds of one call, median of `rounds`, each long enough to see past the clock. */
export function cost_ns(work: () => number, calls: number, rounds = 15): number {
  for (let i = 0; i < calls; i++) sink += work();
  const times: number[] = [];
  for (let round = 0; round < rounds; round++) {
    const start = performance.now();
    for (let i = 0; i < calls; i++) sink += work();
    times.push(((performance.now() - start) / calls) * 1e6);
  }
  if (!Number.isFinite(sink)) throw new Error('a benchmark that computes nothing measures nothing');
  return median(times);
}
