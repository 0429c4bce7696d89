import { describe, expect, test } from 'vitest';
import { fansStopped, type SystemInput } from '../../../../src/core/system/input.ts';
import { trustOf } from '../../../../src/core/system/trust.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';
import { trusted } from '../../../helpers/solved.ts';

const base = sampleInput(2);
const fans = ['fanLaws', 'fanSpeed', 'fanHeat', 'soundAtSpeed', 'bladePass'];

describe('trustOf', () => {
  test('rests on what moves the air: the fans while they turn, their standing loss while they do not', () => {
    const [running, stopped] = [trusted(base).used, trusted(base, fansStopped).used];
    for (const id of fans) {
      expect(running).toContain(id);
      expect(stopped).not.toContain(id);
    }
    expect(stopped).toContain('standingFan');
    expect(running).not.toContain('standingFan');
    for (const used of [running, stopped]) expect(used).toContain('draught');
  });

  test('names the group and the sum of sounds only where there are several', () => {
    const two: SystemInput = { ...base, fan: { ...base.fan, sideBySide: 2 } };
    for (const id of ['fanGroup', 'soundSum']) {
      expect(trusted(two).used).toContain(id);
      expect(trusted(base).used).not.toContain(id);
    }
  });

  test('names the short pulse only where the load comes and goes', () => {
    const pulsed = { ...base, load: { ...base.load, duty: 0.5 } };
    expect(trusted(pulsed).used).toContain('shortPulseRise');
    expect(trusted(base).used).not.toContain('shortPulseRise');
  });

  test('is empty where there is no answer', () => {
    const still = { ...base, fan: { ...base.fan, supply_V: 1 } };
    expect(trustOf(still)).toEqual({ notes: [], stands: [], used: [] });
    expect(trustOf(still, fansStopped).used).not.toEqual([]); // stopped it does not need its fan
  });
});
