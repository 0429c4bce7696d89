/** A name as it stands in an equation: `T_r` is `T` with `r` below, `x⁺` is `x` with a mark above. */
export interface MathSymbol {
  readonly kind: 'symbol';
  readonly base: string;
  /** Below the line, without the underscore; empty for none. */
  readonly sub: string;
  /** `⁺`, `*` or empty. */
  readonly mark: string;
  /** As it was written. */
  readonly written: string;
}

export interface MathNumber {
  readonly kind: 'number';
  readonly written: string;
}

/** A word or a unit: set upright. */
export interface MathWord {
  readonly kind: 'word';
  readonly written: string;
}

/** A function by name, whose argument follows: ln, tanh. Its index, if any, is that of log₁₀. */
export interface MathFunction {
  readonly kind: 'function';
  readonly base: string;
  readonly sub: string;
  readonly written: string;
}

export interface MathOperator {
  readonly kind: 'operator';
  readonly written: string;
}

export interface MathRow {
  readonly kind: 'row';
  readonly items: readonly MathNode[];
}

export interface MathGroup {
  readonly kind: 'group';
  readonly open: string;
  readonly close: string;
  readonly inside: MathNode;
}

export interface MathFraction {
  readonly kind: 'fraction';
  readonly over: MathNode;
  readonly under: MathNode;
}

export interface MathPower {
  readonly kind: 'power';
  readonly base: MathNode;
  readonly exponent: MathNode;
  /** As it was written, `²` or `^(m/5)`. */
  readonly written: string;
}

export interface MathRoot {
  readonly kind: 'root';
  readonly inside: MathNode;
}

export type MathNode =
  | MathSymbol
  | MathNumber
  | MathWord
  | MathFunction
  | MathOperator
  | MathRow
  | MathGroup
  | MathFraction
  | MathPower
  | MathRoot;

/** A clause of an equation with what ends it (`,` or `;`). */
export interface MathClause {
  readonly node: MathNode;
  readonly end: string;
  /** An equation, which begins a line; otherwise words that say more about the one before. */
  readonly equates: boolean;
}

/** A row of one thing is that thing. */
export function rowOf(items: readonly MathNode[]): MathNode {
  const [only] = items;
  return items.length === 1 && only ? only : { kind: 'row', items };
}

/** The same power on another base or with another exponent. */
export function powerOf(power: MathPower, base: MathNode, exponent: MathNode): MathPower {
  const written = power.written.startsWith('^') ? `^${plainText(exponent)}` : power.written;
  return { ...power, base, exponent, written };
}

/** The text that a tree was read from, without its spaces. */
export function plainText(node: MathNode): string {
  switch (node.kind) {
    case 'row':
      return node.items.map(plainText).join('');
    case 'group':
      return `${node.open}${plainText(node.inside)}${node.close}`;
    case 'fraction':
      return `${plainText(node.over)}/${plainText(node.under)}`;
    case 'power':
      return `${plainText(node.base)}${node.written}`;
    case 'root':
      return `√${plainText(node.inside)}`;
    default:
      return node.written.replaceAll(/\s/g, '');
  }
}
