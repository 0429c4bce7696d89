import { createElement, type ReactNode } from 'react';
import { type MathNode, rowOf } from '../../report/working/equation/equationTree.ts';
import styles from './Equation.module.css';

/** MathML of a tree. In scripts a fraction lies flat, for a small one on top of another is not read. */
export function mathElement(node: MathNode, flat = false): ReactNode {
  switch (node.kind) {
    case 'symbol':
      return withScripts(nameElement(node.base), subElement(node.sub), markElement(node.mark));
    case 'number':
      return numberElement(node.written, flat);
    case 'word':
      return createElement('mtext', null, node.written);
    case 'function':
      return withScripts(createElement('mi', null, node.base), subElement(node.sub), null);
    case 'operator':
      return createElement('mo', null, node.written);
    case 'row':
      return createElement('mrow', null, ...rowElements(node.items, flat));
    case 'group':
      return createElement(
        'mrow',
        null,
        fence(node.open),
        mathElement(node.inside, flat),
        ...(node.close === '' ? [] : [fence(node.close)]),
      );
    case 'fraction':
      return flat
        ? createElement(
            'mrow',
            null,
            mathElement(node.over, flat),
            createElement('mo', null, '/'),
            mathElement(node.under, flat),
          )
        : createElement(
            'mfrac',
            null,
            mathElement(unbracketed(node.over)),
            mathElement(unbracketed(node.under)),
          );
    case 'power':
      return powerElement(node.base, node.exponent, flat);
    case 'root':
      return createElement('msqrt', null, mathElement(unbracketed(node.inside), flat));
  }
}

/** The line or the roof of what it stands under groups it already. */
function unbracketed(node: MathNode): MathNode {
  return node.kind === 'group' ? node.inside : node;
}

function powerElement(base: MathNode, exponent: MathNode, flat: boolean): ReactNode {
  const raised = mathElement(unbracketed(exponent), true);
  // An index and a power stand one above the other.
  if (base.kind === 'symbol' && base.mark === '' && base.sub !== '')
    return withScripts(nameElement(base.base), subElement(base.sub), raised);
  return createElement('msup', null, mathElement(base, flat), raised);
}

function withScripts(base: ReactNode, sub: ReactNode, sup: ReactNode): ReactNode {
  if (sub !== null && sup !== null) return createElement('msubsup', null, base, sub, sup);
  if (sub !== null) return createElement('msub', null, base, sub);
  return sup === null ? base : createElement('msup', null, base, sup);
}

function nameElement(base: string): ReactNode {
  if (base.length > 1 && base.startsWith('Δ'))
    return createElement(
      'mrow',
      null,
      createElement('mi', { mathvariant: 'normal' }, 'Δ'),
      nameElement(base.slice(1)),
    );
  // The browser slants single letters of its own table only; one with a dot is not in it.
  const isDotted = base === 'ṁ';
  return createElement('mi', isDotted ? { className: styles.slanted } : null, base);
}

const lowered = '₀₁₂₃₄₅₆₇₈₉';

function subElement(sub: string): ReactNode {
  if (sub === '') return null;
  if (sub.startsWith('√')) return createElement('msqrt', null, createElement('mi', null, sub.slice(1)));
  if (/^\d+$/.test(sub)) return createElement('mn', null, sub);
  if (lowered.includes(sub.slice(0, 1)))
    return createElement('mn', null, [...sub].map((digit) => lowered.indexOf(digit)).join(''));
  return createElement(sub.length > 1 ? 'mtext' : 'mi', null, sub);
}

function markElement(mark: string): ReactNode {
  return mark === '' ? null : createElement('mo', null, mark === '⁺' ? '+' : mark);
}

const vulgar: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
};

/** A vulgar fraction is too small to read as a power: there its digits stand apart. */
function numberElement(written: string, flat: boolean): ReactNode {
  return createElement('mn', null, flat ? (vulgar[written] ?? written) : written);
}

function fence(bracket: string): ReactNode {
  return createElement('mo', { fence: 'true', stretchy: 'true' }, bracket);
}

/** Words that follow one another are one text, set apart from what is none; a function keeps off its argument. */
function rowElements(items: readonly MathNode[], flat: boolean): ReactNode[] {
  return joined(items).map((item, i, all) => {
    if (item.kind === 'word') {
      const before = i > 0 ? '\u00a0' : '';
      const behind = i < all.length - 1 && !isComma(all[i + 1]) ? '\u00a0' : '';
      return createElement('mtext', null, `${before}${item.written}${behind}`);
    }
    const isApplied = item.kind === 'function' && all[i + 1]?.kind !== 'group';
    if (!isApplied) return mathElement(item, flat);
    return createElement('mrow', null, mathElement(item, flat), createElement('mspace', { width: '0.2em' }));
  });
}

const isComma = (node: MathNode | undefined) =>
  node?.kind === 'operator' && [',', ';', ':'].includes(node.written);

function joined(items: readonly MathNode[]): MathNode[] {
  const found: MathNode[] = [];
  for (const item of items) {
    const last = found.at(-1);
    if (item.kind === 'word' && last?.kind === 'word')
      found.splice(-1, 1, { kind: 'word', written: `${last.written} ${item.written}` });
    else found.push(item);
  }
  return found;
}

/** A clause of an equation, with the sign that ends it. */
export function clauseElement(node: MathNode, end: string): ReactNode {
  return mathElement(end === '' ? node : rowOf([node, { kind: 'operator', written: end }]));
}
