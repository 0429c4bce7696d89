import { describe, expect, test } from 'vitest';
import type { Limit, Outcome, Solved, Unsolved } from '../../../src/core/system/outcome.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { verdictReport } from '../../../src/report/verdictReport.ts';
import { sampleExample } from '../../helpers/sampleReport.ts';

const example = exampleById('eightResistors');
const design = {
  ...example,
  bond: { ...example.bond, glassTransition_K: 363.15 },
  limits: { ...example.limits, spareFactor: 1.25 },
};
const { outcome } = sampleExample('eightResistors');

function withLimits(first: Limit, ...rest: Limit[]): Outcome {
  if (!outcome.ok) throw new Error('the example has no answer');
  const solved: Solved = {
    ...outcome,
    limits: [first, ...rest],
    verdict: { state: first.state, limit: first },
  };
  return solved;
}

const film: Limit = {
  key: 'film',
  where: 4,
  quantity: 'temperature',
  value: 444.15,
  limit: 428.15,
  margin_K: -16,
  loadFactor: 0.88,
  state: 'fails',
  source: 'chipConvention',
  confirm: true,
};
const sayOf = (limit: Limit, ...rest: Limit[]) => verdictReport(design, withLimits(limit, ...rest), 'metric');
/** Narrow blanks as plain ones, to read the sentence. */
const plain = (text: string) => text.replaceAll('\u202f', ' ');

describe('the sentence', () => {
  test('says what fails, where, by how much', () => {
    expect(plain(sayOf(film).sentence)).toBe(
      'Does not hold: the film of resistor 5 reaches 171 °C, 16 K above its 155 °C limit.',
    );
  });

  test('prints tenths where whole degrees would hide the matter', () => {
    const close = { ...film, value: 428.55, margin_K: -0.4 };
    expect(plain(sayOf(close).sentence)).toBe(
      'Does not hold: the film of resistor 5 reaches 155.4 °C, 0.4 K above its 155.0 °C limit.',
    );
  });

  test('agrees with a reader who subtracts what is printed: 334.4 K and 364.4 K are 142 °F and 196 °F, 54 apart', () => {
    const warm: Limit = {
      ...film,
      value: 334.4,
      limit: 364.4,
      margin_K: 30,
      loadFactor: 1.6,
      state: 'holds',
    };
    expect(plain(verdictReport(design, withLimits(warm), 'inch').sentence)).toContain(
      'reaches 142 °F, 54 °F below its 196 °F limit',
    );
  });

  test('names the nearest limit of a box that holds', () => {
    const holds: Limit = { ...film, value: 385.15, margin_K: 43, loadFactor: 1.6, state: 'holds' };
    expect(plain(sayOf(holds).sentence)).toBe(
      'Holds: nearest to its limit, the film of resistor 5 reaches 112 °C, 43 K below its 155 °C limit.',
    );
  });

  test('uses watts and volts for limits that are no temperature', () => {
    const power: Limit = {
      ...film,
      key: 'ratedPower',
      quantity: 'power',
      value: 5.2,
      limit: 5,
      margin_K: null,
    };
    expect(plain(sayOf(power).sentence)).toBe('Does not hold: resistor 5 carries 5.2 W and is rated 5 W.');
    const volts: Limit = {
      ...film,
      key: 'voltage',
      quantity: 'voltage',
      value: 210,
      limit: 200,
      margin_K: null,
    };
    expect(plain(sayOf(volts).sentence)).toBe('Does not hold: resistor 5 sees 210 V and may see 200 V.');
  });
});

describe('the reasons', () => {
  test('name the other limits that do not hold, and not those that do', () => {
    const joint: Limit = { ...film, key: 'joint', value: 410.15, limit: 398.15, margin_K: -12 };
    const exhaust: Limit = {
      ...film,
      key: 'exhaust',
      where: null,
      value: 320,
      limit: 343.15,
      margin_K: 23.15,
      state: 'holds',
    };
    const { reasons } = sayOf(film, joint, exhaust);
    expect(reasons.map(plain)).toEqual([
      'Also the solder joints of resistor 5 reach 137 °C, 12 K above their 125 °C limit.',
    ]);
  });

  test('say what makes a met limit count as little to spare', () => {
    const little: Limit = { ...film, value: 418.15, margin_K: 10, loadFactor: 1.12, state: 'little' };
    expect(plain(sayOf(little).reasons[0] ?? '')).toBe(
      'The load could grow to 1.12 × before this limit; you asked for 1.25 ×.',
    );
    const soft: Limit = {
      ...film,
      key: 'bond',
      value: 368.15,
      limit: 403.15,
      margin_K: 35,
      loadFactor: 1.6,
      state: 'little',
    };
    expect(plain(sayOf(soft).reasons[0] ?? '')).toContain('glass transition of 90 °C');
  });

  test('every failure of physics says itself and what to change', () => {
    const reasons: Unsolved['reason'][] = [
      'fanDoesNotStart',
      'noOperatingPoint',
      'noHeatPath',
      'runaway',
      'notConverged',
    ];
    const said = reasons.map((reason) =>
      verdictReport(
        design,
        { ok: false, reason, details: { position: 2, supply_V: 5, start_V: 6, iterations: 150 } },
        'metric',
      ),
    );
    expect(new Set(said.map((verdict) => verdict.sentence)).size).toBe(reasons.length);
    expect(said[2]?.sentence).toContain('resistor 3');
    for (const verdict of said) {
      expect(verdict.sentence).toMatch(/^No answer: .*\.$/);
      expect(verdict.reasons[0]).toMatch(/\.$/);
    }
  });

  test('a failure without details still reads as a sentence', () => {
    const bare = verdictReport(design, { ok: false, reason: 'noHeatPath', details: {} }, 'metric');
    expect(bare.sentence).toBe('No answer: a resistor carries watts but has no way to a sink.');
  });

  test('says how many readings the design was fitted to', () => {
    const fitted = { ...design.fitted, readings: 12, bondFactor: 0.9 };
    expect(verdictReport({ ...design, fitted }, outcome, 'metric').sentence).toMatch(
      / \(fitted to 12 readings\)\.$/,
    );
    expect(verdictReport(design, outcome, 'metric').sentence).not.toContain('fitted');
  });
});
