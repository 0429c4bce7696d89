import { expect, test } from 'vitest';
import { elenbaas } from '../../../../src/core/freeConvection/elenbaas.ts';

test('a channel as high as its gap keeps its Rayleigh number', () => {
  expect(elenbaas(123, 5e-3, 5e-3)).toBe(123);
});
