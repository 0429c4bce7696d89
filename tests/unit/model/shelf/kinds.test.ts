import { describe, expect, test } from 'vitest';
import { pathsOf } from '../../../../src/model/shelf/kinds.ts';

describe('the inputs of a kind', () => {
  test('stand where they always stand, or within the place asked for', () => {
    expect(pathsOf('alloy', 'sink')).toEqual([
      ['k_WPerMK', 'sink.k_WPerMK'],
      ['heat_JPerM3K', 'sink.heat_JPerM3K'],
    ]);
    expect(pathsOf('thickness', 'baffle')).toEqual([['sheet_m', 'baffle.sheet_m']]);
    expect(pathsOf('ceramic', 'parts[2]')).toEqual([
      ['ceramic_WPerMK', 'parts[2].ceramic_WPerMK'],
      ['ceramicHeat_JPerM3K', 'parts[2].ceramicHeat_JPerM3K'],
    ]);
  });
});
