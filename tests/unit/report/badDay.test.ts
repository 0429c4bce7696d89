import { describe, expect, test } from 'vitest';
import { toCore } from '../../../src/model/toCore.ts';
import type { LineChart } from '../../../src/report/lineChart.ts';
import { lineChartTable } from '../../../src/report/tables.ts';
import { fanStop } from '../../../src/studies/fanStop.ts';
import { exampleIds, sampleExample, sampleOf, sampleWithoutAnswer } from '../../helpers/sampleReport.ts';

function expectDrawable({ lines, xTicks, yTicks, marks, levels }: LineChart) {
  const [left, right] = [xTicks[0] ?? 0, xTicks.at(-1) ?? 0];
  const [low, high] = [yTicks[0] ?? 0, yTicks.at(-1) ?? 0];
  for (const { points } of lines) {
    points.slice(1).forEach(({ x }, i) => {
      expect(x).toBeGreaterThanOrEqual(points[i]?.x ?? 0);
    });
    for (const { x, y } of points) {
      expect(x).toBeGreaterThanOrEqual(left - 1e-9);
      expect(x).toBeLessThanOrEqual(right + 1e-9);
      if (y !== null) expect(y).toBeGreaterThanOrEqual(low - 1e-9);
      if (y !== null) expect(y).toBeLessThanOrEqual(high + 1e-9);
    }
  }
  for (const { x } of marks) expect(x).toBeLessThanOrEqual(right);
  for (const { y } of levels) expect(y).toBeLessThanOrEqual(high);
}

describe.each(exampleIds)('the bad day of %s', (id) => {
  const { report, design } = sampleExample(id);

  test('is told in a sentence with both ratings beside it', () => {
    const study = fanStop(toCore(design));
    expect(report.fanStop.sentence).toMatch(/^If the fan stops at full load, .*\d.*\.$/);
    expect(report.fanStop.ratings.map(({ label }) => label)).toEqual(['with fan', 'without fan']);
    expect(report.fanStop.label).toContain(report.fanStop.ratings[1]?.total ?? 'none');
    expect(report.fanStop.reached).toHaveLength(study.reached.length);
  });

  test('the rating with fan is the one of the headline', () => {
    expect(report.fanStop.ratings[0]?.total).toBe(report.ratings?.total);
  });

  test('every chart stands within its axes, and its table has a row for every place', () => {
    const { derating, fanStop: stop, pulse } = report;
    const charts = [
      derating?.overAmbient,
      derating?.overAltitude,
      derating?.overSupply,
      stop.chart,
      pulse?.chart,
    ];
    for (const chart of charts) {
      if (!chart) continue;
      expectDrawable(chart);
      expect(lineChartTable(chart).rows).toHaveLength(chart.lines[0]?.points.length ?? 0);
    }
  });

  test('drift has a row for every resistor, and a time to wait', () => {
    const rows = report.drift?.rows ?? [];
    expect(rows.length).toBeGreaterThanOrEqual(design.positions.length);
    for (const { drift } of rows) expect(drift).toMatch(/^[+−]?[\d.]+\sppm$/);
    expect(report.drift?.sentence).toMatch(/from a cold start/);
  });
});

describe('a load in pulses', () => {
  test('is told with its swing and drawn over one period', () => {
    const { design } = sampleExample('onePair');
    const { report } = sampleOf({ ...design, load: { ...design.load, duty: 0.25, period_s: 8 } });
    expect(report.pulse?.sentence).toMatch(
      /^On for 2\.0\ss of every 8\.0\ss, .* swings between .* and .*\.$/,
    );
    if (!report.pulse) throw new Error('a load that goes has pulses');
    expectDrawable(report.pulse.chart);
    expect(report.limits.map(({ key }) => key)).toContain('pulse');
  });
});

describe('a fan that does not start', () => {
  test('still has a rating without it, and no time to act', () => {
    const { fanStop: stop } = sampleWithoutAnswer().report;
    expect(stop.sentence).toMatch(
      /^Without fan, the present load .* Without a fan this box may carry [\d.]+\sW/,
    );
    expect(stop.chart).toBeNull();
    expect(stop.act).toBeNull();
    expect(stop.ratings[0]?.total).toBe('–');
  });
});

describe('a fan with a dip in its curve', () => {
  test('is told with both flows, where each comes from, and what the smaller costs', () => {
    const { sentence } = sampleExample('dippingCurve').report.air ?? { sentence: '' };
    expect(sentence).toMatch(
      /can settle at 2 points: at [\d.]+\sm³\/h when it starts from rest .* at [\d.]+\sm³\/h when .*; at the smaller the hottest film has \d+\s°C and the box (holds|does not hold)/,
    );
  });
});

describe('several fans', () => {
  test('each kind has its row, with what it does to the air', () => {
    const { design } = sampleExample('eightResistors');
    const { curve, ...kind } = design.fan;
    const weak = {
      name: 'weak',
      place: 'beside' as const,
      rated_V: kind.rated_V,
      supply_V: kind.supply_V,
      start_V: kind.start_V,
      power_W: 0.2,
      opening_m: kind.opening_m,
      hub_m: kind.hub_m,
      standingLoss: kind.standingLoss,
      sound_dBA: kind.sound_dBA,
      soundAt_m: kind.soundAt_m,
      blades: kind.blades,
      rotation_PerS: kind.rotation_PerS,
      curve: curve.map(({ flow_m3PerS, dp_Pa }) => ({ flow_m3PerS: flow_m3PerS / 2, dp_Pa: dp_Pa / 8 })),
    };
    const { report } = sampleOf({ ...design, fan: { ...design.fan, sideBySide: 2 }, moreFans: [weak] });
    expect(report.air?.fans.map(({ count }) => count)).toEqual(['2', '1']);
    expect(report.air?.fans[1]?.remark).toBe('air runs back');
    expect(report.notes.map(({ code }) => code)).toContain('fanBackwards');
  });
});
