import { describe, expect, test } from 'vitest';
import { getAt, joinPath, patternOf, setAll, setAt, splitPath } from '../../../src/model/path.ts';

const root = { a: { b: [{ c: 1 }, { c: 2 }] }, d: 3 };

describe('a path', () => {
  test('splits into keys and row numbers, and joins again', () => {
    expect(splitPath('a.b[12].c')).toEqual(['a', 'b', 12, 'c']);
    expect(joinPath(['a', 'b', 12, 'c'])).toBe('a.b[12].c');
  });

  test('leaves row numbers out in its pattern', () => {
    expect(patternOf('extras[3].points[14].dp_Pa')).toBe('extras[].points[].dp_Pa');
  });

  test('finds what stands there, and nothing where nothing stands', () => {
    expect(getAt(root, 'a.b[1].c')).toBe(2);
    expect(getAt(root, 'a.b[2].c')).toBeUndefined();
    expect(getAt(root, 'd.e')).toBeUndefined();
    expect(getAt(root, 'a.constructor')).toBeUndefined();
  });

  test('sets one place in a copy and shares all the rest', () => {
    const next = setAt(root, 'a.b[0].c', 9);
    expect(next).toEqual({ a: { b: [{ c: 9 }, { c: 2 }] }, d: 3 });
    expect(root.a.b[0]?.c).toBe(1);
    expect(next.a.b[1]).toBe(root.a.b[1]);
  });

  test('sets many places in one copy, the later one where two are the same', () => {
    const next = setAll(root, { 'a.b[0].c': 9, 'a.b[1]': { c: 7 }, 'a.b[1].c': 8, d: 4 });
    expect(next).toEqual({ a: { b: [{ c: 9 }, { c: 8 }] }, d: 4 });
    expect(root).toEqual({ a: { b: [{ c: 1 }, { c: 2 }] }, d: 3 });
    expect(setAll(root, {})).toBe(root);
  });

  test('leaves a value that was put in as it was, even where a later one goes into it', () => {
    const value = { c: 7 };
    setAll(root, { 'a.b[1]': value, 'a.b[1].c': 8 });
    expect(value).toEqual({ c: 7 });
  });

  test('is refused where there is no such place', () => {
    expect(() => setAt(root, 'a.x', 1)).toThrow('no place a.x');
    expect(() => setAt(root, 'a.b[2].c', 1)).toThrow();
    expect(() => setAt(root, '__proto__.polluted', 1)).toThrow();
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});
