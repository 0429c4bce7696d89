import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import { useActions, useDesign } from '../../src/ui/bench/DesignContext.ts';
import { AirKey } from '../../src/ui/drawing/AirKey.tsx';
import { BoxDrawing } from '../../src/ui/drawing/BoxDrawing.tsx';
import { detailOf } from '../../src/ui/drawing/detail.ts';
import { balloonSize, placeDrawing } from '../../src/ui/drawing/geometry.ts';
import { PartChooser } from '../../src/ui/drawing/PartChooser.tsx';
import { StackDetail } from '../../src/ui/drawing/StackDetail.tsx';
import { spread } from '../../src/ui/drawing/spread.ts';
import { renderWithDesign } from '../helpers/renderWithDesign.tsx';
import { exampleIds, sampleExample, sampleOf, sampleWithoutAnswer } from '../helpers/sampleReport.ts';

describe('spreading places', () => {
  test('leaves alone what is far enough apart', () => {
    expect(spread([10, 50, 90], 30, 0, 100)).toEqual([10, 50, 90]);
  });

  test('moves a crowd apart about its middle', () => {
    expect(spread([50, 50, 50], 10, 0, 100)).toEqual([40, 50, 60]);
  });

  test('keeps within the ends', () => {
    expect(spread([0, 1, 99, 100], 20, 10, 90)).toEqual([10, 30, 70, 90]);
  });

  test('lets a group run into the next and moves both', () => {
    expect(spread([10, 12, 21], 10, 0, 100)).toEqual([13 / 3, 13 / 3 + 10, 13 / 3 + 20]);
  });
});

describe.each(exampleIds)('the drawing of %s', (id) => {
  const { report } = sampleExample(id);

  test.each([320, 358, 640, 900])('%i px wide stays within its paper', (width) => {
    const { views, balloons, height } = placeDrawing(report.drawing, width);
    for (const { x, y } of balloons) {
      expect(x - balloonSize / 2).toBeGreaterThanOrEqual(0);
      expect(x + balloonSize / 2).toBeLessThanOrEqual(width);
      expect(y + balloonSize / 2).toBeLessThanOrEqual(height);
    }
    const numbers = views.flatMap(({ shapes, streams }) => [
      ...shapes.flatMap(({ d }) => [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)]),
      ...streams.flatMap(({ branch, trunk }) => [...(branch + trunk).matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)]),
    ]);
    expect(numbers.length).toBeGreaterThan(20);
    for (const [, x, y] of numbers) {
      expect(Number(x)).toBeGreaterThanOrEqual(0);
      expect(Number(x)).toBeLessThanOrEqual(width);
      expect(Number(y)).toBeGreaterThanOrEqual(0);
      expect(Number(y)).toBeLessThanOrEqual(height);
    }
  });

  test('keeps its item numbers apart', () => {
    const { balloons } = placeDrawing(report.drawing, 358);
    for (const a of balloons) {
      for (const b of balloons) {
        if (a !== b) expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThanOrEqual(balloonSize);
      }
    }
  });

  test('draws both views to one scale, the plan under the section', () => {
    const { views } = placeDrawing(report.drawing, 640);
    const walls = views.map(({ shapes }) =>
      shapes.filter(({ role }) => role === 'wall').map(({ d }) => Number(/^M(-?[\d.]+)/.exec(d)?.[1])),
    );
    expect(Math.max(...(walls[0] ?? []))).toBeCloseTo(Math.max(...(walls[1] ?? [])), 1);
  });

  test('makes every ribbon as wide as its share of the air', () => {
    const { views } = placeDrawing(report.drawing, 640);
    const streams = views[0]?.streams ?? [];
    const shares = new Map(report.drawing.section.streams.map((stream) => [stream.id, stream.share]));
    const wide = streams.filter(({ width }) => width > 1);
    const widest = wide.toSorted((a, b) => b.width - a.width)[0];
    const perShare = (widest?.width ?? 0) / Math.abs(shares.get(widest?.key ?? '') ?? 0);
    expect(wide.length).toBeGreaterThan(1);
    for (const { key, width } of wide) {
      // Widths are kept to a hundredth of a pixel, the scale as well as the ribbon.
      expect(Math.abs(width - perShare * Math.abs(shares.get(key) ?? 0))).toBeLessThan(0.02);
    }
  });

  test('numbers every part that it shows, by the way of the air', () => {
    const { balloons } = placeDrawing(report.drawing, 640);
    const shown = report.drawing.parts.filter(({ section }) => section !== null).map(({ part }) => part);
    expect(balloons.map(({ part }) => part).sort()).toEqual([...shown].sort());
    const numbers = balloons.map(({ number }) => number);
    expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
  });
});

const { report } = sampleExample('eightResistors');

function Bench() {
  const selected = useDesign(({ selectedPart }) => selectedPart);
  const { selectPart } = useActions();
  return (
    <>
      <BoxDrawing model={report.drawing} selected={selected} onSelect={selectPart} />
      <PartChooser selected={selected} onSelect={selectPart} wrong={['sink.plate_m']} />
    </>
  );
}

describe('the drawing as a form', () => {
  test('has a button for each part, named with its measure and temperature, in the order of the air’s way', () => {
    renderWithDesign(<Bench />);
    const buttons = screen.getAllByRole('button').filter((button) => button.hasAttribute('aria-pressed'));
    expect(buttons.map((button) => button.getAttribute('aria-label'))).toEqual(
      report.drawing.parts.map(({ name }) => name),
    );
    const pressed = buttons.filter((button) => button.getAttribute('aria-pressed') === 'true');
    expect(pressed.map((button) => button.getAttribute('aria-label'))).toEqual([
      expect.stringMatching(/^Baffle, side clearance 0\.8\u202fmm, \d+\u202f°C at the hottest$/),
    ]);
  });

  test('chooses a part by keyboard', async () => {
    const user = userEvent.setup();
    const { store } = renderWithDesign(<Bench />);
    screen.getByRole('button', { name: /^Fan,/ }).focus();
    await user.keyboard('{Enter}');
    expect(store.getState().selectedPart).toBe('fan');
    screen.getByRole('button', { name: /^Sinks,/ }).focus();
    await user.keyboard(' ');
    expect(store.getState().selectedPart).toBe('sinks');
    expect(screen.getByRole('button', { name: /^Sinks,/ })).toBePressed();
    expect(screen.getByRole('radio', { name: /^Sinks/ })).toBeChecked();
  });

  test('chooses a part by a click on its shape', async () => {
    const user = userEvent.setup();
    const { store, container } = renderWithDesign(<Bench />);
    const chip = container.querySelector('[data-role="chip"]');
    if (chip === null) throw new Error('no chip drawn');
    await user.click(chip);
    expect(store.getState().selectedPart).toBe('resistors');
  });

  test('offers what cannot be drawn in the list', async () => {
    const user = userEvent.setup();
    const { store } = renderWithDesign(<Bench />);
    for (const [name, part] of [
      ['Load', 'load'],
      ['Room', 'room'],
      ['Limits', 'limits'],
      ['Extra losses', 'extras'],
      ['Filter', 'filter'],
    ] as const) {
      await user.click(screen.getByRole('radio', { name }));
      expect(store.getState().selectedPart).toBe(part);
    }
  });

  test('marks the part where something is wrong', () => {
    renderWithDesign(<Bench />);
    expect(screen.getByRole('radio', { name: 'Sinks, has an entry to mend' })).toBeInTheDocument();
  });

  test('tells each film temperature over its resistor', async () => {
    const { container } = renderWithDesign(<Bench />);
    await screen.findByText('film, °C');
    const { positions } = report.heat ?? { positions: [] };
    const drawn = [...container.querySelectorAll('text')].map((text) => text.textContent);
    for (const { film } of positions) expect(drawn).toContain(film.split('\u202f')[0]);
  });
});

describe('the detail of a resistor', () => {
  const detail = detailOf(report.drawing, 208);
  const { design } = sampleExample('eightResistors');

  test('shows the hottest resistor between its plates', () => {
    expect(detail?.resistor).toBe((report.heat?.positions.findIndex(({ hottest }) => hottest) ?? -1) + 1);
    expect(detail?.layers.map(({ part }) => part)).toEqual([
      'sinks',
      'bonds',
      'resistors',
      'secondFace',
      'sinks',
    ]);
    const film = report.heat?.positions.find(({ hottest }) => hottest)?.film;
    expect(detail?.words).toContain(`film ${film}`);
  });

  test('keeps the proportions of its layers and leaves no gap', () => {
    const [, bond, chip] = detail?.layers ?? [];
    const part = design.parts[0];
    const body_m = (part?.thickness_m ?? 0) + (part?.coating_m ?? 0);
    expect((bond?.width ?? 0) / (chip?.width ?? 1)).toBeCloseTo(design.bond.filament_m / body_m, 9);
    let edge = 0;
    for (const { x, width } of detail?.layers ?? []) {
      expect(x).toBeCloseTo(edge, 6);
      edge = x + width;
    }
    expect(edge).toBeCloseTo(208, 6);
  });

  test('turns with a resistor that is flipped, and does without a sink that is not there', () => {
    const positions = design.positions.slice(0, 1).map((position) => ({ ...position, flipped: true }));
    const single = sampleOf({ ...design, positions, sink: { ...design.sink, last: false } });
    expect(detailOf(single.report.drawing, 208)?.layers.map(({ part }) => part)).toEqual([
      'sinks',
      'secondFace',
      'resistors',
      'bonds',
    ]);
  });

  test('opens the inputs of a layer by a click, and says in words what it shows', async () => {
    const onSelect = vi.fn();
    const { container } = renderWithDesign(
      <StackDetail model={report.drawing} selected="fan" onSelect={onSelect} />,
    );
    const bond = await vi.waitFor(() => {
      const drawn = container.querySelector('[data-role="bond"]');
      if (drawn === null) throw new Error('no bond drawn');
      return drawn;
    });
    await userEvent.click(bond);
    expect(onSelect).toHaveBeenCalledExactlyOnceWith('bonds');
    expect(container).toHaveTextContent(/Resistor \d, \d+ × life size: plate .*film .*plate /);
  });
});

describe('the key to the drawing', () => {
  test('says every share in words', () => {
    renderWithDesign(<AirKey report={report} />);
    const items = within(screen.getByRole('list', { name: 'Streams of air' })).getAllByRole('listitem');
    expect(items.map((item) => item.textContent)).toEqual(
      (report.air?.shares ?? []).map(({ percent, label }) => `${percent} ${label}`),
    );
  });

  test('says what both ends of the tint are: the room and the limit of the film', () => {
    const { container } = renderWithDesign(<AirKey report={report} />);
    const ends = [...container.querySelectorAll('p span:not([aria-hidden])')].map((end) => end.textContent);
    expect(ends).toEqual([report.key?.coldest, report.key?.hottest]);
    expect(ends[0]).toMatch(/^\d+\s°C room$/);
    expect(ends[1]).toMatch(/^film limit \d+\s°C$/);
  });

  test('says nothing of air and warmth that have no answer', () => {
    const { report: unsolved } = sampleWithoutAnswer();
    const { container } = renderWithDesign(<AirKey report={unsolved} />);
    expect(screen.queryByRole('list')).toBeNull();
    expect(container.textContent).toBe(`${unsolved.drawing.caption} ${unsolved.drawing.underlined}`);
  });
});

test('a design without an answer is drawn without air and temperatures', () => {
  const { report } = sampleWithoutAnswer();
  const { container } = renderWithDesign(
    <BoxDrawing model={report.drawing} selected="fan" onSelect={() => {}} />,
  );
  expect(container.querySelectorAll('[data-kind]')).toHaveLength(0);
  expect(container.querySelectorAll('[data-warm="true"]')).toHaveLength(0);
  expect(screen.getByRole('button', { name: /^Fan,/ })).toBePressed();
});

test('a box without its baffle is drawn without one, and without its measures', async () => {
  const { design } = sampleExample('eightResistors');
  const open = { ...design, baffle: { ...design.baffle, fitted: false } };
  const { report } = sampleOf(open);
  const { container } = renderWithDesign(
    <BoxDrawing model={report.drawing} selected="fan" onSelect={() => {}} />,
    open,
  );
  await screen.findByRole('button', { name: /^Inside width, / });
  expect(container.querySelector('[data-part="baffle"]')).toBeNull();
  expect(screen.queryByRole('button', { name: /^Baffle/ })).toBeNull();
  expect(screen.queryByRole('button', { name: /clearance|slot|collar|stand-off|leak/i })).toBeNull();
});
