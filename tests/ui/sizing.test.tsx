import { act, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import type { Design } from '../../src/model/design.ts';
import { eightResistors } from '../../src/model/examples/eightResistors.ts';
import { onePair } from '../../src/model/examples/onePair.ts';
import { twoDozen } from '../../src/model/examples/twoDozen.ts';
import { createStudies } from '../../src/store/studies.ts';
import { DesignContext } from '../../src/ui/bench/DesignContext.ts';
import { KeeperContext } from '../../src/ui/bench/KeeperContext.ts';
import { WhatSizeDoINeed } from '../../src/ui/questions/WhatSizeDoINeed.tsx';
import { StudiesContext } from '../../src/ui/studies/StudiesContext.ts';
import { fakeBrowser } from '../helpers/fakeBrowser.ts';
import { promptPool } from '../helpers/pools.ts';

const slow = { timeout: 15_000 };

/** The question over a design of a browser that may keep others. */
async function openQuestion(design: Design, others: readonly Design[] = []) {
  const browser = fakeBrowser();
  for (const other of others) {
    const tab = browser.openTab(null, eightResistors);
    tab.act.openText(JSON.stringify(other));
    await tab.keeper.flush();
  }
  const { store, keeper } = browser.openTab(null, design);
  render(
    <DesignContext value={store}>
      <KeeperContext value={{ keeper: Promise.resolve(keeper), open: () => {} }}>
        <StudiesContext value={createStudies(promptPool)}>
          <WhatSizeDoINeed />
        </StudiesContext>
      </KeeperContext>
    </DesignContext>,
  );
  const question = screen.getByRole('region', { name: 'What size do I need?' });
  const sentence = () => question.children[1]?.textContent?.replaceAll('\u202f', ' ') ?? '';
  await waitFor(() => expect(sentence()).toMatch(/spare/), slow);
  return { browser, store, question, sentence };
}

/** Results can be taken once they belong to the design as it is. */
async function takeable(name: RegExp, place: HTMLElement = document.body) {
  const button = await within(place).findByRole('button', { name }, slow);
  await waitFor(() => expect(button).toHaveAttribute('aria-disabled', 'false'), slow);
  return button;
}

describe('what size do I need', () => {
  test('answers by itself, and every size can be taken as one step to undo', async () => {
    const { store, question, sentence } = await openQuestion(onePair);
    expect(sentence()).toMatch(/the box would carry .* W; its fan could run down to 5 V/);
    const row = within(question).getByText('Lowest fan supply', { selector: 'li > span' }).closest('li');
    expect(row?.textContent?.replaceAll('\u202f', ' ')).toContain('anything down to 5 V, 9 dB(A)');
    await userEvent.click(await takeable(/^Take: Lowest fan supply/));
    expect(store.getState().design.fan.supply_V).toBe(5);
    expect(store.getState().undo()?.name).toMatch(/^Lowest fan supply/);
    expect(store.getState().design.fan.supply_V).toBe(12);
  });

  test('follows the target, keeps a text that does not read and says what is allowed', async () => {
    const { sentence } = await openQuestion(eightResistors);
    expect(sentence()).toMatch(/lacks the 1.25 × spare/);
    expect(screen.getByRole('heading', { name: /Out of reach by itself/ })).toBeInTheDocument();
    await userEvent.selectOptions(screen.getByLabelText('Target'), 'everyLimit');
    await waitFor(() => expect(sentence()).toMatch(/^Kept 10 K below every temperature limit/), slow);
    const margin = screen.getByRole('textbox', { name: /^Margin/ });
    await userEvent.clear(margin);
    await userEvent.type(margin, '900');
    expect(margin).toHaveAttribute('aria-invalid', 'true');
    expect(margin).toHaveValue('900');
    expect(margin).toHaveAccessibleDescription(/Allowed is 0 to 200/);
    expect(sentence()).toMatch(/^Kept 10 K/);
    for (const button of screen.getAllByRole('button', { name: /^Take/ }))
      expect(button).toHaveAttribute('aria-disabled', 'true');
  });

  test('finds fins on demand; what was found before an edit is told as such and cannot be taken', async () => {
    const { store } = await openQuestion(onePair);
    await userEvent.click(screen.getByRole('button', { name: 'Find the best fins' }));
    const table = await screen.findByRole('region', { name: /^Best fins of every count/ }, slow);
    await waitFor(() => expect(screen.getByText(/^Best of \d+ sets/)).toBeInTheDocument(), slow);
    expect(within(table).getAllByRole('row').length).toBeGreaterThan(3);
    expect(await takeable(/^Take the best: 6 fins/)).toBeInTheDocument();
    const take = await takeable(/^Take: 6 fins/, table);
    act(() => store.getState().setText('baffle.sideClearance_m', '1 mm'));
    expect(await screen.findByText(/of the design or the rules before/, {}, slow)).toBeInTheDocument();
    expect(take).toHaveAttribute('aria-disabled', 'true');
    await userEvent.click(screen.getByRole('button', { name: 'Find the best fins' }));
    await userEvent.click(await takeable(/^Take: 6 fins/, table));
    expect(store.getState().design.sink.finCount).toBe(6);
    expect(store.getState().design.baffle.sideClearance_m).toBe(0.001);
  });

  test('tries the fans of all designs that this browser keeps', async () => {
    const { store } = await openQuestion(eightResistors, [twoDozen, onePair]);
    const table = await screen.findByRole('region', { name: /^Fans at hand/ }, slow);
    await waitFor(() => expect(within(table).getAllByRole('row')).toHaveLength(4), slow);
    await userEvent.click(await takeable(/^Take: Invented 80 mm fan/));
    expect(store.getState().design.fan.name).toBe('Invented 80 mm fan, 12 V');
  });

  test('puts a result into a new variant where that is wanted', async () => {
    const { store } = await openQuestion(onePair);
    act(() => store.getState().setText('title', 'Mine'));
    await userEvent.selectOptions(screen.getByLabelText('What is taken goes'), 'variant');
    await userEvent.click(await takeable(/^Take: Lowest fan supply/));
    await waitFor(() => expect(store.getState().design.fan.supply_V).toBe(5), slow);
    expect(store.getState().design.variant).toBe('B');
    expect(store.getState().design.title).toBe('Mine');
  });
});
