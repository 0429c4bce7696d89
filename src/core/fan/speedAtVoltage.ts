import { defineCard } from '../card.ts';

/** Speed of a direct-current fan over its rated speed: in proportion to its voltage, and none below the voltage it starts at. */
export function speedAtVoltage(supply_V: number, rated_V: number, start_V: number): number {
  return supply_V < start_V ? 0 : supply_V / rated_V;
}

/** The same with its supply sagging and its bearings worn. @param sag, speedLoss shares of voltage and of speed */
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
  equation: 'n/n_rated = (1 − loss)·V·(1 − sag)/V_rated, nil below the start voltage',
  result: { name: 'speed over rated speed', unit: '1' },
  source: { key: 'commonPractice', where: 'small direct-current fans' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.05, from: 'common practice' },
  assumes: ['speedFollowsVoltage'],
  example: {
    given: { supply_V: 12, rated_V: 12, start_V: 6, sag: 0.1, speedLoss: 0.2 },
    printed: '0.72',
    where: 'worked by hand',
  },
  evaluate: ({ supply_V, rated_V, start_V, sag, speedLoss }) =>
    speedOf(supply_V, rated_V, start_V, sag, speedLoss),
});
