import { describe, expect, test } from 'vitest';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import { gapReport } from '../../../../src/report/gaps/gapReport.ts';
import { tableData } from '../../../../src/report/tableData.ts';
import { gapKeys } from '../../../../src/studies/gaps/gap.ts';
import { eightAt, eightWithoutBaffle, sampleGap } from '../../../helpers/sampleGaps.ts';

/** Narrow blanks are for the eye. */
const plain = (text: string) => text.replaceAll('\u202f', ' ');

function reportOf(...asked: Parameters<typeof sampleGap>) {
  const { question, line } = sampleGap(...asked);
  return gapReport(question, line, 'metric');
}

const side = sampleGap('sideClearance_m');
const report = gapReport(side.question, side.line, 'metric');

describe('the sentence on top', () => {
  test('says what to cut, what it costs not to, and what the baffle is worth', () => {
    expect(plain(report.sentence)).toBe(
      'Cut the side clearance between 0.4 mm and 1.6 mm, as it is now: the box holds with little to spare and the film stays within 1 K of the coolest, 93 °C at 0.9 mm. Each millimetre more costs about 1.3 K, and from 9.72 mm on the box does not hold; each 0.1 mm less costs about 0.1 K. Leaving the baffle out costs 14 K, and the box no longer holds.',
    );
  });

  test('says where the box stops holding, on both sides if need be', () => {
    const tight = reportOf('sideClearance_m', null, eightAt(4.38));
    expect(plain(tight.sentence)).toMatch(
      /^Cut the side clearance between 0\.\d\d mm and 1\.\d\d mm, as it is now: .* On both sides of that the box does not hold\./,
    );
    expect(plain(reportOf('slotWidth_m', null, eightAt(4.38)).sentence)).toMatch(
      /^Cut the slot 16\.\d+ mm or more, as it is now: .* Below that the box does not hold\./,
    );
    expect(plain(reportOf('leakGap_m', null, eightAt(4.38)).sentence)).toMatch(
      /^Keep the leak under the baffle 0\.3\d mm or less, as it is now: .* Beyond that the box does not hold\./,
    );
  });

  test('sends the maker elsewhere where the present gap is not among the good ones', () => {
    const wider = reportOf('sideClearance_m', null, exampleById('dippingCurve'));
    expect(plain(wider.sentence)).toMatch(
      /^Cut the side clearance between 2\.8\d mm and 4 mm, not 0\.8 mm as now: the box holds and/,
    );
  });

  test('is honest where a gap hardly matters', () => {
    expect(plain(reportOf('standOff_m').sentence)).toMatch(
      /^The stand-off hardly matters: anything from 0 mm to 16 mm does, the film stays at 93 °C and the box holds with little to spare\./,
    );
    expect(plain(reportOf('endClearance_m', null, exampleById('onePair')).sentence)).toMatch(
      /^The end clearance hardly matters: .* the film stays within 0\.6 K of 45 °C and the box holds\./,
    );
  });

  test('is honest where no gap helps', () => {
    const hot = reportOf('sideClearance_m', [0, 0.8, 2], eightAt(4.9));
    expect(plain(hot.sentence)).toMatch(
      /^No side clearance from 0 mm to 2 mm makes this box hold: even the coolest, 0\.\d+ mm with the film at \d+ °C, is too much for it \((rated power|derating line)\)\. Leaving the baffle out costs \d+ K, and the box does not hold either\.$/,
    );
  });

  test('compares with the baffle that is not there', () => {
    const bare = reportOf('sideClearance_m', null, eightWithoutBaffle());
    expect(plain(bare.sentence)).toContain(
      'Now, without a baffle, the film is 14 K hotter and the box does not hold.',
    );
    expect(bare.sentence).not.toContain('as it is now');
    expect(bare.rows.at(-1)).toMatchObject({ label: 'no baffle', isPresent: true });
  });

  test('says why where nothing comes to an answer', () => {
    const design = exampleById('eightResistors');
    const dead = reportOf('sideClearance_m', [1], { ...design, fan: { ...design.fan, supply_V: 3 } });
    expect(plain(dead.sentence)).toBe(
      'No side clearance from 0.8 mm to 1 mm comes to an answer. No answer: the fan gets 3 V and needs 6 V to start. Without the baffle the box has no answer.',
    );
    expect(dead.chart).toBe(null);
    expect(dead.figures).toEqual([]);
  });

  test('speaks in inches to who thinks in inches', () => {
    const { question, line } = sampleGap('sideClearance_m');
    const said = plain(gapReport(question, line, 'inch').sentence);
    expect(said).toMatch(/^Cut the side clearance between 0\.0\d+ in and 0\.0\d+ in, as it is now/);
    expect(said).toContain('°F');
    expect(said).not.toMatch(/\d mm\b|millimetre/);
  });
});

describe('the remarks', () => {
  test('tell the present value with its slope and its band, and where to aim', () => {
    const said = report.remarks.map(plain);
    expect(said[0]).toBe(
      'Now 0.8 mm: the film is at 93.3 °C, 61.7 K below its limit, and 0.1 mm more gains 0.09 K there. A cut that misses by 0.2 mm leaves it at 93.3 – 93.7 °C.',
    );
    expect(said[1]).toBe('A cut may miss by 0.2 mm: aim at 0.6 mm to 1.4 mm.');
    expect(said[2]).toBe(
      'At 9.72 mm the verdict changes from “holds with little to spare” to “does not hold” (derating line).',
    );
  });

  test('tell the knee only where there is one', () => {
    expect(report.remarks.join(' ')).not.toContain('knee');
    expect(plain(reportOf('slotWidth_m').remarks.join(' '))).toContain('The curve has its knee at 14 mm');
  });

  test('warn of a cut that misses by more than the good gaps allow', () => {
    const { question, line } = sampleGap('sideClearance_m', null, eightAt(4.38));
    const wild = gapReport({ ...question, cut_m: 0.002 }, line, 'metric');
    expect(wild.remarks.map(plain)).toContain(
      'A cut may miss by 2 mm, and that is more than the good gaps allow.',
    );
  });

  test('say why rows cannot be built, each reason once, and that pulses count', () => {
    const design = exampleById('eightResistors');
    const pulsed = { ...design, load: { ...design.load, duty: 0.5 } };
    const said = reportOf('sideClearance_m', [1, 12, 14], pulsed).remarks.map(plain);
    expect(said.filter((line) => line.includes('10 mm on each side'))).toHaveLength(1);
    expect(said.at(-1)).toContain('verdicts count the pulses');
  });
});

describe('the rows', () => {
  test('come by rising gap, the present one marked, no baffle last', () => {
    expect(report.rows.map(({ label }) => plain(label))).toEqual([
      '0 mm',
      '0.5 mm',
      '0.8 mm',
      '1 mm',
      '1.5 mm',
      '2 mm',
      '2.5 mm',
      '3 mm',
      '3.5 mm',
      '4 mm',
      'no baffle',
    ]);
    expect(report.rows.filter(({ isPresent }) => isPresent).map(({ label }) => plain(label))).toEqual([
      '0.8 mm',
    ]);
  });

  test('carry what puts them into the design', () => {
    expect(report.rows[0]?.values).toEqual({ 'baffle.fitted': true, 'baffle.sideClearance_m': 0 });
    expect(report.rows.at(-1)?.values).toEqual({ 'baffle.fitted': false });
  });

  test('make a table with bare numbers for a file', () => {
    const [table] = report.tables;
    if (!table) throw new Error('no table');
    expect(table.rows.map((row) => row.length)).toEqual(table.rows.map(() => table.columns.length));
    expect(plain(table.rows[2]?.join(' | ') ?? '')).toBe(
      '0.8 mm, now | little to spare | 93.3 °C | 93.3 – 93.7 °C | 61.7 K to spare | 1.10 × | 78 % | 20.1 m³/h | 24.2 Pa | 32 dB(A) | Derating line',
    );
    const data = tableData(table);
    expect(data.heads.map(plain)).toEqual([
      'Side clearance, mm',
      'Verdict',
      'Hottest film, °C',
      'Film at ± 0.2 mm, least, °C',
      'Film at ± 0.2 mm, most, °C',
      'Film margin, K',
      'Load up to, ×',
      'Through fins, %',
      'Air moved, m³/h',
      'Fan pressure, Pa',
      'Sound, dB(A)',
      'Gives first',
    ]);
    expect(data.rows[2]?.slice(0, 3)).toEqual([0.8, 'little to spare', expect.closeTo(93.282, 3)]);
    expect(data.rows.at(-1)?.[0]).toBe(null);
  });

  test('say why what cannot be built cannot', () => {
    const [, , , row] = reportOf('sideClearance_m', [0, 1, 12]).rows;
    expect(row).toMatchObject({ state: null, stateWord: 'cannot be built', film: '–', band: '–' });
    expect(plain(row?.first ?? '')).toBe('Beside the sinks the box leaves 10 mm on each side at most.');
  });
});

describe('the charts', () => {
  test('show film, band, present value and the level without a baffle, in display units', () => {
    const { chart } = report;
    expect(chart).toMatchObject({ xUnit: 'mm', yUnit: '°C', xLabel: 'side clearance' });
    expect(chart?.present).toMatchObject({ x: 0.8, y: expect.closeTo(93.28, 2) });
    expect(chart?.none?.y).toBeCloseTo(107.39, 2);
    expect(chart?.rows).toHaveLength(10);
    for (const { film, band } of chart?.points ?? []) {
      expect(band?.[0]).toBeLessThanOrEqual(film ?? 0);
      expect(band?.[1]).toBeGreaterThanOrEqual(film ?? 0);
    }
  });

  test('hold everything within their axes', () => {
    for (const gap of gapKeys) {
      const { chart } = reportOf(gap);
      const [low, high] = [chart?.yTicks[0] ?? 0, chart?.yTicks.at(-1) ?? 0];
      for (const { x, film, band } of chart?.points ?? []) {
        expect(x).toBeGreaterThanOrEqual(chart?.xTicks[0] ?? 0);
        expect(x).toBeLessThanOrEqual(chart?.xTicks.at(-1) ?? 0);
        expect(Math.min(film ?? low, band?.[0] ?? low)).toBeGreaterThanOrEqual(low);
        expect(Math.max(film ?? high, band?.[1] ?? high)).toBeLessThanOrEqual(high);
      }
    }
  });

  test('draw the film’s limit where it is near, and say so where it is not', () => {
    expect(report.chart?.limit.isAbove).toBe(true);
    expect(plain(report.chart?.caption ?? '')).toBe('Hottest film (its limit, 155 °C, lies above)');
    const design = exampleById('eightResistors');
    const soft = { ...design, parts: design.parts.map((part) => ({ ...part, zeroPowerAt_K: 273.15 + 115 })) };
    const near = reportOf('sideClearance_m', [0, 2], soft).chart;
    expect(near?.limit).toMatchObject({ isAbove: false, y: expect.closeTo(115, 6) });
    expect(near?.yTicks.at(-1)).toBeGreaterThanOrEqual(115);
  });

  test('cut the axis where the verdict changes', () => {
    const { chart } = reportOf('sideClearance_m', [0, 5, 10]);
    expect(chart?.spans.map(({ state }) => state)).toEqual(['little', 'fails']);
    expect(chart?.spans[0]?.to).toBeCloseTo(9.72, 2);
  });

  test('follow what else depends on the gap', () => {
    expect(report.figures.map(({ caption }) => caption)).toEqual([
      'Share through fins',
      'Air moved',
      'Fan pressure',
      'Sound at the listener',
      'Load up to',
    ]);
    const [fins] = report.figures;
    expect(fins?.marks[0]).toMatchObject({ x: 0.8, y: expect.closeTo(78.5, 1) });
    expect(fins?.levels[0]?.y).toBeCloseTo(21.2, 1);
    expect(fins?.yTicks[0]).toBe(0);
  });
});
