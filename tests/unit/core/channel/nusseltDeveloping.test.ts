import { describe, expect, test } from 'vitest';
import { nusseltDeveloping, prepareDeveloping } from '../../../../src/core/channel/nusseltDeveloping.ts';

describe('nusseltDeveloping', () => {
  const channel = prepareDeveloping(0.2);

  test('tends to its developed share in a long channel', () => {
    expect(nusseltDeveloping(channel, 1e9, 0.71)).toBeCloseTo(channel.developed5 ** 0.2, 6);
  });

  test('knows only the boundary layer in a very short one: Nu ∝ 1/√z*', () => {
    const ratio = nusseltDeveloping(channel, 1e-14, 0.71) / nusseltDeveloping(channel, 4e-14, 0.71);
    expect(ratio).toBeCloseTo(2, 2);
  });

  test('has an answer for no flow at all', () => {
    const still = nusseltDeveloping(channel, Number.POSITIVE_INFINITY, 0.71);
    expect(still).toBeCloseTo(channel.developed5 ** 0.2, 12);
  });
});
