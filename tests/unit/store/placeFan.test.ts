import { expect, test } from 'vitest';
import { eightResistors } from '../../../src/model/examples/eightResistors.ts';
import { twoDozen } from '../../../src/model/examples/twoDozen.ts';
import { createDesignStore } from '../../../src/store/designStore.ts';
import { placeFan } from '../../../src/store/placeFan.ts';
import { fansAtHand } from '../../../src/studies/sizing/fansAtHand.ts';

test('a fan from another design takes the place of all fans, as one step to undo', () => {
  const store = createDesignStore(eightResistors);
  const { addFan, setText, apply, undo } = store.getState();
  addFan();
  setText('fan.supply_V', 'much');
  setText('moreFans[0].supply_V', '9 V');
  setText('fan.sideBySide', '2');
  const before = store.getState();
  const [fan] = fansAtHand([twoDozen]);
  if (!fan) throw new Error('every design has a fan');
  apply((entered) => placeFan(entered, fan, 8.5), 'Other fan');
  const { design, drafts, units, problems } = store.getState();
  expect(design.fan).toMatchObject({ name: twoDozen.fan.name, size_m: 0.08, supply_V: 8.5, sideBySide: 2 });
  expect(design.moreFans).toEqual([]);
  expect(Object.keys(drafts)).not.toContain('fan.supply_V');
  expect(Object.keys(units).some((path) => path.startsWith('moreFans'))).toBe(false);
  expect(problems).toEqual([]);
  undo();
  expect(store.getState().design).toBe(before.design);
  expect(store.getState().drafts).toBe(before.drafts);
});
