import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { exampleById } from '../../src/model/examples/examples.ts';
import type { KindId } from '../../src/model/shelf/kinds.ts';
import { createOwnShelf } from '../../src/store/ownShelf.ts';
import type { ShelfKeep } from '../../src/store/shelfKeep.ts';
import { PartsEditor } from '../../src/ui/fields/PartsEditor.tsx';
import { ShelfBar } from '../../src/ui/shelf/ShelfBar.tsx';
import { ShelfContext } from '../../src/ui/shelf/ShelfContext.ts';
import { ownEntry } from '../helpers/ownEntry.ts';
import { renderWithDesign } from '../helpers/renderWithDesign.tsx';

// The modal dialog is the browser's own; here it only has to open and close.
beforeAll(() => {
  HTMLDialogElement.prototype.showModal = function showModal(this: HTMLDialogElement) {
    this.open = true;
  };
  HTMLDialogElement.prototype.close = function close(this: HTMLDialogElement) {
    this.open = false;
    this.dispatchEvent(new Event('close'));
  };
});

function keeping(...entries: unknown[]): ShelfKeep & { kept: unknown } {
  const keep = {
    kept: { format: 'throughfin-shelf', version: 1, entries } as unknown,
    read: () => Promise.resolve(keep.kept),
    change: async (changed: (kept: unknown) => unknown) => {
      keep.kept = changed(keep.kept);
    },
    listen: () => {},
  };
  return keep;
}
const refusing: ShelfKeep = {
  read: () => Promise.reject(new Error('private window')),
  change: () => Promise.reject(new Error('disk full')),
  listen: () => {},
};

async function openShelf(kind: KindId, place: string, keep: ShelfKeep = keeping()) {
  const user = userEvent.setup();
  const shelf = createOwnShelf(keep);
  const { store } = renderWithDesign(
    <ShelfContext value={shelf}>
      <ShelfBar kind={kind} place={place} />
    </ShelfContext>,
  );
  await waitFor(() => expect(shelf.getState().keeping).not.toBe('unknown'));
  await user.click(screen.getByRole('button', { name: /^From the shelf… / }));
  return { user, shelf, store, dialog: screen.getByRole('dialog') };
}

describe('the way to the shelf', () => {
  test('says how the inputs stand to it, and follows what is typed', async () => {
    const { store } = renderWithDesign(<ShelfBar kind="sheet" place="box" />);
    const button = await screen.findByRole('button', { name: 'From the shelf… Sheet materials' });
    expect(button).toHaveAccessibleDescription('As “ABS” on the shelf.');
    store.getState().setText('box.sheet_WPerMK', '0.2');
    await waitFor(() =>
      expect(button).toHaveAccessibleDescription(/^Changed from “ABS” on the shelf: sheet conductivity 0.18/),
    );
    store.getState().setText('box.material', 'something else');
    await waitFor(() => expect(button).toHaveAccessibleDescription(''));
  });

  test('leads to chip sizes and ceramics at every part', async () => {
    const { store } = renderWithDesign(<PartsEditor />, exampleById('twoDozen'));
    const parts = store.getState().design.parts.length;
    expect(
      await screen.findAllByRole('button', { name: 'From the shelf… Chip sizes', hidden: true }),
    ).toHaveLength(parts);
    expect(screen.getAllByRole('button', { name: 'From the shelf… Ceramics', hidden: true })).toHaveLength(
      parts,
    );
  });
});

describe('choosing', () => {
  test('shows what would change, and sets all values and the name at once', async () => {
    const { user, store, dialog } = await openShelf('alloy', 'sink');
    await user.click(within(dialog).getByRole('radio', { name: /^Aluminium EN AW-5083/ }));
    expect(within(dialog).getByRole('region', { name: 'Aluminium EN AW-5083' })).toHaveTextContent(
      /117\sW\/\(m·K\), now 200\sW\/\(m·K\).*elsewhere 109 to 127/,
    );
    const edits = vi.fn();
    store.subscribe(edits);
    const choose = within(dialog).getByRole('button', { name: 'Set these values' });
    expect(choose).toHaveAccessibleDescription('All 2 values and the name would change.');
    await user.click(choose);
    expect(edits).toHaveBeenCalledTimes(1);
    expect(store.getState().solvedDesign.sink).toMatchObject({
      material: 'Aluminium EN AW-5083',
      k_WPerMK: 117,
      heat_JPerM3K: 2.39e6,
    });
    expect(screen.queryByRole('dialog')).toBeNull();
  });

  test('goes by typing and Enter alone', async () => {
    const { user, store, dialog } = await openShelf('thickness', 'baffle');
    await user.type(within(dialog).getByRole('searchbox', { name: 'Find' }), '1/8 in{Enter}');
    expect(store.getState().design.baffle.sheet_m).toBe(0.003175);
    expect(store.getState().design.box.sheet_m).toBe(0.003);
  });

  test('of nothing is not possible, and it says so', async () => {
    const { user, dialog } = await openShelf('alloy', 'sink');
    await user.type(within(dialog).getByRole('searchbox'), 'unobtainium');
    expect(dialog).toHaveTextContent('Nothing here has “unobtainium” in it.');
    expect(within(dialog).getByRole('button', { name: 'Set these values' })).toBeDisabled();
    expect(dialog).toHaveTextContent('0 of 10');
  });

  test('can be left without a change', async () => {
    const { user, store, dialog } = await openShelf('alloy', 'sink');
    const before = store.getState().design;
    await user.click(within(dialog).getByRole('radio', { name: /^Copper/ }));
    await user.click(within(dialog).getByRole('button', { name: 'Leave as it is' }));
    expect(store.getState().design).toBe(before);
    expect(screen.queryByRole('dialog')).toBeNull();
  });
});

describe('an entry of one’s own', () => {
  test('is made of the present values, kept, chosen and marked', async () => {
    const keep = keeping();
    const { user, dialog } = await openShelf('alloy', 'sink', keep);
    await user.click(within(dialog).getByRole('button', { name: /^Keep the present values/ }));
    const name = screen.getByRole('textbox', { name: 'Name' });
    expect(name).toHaveFocus();
    expect(name).toHaveValue('aluminium 6063');
    await user.clear(name);
    await user.type(name, 'Bar 7');
    const k = screen.getByRole('textbox', { name: /^Conductivity/ });
    await user.clear(k);
    await user.type(k, 'abc{Enter}');
    expect(k).toHaveFocus();
    expect(k).toHaveAccessibleDescription(/abc.* is not a number/);
    await user.clear(k);
    await user.type(k, '0.185 W/mmK');
    await user.clear(k);
    await user.type(k, '185');
    await user.type(screen.getByRole('textbox', { name: 'Source' }), 'invented{Enter}');

    const mine = await screen.findByRole('radio', { name: /^Bar 7 yours/ });
    expect(mine).toBeChecked();
    expect(screen.getByRole('dialog')).toHaveTextContent('“Bar 7” is on the shelf.');
    expect(keep.kept).toMatchObject({
      entries: [
        { kind: 'alloy', name: 'Bar 7', values: { k_WPerMK: 185, heat_JPerM3K: 2.42e6 }, source: 'invented' },
      ],
    });
  });

  test('can be changed, taken away and put back', async () => {
    const keep = keeping(ownEntry());
    const { user, shelf } = await openShelf('alloy', 'sink', keep);
    await user.click(screen.getByRole('radio', { name: /^Bar from the bin/ }));
    await user.click(screen.getByRole('button', { name: 'Change this entry…' }));
    await user.type(screen.getByRole('textbox', { name: 'Remark' }), 'scratched');
    await user.click(screen.getByRole('button', { name: 'Keep the change' }));
    await waitFor(() => expect(shelf.getState().entries).toEqual([ownEntry({ remark: 'scratched' })]));
    await user.click(screen.getByRole('button', { name: 'Take it off the shelf' }));
    await waitFor(() => expect(screen.queryByRole('radio', { name: /^Bar from the bin/ })).toBeNull());
    expect(keep.kept).toMatchObject({ entries: [] });
    await user.click(screen.getByRole('button', { name: 'Put it back' }));
    await screen.findByRole('radio', { name: /^Bar from the bin/ });
    expect(screen.queryByRole('button', { name: 'Put it back' })).toBeNull();
  });

  test('is told to last only as long as the page where the browser keeps nothing', async () => {
    const { user, dialog } = await openShelf('alloy', 'sink', refusing);
    expect(dialog).toHaveTextContent('yours last until the page is closed');
    await user.click(within(dialog).getByRole('button', { name: /^Keep the present values/ }));
    await user.type(screen.getByRole('textbox', { name: 'Name' }), ' again{Enter}');
    await screen.findByRole('radio', { name: /^aluminium 6063 again yours/ });
    expect(screen.getByRole('button', { name: 'Save my entries' })).toBeEnabled();
  });
});

describe('a file of entries', () => {
  const upload = async (user: ReturnType<typeof userEvent.setup>, text: string) =>
    user.upload(screen.getByLabelText('File of shelf entries'), new File([text], 'mine.json'));
  const file = (...entries: unknown[]) => JSON.stringify({ format: 'throughfin-shelf', version: 1, entries });

  test('is taken in, or refused whole with the place and the reason', async () => {
    const { user, shelf } = await openShelf('alloy', 'sink');
    await upload(user, file(ownEntry(), { ...ownEntry({ id: 'b' }), values: { k_WPerMK: 9999 } }));
    const alert = await screen.findByRole('alert');
    expect(alert).toHaveTextContent('“mine.json” was not taken in; the shelf is as it was.');
    expect(alert).toHaveTextContent('entries[1].values.k_WPerMK This cannot be 9999.');
    expect(shelf.getState().entries).toEqual([]);

    await upload(user, file(ownEntry()));
    await screen.findByText('1 entry taken in.', { normalizer: (text) => text.replaceAll(/\s/g, ' ') });
    expect(screen.queryByRole('alert')).toBeNull();
    expect(screen.getByRole('radio', { name: /^Bar from the bin/ })).toBeInTheDocument();
  });
});
