import { describe, expect, test } from 'vitest';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { askedGaps, firstGapForm, pinnedForm, usualRange } from '../../../src/store/gapForm.ts';

const design = exampleById('eightResistors');
const plain = (text: string | null | undefined) => (text ?? '').replaceAll('\u202f', ' ');

describe('the form of the gaps', () => {
  test('asks a sensible range without a touch', () => {
    const { values, cut, line, map, against } = askedGaps(firstGapForm, design, 'metric');
    expect(values).toEqual({ text: '0 to 4 mm by 0.5', unit: '', problem: null });
    expect(cut).toEqual({ text: '0.2', unit: 'mm', problem: null });
    expect(line).toMatchObject({ gap: 'sideClearance_m', cut_m: 0.0002 });
    expect(line?.values_m).toHaveLength(9);
    expect(line?.design).toBe(design);
    expect([map, against]).toEqual([null, null]);
  });

  test('begins with a range that reads, in inches too', () => {
    expect(usualRange(design, 'slotWidth_m', 'metric')).toBe('5 to 45 mm by 5');
    expect(usualRange(design, 'sideClearance_m', 'inch')).toBe('0 to 0.16 in by 0.02');
    expect(askedGaps(firstGapForm, design, 'inch').line?.values_m.at(-1)).toBeCloseTo(0.16 * 0.0254, 9);
  });

  test('takes what is typed, and keeps it when it is wrong', () => {
    const typed = (text: string) =>
      askedGaps({ ...firstGapForm, values: { sideClearance_m: text } }, design, 'metric');
    expect(typed('0, 1/32 in, 0.8 mm, 1.5').line?.values_m).toEqual([0, 0.00079375, 0.0008, 0.0015]);
    const wrong = typed('0, tight');
    expect(wrong.values.text).toBe('0, tight');
    expect(wrong.values.problem).toContain('«tight» is not a number');
    expect(wrong.line).toBe(null);
  });

  test('reads how far a cut may miss, within reason', () => {
    const cut = (text: string) =>
      askedGaps({ ...firstGapForm, cuts: { sideClearance_m: text } }, design, 'metric');
    expect(cut('5 thou').line?.cut_m).toBeCloseTo(0.000127, 9);
    expect(cut('5 thou').cut.unit).toBe('');
    expect(cut('0').line?.cut_m).toBe(0);
    expect(plain(cut('1 cm').cut.problem)).toBe('Out of bounds. Allowed is up to 5 mm.');
    expect(cut('-1').line).toBe(null);
    expect(cut('much').cut.problem).toContain('«much»');
  });

  test('asks a map of two gaps', () => {
    const form = { ...firstGapForm, against: 'slotWidth_m' as const, values: { slotWidth_m: '10, 20' } };
    const { line, map, against } = askedGaps(form, design, 'metric');
    expect(line).toBe(null);
    expect(map?.x.gap).toBe('sideClearance_m');
    expect(map?.y).toEqual({ gap: 'slotWidth_m', values_m: [0.01, 0.02] });
    expect(against?.text).toBe('10, 20');
    const wrong = askedGaps({ ...form, values: { slotWidth_m: '10 to 20 by 0.1' } }, design, 'metric');
    expect(wrong.against?.problem).toContain('at most 20 fit');
    expect(wrong.map).toBe(null);
  });

  test('holds its ranges fast once a row was taken, what was typed before all', () => {
    const form = { ...firstGapForm, against: 'slotWidth_m' as const, values: { slotWidth_m: '10, 20' } };
    const pinned = pinnedForm(form, design, 'metric');
    expect(pinned.values).toEqual({ sideClearance_m: '0 to 4 mm by 0.5', slotWidth_m: '10, 20' });
    const wider = { ...design, baffle: { ...design.baffle, sideClearance_m: 0.003 } };
    expect(askedGaps(pinned, wider, 'metric').values.text).toBe('0 to 4 mm by 0.5');
    expect(askedGaps(form, wider, 'metric').values.text).not.toBe('0 to 4 mm by 0.5');
    expect(pinnedForm(firstGapForm, design, 'metric').values).toEqual({
      sideClearance_m: '0 to 4 mm by 0.5',
    });
  });
});
