import { defineCard } from '../card.ts';
import { evaluatePchip } from '../solve/pchip.ts';
import { curveDensity_kgPerM3, type FanCurve, type FanPoint, prepareFanCurve } from './fanCurve.ts';
import { fanPressure } from './fanPressure.ts';

/** Equal fans that stand together, as a member of a group. */
export interface FanMember {
  /** At rated speed and 1.2 kg/m³. */
  readonly curve: FanCurve;
  /** Speed over rated speed; 0 stands still. */
  readonly speedRatio: number;
  /** Lanes side by side, and fans behind one another in each. */
  readonly sideBySide: number;
  readonly inARow: number;
  /** `first`, then all that stand `beside` it at one pressure, then all that stand `behind` them at one flow. */
  readonly place: 'first' | 'beside' | 'behind';
  /** What one of them takes while it stands still: velocity heads on an area. */
  readonly standing: { readonly loss: number; readonly area_m2: number };
}

/** What one fan of a member does while the group moves a flow. */
export interface FanShare {
  readonly flow_m3PerS: number;
  readonly dp_Pa: number;
  /** The others push air back through it. */
  readonly backwards: boolean;
}

export interface FanGroup {
  /** All together at the speeds they run at, 1.2 kg/m³. */
  readonly curve: FanCurve;
  /** A curve with a dip stands beside another kind: for joining them it was bridged at the most flow of each pressure. */
  readonly bridgedDip: boolean;
  readonly shares: (flow_m3PerS: number, rho_kgPerM3: number) => FanShare[];
}

/** Pressure of one lane of a member over its flow at 1.2 kg/m³, at its speed. */
type Lane = (flow_m3PerS: number) => number;

const pair = new Float64Array(2);

/**
 * Several fans as one curve: side by side they share the flow at one pressure, behind one another they add their pressures
 * at one flow. Equal fans scale their points and lose nothing; different kinds are joined point by point. Ideal: a fan
 * close behind another works in its swirl and adds less.
 * @param members the first is `first`; at least one turns
 */
export function prepareFanGroup(members: readonly FanMember[]): FanGroup {
  const [first] = members;
  if (first !== undefined && members.length === 1) return equalFans(first);
  return mixedFans(members);
}

function equalFans(member: FanMember): FanGroup {
  const { curve, speedRatio: n, sideBySide, inARow } = member;
  return {
    curve: scaled(curve, n * sideBySide, n * n * inARow),
    bridgedDip: false,
    shares: (flow_m3PerS, rho_kgPerM3) => {
      const own = flow_m3PerS / sideBySide;
      fanPressure(curve, own, n, rho_kgPerM3, pair);
      return [{ flow_m3PerS: own, dp_Pa: pair[0] as number, backwards: own < 0 }];
    },
  };
}

/** The same curve with other flows and pressures: its slopes scale with it, so that nothing is interpolated anew. */
function scaled(fan: FanCurve, flow: number, pressure: number): FanCurve {
  const { x, y, slope } = fan.curve;
  const edge = fan.stallBelow_m3PerS;
  return {
    curve: {
      x: x.map((value) => value * flow),
      y: y.map((value) => value * pressure),
      slope: slope.map((value) => (value * pressure) / flow),
    },
    freeFlow_m3PerS: fan.freeFlow_m3PerS * flow,
    shutOff_Pa: fan.shutOff_Pa * pressure,
    isNonIncreasing: fan.isNonIncreasing,
    stallBelow_m3PerS: edge === null ? null : edge * flow,
  };
}

/** Levels of pressure between two knots at which curves side by side are joined. */
const between = 12;

function mixedFans(members: readonly FanMember[]): FanGroup {
  const beside = members.filter(({ place }) => place !== 'behind');
  const behind = members.filter(({ place }) => place === 'behind');
  const lanes = beside.map((member) => inverseOf(member));
  const joined = beside.length === 1 ? null : joinBeside(beside, lanes);
  const front = joined ?? frontCurve(beside[0] as FanMember);
  const curve = behind.length === 0 ? front : addBehind(front, behind);
  return {
    curve,
    bridgedDip: beside.length > 1 && beside.some(({ curve: own }) => !own.isNonIncreasing),
    shares: (flow_m3PerS, rho_kgPerM3) => {
      const dense = rho_kgPerM3 / curveDensity_kgPerM3;
      evaluatePchip(front.curve, flow_m3PerS, pair);
      const common_Pa = pair[0] as number;
      const own = lanes.map((flowAt) => flowAt(common_Pa));
      const sum = beside.reduce((total, { sideBySide }, i) => total + sideBySide * (own[i] as number), 0);
      // The joined curve is interpolated: what its flow and the sum differ by goes to all in proportion.
      const adjust = Math.abs(sum) > 1e-15 && beside.length > 1 ? flow_m3PerS / sum : 1;
      let i = 0;
      return members.map((member): FanShare => {
        if (member.place === 'behind') {
          const flow = flow_m3PerS / member.sideBySide;
          return { flow_m3PerS: flow, dp_Pa: oneFan(member)(flow) * dense, backwards: flow < 0 };
        }
        const flow = beside.length > 1 ? (own[i++] as number) * adjust : flow_m3PerS / member.sideBySide;
        return { flow_m3PerS: flow, dp_Pa: (common_Pa * dense) / member.inARow, backwards: flow < -1e-12 };
      });
    },
  };
}

function frontCurve(member: FanMember): FanCurve {
  const { curve, speedRatio: n, sideBySide, inARow } = member;
  if (n > 0) return scaled(curve, n * sideBySide, n * n * inARow);
  // A fan that stands still before one that turns: a curve of losses from rest.
  const own = oneFan(member);
  const most = curve.freeFlow_m3PerS * sideBySide;
  const flows = Array.from({ length: 25 }, (_, i) => (most * i) / 24);
  return curveOf(
    flows,
    flows.map((flow) => inARow * own(flow / sideBySide)),
  );
}

/** One fan of a member, at 1.2 kg/m³: its curve, its resistance where it stands, and steadily down where air runs back. */
function oneFan({ curve, speedRatio: n, standing }: FanMember): Lane {
  if (!(n > 0)) {
    const perSquare = (0.5 * curveDensity_kgPerM3 * standing.loss) / (standing.area_m2 * standing.area_m2);
    return (flow) => -perSquare * flow * Math.abs(flow);
  }
  const steep = Math.max(curve.shutOff_Pa / curve.freeFlow_m3PerS, -(curve.curve.slope[0] as number));
  return (flow) => {
    if (flow < 0) return n * n * curve.shutOff_Pa - steep * n * flow;
    fanPressure(curve, flow, n, curveDensity_kgPerM3, pair);
    return pair[0] as number;
  };
}

/** Flow of one lane at a pressure, the most where a curve with a dip has several. Pressure falls with flow from there on. */
function inverseOf(member: FanMember): (dp_Pa: number) => number {
  const own = oneFan(member);
  const { inARow, curve, speedRatio } = member;
  const at = (flow: number) => inARow * own(flow);
  const size = curve.freeFlow_m3PerS * Math.max(speedRatio, 0.1);
  const steps = curve.isNonIncreasing ? 1 : 64;
  return (dp_Pa) => {
    let high = size;
    while (at(high) > dp_Pa && high < 1e3 * size) high *= 2;
    const start = high;
    let low = high;
    // Down from the free end until the pressure is there: so a dip is met at its far side.
    for (let i = 1; i <= steps && at(low) < dp_Pa; i++) {
      high = low;
      low = start * (1 - i / steps);
    }
    for (let back = size; at(low) < dp_Pa && back < 1e3 * size; back *= 2) {
      high = low;
      low = -back;
    }
    for (let i = 0; i < 40; i++) {
      const middle = 0.5 * (low + high);
      if (at(middle) > dp_Pa) low = middle;
      else high = middle;
    }
    return 0.5 * (low + high);
  };
}

/** Side by side: flows add at every pressure, from the highest that moves any air to where none is left. */
function joinBeside(members: readonly FanMember[], lanes: readonly ((dp_Pa: number) => number)[]): FanCurve {
  const knots = new Set<number>([0]);
  for (const { curve, speedRatio: n, inARow } of members)
    for (const dp of curve.curve.y) if (n > 0) knots.add(Math.max(0, dp) * n * n * inARow);
  const sorted = [...knots].sort((a, b) => b - a);
  const levels = sorted.flatMap((high, i) => {
    const low = sorted[i + 1];
    if (low === undefined) return [high];
    return Array.from({ length: between }, (_, j) => high + ((low - high) * j) / between);
  });
  const points: FanPoint[] = [];
  const flowAt = (dp_Pa: number) =>
    members.reduce((sum, { sideBySide }, i) => sum + sideBySide * (lanes[i]?.(dp_Pa) ?? 0), 0);
  // The highest pressure that moves nothing in sum: where the strong one just feeds the weak one's back flow.
  let high = sorted[0] ?? 0;
  let low = 0;
  if (flowAt(high) < 0) {
    for (let i = 0; i < 60; i++) {
      const middle = 0.5 * (low + high);
      if (flowAt(middle) < 0) high = middle;
      else low = middle;
    }
    points.push({ flow_m3PerS: 0, dp_Pa: low });
  }
  for (const dp_Pa of levels) {
    const flow_m3PerS = flowAt(dp_Pa);
    const before = points[points.length - 1];
    if (flow_m3PerS < 0 || (before && flow_m3PerS <= before.flow_m3PerS * (1 + 1e-9) + 1e-12)) continue;
    points.push({ flow_m3PerS, dp_Pa });
  }
  return curveOf(
    points.map((point) => point.flow_m3PerS),
    points.map((point) => point.dp_Pa),
  );
}

/** Behind: pressures add at every flow, out to where the sum is nil. */
function addBehind(front: FanCurve, behind: readonly FanMember[]): FanCurve {
  const knots = new Set<number>(front.curve.x);
  let most = front.freeFlow_m3PerS;
  for (const { curve, speedRatio: n, sideBySide } of behind) {
    if (!(n > 0)) continue;
    most = Math.max(most, curve.freeFlow_m3PerS * n * sideBySide);
    for (const flow of curve.curve.x) knots.add(flow * n * sideBySide);
  }
  const sorted = [...knots].sort((a, b) => a - b);
  const flows = sorted.flatMap((low, i) => {
    const high = sorted[i + 1];
    if (high === undefined || high - low < 1e-9 * most) return high === undefined ? [low] : [];
    return Array.from({ length: 6 }, (_, j) => low + ((high - low) * j) / 6);
  });
  const lanes = behind.map(oneFan);
  const at = (flow: number) => {
    evaluatePchip(front.curve, flow, pair);
    let dp_Pa = pair[0] as number;
    behind.forEach(({ sideBySide, inARow }, i) => {
      dp_Pa += inARow * (lanes[i] as Lane)(flow / sideBySide);
    });
    return dp_Pa;
  };
  const dps = flows.map(at);
  const end = dps.findIndex((dp) => dp <= 0);
  if (end <= 0) return curveOf(flows, dps);
  let low = flows[end - 1] as number;
  let high = flows[end] as number;
  for (let i = 0; i < 60; i++) {
    const middle = 0.5 * (low + high);
    if (at(middle) > 0) low = middle;
    else high = middle;
  }
  return curveOf([...flows.slice(0, end), low], [...dps.slice(0, end), 0]);
}

function curveOf(flows: readonly number[], dps: readonly number[]): FanCurve {
  return prepareFanCurve(flows.map((flow_m3PerS, i) => ({ flow_m3PerS, dp_Pa: dps[i] as number })));
}

export const card = defineCard({
  id: 'fanGroup',
  title: 'Fans side by side and in a row',
  equation: 'side by side: Q(p) = Σ Q_i(p); in a row: p(Q) = Σ p_i(Q); equal ones: p(Q) = m·p₁(Q/n)',
  result: { name: 'pressure', unit: 'Pa' },
  source: { key: 'commonPractice', where: 'flows add at one pressure, pressures at one flow' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.1, from: 'common practice' },
  assumes: ['fanLaws'],
  example: {
    given: { shutOff_Pa: 40, freeFlow_m3PerS: 0.01, sideBySide: 2, inARow: 3, flow_m3PerS: 0.005 },
    printed: '90',
    where: 'worked by hand on a straight curve: each at a quarter of its free delivery, 30 Pa, three times',
  },
  evaluate: ({ shutOff_Pa, freeFlow_m3PerS, sideBySide, inARow, flow_m3PerS }) => {
    const straight = prepareFanCurve([
      { flow_m3PerS: 0, dp_Pa: shutOff_Pa },
      { flow_m3PerS: freeFlow_m3PerS, dp_Pa: 0 },
    ]);
    const standing = { loss: 8, area_m2: 1e-3 };
    const group = prepareFanGroup([
      { curve: straight, speedRatio: 1, sideBySide, inARow, place: 'first', standing },
    ]);
    evaluatePchip(group.curve.curve, flow_m3PerS, pair);
    return pair[0] as number;
  },
});
