import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { askedSizing, firstSizingForm, type SizingBoxKey } from '../../../src/io/sizingForm.ts';
import { eightResistors } from '../../../src/model/examples/eightResistors.ts';
import { usualRules } from '../../../src/studies/sizing/finRules.ts';
import { arbitraryDesign } from '../../helpers/arbitraryDesign.ts';

const asked = (texts: Partial<Record<SizingBoxKey, string>> = {}, system: 'metric' | 'inch' = 'metric') =>
  askedSizing({ ask: 'film', texts }, eightResistors, system);

describe('what is asked of a size', () => {
  test('begins with the spare that the design wants, and the usual rules', () => {
    const { target, rules, boxes } = askedSizing(firstSizingForm, eightResistors, 'metric');
    expect(target).toEqual({ ask: 'spare', spareFactor: 1.25 });
    expect(rules).toEqual(usualRules(eightResistors));
    expect(boxes.cutters).toEqual({ text: '3', unit: 'mm', problem: null });
    expect(boxes.sound.text).toBe('');
  });

  test('begins with rules that read, whatever the design', () => {
    const designs = fc.sample(arbitraryDesign('hard', { mostPositions: 3 }), { seed: 20261125, numRuns: 50 });
    const long = { ...eightResistors, positions: eightResistors.positions.slice(0, 1) };
    for (const design of [{ ...long, box: { ...long.box, length_m: 3 } }, ...designs]) {
      for (const system of ['metric', 'inch'] as const) {
        const { boxes, rules } = askedSizing(firstSizingForm, design, system);
        expect(Object.values(boxes).flatMap(({ problem }) => problem ?? [])).toEqual([]);
        expect(rules).not.toBeNull();
      }
    }
  });

  test('is read in the units of the reader, or in any that is typed', () => {
    expect(asked({ margin: '15' }).target).toEqual({ ask: 'film', margin_K: 15 });
    expect(asked({ margin: '18' }, 'inch').target).toEqual({ ask: 'film', margin_K: 10 });
    expect(asked().target).toEqual({ ask: 'film', margin_K: 10 });
    expect(asked({ margin: '9 °F' }).target).toEqual({ ask: 'film', margin_K: 5 });
    expect(asked({}, 'inch').target).toEqual({ ask: 'film', margin_K: 10 });
  });

  test('takes lists as people write them', () => {
    const { rules } = asked({ cutters: '1/16 in, 2 and 3 mm', thicknesses: '0.8; 1;1.5' });
    expect(rules?.cutters_m).toEqual([0.0015875, 0.002, 0.003]);
    expect(rules?.thicknesses_m).toEqual([0.0008, 0.001, 0.0015]);
  });

  test('has no bound where nothing stands', () => {
    expect(asked().rules).toMatchObject({ mostSound_dBA: null, mostPressure_Pa: null });
    const bounded = asked({ sound: '30', pressure: '0.1 inH2O' }).rules;
    expect(bounded?.mostSound_dBA).toBe(30);
    expect(bounded?.mostPressure_Pa).toBeCloseTo(24.91, 2);
  });

  test.each([
    ['margin', 'warm', /is not a number/],
    ['margin', '300', /Allowed is 0 to 200/],
    ['cutters', '0.1', /Allowed is 0.5 to 20/],
    ['cutters', ' ', /Nothing stands here/],
    ['thicknesses', '1, x', /is not a number/],
    ['thicknesses', '1, 2, 3, 4, 5, 6, 7, 8, 9', /At most 8/],
    ['least', '15', /more than the most/],
  ] as const)('says what is wrong with %s “%s”', (key, text, reason) => {
    const { boxes, target, rules } = asked({ [key]: text });
    expect(boxes[key].problem).toMatch(reason);
    expect(key === 'margin' ? target : rules).toBeNull();
    expect(boxes[key].text).toBe(text);
  });
});
