import { describe, expect, test } from 'vitest';
import { gapLineStudy, gapMapStudy } from '../../../src/cli/gapStudies.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';

const design = exampleById('eightResistors');

describe('one gap asked on a terminal', () => {
  test('is the side clearance over its usual range unless said otherwise', () => {
    expect(gapLineStudy.ask(design, {}, 'metric')).toMatchObject({
      gap: 'sideClearance_m',
      values_m: [0, 0.0005, 0.001, 0.0015, 0.002, 0.0025, 0.003, 0.0035, 0.004],
      cut_m: 0.0002,
    });
  });

  test('takes gap, values and cut as typed', () => {
    const asked = gapLineStudy.ask(design, { gap: 'slot', values: '1/2, 1', cut: '0.01' }, 'inch');
    expect(asked).toMatchObject({ gap: 'slotWidth_m', values_m: [0.0127, 0.0254] });
    expect(typeof asked === 'string' ? 0 : asked.cut_m).toBeCloseTo(0.000254, 9);
  });

  test('says what it does not understand', () => {
    expect(gapLineStudy.ask(design, { gap: 'top' }, 'metric')).toContain('No gap top. Gaps: side, slot');
    expect(gapLineStudy.ask(design, { values: 'wide' }, 'metric')).toContain('side: «wide»');
    expect(gapLineStudy.ask(design, { cut: '1 cm' }, 'metric')).toContain('allowed is up to 5 mm');
    expect(gapLineStudy.ask(design, { cut: 'so' }, 'metric')).toContain('cut=: «so»');
  });
});

test('two gaps are asked on a terminal likewise', () => {
  expect(gapMapStudy.ask(design, { xs: '0, 1', ys: '10' }, 'metric')).toMatchObject({
    x: { gap: 'sideClearance_m', values_m: [0, 0.001] },
    y: { gap: 'slotWidth_m', values_m: [0.01] },
  });
  expect(gapMapStudy.ask(design, { x: 'slot' }, 'metric')).toBe('A map needs two different gaps.');
  expect(gapMapStudy.ask(design, { y: 'lid' }, 'metric')).toContain('No gap lid');
});
