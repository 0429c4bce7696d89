import { describe, expect, test } from 'vitest';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { exampleIds, sampleExample, sampleOf } from '../../helpers/sampleReport.ts';

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
