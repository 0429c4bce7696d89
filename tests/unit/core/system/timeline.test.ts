import { describe, expect, test } from 'vitest';
import { fansStopped, ordinaryRun } from '../../../../src/core/system/input.ts';
import { meanPlate_K } from '../../../../src/core/system/meanPlate_K.ts';
import { solveSystem } from '../../../../src/core/system/solveSystem.ts';
import {
  afterFanStop,
  crossing_s,
  limitTimes,
  ordinaryTimeline,
  type Timeline,
  type TimePoint,
  warmUp,
} from '../../../../src/core/system/timeline.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';
import { solved } from '../../../helpers/solved.ts';

const input = sampleInput(4, 2);
const must = (timeline: Timeline | null): Timeline => {
  if (!timeline) throw new Error('the running box has an answer');
  return timeline;
};
const end = ({ points }: Timeline) => points[points.length - 1] as TimePoint;

describe('after a stop of the fans', () => {
  const timeline = must(afterFanStop(input));

  test('it begins at the temperatures of the running box and ends at those without fans', () => {
    const running = solved(input).heat;
    const [first] = timeline.points;
    expect(first?.film_K).toBeCloseTo(Math.max(...running.positions.map((p) => p.film_K)), 6);
    const stopped = solveSystem(input, fansStopped);
    if (!stopped.ok) throw new Error(stopped.reason);
    expect(timeline.settled).toBe(true);
    expect(end(timeline).film_K).toBeCloseTo(Math.max(...stopped.heat.positions.map((p) => p.film_K)), 1);
    expect(end(timeline).flow_m3PerS / stopped.air.flow_m3PerS).toBeCloseTo(1, 3);
  });

  test('films only warm, and the draught grows with them', () => {
    timeline.points.slice(1).forEach((point, i) => {
      const before = timeline.points[i] as TimePoint;
      expect(point.film_K).toBeGreaterThan(before.film_K - 1e-6);
      expect(point.time_s).toBeGreaterThan(before.time_s);
    });
    expect(timeline.points[1]?.flow_m3PerS).toBeLessThan(end(timeline).flow_m3PerS);
  });

  test('joules put in are joules carried off and kept', () => {
    expect(timeline.energy.imbalance).toBeLessThan(1e-10);
    expect(timeline.energy.stored_J).toBeGreaterThan(0);
  });

  test('steps far finer move no limit’s time by a hundredth', () => {
    const fine = limitTimes(must(afterFanStop(input, { ...ordinaryTimeline, tolerance_K: 0.01 })));
    for (const { key, time_s } of limitTimes(timeline)) {
      const other = fine.find((reached) => reached.key === key)?.time_s ?? null;
      if (time_s === null || other === null) expect(time_s).toBe(other);
      else if (time_s > 1) expect(Math.abs(time_s / other - 1)).toBeLessThan(0.01);
    }
  });

  test('a limit that was failing before is reached at once, one that never fails not at all', () => {
    const tight = { ...input, limits: { ...input.limits, joint_K: 300, sheet_K: 590 } };
    const times = limitTimes(must(afterFanStop(tight)));
    expect(times.find(({ key }) => key === 'joint')?.time_s).toBe(0);
    expect(times.find(({ key }) => key === 'sheet')?.time_s).toBeNull();
  });

  test('twice the metal takes longer', () => {
    const heavy = { ...input, sink: { ...input.sink, heat_JPerM3K: 2 * input.sink.heat_JPerM3K } };
    const toSheet = (timelineOf: Timeline) =>
      limitTimes(timelineOf).find(({ key }) => key === 'sheet')?.time_s ?? Number.NaN;
    const ratio = toSheet(must(afterFanStop(heavy))) / toSheet(timeline);
    expect(ratio).toBeGreaterThan(1.4);
    expect(ratio).toBeLessThan(2.1);
  });

  test('without a running answer there is no beginning', () => {
    expect(afterFanStop({ ...input, fan: { ...input.fan, supply_V: 1 } })).toBeNull();
  });
});

describe('the warm-up', () => {
  const timeline = must(warmUp(input));

  test('begins in the room and ends at the settled answer', () => {
    expect(timeline.points[0]?.film_K).toBeCloseTo(input.room.T_K, 2);
    expect(end(timeline).film_K).toBeCloseTo(
      Math.max(...solved(input).heat.positions.map((p) => p.film_K)),
      1,
    );
    expect(timeline.energy.imbalance).toBeLessThan(1e-10);
  });
});

describe('every place along the warm-up', () => {
  const options = { ...ordinaryTimeline, horizon_s: 40_000, untilSettled: false };
  const settledAt = (run: typeof fansStopped) => solved(input, { ...run, pulses: false }).heat;

  test.each([ordinaryRun, fansStopped])('ends where the box settles, fans $fans', (run) => {
    const last = end(must(warmUp(input, options, run)));
    const { positions, sinks } = settledAt(run);
    positions.forEach(({ joint_K }, r) => {
      expect(last.joints_K[r]).toBeCloseTo(joint_K, 1);
    });
    sinks.forEach((sink, s) => {
      expect(last.sinks_K[s] ?? 0).toBeCloseTo(meanPlate_K(sink) ?? 0, 1);
      expect(last.outsides_K[s] ?? 0).toBeCloseTo(sink?.outside_K ?? 0, 1);
    });
  });

  test('moments asked for are stepped onto, in any order, and nothing else moves by much', () => {
    const at_s = [300, 7.5, 61];
    const stopped = must(warmUp(input, { ...options, at_s }));
    for (const time_s of at_s) expect(stopped.points.some((point) => point.time_s === time_s)).toBe(true);
    const fine = must(warmUp(input, { ...options, tolerance_K: 0.005, at_s }));
    for (const time_s of at_s) {
      const [coarse, exact] = [stopped, fine].map(({ points }) =>
        points.find((point) => point.time_s === time_s),
      );
      expect(Math.abs((coarse?.film_K ?? 0) - (exact?.film_K ?? 0))).toBeLessThan(0.05);
    }
    expect(stopped.energy.imbalance).toBeLessThan(1e-10);
  });

  test('with the fans at a stand it takes longer, and the draught grows from next to nothing', () => {
    const still = must(warmUp(input, ordinaryTimeline, fansStopped));
    expect(end(still).time_s).toBeGreaterThan(end(must(warmUp(input))).time_s);
    expect(still.points[0]?.flow_m3PerS).toBeLessThan(0.2 * end(still).flow_m3PerS);
    expect(still.points[0]?.film_K).toBeCloseTo(input.room.T_K, 2);
  });

  test('a missing sink has no temperature', () => {
    const oneEnd = { ...input, hasLastSink: false };
    const timeline = must(warmUp(oneEnd));
    expect(end(timeline).sinks_K.at(-1)).toBeNull();
    expect(end(timeline).outsides_K.at(-1)).toBeNull();
  });
});

describe('the moment of a crossing', () => {
  const points = [0, 10, 20].map((time_s) => ({ time_s }) as TimePoint);

  test('lies between the points, where a straight margin says', () => {
    expect(crossing_s(points, ({ time_s }) => 13 - time_s)).toBeCloseTo(13, 6);
    expect(crossing_s(points, () => 1)).toBeNull();
    expect(crossing_s(points, () => -1)).toBe(0);
  });
});
