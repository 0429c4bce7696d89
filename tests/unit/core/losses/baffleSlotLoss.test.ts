import { expect, test } from 'vitest';
import { baffleSlotLoss } from '../../../../src/core/losses/baffleSlotLoss.ts';
import { mitreBendLoss } from '../../../../src/core/losses/mitreBendLoss.ts';

test('baffleSlotLoss costs more than a turn alone and less than a turn and a whole lost jet with contraction', () => {
  expect(baffleSlotLoss()).toBeGreaterThan(mitreBendLoss());
  expect(baffleSlotLoss()).toBeLessThan(mitreBendLoss() + 1 / 0.61 ** 2);
});
