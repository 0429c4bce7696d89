import { act, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Design } from '../../src/model/design.ts';
import { exampleById } from '../../src/model/examples/examples.ts';
import { DoesTheBenchAgree } from '../../src/ui/questions/DoesTheBenchAgree.tsx';
import type { Pool } from '../../src/workers/studies/pool.ts';
import { BenchAround } from '../helpers/BenchAround.tsx';
import { fakeBrowser } from '../helpers/fakeBrowser.ts';
import { promptPool, silentPool } from '../helpers/pools.ts';

// Loaded before, so that no test waits for them.
beforeAll(async () => {
  await Promise.all([
    import('../../src/ui/charts/ResidualsChart.tsx'),
    import('../../src/ui/charts/LinesChart.tsx'),
    import('../../src/store/paste/pasteReadings.ts'),
  ]);
});

const slow = { timeout: 15_000 };
const plain = (text: string | null | undefined) => (text ?? '').replaceAll('\u202f', ' ');

const prototype = exampleById('prototype');
/** Enough to edit; a page of fifteen readings is slow to search in jsdom. */
const three: Design = {
  ...prototype,
  readings: {
    ...prototype.readings,
    temperatures: prototype.readings.temperatures.slice(6, 9),
    pressures: [],
    voltages: [],
  },
};

function open(design: Design = exampleById('onePair'), pool: Pool = promptPool) {
  const { store, keeper } = fakeBrowser().openTab(null, design);
  const user = userEvent.setup({ delay: null });
  render(
    <BenchAround store={store} pool={pool} keeper={keeper}>
      <DoesTheBenchAgree />
    </BenchAround>,
  );
  const question = screen.getByRole('region', { name: 'Does the bench agree?' });
  return {
    store,
    user,
    question,
    design: () => store.getState().design,
    sentence: () => plain(question.children[1]?.textContent),
    cell: (name: string | RegExp) => screen.getByRole('textbox', { name }),
    press: (name: string | RegExp) => user.click(screen.getByRole('button', { name })),
  };
}

describe('readings', () => {
  test('are asked for where there are none, and nothing is computed', () => {
    const { sentence } = open();
    expect(sentence()).toMatch(/^Nothing has been read yet\./);
    expect(screen.queryByRole('table')).toBeNull();
    expect(screen.queryByText('What explains the difference?')).toBeNull();
  });

  test('are added with the keyboard: the focus is in the box that waits for the reading', async () => {
    const { user, sentence, design, press } = open();
    await press('Add a temperature');
    expect(document.activeElement).toHaveAccessibleName('Temperature 1, reading (°C)');
    expect(screen.getByText(/^Temperature 1: Nothing stands here/)).toBeInTheDocument();
    await user.keyboard('31');
    await press('Add a pressure');
    await user.keyboard('12 Pa');
    expect(design().readings).toMatchObject({
      temperatures: [{ where: 'onFilm', number: 1, load_W: 1.6, room_K: 298.15, fan_V: 12 }],
      pressures: [{ reading_Pa: 12, within_Pa: 1 }],
    });
    await waitFor(() => expect(sentence()).toMatch(/of 2 readings|^All 2 readings/), slow);
    expect(screen.getByRole('region', { name: 'Readings beside computed values' })).toHaveTextContent(
      'Plenum pressure',
    );
  });

  test('keep what does not read as typed, and say beside the table what is allowed', async () => {
    const { user, cell, store } = open(three, silentPool);
    const box = cell('Temperature 2, within (K)');
    await user.clear(box);
    await user.type(box, '5 W');
    expect(box).toHaveValue('5 W');
    expect(box).toBeInvalid();
    expect(box).toHaveAccessibleDescription(/^Temperature 2: «5 W» is a power/);
    expect(store.getState().stale).toBe(true);
  });

  test('choose among the places that the box has, and keep one that it has no more', async () => {
    const { user, design, store } = open(three, silentPool);
    const where = screen.getByRole('combobox', { name: 'Temperature 1, where' });
    await user.selectOptions(where, 'exhaust air');
    expect(screen.queryByRole('combobox', { name: 'Temperature 1, number' })).toBeNull();
    await user.selectOptions(where, 'sink');
    const number = () => screen.getByRole('combobox', { name: 'Temperature 1, number' });
    expect(
      within(number())
        .getAllByRole('option')
        .map(({ textContent }) => textContent),
    ).toEqual(['1', '2', '3', '4', '5']);
    await user.selectOptions(number(), '5');
    act(() => void store.getState().removePosition(3));
    expect(number()).toHaveDisplayValue('5 – not in this design');
    expect(design().readings.temperatures[0]?.number).toBe(5);
  });

  test('are timed where they had not settled', async () => {
    const { user, design, cell } = open(three, silentPool);
    await user.click(screen.getByRole('checkbox', { name: 'Temperature 1, settled' }));
    const time = cell(/^Temperature 1, time since switched on/);
    await user.clear(time);
    await user.type(time, '5 min');
    expect(design().readings.temperatures[0]).toMatchObject({ settled: false, time_s: 300 });
  });

  test('give their conditions to all below, and go one by one with the focus kept', async () => {
    const { design, press, store } = open(three, silentPool);
    await press('Conditions of temperature 2 for all below');
    expect(design().readings.temperatures[2]?.fan_V).toBe(8);
    await press('Remove temperature 3');
    expect(document.activeElement).toHaveAccessibleName('Remove temperature 2');
    await press('Remove flow 1');
    expect(screen.queryByText('Flow through the box')).toBeNull();
    expect(document.activeElement).toHaveTextContent('Readings');
    expect(store.getState().undo()?.name).toBe('Flow 1 removed');
  });

  test('come as a table, and a table that does not read stays in its box', async () => {
    const { user, design, press } = open(three, silentPool);
    await user.click(screen.getByText('Paste a table of readings', { selector: 'summary' }));
    const box = screen.getByRole('textbox', { name: 'Paste a table of readings' });
    await user.click(box);
    await user.paste('where,reading\nfilm 1,78 °C\nS3,40 °C');
    await press('Take it over');
    expect(await screen.findByText(/^Row 2: “S3” is no place/, undefined, slow)).toBeInTheDocument();
    expect(box).toHaveValue('where,reading\nfilm 1,78 °C\nS3,40 °C');
    await user.clear(box);
    await user.click(box);
    await user.paste('where,reading\nfilm 1,78 °C\nsink 3,40 °C');
    await press('Take it over');
    expect(await screen.findByText(/^2 readings taken over\./, undefined, slow)).toBeInTheDocument();
    expect(box).toHaveValue('');
    expect(design().readings.temperatures).toHaveLength(5);
  });
});

describe('the check', () => {
  test('says every state in words, and its charts have tables', async () => {
    const { sentence, question } = open(prototype);
    await waitFor(() => expect(sentence()).toMatch(/^8 of 15 readings agree/), slow);
    const table = screen.getByRole('region', { name: 'Readings beside computed values' });
    expect(within(table).getAllByText('disagrees')).toHaveLength(5);
    expect(within(table).getAllByText('agrees within the methods')).toHaveLength(2);
    expect(within(question).getByText('Table: How far each reading is off')).toBeInTheDocument();
    expect(await screen.findByText(/^Table: Warm-up at/, undefined, slow)).toBeInTheDocument();
  });
});

describe('what explains the difference', () => {
  const fitted = async () => {
    const page = open(prototype);
    await page.user.click(screen.getByRole('checkbox', { name: 'Leak' }));
    await page.press('Fit to the readings');
    await screen.findByText('Fitted to these readings.', undefined, slow);
    return page;
  };

  test('up to three things are chosen; the fourth says why it cannot be', async () => {
    const { user } = open(three, silentPool);
    for (const name of ['Leak', 'Slot']) await user.click(screen.getByRole('checkbox', { name }));
    const fan = screen.getByRole('checkbox', { name: 'Fan' });
    expect(fan).toBeDisabled();
    expect(fan).toHaveAccessibleDescription('Three are chosen: leave one of them out first.');
    for (const name of ['Bond', 'Leak', 'Slot']) await user.click(screen.getByRole('checkbox', { name }));
    expect(screen.getByRole('button', { name: 'Fit to the readings' })).toBeDisabled();
    expect(screen.getByText('Choose one thing at least.')).toBeInTheDocument();
  });

  test('a box without a baffle has neither leak nor slot', () => {
    const design = prototype;
    open({ ...design, baffle: { ...design.baffle, fitted: false } });
    expect(screen.getByRole('checkbox', { name: 'Leak' })).toHaveAccessibleDescription(/has no baffle/);
  });

  test('a fit is told, kept as a variant, and taken out again', async () => {
    const { design, press, question } = await fitted();
    expect(plain(question.textContent)).toMatch(
      /The bond 0\.7.* and the leak 0\.5.* explain the 14 readings/,
    );
    expect(screen.getByRole('region', { name: 'What was fitted' })).toHaveTextContent('Bond');
    await press('Keep the fitted design as a variant');
    await screen.findByText(/^Kept as the variant “fitted to 14 readings”/, undefined, slow);
    expect(design().variant).toBe('fitted to 14 readings');
    expect(design().fitted.bondFactor).toBeCloseTo(0.79, 2);
    expect(plain(screen.getByText(/^This design is fitted to 14 readings/).textContent)).toMatch(
      /bond 0\.7\d+ ± 0\.0\d+ and leak 0\.5\d ± 0\.2\d mm\.$/,
    );
    await press('Take the fit out again');
    expect(design().fitted.readings).toBe(0);
    expect(screen.queryByText(/^This design is fitted/)).toBeNull();
  });

  test('or put into the design, where its fields can be changed', async () => {
    const { user, design, press, store } = await fitted();
    await press('Put the fit into this design');
    await user.click(screen.getByText('What was fitted, to be changed'));
    const factor = screen.getByRole('textbox', { name: 'Bond factor' });
    await user.clear(factor);
    await user.type(factor, '0.85');
    expect(design().fitted.bondFactor).toBe(0.85);
    act(() => {
      store.getState().undo();
      store.getState().undo();
    });
    expect(design().fitted.readings).toBe(0);
  });

  test('readings that do not tell are refused with what to add', async () => {
    const { user, press, question } = open(three);
    await user.click(screen.getByRole('checkbox', { name: 'Bond' }));
    await user.click(screen.getByRole('checkbox', { name: 'Emissivity' }));
    await press('Fit to the readings');
    await waitFor(
      () => expect(plain(question.textContent)).toMatch(/do not tell the emissivity.* Or add a reading: /),
      slow,
    );
    expect(screen.queryByRole('button', { name: /^Keep the fitted/ })).toBeNull();
  });
});

describe('the advice', () => {
  test('is worked out for whoever opens it, for a box that was never read too, safety first', async () => {
    const { user, question } = open();
    await user.click(screen.getByText(/^What to read next/));
    await waitFor(() => expect(plain(question.textContent)).toMatch(/Read next: /), slow);
    const practice = screen.getByRole('region', { name: /^How to go about it/ });
    expect(within(practice).getAllByRole('heading')[1]).toHaveTextContent(/^Before anything: live parts/);
  });
});
