import { describe, expect, test } from 'vitest';
import { editIn } from '../../../src/model/say.ts';

describe('a value to be edited', () => {
  test('keeps the digits that somebody typed', () => {
    expect(editIn(22.1234567, 'resistance', 'ohm')).toBe('22.1234567');
    expect(editIn(1.6e-3, 'length', 'mm')).toBe('1.6');
  });

  test('has no more digits than matter after a change of unit', () => {
    expect(editIn(3e-3, 'length', 'in')).toBe('0.1181102');
    expect(editIn(40e-3, 'length', 'in')).toBe('1.574803');
  });

  test('shows a whole inch as one, whatever it was typed in', () => {
    expect(editIn(25.4e-3, 'length', 'in')).toBe('1');
    expect(editIn(25.4e-3 / 16, 'length', 'in')).toBe('0.0625');
  });
});
