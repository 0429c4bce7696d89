import { describe, expect, test } from 'vitest';
import { checkDesign } from '../../../src/model/check.ts';
import { defaultDesign } from '../../../src/model/defaults.ts';
import type { Design } from '../../../src/model/design.ts';
import { readDesign } from '../../../src/model/readDesign.ts';

type Row = Design['spreads'][number];
const row = (change: Partial<Row>): Row => ({
  path: 'room.T_K',
  kind: 'normal',
  relative: false,
  size: 1,
  ...change,
});
const found = (...spreads: Row[]) =>
  checkDesign({ ...defaultDesign, spreads }).map(({ path, code }) => [path, code]);

describe('spreads of a design', () => {
  test('are each of an input that varies', () => {
    expect(found(row({}), row({ path: 'parts[].ceramic_WPerMK' }))).toEqual([]);
    const nothing = [
      'sink.colour',
      'title',
      'sink.finCount',
      'positions[0].power_W',
      'limits.joint_K',
      'parts[].tolerance',
      'load.duty',
      'baffle.fitted',
      '__proto__',
    ];
    for (const path of nothing)
      expect(found(row({ path })), path).toEqual([['spreads[0].path', 'spreadOfNothing']]);
  });

  test('stand once for each input', () => {
    expect(found(row({}), row({ size: 2 }))).toEqual([['spreads[1].path', 'spreadTwice']]);
  });

  test('go by a tolerance only where the design states one', () => {
    expect(found(row({ path: 'parts[].R_Ohm', kind: 'tolerance' }))).toEqual([]);
    expect(found(row({ kind: 'tolerance' }))).toEqual([['spreads[0].kind', 'spreadWithoutTolerance']]);
  });

  test('are refused in a file in words', () => {
    const read = readDesign({ ...defaultDesign, spreads: [row({ path: 'sink.colour' })] });
    expect(read).toMatchObject({
      ok: false,
      problems: [{ path: 'spreads[0].path', reason: 'No input that varies has this name.' }],
    });
  });
});
