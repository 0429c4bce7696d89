import { describe, expect, test } from 'vitest';
import { anotherFan } from '../../../src/model/defaults.ts';
import type { Design } from '../../../src/model/design.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { fieldAt } from '../../../src/model/fields.ts';
import { getAt } from '../../../src/model/path.ts';
import type { Dimension, DrawingShape } from '../../../src/report/drawing.ts';
import { stackMeasures } from '../../../src/report/drawingMeasures.ts';
import { partOf } from '../../../src/ui/fields/groups.ts';
import { exampleIds, sampleExample, sampleOf, sampleWithoutAnswer } from '../../helpers/sampleReport.ts';

describe.each(exampleIds)('the drawing of %s', (id) => {
  const { design, outcome, report } = sampleExample(id);
  const { section, plan, parts, trunk_m } = report.drawing;

  test('keeps every shape within the bounds of its view', () => {
    for (const { bounds, shapes } of [section, plan]) {
      for (const { box } of shapes) {
        expect(box.u_m).toBeGreaterThanOrEqual(bounds.u_m - 1e-12);
        expect(box.v_m).toBeGreaterThanOrEqual(bounds.v_m - 1e-12);
        expect(box.u_m + box.width_m).toBeLessThanOrEqual(bounds.u_m + bounds.width_m + 1e-12);
        expect(box.v_m + box.height_m).toBeLessThanOrEqual(bounds.v_m + bounds.height_m + 1e-12);
        expect(box.width_m).toBeGreaterThan(0);
        expect(box.height_m).toBeGreaterThan(0);
      }
    }
  });

  test('draws every resistor once in each view, and those that are off as off', () => {
    for (const { shapes } of [section, plan]) {
      const chips = shapes.filter((shape) => shape.role === 'chip');
      expect(chips.map((chip) => chip.index)).toEqual(design.positions.map((_, i) => i));
      expect(chips.map((chip) => chip.off)).toEqual(design.positions.map((position) => !position.on));
    }
  });

  test('lays the row without gaps or overlaps, at the length that the core computes with', () => {
    const row = section.shapes.filter((shape) =>
      ['plate', 'fins', 'chip', 'bond', 'tab'].includes(shape.role),
    );
    let at = row[0]?.box.u_m ?? 0;
    for (const { box } of row) {
      expect(box.u_m).toBeCloseTo(at, 12);
      at = box.u_m + box.width_m;
    }
  });

  test('gives the ribbons of air widths that add up to the trunk', () => {
    const shares = outcome.ok ? outcome.air.passages.reduce((sum, p) => sum + p.share, 0) : 0;
    expect(shares).toBeCloseTo(1, 9);
    expect(section.streams.reduce((sum, stream) => sum + stream.width_m, 0)).toBeCloseTo(trunk_m, 9);
  });

  test('names every part with its measure, along the way of the air', () => {
    expect(
      parts.map(({ part }) => part).filter((part) => ['fan', 'plenum', 'baffle', 'sinks'].includes(part)),
    ).toEqual(['fan', 'plenum', 'baffle', 'sinks']);
    for (const { name } of parts) expect(name.length).toBeGreaterThan(3);
  });
});

describe('the drawing follows the design', () => {
  const design = exampleById('onePair');
  const roles = (changed: typeof design) =>
    sampleOf(changed).report.drawing.section.shapes.map((shape) => shape.role);

  test('a flipped resistor turns its bond to the other side', () => {
    const order = (flipped: boolean) =>
      roles({ ...design, positions: design.positions.map((position) => ({ ...position, flipped })) }).filter(
        (role) => ['bond', 'chip', 'tab'].includes(role),
      );
    expect(order(false)).toEqual(['bond', 'chip', 'tab']);
    expect(order(true)).toEqual(['tab', 'chip', 'bond']);
  });

  test('what is not fitted is not drawn', () => {
    expect(roles(design)).toContain('collar');
    expect(roles({ ...design, baffle: { ...design.baffle, fitted: false } })).not.toContain('collar');
    const none = { kind: 'none' as const, freeShare: 1, loss: 0 };
    expect(roles({ ...design, outlet: none })).not.toContain('outlet');
    expect(roles({ ...design, inlet: { ...design.inlet, guard: none } })).not.toContain('guard');
    expect(roles({ ...design, inlet: { ...design.inlet, filter: true } })).toContain('filter');
    expect(
      roles({ ...design, sink: { ...design.sink, last: false } }).filter((role) => role === 'fins'),
    ).toHaveLength(1);
  });
});

describe('dimensions', () => {
  const inputs = (design: Design) => {
    const { section, plan } = sampleOf(design).report.drawing;
    return [...section.dimensions, ...plan.dimensions].filter(({ path }) => path !== null);
  };
  const sizeOf = ({ from, to }: Dimension) => Math.hypot(from.u_m - to.u_m, from.v_m - to.v_m);

  test.each(exampleIds)('of %s are what stands in the fields, by their names and at their size', (id) => {
    const design = exampleById(id);
    for (const dimension of inputs(design)) {
      const field = fieldAt(dimension.path ?? '');
      const value = getAt(design, dimension.path ?? '') as number;
      expect(dimension.name.toLowerCase()).toContain(field.label.toLowerCase());
      expect(dimension.name).toContain(dimension.text);
      expect(partOf(dimension.path ?? ''), dimension.id).toBe(dimension.part);
      if (dimension.toScale && field.kind === 'quantity' && field.dimension === 'length')
        expect(sizeOf(dimension), dimension.id).toBeCloseTo(value, 9);
      expect(dimension.name.endsWith('not to scale')).toBe(!dimension.toScale);
    }
  });

  test('cover every measure of the box that shows in one of the views', () => {
    const paths = inputs(exampleById('eightResistors')).map(({ path }) => path);
    expect([...paths].sort()).toEqual(
      [
        ...['fan.size_m', 'fan.depth_m', 'fan.opening_m'],
        ...['plenum.height_m', 'plenum.neckLength_m', 'plenum.neckAngle_rad'],
        ...['collar_m', 'endClearance_m', 'leakGap_m', 'sheet_m', 'sideClearance_m', 'slotWidth_m'].map(
          (key) => `baffle.${key}`,
        ),
        'baffle.standOff_m',
        ...['sink.length_m', 'sink.width_m', 'sink.finHeight_m'],
        ...['box.length_m', 'box.width_m', 'box.headroom_m', 'box.sheet_m'],
      ].sort(),
    );
  });

  test('say so where they are not drawn to scale: the leak always, the neck-down where its walls slope otherwise', () => {
    const design = exampleById('eightResistors');
    const isTrue = (changed: Design, id: string) => inputs(changed).find((each) => each.id === id)?.toScale;
    expect(isTrue(design, 'leak')).toBe(false);
    expect(isTrue(design, 'angle')).toBe(false);
    const { fan, plenum } = design;
    const neckAngle_rad = 2 * Math.atan((fan.opening_m - plenum.height_m) / 2 / plenum.neckLength_m);
    expect(isTrue({ ...design, plenum: { ...plenum, neckAngle_rad } }, 'angle')).toBe(true);
  });

  test('leave the sheet those that it always had', () => {
    const main = (changed: Design) => {
      const { section, plan } = sampleOf(changed).report.drawing;
      return [...section.dimensions, ...plan.dimensions]
        .filter(({ prominence }) => prominence === 'main')
        .map(({ id }) => id)
        .sort();
    };
    const design = exampleById('eightResistors');
    expect(main(design)).toEqual(['bay', 'end', 'fan', 'fins', 'neck', 'plenum', 'row', 'side', 'width']);
    expect(main({ ...design, baffle: { ...design.baffle, fitted: false } })).toEqual([
      'bay',
      'bay',
      'fan',
      'fins',
      'neck',
      'plenum',
      'row',
    ]);
    expect(main({ ...design, plenum: { ...design.plenum, neckLength_m: 0 } })).not.toContain('neck');
  });

  test('are words that a button may be called by: what is written on it is in its name', () => {
    const bare = (text: string) => text.toLowerCase().replaceAll(',', '');
    const design = exampleById('eightResistors');
    const stack = stackMeasures(design, 0, 'metric');
    const measures = [...inputs(design), stack.plate, stack.bond, stack.chip, stack.fin];
    for (const { words, name } of measures)
      for (const written of words.slice(1)) expect(bare(name)).toContain(bare(written));
  });

  test('tell the layers of a resistor and the fins behind them', () => {
    const design = exampleById('eightResistors');
    const { plate, bond, chip, tab, fin, finGap } = stackMeasures(design, 3, 'metric');
    expect([plate, bond, chip, tab, fin, finGap].map((each) => [each?.path, each?.text])).toEqual([
      ['sink.plate_m', '2\u202fmm'],
      ['bond.filament_m', '0.15\u202fmm'],
      ['parts[0].thickness_m', '0.6\u202fmm'],
      ['secondFace.tabThickness_m', '0.5\u202fmm'],
      ['sink.finThickness_m', '0.8\u202fmm'],
      [null, '2.23\u202fmm'],
    ]);
    expect(
      stackMeasures({ ...design, secondFace: { ...design.secondFace, way: 'free' } }, 0, 'metric').tab,
    ).toBeNull();
  });
});

describe('names of parts', () => {
  test('say the main measure and the temperature that belongs to it', () => {
    const { report, outcome } = sampleExample('eightResistors');
    if (!outcome.ok) throw new Error('no answer');
    const { sinks, positions, exhaust_K, room_K } = outcome.heat;
    const celsius = (T_K: number) => `${Math.round(T_K - 273.15)}\u202f°C`;
    const most = (all: readonly (number | null | undefined)[]) =>
      celsius(Math.max(...all.map((T_K) => T_K ?? 0)));
    const names = Object.fromEntries(report.drawing.parts.map(({ part, name }) => [part, name]));
    expect(names.load).toBe('Load, 32\u202fW');
    expect(names.room).toBe('Room, 40\u202f°C');
    expect(names.fan).toBe(`Fan, 60\u202fmm frame, 12\u202fV, air ${celsius(room_K)}`);
    expect(names.sinks).toBe(
      `Sinks, 9, ${most(sinks.flatMap((sink) => [sink?.before_K, sink?.after_K]))} at the hottest`,
    );
    expect(names.resistors).toBe(
      `Resistors, 8, ${most(positions.map(({ film_K }) => film_K))} at the hottest`,
    );
    expect(names.bonds).toContain(`${most(positions.map(({ bond_K }) => bond_K))} at the hottest`);
    expect(names.box).toContain(`outside ${most(sinks.map((sink) => sink?.outside_K))} at the hottest`);
    expect(names.outlet).toContain(`air ${celsius(exhaust_K)}`);
  });

  test('go without temperatures where there is no answer', () => {
    for (const { part, name } of sampleWithoutAnswer().report.drawing.parts)
      if (part !== 'room') expect(name).not.toContain('°C');
  });

  test('follow the air, from the room to the outlet', () => {
    expect(sampleExample('eightResistors').report.drawing.parts.map(({ part }) => part)).toEqual([
      ...['load', 'room', 'guard', 'fan', 'neck', 'plenum', 'baffle'],
      ...['sinks', 'resistors', 'bonds', 'secondFace', 'box', 'outlet'],
    ]);
  });
});

describe('fans', () => {
  const eight = exampleById('eightResistors');
  const other = (place: 'beside' | 'behind', opening_m: number) => ({
    ...anotherFan(eight.fan, 0),
    place,
    opening_m,
  });
  const drawn = (change: Partial<Design['fan']>, moreFans: Design['moreFans'] = []) => {
    const { section, plan } = sampleOf({ ...eight, fan: { ...eight.fan, ...change }, moreFans }).report
      .drawing;
    const frames = (shapes: readonly DrawingShape[]) =>
      shapes.filter(({ role }) => role === 'fanFrame').map(({ box }) => box);
    const neckEnds = (shapes: readonly DrawingShape[]) => {
      const [a, b, c, d] = shapes.find(({ role }) => role === 'neck')?.corners ?? [];
      return { from: (d?.v_m ?? 0) - (a?.v_m ?? 0), to: (c?.v_m ?? 0) - (b?.v_m ?? 0), start: a?.u_m };
    };
    return {
      section: frames(section.shapes),
      plan: frames(plan.shapes),
      neck: neckEnds(section.shapes),
      planNeck: neckEnds(plan.shapes),
    };
  };

  test('side by side are lanes: all in the plan, one before the other in the section', () => {
    const { section, plan, planNeck } = drawn({ sideBySide: 3 });
    expect(section).toHaveLength(1);
    expect(plan.map(({ v_m }) => Math.round(v_m * 1000))).toEqual([-90, -30, 30]);
    expect(planNeck.from).toBeCloseTo(0.12 + eight.fan.opening_m, 9);
    expect(planNeck.to).toBeCloseTo(eight.box.width_m, 9);
  });

  test('in a row stand behind one another in both views, and the neck-down begins after the last', () => {
    const { section, plan, neck } = drawn({ inARow: 2 });
    expect(section.map(({ u_m }) => u_m)).toEqual([0, eight.fan.depth_m]);
    expect(plan.map(({ u_m }) => u_m)).toEqual([0, eight.fan.depth_m]);
    expect(neck.start).toBeCloseTo(2 * eight.fan.depth_m, 9);
  });

  test('of another kind have a lane of their own, their frame in proportion to their opening', () => {
    const { plan } = drawn({}, [other('beside', eight.fan.opening_m / 2)]);
    expect(plan.map(({ height_m }) => height_m)).toEqual([eight.fan.size_m, eight.fan.size_m / 2]);
    expect(plan[1]?.v_m).toBeCloseTo((plan[0]?.v_m ?? 0) + eight.fan.size_m, 9);
  });

  test('behind the others stand on the axis and hand the air to the neck-down', () => {
    const { section, plan, neck, planNeck } = drawn({ sideBySide: 2 }, [other('behind', 0.08)]);
    expect(section.at(-1)?.u_m).toBeCloseTo(eight.fan.depth_m, 9);
    expect((plan.at(-1)?.v_m ?? 0) + (plan.at(-1)?.height_m ?? 0) / 2).toBeCloseTo(0, 9);
    expect(neck.from).toBeCloseTo(0.08, 9);
    expect(planNeck.from).toBeCloseTo(0.08, 9);
  });
});

test('thick and thin sheet are drawn as thick as they are', () => {
  const eight = exampleById('eightResistors');
  for (const sheet_m of [0.001, 0.008]) {
    const { section } = sampleOf({
      ...eight,
      box: { ...eight.box, sheet_m },
      baffle: { ...eight.baffle, sheet_m },
    }).report.drawing;
    const floor = section.shapes.find(({ role }) => role === 'wall');
    expect(floor?.box.height_m).toBeCloseTo(sheet_m, 9);
    expect(section.shapes.find(({ role }) => role === 'baffle')?.box.height_m).toBeCloseTo(sheet_m, 9);
  }
});
