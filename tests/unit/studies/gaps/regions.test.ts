import { describe, expect, test } from 'vitest';
import { goodGaps, verdictSpans } from '../../../../src/studies/gaps/regions.ts';
import { sampleGap } from '../../../helpers/sampleGaps.ts';

describe('spans of one verdict', () => {
  test('cut all that was looked at', () => {
    const { line } = sampleGap('sideClearance_m', [0, 4]);
    const spans = verdictSpans(line);
    expect(spans.map(({ state }) => state)).toEqual(['little', 'fails']);
    expect(spans[0]?.from_m).toBe(0);
    expect(spans[1]?.to_m).toBeCloseTo(0.01, 9);
  });

  test('are one without a change, and none where nothing can be built', () => {
    expect(verdictSpans(sampleGap('leakGap_m', [0, 0.1]).line)).toHaveLength(1);
    const { line } = sampleGap('sideClearance_m', [1]);
    expect(verdictSpans({ ...line, points: [], changes: [] })).toEqual([]);
  });
});

describe('good gaps', () => {
  const { line } = sampleGap('sideClearance_m');

  test('lie within a kelvin of the coolest, on both sides', () => {
    const good = goodGaps(line, 0.0008, 1);
    expect(good).toMatchObject({ below: 'film', above: 'film', span: { state: 'little' } });
    expect(good?.from_m).toBeCloseTo(0.000385, 5);
    expect(good?.to_m).toBeCloseTo(0.00168, 5);
    expect(good?.hottest_K).toBeLessThanOrEqual((good?.coolest.film_K ?? 0) + 1);
  });

  test('end where nothing beyond can be built', () => {
    expect(goodGaps(line, 0.0008, 100)).toMatchObject({
      below: 'room',
      above: 'curve',
      from_m: 0,
      to_m: 0.004,
    });
  });

  test('end where the verdict changes, and keep to the better one', () => {
    const whole = sampleGap('sideClearance_m', [0, 5, 10]).line;
    const good = goodGaps(whole, 0.0008, 100);
    expect(good).toMatchObject({ above: 'verdict', span: { state: 'little' } });
    expect(good?.to_m).toBeCloseTo(0.00972, 5);
  });
});
