import { act, fireEvent, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { defaultDesign } from '../../src/model/defaults.ts';
import { fields } from '../../src/model/fields.ts';
import { setAt } from '../../src/model/path.ts';
import type { PartId } from '../../src/report/drawing.ts';
import { Field } from '../../src/ui/fields/Field.tsx';
import { fieldGroups, groupOf, partOf, titleFields } from '../../src/ui/fields/groups.ts';
import { nudge } from '../../src/ui/fields/nudge.ts';
import { PartPanel } from '../../src/ui/fields/PartPanel.tsx';
import { extraFields, otherFanFields, partFields, positionFields } from '../../src/ui/fields/rowFields.ts';
import { renderWithDesign } from '../helpers/renderWithDesign.tsx';

describe('the groups of fields', () => {
  const offered = [
    ...titleFields,
    ...fieldGroups.flatMap(({ fields: own }) => own.map(({ path }) => path)),
    ...partFields.map((key) => `parts[].${key}`),
    ...positionFields.map((key) => `positions[].${key}`),
    ...otherFanFields.map((key) => `moreFans[].${key}`),
    ...extraFields.map((key) => `extras[].${key}`),
    ...['fan.curve', 'moreFans[].curve', 'extras[].points'].flatMap((list) => [
      `${list}[].flow_m3PerS`,
      `${list}[].dp_Pa`,
    ]),
  ];

  test('offer every input of the schema once, but for what is edited where it is used: spreads, readings, a fit', () => {
    const wanted = fields
      .map(({ pattern }) => pattern)
      .filter((path) => !/^(spreads|readings|fitted)\b/.test(path));
    expect([...offered].sort()).toEqual(wanted.sort());
  });

  test.each([
    ['positions[3].power_W', 'resistors'],
    ['parts[0].R_Ohm', 'resistors'],
    ['fan.curve[2].dp_Pa', 'fan'],
    ['moreFans[1].curve[2].dp_Pa', 'fan'],
    ['moreFans[0].place', 'fan'],
    ['inlet.guardBlocked', 'guard'],
    ['inlet.filterBlocked', 'filter'],
    ['fan.inletSpace_m', 'fan'],
    ['extras[1].points[0].dp_Pa', 'extras'],
    ['inlet.guard.loss', 'guard'],
    ['plenum.neckAngle_rad', 'neck'],
    ['title', null],
  ])('find %s under %s', (path, part) => {
    expect(partOf(path)).toBe(part);
  });
});

describe('nudging a text', () => {
  test.each([
    ['0.8 mm', 1, '0.9 mm'],
    ['0.8 mm', -1, '0.7 mm'],
    ['0.9', 1, '1.0'],
    ['9', 1, '10'],
    ['10', -1, '9'],
    ['0,80 mm', 1, '0,81 mm'],
    ['0.0', -1, '-0.1'],
    ['-0.1', 1, '0.0'],
    ['−5 °C', 1, '−4 °C'],
    ['35 cfm', 1, '36 cfm'],
    ['3 m3/h', 1, '4 m3/h'],
    ['0.1 inH2O', 1, '0.2 inH2O'],
  ] as const)('moves the last digit of %s by %i', (text, direction, moved) => {
    expect(nudge(text, direction)).toBe(moved);
  });

  test.each(['1/16 in', '1 1/2 in', '2 ft 3 in', '', 'abc', '1e-3'])('leaves %s alone', (text) => {
    expect(nudge(text, 1)).toBeNull();
  });
});

describe('a field', () => {
  const box = (name: RegExp) => screen.getByRole('textbox', { name });

  test('of a quantity keeps what is typed and puts its value into the design', async () => {
    const user = userEvent.setup();
    const { store } = renderWithDesign(<Field path="sink.plate_m" />);
    await user.clear(box(/^Plate thickness/));
    await user.type(box(/^Plate thickness/), '1/16 in');
    expect(box(/^Plate thickness/)).toHaveValue('1/16 in');
    expect(store.getState().design.sink.plate_m).toBe(0.0015875);
  });

  test('of a quantity shows its unit only where the text has none', async () => {
    const user = userEvent.setup();
    const { container } = renderWithDesign(<Field path="sink.plate_m" />);
    const unit = () => container.querySelector('[aria-hidden="true"]')?.textContent ?? '';
    expect(unit()).toBe('mm');
    await user.clear(box(/^Plate thickness/));
    await user.type(box(/^Plate thickness/), '2 mm');
    expect(unit()).toBe('');
  });

  test('of a quantity keeps a wrong text, says so beside it, and leaves the design alone', async () => {
    const user = userEvent.setup();
    const { store } = renderWithDesign(<Field path="sink.plate_m" />);
    const before = store.getState().design;
    await user.clear(box(/^Plate thickness/));
    await user.type(box(/^Plate thickness/), '2 mmm');
    expect(box(/^Plate thickness/)).toHaveValue('2 mmm');
    expect(box(/^Plate thickness/)).toBeInvalid();
    const problem = store.getState().problems[0]?.reason ?? 'no problem told';
    expect(box(/^Plate thickness/)).toHaveAccessibleDescription(expect.stringContaining(problem));
    expect(store.getState().design.sink).toEqual(before.sink);
  });

  test('of a quantity warns outside the usual range and still takes the value', () => {
    const { store } = renderWithDesign(<Field path="sink.plate_m" />);
    fireEvent.change(box(/^Plate thickness/), { target: { value: '12 mm' } });
    expect(box(/^Plate thickness/)).toBeValid();
    expect(box(/^Plate thickness/)).toHaveAccessibleDescription(/Unusual/);
    expect(store.getState().design.sink.plate_m).toBe(0.012);
  });

  test('of a quantity follows the arrow keys by its last digit', async () => {
    const user = userEvent.setup();
    const { store } = renderWithDesign(<Field path="baffle.sideClearance_m" />);
    await user.click(box(/^Side clearance/));
    await user.keyboard('{ArrowUp}{ArrowUp}{ArrowDown}');
    expect(box(/^Side clearance/)).toHaveValue('0.9');
    expect(store.getState().design.baffle.sideClearance_m).toBeCloseTo(0.0009, 12);
  });

  test('of text does not follow the arrow keys', async () => {
    const user = userEvent.setup();
    renderWithDesign(<Field path="fan.name" />, setAt(defaultDesign, 'fan.name', '60 mm'));
    await user.click(box(/^Fan/));
    await user.keyboard('{ArrowUp}');
    expect(box(/^Fan/)).toHaveValue('60 mm');
  });

  test('of a choice offers plain words', async () => {
    const user = userEvent.setup();
    const { store } = renderWithDesign(<Field path="outlet.kind" />);
    await user.selectOptions(screen.getByRole('combobox', { name: 'Outlet grille' }), 'square-edged bars');
    expect(store.getState().design.outlet.kind).toBe('square');
  });

  test('of a flag switches', async () => {
    const user = userEvent.setup();
    const { store } = renderWithDesign(<Field path="baffle.fitted" />);
    await user.click(screen.getByRole('checkbox', { name: 'Baffle fitted' }));
    expect(store.getState().design.baffle.fitted).toBe(false);
  });

  test('that does not matter shows only while something is wrong with it', () => {
    const { store, container } = renderWithDesign(<Field path="load.supply_V" idle />);
    expect(container).toBeEmptyDOMElement();
    act(() => store.getState().setText('load.supply_V', 'twelve'));
    expect(box(/^Supply voltage/)).toBeInvalid();
  });
});

describe('the panel of a part', () => {
  async function open(part: PartId) {
    const rendered = renderWithDesign(<PartPanel />);
    // Tables are loaded when they are first needed.
    await act(async () => rendered.store.getState().selectPart(part));
    if (groupOf(part).lists.length > 0)
      await screen.findAllByRole('button', { name: /^Add / }, { timeout: 5000 });
    return { ...rendered, state: rendered.store.getState, user: userEvent.setup() };
  }

  test('asks only for what matters as the design stands', async () => {
    const { user } = await open('load');
    expect(screen.queryByRole('textbox', { name: /^Supply voltage/ })).toBeNull();
    await user.selectOptions(
      screen.getByRole('combobox', { name: 'Load given as' }),
      'each switched across the supply',
    );
    expect(screen.getByRole('textbox', { name: /^Supply voltage/ })).toBeInTheDocument();
    expect(screen.queryByRole('textbox', { name: /^Supply current/ })).toBeNull();
  });

  test('asks for a period only while the load is off at times', async () => {
    const { state } = await open('load');
    expect(screen.queryByRole('textbox', { name: /^Period/ })).toBeNull();
    act(() => state().setText('load.duty', '40 %'));
    fireEvent.change(screen.getByRole('textbox', { name: /^Period/ }), { target: { value: '2 min' } });
    expect(state().design.load.period_s).toBe(120);
  });

  test('asks for the altitude or for the barometer', async () => {
    const { user, state } = await open('room');
    expect(screen.queryByRole('textbox', { name: /^Air pressure/ })).toBeNull();
    await user.selectOptions(screen.getByRole('combobox', { name: 'Air pressure from' }), 'barometer');
    expect(screen.queryByRole('textbox', { name: /^Altitude/ })).toBeNull();
    fireEvent.change(screen.getByRole('textbox', { name: /^Air pressure/ }), { target: { value: '985' } });
    expect(state().design.room.pressure_Pa).toBe(98_500);
  });

  test('asks for dust on a guard and a filter only where there is one', async () => {
    const { state } = await open('guard');
    expect(screen.getByRole('textbox', { name: /^Guard blocked by dust/ })).toBeInTheDocument();
    act(() => state().setValue('inlet.guard.kind', 'none'));
    expect(screen.queryByRole('textbox', { name: /^Guard blocked by dust/ })).toBeNull();
    act(() => state().selectPart('filter'));
    expect(screen.queryByRole('textbox', { name: /^Filter blocked by dust/ })).toBeNull();
    act(() => state().setValue('inlet.filter', true));
    expect(screen.getByRole('textbox', { name: /^Filter blocked by dust/ })).toBeInTheDocument();
  });

  test('asks for a sound limit only where sound is judged', async () => {
    const { user } = await open('limits');
    expect(screen.queryByRole('textbox', { name: /^Sound limit/ })).toBeNull();
    await user.click(screen.getByRole('checkbox', { name: 'Judge the sound' }));
    expect(screen.getByRole('textbox', { name: /^Sound limit/ })).toBeInTheDocument();
  });

  test('adds, duplicates, changes and removes resistors', async () => {
    const { user, state } = await open('resistors');
    await user.click(screen.getByRole('button', { name: 'Add a resistor' }));
    expect(state().design.positions).toHaveLength(9);
    fireEvent.change(screen.getByRole('textbox', { name: /^Resistor 9, watts/ }), {
      target: { value: '2.5' },
    });
    await user.click(screen.getByRole('checkbox', { name: 'Resistor 9, flipped' }));
    await user.click(screen.getByRole('button', { name: 'Duplicate resistor 9' }));
    expect(state().design.positions[9]).toEqual({ part: 0, on: true, flipped: true, power_W: 2.5 });
    await user.click(screen.getByRole('button', { name: 'Remove resistor 1' }));
    expect(state().design.positions).toHaveLength(9);
    expect(screen.getAllByRole('checkbox', { name: /, on$/ })).toHaveLength(9);
  });

  test('makes all resistors like one', async () => {
    const { user, state } = await open('resistors');
    fireEvent.change(screen.getByRole('textbox', { name: /^Resistor 3, watts/ }), { target: { value: '1' } });
    await user.click(screen.getByRole('button', { name: 'Make all like resistor 3' }));
    expect(state().design.positions.map(({ power_W }) => power_W)).toEqual(
      Array.from({ length: 8 }, () => 1),
    );
    await user.click(screen.getByRole('button', { name: 'All off' }));
    expect(state().design.positions.some(({ on }) => on)).toBe(false);
  });

  test('tells under the row which resistor is wrong', async () => {
    const { state } = await open('resistors');
    const watts = screen.getByRole('textbox', { name: /^Resistor 3, watts/ });
    fireEvent.change(watts, { target: { value: 'much' } });
    expect(watts).toBeInvalid();
    expect(watts).toHaveAccessibleDescription(`Resistor 3: ${state().problems[0]?.reason}`);
  });

  test('asks for the part of each resistor once there are two', async () => {
    const { user, state } = await open('resistors');
    expect(screen.queryByRole('combobox', { name: 'Resistor 1, part' })).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Add a part' }));
    await user.selectOptions(screen.getByRole('combobox', { name: 'Resistor 1, part' }), 'Part 2');
    expect(state().design.positions[0]?.part).toBe(1);
    const [, second] = screen.getAllByRole('button', { name: 'Remove this part' });
    await user.click(second as HTMLElement);
    expect(state().notice).toMatch(/in use by resistor 1/);
    expect(state().design.parts).toHaveLength(2);
  });

  test('adds and removes points of the fan curve', async () => {
    const { user, state } = await open('fan');
    await user.click(screen.getByRole('button', { name: 'Add a point after point 1' }));
    expect(state().design.fan.curve).toHaveLength(7);
    expect(state().design.fan.curve[1]).toEqual({ flow_m3PerS: 0.001, dp_Pa: 43 });
    await user.click(screen.getByRole('button', { name: 'Remove point 2' }));
    expect(state().design.fan.curve).toHaveLength(6);
  });

  test('adds fans of other kinds, each with a curve of its own, and removes them', async () => {
    const { user, state } = await open('fan');
    await user.click(screen.getByRole('button', { name: 'Add a fan of another kind' }));
    await user.selectOptions(screen.getByRole('combobox', { name: 'Place' }), 'behind the others');
    fireEvent.change(screen.getByRole('textbox', { name: /^Fan 2, point 3, flow/ }), {
      target: { value: '5 cfm' },
    });
    await user.click(screen.getByRole('button', { name: 'Remove Fan 2, point 2' }));
    const [other] = state().design.moreFans;
    expect(other).toMatchObject({ name: 'Fan 2', place: 'behind' });
    expect(other?.curve).toHaveLength(5);
    expect(other?.curve[1]?.flow_m3PerS).toBeCloseTo((5 * 0.028316846592) / 60, 12);
    expect(state().design.fan.curve).toHaveLength(6);
    await user.click(screen.getByRole('button', { name: 'Remove this fan' }));
    expect(state().design.moreFans).toEqual([]);
  });

  test('opens the fan in which something is wrong, and says there what', async () => {
    const { state } = await open('fan');
    act(() => {
      state().addFan();
      state().addFan();
      state().setText('moreFans[1].curve[2].dp_Pa', 'much');
    });
    const cell = screen.getByRole('textbox', { name: /^Fan 3, point 3, pressure/ });
    expect(cell).toBeInvalid();
    expect(cell).toHaveAccessibleDescription(`Fan 3, point 3: ${state().problems[0]?.reason}`);
    expect(cell.closest('details')).toHaveAttribute('open');
  });

  test('takes a pasted table with its units, and leaves out its head', async () => {
    const { state } = await open('fan');
    const cell = screen.getByRole('textbox', { name: /^Point 1, flow/ });
    const table = 'flow;pressure\n0 cfm;0,2 inH2O\n10 cfm;0,1 inH2O\n20 cfm;0 inH2O\n';
    fireEvent.paste(cell, { clipboardData: { getData: () => table } });
    expect(await screen.findByText(/^3 points taken over: flow from “flow”/)).toHaveAttribute(
      'role',
      'status',
    );
    const { curve } = state().design.fan;
    expect(curve).toHaveLength(3);
    expect(curve[1]?.flow_m3PerS).toBeCloseTo((10 * 0.028316846592) / 60, 12);
    expect(curve[0]?.dp_Pa).toBeCloseTo(0.2 * 249.08891, 2);
    expect(screen.getByRole('textbox', { name: /^Point 2, flow/ })).toHaveValue('10 cfm');
  });

  test('tells the page why a table pasted into a cell was not taken', async () => {
    const { state } = await open('fan');
    const cell = screen.getByRole('textbox', { name: /^Point 1, flow/ });
    fireEvent.paste(cell, { clipboardData: { getData: () => 'speed;watts\n1;2' } });
    await waitFor(() => expect(state().notice).toMatch(/^No column is the flow/));
    expect(state().design.fan.curve).toHaveLength(6);
  });

  test('opens a table from a file, by choice or by drop, and notes the name where none stands', async () => {
    const { user, state } = await open('fan');
    const file = (name: string, text: string) => new File([text], name, { type: 'text/csv' });
    const first = file('stand.csv', 'p [Pa];Q [m³/h]\n60;0\n3o;20\n0;40\n');
    await user.upload(screen.getByLabelText('File: Paste or open a table of points'), first);
    expect(await screen.findByText(/One cell does not fit/)).toBeInTheDocument();
    const wrong = screen.getByRole('textbox', { name: /^Point 2, pressure/ });
    expect(wrong).toHaveValue('3o');
    expect(wrong).toBeInvalid();
    expect(state().design.fan.curveSource).toBe('stand.csv');
    const section = screen.getByRole('region', { name: 'Fan curve' });
    const dataTransfer = { types: ['Files'], files: [file('other.txt', '0\t50\n30\t0\n')] };
    fireEvent.dragOver(section, { dataTransfer });
    expect(section).toHaveAttribute('data-over', 'true');
    fireEvent.drop(section, { dataTransfer });
    await waitFor(() => expect(state().design.fan.curve).toHaveLength(2));
    expect(section).toHaveAttribute('data-over', 'false');
    expect(state().design.fan.curveSource).toBe('stand.csv');
  });

  test('keeps ten megabytes out of the page', async () => {
    const { state } = await open('fan');
    const big = '1;2\n'.repeat(2_500_000);
    const box = screen.getByRole('textbox', { name: 'Paste or open a table of points', hidden: true });
    const went = fireEvent.paste(box, { clipboardData: { getData: () => big } });
    expect(went).toBe(false);
    expect(screen.getByText(/^This text has 10 million letters/)).toBeInTheDocument();
    fireEvent.paste(screen.getByRole('textbox', { name: /^Point 1, flow/ }), {
      clipboardData: { getData: () => big },
    });
    await waitFor(() => expect(state().notice).toMatch(/million letters/));
    expect(state().design.fan.curve).toHaveLength(6);
  });

  test('lets a pasted number be a number', async () => {
    const { state } = await open('fan');
    const cell = screen.getByRole('textbox', { name: /^Point 1, flow/ });
    fireEvent.paste(cell, { clipboardData: { getData: () => '12.5' } });
    expect(state().design.fan.curve).toHaveLength(6);
  });

  test('edits extra losses, by a coefficient or by points', async () => {
    const { user, state } = await open('extras');
    await user.click(screen.getByRole('button', { name: 'Add a loss' }));
    fireEvent.change(screen.getByRole('textbox', { name: 'Loss coefficient' }), { target: { value: '2.5' } });
    expect(state().design.extras[0]?.loss).toBe(2.5);
    await user.click(screen.getByRole('button', { name: 'Use measured points instead' }));
    expect(state().design.extras[0]?.points).toHaveLength(2);
    expect(screen.queryByRole('textbox', { name: 'Loss coefficient' })).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Remove this loss' }));
    expect(state().design.extras).toEqual([]);
  });

  test('carries the title block, whatever part is chosen', async () => {
    const { state } = await open('room');
    fireEvent.change(screen.getByRole('textbox', { name: 'Remark' }), { target: { value: 'two\nlines' } });
    expect(state().design.remark).toBe('two\nlines');
  });
});
