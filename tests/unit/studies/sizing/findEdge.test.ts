import { describe, expect, test } from 'vitest';
import { findEdge, type Range } from '../../../../src/studies/sizing/findEdge.ts';
import type { Standing } from '../../../../src/studies/sizing/standing.ts';

const range: Range = { low: 0, high: 10, now: 4, want: 'most', spread: 'even' };
const standing = (left_K: number | null): Standing => ({
  left_K,
  stop: { why: 'noAnswer', unsolved: { ok: false, reason: 'runaway', details: {} } },
  judged: null,
  swing: 1,
});

describe('the furthest value that does', () => {
  test.each([
    ['even', 0],
    ['fromLow', 0],
    ['ratio', 0.1],
  ] as const)('is found on a range spread %s', (spread, low) => {
    const edge = findEdge({ ...range, spread, low }, (x) => standing(50 - x * x));
    expect(edge.state).toBe('found');
    expect(edge.value).toBeCloseTo(Math.sqrt(50), 3);
    expect(edge.value).toBeLessThanOrEqual(Math.sqrt(50));
    expect(edge.here.left_K).toBeGreaterThanOrEqual(0);
    expect(edge.here.left_K).toBeLessThan(0.01);
  });

  test('lies at the lower side where less is wanted', () => {
    const edge = findEdge({ ...range, want: 'least' }, (x) => standing(x - Math.PI));
    expect(edge.value).toBeCloseTo(Math.PI, 2);
    expect(edge.value).toBeGreaterThanOrEqual(Math.PI);
  });

  test('is the end of the range where all of it does', () => {
    expect(findEdge(range, () => standing(1))).toMatchObject({ state: 'free', value: 10 });
    expect(findEdge({ ...range, want: 'least' }, () => standing(1))).toMatchObject({ value: 0 });
  });

  test('belongs to the stretch that holds the present value, not to one beyond', () => {
    const islands = (x: number) => standing(Math.sin((Math.PI * x) / 3) + 0.5); // up to 3.5, then from 5.5 on
    expect(findEdge({ ...range, now: 1 }, islands).value).toBeCloseTo(3.5, 2);
    expect(findEdge({ ...range, now: 7 }, islands).value).toBeCloseTo(9.5, 2);
  });

  test('belongs to the nearest stretch where the present value misses', () => {
    const stretch = (x: number) => standing(1 - Math.abs(x - 6)); // 5 to 7
    expect(findEdge({ ...range, now: 9 }, stretch).value).toBeCloseTo(7, 2);
    expect(findEdge({ ...range, now: 1, want: 'least' }, stretch).value).toBeCloseTo(5, 2);
  });

  test('is found on a narrow top between two looks', () => {
    const edge = findEdge(range, (x) => standing(0.1 - Math.abs(x - 6.3)));
    expect(edge).toMatchObject({ state: 'found' });
    expect(edge.value).toBeCloseTo(6.4, 2);
  });

  test('stops on the good side of a place where the answer ends', () => {
    const edge = findEdge(range, (x) => standing(x <= 5.2 ? 3 : null));
    expect(edge.state).toBe('found');
    expect(edge.value).toBeLessThanOrEqual(5.2);
    expect(edge.value).toBeCloseTo(5.2, 8);
    expect(edge.here.left_K).toBe(3);
  });

  test('out of reach is the best there is', () => {
    const edge = findEdge(range, (x) => standing(-1 - (x - 6.3) ** 2));
    expect(edge.state).toBe('out');
    expect(edge.value).toBeCloseTo(6.3, 1);
    expect(edge.here.left_K).toBeCloseTo(-1, 2);
  });

  test('without an answer anywhere is out of reach without a margin', () => {
    expect(findEdge(range, () => standing(null))).toMatchObject({ state: 'out', here: { left_K: null } });
  });
});
