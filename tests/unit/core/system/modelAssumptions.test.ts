import { describe, expect, test } from 'vitest';
import { assumptions } from '../../../../src/core/assumptions.ts';
import { modelAssumptions } from '../../../../src/core/system/modelAssumptions.ts';

describe('modelAssumptions', () => {
  test('are worded, each once', () => {
    expect(new Set(modelAssumptions).size).toBe(modelAssumptions.length);
    for (const key of modelAssumptions) expect(Object.keys(assumptions)).toContain(key);
  });
});
