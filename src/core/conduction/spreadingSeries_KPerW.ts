/** A rectangular source in the middle of a rectangular plate, cooled on the far side at an even coefficient. */
export interface SpreadingCase {
  readonly sourceLength_m: number;
  readonly sourceWidth_m: number;
  readonly plateLength_m: number;
  readonly plateWidth_m: number;
  readonly thickness_m: number;
  readonly k_WPerMK: number;
  readonly h_WPerM2K: number;
}

/** Waves kept along each edge; at 400 the digits change in the sixth place when doubled. */
export const SERIES_WAVES = 400;

/**
 * Exact spreading resistance as a double Fourier series of the heat equation, to the mean of the source or to its
 * middle. The reference for the closed form: far too slow for the solver.
 */
export function spreadingSeries_KPerW(
  given: SpreadingCase,
  at: 'mean' | 'peak',
  waves = SERIES_WAVES,
): number {
  const ratio_PerM = given.h_WPerM2K / given.k_WPerMK;
  const along = wavesOf(given.plateLength_m, given.sourceLength_m, at, waves);
  const across = wavesOf(given.plateWidth_m, given.sourceWidth_m, at, waves);
  let single = 0;
  for (let n = 0; n < waves; n++) {
    single += term(along.number_PerM[n] ?? 0, along.weight[n] ?? 0, given.thickness_m, ratio_PerM);
    single += term(across.number_PerM[n] ?? 0, across.weight[n] ?? 0, given.thickness_m, ratio_PerM);
  }
  let double = 0;
  for (let m = 0; m < waves; m++) {
    const a_PerM = along.number_PerM[m] ?? 0;
    const weight = along.weight[m] ?? 0;
    for (let n = 0; n < waves; n++) {
      const b_PerM = across.number_PerM[n] ?? 0;
      const beta_PerM = Math.sqrt(a_PerM * a_PerM + b_PerM * b_PerM);
      double += term(beta_PerM, weight * (across.weight[n] ?? 0), given.thickness_m, ratio_PerM);
    }
  }
  return (2 * single + 4 * double) / (given.plateLength_m * given.plateWidth_m * given.k_WPerMK);
}

/** Wave numbers along one edge, and how strongly the source drives and feels each of them. */
function wavesOf(plate_m: number, source_m: number, at: 'mean' | 'peak', waves: number) {
  const number_PerM = new Float64Array(waves);
  const weight = new Float64Array(waves);
  for (let n = 0; n < waves; n++) {
    const wave_PerM = (2 * (n + 1) * Math.PI) / plate_m;
    const half = (wave_PerM * source_m) / 2;
    const drive = Math.sin(half) / half;
    number_PerM[n] = wave_PerM;
    weight[n] = at === 'mean' ? drive * drive : drive;
  }
  return { number_PerM, weight };
}

/** weight·φ(z)/z with φ = [z + (h/k)·tanh zt]/[z·tanh zt + h/k]; tanh levels off, so large z do no harm. */
function term(z_PerM: number, weight: number, thickness_m: number, ratio_PerM: number): number {
  const depth = Math.tanh(z_PerM * thickness_m);
  return (weight * (z_PerM + ratio_PerM * depth)) / ((z_PerM * depth + ratio_PerM) * z_PerM);
}

/** Aluminium 40 × 40 × 3 mm, source 10 × 10 mm, 1000 W/m²K. */
export const seriesExample = {
  sourceLength_m: 10e-3,
  sourceWidth_m: 10e-3,
  plateLength_m: 40e-3,
  plateWidth_m: 40e-3,
  thickness_m: 3e-3,
  k_WPerMK: 200,
  h_WPerM2K: 1000,
} as const satisfies SpreadingCase;
