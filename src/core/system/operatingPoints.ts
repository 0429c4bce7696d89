import { type AirState, createAirState, solveNetwork } from '../airflow/network.ts';
import { fanPressure } from '../fan/fanPressure.ts';
import { findOperatingPoints } from '../fan/findOperatingPoints.ts';
import { scanFlows } from '../fan/scanFlows.ts';
import { brentRoot } from '../solve/brentRoot.ts';
import type { Intersection } from './outcome.ts';
import type { Work } from './work.ts';

const pair = new Float64Array(2);

/** Fan of this box as it runs: pressure over volume flow at its speed and the room's density. */
export function fanPressureAt(work: Work, flow_m3PerS: number): number {
  const law = fanLaw(work);
  fanPressure(law.curve, flow_m3PerS / law.flowFactor, law.speedRatio, work.room.rho_kgPerM3, pair);
  return pair[0] as number;
}

/** Flow at which the fan's pressure is nil, at its present speed. */
export function freeFlow_m3PerS(work: Work): number {
  const law = fanLaw(work);
  return law.curve.freeFlow_m3PerS * law.speedRatio * law.flowFactor;
}

/** Flow below which the fan's curve does not fall, at its present speed; `null` for a curve that only falls. */
export function stallBelow_m3PerS(work: Work): number | null {
  const law = fanLaw(work);
  const edge = law.curve.stallBelow_m3PerS;
  return edge === null ? null : edge * law.speedRatio * law.flowFactor;
}

export function fanLaw(work: Work) {
  const { law } = work.path.links[work.path.fanLink] as (typeof work.path.links)[number];
  if (law.kind !== 'fan') throw new Error('the fan link carries no fan law');
  return law;
}

/**
 * Pressure that the box takes at a flow through the fan: the same network, the flow imposed, the air and its draught as they
 * are in `work`. Successive calls start from the flows of the last one.
 */
export function systemPressure(work: Work): (flow_m3PerS: number) => number {
  const { path, room } = work;
  const state: AirState = createAirState(path);
  state.rho.set(work.flow.rho);
  state.mu.set(work.flow.mu);
  state.lift.set(work.flow.lift);
  state.massFlow.set(work.flow.massFlow);
  const fan = path.links[path.fanLink] as (typeof path.links)[number];
  return (flow) => {
    const q = flow * room.rho_kgPerM3;
    const old = state.massFlow[path.fanLink] as number;
    if (old > 0 && q > 0) {
      const scale = q / old;
      for (let i = 0; i < state.massFlow.length; i++)
        state.massFlow[i] = (state.massFlow[i] as number) * scale;
    }
    state.massFlow[path.fanLink] = q;
    solveNetwork(path, state, path.fanLink, 1e-11);
    return (state.head[fan.to] as number) - (state.head[fan.from] as number);
  };
}

/**
 * Every intersection of fan curve and system curve, judged stable or not; `used` marks the stable one with most flow.
 * A curve that only falls meets a system that only rises once, and that one is the answer already found.
 */
export function operatingPoints(work: Work): Intersection[] {
  const law = fanLaw(work);
  if (law.curve.isNonIncreasing) {
    const flow_m3PerS = (work.flow.massFlow[work.path.fanLink] as number) / work.room.rho_kgPerM3;
    return [{ flow_m3PerS, dp_Pa: fanPressureAt(work, flow_m3PerS), stable: true, used: true }];
  }
  const most = freeFlow_m3PerS(work);
  const flows = scanFlows(law.curve.curve, law.speedRatio * law.flowFactor, most);
  const found = findOperatingPoints((flow) => fanPressureAt(work, flow), systemPressure(work), most, flows);
  let used = -1;
  found.forEach((point, i) => {
    if (point.stable && (used < 0 || work.run.point === 'mostFlow')) used = i;
  });
  return found.map((point, i) => ({
    flow_m3PerS: point.flow_m3PerS,
    dp_Pa: point.dp_Pa,
    stable: point.stable,
    used: i === used,
  }));
}

/** The flow that the box runs at with its air as it is now, by bracketing; `null` where fan and box do not meet. */
export function bracketedFlow_m3PerS(work: Work): number | null {
  if (!fanLaw(work).curve.isNonIncreasing) {
    return operatingPoints(work).find((point) => point.used)?.flow_m3PerS ?? null;
  }
  const most = freeFlow_m3PerS(work);
  const system = systemPressure(work);
  const found = brentRoot(
    (flow) => fanPressureAt(work, flow) - system(flow),
    1e-9 * most,
    most,
    1e-14 * most,
  );
  return found.ok ? found.root : null;
}
