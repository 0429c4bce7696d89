import { describe, expect, test } from 'vitest';
import { checkDesign } from '../../../src/model/check.ts';
import { anotherFan, defaultDesign, defaultExtra, defaultPart } from '../../../src/model/defaults.ts';
import type { Design } from '../../../src/model/design.ts';
import { examples } from '../../../src/model/examples/examples.ts';
import { setAt } from '../../../src/model/path.ts';
import type { ProblemCode } from '../../../src/model/problem.ts';
import { wordProblem } from '../../../src/model/wordProblem.ts';

const curve = (...points: [number, number][]) =>
  points.map(([flow_m3PerS, dp_Pa]) => ({ flow_m3PerS, dp_Pa }));
const withPoints = (...points: [number, number][]): Design => ({
  ...defaultDesign,
  extras: [{ ...defaultExtra, points: curve(...points) }],
});
const withFans = (...changes: [string, unknown][]): Design =>
  changes.reduce((design, [path, value]) => setAt(design, path, value), {
    ...defaultDesign,
    moreFans: [anotherFan(defaultDesign.fan, 0), anotherFan(defaultDesign.fan, 1)],
  });
const changed = (...changes: [string, unknown][]): Design =>
  changes.reduce((design, [path, value]) => setAt(design, path, value), defaultDesign);

/** Every way of not fitting: the design, the finding, the field that says it. */
const misfits: [ProblemCode, string, Design][] = [
  ['bankTooLong', 'box.length_m', changed(['box.length_m', 0.05])],
  ['bankTooWide', 'box.width_m', changed(['box.width_m', 0.02])],
  ['endClearanceTooWide', 'baffle.endClearance_m', changed(['baffle.endClearance_m', 0.02])],
  ['sideClearanceTooWide', 'baffle.sideClearance_m', changed(['baffle.sideClearance_m', 0.0101])],
  ['finsTooMany', 'sink.finCount', changed(['sink.finCount', 32])],
  ['finsTooThick', 'sink.finThickness_m', changed(['sink.finCount', 2], ['sink.finThickness_m', 0.013])],
  ['slotTooWide', 'baffle.slotWidth_m', changed(['baffle.slotWidth_m', 0.046])],
  ['collarTooHigh', 'baffle.collar_m', changed(['baffle.collar_m', 0.026])],
  ['chipTooLong', 'parts[0].length_m', changed(['parts[0].length_m', 0.026])],
  ['chipTooWide', 'parts[0].width_m', changed(['parts[0].width_m', 0.026])],
  ['deratingReversed', 'parts[0].zeroPowerAt_K', changed(['parts[0].zeroPowerAt_K', 343])],
  ['filamentTooLong', 'bond.filamentLength_m', changed(['bond.filamentLength_m', 0.14])],
  ['tabsTooWide', 'secondFace.tabWidth_m', changed(['secondFace.tabCount', 4])],
  ['terminalTooLong', 'secondFace.terminalLength_m', changed(['secondFace.terminalLength_m', 0.004])],
  [
    'landingTooLarge',
    'secondFace.tabLanding_m',
    changed(['secondFace.tabLanding_m', 0.1], ['secondFace.tabWidth_m', 0.00315]),
  ],
  ['hubTooLarge', 'fan.hub_m', changed(['fan.hub_m', 0.057])],
  ['openingTooLarge', 'fan.opening_m', changed(['fan.opening_m', 0.061])],
  ['partMissing', 'positions[2].part', changed(['positions[2].part', 1])],
  [
    'flowNotRising',
    'fan.curve[2].flow_m3PerS',
    changed(['fan.curve', curve([0, 40], [0.004, 30], [0.002, 20], [0.008, 0])]),
  ],
  [
    'flowTwice',
    'fan.curve[2].flow_m3PerS',
    changed(['fan.curve', curve([0, 40], [0.004, 30], [0.004, 20], [0.008, 0])]),
  ],
  ['shutOffWithoutPressure', 'fan.curve[0].dp_Pa', changed(['fan.curve', curve([0, 0], [0.008, 0])])],
  ['endPressureNotLowest', 'fan.curve[1].dp_Pa', changed(['fan.curve', curve([0, 10], [0.008, 40])])],
  ['hubTooLarge', 'moreFans[0].hub_m', withFans(['moreFans[0].hub_m', 0.06])],
  [
    'flowNotRising',
    'moreFans[1].curve[2].flow_m3PerS',
    withFans(['moreFans[1].curve[2].flow_m3PerS', 0.001]),
  ],
  [
    'shutOffWithoutPressure',
    'moreFans[0].curve[0].dp_Pa',
    withFans(['moreFans[0].curve', curve([0, 0], [0.008, 0])]),
  ],
  ['endPressureNotLowest', 'moreFans[1].curve[5].dp_Pa', withFans(['moreFans[1].curve[5].dp_Pa', 90])],
  ['lossNotRising', 'extras[0].points[1].dp_Pa', withPoints([0.001, 5], [0.002, 5])],
  ['lossAtRest', 'extras[0].points[0].dp_Pa', withPoints([0, 1], [0.002, 5])],
  ['onePoint', 'extras[0].points[0].flow_m3PerS', withPoints([0, 0])],
];

describe('the check of a whole design', () => {
  test('has nothing against the default design and the examples', () => {
    for (const design of [defaultDesign, ...examples.map((example) => example.design)]) {
      expect(checkDesign(design)).toEqual([]);
    }
  });

  test.each(misfits)('finds %s at %s', (code, path, design) => {
    expect(checkDesign(design).map((found) => [found.code, found.path])).toContainEqual([code, path]);
  });

  test.each(misfits)('words %s in both unit systems, with nothing left unsaid', (code, _path, design) => {
    const found = checkDesign(design).find((each) => each.code === code);
    if (found === undefined) throw new Error(code);
    for (const system of ['metric', 'inch'] as const) {
      const sentence = wordProblem(found, system);
      expect(sentence).toMatch(/^[A-Z0-9].{20,}\.$/);
      expect(sentence).not.toMatch(/undefined|NaN|Infinity|_m\b/);
    }
  });

  test('lets a curve have a dip, but not end above it', () => {
    expect(checkDesign(changed(['fan.curve', curve([0, 50], [0.004, 18], [0.006, 30], [0.01, 0])]))).toEqual(
      [],
    );
    const high = checkDesign(changed(['fan.curve', curve([0, 50], [0.004, 18], [0.006, 30], [0.01, 20])]));
    expect(high.map(({ code }) => code)).toEqual(['endPressureNotLowest']);
  });

  test('has nothing against fans of other kinds, and lets them be wider than the frame of the first', () => {
    expect(checkDesign(withFans())).toEqual([]);
    expect(checkDesign(withFans(['moreFans[1].opening_m', 0.076]))).toEqual([]);
  });

  test('does not ask clearances to fit when the baffle is not fitted', () => {
    const loose = changed(
      ['baffle.fitted', false],
      ['baffle.sideClearance_m', 0.1],
      ['baffle.collar_m', 0.3],
    );
    expect(checkDesign(loose)).toEqual([]);
  });

  test('does not mind a part that nobody uses', () => {
    const huge = { ...defaultPart, length_m: 0.1, width_m: 0.1 };
    expect(checkDesign({ ...defaultDesign, parts: [defaultPart, huge] })).toEqual([]);
  });

  test('lets a row fit its box exactly', () => {
    const { length_m } = defaultDesign.box;
    const [found] = checkDesign(changed(['box.length_m', 0.05]));
    if (found?.code !== 'bankTooLong') throw new Error('expected a bank that is too long');
    expect(found.data.needed_m).toBeLessThan(length_m);
    expect(checkDesign(changed(['box.length_m', found.data.needed_m]))).toEqual([]);
    expect(checkDesign(changed(['box.length_m', found.data.needed_m - 1e-5]))).not.toEqual([]);
  });

  test('says how many fins would fit, and so many do', () => {
    const [found] = checkDesign(changed(['sink.finCount', 60]));
    if (found?.code !== 'finsTooMany') throw new Error('expected too many fins');
    expect(checkDesign(changed(['sink.finCount', found.data.most]))).toEqual([]);
    expect(checkDesign(changed(['sink.finCount', found.data.most + 1]))).not.toEqual([]);
  });
});
