import { defineCard } from '../card.ts';
import { evaluatePchip, type Pchip } from '../solve/pchip.ts';
import { addBehind, fromRestToFree } from './addBehind.ts';
import type { FallingCurve } from './fallingCurve.ts';
import { curveDensity_kgPerM3, type FanCurve, fanCurveOf } from './fanCurve.ts';
import {
  curveStage,
  type FanMember,
  freeDelivery_m3PerS,
  memberFalling,
  memberStage,
  scaledCurve,
  top_Pa,
} from './fanMember.ts';
import { joinBeside } from './joinBeside.ts';
import { shareBeside } from './shareBeside.ts';

export type { FanMember } from './fanMember.ts';

/** What each single fan of a member does while the group moves a flow. */
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
  /** Of each member, in the order given. */
  readonly shares: (flow_m3PerS: number, rho_kgPerM3: number) => FanShare[];
}

const pair = new Float64Array(2);

/**
 * Several fans as one curve: side by side they share the flow at one pressure, behind one another they add their pressures
 * at one flow. Equal fans scale their points and lose nothing; different kinds are joined (`joinBeside`, `addBehind`).
 * Through a fan above its shut-off pressure air runs back, against at least the mean fall of its curve; one that stands
 * still is a hole beside the others and a resistance behind them. Ideal: a fan close behind another works in its swirl.
 * @param members the first is `first`; at least one turns
 */
export function prepareFanGroup(members: readonly FanMember[]): FanGroup {
  const [first] = members;
  return first !== undefined && members.length === 1 ? equalFans(first) : mixedFans(members);
}

function equalFans(member: FanMember): FanGroup {
  const { curve: one, speedRatio: n, sideBySide, inARow } = member;
  const flow = n * sideBySide;
  const pressure = n * n * inARow;
  const edge = one.stallBelow_m3PerS;
  const curve: FanCurve = {
    curve: scaledCurve(one.curve, flow, pressure),
    freeFlow_m3PerS: one.freeFlow_m3PerS * flow,
    shutOff_Pa: one.shutOff_Pa * pressure,
    isNonIncreasing: one.isNonIncreasing,
    stallBelow_m3PerS: edge === null ? null : edge * flow,
  };
  return {
    curve,
    bridgedDip: false,
    shares: (flow_m3PerS, rho_kgPerM3) => {
      evaluatePchip(curve.curve, flow_m3PerS, pair);
      return [shareOf(member, flow_m3PerS, pair[0] as number, rho_kgPerM3)];
    },
  };
}

function mixedFans(members: readonly FanMember[]): FanGroup {
  const front = members.filter(isFront);
  const behind = members.filter((member, index) => !isFront(member, index));
  const behind_Pa = behind.reduce((sum, member) => sum + top_Pa(member), 0);
  const whole_Pa = Math.max(...front.map(top_Pa)) + behind_Pa;
  const lanes = front.length > 1 ? front.map((member) => memberFalling(member, 2 * whole_Pa)) : [];
  const joined = lanes.length > 0 ? joinFront(lanes, whole_Pa, behind_Pa) : null;
  const stages = [
    joined ? curveStage(joined) : memberStage(front[0] as FanMember),
    ...behind.map(memberStage),
  ];
  const most = Math.max(
    front.reduce((sum, member) => sum + freeDelivery_m3PerS(member), 0),
    ...behind.map(freeDelivery_m3PerS),
  );
  const curve = joined && behind.length === 0 ? joined : addBehind(stages, most);
  return {
    curve: fanCurveOf(fromRestToFree(curve)),
    bridgedDip: front.length > 1 && front.some((own) => own.speedRatio > 0 && !own.curve.isNonIncreasing),
    shares: (flow_m3PerS, rho_kgPerM3) => {
      const beside = lanes.length > 0 ? shareBeside(lanes, flow_m3PerS, whole_Pa) : null;
      let lane = 0;
      let stage = beside ? 1 : 0;
      return members.map((member, index) => {
        if (beside && isFront(member, index))
          return shareOf(member, beside.flows_m3PerS[lane++] as number, beside.dp_Pa, rho_kgPerM3);
        stages[stage++]?.evaluate(flow_m3PerS, pair);
        return shareOf(member, flow_m3PerS, pair[0] as number, rho_kgPerM3);
      });
    },
  };
}

/** From where they move nothing in sum; fans behind pull them below no pressure, at most by all they have. */
function joinFront(lanes: readonly FallingCurve[], whole_Pa: number, behind_Pa: number): Pchip {
  const closed_Pa = shareBeside(lanes, 0, whole_Pa).dp_Pa;
  return joinBeside(lanes, closed_Pa, -behind_Pa - 0.05 * (closed_Pa + behind_Pa));
}

function isFront({ place }: FanMember, index: number): boolean {
  return index === 0 || place !== 'behind';
}

/** Of one single fan, from what its member does at 1.2 kg/m³. */
function shareOf(member: FanMember, flow_m3PerS: number, dp_Pa: number, rho_kgPerM3: number): FanShare {
  const own = flow_m3PerS / member.sideBySide;
  return {
    flow_m3PerS: own,
    dp_Pa: (dp_Pa * rho_kgPerM3) / (curveDensity_kgPerM3 * member.inARow),
    backwards: own < -1e-9 * member.curve.freeFlow_m3PerS,
  };
}

export const card = defineCard({
  id: 'fanGroup',
  title: 'Fans side by side and in a row',
  equation: 'p = m·p_1 + p_b; Q = Σ Q_i; side by side at one pressure',
  result: { name: 'pressure', unit: 'Pa', symbol: 'p' },
  symbols: { each_Pa: 'p_1', inARow: 'm', behind_Pa: 'p_b' },
  source: { key: 'commonPractice', where: 'flows add at one pressure, pressures at one flow' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.1, from: 'common practice' },
  assumes: ['fanLaws'],
  example: {
    given: { each_Pa: 30, inARow: 3, behind_Pa: 0 },
    printed: '90',
    kind: 'worked again',
    where: 'worked by hand: three equal fans behind one another, 30 Pa each at their flow',
  },
  evaluate: ({ each_Pa, inARow, behind_Pa }) => inARow * each_Pa + behind_Pa,
});
