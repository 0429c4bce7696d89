import { describe, expect, test } from 'vitest';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import { benchCheckJob } from '../../../../src/studies/bench/check.ts';
import { benchCourse, benchCourseJob } from '../../../../src/studies/bench/course.ts';
import { runJob } from '../../../../src/studies/job.ts';

const design = exampleById('prototype');

describe('the computed warm-up behind readings', () => {
  test('starts at the room, rises, and passes through the values computed for the readings', () => {
    const course = runJob(benchCourseJob, { design });
    const [line, ...others] = course?.lines ?? [];
    if (line === undefined) throw new Error('no line');
    expect(others).toEqual([]);
    expect(line).toMatchObject({ where: 'onSink', number: 3, readings: [9, 10, 11] });
    expect(line.points[0]).toEqual({ time_s: 0, T_K: 296.35 });
    const rises = line.points.slice(1).every(({ T_K }, i) => (T_K ?? 0) >= (line.points[i]?.T_K ?? 0) - 0.01);
    expect(rises).toBe(true);
    const last = runJob(benchCheckJob, { design }).readings[11];
    expect(line.points.at(-1)?.time_s).toBeCloseTo(480, 9);
    expect(line.points.at(-1)?.T_K).toBeCloseTo(last?.computed ?? 0, 1);
  });

  test('is none where fewer than two readings of one warm-up are there, or the box has no load', () => {
    const { temperatures } = design.readings;
    const readings = { ...design.readings, temperatures: temperatures.slice(0, 10) };
    expect(benchCourse({ design: { ...design, readings } })).toBeNull();
    const off = design.positions.map((position) => ({ ...position, on: false }));
    expect(benchCourse({ design: { ...design, positions: off } })).toBeNull();
  });
});
