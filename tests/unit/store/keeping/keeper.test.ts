import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { defaultDesign } from '../../../../src/model/defaults.ts';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import { fieldView } from '../../../../src/store/fieldView.ts';
import { fakeBrowser } from '../../../helpers/fakeBrowser.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());
const rest = () => vi.advanceTimersByTimeAsync(500);

describe('a design on the bench', () => {
  test('is kept a moment after the last change and comes back: values, texts right and wrong, units, system', async () => {
    const { kept, openTab } = fakeBrowser();
    const { store, act } = openTab();
    act.setText('sink.plate_m', '1/16 in');
    await vi.advanceTimersByTimeAsync(300);
    act.setText('baffle.standOff_m', 'abc');
    act.setSystem('inch');
    expect(kept.size).toBe(0);
    await rest();
    expect(kept.size).toBe(1);
    expect(store.getState().keeping).toBe('kept');

    const next = openTab();
    expect(await next.keeper.restore()).toBe(true);
    const state = next.store.getState();
    expect(state.system).toBe('inch');
    expect(state.solvedDesign).toEqual(store.getState().solvedDesign);
    expect(fieldView(state, 'sink.plate_m')).toMatchObject({ text: '1/16 in', unit: 'in' });
    expect(fieldView(state, 'baffle.standOff_m').text).toBe('abc');
    expect(fieldView(state, 'baffle.standOff_m').problem).not.toBeNull();
    expect(state.stale).toBe(true);
    expect(state.outcome).toEqual(store.getState().outcome);
  });

  test('is not kept while it is an example or a new design that nobody has touched', async () => {
    const { kept, openTab } = fakeBrowser();
    const { act } = openTab();
    act.openExample(exampleById('onePair'));
    await rest();
    act.newDesign();
    await rest();
    expect(kept.size).toBe(0);
  });

  test('stays kept under its own name when another takes its place', async () => {
    const { kept, openTab } = fakeBrowser();
    const { keeper, act, store } = openTab();
    act.setText('title', 'Mine');
    await keeper.flush();
    act.openExample(exampleById('onePair'));
    act.setText('title', 'Second');
    await rest();
    expect([...kept.values()].map(({ content }) => content.design.title)).toEqual(['Mine', 'Second']);
    const [first] = await keeper
      .list()
      .then((all) => all.filter((each) => each.content.design.title === 'Mine'));
    expect(await keeper.open(first?.id ?? '')).toBe(true);
    expect(store.getState().design.title).toBe('Mine');
    expect(store.getState().history.past).toEqual([]);
  });

  test('goes on as a variant of the same family', async () => {
    const { kept, openTab } = fakeBrowser();
    const { keeper, act } = openTab();
    act.setText('title', 'Mine');
    await keeper.flush();
    await keeper.makeVariant('B');
    act.setText('baffle.sideClearance_m', '1.2 mm');
    await rest();
    const [a, b] = [...kept.values()];
    expect(kept.size).toBe(2);
    expect(a?.family).toBe(b?.family);
    expect(a?.content.design.baffle.sideClearance_m).toBe(0.0008);
    expect(b?.content.design).toMatchObject({ variant: 'B', baffle: { sideClearance_m: 0.0012 } });
    expect(a?.content.design.variant).toBe('');
  });

  test('leaves what it was when it goes on as a variant, what was just typed and untouched examples too', async () => {
    const { kept, openTab } = fakeBrowser();
    const { keeper, act } = openTab();
    await keeper.makeVariant('B');
    act.setText('baffle.sideClearance_m', '1.2 mm');
    await keeper.makeVariant('C');
    await keeper.flush();
    const variants = [...kept.values()].map(({ content: { design } }) => [
      design.variant,
      design.baffle.sideClearance_m,
    ]);
    expect(variants).toEqual([
      ['', 0.0008],
      ['B', 0.0012],
      ['C', 0.0012],
    ]);
    expect(new Set([...kept.values()].map(({ family }) => family)).size).toBe(1);
  });

  test('tells who watches of every change of the list, until they have seen enough', async () => {
    const { openTab } = fakeBrowser();
    const [here, there] = [openTab(), openTab()];
    let heard = 0;
    const stop = here.keeper.watch(() => heard++);
    here.act.setText('title', 'Mine');
    await here.keeper.flush();
    expect(heard).toBe(1);
    there.act.setText('title', 'Theirs');
    await there.keeper.flush();
    expect(heard).toBe(2);
    const [first] = await here.keeper.list();
    if (first) await here.keeper.remove(first);
    expect(heard).toBe(3);
    stop();
    if (first) await here.keeper.putBack(first);
    expect(heard).toBe(3);
  });

  test('tells what cannot be read, by its title and with the reason', async () => {
    const { strange, openTab } = fakeBrowser();
    strange.push(
      {
        id: 'a',
        content: { solvedDesign: { format: 'throughfin-design', version: 99, title: 'Of next year' } },
      },
      'a recipe',
    );
    const unread = await openTab().keeper.unread();
    expect(unread.map(({ title }) => title)).toEqual(['Of next year', '']);
    expect(unread[0]?.reason).toMatch(/version/);
    expect(unread[1]?.reason).toMatch(/not a Throughfin design/);
  });

  test('that is removed leaves the bench as it is, and can be put back', async () => {
    const { kept, openTab } = fakeBrowser();
    const { keeper, act, store } = openTab();
    act.setText('title', 'Mine');
    await keeper.flush();
    const [record] = await keeper.list();
    if (record === undefined) throw new Error('nothing kept');
    await keeper.remove(record);
    await rest();
    expect(kept.size).toBe(0);
    expect(store.getState().design.title).toBe('Mine');
    await keeper.putBack(record);
    expect(kept.size).toBe(1);
  });

  test('kept by a Throughfin that kept only one is taken over', async () => {
    const { kept, openTab, setLast } = fakeBrowser();
    setLast({
      design: { ...defaultDesign, title: 'Old' },
      system: 'inch',
      units: { 'sink.plate_m': 'in', bad: 3 },
    });
    const { keeper, store } = openTab();
    expect(await keeper.restore()).toBe(true);
    expect(store.getState()).toMatchObject({
      design: { title: 'Old' },
      system: 'inch',
      units: { 'sink.plate_m': 'in' },
    });
    expect(kept.size).toBe(1);
  });

  test('is not overwritten by one that comes out of the cupboard late', async () => {
    const { openTab } = fakeBrowser();
    const first = openTab();
    first.act.setText('title', 'Kept');
    await rest();
    const { keeper, act, store } = openTab();
    const restoring = keeper.restore();
    act.setText('title', 'Typed meanwhile');
    expect(await restoring).toBe(false);
    expect(store.getState().design.title).toBe('Typed meanwhile');
  });

  test('is the one this tab had open, not the one written last', async () => {
    const { openTab } = fakeBrowser();
    const one = openTab();
    one.act.setText('title', 'One');
    await rest();
    const two = openTab();
    two.act.setText('title', 'Two');
    await rest();
    const again = openTab(one.remembers());
    await again.keeper.restore();
    expect(again.store.getState().design.title).toBe('One');
  });
});

describe('a page that goes before its time', () => {
  test('leaves what was typed to be picked up', async () => {
    const { kept, left, openTab, setTrouble } = fakeBrowser();
    const { act, keeper } = openTab();
    act.setText('title', 'Mine');
    await keeper.flush();
    act.setText('title', 'Mine, later');
    setTrouble(new Error('the page is gone'));
    keeper.leave();
    await rest();
    setTrouble(null);
    expect(left.size).toBe(1);
    const next = openTab();
    await next.keeper.restore();
    expect(next.store.getState().design.title).toBe('Mine, later');
    expect(left.size).toBe(0);
    expect(kept.size).toBe(1);
  });

  test('leaves nothing where there was time after all', async () => {
    const { left, openTab } = fakeBrowser();
    const { act, keeper } = openTab();
    act.setText('title', 'Mine');
    keeper.leave();
    await rest();
    expect(left.size).toBe(0);
  });

  test('leaves a variant where another tab has gone on meanwhile', async () => {
    const { kept, openTab, setTrouble } = fakeBrowser();
    const a = openTab();
    a.act.setText('title', 'Shared');
    await a.keeper.flush();
    const b = openTab();
    await b.keeper.restore();
    b.act.setText('title', 'From b');
    setTrouble(new Error('the page is gone'));
    b.keeper.leave();
    await rest();
    setTrouble(null);
    b.keeper.stop();
    a.act.setText('title', 'From a');
    await rest();
    const c = openTab();
    await c.keeper.restore();
    expect([...kept.values()].map(({ content }) => content.design.title)).toEqual(['From a', 'From b']);
    expect(new Set([...kept.values()].map(({ family }) => family)).size).toBe(1);
  });
});

describe('storage that does not work', () => {
  test.each([
    ['refused', new Error('private window')],
    ['full', Object.assign(new Error('no room'), { name: 'QuotaExceededError' })],
  ])(
    'is told as %s; nothing typed goes, and it is kept as soon as that works again',
    async (keeping, error) => {
      const { kept, openTab, setTrouble } = fakeBrowser();
      const { store, act, keeper } = openTab();
      setTrouble(error);
      act.setText('title', 'Mine');
      await rest();
      expect(store.getState().keeping).toBe(keeping);
      expect(await keeper.flush()).toBe(false);
      expect(store.getState().design.title).toBe('Mine');
      setTrouble(null);
      act.setText('title', 'Mine still');
      await rest();
      expect(store.getState().keeping).toBe('kept');
      expect(kept.size).toBe(1);
    },
  );

  test('at the start is told, and the bench opens with the example', async () => {
    const { openTab, setTrouble } = fakeBrowser();
    setTrouble(new Error('private window'));
    const { keeper, store } = openTab();
    expect(await keeper.restore()).toBe(false);
    expect(store.getState().keeping).toBe('refused');
  });
});

describe('two tabs on one design', () => {
  async function twoTabs() {
    const all = fakeBrowser();
    const a = all.openTab();
    a.act.setText('title', 'Shared');
    await a.keeper.flush();
    const b = all.openTab();
    await b.keeper.restore();
    return { ...all, a, b };
  }

  test('a tab in which nothing was typed follows the other and says so', async () => {
    const { a, b } = await twoTabs();
    a.act.setText('baffle.sideClearance_m', '1.2 mm');
    await rest();
    expect(b.store.getState().design.baffle.sideClearance_m).toBe(0.0012);
    expect(b.store.getState().notice).toMatch(/changed in another tab/);
    b.act.setText('baffle.sideClearance_m', '1.4 mm');
    await rest();
    expect(a.store.getState().design.baffle.sideClearance_m).toBe(0.0014);
  });

  test('changed in both at once, neither overwrites the other; both may be kept', async () => {
    const { a, b, kept } = await twoTabs();
    a.act.setText('baffle.sideClearance_m', '1.2 mm');
    b.act.setText('baffle.sideClearance_m', '1.4 mm');
    await rest();
    expect(b.store.getState().keeping).toBe('parted');
    expect([...kept.values()].map(({ content }) => content.design.baffle.sideClearance_m)).toEqual([0.0012]);
    b.act.setText('title', 'Shared, mine');
    await rest();
    expect(kept.size).toBe(1);
    await b.keeper.settle('keepBoth');
    expect(b.store.getState().keeping).toBe('kept');
    expect([...kept.values()].map(({ content }) => content.design.baffle.sideClearance_m)).toEqual([
      0.0012, 0.0014,
    ]);
    expect(new Set([...kept.values()].map(({ family }) => family)).size).toBe(1);
    a.act.setText('title', 'Shared, theirs');
    await rest();
    expect(a.store.getState().keeping).toBe('kept');
  });

  test('or the other’s is taken', async () => {
    const { a, b, kept } = await twoTabs();
    a.act.setText('baffle.sideClearance_m', '1.2 mm');
    b.act.setText('baffle.sideClearance_m', '1.4 mm');
    await rest();
    await b.keeper.settle('takeTheirs');
    expect(b.store.getState()).toMatchObject({
      keeping: 'kept',
      design: { baffle: { sideClearance_m: 0.0012 } },
    });
    expect(kept.size).toBe(1);
  });

  test('removed in one while the other changes it, it is told and kept on demand', async () => {
    const { a, b, kept } = await twoTabs();
    const [record] = await a.keeper.list();
    if (record === undefined) throw new Error('nothing kept');
    await a.keeper.remove(record);
    b.act.setText('title', 'Still here');
    await rest();
    expect(b.store.getState().keeping).toBe('parted');
    await b.keeper.settle('keepBoth');
    expect([...kept.values()].map(({ content }) => content.design.title)).toEqual(['Still here']);
  });

  test('another design opened over a parted one ends the parting', async () => {
    const { a, b } = await twoTabs();
    a.act.setText('title', 'A');
    b.act.setText('title', 'B');
    await rest();
    b.act.openExample(exampleById('onePair'));
    expect(b.store.getState().keeping).toBe('unknown');
  });
});
