import { describe, expect, test } from 'vitest';
import { cards } from '../../../../../src/core/cards.ts';
import { type MathNode, plainText } from '../../../../../src/report/working/equation/equationTree.ts';
import { readEquation } from '../../../../../src/report/working/equation/readEquation.ts';

/** A tree in one line: ⟨over⟋under⟩, base^⟨exponent⟩, √⟨inside⟩, "word". */
function drawn(node: MathNode): string {
  switch (node.kind) {
    case 'row':
      return node.items.map(drawn).join(' ');
    case 'group':
      return `${node.open}${drawn(node.inside)}${node.close}`;
    case 'fraction':
      return `⟨${drawn(node.over)}⟋${drawn(node.under)}⟩`;
    case 'power':
      return `${drawn(node.base)}^⟨${drawn(node.exponent)}⟩`;
    case 'root':
      return `√⟨${drawn(node.inside)}⟩`;
    case 'word':
      return `"${node.written}"`;
    default:
      return node.written;
  }
}

const lines = (text: string) => readEquation(text).map(({ node, end }) => drawn(node) + end);

const bare = (text: string) => text.normalize('NFC').replaceAll(/\s/g, '');

function everyNode(node: MathNode): MathNode[] {
  switch (node.kind) {
    case 'row':
      return [node, ...node.items.flatMap(everyNode)];
    case 'group':
    case 'root':
      return [node, ...everyNode(node.inside)];
    case 'fraction':
      return [node, ...everyNode(node.over), ...everyNode(node.under)];
    case 'power':
      return [node, ...everyNode(node.base), ...everyNode(node.exponent)];
    default:
      return [node];
  }
}

describe.each(cards.map(({ id, equation }) => [id, equation]))('the equation of %s', (_, equation) => {
  const read = readEquation(equation);
  const nodes = read.flatMap(({ node }) => everyNode(node));

  test('comes back from its tree, spaces aside', () => {
    expect(read.map(({ node, end }) => plainText(node) + end).join('')).toBe(bare(equation));
  });

  test('leaves no mark of writing unread: no power, index, root, slash or bracket stands as a sign', () => {
    const signs = nodes.flatMap((node) => (node.kind === 'operator' ? [node.written] : []));
    expect(signs.filter((sign) => /[\^_√/()[\]{}⁰-⁹]/.test(sign))).toEqual([]);
  });

  test('has something above and below every line, under every root and in every power', () => {
    const parts = nodes.flatMap((node) => {
      if (node.kind === 'fraction') return [node.over, node.under];
      if (node.kind === 'root') return [node.inside];
      return node.kind === 'power' ? [node.base, node.exponent] : [];
    });
    expect(parts.filter((part) => plainText(part) === '')).toEqual([]);
  });
});

test('a slash divides the product before it by the one factor behind it', () => {
  expect(lines('k = 2·k/b; from each wall')).toEqual(['k = ⟨2 · k⟋b⟩;', '"from" "each" "wall"']);
  expect(lines('m = √(2·h/(k·t))')).toEqual(['m = √⟨(⟨2 · h⟋(k · t)⟩)⟩']);
  expect(lines('Nu = 0.68 + 0.670·Ra^(1/4)/(1 + (0.492/Pr)^(9/16))^(4/9)')).toEqual([
    'Nu = 0.68 + ⟨0.670 · Ra^⟨(⟨1⟋4⟩)⟩⟋(1 + (⟨0.492⟋Pr⟩)^⟨(⟨9⟋16⟩)⟩)^⟨(⟨4⟋9⟩)⟩⟩',
  ]);
});

test('what follows a fraction multiplies it and is not lifted onto the next line', () => {
  expect(lines('X = (1 − r)/(1 + s)·exp(−2·s·H/b)')).toEqual([
    'X = ⟨(1 − r)⟋(1 + s)⟩ · exp (− ⟨2 · s · H⟋b⟩)',
  ]);
  expect(lines('y = a/b·c/d')).toEqual(['y = ⟨a⟋b⟩ · ⟨c⟋d⟩']);
});

test('a sum and a differential quotient stand apart from what is divided', () => {
  expect(lines('y = Σ S·φ/λ')).toEqual(['y = Σ ⟨S · φ⟋λ⟩']);
  expect(lines('C·dT/dt = P')).toEqual(['C · ⟨d T⟋d t⟩ = P']);
});

test('a number with a power of ten is one number', () => {
  expect(lines('y = 1 + 2.9·10⁻⁵/(x⁺)²')).toEqual(['y = 1 + ⟨2.9 · 10^⟨− 5⟩⟋(x⁺)^⟨2⟩⟩']);
});

test('letters side by side multiply, but names of two letters stay whole', () => {
  expect(lines('η = tanh(mH)/(mH)')).toEqual(['η = ⟨tanh (m H)⟋(m H)⟩']);
  expect(lines('Nu = C₂C₃(fRe_√A/z*)^⅓')).toEqual(['Nu = C₂ C₃ (⟨f Re_√A⟋z*⟩)^⟨⅓⟩']);
  expect(lines('G = ṁc_p·ε/(1 − ε/NTU)')).toEqual(['G = ⟨ṁ c_p · ε⟋(1 − ⟨ε⟋NTU⟩)⟩']);
});

test('a power may have a sign, a name or a bracket', () => {
  expect(lines('ε = 1 − e^−NTU')).toEqual(['ε = 1 − e^⟨− NTU⟩']);
  expect(lines('x*^−1.14')).toEqual(['x*^⟨− 1.14⟩']);
  expect(lines('T^1.5 + [a]^(m/5)')).toEqual(['T^⟨1.5⟩ + [a]^⟨(⟨m⟋5⟩)⟩']);
});

test('a clause ends at a semicolon, and at a comma where another equation follows', () => {
  expect(lines('K = 0.42·(1 − σ²), on the channel velocity')).toHaveLength(1);
  expect(lines('K = 2.0, 1.0 at f = 0.3, 0.4, on the whole opening')).toHaveLength(1);
  expect(lines('ε = 1 − e^−N, N = UA/C')).toEqual(['ε = 1 − e^⟨− N⟩,', 'N = ⟨UA⟋C⟩']);
  expect(lines('Nu = max(0.54·Ra^¼, 0.15·Ra^⅓)')).toHaveLength(1);
});

test('words between equations say more about the one before', () => {
  const clauses = readEquation('C_d = 0.61 + λ; λ is length over width; in a row: p = Σ p_i');
  expect(clauses.map(({ equates }) => equates)).toEqual([true, false, true]);
});

test('units and degrees are set as words, an article is no name', () => {
  expect(lines('R = 287.053 J/(kg·K)')).toEqual(['R = 287.053 "J/(kg·K)"']);
  expect(lines('t in °C')).toEqual(['t "in" "°C"']);
  expect(lines('in a row: p(Q) = Σ p_i(Q)')).toEqual(['"in" "a" "row" : p (Q) = Σ p_i (Q)']);
});

test('what is no equation at all still comes back', () => {
  for (const text of ['', '((', ')', 'a/', '^2', '√', '§ 5 %', '1/2/3']) {
    expect(
      readEquation(text)
        .map(({ node, end }) => plainText(node) + end)
        .join(''),
    ).toBe(bare(text));
  }
});
