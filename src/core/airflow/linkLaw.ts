import { passageDrop } from '../channel/passageDrop.ts';
import type { FanCurve } from '../fan/fanCurve.ts';
import { fanPressure } from '../fan/fanPressure.ts';
import { evaluatePchip, type Pchip } from '../solve/pchip.ts';

/** How the pressure drop of one link follows from its flow. Every loss is kept with the area it belongs to. */
export type LinkLaw =
  /** `loss` velocity heads on `area_m2`; below Reynolds numbers of about one on `size_m` the law turns linear. */
  | { readonly kind: 'loss'; readonly loss: number; readonly area_m2: number; readonly size_m: number }
  /** `count` equal rectangular channels side by side, with entrance and exit losses on the channel velocity. */
  | {
      readonly kind: 'channels';
      readonly count: number;
      readonly gap_m: number;
      readonly height_m: number;
      readonly length_m: number;
      readonly loss: number;
      readonly frictionFactor: number;
    }
  /** A filter by its maker's two terms, on the velocity in `area_m2`. */
  | {
      readonly kind: 'twoTerm';
      readonly linear_PaSPerM: number;
      readonly quadratic_PaS2PerM2: number;
      readonly area_m2: number;
    }
  /** Measured points, pressure over volume flow, odd in flow. */
  | { readonly kind: 'points'; readonly curve: Pchip }
  /** A fan: negative drop. */
  | {
      readonly kind: 'fan';
      readonly curve: FanCurve;
      readonly speedRatio: number;
      readonly flowFactor: number;
    };

const pair = new Float64Array(2);

/**
 * Pressure drop of one link and its derivative by mass flow, written to `out[0]` (Pa) and `out[1]` (Pa·s/kg).
 * Odd and rising in flow for every law but the fan's. Allocates nothing.
 */
export function linkDrop(
  out: Float64Array,
  law: LinkLaw,
  massFlow_kgPerS: number,
  rho_kgPerM3: number,
  mu_PaS: number,
): void {
  switch (law.kind) {
    case 'loss': {
      const perFlow = 1 / (rho_kgPerM3 * law.area_m2);
      const v = massFlow_kgPerS * perFlow;
      const v0 = mu_PaS / (rho_kgPerM3 * law.size_m);
      const speed = Math.sqrt(v * v + v0 * v0);
      const half = 0.5 * rho_kgPerM3 * law.loss;
      out[0] = half * v * speed;
      out[1] = half * (speed + (v * v) / speed) * perFlow;
      return;
    }
    case 'channels': {
      const perFlow = 1 / (rho_kgPerM3 * law.gap_m * law.height_m * law.count);
      passageDrop(
        out,
        massFlow_kgPerS * perFlow,
        rho_kgPerM3,
        mu_PaS,
        law.gap_m,
        law.height_m,
        law.length_m,
        law.loss,
        law.frictionFactor,
      );
      out[1] = (out[1] as number) * perFlow;
      return;
    }
    case 'twoTerm': {
      const perFlow = 1 / (rho_kgPerM3 * law.area_m2);
      const v = massFlow_kgPerS * perFlow;
      const size = Math.abs(v);
      out[0] = v * (law.linear_PaSPerM + law.quadratic_PaS2PerM2 * size);
      out[1] = (law.linear_PaSPerM + 2 * law.quadratic_PaS2PerM2 * size) * perFlow;
      return;
    }
    case 'points': {
      const flow = massFlow_kgPerS / rho_kgPerM3;
      evaluatePchip(law.curve, Math.abs(flow), pair);
      out[0] = flow < 0 ? -(pair[0] as number) : (pair[0] as number);
      out[1] = (pair[1] as number) / rho_kgPerM3;
      return;
    }
    case 'fan': {
      const scale = 1 / (rho_kgPerM3 * law.flowFactor);
      fanPressure(law.curve, massFlow_kgPerS * scale, law.speedRatio, rho_kgPerM3, pair);
      out[0] = -(pair[0] as number);
      out[1] = -(pair[1] as number) * scale;
      return;
    }
  }
}
