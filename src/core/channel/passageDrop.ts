import { entranceSquared } from './frictionApparent.ts';
import { frictionDeveloped } from './frictionDeveloped.ts';
import { frictionTurbulent } from './frictionTurbulent.ts';

/** Ends of the transition: below, laminar; above, turbulent; between, f runs straight. */
export const laminarUpTo = 2300;
export const turbulentFrom = 4000;

/**
 * Pressure drop of one rectangular passage and its derivative by velocity, to `out[0]` (Pa) and `out[1]` (Pa·s/m).
 * Developing laminar friction, through transition into turbulence, plus `loss` velocity heads. Odd and strictly rising in
 * velocity, linear near zero. In the transition the laminar entrance friction still counts where it is the larger, so
 * that a short channel never gets easier with more flow. Allocates nothing.
 */
export function passageDrop(
  out: Float64Array,
  velocity_mPerS: number,
  rho_kgPerM3: number,
  mu_PaS: number,
  gap_m: number,
  height_m: number,
  length_m: number,
  loss: number,
  frictionFactor: number,
): void {
  const hydraulic_m = (2 * gap_m * height_m) / (gap_m + height_m);
  const developed = frictionDeveloped(gap_m < height_m ? gap_m / height_m : height_m / gap_m);
  const speed = velocity_mPerS < 0 ? -velocity_mPerS : velocity_mPerS;
  const perSpeed = (rho_kgPerM3 * hydraulic_m) / mu_PaS;
  const reynolds = perSpeed * speed;

  // f·Re² and its derivative by Re; the pressure drop is a multiple of it.
  const entrance = (entranceSquared * hydraulic_m) / length_m;
  const root = Math.sqrt(entrance * reynolds + developed * developed);
  let heads = reynolds * root;
  let slope = root + (0.5 * entrance * reynolds) / root;
  if (reynolds > laminarUpTo) {
    const square = reynolds * reynolds;
    let f: number;
    let fSlope: number;
    if (reynolds >= turbulentFrom) {
      f = frictionTurbulent(reynolds);
      fSlope = (-2 * f) / (reynolds * Math.log(reynolds / 6.9));
    } else {
      const start = Math.sqrt(entrance * laminarUpTo + developed * developed) / laminarUpTo;
      fSlope = (turbulentStart - start) / (turbulentFrom - laminarUpTo);
      f = start + fSlope * (reynolds - laminarUpTo);
    }
    if (f * square > heads) {
      heads = f * square;
      slope = fSlope * square + 2 * f * reynolds;
    }
  }
  const scale =
    (frictionFactor * 2 * length_m * mu_PaS * mu_PaS) /
    (rho_kgPerM3 * hydraulic_m * hydraulic_m * hydraulic_m);

  // Velocity heads lost at the ends turn linear below a Reynolds number of about one.
  const slow = 1 / perSpeed;
  const smooth = Math.sqrt(speed * speed + slow * slow);
  const half = 0.5 * rho_kgPerM3 * loss;
  const drop = scale * heads + half * speed * smooth;
  out[0] = velocity_mPerS < 0 ? -drop : drop;
  out[1] = scale * slope * perSpeed + half * (smooth + (speed * speed) / smooth);
}

const turbulentStart = frictionTurbulent(turbulentFrom);
