import { airProperties, createAirProperties } from '../../../src/core/air/airProperties.ts';
import type { LinkLaw } from '../../../src/core/airflow/linkLaw.ts';
import {
  type AirLink,
  type AirNetwork,
  createAirState,
  solveNetwork,
} from '../../../src/core/airflow/network.ts';
import { prepareFanCurve } from '../../../src/core/fan/fanCurve.ts';

/**
 * Invented reference sink: 50 × 50 × 20 mm plate fins, 11 fins of 1 mm (10 channels of 3.9 mm), base 3 mm, in a slot that
 * leaves a gap on three sides, unrolled 96 mm wide. Air at 298.15 K. The expected numbers beside the tests come from an
 * independent Python computation (scipy 1.10.1, Brent on the common pressure drop).
 */
export const sea_Pa = 101325;

export function air(p_Pa = sea_Pa) {
  const properties = createAirProperties();
  airProperties(properties, 298.15, p_Pa, 1);
  return properties;
}

export function fins(loss: number): LinkLaw {
  return {
    kind: 'channels',
    count: 10,
    gap_m: 3.9e-3,
    height_m: 20e-3,
    length_m: 50e-3,
    loss,
    frictionFactor: 1,
  };
}

export function slot(gap_m: number, loss: number): LinkLaw {
  return { kind: 'channels', count: 1, gap_m, height_m: 96e-3, length_m: 50e-3, loss, frictionFactor: 1 };
}

/** Fan A of the same computation: 0 … 40 m³/h, 45 … 0 Pa; given at 1.2 kg/m³ so that `density_kgPerM3` air sees it as is. */
export function fanA(density_kgPerM3: number, speedRatio = 1, pressureFactor = 1): LinkLaw {
  const scale = (1.2 / density_kgPerM3) * pressureFactor;
  const points = [
    [0, 45],
    [8, 38],
    [16, 31],
    [24, 24],
    [32, 14],
    [40, 0],
  ] as const;
  return {
    kind: 'fan',
    curve: prepareFanCurve(points.map(([q, p]) => ({ flow_m3PerS: q / 3600, dp_Pa: p * scale }))),
    speedRatio,
    flowFactor: 1,
  };
}

/** Flow through parallel ways from one node to the room, `flow_m3PerS` fed in, or driven by a fan ahead of a guard. */
export function imposed(ways: readonly LinkLaw[], flow_m3PerS: number, p_Pa = sea_Pa) {
  const { rho_kgPerM3, mu_PaS } = air(p_Pa);
  const network: AirNetwork = { nodeCount: 2, links: ways.map((law): AirLink => ({ from: 1, to: 0, law })) };
  const state = createAirState(network);
  state.rho.fill(rho_kgPerM3);
  state.mu.fill(mu_PaS);
  state.feed[1] = flow_m3PerS * rho_kgPerM3;
  state.massFlow.fill((flow_m3PerS * rho_kgPerM3) / ways.length);
  const result = solveNetwork(network, state);
  return {
    ...result,
    dp_Pa: state.head[1] as number,
    share: [...state.massFlow].map((q) => q / (flow_m3PerS * rho_kgPerM3)),
  };
}

export function driven(fan: LinkLaw, guard: LinkLaw, ways: readonly LinkLaw[], p_Pa = sea_Pa) {
  const { rho_kgPerM3, mu_PaS } = air(p_Pa);
  const network: AirNetwork = {
    nodeCount: 3,
    links: [
      { from: 0, to: 1, law: guard },
      { from: 1, to: 2, law: fan },
      ...ways.map((law): AirLink => ({ from: 2, to: 0, law })),
    ],
  };
  const state = createAirState(network);
  state.rho.fill(rho_kgPerM3);
  state.mu.fill(mu_PaS);
  state.massFlow.fill(2e-3 * rho_kgPerM3);
  const result = solveNetwork(network, state);
  const total = state.massFlow[1] as number;
  return {
    ...result,
    flow_m3PerS: total / rho_kgPerM3,
    fan_Pa: -(state.drop[1] as number),
    share: [...state.massFlow].slice(2).map((q) => q / total),
    finVelocity_mPerS: (state.massFlow[2] as number) / (rho_kgPerM3 * 10 * 3.9e-3 * 20e-3),
  };
}
