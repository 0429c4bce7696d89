import { describe, expect, test } from 'vitest';
import { airPower_W, fanEfficiency, scaleFanDuty } from '../../../../src/core/fan/fanLaws.ts';

const duty = { flow_m3PerS: 0.01, dp_Pa: 40, power_W: 2 };

describe('scaleFanDuty', () => {
  test('changes nothing where nothing changes', () => {
    expect(scaleFanDuty(duty, { speed: 1, size: 1, density: 1 })).toEqual(duty);
  });

  test('at twice the speed moves twice, presses four times and takes eight times', () => {
    expect(scaleFanDuty(duty, { speed: 2, size: 1, density: 1 })).toEqual({
      flow_m3PerS: 0.02,
      dp_Pa: 160,
      power_W: 16,
    });
  });

  test('at twice the size moves eight times, presses four times and takes thirty-two times', () => {
    expect(scaleFanDuty(duty, { speed: 1, size: 2, density: 1 })).toEqual({
      flow_m3PerS: 0.08,
      dp_Pa: 160,
      power_W: 64,
    });
  });

  test('in air of half the density moves the same volume at half the pressure and power', () => {
    expect(scaleFanDuty(duty, { speed: 1, size: 1, density: 0.5 })).toEqual({
      flow_m3PerS: 0.01,
      dp_Pa: 20,
      power_W: 1,
    });
  });

  test('keeps the efficiency', () => {
    const other = scaleFanDuty(duty, { speed: 1.3, size: 0.7, density: 0.9 });
    const efficiency = fanEfficiency(other.flow_m3PerS, other.dp_Pa, other.power_W);
    expect(efficiency).toBeCloseTo(0.2, 14);
  });
});

describe('fan power', () => {
  test('in the air is flow times pressure', () => {
    expect(airPower_W(0.01, 40)).toBeCloseTo(0.4, 15);
  });

  test('efficiency of a fan without power is nil', () => {
    expect(fanEfficiency(0.01, 40, 0)).toBe(0);
  });
});
