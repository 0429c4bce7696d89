import { describe, expect, test, vi } from 'vitest';
import type { SystemInput } from '../../../src/core/system/input.ts';
import { solveSystem } from '../../../src/core/system/solveSystem.ts';
import { defaultDesign } from '../../../src/model/defaults.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { serialiseDesign } from '../../../src/model/serialiseDesign.ts';
import { toCore } from '../../../src/model/toCore.ts';
import { createDesignStore } from '../../../src/store/designStore.ts';
import { fieldView } from '../../../src/store/fieldView.ts';
import { pastePoints as pastePointsOver } from '../../../src/store/paste/pastePoints.ts';

const store = () => createDesignStore(defaultDesign);
type Store = ReturnType<typeof store>;
const see = (from: Store, path: string) => fieldView(from.getState(), path);
function pastePoints(s: Store, list: string, rows: readonly (readonly [string, string])[]) {
  return s.getState().apply((entered) => pastePointsOver(entered, list, rows), 'Curve pasted');
}
const type = (into: Store, path: string, text: string) => into.getState().setText(path, text);

describe('the design store', () => {
  test('begins with an answer to its first design', () => {
    const { outcome, solvedDesign, stale, design } = store().getState();
    expect(outcome).toEqual(solveSystem(toCore(defaultDesign)));
    expect(solvedDesign).toBe(design);
    expect(stale).toBe(false);
  });

  test('reads what is typed, keeps it as typed, and solves at once', () => {
    const s = store();
    const before = s.getState().outcome;
    type(s, 'sink.plate_m', '1/16 in');
    expect(s.getState().design.sink.plate_m).toBe(0.0015875);
    expect(see(s, 'sink.plate_m')).toMatchObject({ text: '1/16 in', problem: null, unit: 'in' });
    expect(s.getState().outcome).not.toBe(before);
    expect(s.getState().outcome).toEqual(solveSystem(toCore(s.getState().solvedDesign)));
  });

  test('takes a bare number in the unit that was typed there before', () => {
    const s = store();
    type(s, 'sink.plate_m', '0.1 in');
    type(s, 'sink.plate_m', '0.2');
    expect(s.getState().design.sink.plate_m).toBeCloseTo(0.00508, 12);
    type(s, 'sink.plate_m', '2 mm');
    type(s, 'sink.plate_m', '3');
    expect(s.getState().design.sink.plate_m).toBe(0.003);
  });

  test('keeps a wrong text, the value before it and the last answer, and marks it stale', () => {
    const s = store();
    const { outcome, design } = s.getState();
    type(s, 'sink.plate_m', '2 mmm');
    expect(see(s, 'sink.plate_m').text).toBe('2 mmm');
    expect(see(s, 'sink.plate_m').problem).not.toBeNull();
    expect(s.getState()).toMatchObject({ stale: true, design, outcome, solvedDesign: design });
    type(s, 'room.T_K', '30 °C');
    expect(s.getState()).toMatchObject({ stale: true, outcome, solvedDesign: design });
    type(s, 'sink.plate_m', '2 mm');
    expect(s.getState().stale).toBe(false);
    expect(s.getState().solvedDesign.room.T_K).toBeCloseTo(303.15, 9);
  });

  test.each([
    ['nothing', 'sink.length_m', ''],
    ['blanks', 'sink.length_m', '   '],
    ['a word', 'sink.length_m', 'long'],
    ['a unit of something else', 'sink.length_m', '12 cfm'],
    ['a negative length', 'sink.length_m', '-25 mm'],
    ['an absurd length', 'sink.length_m', '4 km'],
    ['a length beyond all numbers', 'sink.length_m', '1e999 mm'],
    ['NaN', 'sink.length_m', 'NaN'],
    ['a division by zero', 'sink.length_m', '1/0 mm'],
    ['two numbers that could both be meant', 'sink.length_m', '1,250'],
    ['half a fin', 'sink.finCount', '9.5'],
    ['no fin', 'sink.finCount', '0'],
    ['a fin too many to count', 'sink.finCount', '9999999999999999999999'],
    ['a word for a count', 'sink.finCount', 'nine'],
    ['a share beyond the whole', 'bond.voidShare', '120 %'],
    ['colder than cold', 'room.T_K', '-300 °C'],
    ['a text without end', 'title', 'x'.repeat(81)],
    ['a pressure for a flow', 'fan.curve[1].flow_m3PerS', '20 Pa'],
  ])('answers %s with a sentence and loses nothing', (_what, path, text) => {
    const s = store();
    const { design, outcome } = s.getState();
    type(s, path, text);
    const view = see(s, path);
    expect(view.text).toBe(text);
    expect(view.problem).toMatch(/^\S.{10,}\.$/s);
    expect(view.problem).not.toMatch(/undefined|\[object/);
    expect(s.getState()).toMatchObject({ stale: true, design, outcome });
    expect(s.getState().problems).toEqual([{ path, reason: view.problem }]);
  });

  test('says the allowed range in the unit that was typed', () => {
    const s = store();
    type(s, 'sink.length_m', '90 in');
    expect(see(s, 'sink.length_m').problem).toMatch(/in\.$/);
    type(s, 'sink.length_m', '900 mm');
    expect(see(s, 'sink.length_m').problem).toMatch(/Allowed is 2 to 500\smm\.$/);
  });

  test('puts what does not go together at its field, keeps the texts, and recovers', () => {
    const s = store();
    const { outcome } = s.getState();
    type(s, 'fan.hub_m', '58 mm');
    expect(see(s, 'fan.hub_m')).toMatchObject({
      text: '58 mm',
      problem: expect.stringContaining('smaller than the opening'),
    });
    expect(s.getState()).toMatchObject({ stale: true, outcome });
    expect(s.getState().solvedDesign.fan.hub_m).toBe(defaultDesign.fan.hub_m);
    type(s, 'fan.opening_m', '59 mm');
    expect(s.getState().stale).toBe(false);
    expect(see(s, 'fan.hub_m')).toMatchObject({ text: '58 mm', problem: null });
  });

  test('warns softly outside the usual range, and solves all the same', () => {
    const s = store();
    type(s, 'sink.plate_m', '8 mm');
    type(s, 'box.length_m', '200 mm');
    expect(see(s, 'sink.plate_m')).toMatchObject({
      problem: null,
      warning: expect.stringMatching(/more than the usual 1 to 6\smm/),
    });
    expect(s.getState().stale).toBe(false);
    expect(see(store(), 'parts[0].tcr_perK').warning).toBeNull();
  });

  test('sets flags and choices at once and refuses what is none', () => {
    const s = store();
    s.getState().setValue('baffle.fitted', false);
    s.getState().setValue('secondFace.way', 'bonded');
    expect(s.getState().solvedDesign).toMatchObject({
      baffle: { fitted: false },
      secondFace: { way: 'bonded' },
    });
    expect(() => s.getState().setValue('secondFace.way', 'glued')).toThrow();
    expect(() => s.getState().setValue('baffle.fitted', 1)).toThrow();
    expect(() => s.getState().setValue('sink.finCount', 2.5)).toThrow();
    expect(() => s.getState().setText('baffle.fitted', 'yes')).toThrow();
  });

  test('does not solve again when nothing changes', () => {
    const solve = vi.fn((input: SystemInput) => solveSystem(input));
    const s = createDesignStore(defaultDesign, solve);
    s.getState().selectPart('fan');
    s.getState().setSystem('inch');
    s.getState().setText('sink.plate_m', 'x');
    s.getState().setText('room.T_K', '20 °C');
    expect(solve).toHaveBeenCalledTimes(1);
    s.getState().setText('sink.plate_m', '2 mm');
    expect(solve).toHaveBeenCalledTimes(2);
  });
});

describe('unit systems', () => {
  test('change what was not typed and leave what was', () => {
    const s = store();
    type(s, 'sink.plate_m', '2 mm');
    s.getState().setSystem('inch');
    expect(see(s, 'sink.plate_m')).toMatchObject({ text: '2 mm', unit: 'mm' });
    expect(see(s, 'sink.length_m')).toMatchObject({ unit: 'in' });
    expect(see(s, 'sink.length_m').text).toBe('0.984252'); // 25/25.4 = 0.98425197 in the digits worth reading
    expect(s.getState().design.sink.length_m).toBe(defaultDesign.sink.length_m);
  });

  test('word what does not fit in their own units', () => {
    const s = store();
    type(s, 'fan.hub_m', '58 mm');
    s.getState().setSystem('inch');
    expect(see(s, 'fan.hub_m').problem).toMatch(/in/);
    expect(see(s, 'fan.hub_m').problem).not.toMatch(/mm/);
  });
});

describe('rows', () => {
  test('are added, doubled and removed with everything typed in them', () => {
    const s = store();
    type(s, 'positions[2].power_W', '1.25 W');
    type(s, 'positions[3].power_W', 'lots');
    s.getState().duplicatePosition(0);
    expect(s.getState().design.positions).toHaveLength(5);
    expect(see(s, 'positions[3].power_W').text).toBe('1.25 W');
    expect(see(s, 'positions[4].power_W')).toMatchObject({ text: 'lots', problem: expect.any(String) });
    s.getState().removePosition(0);
    s.getState().removePosition(0);
    expect(see(s, 'positions[1].power_W').text).toBe('1.25 W');
    s.getState().removePosition(2);
    expect(s.getState().stale).toBe(false);
    s.getState().addPosition();
    expect(s.getState().design.positions).toHaveLength(3);
    expect(s.getState().solvedDesign.positions.map(({ power_W }) => power_W)).toEqual([2, 1.25, 1.25]);
  });

  test('cannot become fewer or more than the schema allows, and say why', () => {
    const s = createDesignStore(exampleById('onePair'));
    expect(s.getState().removePosition(0)).toMatch(/has to stay/);
    expect(s.getState().notice).toMatch(/has to stay/);
    type(s, 'box.length_m', '2 m');
    for (let i = 1; i < 64; i++) expect(s.getState().addPosition()).toBeNull();
    expect(s.getState().notice).toBeNull();
    expect(s.getState().addPosition()).toMatch(/64/);
    expect(s.getState().design.positions).toHaveLength(64);
  });

  test('are all set at once, texts typed in them included', () => {
    const s = store();
    type(s, 'positions[1].power_W', 'nonsense');
    s.getState().setAllPositions({ power_W: 1.5 }, 'All alike');
    expect(s.getState().stale).toBe(false);
    expect(see(s, 'positions[1].power_W').value).toBe(1.5);
    expect(see(s, 'positions[1].power_W').text).toBe('1.5');
  });

  test('of parts: one in use is not removed, and the others keep their users', () => {
    const s = store();
    s.getState().addPart();
    s.getState().addPart();
    s.getState().setValue('positions[1].part', 2);
    expect(s.getState().removePart(2)).toBe(
      'This part is in use by resistor 2. Give them another part first.',
    );
    expect(s.getState().design.parts).toHaveLength(3);
    expect(s.getState().removePart(1)).toBeNull();
    expect(s.getState().design.positions[1]?.part).toBe(1);
    expect(s.getState().stale).toBe(false);
  });

  test('of the fan curve come halfway between their neighbours', () => {
    const s = store();
    expect(s.getState().addPoint('fan.curve', 0)).toBeNull();
    expect(s.getState().design.fan.curve[1]).toEqual({ flow_m3PerS: 0.001, dp_Pa: 42 });
    const { length } = s.getState().design.fan.curve;
    s.getState().addPoint('fan.curve', length - 1);
    expect(s.getState().design.fan.curve.at(-1)).toEqual({ flow_m3PerS: 0.0097, dp_Pa: 0 });
    expect(s.getState().stale).toBe(false);
    s.getState().removePoint('fan.curve', 1);
    expect(s.getState().design.fan.curve).toHaveLength(length);
  });

  test('of the fan curve stay two at least', () => {
    const s = store();
    for (let i = 0; i < 4; i++) expect(s.getState().removePoint('fan.curve', 1)).toBeNull();
    expect(s.getState().removePoint('fan.curve', 1)).toMatch(/2 rows have to stay/);
    expect(s.getState().design.fan.curve).toHaveLength(2);
  });

  test('of the fan curve may be typed out of order, rising or twice: told, kept, recovered', () => {
    const s = store();
    type(s, 'fan.curve[1].flow_m3PerS', '20 m³/h');
    expect(see(s, 'fan.curve[2].flow_m3PerS').problem).toMatch(/rise from row to row/);
    type(s, 'fan.curve[1].flow_m3PerS', '14.4 m³/h');
    expect(see(s, 'fan.curve[2].flow_m3PerS').problem).toMatch(/stands twice/);
    type(s, 'fan.curve[1].flow_m3PerS', '7.2 m³/h');
    expect(s.getState().stale).toBe(false);
    type(s, 'fan.curve[5].dp_Pa', '90 Pa');
    expect(see(s, 'fan.curve[5].dp_Pa').problem).toMatch(/lowest pressure/);
    expect(see(s, 'fan.curve[5].dp_Pa').text).toBe('90 Pa');
  });

  test('of the fan curve share the unit of their column', () => {
    const s = store();
    type(s, 'fan.curve[5].flow_m3PerS', '21 cfm');
    expect(see(s, 'fan.curve[1].flow_m3PerS').unit).toBe('cfm');
    type(s, 'fan.curve[4].flow_m3PerS', '17');
    expect(s.getState().design.fan.curve[4]?.flow_m3PerS).toBeCloseTo(17 * 4.719474432e-4, 9);
  });

  test('of the fan curve are replaced by pasted ones, good cells and bad', () => {
    const s = store();
    pastePoints(s, 'fan.curve', [
      ['0 m³/h', '50 Pa'],
      ['20 m³/h', '3o'],
      ['36 m³/h', '0 Pa'],
    ]);
    expect(s.getState().design.fan.curve).toHaveLength(3);
    expect(see(s, 'fan.curve[1].dp_Pa')).toMatchObject({ text: '3o', problem: expect.any(String) });
    expect(s.getState().stale).toBe(true);
    type(s, 'fan.curve[1].dp_Pa', '30');
    expect(s.getState().stale).toBe(false);
    expect(pastePoints(s, 'fan.curve', [['0', '50']])).toMatch(/at least two/);
  });

  test('of further fans begin like the first, under a name of their own, and go with all typed in them', () => {
    const s = store();
    type(s, 'fan.power_W', '3.5 W');
    expect(s.getState().addFan()).toBeNull();
    expect(s.getState().addFan()).toBeNull();
    const { moreFans } = s.getState().design;
    expect(moreFans.map(({ name, place }) => [name, place])).toEqual([
      ['Fan 2', 'beside'],
      ['Fan 3', 'beside'],
    ]);
    expect(moreFans[0]).toMatchObject({ power_W: 3.5, curve: s.getState().design.fan.curve });
    expect(s.getState().stale).toBe(false);
    s.getState().setValue('moreFans[1].place', 'behind');
    type(s, 'moreFans[1].hub_m', '80 mm');
    expect(see(s, 'moreFans[1].hub_m').problem).toMatch(/smaller than the opening/);
    s.getState().removeFan(0);
    expect(see(s, 'moreFans[0].hub_m')).toMatchObject({ text: '80 mm', problem: expect.any(String) });
    s.getState().removeFan(0);
    expect(s.getState()).toMatchObject({ stale: false, design: { moreFans: [] } });
  });

  test('of further fans have curves that are edited and pasted like any other', () => {
    const s = store();
    s.getState().addFan();
    s.getState().addPoint('moreFans[0].curve', 0);
    expect(s.getState().design.moreFans[0]?.curve[1]).toEqual({ flow_m3PerS: 0.001, dp_Pa: 42 });
    s.getState().removePoint('moreFans[0].curve', 1);
    pastePoints(s, 'moreFans[0].curve', [
      ['0 cfm', '0.2 inH2O'],
      ['20 cfm', '0 inH2O'],
    ]);
    expect(s.getState().design.moreFans[0]?.curve).toHaveLength(2);
    expect(see(s, 'moreFans[0].curve[1].flow_m3PerS').unit).toBe('cfm');
    expect(s.getState().design.fan.curve).toEqual(defaultDesign.fan.curve);
    expect(s.getState().stale).toBe(false);
    type(s, 'moreFans[0].curve[1].dp_Pa', '3 inH2O');
    expect(see(s, 'moreFans[0].curve[1].dp_Pa').problem).toMatch(/lowest pressure/);
  });

  test('of further fans are seven at most', () => {
    const s = store();
    for (let i = 0; i < 7; i++) expect(s.getState().addFan()).toBeNull();
    expect(s.getState().addFan()).toMatch(/room for 7 rows/);
    expect(s.getState().design.moreFans).toHaveLength(7);
  });

  test('of extra losses come whole and go whole', () => {
    const s = store();
    s.getState().addExtra();
    s.getState().addPoint('extras[0].points', 0);
    expect(s.getState().design.extras[0]?.points).toHaveLength(2);
    expect(s.getState().stale).toBe(false);
    type(s, 'extras[0].loss', 'x');
    expect(s.getState().stale).toBe(true);
    s.getState().removeExtra(0);
    expect(s.getState()).toMatchObject({ stale: false, drafts: {} });
  });
});

describe('other designs', () => {
  test('come from examples, from nothing and from files', () => {
    const s = store();
    type(s, 'sink.plate_m', 'bad');
    s.getState().openExample(exampleById('twoDozen'));
    expect(s.getState()).toMatchObject({ stale: false, drafts: {}, design: exampleById('twoDozen') });
    s.getState().newDesign();
    expect(s.getState().design).toEqual(defaultDesign);
    expect(s.getState().openText(serialiseDesign(exampleById('onePair')))).toMatchObject({ ok: true });
    expect(s.getState().solvedDesign).toEqual(exampleById('onePair'));
  });

  test('change nothing when their file is not in order', () => {
    const s = store();
    type(s, 'sink.plate_m', 'bad');
    const before = s.getState();
    const read = s.getState().openText('{"format": "throughfin-design", "version": 1}');
    expect(read.ok).toBe(false);
    expect(s.getState()).toBe(before);
  });
});

describe('the view of a field', () => {
  test('is the same object until something in it changes', () => {
    const s = store();
    const view = see(s, 'sink.plate_m');
    type(s, 'room.T_K', '22 °C');
    expect(see(s, 'sink.plate_m')).toBe(view);
    type(s, 'sink.plate_m', '2.1 mm');
    expect(see(s, 'sink.plate_m')).not.toBe(view);
  });

  test('shows counts, texts, flags and choices by their value', () => {
    const s = store();
    expect(see(s, 'sink.finCount')).toMatchObject({ text: '9', value: 9, unit: '' });
    expect(see(s, 'title')).toMatchObject({ text: 'New fan box' });
    expect(see(s, 'baffle.fitted')).toMatchObject({ value: true });
    expect(see(s, 'secondFace.way')).toMatchObject({ value: 'tabs' });
  });
});
