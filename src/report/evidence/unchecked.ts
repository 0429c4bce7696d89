import type { CheckKind } from '../../core/card.ts';
import { cards } from '../../core/cards.ts';
import { counted, listed, small } from '../words.ts';
import type { Check } from './totals.ts';

/** Kinds that say something of a method, not of its typing. */
const outside: readonly CheckKind[] = ['measured', 'handbook', 'worked example', 'computed elsewhere'];

/** Titles of methods that stand beside no number from outside. */
export interface Unchecked {
  /** Nothing but the same equation worked again. */
  readonly again: readonly string[];
  /** Something else, but from memory at best. */
  readonly memory: readonly string[];
}

/** Every card against the kinds of the checks that name it. */
export function uncheckedMethods(checks: readonly Check[]): Unchecked {
  const kindsOf = (id: string) =>
    new Set(checks.filter(({ methods }) => methods?.includes(id)).map(({ kind }) => kind));
  const titles = (wanted: (kinds: ReadonlySet<CheckKind>) => boolean) =>
    cards.filter(({ id }) => wanted(kindsOf(id))).map(({ title }) => title);
  const hasOutside = (kinds: ReadonlySet<CheckKind>) => outside.some((kind) => kinds.has(kind));
  return {
    again: titles((kinds) => !hasOutside(kinds) && !kinds.has('from memory')),
    memory: titles((kinds) => !hasOutside(kinds) && kinds.has('from memory')),
  };
}

/** What has not been checked, in words; measurement first. */
export function uncheckedRemarks(checks: readonly Check[]): string[] {
  const { again, memory } = uncheckedMethods(checks);
  return [
    'No box of this kind has been measured against it yet: single methods are checked, the whole beside other computations only. Measure yours before you rely on a figure.',
    ...(again.length > 0
      ? [
          `${counted(again.length, 'method')} of ${cards.length} ${again.length === 1 ? 'stands' : 'stand'} beside the same equation worked again and nothing from outside – definitions and balances, which need nothing else, but correlations too: ${listed(again.map(small))}.`,
        ]
      : []),
    ...(memory.length > 0
      ? [
          `${counted(memory.length, 'method')} more ${memory.length === 1 ? 'has' : 'have'} outside numbers from memory only: ${listed(memory.map(small))}.`,
        ]
      : []),
  ];
}
