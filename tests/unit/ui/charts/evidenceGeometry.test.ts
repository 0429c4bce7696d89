import { describe, expect, test } from 'vitest';
import type { EvidenceChart } from '../../../../src/report/evidence/evidenceChart.ts';
import { evidenceReport } from '../../../../src/report/evidence/evidenceReport.ts';
import {
  evidenceGeometry,
  legendPlaces,
  marksPath,
  nearestPoint,
  powerText,
} from '../../../../src/ui/charts/evidenceGeometry.ts';
import { sampleCheck, sampleGroup } from '../../../helpers/sampleChecks.ts';

const [chart, deviation] = evidenceReport([
  sampleGroup({ checks: [sampleCheck(), sampleCheck({ printed: '1000', computed: 1000, deviation: 0 })] }),
  sampleGroup({ kind: 'from memory' }),
]).charts as [EvidenceChart, EvidenceChart];
const geometry = evidenceGeometry(chart, 560, 1);

describe('the chart of evidence', () => {
  test('has what agrees on the line from corner to corner', () => {
    const { left, right, top, bottom, x, y } = geometry;
    const up = (x(3) - left) / (right - left);
    expect((bottom - y(3)) / (bottom - top)).toBeCloseTo(up, 12);
    const flat = evidenceGeometry(deviation, 560, 1);
    expect(flat.y(0)).toBeCloseTo((flat.top + flat.bottom) / 2, 12);
  });

  test('draws the marks of a kind as one path', () => {
    const points = chart.series[0]?.points ?? [];
    expect(marksPath('worked example', points, geometry).match(/M/g)).toHaveLength(2);
  });

  test('finds the mark beside a pointer, and none far from all', () => {
    const place = { x: geometry.x(3) + 5, y: geometry.y(3) };
    expect(nearestPoint(chart, geometry, place)?.says).toContain('1000 for 1000');
    expect(nearestPoint(chart, geometry, { x: geometry.x(2), y: geometry.top })).toBe(null);
  });

  test('breaks its key into lines where it is narrow', () => {
    expect(legendPlaces(chart, 560).map(({ line }) => line)).toEqual([0, 0]);
    expect(legendPlaces(chart, 200).map(({ line }) => line)).toEqual([0, 1]);
  });

  test.each([
    [0, '1'],
    [-2, '0.01'],
    [4, '10⁴'],
    [-12, '10⁻¹²'],
  ])('labels the power %d as %s', (power, text) => {
    expect(powerText(power)).toBe(text);
  });
});
