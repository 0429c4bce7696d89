import { describe, expect, test } from 'vitest';
import { firstShare } from '../../../../src/core/airflow/firstShare.ts';

describe('firstShare', () => {
  test('is a half between equals and goes as area over the root of the loss', () => {
    expect(firstShare(2, 1e-3, 2, 1e-3, 4e-3)).toBeCloseTo(0.5, 12);
    expect(firstShare(1, 3e-3, 9, 1e-3, 5e-3)).toBeCloseTo(0.9, 4);
  });
});
