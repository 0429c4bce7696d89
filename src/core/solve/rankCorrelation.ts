/**
 * Rank correlation of Spearman 1904: −1 … 1, by the ranks alone, with equal values given the mean of their ranks. 0 if
 * either is constant or has fewer than two values.
 */
export function rankCorrelation(a: ArrayLike<number>, b: ArrayLike<number>): number {
  const [p, q] = [ranks(a), ranks(b)];
  const middle = (p.length - 1) / 2;
  let [pp, qq, pq] = [0, 0, 0];
  for (let i = 0; i < p.length; i++) {
    const [u, v] = [(p[i] as number) - middle, (q[i] as number) - middle];
    pp += u * u;
    qq += v * v;
    pq += u * v;
  }
  return pp > 0 && qq > 0 ? Math.min(1, Math.max(-1, pq / Math.sqrt(pp * qq))) : 0;
}

/** From 0 on; equal values share the mean of their ranks. */
function ranks(values: ArrayLike<number>): Float64Array {
  const order = rising(values);
  const out = new Float64Array(order.length);
  let start = 0;
  while (start < order.length) {
    let end = start + 1;
    while (end < order.length && values[order[end] as number] === values[order[start] as number]) end++;
    for (let i = start; i < end; i++) out[order[i] as number] = (start + end - 1) / 2;
    start = end;
  }
  return out;
}

/** Places of the values from the least to the largest; of equal ones the earlier first. */
function rising(values: ArrayLike<number>): Uint32Array {
  const sorted = Float64Array.from(values).sort();
  const order = new Uint32Array(sorted.length);
  const taken = new Uint32Array(sorted.length);
  for (let i = 0; i < sorted.length; i++) {
    const start = firstPlace(sorted, values[i] as number);
    const before = taken[start] as number;
    taken[start] = before + 1;
    order[start + before] = i;
  }
  return order;
}

/** Where a value that a rising array has stands in it first. */
function firstPlace(sorted: Float64Array, value: number): number {
  let [low, high] = [0, sorted.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] as number) < value) low = middle + 1;
    else high = middle;
  }
  return low;
}
