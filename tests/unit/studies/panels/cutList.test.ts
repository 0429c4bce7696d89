import { describe, expect, test } from 'vitest';
import { anotherFan } from '../../../../src/model/defaults.ts';
import type { Design } from '../../../../src/model/design.ts';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import { setAt } from '../../../../src/model/path.ts';
import { layOut } from '../../../../src/report/drawingLayout.ts';
import { type CutList, cutList } from '../../../../src/studies/panels/cutList.ts';
import { type PanelKey, roughSize } from '../../../../src/studies/panels/panel.ts';

const eight = exampleById('eightResistors');
const changed = (...changes: [string, unknown][]): Design =>
  changes.reduce((design, [path, value]) => setAt(design, path, value), eight);
const find = ({ panels }: CutList, key: PanelKey) => panels.find((panel) => panel.key === key);
function panelOf(list: CutList, key: PanelKey) {
  const panel = find(list, key);
  if (panel === undefined) throw new Error(`no ${key}`);
  return panel;
}
const mm = (value_m: number) => value_m * 1000;
const size = (list: CutList, key: PanelKey) => {
  const { length_m, width_m } = panelOf(list, key);
  return [mm(length_m), mm(width_m)];
};
const expectSize = (list: CutList, key: PanelKey, length: number, width: number) => {
  const [long, wide] = size(list, key);
  expect(long, key).toBeCloseTo(length, 2);
  expect(wide, key).toBeCloseTo(width, 2);
};
const codes = ({ faults }: CutList) => faults.map(({ code }) => code);

describe('the panels of eight in a row, as worked in a lab book', () => {
  // Bay inside 150 × 45 mm, 3 mm sheet. Height: plenum 35 + baffle 3 + stand-off 3 + fins 25 + headroom 10 = 76 mm.
  // Row: two end sinks of 12, seven of 14, eight resistors of 1.52 mm: 24 + 98 + 12.16 = 134.16 mm.
  const list = cutList(eight);

  test('floor and top have the full outside: 150 + 2 × 3 by 45 + 2 × 3', () => {
    expectSize(list, 'floor', 156, 51);
    expectSize(list, 'top', 156, 51);
  });

  test('side walls are as long and 76 high; end and front stand between them, 45 wide, the front from the plenum up', () => {
    expectSize(list, 'side', 156, 76);
    expectSize(list, 'end', 45, 76);
    expectSize(list, 'front', 45, 76 - 35);
  });

  test('the baffle has 0.1 mm of play all round, and a slot of 134.16 × 21 in its middle', () => {
    expectSize(list, 'baffle', 149.8, 44.8);
    const [slot] = panelOf(list, 'baffle').cutOuts;
    expect([slot?.x_m, slot?.y_m, slot?.width_m, slot?.height_m].map((v) => mm(v ?? 0))).toEqual(
      [74.9, 22.4, 134.16, 21].map((v) => expect.closeTo(v, 6)),
    );
  });

  test('the collar is 134.16 + 2 × 0.8 by 25 + 2 × 0.8 inside and stands 3 + 20 high; long strips cover the short', () => {
    expectSize(list, 'collarSide', 135.76 + 2 * 3, 23);
    expectSize(list, 'collarEnd', 26.6, 23);
    const [outlet] = panelOf(list, 'top').cutOuts;
    expect([outlet?.width_m, outlet?.height_m].map((v) => mm(v ?? 0))).toEqual(
      [135.76, 26.6].map((v) => expect.closeTo(v, 6)),
    );
  });

  test('the neck-down goes from 57 × 57 to 45 × 35 over 30: slants √(30² + 11²) and √(30² + 6²)', () => {
    expectSize(list, 'neckTop', Math.sqrt(900 + 121), 63.12);
    expectSize(list, 'neckSide', Math.sqrt(900 + 36), 57);
    // Over the edges of both sides, 3 mm each, seen along the edge: 3 / cos(atan(6/30)) = 3.0594.
    const top = panelOf(list, 'neckTop').taper;
    expect(mm(top?.fanEdge_m ?? 0)).toBeCloseTo(57 + 2 * 3.0594, 3);
    expect(mm(top?.bayEdge_m ?? 0)).toBeCloseTo(45 + 2 * 3.0594, 3);
    const side = panelOf(list, 'neckSide').taper;
    expect(mm(side?.fanEdge_m ?? 0)).toBeCloseTo(57, 9);
    expect(mm(side?.bayEdge_m ?? 0)).toBeCloseTo(35, 9);
  });

  test('their ends are bevelled by the slopes, 20.14° and 11.31°, the long edges by asin(sin · sin) = 3.87°', () => {
    const degrees = (value_rad: number | undefined) => ((value_rad ?? 0) * 180) / Math.PI;
    const top = panelOf(list, 'neckTop').taper;
    const side = panelOf(list, 'neckSide').taper;
    expect(degrees(top?.endBevel_rad)).toBeCloseTo(20.136, 3);
    expect(degrees(side?.endBevel_rad)).toBeCloseTo(11.31, 3);
    for (const taper of [top, side]) expect(degrees(taper?.longBevel_rad)).toBeCloseTo(3.871, 2);
    // The blank is longer by the run of the bevel: 3 · tan.
    expect(mm(top?.moreLength_m ?? 0)).toBeCloseTo((3 * 11) / 30, 9);
    expect(mm(side?.moreLength_m ?? 0)).toBeCloseTo((3 * 6) / 30, 9);
  });

  test('the four corners of a sloping panel are those of an even trapezoid', () => {
    const corners = panelOf(list, 'neckSide').corners.map(({ x_m, y_m }) => [mm(x_m), mm(y_m)]);
    const apart = Math.sqrt(936);
    expect(corners).toEqual(
      [
        [0, 0],
        [apart, 11],
        [apart, 46],
        [0, 57],
      ].map(([x, y]) => [expect.closeTo(x ?? 0, 9), expect.closeTo(y ?? 0, 9)]),
    );
  });

  test('the fan plate covers what lands on it and carries opening, hub circle and four screws 50 apart', () => {
    expectSize(list, 'fanPlate', 57 + 2 * 3.0594, 57 + (2 * 3) / Math.cos(Math.atan(11 / 30)));
    const { cutOuts, length_m, width_m } = panelOf(list, 'fanPlate');
    expect(cutOuts.map(({ kind }) => kind)).toEqual([
      'fanOpening',
      'hub',
      ...Array.from({ length: 4 }, () => 'fanScrew'),
    ]);
    for (const { kind, x_m, y_m, width_m: wide_m } of cutOuts) {
      const off = [x_m - length_m / 2, y_m - width_m / 2].map((v) => Math.abs(mm(v)));
      expect(off).toEqual(
        kind === 'fanScrew'
          ? [expect.closeTo(25, 9), expect.closeTo(25, 9)]
          : [0, 0].map(() => expect.closeTo(0, 9)),
      );
      expect(mm(wide_m)).toBeCloseTo({ fanOpening: 57, hub: 28, fanScrew: 4.5 }[kind as 'hub'], 9);
    }
  });

  test('sixteen pieces make a box, and nothing stands in the way', () => {
    expect(list.panels.reduce((sum, { perBox }) => sum + perBox, 0)).toBe(16);
    expect(list.faults).toEqual([]);
  });

  test('the rough piece has the allowance at every edge, and the run of the bevels', () => {
    expect(roughSize(panelOf(list, 'floor'), 0.002)).toEqual({
      length_m: expect.closeTo(0.16, 12),
      width_m: expect.closeTo(0.055, 12),
    });
    expect(mm(roughSize(panelOf(list, 'neckTop'), 0).length_m)).toBeCloseTo(Math.sqrt(1021) + 1.1, 9);
  });
});

describe('the panels follow the drawing', () => {
  test.each(['eightResistors', 'onePair', 'twoDozen', 'dippingCurve'] as const)(
    'of %s: height inside and row are those it is drawn with',
    (id) => {
      const design = exampleById(id);
      const { top_m, bank } = layOut(design);
      const list = cutList(design);
      expect(panelOf(list, 'end').width_m).toBeCloseTo(top_m, 12);
      if (design.baffle.fitted)
        expect(panelOf(list, 'baffle').cutOuts[0]?.width_m).toBeCloseTo(bank.row_m, 12);
      expect(list.faults).toEqual([]);
    },
  );

  test('a tilted box is cut like one that stands', () => {
    expect(cutList(changed(['box.tilt_rad', 1])).panels).toEqual(cutList(eight).panels);
  });

  test('walls and baffle of different sheet are told apart, the thinner first', () => {
    const list = cutList(changed(['baffle.sheet_m', 0.002]));
    expect(list.sheets.map(({ thickness_m, panels }) => [thickness_m, panels])).toEqual([
      [0.002, 5],
      [0.003, 11],
    ]);
    // Everything above the baffle comes down by a millimetre.
    expect(mm(panelOf(list, 'side').width_m)).toBeCloseTo(75, 9);
    expect(mm(panelOf(list, 'collarSide').length_m)).toBeCloseTo(135.76 + 4, 9);
  });

  test('without a baffle there is none, and no collar; the outlet is the bay, so there is no top', () => {
    const list = cutList(changed(['baffle.fitted', false]));
    for (const key of ['baffle', 'collarSide', 'collarEnd', 'top'] as const)
      expect(find(list, key)).toBeUndefined();
    expect(list.faults).toEqual([]);
  });

  test('where the walls are as near as the collar, they are the collar', () => {
    const list = cutList(changed(['box.width_m', 0.0266]));
    expect(find(list, 'collarSide')).toBeUndefined();
    expectSize(list, 'collarEnd', 26.6, 23);
    expect(codes(list)).toEqual([]);
  });

  test('where less than a sheet is left for the collar, its strips are left out and the room is told', () => {
    const list = cutList(changed(['box.width_m', 0.03]));
    expect(find(list, 'collarSide')).toBeUndefined();
    const [fault] = list.faults;
    expect(fault).toMatchObject({ code: 'collarHasNoRoom', where: 'side', sheet_m: 0.003 });
    expect(fault?.code === 'collarHasNoRoom' && mm(fault.room_m)).toBeCloseTo(1.7, 9);
  });
});

describe('the fan end', () => {
  test('without a neck-down the plate covers mouth and frame, and a fan wider than the mouth is told', () => {
    const list = cutList(changed(['plenum.neckLength_m', 0]));
    expect(find(list, 'neckTop')).toBeUndefined();
    expectSize(list, 'fanPlate', 60, 60);
    expect(codes(list)).toEqual(['mouthTooSmall']);
    const [mouth] = panelOf(list, 'fanPlate').cutOuts;
    expect([mm(mouth?.width_m ?? 0), mm(mouth?.height_m ?? 0)]).toEqual([
      expect.closeTo(45, 9),
      expect.closeTo(35, 9),
    ]);
  });

  test('without a neck-down a fan that fits the mouth has a round opening', () => {
    const list = cutList(
      changed(
        ['plenum.neckLength_m', 0],
        ['fan.size_m', 0.03],
        ['fan.opening_m', 0.028],
        ['fan.hub_m', 0.012],
        ['cutting.fanHole_m', 0.0032],
      ),
    );
    expect(list.faults).toEqual([]);
    expectSize(list, 'fanPlate', 51, 41);
    expect(panelOf(list, 'fanPlate').cutOuts[0]).toMatchObject({ kind: 'fanOpening', round: true });
  });

  test('fans side by side widen plate and neck-down; fans in a row do not', () => {
    const beside = cutList(changed(['fan.sideBySide', 2]));
    // From rim to rim of two openings: 60 + 57 mm; the sides close by (117 − 45) / 2 = 36 over 30.
    expect(mm(panelOf(beside, 'neckTop').taper?.slant_m ?? 0)).toBeCloseTo(Math.hypot(30, 11), 9);
    expect(mm(panelOf(beside, 'neckSide').taper?.slant_m ?? 0)).toBeCloseTo(Math.hypot(30, 36), 9);
    expect(mm(panelOf(beside, 'fanPlate').length_m)).toBeCloseTo(117 + 6 * Math.hypot(1, 36 / 30), 9);
    const openings = panelOf(beside, 'fanPlate').cutOuts.filter(({ kind }) => kind === 'fanOpening');
    expect(mm((openings[1]?.x_m ?? 0) - (openings[0]?.x_m ?? 0))).toBeCloseTo(60, 9);
    expect(cutList(changed(['fan.inARow', 3])).panels).toEqual(cutList(eight).panels);
  });

  test('a further fan beside the first has an opening of its own; one behind has none', () => {
    const other = { ...anotherFan(eight.fan, 0), opening_m: 0.037, hub_m: 0.015 };
    const beside = cutList({ ...eight, moreFans: [other] });
    const openings = panelOf(beside, 'fanPlate').cutOuts.filter(({ kind }) => kind === 'fanOpening');
    expect(openings.map(({ width_m }) => mm(width_m))).toEqual([57, 37].map((v) => expect.closeTo(v, 9)));
    expect(beside.faults).toEqual([]);
    expect(cutList({ ...eight, moreFans: [{ ...other, place: 'behind' }] }).panels).toEqual(
      cutList(eight).panels,
    );
  });

  test('a neck-down that widens towards the box has its slopes the other way', () => {
    const { neckTop, neckSide } = Object.fromEntries(
      cutList(changed(['plenum.height_m', 0.077], ['box.width_m', 0.097])).panels.map((panel) => [
        panel.key,
        panel,
      ]),
    );
    expect(mm(neckTop?.taper?.slant_m ?? 0)).toBeCloseTo(Math.hypot(30, 10), 9);
    expect(mm(neckSide?.taper?.slant_m ?? 0)).toBeCloseTo(Math.hypot(30, 20), 9);
    expect(mm(neckSide?.taper?.bayEdge_m ?? 0)).toBeCloseTo(77, 9);
  });

  test('a neck-down as wide as the box is square at its long edges', () => {
    const { taper } = panelOf(cutList(changed(['box.width_m', 0.057])), 'neckTop');
    expect(taper?.longBevel_rad).toBeCloseTo(0, 12);
    expect(mm(taper?.fanEdge_m ?? 0)).toBeCloseTo(63, 9);
  });

  test('one that widens one way and narrows the other needs a wider blank for its bevel', () => {
    const { taper } = panelOf(cutList(changed(['box.width_m', 0.097])), 'neckSide');
    // Slopes: atan(11/30) in, atan(20/30) out.
    const corner = Math.asin(Math.sin(Math.atan(11 / 30)) * Math.sin(Math.atan(20 / 30)));
    expect(mm(taper?.moreWidth_m ?? 0)).toBeCloseTo(2 * 3 * Math.tan(corner), 9);
  });

  test('a neck-down too short for its taper is left out and told', () => {
    const list = cutList(changed(['plenum.neckLength_m', 0.002]));
    expect(find(list, 'neckTop')).toBeUndefined();
    expect(codes(list)).toContain('neckTooSteep');
  });

  test('an unknown frame has no screw holes until its pitch is entered', () => {
    const odd = changed(['fan.size_m', 0.065]);
    const unknown = cutList(odd);
    expect(unknown.faults).toEqual([{ code: 'pitchUnknown', frame_m: 0.065 }]);
    expect(panelOf(unknown, 'fanPlate').cutOuts.some(({ kind }) => kind === 'fanScrew')).toBe(false);
    const entered = cutList(setAt(odd, 'cutting.fanPitch_m', 0.054));
    const screws = panelOf(entered, 'fanPlate').cutOuts.filter(({ kind }) => kind === 'fanScrew');
    expect(mm((screws[1]?.x_m ?? 0) - (screws[0]?.x_m ?? 0))).toBeCloseTo(54, 9);
    expect(entered.faults).toEqual([]);
  });

  test('screws in the opening, or outside the frame, are told', () => {
    expect(cutList(changed(['cutting.fanPitch_m', 0.042])).faults).toContainEqual({
      code: 'meet',
      panel: 'fanPlate',
      one: 'fanOpening',
      other: 'fanScrew',
    });
    expect(codes(cutList(changed(['cutting.fanPitch_m', 0.06])))).toContain('pitchPastFrame');
  });
});

describe('tabs and slots', () => {
  const list = cutList(changed(['cutting.joint', 'slotted']));

  test('let a panel grow by the sheet that takes its tabs, which then end flush outside', () => {
    expectSize(list, 'end', 45 + 2 * 3, 76 + 3);
    expectSize(list, 'side', 156, 76 + 3);
    expectSize(list, 'front', 45 + 2 * 3, 41);
    expectSize(list, 'baffle', 149.8, 45 + 2 * 3);
    expectSize(list, 'floor', 156, 51);
    expect(list.faults).toEqual([]);
  });

  test('have a slot of the sheet and twice the allowance for every tab of the baffle', () => {
    const mortises = panelOf(list, 'side').cutOuts.filter(({ kind }) => kind === 'mortise');
    // 149.8 over three times 12: four tabs.
    expect(mortises).toHaveLength(4);
    for (const { width_m, height_m, y_m } of mortises) {
      expect(mm(width_m)).toBeCloseTo(12.2, 9);
      expect(mm(height_m)).toBeCloseTo(3.2, 9);
      // Middle of the baffle's sheet over the underside of the wall's tabs: 3 + 35 + 1.5.
      expect(mm(y_m)).toBeCloseTo(39.5, 9);
    }
    expect(list.milled[0]).toMatchObject({ kind: 'mortise', fits: true });
    expect(mm(list.milled[0]?.widest_m ?? 0)).toBeCloseTo(3.2, 9);
  });

  test('every tab has its notch: as long and twice the allowance more, at the same place along the edge', () => {
    /** Where tabs stand out to the left of a panel, or below it: their middles along that edge. */
    const tabs = (key: PanelKey, axis: 'x_m' | 'y_m') => {
      const along = axis === 'x_m' ? 'y_m' : 'x_m';
      const tips = panelOf(list, key)
        .corners.filter((spot) => spot[axis] === 0)
        .map((spot) => mm(spot[along]))
        .sort((a, b) => a - b);
      return tips.flatMap((tip, i) => (i % 2 === 0 ? [(tip + (tips[i + 1] ?? 0)) / 2] : []));
    };
    const notched = (key: PanelKey, at: (cut: { x_m: number; y_m: number }) => boolean) =>
      panelOf(list, key).cutOuts.filter((cut) => cut.kind === 'notch' && at(cut));
    const near = (values: number[]) => values.map((value) => expect.closeTo(value, 6));

    // The end wall's tabs are 3 mm above its own lower tips, as the side wall's notches are above its own.
    const rightOfSide = notched('side', ({ x_m }) => x_m > 0.1);
    expect(rightOfSide.map(({ y_m }) => mm(y_m))).toEqual(near(tabs('end', 'x_m')));
    // The front wall begins 35 mm up.
    const leftOfSide = notched('side', ({ x_m }) => x_m < 0.1);
    expect(leftOfSide.map(({ y_m }) => mm(y_m) - 38)).toEqual(near(tabs('front', 'x_m')));
    const belowSide = notched('floor', ({ y_m }) => y_m < 0.01);
    expect(belowSide.map(({ x_m }) => mm(x_m))).toEqual(near(tabs('side', 'y_m')));
    const belowEnd = notched('floor', ({ x_m }) => x_m > 0.153);
    expect(belowEnd.map(({ y_m }) => mm(y_m))).toEqual(near(tabs('end', 'y_m')));
    for (const { width_m, height_m } of [...rightOfSide, ...leftOfSide])
      expect([mm(width_m), mm(height_m)]).toEqual(near([3.1, 12.2]));
    for (const { width_m, height_m } of belowSide)
      expect([mm(width_m), mm(height_m)]).toEqual(near([12.2, 3.1]));
  });

  test('an edge too short for a tab is told', () => {
    const coarse = cutList(changed(['cutting.joint', 'slotted'], ['cutting.tab_m', 0.025]));
    expect(coarse.faults).toContainEqual({ code: 'noTabs', edge_m: expect.closeTo(0.041, 9), tab_m: 0.025 });
  });
});

describe('mills, holes and stock', () => {
  test('a mill leaves corners of half its diameter and takes (4 − π) r² from the slot', () => {
    const slot = cutList(changed(['cutting.cutter_m', 0.006])).milled.find(({ kind }) => kind === 'slot');
    expect(slot).toMatchObject({ fits: true, corner_m: 0.003 });
    expect(mm(slot?.widest_m ?? 0)).toBeCloseTo(21, 9);
    expect(slot?.cornerShare).toBeCloseTo(((4 - Math.PI) * 9) / (134.16 * 21), 9);
  });

  test('a slot narrower than the mill does not take it', () => {
    const list = cutList(changed(['baffle.slotWidth_m', 0.0025]));
    expect(list.milled[0]).toMatchObject({ kind: 'slot', fits: false, corner_m: 0 });
  });

  test('a wire hole stands in the end wall midway between baffle and top', () => {
    const [hole] = panelOf(cutList(changed(['cutting.wireHole_m', 0.008])), 'end').cutOuts;
    expect(hole).toMatchObject({ kind: 'wireHole', round: true, width_m: 0.008 });
    expect([mm(hole?.x_m ?? 0), mm(hole?.y_m ?? 0)]).toEqual([22.5, 57].map((v) => expect.closeTo(v, 9)));
    expect(cutList(changed(['cutting.wireHole_m', 0.05])).faults).toContainEqual({
      code: 'outside',
      panel: 'end',
      kind: 'wireHole',
    });
  });

  test('a slot that leaves no baffle, or reaches under the collar, is told', () => {
    expect(codes(cutList(changed(['baffle.slotWidth_m', 0.0449])))).toContain('slotPastBaffle');
    expect(cutList(changed(['baffle.slotWidth_m', 0.03])).faults).toContainEqual({
      code: 'slotUnderCollar',
      slot_m: 0.03,
      collar_m: expect.closeTo(0.0266, 12),
    });
  });

  test('the sheet for all boxes is counted in the rough, and at least so many stock sheets', () => {
    const twelve = cutList(changed(['cutting.boxes', 12]));
    const [one] = cutList(eight).sheets;
    const [all] = twelve.sheets;
    expect(all?.panels).toBe(12 * 16);
    expect(all?.area_m2).toBeCloseTo(12 * (one?.area_m2 ?? 0), 12);
    expect(all?.leastSheets).toBe(Math.ceil((all?.area_m2 ?? 0) / 0.24));
    expect(all).toMatchObject({ largest: 'side', tooLarge: [] });
  });

  test('a panel larger than the stock, whichever way it is turned, is named', () => {
    const tooLarge = (length_m: number, width_m: number) =>
      cutList(changed(['cutting.stockLength_m', length_m], ['cutting.stockWidth_m', width_m])).sheets[0]
        ?.tooLarge;
    expect(tooLarge(0.158, 0.078)).toEqual([]);
    expect(tooLarge(0.078, 0.158)).toEqual([]);
    expect(tooLarge(0.157, 0.2)).toEqual([]);
    expect(tooLarge(0.15, 0.15)).toEqual(['floor', 'side', 'top', 'baffle']);
    // The sloping panels, 65.1 the one way and 35.1 the other, fit turned.
    expect(tooLarge(0.2, 0.06)).toEqual(['side', 'fanPlate']);
  });
});
