import { describe, expect, test } from 'vitest';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import { buildReport } from '../../../../src/report/buildReport.ts';
import {
  bladePassFigure,
  bodyFigure,
  bondFigure,
  boxFigures,
  fanFlowFigure,
  fanPressureOfFigure,
  filmSideFigure,
  jointFigure,
  nominalFigure,
  passageFigure,
  powerFigure,
  ratedFigure,
  reachedFigure,
  rungFigure,
  secondSideFigure,
  sinkFigure,
  speedFigure,
  stageFigure,
  stoppedFigure,
  voltageFigure,
  worstFigure,
} from '../../../../src/report/working/figureIds.ts';
import {
  filmFigure,
  keyFigure,
  limitFigure,
  loadFactorFigure,
  marginFigure,
  shareFigure,
} from '../../../../src/report/working/headlineIds.ts';
import type { WorkingReport, WorkingStep, WorkingSymbol } from '../../../../src/report/working/types.ts';
import { workingReport } from '../../../../src/report/working/workingReport.ts';
import { figuresText, workingText } from '../../../../src/report/working/workingText.ts';
import { workOut } from '../../../helpers/equations.ts';
import { sampleOf } from '../../../helpers/sampleReport.ts';

const base = exampleById('eightResistors');
/** Heard from half a metre, the fan at nine volts: so that both laws of sound count. */
const design = {
  ...base,
  room: { ...base.room, listening_m: 0.5 },
  fan: { ...base.fan, supply_V: 9 },
};
const { report: sheet, outcome } = sampleOf(design);
const report = workingReport(design, 'metric');

function stepsOf({ figures, steps }: WorkingReport, id: string): WorkingStep[] {
  const figure = figures.find((each) => each.id === id);
  if (!figure) throw new Error(`no figure ${id}`);
  return figure.steps.map((number) => steps[number - 1] as WorkingStep);
}

function titled(steps: readonly WorkingStep[], title: string, where = ''): WorkingStep {
  const step = steps.find((each) => each.title.startsWith(title) && each.where.includes(where));
  if (!step) throw new Error(`no step ${title}`);
  return step;
}

/** Number behind a symbol of a step. */
function amount({ symbols }: WorkingStep, symbol: string): number {
  return (symbols.find((each) => each.symbol === symbol) as WorkingSymbol).amount;
}

describe('a lab book: worked again with pencil and paper, from what is shown', () => {
  test('pressure that the channels of sink 1 take', () => {
    const steps = stepsOf(report, stageFigure('bank'));
    const drop = titled(steps, 'Pressure that a channel takes', 'channels of sink 1');
    const [v, rho, mu] = ['v', 'ρ', 'μ'].map((symbol) => amount(drop, symbol)) as [number, number, number];
    const L = amount(drop, 'L');
    const gap = titled(steps, 'Clear gap between two fins');
    const b = (amount(gap, 'w') - amount(gap, 'n') * amount(gap, 't')) / (amount(gap, 'n') - 1);
    const H = amount(titled(steps, 'Hydraulic diameter', 'sink'), 'H');
    const D = (4 * b * H) / (2 * (b + H));
    const Re = (rho * v * D) / mu;
    const a = Math.min(b, H) / Math.max(b, H);
    const developed =
      24 * (1 - 1.3553 * a + 1.9467 * a ** 2 - 1.7012 * a ** 3 + 0.9564 * a ** 4 - 0.2537 * a ** 5);
    const apparent = Math.hypot(3.44 / Math.sqrt(L / (D * Re)), developed) / Re;
    const sigma = b / (b + amount(gap, 't'));
    const ends = 0.42 * (1 - sigma * sigma) + 1;
    const dynamic = 0.5 * rho * v * v;
    // The last term of a slow stream is a ten-thousandth here; a pencil leaves it out.
    expect(((4 * apparent * L) / D) * dynamic + ends * dynamic).toBeCloseTo(drop.result.amount, 4);
  });

  test('film of resistor 3 up the ladder of kelvins', () => {
    const steps = stepsOf(report, filmFigure(2));
    const ladder = steps[steps.length - 1] as WorkingStep;
    const rungs = ladder.symbols.filter(({ symbol }) => symbol.startsWith('ΔT_'));
    expect(rungs).toHaveLength(6);
    const bond = titled(steps, 'Bond line between two flat faces');
    const [t, k, A, v] = ['t', 'k', 'A', 'v'].map((symbol) => amount(bond, symbol)) as number[];
    const q = amount(titled(steps, 'Step that watts make'), 'q');
    const bondStep =
      q *
      ((t as number) / ((k as number) * (1 - (v as number)) * (A as number)) +
        (2 * amount(bond, 'r_c')) / (A as number));
    expect(bondStep).toBeCloseTo(amount(ladder, 'ΔT_5'), 9);
    const film_K = rungs.reduce((sum, rung) => sum + rung.amount, amount(ladder, 'T_r'));
    expect(film_K).toBeCloseTo(ladder.result.amount, 9);
    expect(outcome.ok && outcome.heat.positions[2]?.film_K).toBeCloseTo(film_K, 9);
  });

  test('sound at the ear', () => {
    const steps = stepsOf(report, boxFigures.sound);
    const speed = titled(steps, 'Fan speed');
    const n = amount(speed, 'V') / amount(speed, 'V_r');
    const atSpeed = amount(titled(steps, 'Sound of a fan over speed'), 'L_1') + 50 * Math.log10(n);
    const distance = titled(steps, 'Sound over distance');
    const heard = atSpeed - 20 * Math.log10(amount(distance, 'r_2') / amount(distance, 'r_1'));
    expect(heard).toBeCloseTo(distance.result.amount, 9);
    expect(outcome.ok && outcome.air.sound_dBA).toBeCloseTo(heard, 9);
  });
});

describe('the working of a design', () => {
  test('says in every equation what was computed: its text with the numbers put in gives the result', () => {
    for (const { equation, symbols, result, title, where } of report.steps) {
      if (equation.includes('table(')) continue;
      const found = workOut(equation, Object.fromEntries(symbols.map((each) => [each.symbol, each.amount])));
      const off = Math.abs(found - result.amount);
      // Without fans all is settled to a microkelvin.
      const share = where.includes('without fan') ? 1e-6 : 1e-9;
      if (!(off <= share * Math.abs(result.amount) + 1e-15))
        expect.fail(`${title}: ${found}, not ${result.amount}`);
    }
  });

  test('has a source beside every method, with the number that the report gives it', () => {
    const whole = buildReport(design, outcome, { system: 'metric' });
    for (const { card, source, footnote } of report.steps) {
      expect(card === null).toBe(source === null);
      const row = whole.sources.find(({ number }) => number === footnote);
      if (card !== null) expect(source?.startsWith(row?.cite ?? '?')).toBe(true);
    }
  });

  test('says where this design stands in the range of a method', () => {
    const friction = titled(report.steps, 'Apparent friction');
    expect(friction.range).toContain('x⁺');
    expect(friction.here).toContain('x⁺');
    expect(friction.inside).toBe(true);
    expect(friction.assumes.map(({ title }) => title)).toContain('Channel walls are smooth.');
  });

  test('tells places that are alike together', () => {
    expect(titled(report.steps, 'Chip to its terminals').where).toBe('resistors 1 to 8');
    expect(titled(report.steps, 'A fan that stands still').where).toContain('without fan');
  });

  test('has a figure behind every id that cells are linked to', () => {
    const ids = new Set(report.figures.map(({ id }) => id));
    const hottest = outcome.ok ? outcome.heat.hottest : 0;
    const keys = sheet.figures.map(({ key }) => keyFigure(key, hottest));
    const limits = sheet.limits.map(({ key }) => key);
    const linked = [
      ...keys,
      ...limits.map(limitFigure),
      ...sheet.limits
        .filter(({ amounts }) => amounts.margin.value !== null)
        .map(({ key }) => marginFigure(key)),
      ...sheet.limits
        .filter(({ amounts }) => amounts.loadFactor.value !== null)
        .map(({ key }) => loadFactorFigure(key)),
      ...Object.keys(outcome.ok ? outcome.air.share : {}).map((kind) => shareFigure(kind as 'fins')),
      ...[nominalFigure, worstFigure, powerFigure, voltageFigure, bondFigure, jointFigure, bodyFigure].map(
        (of) => of(7),
      ),
      filmSideFigure(0),
      secondSideFigure(0),
      ...[fanFlowFigure, fanPressureOfFigure, speedFigure, bladePassFigure].map((of) => of(0)),
      reachedFigure('joint'),
      passageFigure(0),
      rungFigure('bond'),
      sinkFigure('plate', 8),
      ratedFigure('running'),
      ratedFigure('stopped'),
      boxFigures.act,
      stoppedFigure(boxFigures.flow),
      stoppedFigure(filmFigure(2)),
    ];
    expect(linked.filter((id) => id === null || !ids.has(id))).toEqual([]);
  });

  test('says a figure as its cell does', () => {
    const said = new Map(report.figures.map(({ id, value }) => [id, value]));
    expect(said.get(filmFigure(2))).toBe(sheet.heat?.positions[2]?.film);
    expect(said.get(limitFigure('joint'))).toBe(sheet.limits.find(({ key }) => key === 'joint')?.value);
    expect(said.get(shareFigure('fins'))).toBe(sheet.air?.shares[0]?.percent);
    expect(said.get(sinkFigure('resistance', 0))).toBe(sheet.heat?.sinks[0]?.resistance);
    expect(said.get(boxFigures.act)).toBe(sheet.fanStop.act ?? 'no hurry');
  });

  test('can be pasted into a mail', () => {
    const text = workingText(report, boxFigures.sound) ?? '';
    expect(text).toMatch(/^Sound at the listener: /);
    expect(text).toContain('L_2 = L_1 − 20·log₁₀(r_2/r_1)');
    expect(text).toContain('L_1 = ');
    expect(text).toContain('step 2');
    expect(text).toContain('Sources');
    expect(workingText(report, 'film:99')).toBeNull();
    expect(figuresText(report)).toContain('film:3');
  });

  test('of a box without an answer says that there is none', () => {
    const none = { ...design, fan: { ...design.fan, supply_V: 3 } };
    expect(workingReport(none, 'metric').sentence).toMatch(/Only the box without its fans|no answer/);
  });
});
