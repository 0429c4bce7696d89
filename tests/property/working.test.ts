import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { driftOf } from '../../src/core/system/drift.ts';
import { fansStopped } from '../../src/core/system/input.ts';
import type { Solved } from '../../src/core/system/outcome.ts';
import { trustOf } from '../../src/core/system/trust.ts';
import type { Step } from '../../src/core/system/working/book.ts';
import { cardsOf, type Working, workingOf } from '../../src/core/system/working/working.ts';
import type { Design } from '../../src/model/design.ts';
import { examples } from '../../src/model/examples/examples.ts';
import { toCore } from '../../src/model/toCore.ts';
import { figureId } from '../../src/report/working/figureId.ts';
import { arbitraryDesign, type Flavour } from '../helpers/arbitraryDesign.ts';

/** With fans everything is settled to a nanokelvin; what the form takes at its very ends is met half way. */
const running = { usual: 1e-9, hard: 1e-7 } as const;
/** Without, draught and warmth are followed to a microkelvin, and met half way where they answer each other. */
const stopped = 2e-5;
/** What hangs on less than this hangs on rounding: there air moves by nothing, or nothing is carried. */
const nothing = 1e-9;

/** Sums and differences lose digits where their terms are large beside them. */
const sums = new Set(['pressureMeeting', 'massSum', 'wattSum', 'givenOff', 'flowShare', 'airNetwork']);

function toleranceOf(step: Step, id: string, flavour: Flavour): number {
  const share = step.places.every((place) => place.stopped) ? stopped : running[flavour];
  const terms = sums.has(id) ? Object.values(step.given).map(Math.abs) : [];
  return share * Math.max(Math.abs(step.value), nothing, ...terms);
}

/** Everything that must be so of a working, whatever the design. */
function holds({ steps, figures }: Working, flavour: Flavour): void {
  for (const step of steps) {
    const { record, given, from, value, number } = step;
    const method = record.kind === 'card' ? record.card : record.balance;
    for (const each of Object.values(given)) expect(Number.isFinite(each), method.id).toBe(true);
    const off = Math.abs(method.evaluate(given) - value);
    expect(off, `${method.id} ${value} ${JSON.stringify(given)}`).toBeLessThanOrEqual(
      toleranceOf(step, method.id, flavour),
    );
    for (const [variable, origin] of Object.entries(from)) {
      if (typeof origin !== 'number') continue;
      // Built upon earlier steps only, so there is no circle; what is taken over is what was found there.
      expect(origin).toBeLessThan(number);
      expect(given[variable]).toBe(steps[origin - 1]?.value);
    }
  }
  const ids = figures.map(figureId);
  expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  for (const { steps: numbers, value } of figures) {
    expect(numbers.every((number) => number >= 1 && number <= steps.length)).toBe(true);
    expect(steps[(numbers[numbers.length - 1] as number) - 1]?.value).toBe(value);
  }
}

/** Every number that the outcome has under its id. */
function expected({ air, heat, limits }: Solved): Map<string, number | null> {
  const found = new Map<string, number | null>([
    ['flow', air.flow_m3PerS],
    ['massFlow', air.massFlow_kgPerS],
    ['density', air.rho_kgPerM3],
    ['entering', heat.entering_K],
    ['exhaust', heat.exhaust_K],
    ['carried', heat.carried_W],
    ['shell', heat.shell_W],
    ['total', heat.total_W],
    ['draught', air.draught_Pa],
  ]);
  if (air.running) {
    found
      .set('fanPressure', air.fanPressure_Pa)
      .set('shutOff', air.shutOff_Pa)
      .set('freeFlow', air.freeFlow_m3PerS);
    found.set('sound', air.sound_dBA).set('fanWatts', heat.fan_W);
    for (const fan of air.fans) {
      found.set(`speed:${fan.index + 1}`, fan.speedRatio).set(`fanFlow:${fan.index + 1}`, fan.flow_m3PerS);
      found.set(`fanDp:${fan.index + 1}`, fan.dp_Pa);
    }
  }
  const count = new Map<string, number>();
  for (const { key, dp_Pa } of air.stages) {
    const before = count.get(key) ?? 0;
    count.set(key, before + 1);
    found.set(before === 0 ? `stage:${key}` : `stage:${key}:${before + 1}`, dp_Pa);
  }
  for (const p of heat.positions) {
    const n = p.index + 1;
    found.set(`film:${n}`, p.film_K).set(`joint:${n}`, p.joint_K).set(`body:${n}`, p.body_K);
    found.set(`bond:${n}`, p.bond_K).set(`power:${n}`, p.power_W).set(`worst:${n}`, p.worst_W);
    found.set(`nominal:${n}`, p.nominal_W).set(`voltage:${n}`, p.voltage_V);
  }
  for (const sink of heat.sinks) {
    if (!sink) continue;
    const n = sink.index + 1;
    found.set(`plate:${n}`, Math.max(sink.before_K ?? 0, sink.after_K ?? 0)).set(`heat:${n}`, sink.heat_W);
    found.set(`airOut:${n}`, sink.airOut_K).set(`resistance:${n}`, sink.R_KPerW);
    found.set(`coefficient:${n}`, sink.h_WPerM2K).set(`efficiency:${n}`, sink.finEfficiency);
    found.set(`facing:${n}`, sink.facing_K).set(`outside:${n}`, sink.outside_K);
  }
  for (const rung of heat.ladder) found.set(`rung:${rung.key}`, rung.dT_K);
  for (const limit of limits) {
    found.set(`limit:${limit.key}`, limit.value);
    if (limit.margin_K !== null) found.set(`margin:${limit.key}`, limit.margin_K);
    if (limit.loadFactor !== null) found.set(`loadFactor:${limit.key}`, limit.loadFactor);
  }
  return found;
}

/** Largest number that a comparison of this figure rests on: a rung is a difference of temperatures. */
function scaleOf(id: string, outcome: Solved): number {
  if (id.startsWith('rung:')) return outcome.heat.exhaust_K;
  return /^(?:stage|draught)/.test(id) ? outcome.air.shutOff_Pa : 0;
}

function agrees(working: Working, outcome: Solved, prefix: string, flavour: Flavour): void {
  const told = new Map(working.figures.map((figure) => [figureId(figure), figure.value]));
  for (const [id, value] of expected(outcome)) {
    const found = told.get(`${prefix}${id}`);
    if (found === undefined) expect.fail(`no figure ${prefix}${id}`);
    const share = prefix === '' ? running[flavour] : stopped;
    const scale = Math.max(Math.abs(value ?? 0), scaleOf(id, outcome), nothing);
    if (!(Math.abs(found - (value ?? 0)) <= share * scale))
      expect.fail(`${prefix}${id} is ${found}, not ${value}`);
  }
}

function check(design: Design, flavour: Flavour, withDrift: boolean): void {
  const input = toCore(design);
  const working = workingOf(input, (outcome) => ({
    drift: withDrift && outcome.ok ? driftOf(input) : null,
    stop: null,
    rated: { running: null, stopped: null },
  }));
  holds(working, flavour);
  if (working.running.ok) agrees(working, working.running, '', flavour);
  if (working.stopped.ok) agrees(working, working.stopped, 'stopped:', flavour);
  const told = new Set(cardsOf(working.steps).map(({ id }) => id));
  if (!withDrift) told.add('resistanceDrift');
  const used = new Set([...trustOf(input).used, ...trustOf(input, fansStopped).used]);
  if (!withDrift) used.add('resistanceDrift');
  expect([...told].sort()).toEqual([...used].sort());
}

describe('the working of an answer', () => {
  test.each(examples.map(({ id, design }) => [id, design] as const))(
    'of the example %s reproduces every value of it, from every method that it used',
    (_, design) => check(design, 'usual', true),
  );

  test.each([
    ['usual', 60],
    ['hard', 140],
  ] as const)('of random designs, %s, %i of them, does so too', (flavour, numRuns) => {
    const sizes = { mostPositions: 4, mostParts: 2 };
    let count = 0;
    // Following pulses takes longer than everything else: four of them do.
    const mostlySteady = (design: Design): Design =>
      flavour === 'hard' && count++ % 25 === 7 ? design : { ...design, load: { ...design.load, duty: 1 } };
    fc.assert(
      fc.property(arbitraryDesign(flavour, sizes), (design) => check(mostlySteady(design), flavour, false)),
      { seed: 20261128, numRuns, endOnFailure: true },
    );
  });
});
