import { act, fireEvent, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { App } from '../../src/app/App.tsx';
import { ErrorBoundary, ViewBoundary } from '../../src/app/ErrorBoundary.tsx';
import { defaultDesign } from '../../src/model/defaults.ts';
import { designChecksum } from '../../src/model/designChecksum.ts';
import { exampleById } from '../../src/model/examples/examples.ts';
import { serialiseDesign } from '../../src/model/serialiseDesign.ts';
import { createDesignStore } from '../../src/store/designStore.ts';
import { Announcer } from '../../src/ui/verdict/Announcer.tsx';
import { fakeBrowser } from '../helpers/fakeBrowser.ts';

// jsdom has neither; the browser tests use the real ones.
beforeAll(async () => {
  // What the page loads after its first paint, loaded before, so that no test waits for it.
  await Promise.all([
    import('../../src/app/Details.tsx'),
    import('../../src/app/Dialogs.tsx'),
    import('../../src/ui/fields/ChecksumLine.tsx'),
  ]);
  HTMLDialogElement.prototype.showModal ??= function showModal(this: HTMLDialogElement) {
    this.open = true;
  };
  HTMLDialogElement.prototype.close ??= function close(this: HTMLDialogElement) {
    this.open = false;
    this.dispatchEvent(new Event('close'));
  };
  URL.createObjectURL ??= () => 'blob:test';
  URL.revokeObjectURL ??= () => {};
});

function openPage(design = exampleById('eightResistors')) {
  const browser = fakeBrowser();
  const { store, keeper } = browser.openTab(null, design);
  const { container } = render(<App store={store} keeper={Promise.resolve(keeper)} />);
  return { store, keeper, browser, user: userEvent.setup(), container };
}

const designFile = (text: string, name = 'box.throughfin.json') =>
  new File([text], name, { type: 'application/json' });

/** What the browser was given to save, in order. */
function watchSaves() {
  const saved: Blob[] = [];
  vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
    saved.push(blob as Blob);
    return 'blob:test';
  });
  const click = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => {});
  return { saved, click };
}

describe('the page', () => {
  test('has its landmarks, its questions in order, and a way past the header', async () => {
    // The sheet stands beside the page, with a header of its own.
    const page = within(openPage().container);
    expect(page.getByRole('banner')).toBeInTheDocument();
    expect(screen.getByRole('main')).toBeInTheDocument();
    expect(screen.getByRole('contentinfo')).toBeInTheDocument();
    expect(screen.getByRole('heading', { level: 1, name: 'Throughfin' })).toBeInTheDocument();
    const skip = screen.getByRole('link', { name: 'Skip to the drawing' });
    expect(document.querySelector(skip.getAttribute('href') ?? '')).toBe(screen.getByRole('main'));
    await screen.findByRole('heading', { name: 'How is it computed?' }, { timeout: 10_000 });
    const questions = screen
      .getAllByRole('heading', { level: 2 })
      .map((heading) => heading.textContent)
      .filter((text) => text?.endsWith('?'));
    expect(questions).toEqual([
      'Will it hold?',
      'What should be changed first?',
      'Where does the air go?',
      'Where do the kelvins go?',
      'Which gap?',
      'What if the fan stops?',
      'What if parts vary?',
      'What size do I need?',
      'Does the bench agree?',
      'Which of these designs?',
      'What has to be cut?',
      'How is it computed?',
      'What is it checked against?',
    ]);
  });

  test('answers every key at once', () => {
    const { store } = openPage();
    const sentence = () => document.querySelector('#will-it-hold')?.textContent;
    const before = sentence();
    fireEvent.change(screen.getByRole('textbox', { name: /^Side clearance/ }), { target: { value: '3 mm' } });
    expect(store.getState().stale).toBe(false);
    expect(sentence()).not.toBe(before);
    expect(screen.getByRole('button', { name: /^Baffle, side clearance 3\smm, / })).toBeInTheDocument();
  });

  test('keeps the last answer while something is wrong, says so, and leads there', async () => {
    const { store, user } = openPage();
    const before = document.querySelector('#will-it-hold')?.textContent;
    const box = screen.getByRole('textbox', { name: /^Side clearance/ });
    fireEvent.change(box, { target: { value: 'thin' } });
    expect(document.querySelector('#will-it-hold')?.textContent).toBe(before);
    act(() => store.getState().selectPart('room'));
    await user.click(screen.getByRole('button', { name: 'Mend: Side clearance' }));
    const again = screen.getByRole('textbox', { name: /^Side clearance/ });
    await waitFor(() => expect(again).toHaveFocus());
    expect(again).toHaveValue('thin');
  });

  test('leads to a wrong entry in the folded title block', async () => {
    const { user } = openPage();
    fireEvent.change(screen.getByRole('textbox', { name: 'Remark' }), { target: { value: 'x'.repeat(601) } });
    await user.click(screen.getByRole('button', { name: 'Mend: Remark' }));
    await waitFor(() => expect(screen.getByRole('textbox', { name: 'Remark' })).toHaveFocus());
    expect(screen.getByText('Title block').closest('details')).toHaveAttribute('open');
  });

  test('lets the title be edited in the header', () => {
    const { store } = openPage();
    fireEvent.change(screen.getByRole('textbox', { name: 'Title of the design' }), {
      target: { value: 'Load bank' },
    });
    expect(store.getState().design.title).toBe('Load bank');
  });

  test('shows inches without touching what was typed', async () => {
    const { user } = openPage();
    const slot = () => screen.getByRole('textbox', { name: /^Slot width/ });
    fireEvent.change(slot(), { target: { value: '20 mm' } });
    await user.click(screen.getByRole('radio', { name: 'Inch units' }));
    expect(slot()).toHaveValue('20 mm');
    expect(screen.getByRole('textbox', { name: 'Stand-off (in)' }).getAttribute('value')).toMatch(
      /^0\.11811/,
    );
  });

  test('puts derating and tables under the limits of the first question a moment later', async () => {
    const { container } = openPage();
    const first = container.querySelector('#will-it-hold');
    await waitFor(() => expect(first?.textContent).toContain('Rated load over the room'));
    expect(within(first as HTMLElement).getByText(/^Table: Limits, most urgent first/)).toBeInTheDocument();
  });

  test('asks what to print, and sends the one page to the printer where nothing is ticked', async () => {
    const { user } = openPage();
    const print = vi.spyOn(window, 'print').mockImplementation(() => {});
    await waitFor(() => expect(document.querySelector('body > .sheet')).not.toBeNull());
    await user.click(screen.getByRole('button', { name: 'Print…' }));
    expect(print).not.toHaveBeenCalled();
    await user.click(screen.getByRole('button', { name: 'Print the one-page summary' }));
    expect(print).toHaveBeenCalledOnce();
    expect(document.querySelector('body > .sheet-further')).toBeNull();
  });

  test('prints the pages that are ticked once, and remembers the ticks', async () => {
    const { user } = openPage();
    const headsOf = () =>
      [...document.querySelectorAll('body > section.sheet-further h2')].map(({ textContent }) => textContent);
    let printed: (string | null)[] = [];
    vi.spyOn(window, 'print').mockImplementation(() => {
      window.dispatchEvent(new Event('beforeprint'));
      printed = headsOf();
      window.dispatchEvent(new Event('afterprint'));
    });
    await waitFor(() => expect(document.querySelector('body > .sheet')).not.toBeNull());
    await user.click(screen.getByRole('button', { name: 'Print…' }));
    await user.click(screen.getByRole('checkbox', { name: 'Tables' }));
    await user.click(screen.getByRole('checkbox', { name: 'All inputs' }));
    await user.click(screen.getByRole('button', { name: 'Print the summary and these pages' }));
    expect([...new Set(printed)]).toEqual(['All inputs', 'Tables']);
    window.print();
    expect(printed).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Print…' }));
    expect(screen.getByRole('checkbox', { name: 'Tables' })).toBeChecked();
    expect(screen.getByRole('checkbox', { name: 'Working' })).not.toBeChecked();
    await user.click(screen.getByRole('button', { name: 'Cancel' }));
    expect(printed).toEqual([]);
  });

  test('shows in the title block the checksum that is printed', async () => {
    const { store } = openPage();
    const shown = () => document.querySelector('details code')?.textContent;
    const present = () => designChecksum(store.getState().solvedDesign);
    await waitFor(() => expect(shown()).toBe(present()), { timeout: 4000 });
    const before = shown();
    fireEvent.change(screen.getByRole('textbox', { name: 'Title of the design' }), {
      target: { value: 'Another' },
    });
    await waitFor(() => expect(shown()).not.toBe(before), { timeout: 4000 });
    expect(shown()).toBe(present());
  });
});

describe('undo and redo', () => {
  test('take back a whole edit by key or button, and show the part it was made in', async () => {
    const { store, user } = openPage();
    const box = screen.getByRole('textbox', { name: /^Side clearance/ });
    await user.clear(box);
    await user.type(box, '1.2 mm');
    await user.tab();
    act(() => store.getState().selectPart('room'));
    await user.click(screen.getByRole('button', { name: 'Undo: Side clearance' }));
    expect(store.getState().design).toEqual(exampleById('eightResistors'));
    expect(store.getState().selectedPart).toBe('baffle');
    expect(screen.getByRole('button', { name: 'Undo' })).toBeDisabled();
    await user.keyboard('{Control>}{Shift>}z{/Shift}{/Control}');
    expect(screen.getByRole('textbox', { name: /^Side clearance/ })).toHaveValue('1.2 mm');
    await user.keyboard('{Control>}z{/Control}');
    expect(store.getState().design).toEqual(exampleById('eightResistors'));
  });

  test('a field goes back to its default, and that too can be taken back', async () => {
    const { user } = openPage();
    const box = screen.getByRole('textbox', { name: /^Slot width/ });
    await user.clear(box);
    await user.tab();
    expect(document.activeElement).toHaveAccessibleName(/^Slot width: back to the default/);
    await user.keyboard('{Enter}');
    expect(box).not.toHaveValue('');
    expect(box).toBeValid();
    await user.click(screen.getByRole('button', { name: /^Undo: Slot width, back/ }));
    expect(box).toHaveValue('');
  });

  test('what the last edit did stands beside the figures', async () => {
    const { store, container } = openPage();
    act(() => store.getState().setText('baffle.sideClearance_m', '2 mm'));
    expect(await screen.findByText(/^Side clearance 0\.8.mm → 2.mm$/)).toBeInTheDocument();
    const film = within(container).getByText('hottest film').closest('div');
    expect(film).toHaveTextContent(/changed by \+\d+\.\d.K/);
    act(() => store.getState().undo());
    expect(screen.getByText(/^Taken back: Side clearance 2.mm → 0\.8/)).toBeInTheDocument();
    expect(film).toHaveTextContent(/changed by −\d/);
  });
});

describe('designs that take the place of another', () => {
  async function choose(label: string) {
    await userEvent.click(screen.getByRole('button', { name: 'Designs…' }));
    const dialog = await screen.findByRole('dialog', { name: 'Designs' });
    await userEvent.click(within(dialog).getByRole('button', { name: label }));
  }

  test('an example replaces an untouched one without a question', async () => {
    const { store } = openPage();
    await choose(`Example: ${exampleById('onePair').title}`);
    expect(store.getState().design).toEqual(exampleById('onePair'));
  });

  test('a changed design stays in the browser under its own name, and comes back from there', async () => {
    const { store, user } = openPage();
    act(() => store.getState().setText('title', 'Mine'));
    await choose('A new design');
    await waitFor(() => expect(store.getState().design).toEqual(defaultDesign));
    await user.click(screen.getByRole('button', { name: 'Designs…' }));
    await user.click(await screen.findByRole('button', { name: /^Mine/ }));
    await waitFor(() => expect(store.getState().design.title).toBe('Mine'));
  });

  test('one that is kept nowhere is asked for first, and can stay', async () => {
    const { store, user, browser } = openPage();
    browser.setTrouble(new Error('private window'));
    act(() => store.getState().setText('room.T_K', '30 °C'));
    const { design } = store.getState();
    await choose('A new design');
    const dialog = await screen.findByRole('dialog', { name: 'Replace the design on the bench?' });
    expect(store.getState().design).toBe(design);
    await user.click(within(dialog).getByRole('button', { name: 'Keep it' }));
    expect(screen.queryByRole('dialog', { name: 'Replace the design on the bench?' })).toBeNull();
    expect(store.getState().design).toBe(design);
  });

  test('a kept one that is removed can be put back', async () => {
    const { store, user, browser } = openPage();
    act(() => store.getState().setText('title', 'Mine'));
    await user.click(screen.getByRole('button', { name: 'Designs…' }));
    await user.click(await screen.findByRole('button', { name: /^Remove Mine/ }));
    await waitFor(() => expect(browser.kept.size).toBe(0));
    await user.click(await screen.findByRole('button', { name: 'Put it back' }));
    await waitFor(() => expect(browser.kept.size).toBe(1));
  });

  test('one that is kept nowhere can be saved and then replaced', async () => {
    const { saved } = watchSaves();
    const { store, user, browser } = openPage();
    browser.setTrouble(new Error('private window'));
    act(() => store.getState().setText('room.T_K', '30 °C'));
    const { design } = store.getState();
    await choose('A new design');
    await user.click(await screen.findByRole('button', { name: 'Save it, then replace' }));
    expect(await saved[0]?.text()).toBe(serialiseDesign(design));
    expect(store.getState().design).toEqual(defaultDesign);
  });

  test('what is saved while something is wrong opens again', async () => {
    const { saved } = watchSaves();
    const { store, user } = openPage();
    act(() => store.getState().setText('baffle.collar_m', '90 mm'));
    expect(store.getState().stale).toBe(true);
    await user.keyboard('{Control>}s{/Control}');
    const text = (await saved[0]?.text()) ?? '';
    expect(createDesignStore(defaultDesign).getState().openText(text).ok).toBe(true);
  });

  test('a file opens by the button', async () => {
    const { store, user } = openPage();
    const twoDozen = exampleById('twoDozen');
    await user.upload(screen.getByLabelText('Design file'), designFile(serialiseDesign(twoDozen)));
    await waitFor(() => expect(store.getState().design).toEqual(twoDozen));
  });

  test('a file opens where it is dropped', async () => {
    const { store } = openPage();
    const onePair = exampleById('onePair');
    const dataTransfer = { types: ['Files'], files: [designFile(serialiseDesign(onePair))] };
    fireEvent.dragOver(document.body, { dataTransfer });
    expect(screen.getByText('Drop the design file to open it')).toBeInTheDocument();
    fireEvent.drop(document.body, { dataTransfer });
    await waitFor(() => expect(store.getState().design).toEqual(onePair));
    expect(screen.queryByText('Drop the design file to open it')).toBeNull();
  });

  test('a file that does not read changes nothing and says where it is wrong', async () => {
    const { store, user } = openPage();
    const { design } = store.getState();
    const text = serialiseDesign(defaultDesign).replace('"T_K": 308.15', '"T_K": "warm"');
    await user.upload(screen.getByLabelText('Design file'), designFile(text, 'warm.throughfin.json'));
    const dialog = await screen.findByRole('dialog', { name: 'This file was not opened' });
    expect(dialog).toHaveTextContent('warm.throughfin.json');
    expect(dialog).toHaveTextContent('room.T_K');
    expect(store.getState().design).toBe(design);
  });
});

function Broken(): never {
  throw new Error('the floor gave way');
}

test('a broken page keeps the design and offers it as a file', async () => {
  const { saved } = watchSaves();
  const silence = vi.spyOn(console, 'error').mockImplementation(() => {});
  const store = createDesignStore(exampleById('onePair'));
  render(
    <ErrorBoundary store={store}>
      <Broken />
    </ErrorBoundary>,
  );
  expect(screen.getByText('the floor gave way')).toBeInTheDocument();
  await userEvent.click(screen.getByRole('button', { name: 'Save the design' }));
  expect(await saved[0]?.text()).toBe(serialiseDesign(exampleById('onePair')));
  silence.mockRestore();
});

test('a broken view leaves the rest, offers the design, and is tried again with the next answer', async () => {
  const { saved } = watchSaves();
  const silence = vi.spyOn(console, 'error').mockImplementation(() => {});
  const store = createDesignStore(exampleById('onePair'));
  const page = (of: number, isBroken: boolean) => (
    <>
      <p>the rest</p>
      <ViewBoundary store={store} name="the drawing" of={of}>
        {isBroken ? <Broken /> : <p>drawn</p>}
      </ViewBoundary>
    </>
  );
  const { rerender } = render(page(1, true));
  expect(screen.getByText('the rest')).toBeInTheDocument();
  expect(screen.getByRole('alert')).toHaveTextContent('Here the drawing has broken; your design has not');
  await userEvent.click(screen.getByRole('button', { name: 'Save the design' }));
  expect(await saved[0]?.text()).toBe(serialiseDesign(exampleById('onePair')));
  rerender(page(1, false));
  expect(screen.queryByText('drawn')).toBeNull();
  rerender(page(2, false));
  expect(screen.getByText('drawn')).toBeInTheDocument();
  silence.mockRestore();
});

test('the verdict is spoken once it stands still', () => {
  vi.useFakeTimers();
  const { rerender } = render(<Announcer sentence="Holds." />);
  const status = screen.getByRole('status');
  act(() => vi.advanceTimersByTime(500));
  rerender(<Announcer sentence="Does not hold." />);
  act(() => vi.advanceTimersByTime(500));
  expect(status).toBeEmptyDOMElement();
  act(() => vi.advanceTimersByTime(500));
  expect(status).toHaveTextContent('Does not hold.');
  vi.useRealTimers();
});
