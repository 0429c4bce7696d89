import { describe, expect, test } from 'vitest';
import { tidyText } from '../../../src/units/tidyText.ts';

describe('a typed text', () => {
  test.each([
    ['  1\u00a0000\u202f000\t', '1 000 000'],
    ['−5', '-5'],
    ['–5', '-5'],
    ['1½', '1 1/2'],
    ['1 ½', '1 1/2'],
    ['¾″', '3/4"'],
    ['5′ 3″', '5\' 3"'],
    ["5''", '5"'],
    ['10⁻¹²', '10^-12'],
    ['m²', 'm^2'],
    ['H₂O', 'H2O'],
    ['1⁄16', '1/16'],
    ['1\u200b2', '12'],
  ])('%j is tidied to %j', (text, tidy) => {
    expect(tidyText(text)).toBe(tidy);
  });
});
