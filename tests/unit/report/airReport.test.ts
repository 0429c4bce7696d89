import { describe, expect, test } from 'vitest';
import type { AirOutcome, FanOutcome } from '../../../src/core/system/outcome.ts';
import { anotherFan } from '../../../src/model/defaults.ts';
import { airReport } from '../../../src/report/airReport.ts';
import { sampleExample, sampleOf } from '../../helpers/sampleReport.ts';

const { design, outcome } = sampleExample('eightResistors');
if (!outcome.ok) throw new Error('the example has no answer');
const { air } = outcome;
const plain = (text: string) => text.replaceAll('\u202f', ' ');
const reportOf = (change: Partial<AirOutcome>, system: 'metric' | 'inch' = 'metric') =>
  airReport({ air: { ...air, ...change }, listening_m: 1.5, curves: null, lower: null, system });

const fan = (index: number, change: Partial<FanOutcome> = {}): FanOutcome => ({
  index,
  count: 1,
  speedRatio: 1,
  flow_m3PerS: 0.005,
  dp_Pa: 20,
  backwards: false,
  bladePass_Hz: 350,
  ...change,
});

describe('the sound', () => {
  test('is told at its distance with the tone of the blades, every tone once', () => {
    const fans = [fan(0, { count: 2 }), fan(1), fan(2, { bladePass_Hz: 480 })];
    expect(plain(reportOf({ sound_dBA: 36.4, fans }).sound)).toBe(
      'Sound: 36 dB(A) at 1.5 m, with a tone at 350 Hz and 480 Hz.',
    );
  });

  test('has no tone of a fan that stands still, and is not told where none turns', () => {
    const fans = [fan(0), fan(1, { speedRatio: 0, bladePass_Hz: 0 })];
    expect(plain(reportOf({ sound_dBA: 32, fans }).sound)).toMatch(/with a tone at 350 Hz\.$/);
    expect(reportOf({ sound_dBA: null }).sound).toBe('');
  });
});

describe('the fans', () => {
  test('have a row for each kind, with what one of them does and how it stands', () => {
    const fans = [
      fan(0, { count: 2, speedRatio: 0.9 }),
      fan(1, { backwards: true, flow_m3PerS: -0.001 }),
      fan(2, { speedRatio: 0, backwards: true }),
    ];
    const rows = reportOf({ fans }).fans.map(({ amounts: _, ...texts }) =>
      plain(Object.values(texts).join('|')),
    );
    expect(rows).toEqual([
      'Fan|2|90 %|18 m³/h|20 Pa|350 Hz|',
      'Fan of kind 2|1|100 %|−3.6 m³/h|20 Pa|350 Hz|air runs back',
      'Fan of kind 3|1|0 %|18 m³/h|20 Pa|–|stands still',
    ]);
  });

  test('of a design are counted as they were entered, and a weak one beside strong ones is told', () => {
    const { name, ...kind } = anotherFan(design.fan, 0);
    const curve = kind.curve.map(({ flow_m3PerS, dp_Pa }) => ({
      flow_m3PerS: flow_m3PerS / 2,
      dp_Pa: dp_Pa / 8,
    }));
    const { report } = sampleOf({
      ...design,
      fan: { ...design.fan, sideBySide: 2 },
      moreFans: [{ name, ...kind, curve }],
    });
    expect(report.air?.fans.map(({ count }) => count)).toEqual(['2', '1']);
    expect(report.air?.fans[1]?.remark).toBe('air runs back');
    expect(report.notes.map(({ code }) => code)).toContain('fanBackwards');
  });
});

test('a fan with a dip in its curve is told with both flows, where each comes from, and what the smaller costs', () => {
  const { sentence } = sampleExample('dippingCurve').report.air ?? { sentence: '' };
  expect(sentence).toMatch(
    /can settle at 2 points: at [\d.]+\sm³\/h when it starts from rest .* at [\d.]+\sm³\/h when .*; at the smaller the hottest film has \d+\s°C and the box (holds|does not hold)/,
  );
});

test('air that runs backwards through a passage is told in the sentence', () => {
  const share = { fins: 1.02, side: 0, end: -0.02, between: 0, leak: 0 };
  expect(reportOf({ share }).sentence).toContain('Air runs backwards through part of the box.');
  expect(reportOf({}).sentence).not.toContain('backwards');
});
