import { describe, expect, test } from 'vitest';
import { fansStopped, ordinaryRun } from '../../../../src/core/system/input.ts';
import { solveSystem } from '../../../../src/core/system/solveSystem.ts';
import { warmUp } from '../../../../src/core/system/timeline.ts';
import { eightResistors } from '../../../../src/model/examples/eightResistors.ts';
import { setAll } from '../../../../src/model/path.ts';
import { toCore } from '../../../../src/model/toCore.ts';
import { benchAdviceJob } from '../../../../src/studies/bench/advice.ts';
import { onBench } from '../../../../src/studies/bench/conditions.ts';
import { benchFit } from '../../../../src/studies/bench/fit.ts';
import { allUnknowns, type BenchAdviceResult, type Candidate } from '../../../../src/studies/bench/types.ts';
import { runJob } from '../../../../src/studies/job.ts';
import { judgedOf } from '../../../../src/studies/outputs.ts';
import { asDesigned, pairWith, pressure, readFrom, temperature } from '../../../helpers/bench.ts';

const design = pairWith({});
const advice = runJob(benchAdviceJob, { design });
const by = (id: string, { candidates }: BenchAdviceResult = advice): Candidate => {
  const found = candidates.find((each) => each.id === id);
  if (!found) throw new Error(`no ${id} among ${candidates.map((each) => each.id).join(', ')}`);
  return found;
};

describe('what a reading would tell', () => {
  test('each is a value that the box has, in a way of running it that does it no harm', () => {
    for (const { load_W, fan_V, room_K, computed, kind, where } of advice.candidates) {
      const bench = onBench(toCore(design), { load_W, fan_V, room_K, time_s: null });
      const outcome = bench && solveSystem(bench.input, bench.run);
      if (!outcome?.ok) throw new Error('it has an answer');
      expect(judgedOf(outcome)?.state).not.toBe('fails');
      expect(Number.isFinite(computed)).toBe(true);
      if (kind === 'flow') expect(computed).toBeCloseTo(outcome.air.flow_m3PerS, 8);
      if (where === 'onFilm') expect(computed).toBeCloseTo(outcome.heat.positions[0]?.film_K ?? 0, 4);
    }
  });

  test('a hundredth more of an unknown moves the reading by what is told', () => {
    const { load_W, fan_V, room_K, computed, moves } = by('onFilm 1 nominal');
    const more = setAll(design, { 'fitted.bondFactor': 1.01 });
    const bench = onBench(toCore(more), { load_W, fan_V, room_K, time_s: null });
    const outcome = bench && solveSystem(bench.input, bench.run);
    if (!outcome?.ok) throw new Error('it has an answer');
    expect((outcome.heat.positions[0]?.film_K ?? 0) - computed).toBeCloseTo(moves.bond ?? 0, 3);
    expect(moves.bond).toBeLessThan(0);
  });

  test('what it tells alone is what a fit to it alone would state', () => {
    const { load_W, fan_V, room_K, alone, computed } = by('onFilm 1 nominal');
    const temperatures = [temperature('onFilm', { load_W, fan_V, room_K }, { reading_K: computed })];
    const fit = benchFit({ design: pairWith({ temperatures }), unknowns: ['bond'] });
    expect((alone.bond ?? 0) / (fit.values[0]?.within ?? 1)).toBeCloseTo(1, 2);
  });

  test('sound tells nothing of any unknown; films of the bond, pressure of fan and leak, metal at rest of emissivity', () => {
    for (const unknown of allUnknowns) expect(by('sound nominal').alone[unknown]).toBeNull();
    expect(by('onFilm 1 nominal').alone.bond).toBeLessThan(0.3);
    expect(by('pressure nominal').alone.leak).toBeLessThan(0.001);
    expect(by('pressure nominal').alone.fan).toBeLessThan(0.3);
    expect(by('onSink 1 stopped').alone.emissivity).toBeLessThan(0.4);
    expect(by('onSink 1 nominal').alone.emissivity).toBeNull();
    expect(by('onSink 1 stopped').moves.fan).toBe(0);
  });

  test('nothing is asked of a draught that no instrument reads', () => {
    const still = advice.candidates.filter(({ run }) => run === 'stopped');
    expect(still.map(({ where }) => where).sort()).toEqual(['onFilm', 'onSheet', 'onSink', 'onTerminal']);
  });

  test('a box without a baffle has no slot and no leak to be told', () => {
    const open = runJob(benchAdviceJob, { design: setAll(design, { 'baffle.fitted': false }) });
    expect(open.unknowns).toEqual(['bond', 'fan', 'emissivity']);
    expect(by('onFilm 1 nominal', open).moves.slot).toBeNull();
    expect(by('onFilm 1 nominal', open).alone.leak).toBeNull();
  });

  test('where the fan cannot run slower, or not at all, it says so', () => {
    const stiff = runJob(benchAdviceJob, { design: setAll(design, { 'fan.start_V': 11 }) });
    expect(stiff.cannot).toEqual([{ run: 'reduced', why: 'nothingTurns' }]);
    const off = runJob(benchAdviceJob, { design: setAll(design, { 'fan.supply_V': 2 }) });
    expect(off.cannot.map(({ run }) => run)).toEqual(['nominal', 'reduced']);
    expect(off.candidates.every(({ run }) => run === 'stopped')).toBe(true);
  });

  test('a full bank without its fan is read at less than its load', () => {
    const eight = runJob(benchAdviceJob, { design: eightResistors, unknowns: ['emissivity'] });
    const still = eight.candidates.find(({ run }) => run === 'stopped');
    expect(still?.load_W).toBeLessThan(16);
    expect(still?.load_W).toBeGreaterThan(0);
  });
});

describe('which to take next', () => {
  test('each adds: what is left open never widens, and ends told as well as six readings can', () => {
    const { advised, unknowns } = advice;
    expect(advised.length).toBeGreaterThan(2);
    expect(new Set(advised.map(({ candidate }) => candidate)).size).toBe(advised.length);
    for (const unknown of unknowns) {
      const course = advised.map(({ leaves }) => leaves[unknown] ?? Number.POSITIVE_INFINITY);
      for (let i = 1; i < course.length; i++) expect(course[i]).toBeLessThanOrEqual(course[i - 1] as number);
    }
    expect(advised.at(-1)?.leaves.bond).toBeLessThan(0.2);
    expect(Object.values(advice.now)).toEqual([null, null, null, null, null]);
  });

  test('for the bond alone: a film', () => {
    const { advised } = runJob(benchAdviceJob, { design, unknowns: ['bond'] });
    expect(advised[0]?.candidate).toMatch(/^onFilm/);
  });

  test('for the emissivity alone: with the fan stopped', () => {
    const { advised } = runJob(benchAdviceJob, { design, unknowns: ['emissivity'] });
    expect(advised[0]?.candidate).toMatch(/stopped$/);
  });

  test('readings that are there are counted, and what they tell is not asked for again', () => {
    const films = pairWith({
      temperatures: Array.from({ length: 30 }, () => temperature('onFilm', asDesigned)),
    });
    const told = runJob(benchAdviceJob, { design: films, unknowns: ['bond'] });
    expect(told.now.bond).toBeLessThan(0.05);
    expect(told.advised).toEqual([]);
    const both = runJob(benchAdviceJob, { design: films, unknowns: ['bond', 'fan'] });
    expect(both.advised[0]?.candidate).toMatch(/^(pressure|flow)/);
  });

  test('what is foretold is what the fit then states', () => {
    const there = pairWith({
      temperatures: [temperature('onFilm', asDesigned), temperature('onTerminal', asDesigned)],
      pressures: [pressure(asDesigned)],
    });
    const read = { ...there, readings: readFrom(there, there, null) };
    const { now } = runJob(benchAdviceJob, { design: read, unknowns: ['bond', 'fan'] });
    const fit = benchFit({ design: read, unknowns: ['bond', 'fan'] });
    // Advice begins with what one would believe of anything, which narrows it by a little.
    fit.values.forEach(({ unknown, within }) => {
      expect((now[unknown] ?? 0) / within).toBeGreaterThan(0.95);
      expect((now[unknown] ?? 0) / within).toBeLessThanOrEqual(1.001);
    });
  });
});

describe('how long to wait', () => {
  test('every place of every way to run it, metal at rest the longest', () => {
    expect(advice.courses.map(({ run }) => run)).toEqual(['nominal', 'reduced', 'stopped']);
    const sinkWait = (run: string) =>
      advice.courses.find((course) => course.run === run)?.waits.find(({ where }) => where === 'onSink')
        ?.time_s ?? 0;
    expect(sinkWait('nominal')).toBeGreaterThan(10);
    expect(sinkWait('reduced')).toBeGreaterThan(sinkWait('nominal'));
    expect(sinkWait('stopped')).toBeGreaterThan(5 * sinkWait('nominal'));
  });

  test('after the wait a place stands within a third of the instrument of its end', () => {
    for (const { run, waits } of advice.courses) {
      const { load_W, fan_V, room_K } = by(`onFilm 1 ${run}`);
      const bench = onBench(toCore(design), { load_W, fan_V, room_K, time_s: null });
      if (!bench) throw new Error('there is a load');
      const film = waits.find(({ where }) => where === 'onFilm');
      const at_s = [film?.time_s ?? 0, 1.2 * (film?.time_s ?? 0)];
      const options = { horizon_s: at_s[1] as number, tolerance_K: 0.05, untilSettled: false, at_s };
      const course = warmUp(bench.input, options, run === 'stopped' ? fansStopped : ordinaryRun);
      const filmAt = (time_s: number) =>
        course?.points.find((point) => point.time_s === time_s)?.films_K[0] ?? 0;
      expect((film?.end_K ?? 0) - filmAt(at_s[0] as number)).toBeCloseTo(film?.left_K ?? 0, 1);
      expect((film?.end_K ?? 0) - filmAt(at_s[1] as number)).toBeLessThan(film?.left_K ?? 0);
    }
  });

  test('the slowest time constant is longer without a fan, and about a third of the wait for many kelvins', () => {
    const [nominal, , stopped] = advice.courses;
    expect(nominal?.slowest_s).toBeGreaterThan(5);
    expect(stopped?.slowest_s).toBeGreaterThan(2 * (nominal?.slowest_s ?? 0));
  });
});
