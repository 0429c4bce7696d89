import { expect, test } from 'vitest';
import { evaluatePchip, preparePchip } from '../../../../src/core/solve/pchip.ts';
import { readTracing } from '../../../../src/model/tracing/readTracing.ts';
import { tracedCurve } from '../../../../src/model/tracing/tracedCurve.ts';
import { inventedTracing } from '../../../helpers/inventedSheet.ts';

const fan = [
  [0, 36],
  [20, 30],
  [40, 18],
  [55, 2],
] as const;

test('the curve over the picture is that of the computation, on a logarithmic sheet too', () => {
  const { map, points } = readTracing(inventedTracing(fan, { logPressure: true }), 'fan.curve', 'metric');
  if (map === null) throw new Error('no map');
  const curve = preparePchip(
    points.map(({ flow_m3PerS }) => flow_m3PerS),
    points.map(({ dp_Pa }) => dp_Pa),
  );
  const out = new Float64Array(2);
  const drawn = tracedCurve(map, points);
  expect(drawn.length).toBe(37);
  for (const place of drawn) {
    const { flow_m3PerS, dp_Pa } = map.toReading(place);
    evaluatePchip(curve, flow_m3PerS, out);
    expect(dp_Pa).toBeCloseTo(out[0] as number, 6);
  }
});

test('points whose flow does not rise have no curve', () => {
  const { map, points } = readTracing(inventedTracing(fan), 'fan.curve', 'metric');
  if (map === null) throw new Error('no map');
  expect(tracedCurve(map, points.toReversed())).toEqual([]);
  expect(tracedCurve(map, points.slice(0, 1))).toEqual([]);
});
