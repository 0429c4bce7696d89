import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Design } from '../../src/model/design.ts';
import { exampleById } from '../../src/model/examples/examples.ts';
import { cutReport } from '../../src/report/cutReport.ts';
import { cutList } from '../../src/studies/panels/cutList.ts';
import { doMeet, isInside } from '../../src/studies/panels/faults.ts';
import type { CutOut, Panel } from '../../src/studies/panels/panel.ts';
import { arbitraryDesign } from '../helpers/arbitraryDesign.ts';
import { assembleBox, isStopped, type Point, pieceOf, shared_m3 } from '../helpers/assembledBox.ts';

const eight = exampleById('eightResistors');
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Boxes round the same row, each with a baffle and room for its collar. */
const closedBox: fc.Arbitrary<Design> = fc
  .record({
    wall_m: between(0.001, 0.008),
    sheet_m: between(0.001, 0.005),
    length_m: between(0.15, 0.4),
    width_m: between(0.04, 0.15),
    plenum_m: between(0.008, 0.12),
    neck_m: fc.oneof({ weight: 3, arbitrary: between(0.02, 0.2) }, { weight: 1, arbitrary: fc.constant(0) }),
    opening_m: between(0.02, 0.13),
    beside: fc.integer({ min: 1, max: 3 }),
  })
  .map((drawn) => ({
    ...eight,
    box: { ...eight.box, sheet_m: drawn.wall_m, length_m: drawn.length_m, width_m: drawn.width_m },
    baffle: { ...eight.baffle, sheet_m: drawn.sheet_m },
    plenum: { ...eight.plenum, height_m: drawn.plenum_m, neckLength_m: drawn.neck_m },
    fan: {
      ...eight.fan,
      size_m: drawn.opening_m * 1.06,
      opening_m: drawn.opening_m,
      hub_m: drawn.opening_m * 0.4,
      sideBySide: drawn.beside,
    },
  }))
  .filter((design) => cutList(design).measures.tooSteep_rad === null);

const area = ({ length_m, width_m }: Panel) => length_m * width_m;
const trapezoid = ({ taper }: Panel) =>
  taper ? ((taper.fanEdge_m + taper.bayEdge_m) / 2) * taper.slant_m : Number.NaN;

/** Looks from close to a spot on a seam straight outwards, along one axis after the other: where a gap would be. */
function looksOut(on: Point, middle: Point): [from: Point, through: Point][] {
  const inwards = on.map((at, axis) => Math.sign((middle[axis] as number) - at));
  const from = on.map((at, axis) => at + 2e-4 * (inwards[axis] as number)) as unknown as Point;
  return [0, 1, 2]
    .filter((axis) => inwards[axis] !== 0)
    .map((axis) => [
      from,
      from.map((at, i) => (i === axis ? at - (inwards[axis] as number) : at)) as unknown as Point,
    ]);
}

function spotOn([from, to]: readonly [Point, Point], share: number): Point {
  return from.map((start, axis) => start + share * ((to[axis] as number) - start)) as unknown as Point;
}

/** Flat area between four corners. */
function quad_m2(corners: readonly (readonly [number, number, number])[]): number {
  const [a, b, c, d] = corners as readonly [Point, Point, Point, Point];
  const minus = (p: Point, q: Point): Point => [p[0] - q[0], p[1] - q[1], p[2] - q[2]];
  const half = (p: Point, q: Point) =>
    Math.hypot(p[1] * q[2] - p[2] * q[1], p[2] * q[0] - p[0] * q[2], p[0] * q[1] - p[1] * q[0]) / 2;
  return half(minus(b, a), minus(c, a)) + half(minus(c, a), minus(d, a));
}

describe('a box put together from its list', () => {
  test('has no two panels in one place', () => {
    fc.assert(
      fc.property(closedBox, (design) => {
        const { blocks } = assembleBox(design, cutList(design).panels);
        blocks.forEach((one, i) => {
          for (const other of blocks.slice(i + 1))
            expect(shared_m3(one, other), `${one.name}, ${other.name}`).toBeLessThan(1e-15);
        });
      }),
    );
  });

  test('lets no look out, least of all along its seams, but by its openings', () => {
    const share = fc.array(fc.tuple(between(0, 1), between(0, 1), between(0, 1)), {
      minLength: 3,
      maxLength: 3,
    });
    fc.assert(
      fc.property(closedBox, share, (design, shares) => {
        const box = assembleBox(design, cutList(design).panels);
        const step_m = design.box.sheet_m / 4;
        for (const { middle, seams } of box.rooms)
          for (const seam of seams)
            for (const [at] of shares) {
              const looks = looksOut(spotOn(seam, at), middle);
              const stopped = looks.map(([from, through]) => isStopped(box, from, through, step_m, 3));
              expect(stopped).not.toContain(false);
            }
        for (const [x, y, z] of shares) {
          const { middle } = box.rooms[0] as (typeof box.rooms)[number];
          const way = [x - 0.5, y - 0.5, z - 0.5].map((v) => v || 0.1);
          const through = middle.map((start, axis) => start + (way[axis] as number)) as unknown as Point;
          expect(isStopped(box, middle, through, step_m, 3)).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('is found open when a panel is too short or a slope stops early', () => {
    const { panels } = cutList(eight);
    const shorter = (key: Panel['key'], by_m: number) =>
      panels.map((panel) => {
        if (panel.key !== key) return panel;
        const { taper } = panel;
        return taper
          ? { ...panel, taper: { ...taper, slant_m: taper.slant_m - by_m } }
          : { ...panel, length_m: panel.length_m - by_m };
      });
    const isOpen = (made: readonly Panel[]) => {
      const box = assembleBox(eight, made);
      return box.rooms.some(({ middle, seams }) =>
        seams.some((seam) =>
          [0.2, 0.5, 0.8].some((at) =>
            looksOut(spotOn(seam, at), middle).some(
              ([from, through]) => !isStopped(box, from, through, 0.0005, 3),
            ),
          ),
        ),
      );
    };
    expect(isOpen(panels)).toBe(false);
    for (const [key, by_m] of [
      ['floor', 0.0065],
      ['top', 0.0065],
      ['end', 0.001],
      ['neckTop', 0.002],
      ['neckSide', 0.002],
    ] as const)
      expect(isOpen(shorter(key, by_m)), key).toBe(true);
  });

  test('has as much inside face as the room inside has surface', () => {
    fc.assert(
      fc.property(closedBox, (design) => {
        const { panels } = cutList(design);
        const { sheet_m: t, length_m: L, width_m: W } = design.box;
        const { height_m: H, neckLength_m: n } = design.plenum;
        const high =
          H + design.baffle.sheet_m + design.baffle.standOff_m + design.sink.length_m + design.box.headroom_m;
        const wide = (design.fan.sideBySide - 1) * design.fan.size_m + design.fan.opening_m;
        const tall = design.fan.opening_m;
        const piece = (key: Panel['key']) => pieceOf(panels, key);
        // Faces less what other edges cover of them: floor under three walls, sides at both ends, top on the walls.
        const [end, front, side] = [piece('end'), piece('front'), piece('side')];
        const faces =
          area(piece('floor')) -
          2 * t * side.length_m -
          t * end.length_m +
          2 * (area(side) - t * end.width_m - t * front.width_m) +
          area(end) +
          area(front) +
          area(piece('top')) -
          2 * t * side.length_m -
          t * (end.length_m + front.length_m) +
          t * front.length_m;
        const bay = 2 * L * W + 2 * (L + W) * high - W * H;
        const throat = 2 * t * (W + H);
        expect(faces).toBeCloseTo(bay + throat, 10);
        if (n === 0) return;
        const covered = 2 * t * Math.hypot(1, (wide - W) / 2 / n) * piece('neckTop').length_m;
        const slopes = 2 * (trapezoid(piece('neckTop')) - covered) + 2 * trapezoid(piece('neckSide'));
        const [a, b] = [-t - n, -t];
        const upper = quad_m2([
          [a, -wide / 2, tall / 2],
          [a, wide / 2, tall / 2],
          [b, W / 2, H / 2],
          [b, -W / 2, H / 2],
        ]);
        const beside = quad_m2([
          [a, wide / 2, -tall / 2],
          [a, wide / 2, tall / 2],
          [b, W / 2, H / 2],
          [b, W / 2, -H / 2],
        ]);
        expect(slopes).toBeCloseTo(2 * (upper + beside), 10);
      }),
    );
  });
});

describe.each(['usual', 'hard'] as const)('the list of any design, %s', (flavour) => {
  test('has no size that is none, and every cut-out lies within its panel apart from the others, or is told', () => {
    fc.assert(
      fc.property(arbitraryDesign(flavour), (design) => {
        const { panels, faults, milled, sheets } = cutList(design);
        const numbers: number[] = [];
        JSON.stringify([panels, milled, sheets], (_, value: unknown) => {
          if (typeof value === 'number') numbers.push(value);
          return value;
        });
        expect(numbers.every(Number.isFinite)).toBe(true);
        for (const { key, length_m, width_m, thickness_m, cutOuts, corners } of panels) {
          expect(Math.min(length_m, width_m, thickness_m), key).toBeGreaterThan(0);
          const reaches = (at_m: number, most_m: number) => at_m >= -1e-12 && at_m <= most_m + 1e-12;
          expect(corners.every(({ x_m, y_m }) => reaches(x_m, length_m) && reaches(y_m, width_m))).toBe(true);
          const isTold = (wanted: string, cut: CutOut) =>
            faults.some(
              (fault) =>
                (fault.code === 'outside' &&
                  fault.panel === key &&
                  fault.kind === cut.kind &&
                  wanted === 'outside') ||
                (fault.code === 'meet' && fault.panel === key && [fault.one, fault.other].includes(cut.kind)),
            );
          const cut = cutOuts.filter(({ kind }) => kind !== 'hub');
          const untold = cut.filter(
            (one, i) =>
              (!isInside(one, length_m, width_m) && !isTold('outside', one)) ||
              (cut.slice(i + 1).some((each) => doMeet(one, each)) && !isTold('meet', one)),
          );
          expect(untold, key).toEqual([]);
        }
      }),
      { numRuns: 120 },
    );
  });

  test('counts for many boxes what it counts for one, so many times, and is put in words', () => {
    fc.assert(
      fc.property(arbitraryDesign(flavour), fc.integer({ min: 1, max: 1000 }), (design, boxes) => {
        const one = cutReport({ ...design, cutting: { ...design.cutting, boxes: 1 } }, undefined, 'metric');
        const many = cutReport({ ...design, cutting: { ...design.cutting, boxes } }, undefined, 'inch');
        expect(many.panels.map(({ inAll }) => inAll)).toEqual(one.panels.map(({ inAll }) => inAll * boxes));
        expect(many.panels.map(({ perBox }) => perBox)).toEqual(one.panels.map(({ perBox }) => perBox));
        expect(JSON.stringify([one, many])).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 80 },
    );
  });
});
