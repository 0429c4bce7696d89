import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { anotherFan } from '../../src/model/defaults.ts';
import type { Design } from '../../src/model/design.ts';
import { exampleById, examples } from '../../src/model/examples/examples.ts';
import { drawingWarmth } from '../../src/report/drawingMeasures.ts';
import { useDesign } from '../../src/ui/bench/DesignContext.ts';
import { BoxDrawing } from '../../src/ui/drawing/BoxDrawing.tsx';
import { balloonSize, placeDrawing } from '../../src/ui/drawing/geometry.ts';
import { standInColumn, standInRow, tagSize, widthOf } from '../../src/ui/drawing/lanes.ts';
import { placeMeasures } from '../../src/ui/drawing/measures.ts';
import { PartPanel } from '../../src/ui/fields/PartPanel.tsx';
import { renderWithDesign } from '../helpers/renderWithDesign.tsx';
import { sampleOf } from '../helpers/sampleReport.ts';

const eight = exampleById('eightResistors');
const manyFans: Design = {
  ...eight,
  title: 'many fans',
  fan: { ...eight.fan, sideBySide: 2, inARow: 2 },
  moreFans: [
    { ...anotherFan(eight.fan, 0), place: 'beside', opening_m: 0.03, hub_m: 0.01 },
    { ...anotherFan(eight.fan, 1), place: 'behind', opening_m: 0.09 },
  ],
};
const designs: readonly Design[] = [
  ...examples.map(({ design }) => design),
  manyFans,
  { ...eight, title: 'without baffle', baffle: { ...eight.baffle, fitted: false } },
  { ...eight, title: 'no neck-down', plenum: { ...eight.plenum, neckLength_m: 0 } },
  {
    ...eight,
    title: 'thick sheet',
    box: { ...eight.box, sheet_m: 0.01 },
    inlet: { ...eight.inlet, filter: true },
  },
];

interface Area {
  readonly name: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function areasOf(design: Design, width: number, system: 'metric' | 'inch') {
  const { report, outcome } = sampleOf(design, system);
  const frame = placeDrawing(report.drawing, width);
  const warmth = outcome.ok ? drawingWarmth(outcome, system) : null;
  const { tags, notes } = placeMeasures(report.drawing, warmth, frame, null);
  const areas: Area[] = [
    ...frame.balloons.map(({ name, x, y }) => around(name, x, y, balloonSize, balloonSize)),
    ...tags.map(({ words, x, y, width: wide, set }) =>
      set === 'upward' ? around(words, x, y, tagSize, wide) : around(words, x, y, wide, tagSize),
    ),
    ...notes.map(({ text, x, y, anchor }): Area => {
      const wide = text.length * 6;
      const left = anchor === 'start' ? x : anchor === 'middle' ? x - wide / 2 : x - wide;
      return { name: text, left, right: left + wide, top: y - 9, bottom: y + 2 };
    }),
  ];
  return { areas, tags, notes, frame };
}

function around(name: string, x: number, y: number, width: number, height: number): Area {
  return { name, left: x - width / 2, right: x + width / 2, top: y - height / 2, bottom: y + height / 2 };
}

describe('measures on the drawing', () => {
  test.each(designs.map((design) => [design.title, design] as const))(
    'of “%s” lie on nothing else and within the paper, whatever its width and the units',
    (_, design) => {
      for (const system of ['metric', 'inch'] as const) {
        for (const width of [288, 304, 358, 374, 480, 616, 637, 736, 900]) {
          const { areas, frame } = areasOf(design, width, system);
          for (const [i, a] of areas.entries()) {
            const where = `${width} px, ${system}: ${a.name}`;
            expect(a.left, where).toBeGreaterThanOrEqual(-0.01);
            expect(a.right, where).toBeLessThanOrEqual(frame.width + 0.01);
            expect(a.top, where).toBeGreaterThanOrEqual(0);
            expect(a.bottom, where).toBeLessThanOrEqual(frame.height);
            for (const b of areas.slice(i + 1)) {
              const apart =
                a.right <= b.left + 0.01 ||
                b.right <= a.left + 0.01 ||
                a.bottom <= b.top + 0.01 ||
                b.bottom <= a.top + 0.01;
              expect(apart, `${where} on ${b.name}`).toBe(true);
            }
          }
        }
      }
    },
    20_000,
  );

  test.each(examples.map(({ id, design }) => [id, design] as const))(
    'all stand on the desktop drawing of %s, in words but where the row is full',
    (_, design) => {
      const { report } = sampleOf(design);
      const all = [...report.drawing.section.dimensions, ...report.drawing.plan.dimensions];
      const { tags } = areasOf(design, 637, 'metric');
      expect(tags.map(({ measure }) => measure.path ?? measure.id).sort()).toEqual(
        all.map(({ path, id }) => path ?? id).sort(),
      );
      for (const { words, measure } of tags) expect(measure.words.slice(0, 2)).toContain(words);
    },
  );

  test('on a phone the main ones stay, and the one that is being edited', () => {
    const { report } = sampleOf(eight);
    const frame = placeDrawing(report.drawing, 374);
    const shown = (kept: string | null) =>
      placeMeasures(report.drawing, null, frame, kept).tags.map(({ measure }) => measure.path ?? measure.id);
    const main = [...report.drawing.section.dimensions, ...report.drawing.plan.dimensions]
      .filter(({ prominence }) => prominence === 'main')
      .map(({ path, id }) => path ?? id);
    expect(shown(null)).toEqual(expect.arrayContaining(main));
    expect(shown(null)).not.toContain('baffle.standOff_m');
    expect(shown('baffle.standOff_m')).toContain('baffle.standOff_m');
  });

  test('tell the temperatures of films, sinks, sheet, exhaust and the air that comes in', () => {
    const { notes } = areasOf(exampleById('onePair'), 637, 'metric');
    const words = notes.map(({ text }) => text);
    expect(words).toEqual(expect.arrayContaining(['film, °C', 'sink, °C']));
    for (const start of [/^exhaust \d+\u202f°C$/, /^sheet outside \d+\u202f°C$/, /^air \d+\u202f°C$/])
      expect(
        words.some((text) => start.test(text)),
        String(start),
      ).toBe(true);
    const strong = notes.filter((note) => note.strong).map(({ key }) => key.split('-')[0]);
    expect(strong.sort()).toEqual(['film', 'sink']);
  });
});

describe('words in a lane', () => {
  const wish = (at: number, spare = false) => ({
    words: ['long words 1 mm', 'words 1 mm', '1 mm'],
    at,
    spare,
  });

  test('stand where they are wanted while there is room', () => {
    const stands = standInRow([wish(100), wish(300)], 0, 400);
    expect(stands.map((stand) => [stand?.words, stand?.at])).toEqual([
      ['long words 1 mm', 100],
      ['long words 1 mm', 300],
    ]);
  });

  test('are shortened before any is left out, and the spare ones go first', () => {
    const words = (width: number) =>
      standInRow([wish(0), wish(50, true), wish(90)], 0, width).map((stand) => stand?.words ?? null);
    const [long, middle, short] = ['long words 1 mm', 'words 1 mm', '1 mm'].map((each) => widthOf(each) + 8);
    if (long === undefined || middle === undefined || short === undefined) throw new Error('no widths');
    expect(words(3 * long)).toEqual(['long words 1 mm', 'long words 1 mm', 'long words 1 mm']);
    expect(words(3 * middle)).toEqual(['words 1 mm', 'words 1 mm', 'words 1 mm']);
    expect(words(2 * middle + short)).toEqual(['words 1 mm', '1 mm', 'words 1 mm']);
    expect(words(2 * middle)).toEqual(['words 1 mm', null, 'words 1 mm']);
    expect(words(2 * short)).toEqual(['1 mm', null, '1 mm']);
    expect(words(short)).toEqual([null, null, '1 mm']);
  });

  test('in a column keep a finger’s breadth apart; spare ones go where it is full', () => {
    const column = (high: number) => standInColumn([wish(50), wish(51, true), wish(52)], 0, high, 200);
    expect(column(200).map((stand) => stand?.at)).toEqual([27, 51, 75]);
    expect(column(30).map((stand) => stand === null)).toEqual([false, true, false]);
  });
});

function Bench() {
  const selected = useDesign(({ selectedPart }) => selectedPart);
  return (
    <>
      <BoxDrawing model={sampleOf(eight).report.drawing} selected={selected} onSelect={() => {}} />
      <PartPanel />
    </>
  );
}

const measure = (name: RegExp) => screen.findByRole('button', { name }, { timeout: 4000 });
const editor = () => screen.getByRole('group', { name: /, on the drawing$/ });
const box = () => within(editor()).getByRole('textbox');

describe('a measure as a field', () => {
  // Loaded later in the page; here once for all.
  beforeAll(() => import('../../src/ui/drawing/Measures.tsx'));

  test('opens where it stands with the text of the panel, chosen whole, and chooses its part', async () => {
    const user = userEvent.setup();
    const { store } = renderWithDesign(<Bench />);
    store.getState().selectPart('fan');
    const button = await measure(/^Side clearance, 0\.8\smm, change$/);
    expect(button).toHaveAttribute('aria-expanded', 'false');
    await user.click(button);
    expect(button).toHaveAttribute('aria-expanded', 'true');
    expect(store.getState().selectedPart).toBe('baffle');
    expect(box()).toHaveFocus();
    expect(box()).toHaveValue('0.8');
    expect(box()).toHaveAccessibleDescription(/Gap between the sinks and the collar.*0 to 200\u202fmm/);
    await user.keyboard('1/16 in');
    expect(store.getState().design.baffle.sideClearance_m).toBe(0.0015875);
    const twins = screen.getAllByRole('textbox', { name: /^Side clearance/ });
    expect(twins.map((twin) => (twin as HTMLInputElement).value)).toEqual(['1/16 in', '1/16 in']);
  });

  test.each(['Enter', 'Escape'])(
    '%s closes it, keeps what was typed and goes back to the measure',
    async (key) => {
      const user = userEvent.setup();
      const { store } = renderWithDesign(<Bench />);
      const button = await measure(/^Collar height/);
      await user.click(button);
      await user.keyboard(`18 mm{${key}}`);
      expect(screen.queryByRole('group', { name: /on the drawing/ })).toBeNull();
      expect(button).toHaveFocus();
      expect(store.getState().design.baffle.collar_m).toBe(0.018);
    },
  );

  test('keeps a wrong text, says what is allowed, and marks the measure in words and by a sign', async () => {
    const user = userEvent.setup();
    const { store } = renderWithDesign(<Bench />);
    await user.click(await measure(/^Collar height/));
    await user.keyboard('99 mm');
    expect(box()).toHaveValue('99 mm');
    expect(box()).toBeInvalid();
    expect(box()).toHaveAccessibleDescription(/At most their length, 25\u202fmm/);
    await user.keyboard('{Escape}');
    const button = await measure(/^Collar height, .*, change, has an entry to mend$/);
    expect(button).toHaveTextContent('!');
    expect(store.getState().drafts['baffle.collar_m']?.text).toBe('99 mm');
    await user.click(button);
    expect(box()).toHaveValue('99 mm');
  });

  test('is nudged by the arrow keys like its field in the panel', async () => {
    const user = userEvent.setup();
    const { store } = renderWithDesign(<Bench />);
    await user.click(await measure(/^Side clearance/));
    await user.keyboard('{ArrowUp}{ArrowUp}{ArrowDown}');
    expect(box()).toHaveValue('0.9');
    expect(store.getState().design.baffle.sideClearance_m).toBeCloseTo(0.0009, 12);
  });

  test('closes by a click elsewhere and by its own button, and opens another in its stead', async () => {
    const user = userEvent.setup();
    renderWithDesign(<Bench />);
    const side = await measure(/^Side clearance/);
    await user.click(side);
    await user.click(screen.getByRole('heading', { name: 'Baffle' }));
    expect(screen.queryByRole('group', { name: /on the drawing/ })).toBeNull();
    await user.click(side);
    await user.click(within(editor()).getByText(/Gap between/, { selector: '.help' }));
    expect(editor()).toBeInTheDocument();
    await user.click(await measure(/^Slot width/));
    expect(editor()).toHaveAccessibleName('Slot width, on the drawing');
    await user.click(await measure(/^Slot width/));
    expect(screen.queryByRole('group', { name: /on the drawing/ })).toBeNull();
  });

  test('stays open while its measure comes to nothing', async () => {
    const user = userEvent.setup();
    const { store } = renderWithDesign(<Bench />);
    await user.click(await measure(/^Neck-down length/));
    await user.keyboard('0');
    expect(store.getState().design.plenum.neckLength_m).toBe(0);
    expect(box()).toHaveFocus();
    await user.keyboard('{Escape}');
    expect(await measure(/^Neck-down length, 0\u202fmm/)).toHaveFocus();
  });

  test('is a stop of the keyboard only in the chosen part', async () => {
    const { store } = renderWithDesign(<Bench />);
    const stops = () =>
      screen
        .getAllByRole('button', { name: /, change$/ })
        .filter(({ tabIndex }) => tabIndex === 0)
        .map((button) => button.getAttribute('aria-label')?.split(',')[0]);
    await measure(/^Side clearance/);
    expect(stops()).toEqual(expect.arrayContaining(['Side clearance', 'Collar height', 'Stand-off']));
    expect(stops()).not.toContain('Frame');
    store.getState().selectPart('fan');
    await vi.waitFor(() => expect(stops().sort()).toEqual(['Depth', 'Frame', 'Opening']));
  });
});
