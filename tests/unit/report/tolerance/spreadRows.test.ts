import { describe, expect, test } from 'vitest';
import { scatterCards } from '../../../../src/core/system/methodScatter.ts';
import { methodSpreadRows } from '../../../../src/report/tolerance/spreadRows.ts';

describe('factors of methods among the spreads', () => {
  test('have the scatter and the title of their cards', () => {
    const [row] = methodSpreadRows(['fanFlow'], {});
    expect(row?.size).toBe('σ 5\u202f%');
    expect(row?.source).toContain(scatterCards.fanFlow.title);
  });

  test('that were fitted have what the readings leave open, and say so', () => {
    const [fan, heat] = methodSpreadRows(['fanFlow', 'channelHeat'], { fanFlow: 0.02 });
    expect(fan?.size).toBe('σ 2\u202f%');
    expect(fan?.amounts.size?.value).toBeCloseTo(2, 12);
    expect(fan?.source).toBe('fitted to readings of a prototype; what they leave open');
    expect(heat?.source).toContain('card');
  });
});
