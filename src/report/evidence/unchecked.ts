import type { CheckKind } from '../../core/card.ts';
import { cards } from '../../core/cards.ts';
import { table } from '../makeTable.ts';
import type { TextTable } from '../types.ts';
import { citation } from './checkWords.ts';
import type { Check } from './totals.ts';

/** Kinds that say something of a method, not of its typing. */
const outside: readonly CheckKind[] = ['measured', 'handbook', 'worked example', 'computed elsewhere'];

/** A method that stands beside no number from outside. */
export interface UncheckedMethod {
  readonly id: string;
  readonly title: string;
  /** What it does stand beside. */
  readonly beside: 'the same equation worked again' | 'numbers from memory' | 'nothing';
  readonly source: string;
}

/** Every card against the kinds of the checks that name it. */
export function uncheckedMethods(checks: readonly Check[]): UncheckedMethod[] {
  return cards.flatMap(({ id, title, source }) => {
    const kinds = new Set(checks.filter(({ methods }) => methods?.includes(id)).map(({ kind }) => kind));
    if (outside.some((kind) => kinds.has(kind))) return [];
    const beside = kinds.has('from memory')
      ? 'numbers from memory'
      : kinds.has('worked again')
        ? 'the same equation worked again'
        : 'nothing';
    return [{ id, title, beside, source: citation({ source: source.key, where: source.where }) }];
  });
}

export function uncheckedTable(checks: readonly Check[]): TextTable {
  return table(
    'evidenceUnchecked',
    'Methods without a number from outside',
    ['Method', 'Stands beside', 'Source of the method'],
    uncheckedMethods(checks).map(({ title, beside, source }) => [title, beside, source]),
  );
}

/** What has not been checked, in words; measurement first. */
export function uncheckedRemarks(checks: readonly Check[]): string[] {
  const methods = uncheckedMethods(checks);
  const of = (beside: UncheckedMethod['beside']) => methods.filter((each) => each.beside === beside).length;
  const none = of('nothing');
  return [
    'No box of this kind has been measured against it yet: single methods are checked, the whole beside other computations only. Measure yours before you rely on a figure.',
    `${methods.length} of ${cards.length} methods stand beside no number from outside: ${of('the same equation worked again')} beside the same equation worked again – definitions and balances mostly, correlations too – and ${of('numbers from memory')} beside numbers from memory${none > 0 ? `; ${none} beside nothing` : ''}.`,
  ];
}
