import { render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { exampleById } from '../../src/model/examples/examples.ts';
import { createDesignStore } from '../../src/store/designStore.ts';
import { lastMove } from '../../src/store/history.ts';
import { ChangesProvider } from '../../src/ui/questions/changes/ChangesContext.tsx';
import { FirstChange } from '../../src/ui/questions/changes/FirstChange.tsx';
import { ShortList } from '../../src/ui/questions/changes/ShortList.tsx';
import { WhatToChangeFirst } from '../../src/ui/questions/WhatToChangeFirst.tsx';
import { BenchAround } from '../helpers/BenchAround.tsx';
import { fakeBrowser } from '../helpers/fakeBrowser.ts';
import { promptPool, silentPool } from '../helpers/pools.ts';

const eight = exampleById('eightResistors');

function open(options: Parameters<typeof BenchAround>[0] | object = {}) {
  const store = createDesignStore(eight);
  render(
    <BenchAround store={store} pool={promptPool} {...options}>
      <ChangesProvider>
        <FirstChange />
        <ShortList />
        <WhatToChangeFirst />
      </ChangesProvider>
    </BenchAround>,
  );
  return { store, user: userEvent.setup() };
}

const question = () => screen.getByRole('region', { name: 'What should be changed first?' });
const longList = () => within(question()).findByRole('list', { name: 'Changes, most kelvin first' });
const shortList = () => screen.findByRole('list', { name: 'The best changes' });

describe('what to change first', () => {
  test('says so while it is being computed', () => {
    open({ pool: silentPool });
    expect(question()).toHaveTextContent('Being computed');
    expect(screen.queryByRole('list', { name: 'The best changes' })).toBeNull();
  });

  test('stands in one line, in a list of three, and whole, the same one first', async () => {
    open();
    const items = within(await longList()).getAllByRole('listitem');
    expect(items).toHaveLength(8);
    const best = within(await shortList()).getAllByRole('listitem');
    expect(best).toHaveLength(3);
    for (const place of [items[0], best[0], screen.getByRole('link', { name: /^First, take the thinnest/ })])
      expect(place).toHaveTextContent(/ake the thinnest spacer filament/);
    expect(within(question()).getByText(/more that gain less$/)).toBeInTheDocument();
    expect(
      within(question()).getByText('Table: Changes that cannot be made as the rest stands'),
    ).toBeVisible();
  });

  test('is tried with one press, and taken back with one undo', async () => {
    const { store, user } = open();
    await shortList();
    const [button] = screen.getAllByRole('button', { name: 'Try it: Take the thinnest spacer filament' });
    if (button) await user.click(button);
    expect(store.getState().design.bond.filament_m).toBe(0.0001);
    expect(store.getState().history.past).toHaveLength(1);
    expect(lastMove(store.getState().history)?.path).toBe('bond.filament_m');
    store.getState().undo();
    expect(store.getState().design).toBe(eight);
  });

  test('of several inputs is one step, too, with a name of its own', async () => {
    const { store, user } = open();
    await longList();
    await user.click(screen.getByRole('button', { name: 'Try it: The best three at once' }));
    expect(store.getState().history.past).toHaveLength(1);
    expect(lastMove(store.getState().history)?.name).toBe('The best three changes at once');
    expect(within(question()).getByRole('status')).toHaveTextContent(/On the bench: The best three/);
  });

  test('cannot be pressed while it is about another design than the one on the bench', async () => {
    const { store } = open();
    await longList();
    const button = () => screen.getAllByRole('button', { name: /^Try it: Take the thinnest/ })[0];
    expect(button()).toBeEnabled();
    store.getState().setText('baffle.slotWidth_m', 'wide');
    await waitFor(() => expect(button()).toBeDisabled());
    store.getState().setText('baffle.slotWidth_m', '20 mm');
    await waitFor(() => expect(button()).toBeEnabled());
  });

  test('goes on as a variant that is named for it, and leaves the design as it was', async () => {
    const { kept, openTab } = fakeBrowser();
    const tab = openTab();
    const { user } = open({ store: tab.store, keeper: tab.keeper });
    await longList();
    const press = async () =>
      user.click(await screen.findByRole('button', { name: 'As a variant: Take longer sinks' }));
    await press();
    await waitFor(() => expect(tab.store.getState().design.sink.length_m).toBe(0.03));
    expect(tab.store.getState().design.variant).toBe('fin length 30 mm');
    await tab.keeper.flush();
    expect([...kept.values()].map(({ content }) => content.design.sink.length_m)).toEqual([0.025, 0.03]);
    expect(within(question()).getByRole('status')).toHaveTextContent(/its variant “fin length 30 mm”/);
  });

  test('offers no variant where nothing is kept', async () => {
    open();
    await longList();
    expect(screen.queryByRole('button', { name: /^As a variant/ })).toBeNull();
  });

  test('keeps the focus in the list when the row that had it is gone', async () => {
    const { user } = open();
    const list = await shortList();
    const [button] = within(list).getAllByRole('button', { name: /^Try it/ });
    if (button) await user.click(button);
    await waitFor(() => expect(list).not.toHaveTextContent('Take the thinnest'));
    expect(list.contains(document.activeElement)).toBe(true);
  });
});
