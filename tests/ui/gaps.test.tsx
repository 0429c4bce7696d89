import { act, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, test } from 'vitest';
import { exampleById } from '../../src/model/examples/examples.ts';
import { createDesignStore } from '../../src/store/designStore.ts';
import { WhichGap } from '../../src/ui/questions/WhichGap.tsx';
import type { Pool } from '../../src/workers/studies/pool.ts';
import { BenchAround } from '../helpers/BenchAround.tsx';
import { promptPool } from '../helpers/pools.ts';

// Loaded before, so that no test waits for them.
beforeAll(async () => {
  await Promise.all([
    import('../../src/ui/charts/GapChart.tsx'),
    import('../../src/ui/charts/GapMapChart.tsx'),
    import('../../src/ui/charts/LinesChart.tsx'),
  ]);
});

const design = exampleById('eightResistors');
const plain = (text: string | null | undefined) => (text ?? '').replaceAll('\u202f', ' ');

function open(pool: Pool = promptPool) {
  const store = createDesignStore(design);
  const user = userEvent.setup();
  const rendered = render(
    <BenchAround store={store} pool={pool}>
      <WhichGap />
    </BenchAround>,
  );
  return { store, user, ...rendered };
}

/** The first cells of the table of rows, once it is there. */
async function rowsShown() {
  const table = await screen.findByRole('table');
  return within(table)
    .getAllByRole('row')
    .slice(1)
    .map((row) => plain(within(row).getByRole('rowheader').textContent));
}

describe('Which gap?', () => {
  test('answers a sensible range without a touch: sentence, chart, every value as a row', async () => {
    open();
    expect(await rowsShown()).toEqual([
      '0 mm',
      '0.5 mm',
      '0.8 mm now',
      '1 mm',
      '1.5 mm',
      '2 mm',
      '2.5 mm',
      '3 mm',
      '3.5 mm',
      '4 mm',
      'no baffle',
    ]);
    const region = screen.getByRole('region', { name: 'Which gap?' });
    expect(plain(region.children[1]?.textContent)).toMatch(/^Cut the side clearance between 0\.4 mm and/);
    expect(screen.getByText(/^Hottest film \(its limit/)).toBeInTheDocument();
  });

  test('takes a list as people type it', async () => {
    const { user } = open();
    await rowsShown();
    const box = screen.getByRole('textbox', { name: 'Values, side clearance' });
    await user.clear(box);
    await user.click(box);
    await user.paste('0, 1/32 in, 0.8 mm, 1.5');
    await waitFor(async () =>
      expect(await rowsShown()).toEqual(['0 mm', '0.794 mm', '0.8 mm now', '1.5 mm', 'no baffle']),
    );
  });

  test('keeps a text that does not read, says why, and keeps the last answer', async () => {
    const { user } = open();
    await rowsShown();
    const box = screen.getByRole('textbox', { name: 'Values, side clearance' });
    await user.click(box);
    await user.paste(' and so on');
    expect(box).toHaveValue('0 to 4 mm by 0.5 and so on');
    expect(box).toBeInvalid();
    expect(box).toHaveAccessibleDescription(/«so on» is not a number/);
    expect(screen.getByText(/belongs to the last values that read/)).toBeInTheDocument();
    expect(await rowsShown()).toHaveLength(11);
  });

  test('puts a row into the design by a press, as one step to undo, and keeps its rows', async () => {
    const { store, user } = open();
    await rowsShown();
    const button = screen.getByRole('button', { name: /^1\.5.mm$/ });
    button.focus();
    await user.keyboard('{Enter}');
    expect(store.getState().design.baffle.sideClearance_m).toBe(0.0015);
    expect(store.getState().history.past).toHaveLength(1);
    await waitFor(async () => expect(await rowsShown()).toContain('1.5 mm now'));
    expect(await rowsShown()).toHaveLength(10);
    await user.click(screen.getByRole('button', { name: 'no baffle' }));
    expect(store.getState().design.baffle.fitted).toBe(false);
    act(() => void store.getState().undo());
    act(() => void store.getState().undo());
    expect(store.getState().design.baffle).toEqual(design.baffle);
  });

  test('fits the baffle again together with a gap, in one step', async () => {
    const { store, user } = open();
    act(() => store.getState().setValue('baffle.fitted', false));
    await waitFor(async () => expect(await rowsShown()).toContain('no baffle now'));
    await user.click(screen.getByRole('button', { name: /^2.mm$/ }));
    expect(store.getState().design.baffle).toMatchObject({ fitted: true, sideClearance_m: 0.002 });
    act(() => void store.getState().undo());
    expect(store.getState().design.baffle).toMatchObject({ fitted: false, sideClearance_m: 0.0008 });
  });

  test('follows the design a moment after an edit', async () => {
    const { store } = open();
    await rowsShown();
    act(() => store.getState().setText('baffle.sideClearance_m', '1.2 mm'));
    await waitFor(async () => expect(await rowsShown()).toContain('1.2 mm now'));
  });

  test('compares another gap, with another figure beside it', async () => {
    const { user } = open();
    await user.selectOptions(screen.getByRole('combobox', { name: 'Gap' }), 'Slot width');
    await waitFor(async () => expect(await rowsShown()).toContain('21 mm now'));
    expect(plain(screen.getByText(/has its knee at/).textContent)).toContain('14 mm');
    const beside = screen.getByRole('combobox', { name: 'Beside it' });
    await user.selectOptions(beside, 'Air moved');
    expect(screen.getByText('Air moved', { selector: 'figcaption' })).toBeInTheDocument();
  });

  test('says so of a value that cannot be built, and does not offer it', async () => {
    const { user } = open();
    const box = screen.getByRole('textbox', { name: 'Values, side clearance' });
    await user.clear(box);
    await user.click(box);
    await user.paste('1; 12');
    await waitFor(async () => expect(await rowsShown()).toContain('12 mm'));
    expect(screen.getByRole('button', { name: /^12.mm$/ })).toBeDisabled();
    expect(screen.getAllByText(/10.mm on each side at most/)).toHaveLength(2);
  });

  test('makes a map of two gaps, every pair a button', async () => {
    const { store, user } = open();
    await user.selectOptions(screen.getByRole('combobox', { name: 'Against' }), 'Slot width');
    const box = await screen.findByRole('textbox', { name: 'Values, slot width' });
    await user.clear(box);
    await user.click(box);
    await user.paste('4, 12');
    const pair = await screen.findByRole('button', {
      name: /^Side clearance and slot width, 2.mm and 12.mm: 95\.9.°C, little to spare$/,
    });
    expect(
      await screen.findByRole('img', { name: /^Film margin over side clearance and slot width/ }),
    ).toBeInTheDocument();
    await user.click(pair);
    expect(store.getState().design.baffle).toMatchObject({ sideClearance_m: 0.002, slotWidth_m: 0.012 });
    act(() => void store.getState().undo());
    expect(store.getState().design.baffle).toEqual(design.baffle);
  });

  test('shows a long run and lets it be stopped and begun again', async () => {
    let stopped = 0;
    const { user } = open({
      run: (_, __, options) => {
        options?.onProgress?.(1, 4);
        return { result: new Promise(() => {}), cancel: () => stopped++ };
      },
      stop: () => {},
    });
    expect(screen.getByText('Being computed …')).toBeInTheDocument();
    expect(await screen.findByRole('progressbar')).toHaveValue(0.25);
    await user.click(screen.getByRole('button', { name: 'Stop' }));
    expect(stopped).toBe(1);
    await user.click(await screen.findByRole('button', { name: 'Compute' }));
    expect(await screen.findByRole('progressbar')).toBeInTheDocument();
  });
});
