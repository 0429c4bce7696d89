import type { Pchip } from '../solve/pchip.ts';

/** Where pressure rises with flow: steps as fine as the whole way in this many. */
const steps = 160;

/**
 * Flows to look at for the places where a fan meets a box, up to `most_m3PerS`. Where the fan's pressure falls it meets a box,
 * whose own pressure rises, once at most, and the ends of that piece of its curve tell; where it rises with flow it may
 * meet it more often, and a fine grid looks.
 * @param scale flow of the running fan over flow of its curve
 */
export function scanFlows({ x, y, slope }: Pchip, scale: number, most_m3PerS: number): number[] {
  const flows = [1e-6 * most_m3PerS];
  const goTo = (end: number, rises: boolean) => {
    const start = flows[flows.length - 1] as number;
    const to = Math.min(end, most_m3PerS);
    if (!(to > start)) return;
    const parts = rises ? Math.ceil(((to - start) * steps) / most_m3PerS) : 1;
    for (let part = 1; part < parts; part++) flows.push(start + ((to - start) * part) / parts);
    flows.push(to);
  };
  goTo((x[0] as number) * scale, (slope[0] as number) > 0);
  for (let i = 1; i < x.length; i++) goTo((x[i] as number) * scale, (y[i] as number) > (y[i - 1] as number));
  goTo(most_m3PerS, false);
  return flows;
}
