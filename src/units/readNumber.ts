export type NumberProblem =
  | { readonly reason: 'notANumber' | 'divisionByZero' | 'tooLarge' | 'tooSmall' }
  /** Two ways of writing what was perhaps meant, neither of them open to doubt. */
  | { readonly reason: 'ambiguous'; readonly readings: readonly [string, string] };

export type NumberRead =
  | { readonly ok: true; readonly value: number; readonly rest: string }
  | { readonly ok: false; readonly problem: NumberProblem };

const mixed = /^(\d+)[ -](\d+) ?\/ ?(\d+)(?![\d.,])/;
const fraction = /^(\d+) ?\/ ?(\d+)(?![\d.,])/;
const decimal = /^(?:([1-9]\d{0,2}(?: \d{3}(?!\d))+(?:[.,]\d*)?)|\d[\d.,]*|[.,]\d+)/;
const exponent = /^(?:[eE]([+-]?\d+)| ?[x×*·⋅] ?10\^([+-]?\d+))(?![\d.,])/;

/** The number without sign at the start of a tidied text, and what follows it. */
export function readNumber(text: string): NumberRead {
  const parts = mixed.exec(text);
  if (parts)
    return divided(Number(parts[1]), Number(parts[2]), Number(parts[3]), text.slice(parts[0].length));
  const over = fraction.exec(text);
  if (over) return divided(0, Number(over[1]), Number(over[2]), text.slice(over[0].length));
  const found = decimal.exec(text);
  if (!found) return failed({ reason: 'notANumber' });
  const mantissa = readSeparators(found[0].replaceAll(' ', ''), found[1] !== undefined);
  if (mantissa === null) return failed({ reason: 'notANumber' });
  if (typeof mantissa !== 'string') return failed({ reason: 'ambiguous', readings: mantissa });
  const rest = text.slice(found[0].length);
  const power = exponent.exec(rest);
  const value = Number(`${mantissa}e${power?.[1] ?? power?.[2] ?? '0'}`);
  if (value === 0 && /[1-9]/.test(mantissa)) return failed({ reason: 'tooSmall' });
  return finite(value, rest.slice(power?.[0].length ?? 0));
}

function divided(whole: number, over: number, under: number, rest: string): NumberRead {
  if (under === 0) return failed({ reason: 'divisionByZero' });
  return finite((whole * under + over) / under, rest);
}

function finite(value: number, rest: string): NumberRead {
  return Number.isFinite(value) ? { ok: true, value, rest } : failed({ reason: 'tooLarge' });
}

function failed(problem: NumberProblem): NumberRead {
  return { ok: false, problem };
}

/**
 * Digits with a decimal point or comma and groups of three → digits with a decimal point. The last of two different
 * marks is the decimal one, a repeated mark parts groups; one comma before three digits could be either.
 * @returns the two readings where it could, `null` where it is no number at all
 */
function readSeparators(token: string, isGrouped: boolean): string | readonly [string, string] | null {
  if (isGrouped) return token.replace(',', '.');
  const comma = token.lastIndexOf(',');
  const point = token.lastIndexOf('.');
  if (comma >= 0 && point >= 0)
    return mixedSeparators(token, Math.max(comma, point), comma > point ? '.' : ',');
  if (token.indexOf(',') !== comma || token.indexOf('.') !== point) {
    return isInGroups(token, comma >= 0 ? ',' : '.') ? token.replaceAll(/[.,]/g, '') : null;
  }
  if (comma < 0) return token;
  if (/^[1-9]\d{0,2},\d{3}$/.test(token)) return [token.replace(',', ''), token.replace(',', '.')];
  return token.endsWith(',') ? null : token.replace(',', '.');
}

function mixedSeparators(token: string, at: number, group: string): string | null {
  const whole = token.slice(0, at);
  return isInGroups(whole, group) ? `${whole.replaceAll(group, '')}.${token.slice(at + 1)}` : null;
}

function isInGroups(whole: string, group: string): boolean {
  const [first = '', ...others] = whole.split(group);
  return /^[1-9]\d{0,2}$/.test(first) && others.every((part) => /^\d{3}$/.test(part));
}
