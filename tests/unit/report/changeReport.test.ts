import { describe, expect, test } from 'vitest';
import { solveSystem } from '../../../src/core/system/solveSystem.ts';
import type { Design } from '../../../src/model/design.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { setAt } from '../../../src/model/path.ts';
import { toCore } from '../../../src/model/toCore.ts';
import { changeReport } from '../../../src/report/changeReport.ts';
import { figures as figuresOf } from '../../../src/report/figures.ts';

const eight = exampleById('eightResistors');
const solve = (design: Design) => solveSystem(toCore(design));
const plain = (text: string) => text.replaceAll(/\s/g, ' ');

function changed(path: string, value: unknown, undone = false, system: 'metric' | 'inch' = 'metric') {
  const design = setAt(eight, path, value);
  const since = { design: eight, outcome: solve(eight), name: 'Name', path, undone };
  return changeReport(design, solve(design), since, system);
}

describe('what the last edit did', () => {
  test('is said with both values, in the reader’s units', () => {
    expect(plain(changed('baffle.sideClearance_m', 0.0016).edit)).toBe('Name 0.8 mm → 1.6 mm');
    expect(plain(changed('baffle.slotWidth_m', 0.0254, false, 'inch').edit)).toMatch(/ → 1 in$/);
    expect(changed('baffle.fitted', false).edit).toBe('Name yes → no');
    expect(changed('outlet.kind', 'none').edit).toBe('Name punched sheet → none');
    expect(changed('title', 'Other').edit).toBe('Name');
    expect(plain(changed('room.T_K', 293.15, true).edit)).toBe('Taken back: Name 40 °C → 20 °C');
  });

  test('is the difference of every figure, signed, none where it cannot be read', () => {
    const design = setAt(eight, 'baffle.sideClearance_m', 0.002);
    const [before, after] = [solve(eight), solve(design)];
    if (!before.ok || !after.ok) throw new Error('no answer');
    const { figures } = changed('baffle.sideClearance_m', 0.002);
    const amounts = (outcome: typeof before) =>
      Object.fromEntries(figuresOf(outcome, 'metric').map(({ key, amount }) => [key, amount.value]));
    const film = (amounts(after).film ?? 0) - (amounts(before).film ?? 0);
    expect(plain(figures.film ?? '')).toBe(`+${film.toFixed(1)} K`);
    expect(figures.load).toBe('–');
    expect(figures.fins).toMatch(/^−\d+\.\d.points$/);
    expect(Object.keys(figures)).toEqual(figuresOf(before, 'metric').map(({ key }) => key));
  });

  test('names both verdicts where the edit turned one into the other', () => {
    expect(changed('room.T_K', 343.15).verdict).toMatch(/^Holds with little to spare → does not hold$/i);
    expect(changed('title', 'Other').verdict).toBe('');
  });
});
