import type { LinkLaw } from '../airflow/linkLaw.ts';
import { prepareFanCurve } from '../fan/fanCurve.ts';
import { type FanGroup, type FanMember, prepareFanGroup } from '../fan/fanGroup.ts';
import { obstructedShare } from '../fan/obstructedShare.ts';
import { speedOf } from '../fan/speedAtVoltage.ts';
import type { SoundSource } from '../sound/groupSound_dBA.ts';
import type { FanKind, SystemInput } from './input.ts';

/** One kind of fan in the box, with how many of it there are. */
export interface BoxFan {
  readonly kind: FanKind;
  readonly place: FanMember['place'];
  readonly sideBySide: number;
  readonly inARow: number;
  /** Speed over rated speed, as it is fed and as old as it is. */
  readonly speedRatio: number;
}

/** The fans of a box in the order the air meets them, at the speed they run at. */
export function boxFans({ fan, load }: SystemInput): BoxFan[] {
  const sag = load.atWorst ? fan.supplySag : 0;
  const speed = (kind: FanKind) => speedOf(kind.supply_V, kind.rated_V, kind.start_V, sag, fan.speedLoss);
  return [
    {
      kind: fan,
      place: 'first',
      sideBySide: fan.sideBySide,
      inARow: fan.inARow,
      speedRatio: speed(fan),
    },
    ...fan.others.map(
      (other): BoxFan => ({
        kind: other,
        place: other.place,
        sideBySide: 1,
        inARow: 1,
        speedRatio: speed(other),
      }),
    ),
  ];
}

/** All fans as one curve, `null` where none of them turns. */
export function runningFans(input: SystemInput): FanGroup | null {
  const fans = boxFans(input);
  if (!fans.some(({ speedRatio }) => speedRatio > 0)) return null;
  return prepareFanGroup(
    fans.map(
      ({ kind, place, sideBySide, inARow, speedRatio }): FanMember => ({
        curve: prepareFanCurve(kind.curve),
        speedRatio,
        sideBySide,
        inARow,
        place,
        standing: { loss: kind.standingLoss * input.factors.standingFan, area_m2: ringArea_m2(kind) },
      }),
    ),
  );
}

/** Electrical watts of all fans: every one of them ends in the air. */
export function fanPower_W(input: SystemInput): number {
  return boxFans(input).reduce(
    (sum, { kind, sideBySide, inARow, speedRatio: n }) =>
      sum + kind.power_W * sideBySide * inARow * n * n * n,
    0,
  );
}

/** Every fan that can be heard. */
export function soundSources(input: SystemInput): SoundSource[] {
  return boxFans(input).map(({ kind, sideBySide, inARow, speedRatio }) => ({
    sound_dBA: kind.sound_dBA,
    soundAt_m: kind.soundAt_m,
    speedRatio,
    count: sideBySide * inARow,
  }));
}

/** Share of the flow that the nearest wall, before the fan or behind it, may take: told, not counted. */
export function obstruction({ fan }: SystemInput): number {
  return obstructedShare(Math.min(fan.inletSpace_m, fan.outletSpace_m), fan.opening_m);
}

export function fanLaw(fans: FanGroup, flowFactor: number): LinkLaw {
  return { kind: 'fan', curve: fans.curve, speedRatio: 1, flowFactor };
}

/**
 * All fans at a stand, as one loss on an area such that one velocity head is lost: lanes side by side add their A/√K,
 * fans behind one another their K/A².
 */
export function standingFans(input: SystemInput): LinkLaw {
  const { fan, factors } = input;
  const factor = factors.standingFan;
  const wayOf = (kind: FanKind) => ringArea_m2(kind) / Math.sqrt(Math.max(kind.standingLoss * factor, 1e-9));
  let beside_m2 = (fan.sideBySide * wayOf(fan)) / Math.sqrt(fan.inARow);
  for (const other of fan.others) if (other.place === 'beside') beside_m2 += wayOf(other);
  let inverse = 1 / (beside_m2 * beside_m2);
  for (const other of fan.others) if (other.place === 'behind') inverse += 1 / wayOf(other) ** 2;
  return { kind: 'loss', loss: 1, area_m2: 1 / Math.sqrt(inverse), size_m: fan.opening_m };
}

/** Area between hub and rim. */
export function ringArea_m2({ opening_m, hub_m }: FanKind): number {
  return (Math.PI / 4) * (opening_m * opening_m - hub_m * hub_m);
}
