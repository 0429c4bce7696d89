import { describe, expect, test } from 'vitest';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import { createDesignStore } from '../../../../src/store/designStore.ts';
import { fieldView } from '../../../../src/store/fieldView.ts';
import { pasteRow } from '../../../../src/store/paste/pasteRow.ts';

function paste(text: string, row = 0) {
  const store = createDesignStore(exampleById('eightResistors'));
  const { ok, words } = pasteRow(store.getState().apply, row, text);
  const { design } = store.getState();
  return { store, refusal: ok ? null : words, design, watts: design.positions.map(({ power_W }) => power_W) };
}

describe('a table of resistors pasted from a spreadsheet', () => {
  test('of one column is watts, from the row it is pasted into, and no further than it goes', () => {
    const { watts, refusal } = paste('1\n2.5\n3', 2);
    expect(refusal).toBeNull();
    expect(watts).toEqual([4, 4, 1, 2.5, 3, 4, 4, 4]);
  });

  test('makes the row longer where it must', () => {
    const { design, watts } = paste('1\n2\n3\n4', 6);
    expect(design.positions).toHaveLength(10);
    expect(watts.slice(6)).toEqual([1, 2, 3, 4]);
  });

  test('reads decimal commas, units, yes and no', () => {
    const { design } = paste('1\tyes\tno\t1,5\n1\tno\tx\t500 mW');
    expect(design.positions.slice(0, 2)).toEqual([
      { part: 0, on: true, flipped: false, power_W: 1.5 },
      { part: 0, on: false, flipped: true, power_W: 0.5 },
    ]);
  });

  test('goes by its head, in any order, and leaves what is not named', () => {
    const { design } = paste('Watts;Flipped;remark\n2;1;first\n3;0;second');
    expect(design.positions.slice(0, 3).map(({ power_W, flipped, on }) => [power_W, flipped, on])).toEqual([
      [2, true, true],
      [3, false, true],
      [4, false, true],
    ]);
  });

  test('of resistances makes the parts that are missing, like the one that was there', () => {
    const { design } = paste('R,watts\n22,2\n47,3\n4k7,1\n47 Ω,3');
    expect(design.parts.map(({ R_Ohm }) => R_Ohm)).toEqual([22, 47, 4700]);
    expect(design.parts.map(({ name }) => name).slice(1)).toEqual(['47 Ω', '4k7 Ω']);
    expect(design.positions.slice(0, 4).map(({ part }) => part)).toEqual([0, 1, 2, 1]);
    expect(design.parts[1]).toMatchObject({ rated_W: design.parts[0]?.rated_W });
  });

  test('takes the units of its head for bare numbers', () => {
    const { design, watts } = paste('R (kΩ);watts [mW]\n0,022;1500\n4,7;500 mW\n47R;2 W');
    expect(watts.slice(0, 3)).toEqual([1.5, 0.5, 2]);
    expect(design.parts.map(({ R_Ohm }) => R_Ohm)).toEqual([22, 4700, 47]);
    expect(design.parts[1]?.name).toBe('4,7 kΩ');
  });

  test('says how many rows it has taken, and what it has left', () => {
    const store = createDesignStore(exampleById('eightResistors'));
    expect(pasteRow(store.getState().apply, 0, '1\n2', 'watts.csv')).toEqual({
      ok: true,
      words: '2 rows taken over. Undo brings back what was there.',
    });
    expect(store.getState().history.past.at(-1)?.name).toBe('Resistors opened');
    expect(pasteRow(store.getState().apply, 0, 'watts;remark\n2;first').words).toBe(
      'One row taken over. Left out: “remark”. Undo brings back what was there.',
    );
  });

  test('keeps watts that do not read as typed, and tells them', () => {
    const { store } = paste('2\nlots\n3');
    expect(fieldView(store.getState(), 'positions[1].power_W')).toMatchObject({
      text: 'lots',
      problem: expect.any(String),
    });
    expect(store.getState().design.positions[2]?.power_W).toBe(3);
  });

  test.each([
    ['part;watts\nno such part;2', /^Line 2: there is no part “no such part”\. There are 1 “/],
    ['on;watts\nyes;2\nmaybe;3', /^Line 3: “maybe” is neither yes nor no/],
    ['R;watts\nfew;2', /^Line 2: “few” is no resistance/],
    ['1,5\n2,5', /one number with a decimal comma, or two numbers/],
    ['remark;colour\n1;2', /None of these columns is known: “remark”, “colour”\./],
    ['"1;2', /^Line 1: a quote is opened/],
    ['watts;on', /no row below the head/],
    [Array.from({ length: 70 }, () => '1').join('\n'), /70 resistors; at most 64/],
  ])('is refused whole where it cannot be taken: %s', (text, reason) => {
    const { refusal, design, store } = paste(text);
    expect(refusal).toMatch(reason);
    expect(design).toBe(exampleById('eightResistors'));
    expect(store.getState().history.past).toEqual([]);
  });
});
