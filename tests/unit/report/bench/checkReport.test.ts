import { describe, expect, test } from 'vitest';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import { benchLine } from '../../../../src/report/bench/benchLine.ts';
import { checkReport, withFit } from '../../../../src/report/bench/checkReport.ts';
import { nothingRead } from '../../../../src/report/bench/checkSentence.ts';
import { benchCheckJob } from '../../../../src/studies/bench/check.ts';
import { benchCourse } from '../../../../src/studies/bench/course.ts';
import type { Agreement, BenchCheckResult, CheckedReading } from '../../../../src/studies/bench/types.ts';
import { runJob } from '../../../../src/studies/job.ts';

const design = exampleById('prototype');
const plain = (text: string) => text.replaceAll('\u202f', ' ');

/** An invented reading of a sink, settled, a little warmer than computed. */
const sink: CheckedReading = {
  index: 0,
  path: 'readings.temperatures[0]',
  kind: 'temperature',
  where: 'onSink',
  number: 2,
  value: 325.15,
  within: 1.5,
  load_W: 8,
  room_K: 296.15,
  fan_V: 12,
  time_s: null,
  computed: 321.15,
  why: null,
  deviation: 4,
  times: 4 / 1.5,
  model: 0.5,
  both: 1.8,
  agreement: 'disagrees',
  foremost: { part: 'channelHeat', share: 0.8 },
};

const unanswered: CheckedReading = {
  ...sink,
  computed: null,
  deviation: null,
  times: null,
  model: null,
  both: null,
  agreement: null,
  foremost: null,
  why: 'noSuchSink',
};

function resultOf(changes: readonly Partial<CheckedReading>[]): BenchCheckResult {
  const readings = changes.map((change, index) => ({
    ...sink,
    index,
    path: `readings.temperatures[${index}]`,
    ...change,
  }));
  const count = (agreement: Agreement) =>
    readings.filter((reading) => reading.agreement === agreement).length;
  return {
    readings,
    answered: readings.filter(({ agreement }) => agreement !== null).length,
    agreeing: { instrument: count('instrument'), model: count('model'), disagrees: count('disagrees') },
    chiSquare: { value: 0, degrees: 0, chance: null },
    parts: [],
  };
}

const agrees: Partial<CheckedReading> = { agreement: 'instrument', deviation: 0.4, times: 0.27 };
const sentence = (...changes: readonly Partial<CheckedReading>[]) =>
  plain(checkReport({ design }, resultOf(changes), 'metric').sentence);

describe('the sentence', () => {
  test('says first how many agree, then what runs off as a group, and by how much', () => {
    expect(sentence({}, { number: 3, deviation: 5 }, { where: 'onFilm', ...agrees })).toBe(
      '1 of 3 readings agrees within its instrument; the sinks run 4.5 K warmer than computed.',
    );
  });

  test('names a single reading that is off by its number', () => {
    expect(sentence({ deviation: -4, times: -2.7 }, { where: 'onFilm', ...agrees })).toContain(
      '; sink 2 runs 4 K cooler than computed.',
    );
  });

  test('tells pressure and flow in percent, sound and volts in their unit', () => {
    const pressure = { kind: 'pressure', where: null, computed: 20, deviation: -4, times: -4 } as const;
    const sound = { kind: 'sound', where: null, computed: 30, deviation: 3, times: 2 } as const;
    expect(sentence(pressure, sound)).toBe(
      'None of 2 readings agrees within its instrument; the plenum pressure is 20 % lower than computed and the sound is 3 dB(A) louder than computed.',
    );
  });

  test('says nothing of a group that scatters to both sides', () => {
    expect(sentence({ times: 3 }, { times: -2.9 })).toBe('None of 2 readings agrees within its instrument.');
  });

  test('is plain where all agree, where one agrees within the methods, and where nothing was read', () => {
    expect(sentence(agrees, agrees)).toBe('All 2 readings agree within their instruments.');
    expect(sentence(agrees)).toBe('The one reading agrees within its instrument.');
    expect(sentence(agrees, agrees, { agreement: 'model', times: 1.2 })).toBe(
      '2 of 3 readings agree within their instruments, 1 more within instrument and methods together.',
    );
    expect(sentence()).toBe(nothingRead);
  });

  test('counts what has no computed value', () => {
    expect(sentence(agrees, unanswered)).toMatch(/ 1 reading has no computed value beside it\.$/);
    expect(sentence(unanswered)).toBe(
      'No reading can be held against the model. 1 reading has no computed value beside it.',
    );
  });
});

describe('remarks and tables', () => {
  test('say why there is no answer, in the row and in a remark', () => {
    const report = checkReport({ design }, resultOf([agrees, unanswered]), 'metric');
    expect(report.rows.map(({ state }) => state)).toEqual(['instrument', 'noAnswer']);
    expect(report.check.rows[1]).toContain('no answer: the design has no such sink');
    expect(report.remarks).toContain('No computed value for sink 2: the design has no such sink.');
    expect(report.residuals?.rows).toHaveLength(1);
  });

  test('hold the sum of squares against chance', () => {
    const of = (value: number, chance: number) =>
      checkReport(
        { design },
        { ...resultOf([agrees]), chiSquare: { value, degrees: 12, chance } },
        'metric',
      ).remarks.join(' ');
    expect(of(11.2, 0.51)).toContain('the scatter is that of the instruments');
    expect(of(34.1, 0.0006)).toContain('fewer than 1 of 1000 cases');
    expect(of(34.1, 0.004)).toContain('4 of 1000 cases');
    expect(of(34.1, 0.02)).toContain('2 of 100 cases');
  });

  test('of the example: fifteen readings, each with its conditions and a state in words, and a warm-up', () => {
    const result = runJob(benchCheckJob, { design });
    const report = checkReport({ design }, result, 'metric', benchCourse({ design }));
    expect(plain(report.sentence)).toMatch(/^8 of 15 readings agree .* the terminals run 5\.5 K warmer than/);
    expect(report.check.rows[0]?.map(plain)).toEqual([
      'Terminal 1',
      'disagrees',
      '61.3 °C',
      expect.stringMatching(/^56\.\d °C$/),
      expect.stringMatching(/^\+4\.\d K$/),
      '±1.5 K',
      expect.stringMatching(/^\+3\.\d ×$/),
      '16 W, 23.2 °C, 12 V',
    ]);
    expect(report.tables.map(({ id }) => id)).toEqual(['benchCheck', 'benchResiduals', 'benchWarmUp']);
    expect(report.warmUp?.chart.marks).toHaveLength(3);
    expect(report.residuals?.rows.map(({ label }) => plain(label)).at(9)).toBe('10 sink 3, 60 s');
    const inInches = checkReport({ design }, result, 'inch');
    expect(inInches.check.rows[0]?.map(plain)).toContain('142.3 °F');
  });
});

test('what was fitted before is told where nothing else says it', () => {
  const fitted = { ...design.fitted, readings: 12, bondFactor: 0.8, bondWithin: 0.05 };
  const report = checkReport({ design: { ...design, fitted } }, resultOf([agrees]), 'metric');
  expect(plain(withFit(report).remarks[0] ?? '')).toBe(
    'This design is fitted to 12 readings: bond 0.80 ± 0.04.',
  );
  const before = checkReport({ design }, resultOf([agrees]), 'metric');
  expect(withFit(before)).toBe(before);
});

describe('the line of the summary', () => {
  const fitted = { ...design.fitted, readings: 12, bondFactor: 0.83, bondWithin: 0.06, leakWithin_m: 1e-4 };
  const read = resultOf([agrees, agrees, {}]);

  test('says how many agree and what was fitted', () => {
    expect(benchLine(design, read, 'metric')).toBe('Bench: 2 of 3 readings agree within their instruments.');
    expect(plain(benchLine({ ...design, fitted }, read, 'metric'))).toBe(
      'Bench: 2 of 3 readings agree within their instruments; fitted to 12 readings: bond 0.83 ± 0.05 and leak 0.10 ± 0.10 mm.',
    );
  });

  test('counts readings that were not checked yet, and is empty where there is nothing to say', () => {
    expect(benchLine(design, null, 'metric')).toBe('Bench: 15 readings.');
    expect(benchLine(exampleById('onePair'), null, 'metric')).toBe('');
  });
});
