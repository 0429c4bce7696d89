import { describe, expect, test } from 'vitest';
import { anotherFan, defaultDesign } from '../../../src/model/defaults.ts';
import type { Design } from '../../../src/model/design.ts';
import { setAt } from '../../../src/model/path.ts';
import { inputGroups } from '../../../src/report/inputGroups.ts';
import type { UnitSystem } from '../../../src/report/types.ts';

const changed = (...changes: [string, unknown][]): Design =>
  changes.reduce((design, [path, value]) => setAt(design, path, value), defaultDesign);
/** One row's value, blanks of every kind as one. */
function said(design: Design, title: string, label: string, system: UnitSystem = 'metric'): string {
  const rows = inputGroups(design, system).find((group) => group.title === title)?.rows ?? [];
  const value = rows.find((row) => row.label === label)?.value;
  if (value === undefined) throw new Error(`no row ${title}, ${label}`);
  return value.replace(/\s/g, ' ');
}
const lines = (design: Design) => inputGroups(design, 'metric').flatMap(({ rows }) => rows).length;

describe('the inputs in words', () => {
  test('say the height of the place, or what a barometer read there', () => {
    expect(said(defaultDesign, 'Room', 'air taken in')).toBe('35 °C, 0 m up, 50 % humid');
    const read = changed(['room.pressureFrom', 'barometer'], ['room.pressure_Pa', 98_500]);
    expect(said(read, 'Room', 'air taken in')).toBe('35 °C, 985 hPa by barometer, 50 % humid');
    expect(said(read, 'Room', 'air taken in', 'inch')).toContain('29.09 inHg by barometer');
  });

  test('say the period of a load that is off at times', () => {
    expect(said(defaultDesign, 'Load', 'judged')).toMatch(/duty 100 %$/);
    expect(said(changed(['load.duty', 0.25]), 'Load', 'judged')).toMatch(/duty 25 % of 10 s$/);
  });

  test('say what a resistor drifts by', () => {
    const row = '4 × 10 Ω';
    expect(said(defaultDesign, 'Resistors', row)).toContain(', 25 ppm/K, ');
    const bent = changed(['parts[0].tcr2_perK2', -2e-8]);
    expect(said(bent, 'Resistors', row)).toContain(', 25 ppm/K and −0.02 ppm/K², ');
  });

  test('say how many fans there are, how they age, and how loud they are', () => {
    expect(said(defaultDesign, 'Fan', 'fan')).toBe('60 mm, 12 V, curve to be entered');
    const several = changed(
      ['fan.sideBySide', 2],
      ['fan.inARow', 3],
      ['fan.supplySag', 0.05],
      ['fan.speedLoss', 0.1],
    );
    expect(said(several, 'Fan', 'fan')).toMatch(/, 2 side by side, 3 in a row$/);
    expect(said(several, 'Fan', 'supply')).toBe(
      '12 V, rated 12 V, starts at 6 V, may sag 5 %, 10 % slower with age',
    );
    expect(said(setAt(several, 'load.atWorst', false), 'Fan', 'supply')).not.toContain('sag');
    expect(said(defaultDesign, 'Fan', 'size')).toMatch(/28 mm hub, 7 blades, 3000 rpm, 32 dB\(A\) at 1 m$/);
  });

  test('say every further fan in one line', () => {
    const others = [0, 1].map((index) => anotherFan(defaultDesign.fan, index));
    const three: Design = { ...defaultDesign, moreFans: others };
    expect(said(three, 'Fan', 'and')).toMatch(/^Fan 2 beside, 12 V, 45 Pa to .+; Fan 3 beside, .+$/);
    expect(lines(three)).toBe(lines(defaultDesign) + 1);
  });

  test('say dust only where there is some, and where it can lie', () => {
    expect(said(defaultDesign, 'Openings', 'guard')).toBe('round wires, 70 % free');
    const dusty = changed(['inlet.filter', true], ['inlet.guardBlocked', 0.15], ['inlet.filterBlocked', 0.3]);
    expect(said(dusty, 'Openings', 'guard')).toBe('round wires, 70 % free, 15 % blocked by dust');
    expect(said(dusty, 'Openings', 'filter')).toBe('fitted, 30 % blocked by dust');
    const bare = setAt(setAt(dusty, 'inlet.filter', false), 'inlet.guard.kind', 'none');
    expect(said(bare, 'Openings', 'guard')).toBe('none');
    expect(said(bare, 'Openings', 'filter')).toBe('none');
  });

  test('say how the box lies, what its sheet is, and what it is judged by', () => {
    expect(said(defaultDesign, 'Box', 'bay')).not.toContain('tilted');
    expect(said(changed(['box.tilt_rad', Math.PI / 2]), 'Box', 'bay')).toMatch(/, tilted 90°$/);
    expect(said(defaultDesign, 'Box', 'sheet')).toBe('ABS, 3 mm, 0.18 W/(m·K), to 80 °C');
    expect(said(defaultDesign, 'Limits', 'limits')).toBe('joint 125, exhaust 70, wall 77 °C');
    const loud = changed(['limits.soundJudged', true], ['room.listening_m', 0.5]);
    expect(said(loud, 'Limits', 'limits')).toMatch(/, 45 dB\(A\) at 0.5 m$/);
    expect(said(defaultDesign, 'Limits', 'spare')).toMatch(/settled within 10 ppm$/);
  });

  test('need no more lines for all of it, further fans aside', () => {
    const everything = changed(
      ['room.pressureFrom', 'barometer'],
      ['load.duty', 0.5],
      ['parts[0].tcr2_perK2', 1e-8],
      ['fan.sideBySide', 2],
      ['fan.speedLoss', 0.1],
      ['inlet.guardBlocked', 0.2],
      ['box.tilt_rad', 1],
      ['limits.soundJudged', true],
    );
    expect(lines(everything)).toBe(lines(defaultDesign));
  });
});
