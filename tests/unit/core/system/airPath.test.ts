import { describe, expect, test } from 'vitest';
import { buildAirPath } from '../../../../src/core/system/airPath.ts';
import { bankGeometry } from '../../../../src/core/system/geometry.ts';
import { fansStopped, ordinaryRun, type SystemInput } from '../../../../src/core/system/input.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';

const pathOf = (input: SystemInput) => buildAirPath(input, bankGeometry(input), ordinaryRun);
const stagesOf = (input: SystemInput) => pathOf(input).links.flatMap(({ stage }) => stage ?? []);
const passagesOf = (input: SystemInput) => pathOf(input).links.flatMap(({ passage }) => passage ?? []);
const base = sampleInput(3);

describe('buildAirPath', () => {
  test('passes guard, neck, plenum, slot and outlet in turn', () => {
    expect(stagesOf(base)).toEqual(['guard', 'neck', 'plenum', 'slot', 'outlet']);
  });

  test('puts filter and extra losses in their places', () => {
    const extra = { name: 'mesh', loss: 1, area_m2: 1e-3, points: [] };
    const input: SystemInput = {
      ...base,
      inlet: { ...base.inlet, filter: { linear_PaSPerM: 5, quadratic_PaS2PerM2: 1, blocked: 0 } },
      extras: [
        { ...extra, place: 'outlet' },
        { ...extra, place: 'plenum' },
        { ...extra, place: 'inlet' },
      ],
    };
    expect(stagesOf(input)).toEqual([
      'guard',
      'filter',
      'inletExtra',
      'neck',
      'plenum',
      'plenumExtra',
      'slot',
      'outlet',
      'outletExtra',
    ]);
  });

  test('has no stage for what is not there or costs nothing', () => {
    const bare: SystemInput = {
      ...base,
      inlet: {
        guard: { kind: 'none', freeShare: 1, loss: 0, blocked: 0 },
        filter: { linear_PaSPerM: 0, quadratic_PaS2PerM2: 0, blocked: 0 },
      },
      outlet: { kind: 'none', freeShare: 1, loss: 0, blocked: 0 },
      baffle: null,
      box: { ...base.box, headroom_m: 0 },
      extras: [{ name: 'nothing', place: 'inlet', loss: 0, area_m2: 1e-3, points: [] }],
    };
    expect(stagesOf(bare)).toEqual(['neck', 'plenum']);
    expect(pathOf(bare).aboveNode).toBe(0);
  });

  test('lets fins, gaps between, sides, ends and leak share the way past the bank', () => {
    expect(passagesOf(base).map(({ kind, index }) => `${kind} ${index}`)).toEqual([
      'fins 0',
      'fins 1',
      'fins 2',
      'fins 3',
      'between 0',
      'side 0',
      'end 0',
      'leak 0',
    ]);
  });

  test('has no passage where a sink is missing or a gap is closed', () => {
    if (!base.baffle) throw new Error('the sample has a baffle');
    const baffle = { ...base.baffle, sideClearance_m: 0, endClearance_m: 0, leakGap_m: 0 };
    const input = { ...base, baffle, hasFirstSink: false };
    expect(passagesOf(input).map(({ kind }) => kind)).toEqual(['fins', 'fins', 'fins', 'between']);
    expect(pathOf(input).finLink[0]).toBe(-1);
  });

  test('keeps gaps between sinks apart by their width', () => {
    const [first, second, third] = base.positions;
    if (!first || !second || !third) throw new Error('three positions');
    const thick = { ...second, part: { ...second.part, thickness_m: 1e-3 } };
    expect(
      passagesOf({ ...base, positions: [first, thick, third] }).filter(({ kind }) => kind === 'between'),
    ).toEqual([
      { kind: 'between', index: 0 },
      { kind: 'between', index: 1 },
    ]);
  });

  test('lets the leak start ahead of the slot', () => {
    const { links, plenumNode } = pathOf(base);
    const slot = links.find(({ stage }) => stage === 'slot');
    const leak = links.find(({ passage }) => passage?.kind === 'leak');
    expect(slot?.from).toBe(plenumNode);
    expect(leak?.from).toBe(plenumNode);
  });

  test('leaves no node without at least two ways, and comes back to the room', () => {
    const { links, nodeCount } = pathOf(base);
    for (let node = 0; node < nodeCount; node++) {
      expect(links.filter(({ from, to }) => from === node || to === node).length).toBeGreaterThan(1);
    }
  });

  test('has no running fan below its start voltage, and a loss in its place', () => {
    const { links, fanLink, fans } = pathOf({ ...base, fan: { ...base.fan, supply_V: 4 } });
    expect(fans).toBeNull();
    expect(links[fanLink]?.law.kind).toBe('loss');
  });

  test('with its fans stopped is the same way with a loss in the fans’ place', () => {
    const stopped = buildAirPath(base, bankGeometry(base), fansStopped);
    const running = pathOf(base);
    expect(stopped.links.length).toBe(running.links.length);
    expect(stopped.links[stopped.fanLink]?.stage).toBe('standingFan');
    stopped.links.forEach((link, i) => {
      if (i !== stopped.fanLink) expect(link).toEqual(running.links[i]);
    });
  });

  test('lets the air rise plumb, less as the box leans, none as it lies', () => {
    const rise = (tilt_rad: number) =>
      pathOf({ ...base, box: { ...base.box, tilt_rad } }).links.reduce((sum, link) => sum + link.rise_m, 0);
    expect(rise(Math.PI / 3)).toBeCloseTo(rise(0) / 2, 12);
    expect(rise(Math.PI / 2)).toBe(0);
    expect(rise(Math.PI)).toBeCloseTo(-rise(0), 12);
  });

  test('comes back to the same height whichever passage it takes', () => {
    const { links, plenumNode } = pathOf(base);
    const slot = links.find(({ stage }) => stage === 'slot')?.rise_m ?? 0;
    for (const { passage, from, rise_m } of links)
      if (passage)
        expect(rise_m + (from === plenumNode ? 0 : slot)).toBeCloseTo(base.sink.length_m + slot, 12);
  });
});
