import { describe, expect, test } from 'vitest';
import { serialiseShelf } from '../../../src/io/shelfFile.ts';
import { createOwnShelf, newEntryId, type OwnShelf } from '../../../src/store/ownShelf.ts';
import type { ShelfKeep } from '../../../src/store/shelfKeep.ts';
import { ownEntry } from '../../helpers/ownEntry.ts';

/** One browser's store with any number of windows that hear of each other. */
function browser() {
  let kept: unknown;
  let refuses = false;
  const windows: (() => void)[] = [];
  const open = (): ShelfKeep => {
    let mine: () => void = () => {};
    return {
      read: () => (refuses ? Promise.reject(new Error('private window')) : Promise.resolve(kept)),
      change: async (changed) => {
        if (refuses) throw new Error('disk full');
        kept = structuredClone(changed(kept));
        for (const heard of windows) if (heard !== mine) heard();
      },
      listen: (heard) => {
        mine = heard;
        windows.push(heard);
      },
    };
  };
  return {
    open,
    kept: () => kept,
    keep: (value: unknown) => {
      kept = value;
    },
    refuse: (now: boolean) => {
      refuses = now;
    },
  };
}

const names = (shelf: OwnShelf) => shelf.getState().entries.map(({ name }) => name);
const opened = async (keep: ShelfKeep) => {
  const shelf = createOwnShelf(keep);
  await shelf.getState().open();
  return shelf;
};

describe('entries of one’s own', () => {
  test('are there again at the next visit, changed and without what was taken away', async () => {
    const { open } = browser();
    const shelf = await opened(open());
    await shelf.getState().put(ownEntry({ id: 'a', name: 'A' }));
    await shelf.getState().put(ownEntry({ id: 'b', name: 'B' }));
    await shelf.getState().put(ownEntry({ id: 'a', name: 'A, measured' }));
    expect(names(shelf)).toEqual(['A, measured', 'B']);
    await shelf.getState().remove('b');
    expect(shelf.getState()).toMatchObject({ keeping: 'kept', removed: { name: 'B' } });
    expect(names(await opened(open()))).toEqual(['A, measured']);
  });

  test('that were taken away can be put back, once', async () => {
    const { open } = browser();
    const shelf = await opened(open());
    await shelf.getState().put(ownEntry());
    await shelf.getState().remove('one');
    await shelf.getState().putBack();
    await shelf.getState().putBack();
    expect(names(shelf)).toEqual(['Bar from the bin']);
    expect(shelf.getState().removed).toBeNull();
    expect(names(await opened(open()))).toEqual(['Bar from the bin']);
  });

  test('written in two windows at once are all kept, and each window hears of the other', async () => {
    const { open } = browser();
    const [left, right] = await Promise.all([opened(open()), opened(open())]);
    await Promise.all([
      left.getState().put(ownEntry({ id: 'l', name: 'Left' })),
      right.getState().put(ownEntry({ id: 'r', name: 'Right' })),
    ]);
    await Promise.all([left.getState().open(), right.getState().open()]);
    await new Promise((resolve) => setTimeout(resolve, 0));
    expect(names(left).sort()).toEqual(['Left', 'Right']);
    expect(names(right).sort()).toEqual(['Left', 'Right']);
    await right.getState().remove('l');
    await new Promise((resolve) => setTimeout(resolve, 0));
    expect(names(left)).toEqual(['Right']);
  });

  test('can be used though the browser keeps nothing, and go along once it keeps again', async () => {
    const { open, refuse } = browser();
    refuse(true);
    const shelf = await opened(open());
    await shelf.getState().put(ownEntry({ id: 'a', name: 'A' }));
    await shelf.getState().put(ownEntry({ id: 'b', name: 'B' }));
    await shelf.getState().remove('a');
    expect(names(shelf)).toEqual(['B']);
    expect(shelf.getState().keeping).toBe('refused');

    refuse(false);
    await shelf.getState().put(ownEntry({ id: 'c', name: 'C' }));
    expect(names(shelf)).toEqual(['B', 'C']);
    expect(shelf.getState().keeping).toBe('kept');
    expect(names(await opened(open()))).toEqual(['B', 'C']);
  });

  test('that cannot be read are left alone and counted', async () => {
    const { open, keep, kept } = browser();
    const strange = { id: 'x', kind: 'of a later version' };
    keep({ format: 'throughfin-shelf', version: 1, entries: [strange] });
    const shelf = await opened(open());
    expect(shelf.getState()).toMatchObject({ entries: [], unread: 1, keeping: 'kept' });
    await shelf.getState().put(ownEntry());
    expect(kept()).toMatchObject({ entries: [strange, { id: 'one' }] });
  });

  test('kept by another version are not overwritten', async () => {
    const { open, keep, kept } = browser();
    const later = { format: 'throughfin-shelf', version: 2, things: [] };
    keep(later);
    const shelf = await opened(open());
    await shelf.getState().put(ownEntry());
    expect(shelf.getState().keeping).toBe('refused');
    expect(names(shelf)).toEqual(['Bar from the bin']);
    expect(kept()).toEqual(later);
  });
});

describe('a file of entries', () => {
  test('is taken in beside what is there: the same is not doubled, a changed one stays beside its elder', async () => {
    const { open } = browser();
    const shelf = await opened(open());
    await shelf.getState().put(ownEntry({ id: 'a', name: 'A' }));
    await shelf.getState().put(ownEntry({ id: 'b', name: 'B' }));
    const text = serialiseShelf([
      ownEntry({ id: 'a', name: 'A' }),
      ownEntry({ id: 'b', name: 'B, mended' }),
      ownEntry({ id: 'c', name: 'C' }),
    ]);
    expect(await shelf.getState().importText(text)).toEqual({ ok: true, added: 2, there: 1 });
    expect(names(shelf)).toEqual(['A', 'B', 'B, mended', 'C']);
    expect(new Set(shelf.getState().entries.map(({ id }) => id)).size).toBe(4);
    expect(await shelf.getState().importText(text)).toEqual({ ok: true, added: 0, there: 3 });
  });

  test('is refused whole if anything in it is wrong', async () => {
    const shelf = await opened(browser().open());
    const text = serialiseShelf([ownEntry(), ownEntry({ id: 'b', name: '' })]);
    expect(await shelf.getState().importText(text)).toMatchObject({
      ok: false,
      problems: [{ path: 'entries[1].name' }],
    });
    expect(names(shelf)).toEqual([]);
  });

  test('is refused whole if the shelf would overflow', async () => {
    const shelf = await opened(browser().open());
    const many = (from: string, count: number) =>
      serialiseShelf(
        Array.from({ length: count }, (_, index) =>
          ownEntry({ id: `${from}${index}`, name: `${from}${index}` }),
        ),
      );
    expect(await shelf.getState().importText(many('a', 300))).toMatchObject({ added: 300 });
    const result = await shelf.getState().importText(many('b', 201));
    expect(result.ok ? '' : result.problems[0]?.reason).toContain('501 entries');
    expect(shelf.getState().entries).toHaveLength(300);
  });
});

test('ids differ', () => {
  expect(new Set(Array.from({ length: 100 }, newEntryId)).size).toBe(100);
});
