import { type MathNode, rowOf } from './equationTree.ts';

/** Enough to work on with a pocket calculator. */
const digits = 4;
const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** A number as one writes it into an equation: `0.264`, `1.82·10⁻⁵`, in brackets where it is negative. */
export function numberNode(value: number): MathNode {
  if (value < 0) return { kind: 'group', open: '(', close: ')', inside: signed(value) };
  return unsigned(value);
}

/** The same standing alone, behind an equals sign. */
export function signed(value: number): MathNode {
  return value < 0 ? rowOf([{ kind: 'operator', written: '−' }, unsigned(-value)]) : unsigned(value);
}

function unsigned(value: number): MathNode {
  const rounded = Number(value.toPrecision(digits));
  if (rounded === 0 || (rounded >= 1e-3 && rounded < 1e6)) return number(String(rounded));
  const [mantissa = '', exponent = '0'] = rounded.toExponential().split('e');
  return rowOf([number(mantissa), { kind: 'operator', written: '·' }, powerOfTen(Number(exponent))]);
}

function powerOfTen(exponent: number): MathNode {
  const size = number(String(Math.abs(exponent)));
  const up = [...String(Math.abs(exponent))].map((digit) => raised[Number(digit)]).join('');
  return {
    kind: 'power',
    base: number('10'),
    exponent: exponent < 0 ? rowOf([{ kind: 'operator', written: '−' }, size]) : size,
    written: exponent < 0 ? `⁻${up}` : up,
  };
}

function number(written: string): MathNode {
  return { kind: 'number', written };
}
