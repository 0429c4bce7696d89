import { describe, expect, test, vi } from 'vitest';
import { solveSystem } from '../../../src/core/system/solveSystem.ts';
import { defaultDesign } from '../../../src/model/defaults.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { createDesignStore } from '../../../src/store/designStore.ts';
import { fieldView } from '../../../src/store/fieldView.ts';
import { lastMove } from '../../../src/store/history.ts';

function bench() {
  const solve = vi.fn(solveSystem);
  const store = createDesignStore(defaultDesign, solve);
  const act = store.getState();
  const now = () => store.getState();
  return { act, now, solve, textAt: (path: string) => fieldView(now(), path).text };
}
const keys = (typed: string) => Array.from(typed, (_, at) => typed.slice(0, at + 1));

describe('an edit', () => {
  test('is one step however many keys it took, wrong ones on the way included', () => {
    const { act, now, textAt } = bench();
    for (const text of keys('1/16 in')) act.setText('sink.plate_m', text);
    expect(now().history.past.map(({ name }) => name)).toEqual([expect.stringMatching(/^Plate/)]);
    act.undo();
    expect(now().design).toBe(defaultDesign);
    expect(textAt('sink.plate_m')).toBe('2');
    act.redo();
    expect(textAt('sink.plate_m')).toBe('1/16 in');
    expect(now().design.sink.plate_m).toBe(0.0015875);
  });

  test('ends where the field is left, and where another is typed in', () => {
    const { act, now } = bench();
    act.setText('sink.plate_m', '3');
    act.endEdit();
    act.setText('sink.plate_m', '4');
    act.setText('baffle.standOff_m', '5');
    act.setText('sink.plate_m', '6');
    expect(now().history.past).toHaveLength(4);
    act.undo();
    act.undo();
    expect(now().design).toMatchObject({ sink: { plate_m: 0.004 }, baffle: defaultDesign.baffle });
  });

  test('that is wrong comes back wrong, with the last good answer', () => {
    const { act, now, textAt } = bench();
    act.setText('sink.plate_m', 'thick');
    act.endEdit();
    act.setText('sink.plate_m', '3 mm');
    expect(now().stale).toBe(false);
    act.undo();
    expect(textAt('sink.plate_m')).toBe('thick');
    expect(now().stale).toBe(true);
    act.undo();
    expect(now()).toMatchObject({ stale: false, problems: [], solvedDesign: defaultDesign });
  });

  test('of any kind can be taken back: rows, switches, pasted tables, several values, a default', () => {
    const { act, now } = bench();
    act.addPosition();
    act.removePosition(0);
    act.setValue('positions[1].on', false);
    act.setAllPositions({ flipped: true }, 'All flipped');
    act.setMany({ 'sink.k_WPerMK': 167, 'sink.material': 'aluminium 6061' }, 'Alloy');
    act.addFan();
    act.addExtra();
    act.resetField('positions[1].on');
    expect(now().history.past.map(({ name }) => name)).toEqual([
      'Resistor added',
      'Resistor 1 removed',
      'On, resistor 2',
      'All flipped',
      'Alloy',
      'Fan added',
      'Extra loss added',
      'On, resistor 2, back to its default',
    ]);
    const end = now().design;
    while (act.undo() !== null);
    expect(now().design).toBe(defaultDesign);
    while (act.redo() !== null);
    expect(now().design).toBe(end);
  });

  test('that was refused leaves no step', () => {
    const { act, now } = bench();
    act.removePart(0);
    expect(now().notice).toMatch(/in use/);
    expect(now().history.past).toEqual([]);
  });

  test('after an undo takes the place of what was undone', () => {
    const { act, now } = bench();
    act.setText('sink.plate_m', '3');
    act.undo();
    act.setText('sink.plate_m', '4');
    expect(now().history.future).toEqual([]);
    expect(act.redo()).toBeNull();
    act.undo();
    expect(now().design).toBe(defaultDesign);
  });
});

describe('undo and redo', () => {
  test('bring answers back without computing them again', () => {
    const { act, now, solve } = bench();
    const first = now().outcome;
    act.setText('sink.plate_m', '3');
    const count = solve.mock.calls.length;
    act.undo();
    expect(now().outcome).toBe(first);
    act.redo();
    expect(solve).toHaveBeenCalledTimes(count);
  });

  test('do nothing where there is nothing, and return the edit where there is', () => {
    const { act } = bench();
    expect(act.undo()).toBeNull();
    act.setText('sink.plate_m', '3');
    expect(act.undo()).toMatchObject({ path: 'sink.plate_m' });
    expect(act.redo()).toMatchObject({ path: 'sink.plate_m' });
    expect(act.redo()).toBeNull();
  });

  test('leave the unit system and the chosen part alone', () => {
    const { act, now } = bench();
    act.setText('sink.plate_m', '3 mm');
    act.setSystem('inch');
    act.selectPart('fan');
    act.undo();
    expect(now()).toMatchObject({ system: 'inch', selectedPart: 'fan', design: defaultDesign });
  });

  test('end where another design takes the bench', () => {
    const { act, now } = bench();
    act.setText('sink.plate_m', '3');
    act.openExample(exampleById('onePair'));
    expect(now().history).toMatchObject({ past: [], future: [] });
  });

  test('remember a hundred edits', () => {
    const { act, now } = bench();
    for (let at = 0; at < 130; at++) {
      act.setText('title', `Box ${at}`);
      act.endEdit();
    }
    expect(now().history.past).toHaveLength(100);
    for (let at = 0; at < 100; at++) act.undo();
    expect(now().design.title).toBe('Box 29');
  });
});

describe('the last move', () => {
  test('is measured from before the edit, or from before it was taken back', () => {
    const { act, now } = bench();
    expect(lastMove(now().history)).toBeNull();
    act.setText('sink.plate_m', '3');
    expect(lastMove(now().history)?.moment.design).toBe(defaultDesign);
    const edited = now().design;
    act.undo();
    expect(lastMove(now().history)?.moment.design).toBe(edited);
    act.redo();
    expect(lastMove(now().history)?.moment.design).toBe(defaultDesign);
  });
});
