import { describe, expect, test } from 'vitest';
import { ordinaryRun } from '../../../../src/core/system/input.ts';
import { solveSystem } from '../../../../src/core/system/solveSystem.ts';
import type { Design } from '../../../../src/model/design.ts';
import { exampleById, examples } from '../../../../src/model/examples/examples.ts';
import { toCore } from '../../../../src/model/toCore.ts';
import { reserveOf, stateOfReserve } from '../../../../src/studies/gaps/reserve.ts';
import { eightAt } from '../../../helpers/sampleGaps.ts';

function judged(design: Design) {
  const outcome = solveSystem(toCore(design), ordinaryRun);
  if (!outcome.ok) throw new Error('no answer');
  const reserve = reserveOf(outcome, {
    spareFactor: design.limits.spareFactor,
    glassTransition_K: design.bond.glassTransition_K,
  });
  return { outcome, reserve };
}

describe('the reserve of a verdict', () => {
  test.each(examples.map(({ id }) => id))('agrees with the verdict of %s', (id) => {
    const { outcome, reserve } = judged(exampleById(id));
    expect(stateOfReserve(reserve)).toBe(outcome.verdict.state);
  });

  test('passes through nil where the load is just too much', () => {
    const { reserve } = judged(eightAt(4));
    const load = 4 * (1 + reserve.toFail);
    expect(judged(eightAt(load * 0.995)).outcome.verdict.state).toBe('little');
    expect(judged(eightAt(load * 1.005)).outcome.verdict.state).toBe('fails');
  });

  test.each<[string, (design: Design) => Design]>([
    ['loud', (d) => ({ ...d, limits: { ...d.limits, soundJudged: true, sound_dBA: 20 } })],
    ['nearly loud', (d) => ({ ...d, limits: { ...d.limits, soundJudged: true, sound_dBA: 32.5 } })],
    ['above its glass transition', (d) => ({ ...d, bond: { ...d.bond, glassTransition_K: 320 } })],
    ['at too many volts', (d) => ({ ...d, parts: d.parts.map((part) => ({ ...part, elementLimit_V: 5 })) })],
    [
      'close to its volts',
      (d) => ({ ...d, parts: d.parts.map((part) => ({ ...part, elementLimit_V: 9.5 })) }),
    ],
    ['above its rated power', (d) => ({ ...d, parts: d.parts.map((part) => ({ ...part, rated_W: 1 })) })],
    ['in pulses', (d) => ({ ...d, load: { ...d.load, duty: 0.4, period_s: 20 } })],
    ['cold', (d) => ({ ...d, positions: d.positions.map((position) => ({ ...position, power_W: 0.1 })) })],
  ])('agrees with the verdict of a box that is %s', (_, change) => {
    const { outcome, reserve } = judged(change(exampleById('eightResistors')));
    expect(stateOfReserve(reserve)).toBe(outcome.verdict.state);
  });
});
