import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type KnownAxes, mapAxes } from '../../src/model/tracing/axisMap.ts';
import { readTracing } from '../../src/model/tracing/readTracing.ts';
import { emptyTracing, type Place, type Tracing } from '../../src/model/tracing/tracing.ts';

const runs = { seed: 20261128, numRuns: 300 };
const inside = (from: number, to: number) => fc.double({ min: from, max: to, noNaN: true });

/** A sheet turned by up to 40°, its axes 60° to 120° apart, either or both logarithmic, anywhere in a picture. */
const sheet = fc.record({
  turned_rad: inside(-0.7, 0.7),
  between_rad: inside(Math.PI / 3, (2 * Math.PI) / 3),
  flowLength_px: inside(100, 3000),
  pressureLength_px: inside(100, 3000),
  x: inside(0, 2000),
  y: inside(0, 2000),
  flowLog: fc.boolean(),
  pressureLog: fc.boolean(),
  /** Where the line of the flow marks lies along the pressure axis, and the other way round. */
  flowLineAt: inside(-0.3, 0.7),
  pressureLineAt: inside(-0.3, 0.7),
});

test('whatever way a sheet lies, place → value → place comes back to a millionth of a pixel', () => {
  fc.assert(
    fc.property(sheet, inside(-0.2, 1.2), inside(-0.2, 1.2), (drawn, u, v) => {
      const angle = drawn.turned_rad - drawn.between_rad;
      /** Where shares of both scales lie. */
      const at = (alongFlow: number, alongPressure: number): Place => ({
        x:
          drawn.x +
          alongFlow * drawn.flowLength_px * Math.cos(drawn.turned_rad) +
          alongPressure * drawn.pressureLength_px * Math.cos(angle),
        y:
          drawn.y +
          alongFlow * drawn.flowLength_px * Math.sin(drawn.turned_rad) +
          alongPressure * drawn.pressureLength_px * Math.sin(angle),
      });
      const value = (log: boolean, low: number, high: number, share: number) =>
        log ? low * (high / low) ** share : low + share * (high - low);
      const flowAt = (share: number) => value(drawn.flowLog, 0.002, 0.03, share);
      const pressureAt = (share: number) => value(drawn.pressureLog, 1, 80, share);
      const axes: KnownAxes = {
        flow: {
          log: drawn.flowLog,
          at: [at(0.1, drawn.flowLineAt), at(0.9, drawn.flowLineAt)],
          values: [flowAt(0.1), flowAt(0.9)],
        },
        pressure: {
          log: drawn.pressureLog,
          at: [at(drawn.pressureLineAt, 1), at(drawn.pressureLineAt, 0)],
          values: [pressureAt(1), pressureAt(0)],
        },
      };
      const read = mapAxes(axes);
      if (!read.ok) throw new Error(read.fault.code);
      const place = at(u, v);
      const { flow_m3PerS, dp_Pa } = read.map.toReading(place);
      expect(Math.abs(flow_m3PerS - flowAt(u))).toBeLessThan(1e-9 * 0.03);
      expect(Math.abs(dp_Pa - pressureAt(v))).toBeLessThan(1e-9 * 200);
      const back = read.map.toPlace({ flow_m3PerS, dp_Pa });
      // Below a linear zero a logarithmic scale has nothing; neither is met here.
      expect(Math.hypot((back?.x ?? 0) - place.x, (back?.y ?? 0) - place.y)).toBeLessThan(1e-6);
      expect(read.map.between_rad).toBeCloseTo(drawn.between_rad, 9);
      expect(read.map.turned_rad).toBeCloseTo(drawn.turned_rad, 9);

      // A step of one pixel any way changes a reading by what a pixel is said to be worth, at most.
      const worth = read.map.onePixel(place);
      for (const way of [0, 1, 2, 3, 4, 5]) {
        const beside = read.map.toReading({ x: place.x + Math.cos(way), y: place.y + Math.sin(way) });
        expect(Math.abs(beside.flow_m3PerS - flow_m3PerS)).toBeLessThanOrEqual(
          worth.flow_m3PerS * (1 + 1e-6),
        );
        expect(Math.abs(beside.dp_Pa - dp_Pa)).toBeLessThanOrEqual(worth.dp_Pa * (1 + 1e-6));
      }
    }),
    runs,
  );
});

test('whatever is put and typed has finite values or a reason', () => {
  const place = fc.record({ x: inside(0, 20_000), y: inside(0, 20_000) });
  const mark = fc.record({
    at: fc.option(place),
    text: fc.constantFrom('0', '1e-300', '1e300', '50', '-3', '', '5e-8 m3/s', '0,5 kPa', '1e-11', 'abc'),
  });
  const axis = (unit: string) =>
    fc.record({ log: fc.boolean(), unit: fc.constant(unit), marks: fc.tuple(mark, mark) });
  const tracing: fc.Arbitrary<Tracing> = fc.record({
    axes: fc.record({ flow: axis('m3/h'), pressure: axis('inH2O') }),
    points: fc.array(place, { maxLength: 5 }),
  });
  fc.assert(
    fc.property(tracing, (each) => {
      const { map, points } = readTracing(each, 'fan.curve', 'metric');
      for (const { flow_m3PerS, dp_Pa, problem } of points) {
        expect(Number.isFinite(flow_m3PerS) && Number.isFinite(dp_Pa)).toBe(true);
        expect(problem === null || problem.length > 10).toBe(true);
      }
      if (map !== null) expect(Object.values(map.onePixel({ x: 0, y: 9 })).every(Number.isFinite)).toBe(true);
      expect(emptyTracing('inch').axes.pressure.unit).toBe('inH2O');
    }),
    { ...runs, numRuns: 600 },
  );
});
