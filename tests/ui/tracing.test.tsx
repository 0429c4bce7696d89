import { act, fireEvent, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import type { PictureKeeping } from '../../src/store/tracing/desk.ts';
import { createTracingStore, type Picture } from '../../src/store/tracing/tracingStore.ts';
import { CurveEditor } from '../../src/ui/fields/CurveEditor.tsx';
import { readPictureFile } from '../../src/ui/tracing/readPictureFile.ts';
import { TracingBench } from '../../src/ui/tracing/TracingBench.tsx';
import { inventedTracing } from '../helpers/inventedSheet.ts';
import { renderWithDesign } from '../helpers/renderWithDesign.tsx';

// Pictures and modal dialogs are the browser's own; here they only have to be there.
beforeAll(() => {
  HTMLDialogElement.prototype.showModal = function showModal(this: HTMLDialogElement) {
    this.open = true;
  };
  URL.createObjectURL = () => 'blob:picture';
  URL.revokeObjectURL = () => {};
  HTMLCanvasElement.prototype.getContext = () => null;
  HTMLImageElement.prototype.decode = () => Promise.resolve();
  vi.spyOn(HTMLImageElement.prototype, 'naturalWidth', 'get').mockReturnValue(900);
  vi.spyOn(HTMLImageElement.prototype, 'naturalHeight', 'get').mockReturnValue(600);
});

const picture: Picture = {
  blob: new Blob(['dots']),
  name: 'sheet.png',
  owner: 'Invented 60 mm axial',
  width: 900,
  height: 600,
};
const good = [
  [0, 36],
  [20, 30],
  [40, 18],
  [55, 0],
] as const;

function lay(
  points: readonly (readonly [number, number])[] = good,
  list = 'fan.curve',
  keeping: PictureKeeping = 'kept',
) {
  const user = userEvent.setup();
  const store = createTracingStore('metric', { picture, tracing: inventedTracing(points) });
  const { store: design } = renderWithDesign(<TracingBench store={store} list={list} keeping={keeping} />);
  return { user, store, design };
}
const point = (number: number) => screen.getByRole('button', { name: new RegExp(`^Point ${number}: `) });

test('the way to it stands beside the curve and opens with what to do first', async () => {
  const user = userEvent.setup();
  renderWithDesign(<CurveEditor list="fan.curve" heading="Fan curve" help="" />);
  await user.click(screen.getByRole('button', { name: 'From a picture… Fan curve' }));
  const dialog = await screen.findByRole('dialog', { name: 'Fan curve from a picture' });
  expect(dialog).toHaveTextContent('Choose the picture of a data sheet, drop it here, or paste it');
  expect(within(dialog).getByRole('button', { name: /Flow axis/ })).toBeDisabled();
});

describe('marks and points', () => {
  test('are reached by Tab and say their values; arrows move them by a pixel, with Shift by ten', async () => {
    const { user, store } = lay();
    point(2).focus();
    expect(point(2)).toHaveAccessibleName('Point 2: 20.00 m³/h, 30.00 Pa');
    await user.keyboard('{ArrowRight}');
    expect(point(2)).toHaveAccessibleName('Point 2: 20.10 m³/h, 30.00 Pa');
    await user.keyboard('{Shift>}{ArrowUp}{/Shift}');
    expect(point(2)).toHaveAccessibleName('Point 2: 20.10 m³/h, 31.00 Pa');
    await user.tab();
    expect(point(3)).toHaveFocus();
    expect(store.getState().selected).toEqual({ kind: 'point', index: 2 });
  });

  test('go by Delete, and the focus stays among them', async () => {
    const { user, store } = lay();
    point(4).focus();
    await user.keyboard('{Delete}');
    expect(store.getState().tracing.points).toHaveLength(3);
    expect(point(3)).toHaveFocus();
    await user.keyboard('{Control>}z{/Control}');
    expect(store.getState().tracing.points).toHaveLength(4);
  });

  test('come at the cross by Enter', async () => {
    const { user, store } = lay();
    const cross = screen.getByRole('button', { name: /^Cross: / });
    cross.focus();
    await user.keyboard('{ArrowLeft}{Enter}');
    expect(store.getState().tracing.points.at(-1)).toEqual({ x: 449, y: 300 });
  });

  test('come under a press on the picture', () => {
    const { store } = lay();
    fireEvent.click(screen.getByRole('img', { name: 'Data sheet, sheet.png' }), {
      clientX: 100,
      clientY: 80,
    });
    expect(store.getState().tracing.points).toHaveLength(5);
  });

  test('are dragged from where the pointer takes hold', () => {
    const { store } = lay();
    const handle = point(1);
    handle.setPointerCapture = () => {};
    const from = store.getState().tracing.points[0];
    fireEvent.pointerDown(handle, { button: 0, clientX: 7, clientY: 5 });
    fireEvent.pointerMove(handle, { clientX: 7, clientY: 9 });
    fireEvent.pointerUp(handle);
    const to = store.getState().tracing.points[0];
    expect(to?.x).toBe(from?.x);
    expect(to?.y).toBeGreaterThan(from?.y ?? 0);
    expect(store.getState().past).toHaveLength(1);
  });
});

describe('the values of an axis', () => {
  test('keep what is typed, and what is wrong is told beside them', async () => {
    const { user } = lay();
    await user.click(screen.getByRole('button', { name: /^Pressure axis/ }));
    const box = screen.getByRole('textbox', { name: /^Printed at pressure mark 2/ });
    await user.clear(box);
    await user.type(box, '40 m3/h');
    expect(box).toHaveValue('40 m3/h');
    expect(box).toBeInvalid();
    expect(box).toHaveAccessibleDescription(/is a flow; this field takes a pressure/);
    await user.clear(box);
    await user.type(box, '0,16 inH2O');
    expect(box).toBeValid();
    expect(screen.getByRole('combobox', { name: 'Unit of the axis' })).toHaveValue('inH2O');
  });

  test('lead on by Enter', async () => {
    const { user, store } = lay();
    await user.click(screen.getByRole('button', { name: /^Flow axis/ }));
    await user.type(screen.getByRole('textbox', { name: /^Printed at flow mark 2/ }), '{Enter}');
    expect(store.getState().step).toBe('pressure');
    await user.type(screen.getByRole('textbox', { name: /^Printed at pressure mark 2/ }), '{Enter}');
    expect(store.getState().step).toBe('points');
  });
});

describe('points out of order', () => {
  const mixed = [good[0], good[2], good[1], good[3]];

  test('are told beside the point, and are put in order when that is asked for', async () => {
    const { user } = lay(mixed);
    const table = screen.getByRole('region', { name: 'Points and their values' });
    expect(table).toHaveTextContent('Point 3: Flow must rise from row to row');
    await user.click(screen.getByRole('button', { name: 'Put them in order of flow' }));
    expect(table).not.toHaveTextContent('Flow must rise');
    expect(point(2)).toHaveAccessibleName('Point 2: 20.00 m³/h, 30.00 Pa');
  });

  test('are not taken over', async () => {
    const { user, design } = lay(mixed);
    const before = design.getState().design;
    await user.click(screen.getByRole('button', { name: /Take it over/ }));
    await user.click(screen.getByRole('button', { name: 'Take the points over' }));
    expect(design.getState().design).toBe(before);
  });
});

test('the picture comes closer by button and by key, and no farther than the whole of it', async () => {
  const { user } = lay();
  await user.click(screen.getByRole('button', { name: 'Closer' }));
  expect(screen.getByText('53 %')).toBeInTheDocument();
  point(1).focus();
  await user.keyboard('+');
  expect(screen.getByText('80 %')).toBeInTheDocument();
  await user.keyboard('---');
  expect(screen.getByText('36 %')).toBeInTheDocument();
});

test('right points are taken over with the sheet that they are from, and can be undone', async () => {
  const { user, design } = lay();
  const { curve } = design.getState().design.fan;
  await user.click(screen.getByRole('button', { name: 'Go on: take it over' }));
  await user.type(screen.getByRole('textbox', { name: 'Curve from' }), 'sheet 7, 12 V');
  await user.click(screen.getByRole('button', { name: 'Take the points over' }));
  expect(screen.getByText(/^Taken over: 4 points/)).toBeInTheDocument();
  expect(design.getState().design.fan.curveSource).toBe('sheet 7, 12 V');
  expect(design.getState().design.fan.curve.map(({ dp_Pa }) => dp_Pa)).toEqual([36, 30, 18, 0]);
  act(() => void design.getState().undo());
  expect(design.getState().design.fan.curve).toEqual(curve);
  await user.click(screen.getByRole('button', { name: 'Take point 4 away' }));
  expect(screen.queryByText(/^Taken over/)).toBeNull();
});

test('points of a loss rise with the flow and bring no source', async () => {
  const { user } = lay(
    [
      [0, 0],
      [20, 5],
      [40, 20],
    ],
    'extras[0].points',
  );
  await user.click(screen.getByRole('button', { name: 'Go on: take it over' }));
  expect(screen.queryByRole('textbox', { name: 'Curve from' })).toBeNull();
  expect(screen.getByText(/^3 points become the measured points of this loss/)).toBeInTheDocument();
});

test('a browser without room for the picture is told at every step, and a picture of another fan too', () => {
  lay(good, 'fan.curve', 'full');
  const steps = screen.getByRole('region', { name: 'Steps' });
  expect(steps).toHaveTextContent('The browser has no room for this picture; the curve is kept.');
  expect(steps).toHaveTextContent('This picture was laid out for “Invented 60 mm axial”');
});

describe('a file that comes as a picture', () => {
  const file = (type: string, size = 10, name = 'sheet') => new File([new Uint8Array(size)], name, { type });

  test('is measured', async () => {
    expect(await readPictureFile(file('image/png'))).toMatchObject({
      ok: true,
      picture: { name: 'sheet', width: 900, height: 600 },
    });
  });

  test.each([
    ['application/pdf', 10, /take a picture of the screen/],
    ['image/svg+xml', 10, /Save it as PNG/],
    ['text/plain', 10, /is not a picture that can be taken/],
    ['image/png', 9_000_000, /9\.0 MB; at most 8 MB/],
  ])('is refused with what can be done: %s of %i bytes', async (type, size, reason) => {
    expect(await readPictureFile(file(type, size))).toMatchObject({
      ok: false,
      reason: expect.stringMatching(reason),
    });
  });

  test('dropped on the bench is taken, and what was there can be brought back', async () => {
    const { store } = lay();
    const next = file('image/png', 10, 'other.png');
    fireEvent.drop(screen.getByRole('region', { name: 'Steps' }), { dataTransfer: { files: [next] } });
    await vi.waitFor(() => expect(store.getState().picture?.name).toBe('other.png'));
    expect(store.getState().tracing.points).toEqual([]);
    store.getState().undo();
    expect(store.getState().tracing.points).toHaveLength(4);
  });
});
