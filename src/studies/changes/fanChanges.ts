import type { Design } from '../../model/design.ts';
import type { Change } from './change.ts';
import { rounded } from './practice.ts';

/** Nearer to its rated voltage than this a fan runs at it. */
const hair = 0.01;
/** So far above its rated voltage a fan is commonly let run; common practice, no source. */
const overRated = 1.1;

/** What can be done about the fans: speed, number, wear, room to breathe. */
export function fanChanges({ fan, moreFans, load }: Design): Change[] {
  const kinds = [fan, ...moreFans];
  const pathOf = (at: number) => (at === 0 ? 'fan.supply_V' : `moreFans[${at - 1}].supply_V`);
  const feed = (volts: (kind: { rated_V: number; supply_V: number }) => number) =>
    Object.fromEntries(kinds.map((kind, at) => [pathOf(at), volts(kind)]));
  const slow = kinds.some(({ supply_V, rated_V }) => supply_V < rated_V * (1 - hair));
  const mayRise = !slow && kinds.every(({ supply_V, rated_V }) => supply_V < rated_V * (overRated - hair));
  return [
    ...(slow
      ? [
          {
            key: 'fanRated',
            values: feed(({ rated_V, supply_V }) => Math.max(rated_V, supply_V)),
            costs: ['setting'],
          } as const,
        ]
      : []),
    ...(mayRise
      ? [
          {
            key: 'fanFaster',
            values: feed(({ rated_V }) => rounded(overRated * rated_V, 0.01)),
            costs: ['setting'],
          } as const,
        ]
      : []),
    { key: 'fanBeside', values: { 'fan.sideBySide': fan.sideBySide + 1 }, costs: ['buy', 'cut'] },
    { key: 'fanBehind', values: { 'fan.inARow': fan.inARow + 1 }, costs: ['buy', 'assemble'] },
    ...(fan.speedLoss > 0
      ? [{ key: 'fanRenewed', values: { 'fan.speedLoss': 0 }, costs: ['buy'] } as const]
      : []),
    ...(load.atWorst && fan.supplySag > 0
      ? [{ key: 'sagCured', values: { 'fan.supplySag': 0 }, costs: ['buy'] } as const]
      : []),
    ...(fan.inletSpace_m < fan.opening_m
      ? [{ key: 'inletFree', values: { 'fan.inletSpace_m': fan.opening_m }, costs: ['place'] } as const]
      : []),
  ];
}
