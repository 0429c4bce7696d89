import { act, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { exampleById } from '../../src/model/examples/examples.ts';
import { createDesignStore } from '../../src/store/designStore.ts';
import { PartsVaryLine } from '../../src/ui/questions/tolerance/PartsVaryLine.tsx';
import { WhatIfPartsVary } from '../../src/ui/questions/WhatIfPartsVary.tsx';
import type { Pool, RunOptions } from '../../src/workers/studies/pool.ts';
import { BenchAround } from '../helpers/BenchAround.tsx';
import { promptPool } from '../helpers/pools.ts';

// Loaded before, so that no test waits for it.
beforeAll(async () => {
  await import('../../src/ui/charts/HistogramChart.tsx');
});

const plain = (text: string | null | undefined) => (text ?? '').replaceAll('\u202f', ' ');

function open(pool: Pool = promptPool) {
  const store = createDesignStore(exampleById('eightResistors'));
  const user = userEvent.setup();
  render(
    <BenchAround store={store} pool={pool}>
      <div data-testid="verdict">
        <PartsVaryLine />
      </div>
      <WhatIfPartsVary />
    </BenchAround>,
  );
  const region = screen.getByRole('region', { name: 'What if parts vary?' });
  return {
    store,
    user,
    region,
    sentence: () => plain(region.children[1]?.textContent),
    verdict: () => plain(screen.getByTestId('verdict').textContent),
    draw: async () => {
      await user.selectOptions(screen.getByLabelText('Boxes to draw'), '1000');
      await user.click(screen.getByRole('button', { name: /^Draw / }));
      await screen.findByText('All boxes drawn.', undefined, { timeout: 20_000 });
    },
  };
}

describe('What if parts vary?', () => {
  test('draws nothing before it is asked to', () => {
    const { sentence, verdict } = open();
    expect(sentence()).toMatch(/^No two boxes come out alike\./);
    expect(verdict()).toBe('');
    expect(screen.queryByRole('table')).toBeNull();
  });

  test('answers with a sentence, a histogram, a ranking and tables, and adds a line to the verdict', async () => {
    const { sentence, verdict, draw, region } = open();
    await draw();
    expect(sentence()).toMatch(
      /^9\d of 100 boxes built like this hold, .* What matters most is the conductivity of the bond/,
    );
    expect(verdict()).toMatch(/^As parts vary, 9\d of 100 boxes hold\.$/);
    const figures = within(region).getByRole('region', { name: /^Main figures/ });
    expect(within(figures).getByRole('rowheader', { name: 'Hottest film' })).toBeInTheDocument();
    expect(within(region).getByRole('region', { name: /^Which limit/ })).toHaveTextContent('Derating line');
    expect(
      within(region).getByText(/^What matters most: share of how the film’s margin varies/),
    ).toBeInTheDocument();
    expect(within(region).getByText('How the boxes were drawn, and what that rests on')).toBeInTheDocument();
    expect(screen.getByRole('button', { name: 'Draw again' })).toBeDisabled();
  });

  test('says when the answer is out of date, above and here, and draws again', async () => {
    const { store, verdict, draw, user } = open();
    await draw();
    act(() => store.getState().setText('baffle.slotWidth_m', '19 mm'));
    expect(verdict()).toMatch(/^Out of date: 9\d of 100 boxes held before the last change\.$/);
    expect(screen.getByText(/^What stands here is out of date/)).toBeInTheDocument();
    await user.click(screen.getByRole('button', { name: 'Draw again' }));
    await screen.findByText('All boxes drawn.', undefined, { timeout: 20_000 });
    expect(verdict()).toMatch(/^As parts vary/);
    act(() => {
      store.getState().endEdit();
      store.getState().setText('baffle.slotWidth_m', '20 mm');
    });
    expect(verdict()).toMatch(/^Out of date/);
    act(() => {
      store.getState().undo();
    });
    expect(verdict()).toMatch(/^As parts vary/);
  });

  test('drops the answer once another design is opened', async () => {
    const { store, verdict, sentence, draw } = open();
    await draw();
    act(() => store.getState().openExample(exampleById('onePair')));
    expect(verdict()).toBe('');
    expect(sentence()).toMatch(/^No two boxes come out alike\./);
    expect(screen.getByRole('button', { name: 'Draw boxes' })).toBeEnabled();
  });

  test('asks of a batch how often all of it holds', async () => {
    const { user, sentence, verdict, draw } = open();
    const boxes = screen.getByLabelText('Built together');
    expect(boxes).toHaveValue('1');
    await user.clear(boxes);
    await user.type(boxes, '8');
    await draw();
    expect(sentence()).toContain('all eight of a batch hold in');
    expect(verdict()).toMatch(/hold, all eight in \d+ of 100\.$/);
  });

  test('keeps a wrong seed as typed, says what is allowed, and waits', async () => {
    const { user } = open();
    const seed = screen.getByLabelText('Seed');
    await user.clear(seed);
    await user.type(seed, 'x7');
    expect(seed).toHaveValue('x7');
    expect(seed).toBeInvalid();
    expect(screen.getByText('Allowed is a whole number from 0 to 4294967295.')).toBeInTheDocument();
    expect(screen.getByRole('button', { name: 'Draw boxes' })).toBeDisabled();
  });

  test('shows how far it is and can be stopped', async () => {
    const cancel = vi.fn();
    let options: RunOptions<never> = {};
    const pool: Pool = {
      run: (_, __, given) => {
        options = given as RunOptions<never>;
        return { result: new Promise(() => {}), cancel };
      },
      stop: () => {},
    };
    const { user } = open(pool);
    await user.click(screen.getByRole('button', { name: 'Draw boxes' }));
    act(() => options.onProgress?.(30, 50));
    expect(screen.getByRole('progressbar', { name: 'Draw boxes' })).toHaveValue(0.6);
    await user.click(screen.getByRole('button', { name: 'Stop' }));
    expect(cancel).toHaveBeenCalled();
    expect(screen.queryByRole('progressbar')).toBeNull();
  });
});

describe('the spreads', () => {
  const opened = async () => {
    const page = open();
    await page.user.click(screen.getByText(/^Change what varies/));
    const name = await screen.findByText('Side clearance');
    const row = name.closest('li') as HTMLElement;
    const size = () => within(row).getByRole('textbox', { name: /^Spread of side clearance, size/ });
    return { ...page, row, size, spreads: () => page.store.getState().design.spreads };
  };

  test('stand with shape, size, reach and source', async () => {
    const { row, size } = await opened();
    expect(size()).toHaveValue('0.2');
    expect(within(row).getByRole('combobox', { name: 'Spread of side clearance, shape' })).toHaveValue(
      'uniform',
    );
    expect(row).toHaveTextContent('Drawn for each box; sheared and milled in a small shop; assumption');
  });

  test('take a size in any unit, or as a share, and go back to the usual one', async () => {
    const { user, row, size, spreads } = await opened();
    await user.clear(size());
    await user.type(size(), '1/64 in{Enter}');
    expect(spreads()).toEqual([
      { path: 'baffle.sideClearance_m', kind: 'uniform', relative: false, size: 0.000396875 },
    ]);
    await user.clear(size());
    await user.type(size(), '25 %');
    await user.tab();
    expect(spreads()).toMatchObject([{ relative: true, size: 0.25 }]);
    expect(size()).toHaveValue('25');
    expect(row).toHaveTextContent('usually even, ±0.2');
    await user.click(
      within(row).getByRole('button', { name: 'Spread of side clearance: back to the usual one' }),
    );
    expect(spreads()).toEqual([]);
  });

  test('keep what does not read as typed, with what is allowed, and change nothing', async () => {
    const { user, size, spreads, row } = await opened();
    await user.clear(size());
    await user.type(size(), '3 lb{Enter}');
    expect(size()).toHaveValue('3 lb');
    expect(size()).toBeInvalid();
    expect(row).toHaveTextContent('is a mass');
    expect(spreads()).toEqual([]);
    await user.clear(size());
    await user.type(size(), '0{Enter}');
    expect(row).toHaveTextContent(
      'Out of bounds. Allowed is more than nothing, 0 to 200 mm, or a share in %.',
    );
  });

  test('can be left out, and an edit of one can be taken back', async () => {
    const { user, row, spreads, store } = await opened();
    await user.selectOptions(within(row).getByRole('combobox'), 'none');
    expect(spreads()).toMatchObject([{ path: 'baffle.sideClearance_m', kind: 'none' }]);
    expect(within(row).queryByRole('textbox')).toBeNull();
    act(() => expect(store.getState().undo()?.name).toBe('Spread of side clearance changed'));
    expect(spreads()).toEqual([]);
  });

  test('may be given to another input, and taken away again', async () => {
    const { user, spreads } = await opened();
    const further = screen.getByLabelText('Let another input vary');
    expect(within(further).queryByRole('option', { name: 'Side clearance' })).toBeNull();
    await user.selectOptions(further, 'Glass transition, bond');
    expect(spreads()).toEqual([
      { path: 'bond.glassTransition_K', kind: 'uniform', relative: true, size: 0.05 },
    ]);
    await waitFor(() =>
      expect(screen.getByText(/^Change what varies/)).toHaveTextContent('1 of them your own way'),
    );
    await user.click(screen.getByRole('button', { name: 'Spread of glass transition, bond: take it away' }));
    expect(spreads()).toEqual([]);
  });
});
