import { describe, expect, test } from 'vitest';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import { adviceReport } from '../../../../src/report/bench/adviceReport.ts';
import { fitEdit } from '../../../../src/report/bench/fitEdit.ts';
import { fitReport } from '../../../../src/report/bench/fitReport.ts';
import { withUncertainty } from '../../../../src/report/bench/fittedWords.ts';
import { benchAdviceJob } from '../../../../src/studies/bench/advice.ts';
import { benchFit } from '../../../../src/studies/bench/fit.ts';
import type { BenchFitResult, Refusal, Unknown } from '../../../../src/studies/bench/types.ts';
import { runJob } from '../../../../src/studies/job.ts';

const design = exampleById('prototype');
const plain = (text: string) => text.replaceAll('\u202f', ' ');
const question = (...unknowns: Unknown[]) => ({ design, unknowns });

const asked = question('bond', 'leak');
const found = benchFit(asked);
const advice = runJob(benchAdviceJob, asked);

describe('a fit in words', () => {
  const report = fitReport(asked, found, 'metric');

  test('tells every value with its uncertainty, and what it does to the readings', () => {
    expect(plain(report.sentence)).toMatch(
      /^The bond 0\.79\d? ± 0\.02\d? and the leak 0\.5\d ± 0\.2\d mm explain the 14 readings best, at 95 %; then 14 of 14 lie inside the band of their instruments, 8 before\.$/,
    );
  });

  test('says how the values hang together, in words and in a table', () => {
    expect(report.remarks.join(' ')).toContain('The bond and the leak are told apart well (correlation 0.');
    expect(report.twins.correlation?.rows).toEqual([
      ['Bond', '1.00', expect.stringMatching(/^0\.\d\d$/)],
      ['Leak', expect.stringMatching(/^0\.\d\d$/), '1.00'],
    ]);
    expect(report.remarks.join(' ')).toContain('Left out, for no unknown moves them: volts at the fan.');
  });

  test('draws every reading before and after', () => {
    expect(report.residuals?.rows).toHaveLength(14);
    expect(report.residuals?.rows.every(({ after }) => after !== null && Math.abs(after) <= 1)).toBe(true);
    expect(report.tables.map(({ id }) => id)).toEqual([
      'benchFit',
      'benchCorrelation',
      'benchFitReadings',
      'benchFitResiduals',
    ]);
  });

  test('says what makes its uncertainties wider, and what is checked by nothing', () => {
    const odd: BenchFitResult = {
      ...found,
      birge: 1.8,
      values: found.values.map((value) => ({ ...value, atZero: value.unknown === 'leak' })),
      correlation: [
        [1, -0.93],
        [-0.93, 1],
      ],
      readings: found.readings.map((reading, i) => ({ ...reading, leverage: i === 0 ? 0.97 : 0.1 })),
      after: { value: 40, degrees: 12, chance: 0.0001 },
    };
    const { sentence, remarks } = fitReport(asked, odd, 'metric');
    expect(plain(sentence)).toContain('and no leak, at most 0.7');
    const said = remarks.join(' ');
    expect(said).toContain('every ± is taken 1.8 times as wide');
    expect(said).toContain('hang together (correlation −0.93): more of one with less of the other');
    expect(said).toContain('Terminal 1 decides almost by itself');
    expect(said).toContain('Something beyond the instruments is at work.');
    expect(said).toContain('The leak ended at nothing');
    const few = { ...found, readings: found.readings.slice(0, 2) };
    expect(fitReport(asked, few, 'metric').remarks.join(' ')).toContain('as many values as readings');
  });

  test('becomes an edit of just what it changes', () => {
    const { values, edit, variant } = fitEdit(design, found);
    expect(Object.keys(values).sort()).toEqual([
      'baffle.leakGap_m',
      'fitted.bondFactor',
      'fitted.bondWithin',
      'fitted.leakWithin_m',
      'fitted.readings',
    ]);
    expect([edit, variant]).toEqual(['Design fitted to 14 readings', 'fitted to 14 readings']);
  });
});

test.each([
  [0.834, 0.048, '0.83 ± 0.05'],
  [0.834, 0.023, '0.834 ± 0.023'],
  [12.3, 1.62, '12.3 ± 1.6'],
  [12.3, 8, '12 ± 8'],
  [1, 0, '1.00 ± 0.00'],
])('%d ± %d is written %s', (value, within, text) => {
  expect(plain(withUncertainty(value, within))).toBe(text);
});

describe('a refused fit says why, and what to do about it', () => {
  const refusedAs = (refused: Refusal, ...unknowns: Unknown[]) => {
    const report = fitReport(question(...unknowns), { ...found, refused }, 'metric', advice);
    expect(report.isRefused).toBe(true);
    expect(report.tables).toEqual([]);
    return plain(report.sentence);
  };
  const add = / Or add a reading: .*(?:run as designed|the fan at \d.* V|the fan stopped)\.$/;

  test('nothing, or too much, chosen', () => {
    expect(refusedAs({ why: 'noUnknowns' })).toBe(
      'Choose what may explain the difference: one thing, or up to three.',
    );
    expect(refusedAs({ why: 'tooManyUnknowns', most: 3 })).toContain(
      'up to 3 things at once. Leave some out.',
    );
  });

  test('something that the design has not', () => {
    expect(refusedAs({ why: 'notInDesign', unknown: 'leak' })).toBe(
      'Nothing was fitted: without a baffle this design has nothing like the leak. Choose something else.',
    );
  });

  test('fewer readings than unknowns', () => {
    const said = refusedAs({ why: 'tooFewReadings', used: 1, needed: 2 }, 'bond', 'leak');
    expect(said).toContain('1 reading tells anything of the box, and 2 unknowns need at least 2.');
    expect(said).toMatch(add);
  });

  test('a reading without a computed value', () => {
    expect(refusedAs({ why: 'noAnswer', reading: 7, noAnswer: 'fanDoesNotStart' }, 'bond')).toBe(
      'Nothing was fitted: terminal 2 at 16 W, 23.7 °C, 8 V has no computed value, for the fan does not start at these volts. Correct its conditions, or take it out.',
    );
  });

  test('an unknown that moves no reading', () => {
    const said = refusedAs({ why: 'insensitive', unknown: 'emissivity' }, 'emissivity');
    expect(said).toContain('these readings do not tell the emissivity, which hardly moves any of them');
    expect(said).toMatch(add);
  });

  test.each([
    [0.99, 'does the same to these readings as'],
    [-0.99, 'undoes in these readings what is done by'],
  ])('two that are not told apart (%d)', (alikeness, words) => {
    const said = refusedAs(
      { why: 'notDistinguishable', unknowns: ['slot', 'fan'], alikeness, direction: [0.7, 0.7] },
      'slot',
      'fan',
    );
    expect(said).toContain('do not tell the slot from the fan');
    expect(said).toContain(words);
    expect(said).toMatch(add);
  });

  test('a value beyond what is believable, and a search that does not settle', () => {
    expect(refusedAs({ why: 'atBound', unknown: 'bond', bound: 0.05 }, 'bond')).toContain(
      'the bond ran to 0.05 times the handbook, the end of what can be believed',
    );
    expect(refusedAs({ why: 'atBound', unknown: 'leak', bound: 0.005 }, 'leak')).toContain('ran to 5 mm');
    expect(refusedAs({ why: 'notConverged' }, 'bond')).toContain('the search did not settle');
  });

  test('without advice yet it says the rest', () => {
    const refused: Refusal = { why: 'insensitive', unknown: 'slot' };
    expect(fitReport(question('slot'), { ...found, refused }, 'metric').sentence).toMatch(/Leave it out\.$/);
  });
});

describe('the advice', () => {
  const report = adviceReport(asked, advice, 'metric');

  test('says what to read next, what it tells, and how long to wait', () => {
    expect(plain(report.sentence)).toMatch(
      /^Read next: .+; with it the readings tell the bond to ±\d.* and the leak to ±.* mm\. From cold, wait \d.*\.$/,
    );
  });

  test('has what each reading would tell, how it moves, the waits, and how to go about it', () => {
    expect(report.tables.map(({ id }) => id)).toEqual([
      'benchAdvised',
      'benchTells',
      'benchMoves',
      'benchWaits',
      'benchPractice',
    ]);
    const tells = report.tables[1];
    expect(tells?.columns.map(({ head }) => head)).toEqual([
      'Read',
      'How',
      'Computed',
      'Instrument',
      'Bond',
      'Leak',
      'Slot',
      'Fan',
      'Emissivity',
    ]);
    // A sound tells nothing of the box.
    expect(tells?.rows.map(([place]) => place)).not.toContain('Sound');
    expect(report.tables[2]?.rows.flat()).toContain('hardly');
  });

  test('puts safety before all else', () => {
    expect(report.practice[0]?.lines.join(' ')).toMatch(
      /Never tape a bare bead there.*insulated for that voltage.*isolated.*licensed person.*guard on/s,
    );
  });

  test('of a box that is told well says so, and of one that cannot be foretold too', () => {
    const none = { ...advice, advised: [] };
    expect(adviceReport(asked, none, 'metric').sentence).toMatch(/^No further reading would tell much more/);
    const blind = { ...none, candidates: [], courses: [], now: { bond: null, leak: null } };
    const { sentence, remarks } = adviceReport(
      asked,
      { ...blind, cannot: [{ run: 'nominal', why: 'noOperatingPoint' }] },
      'metric',
    );
    expect(sentence).toBe('No reading of this box can be foretold: there is nothing to advise.');
    expect(remarks).toEqual([
      'Not told yet, or not apart from one another: the bond and the leak.',
      'As designed nothing can be read: fan and box do not meet.',
    ]);
  });
});
