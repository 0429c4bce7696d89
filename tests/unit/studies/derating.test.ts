import { describe, expect, test } from 'vitest';
import { deratingOverAltitude, deratingOverAmbient, filmOverSupply } from '../../../src/studies/derating.ts';
import { fanStop } from '../../../src/studies/fanStop.ts';
import { sampleInput } from '../../helpers/sampleInput.ts';

const base = sampleInput(4, 2);
const falls = (values: readonly (number | null)[]) =>
  values.slice(1).every((value, i) => (value ?? 0) <= (values[i] ?? 0) + 1e-9);

describe('derating', () => {
  test('over the room falls, and without fans lies below', () => {
    const { running_W, stopped_W } = deratingOverAmbient(base, [283.15, 303.15, 323.15]);
    expect(falls(running_W)).toBe(true);
    expect(falls(stopped_W)).toBe(true);
    for (const [i, power] of running_W.entries()) expect(stopped_W[i]).toBeLessThan(power ?? 0);
  });

  test('over altitude falls', () => {
    expect(falls(deratingOverAltitude(base, [0, 1500, 3000]).running_W)).toBe(true);
  });

  test('the film cools with the supply, and has no value below the start voltage', () => {
    const { film_K } = filmOverSupply(base, [4, 6, 9, 12]);
    expect(film_K[0]).toBeNull();
    expect(falls(film_K.slice(1))).toBe(true);
  });
});

describe('the stop of the fans', () => {
  test('gives both ratings, and the limits in the order they are reached', () => {
    const { running, stopped, reached, timeline } = fanStop(base);
    expect(stopped?.total_W).toBeLessThan(running?.total_W ?? 0);
    const times = reached.map(({ time_s }) => time_s ?? Number.POSITIVE_INFINITY);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(timeline).not.toBeNull();
  });

  test('of a fan that never turned has no beginning, but still a rating without', () => {
    const { timeline, running, stopped } = fanStop({ ...base, fan: { ...base.fan, supply_V: 1 } });
    expect(timeline).toBeNull();
    expect(running).toBeNull();
    expect(stopped?.total_W).toBeGreaterThan(0);
  });
});
