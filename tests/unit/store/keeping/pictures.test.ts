import { expect, test, vi } from 'vitest';
import { fakeBrowser } from '../../../helpers/fakeBrowser.ts';

async function withPicture() {
  const browser = fakeBrowser();
  const tab = browser.openTab();
  tab.act.setText('title', 'Mine');
  const id = (await tab.keeper.claim()) ?? '';
  await browser.pictures.writePicture(id, 'fan.curve', 'the picture');
  await browser.pictures.writeTracing(id, 'fan.curve', 'the marks');
  return { ...browser, ...tab, id };
}
const there = { list: 'fan.curve', picture: 'the picture', tracing: 'the marks' };

test('a design that something is laid beside is kept, though nobody has touched it', async () => {
  const { openTab, kept } = fakeBrowser();
  const { keeper } = openTab();
  const id = await keeper.claim();
  expect([...kept.keys()]).toEqual([id]);
  expect(await keeper.claim()).toBe(id);
});

test('a picture follows a variant, and each goes its own way from then on', async () => {
  const { keeper, store, pictures, id } = await withPicture();
  await keeper.makeVariant('B');
  const variant = store.getState().identity?.id ?? '';
  expect(variant).not.toBe(id);
  expect(await pictures.of(variant)).toEqual([there]);
  await pictures.writeTracing(variant, 'fan.curve', 'other marks');
  expect(await pictures.of(id)).toEqual([there]);
});

test('a picture goes with a design that is removed, and comes back with it', async () => {
  const { keeper, pictures, id, kept } = await withPicture();
  const record = kept.get(id);
  if (record === undefined) throw new Error('not kept');
  await keeper.remove(record);
  expect(await pictures.of(id)).toEqual([]);
  await keeper.putBack(record);
  expect(await pictures.of(id)).toEqual([there]);
});

test('after two tabs have parted, both have the picture', async () => {
  const { keeper, act, store, pictures, kept, id } = await withPicture();
  const record = kept.get(id);
  if (record === undefined) throw new Error('not kept');
  kept.set(id, { ...record, stamp: 'of another tab' });
  act.setText('title', 'Mine, changed');
  await keeper.flush();
  expect(store.getState().keeping).toBe('parted');
  await keeper.settle('keepBoth');
  const mine = store.getState().identity?.id ?? '';
  expect(mine).not.toBe(id);
  expect(await pictures.of(mine)).toEqual([there]);
});

test('pictures that cannot be had or kept are no reason to do without the variant', async () => {
  const { keeper, store, pictures, id } = await withPicture();
  vi.spyOn(pictures, 'put').mockRejectedValue(new Error('disk full'));
  await keeper.makeVariant('B');
  expect(store.getState().identity?.id).not.toBe(id);
  expect(store.getState().keeping).toBe('kept');
});
