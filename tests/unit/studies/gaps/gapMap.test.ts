import { describe, expect, test } from 'vitest';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import { gapValues } from '../../../../src/studies/gaps/gap.ts';
import { gapMapJob, gridLines } from '../../../../src/studies/gaps/gapMap.ts';
import { tryValues } from '../../../../src/studies/vary.ts';
import { eightWithoutBaffle, sampleGapMap } from '../../../helpers/sampleGaps.ts';

const design = exampleById('eightResistors');
const { question, map } = sampleGapMap([0, 4, 8, 12], [3, 9, 15]);

const state = (side_m: number, slot_m: number) => {
  const trial = tryValues(design, {
    ...gapValues('sideClearance_m', side_m),
    ...gapValues('slotWidth_m', slot_m),
  });
  return trial.ok ? trial.state : trial.why;
};

describe('the lines of a map’s grid', () => {
  test('hold what is asked and what the design has now, with even steps between', () => {
    const lines = gridLines(design, question.x);
    expect(lines.filter(({ isRow }) => isRow).map(({ at_m }) => at_m)).toEqual([
      0, 0.0008, 0.004, 0.008, 0.012,
    ]);
    expect(lines.length).toBeGreaterThan(18);
    expect(lines.length).toBeLessThan(25);
    const at = lines.map(({ at_m }) => at_m);
    expect([...at].sort((a, b) => a - b)).toEqual(at);
  });

  test('are one for a single value', () => {
    expect(gridLines(eightWithoutBaffle(), { gap: 'leakGap_m', values_m: [0.001] })).toEqual([
      { at_m: 0.001, isRow: true },
    ]);
  });
});

describe('a map of two gaps', () => {
  test('has at every node what the design has with both gaps cut so', () => {
    const [row, column] = [map.ys.length - 1, map.xs.findIndex(({ at_m }) => at_m === 0.004)];
    const slot_m = map.ys[row]?.at_m ?? 0;
    const node = map.nodes[row]?.[column];
    const trial = tryValues(design, {
      ...gapValues('sideClearance_m', 0.004),
      ...gapValues('slotWidth_m', slot_m),
    });
    expect(trial.ok && node?.ok ? node.outputs : null).toEqual(trial.ok ? trial.outputs : undefined);
  });

  test('draws the line where the box stops holding: it holds on one side and not on the other', () => {
    const points = map.failLines.flat();
    expect(map.failLines).toHaveLength(1);
    expect(points.length).toBeGreaterThan(15);
    // A twentieth of the map to both sides, across the line: looser sides and a tighter slot are worse.
    for (const { x, y } of points.filter((_, i) => i % 4 === 1)) {
      expect(state(Math.max(0, x - 0.0004), y + 0.0006)).toBe('little');
      expect(state(Math.min(0.00999, x + 0.0004), y - 0.0006)).toBe('fails');
    }
  });

  test('has the same line as one gap alone', () => {
    const [line] = map.failLines;
    const crossing = line?.find(({ y }, i) => y <= 0.009 && (line[i + 1]?.y ?? 0) > 0.009);
    expect(crossing?.x).toBeGreaterThan(0.0055);
    expect(crossing?.x).toBeLessThan(0.0065);
  });

  test('leaves out what cannot be built, with the reason', () => {
    const last = map.nodes.map((line) => line.at(-1));
    for (const node of last)
      expect(node).toMatchObject({ ok: false, problem: { code: 'sideClearanceTooWide' } });
  });

  test('knows the present design and the one without a baffle', () => {
    expect(map.present?.ok && map.present.state).toBe('little');
    expect(map.none.ok && map.none.state).toBe('fails');
    expect(gapMapJob.gather(question, [{ present: map.present, none: map.none }]).nodes).toEqual([]);
  });
});
