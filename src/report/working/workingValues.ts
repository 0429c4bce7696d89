import type { Card } from '../../core/card.ts';
import type { Balance } from '../../core/system/working/balance.ts';
import type { Origin, Step } from '../../core/system/working/book.ts';
import { dimensionOfName, suffixes, suffixOfName } from '../../units/suffix.ts';
import { type Dimension, plain, quantity, type UnitSystem } from '../format.ts';
import { givenWords } from './givenWords.ts';
import type { WorkingSymbol, WorkingValue } from './types.ts';

/** Digits for reading, and for working on. */
const shown = 4;
const worked = 8;

/** Values put into one step, its constants last. */
export function symbolsOf({ record, given, from, names }: Step, system: UnitSystem): WorkingSymbol[] {
  const method = record.kind === 'card' ? record.card : record.balance;
  const own = Object.keys(given).map((variable): WorkingSymbol => {
    const value = saidOf(variable, given[variable] as number, system);
    const origin = from[variable] as Origin;
    return {
      symbol: symbolOf(method.symbols, variable),
      says: names[variable] ?? wordsOf(record, variable),
      ...value,
      from: typeof origin === 'number' ? 'step' : origin,
      step: typeof origin === 'number' ? origin : null,
    };
  });
  const constants = (method.constants ?? []).map(
    ({ symbol, says, value, unit }): WorkingSymbol => ({
      symbol,
      says,
      value: withUnit(plain(value, shown), unit),
      si: withUnit(plain(value, 10), unit),
      amount: value,
      unit,
      from: 'constant',
      step: null,
    }),
  );
  return [...own, ...constants];
}

export function resultOf({ record, value }: Step, system: UnitSystem): WorkingValue {
  if (record.kind === 'balance') {
    const { name, variable, symbol } = record.balance.result;
    return { symbol, says: name, ...saidOf(variable, value, system) };
  }
  const { name, unit, symbol } = record.card.result;
  const dimension = dimensionOfUnit(unit);
  return {
    symbol,
    says: name,
    value: dimension === null ? plain(value, shown) : quantity(value, dimension, system, shown),
    ...siOf(value, unit === '1' ? '' : unit),
  };
}

/** `G_WPerK#3` stands as `G_3` where the record has `G_#`. */
function symbolOf(symbols: Readonly<Record<string, string>>, variable: string): string {
  const [stem = '', number] = variable.split('#');
  const symbol = symbols[number === undefined ? stem : `${stem}#`] ?? stem;
  return number === undefined ? symbol : symbol.replace('#', number);
}

function wordsOf(record: Step['record'], variable: string): string {
  if (record.kind === 'card') return givenWords(variable);
  const [stem = '', number] = variable.split('#');
  const { words = {} } = record.balance as Balance;
  const said = (words as Readonly<Record<string, string>>)[number === undefined ? stem : `${stem}#`];
  return said?.replace('#', number ?? '') ?? givenWords(stem);
}

/** By the suffix of the variable's name: in the reader's unit, and in SI as the equation takes it. */
function saidOf(variable: string, value: number, system: UnitSystem) {
  const [stem = ''] = variable.split('#');
  const dimension = dimensionOfName(stem);
  const suffix = suffixOfName(stem);
  const unit = suffix === null ? '' : suffixes[suffix].unit;
  return {
    value:
      dimension === null ? withUnit(plain(value, shown), unit) : quantity(value, dimension, system, shown),
    ...siOf(value, unit),
  };
}

function siOf(value: number, unit: string): { si: string; amount: number; unit: string } {
  return { si: withUnit(plain(value, worked), unit), amount: value, unit };
}

function withUnit(text: string, unit: string): string {
  return unit === '' ? text : `${text}\u202f${unit}`;
}

/** Of a card's result. What methods give in kelvin are rises. */
function dimensionOfUnit(unit: Card['result']['unit']): Dimension | null {
  if (unit === 'K') return 'temperatureDifference';
  return Object.values(suffixes).find((each) => each.unit === unit)?.dimension ?? null;
}
