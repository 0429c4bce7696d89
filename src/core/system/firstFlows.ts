import { linkDrop } from '../airflow/linkLaw.ts';
import { draught_Pa } from '../freeConvection/draught_Pa.ts';
import type { Work } from './work.ts';

/** A first guess: the same flow all along the main way, shared by area where it parts. */
export function firstFlows(work: Work, start_kgPerS: number): void {
  const { links } = work.path;
  const { massFlow } = work.flow;
  let area = 0;
  for (const link of links) if (link.passage) area += link.area_m2;
  links.forEach((link, i) => {
    massFlow[i] = link.passage ? (start_kgPerS * link.area_m2) / area : start_kgPerS;
  });
}

/** Flow at which the draught of all watts in fins and headroom, c/ṁ, meets what the box takes from it, both cold. */
export function draughtFlow_kgPerS(work: Work): number {
  const { path, room, flow } = work;
  const { sink, box } = work.input;
  const power_W = work.power_W.reduce((sum, watts) => sum + watts, 0);
  const rise_m = Math.cos(box.tilt_rad) * (0.5 * sink.length_m + box.headroom_m);
  const perFlow = draught_Pa(
    room.rho_kgPerM3,
    room.rho_kgPerM3 * (1 - power_W / (room.cp_JPerKgK * room.T_K)),
    Math.abs(rise_m),
  );
  if (!(perFlow > 1e-15)) return 0;
  const fins = path.finLink.filter((link) => link >= 0);
  let q = 1e-4;
  for (let pass = 0; pass < 4; pass++) {
    let drop_Pa = 0;
    path.links.forEach((link, i) => {
      const own = i === fins[0] ? q / fins.length : link.passage ? 0 : q;
      if (own > 0) linkDrop(pair, link.law, own, flow.rho[i] as number, flow.mu[i] as number);
      drop_Pa += own > 0 ? (pair[0] as number) : 0;
    });
    // Drop goes between the first and the second power of flow, draught as one over it.
    q *= Math.exp(Math.log(perFlow / (q * drop_Pa)) / 2.4);
  }
  return rise_m < 0 ? -q : q;
}

const pair = new Float64Array(2);
