import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { noteWords } from '../../../src/report/noteRows.ts';
import * as wording from '../../../src/report/wording.ts';

const text = (path: string) =>
  readFileSync(new URL(`../../../src/core/system/${path}`, import.meta.url), 'utf8');

/** Members of a union of string literals as written in the core. */
function members(name: string): string[] {
  const body = new RegExp(`export type ${name} =([^;]*);`).exec(text('outcome.ts'))?.[1] ?? '';
  return [...body.matchAll(/'(\w+)'/g)].map((match) => match[1] ?? '').sort();
}

describe('words for the keys of the core', () => {
  test.each([
    ['LimitKey', wording.limitLabels],
    ['LimitKey', wording.limitParts],
    ['PassageKind', wording.passageLabels],
    ['StageKey', wording.stageLabels],
    ['StageKey', wording.stageParts],
    ['RungKey', wording.rungLabels],
    ['RungKey', wording.rungPhrases],
  ])('%s: one for each, none left over', (name, words) => {
    const keys = members(name);
    expect(keys.length).toBeGreaterThan(2);
    expect(Object.keys(words).sort()).toEqual(keys);
  });

  test('no two limits, stages or passages share a word', () => {
    for (const words of [
      wording.limitLabels,
      wording.stageLabels,
      wording.passageLabels,
      wording.rungLabels,
      wording.verdictWords,
    ]) {
      expect(new Set(Object.values(words)).size).toBe(Object.keys(words).length);
    }
  });

  test('every code of a note that the core can give is worded, and none left over', () => {
    const cardText = readFileSync(new URL('../../../src/core/card.ts', import.meta.url), 'utf8');
    const body = /export type NoteCode =([^;]*);/.exec(cardText)?.[1] ?? '';
    const codes = [...body.matchAll(/'(\w+)'/g)].map((match) => match[1] ?? '');
    expect(codes).toContain('outsideRange');
    expect(Object.keys(noteWords).sort()).toEqual([...codes].sort());
  });
});
