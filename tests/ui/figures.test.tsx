import { act, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { defaultDesign } from '../../src/model/defaults.ts';
import { exampleById } from '../../src/model/examples/examples.ts';
import { fieldAt } from '../../src/model/fields.ts';
import { setAt } from '../../src/model/path.ts';
import type { DrawnPart } from '../../src/ui/fields/drawnParts.ts';
import { isDrawn } from '../../src/ui/fields/drawnParts.ts';
import { figures } from '../../src/ui/fields/figures/figures.ts';
import { pathsOf } from '../../src/ui/fields/figures/marks.ts';
import { rowsOf } from '../../src/ui/fields/figures/rowsOf.ts';
import { fieldGroups, groupOf } from '../../src/ui/fields/groups.ts';
import { PartPanel } from '../../src/ui/fields/PartPanel.tsx';
import { otherFanFields, partFields } from '../../src/ui/fields/rowFields.ts';
import { renderWithDesign } from '../helpers/renderWithDesign.tsx';

const drawn = Object.keys(figures) as DrawnPart[];
const plain = exampleById('eightResistors');
const designs = [
  plain,
  setAt(plain, 'baffle.fitted', false),
  ...(['tabs', 'bonded', 'free'] as const).map((way) => setAt(plain, 'secondFace.way', way)),
];

/** All that a part lets one type, lists included. */
function pathsOfPart(part: DrawnPart): string[] {
  const { fields, lists } = groupOf(part);
  return [
    ...fields.map(({ path }) => path),
    ...(lists.includes('parts') ? partFields.map((key) => `parts[].${key}`) : []),
    ...(lists.includes('moreFans') ? otherFanFields.map((key) => `moreFans[].${key}`) : []),
  ];
}

describe('the data of the figures', () => {
  test('are there for every part that is said to be drawn, and for no other', () => {
    const said = fieldGroups.map(({ part }) => part).filter(isDrawn);
    expect([...drawn].sort()).toEqual([...said].sort());
  });

  test.each(drawn)('of %s name only fields of that part, each once', (part) => {
    const own = pathsOfPart(part);
    for (const design of designs) {
      const { measures, kinds } = figures[part](design);
      const named = measures.map(({ path }) => path);
      const all = [...named, ...measures.flatMap(({ also }) => also ?? []), ...(kinds ? [kinds.path] : [])];
      expect(all.filter((path) => !own.includes(path))).toEqual([]);
      expect(new Set(named).size).toBe(named.length);
    }
  });

  test.each(drawn)('of %s show something to choose among or to measure', (part) => {
    const { measures, kinds, shows } = figures[part](plain);
    expect(measures.length + (kinds?.options.length ?? 0)).toBeGreaterThan(0);
    expect(shows).toMatch(/^[A-Z].{20,}[^.]$/);
  });

  test.each([
    ['inlet.guard.kind', 'guard'],
    ['outlet.kind', 'outlet'],
  ] as const)('draw only kinds that %s offers', (path, part) => {
    const field = fieldAt(path);
    if (field.kind !== 'choice') throw new Error(`${path} is no choice`);
    for (const { option } of figures[part](plain).kinds?.options ?? [])
      expect(field.options).toContain(option);
  });

  test('show no measure of a baffle that is not fitted, nor of tabs that are not there', () => {
    expect(figures.baffle(setAt(plain, 'baffle.fitted', false)).measures).toEqual([]);
    const free = figures.secondFace(setAt(plain, 'secondFace.way', 'free')).measures;
    expect(free.map(({ path }) => path)).toEqual(['secondFace.terminalLength_m']);
  });
});

describe('a label', () => {
  test.each([
    ['Slot width', 1, ['Slot width']],
    ['Slot width', 2, ['Slot', 'width']],
    ['Leak under the baffle', 2, ['Leak under', 'the baffle']],
    ['Free space before the fan', 3, ['Free space', 'before', 'the fan']],
    ['Headroom', 2, ['Headroom']],
  ])('%s in %i rows is broken where its longest row is shortest', (label, rows, broken) => {
    expect(rowsOf(label, rows)).toEqual(broken);
  });
});

describe('a dimension line', () => {
  const tips = (heads: string) =>
    [...heads.matchAll(/M(-?[\d.]+) (-?[\d.]+)L(-?[\d.]+)/g)].map(([, tip, , back]) => ({
      tip: Number(tip),
      fliesRight: Number(tip) > Number(back),
    }));

  test('has its arrows inside where there is room, and outside where there is not', () => {
    const roomy = pathsOf({ kind: 'span', from: [10, 0], to: [50, 0] });
    expect(tips(roomy.heads)).toEqual([
      { tip: 10, fliesRight: false },
      { tip: 50, fliesRight: true },
    ]);
    expect(roomy.line).toBe('M10 0L10 0L50 0');
    const short = pathsOf({ kind: 'span', from: [10, 0], to: [16, 0] });
    expect(tips(short.heads)).toEqual([
      { tip: 10, fliesRight: true },
      { tip: 16, fliesRight: false },
    ]);
    expect(short.line).toBe('M0 0L10 0L16 0L26 0');
  });

  test('leaves the part by thin lines that stand clear of it and end past the arrows', () => {
    const { witness } = pathsOf({
      kind: 'span',
      from: [0, 30],
      to: [40, 30],
      feet: [
        [0, 10],
        [40, 20],
      ],
    });
    expect(witness).toBe('M0 11.5L0 32.5M40 21.5L40 32.5');
  });
});

describe('the figure in the panel', () => {
  const measureOf = (figure: HTMLElement, path: string) => {
    const found = figure.querySelector(`[data-path="${path}"]`);
    if (found === null) throw new Error(`no measure ${path}`);
    return found;
  };
  const panelOf = async (part: DrawnPart, design = plain) => {
    const { store } = renderWithDesign(<PartPanel />, design);
    act(() => store.getState().selectPart(part));
    return screen.findByRole('img', { name: /not to scale$/ });
  };

  test('puts the cursor into the field whose measure is clicked, and marks the measure of the field that has it', async () => {
    const figure = await panelOf('sinks');
    const length = measureOf(figure, 'sink.length_m');
    expect(length.getAttribute('data-strong')).toBe('false');
    await userEvent.click(within(figure).getByText('length'));
    expect(document.activeElement).toBe(screen.getByRole('textbox', { name: /^Fin length/ }));
    expect(length.getAttribute('data-strong')).toBe('true');
    await userEvent.tab();
    expect(length.getAttribute('data-strong')).toBe('true'); // the pointer still rests on it
    await userEvent.unhover(within(figure).getByText('length'));
    await userEvent.hover(screen.getByText('Of one fin.'));
    expect(length.getAttribute('data-strong')).toBe('false');
    expect(measureOf(figure, 'sink.width_m').getAttribute('data-strong')).toBe('true');
    expect(measureOf(figure, 'sink.finThickness_m').getAttribute('data-strong')).toBe('true');
  });

  test('means the kind of resistor that was worked on last, and unfolds it', async () => {
    const [kind] = plain.parts;
    if (kind === undefined) throw new Error('the example has no part');
    const figure = await panelOf('resistors', {
      ...plain,
      parts: [
        { ...kind, name: 'one' },
        { ...kind, name: 'two' },
      ],
    });
    const widths = await screen.findAllByLabelText(/^Chip width/);
    const [first, second] = widths;
    const fold = second?.closest('details');
    if (!first || !second || !fold) throw new Error('two kinds are edited');
    expect(fold.open).toBe(false);
    await userEvent.click(within(figure).getByText('width'));
    expect(document.activeElement).toBe(first);
    act(() => second.focus());
    expect(measureOf(figure, 'parts[].width_m').getAttribute('data-strong')).toBe('true');
    fold.open = false;
    act(() => second.blur());
    await userEvent.click(within(figure).getByText('Chip length'));
    expect(document.activeElement).toBe(screen.getAllByLabelText(/^Chip length/)[1]);
    expect(fold.open).toBe(true);
  });

  test('marks the opening for a fan of another kind too', async () => {
    const figure = await panelOf('fan', { ...plain, moreFans: [otherFan()] });
    const own = await screen.findAllByLabelText(/^Opening/);
    act(() => own[1]?.focus());
    expect(own).toHaveLength(2);
    expect(measureOf(figure, 'fan.opening_m').getAttribute('data-strong')).toBe('true');
  });

  test('shows the kind of grille that is chosen, and leads to the choice', async () => {
    const figure = await panelOf('outlet', setAt(plain, 'outlet.kind', 'square'));
    const strong = figure.querySelectorAll('[data-strong="true"]');
    expect([...strong].map(({ textContent }) => textContent)).toEqual(['square-edgedbars']);
    await userEvent.click(within(figure).getByText('wires'));
    expect(document.activeElement).toBe(screen.getByRole('combobox', { name: /^Outlet grille/ }));
    expect(screen.getByRole('combobox', { name: /^Outlet grille/ })).toHaveProperty('value', 'square');
  });

  test('marks the measure of a field that had the cursor before the figure came', async () => {
    const { store } = renderWithDesign(<PartPanel />, plain);
    act(() => store.getState().selectPart('plenum'));
    act(() => screen.getByRole('textbox', { name: /^Plenum height/ }).focus());
    const figure = await screen.findByRole('img', { name: /not to scale$/ });
    expect(measureOf(figure, 'plenum.height_m').getAttribute('data-strong')).toBe('true');
    act(() => store.getState().selectPart('neck'));
    act(() => store.getState().selectPart('plenum'));
    const again = await screen.findByRole('img', { name: /^Plenum/ });
    expect(measureOf(again, 'plenum.height_m').getAttribute('data-strong')).toBe('false');
  });

  test('is left out where words are enough', async () => {
    const { store } = renderWithDesign(<PartPanel />, defaultDesign);
    for (const part of ['load', 'room', 'filter', 'limits', 'extras'] as const) {
      act(() => store.getState().selectPart(part));
      expect(screen.queryByRole('img')).toBeNull();
    }
  });
});

function otherFan() {
  const { fan } = plain;
  const { supplySag, speedLoss, sideBySide, inARow, size_m, depth_m, inletSpace_m, ...kind } = fan;
  return { ...kind, name: 'another', place: 'beside' as const };
}
