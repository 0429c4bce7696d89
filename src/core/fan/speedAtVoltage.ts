import { defineCard } from '../card.ts';

/** Slower than this share of rated speed a fan stands still, whatever its voltage. */
const leastSpeed = 1e-3;

/**
 * Speed of a direct-current fan over its rated speed: in proportion to its voltage, and none below the voltage it starts at.
 * Real fans stray by about 5 % between half and full voltage.
 */
export function speedAtVoltage(supply_V: number, rated_V: number, start_V: number): number {
  const ratio = supply_V / rated_V;
  return supply_V < start_V || ratio < leastSpeed ? 0 : ratio;
}

/**
 * The same for a supply that sags and a fan that has aged.
 * @param sag share of its voltage that the supply loses; with it the fan may fail to start
 * @param speedLoss share of its speed that the fan has lost
 */
export function speedOf(
  supply_V: number,
  rated_V: number,
  start_V: number,
  sag: number,
  speedLoss: number,
): number {
  return speedAtVoltage(supply_V * (1 - sag), rated_V, start_V) * (1 - speedLoss);
}

export const card = defineCard({
  id: 'fanSpeed',
  title: 'Fan speed over its voltage and age',
  equation: 'n = (1 − a)·(1 − s)·V/V_r; nil where (1 − s)·V is below V_s',
  result: { name: 'speed over rated speed', unit: '1', symbol: 'n' },
  symbols: { supply_V: 'V', rated_V: 'V_r', start_V: 'V_s', sag: 's', speedLoss: 'a' },
  source: { key: 'commonPractice', where: 'small direct-current fans, ±5 % between half and full voltage' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.05, from: 'common practice' },
  assumes: ['speedFollowsVoltage'],
  example: {
    given: { supply_V: 12, rated_V: 12, start_V: 6, sag: 0.1, speedLoss: 0.2 },
    printed: '0.72',
    kind: 'worked again',
    where: 'worked by hand',
  },
  evaluate: ({ supply_V, rated_V, start_V, sag, speedLoss }) =>
    speedOf(supply_V, rated_V, start_V, sag, speedLoss),
});
