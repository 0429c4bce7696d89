/** Whether a symbol stands in an equation by itself, not as a part of another name. */
export function standsIn(symbol: string, equation: string): boolean {
  const quoted = symbol.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
  return new RegExp(`(?<![\\p{L}\\p{N}_])${quoted}(?![\\p{L}_*⁺])`, 'u').test(equation);
}

const token =
  /\s+|\d+(?:\.\d+)?|log₁₀|[ΔΣ]?\p{L}\p{M}?(?:\p{L}*)(?:_[\p{L}\p{Nd}]+)?[*⁺]?|[⁻⁺]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+|[-+−·/^√()=,|π]/uy;

const names =
  /^(?:exp|ln|log₁₀|tanh|sinh|sin|arctan|artanh|min|max|table|UA|Re|Nu|Pr|Ra|Bi|Be|El|Δ?\p{L}\p{M}?|dT|dt)(?:_[\p{L}\p{Nd}]+)?[*⁺]?$/u;

/** Clauses that look like `name = expression` but are not in the grammar of `Card.equation`; words alone are none. */
export function mistakesIn(equation: string): string[] {
  return equation.split('; ').flatMap((clause) => (clause.includes('=') ? mistakesOf(clause) : []));
}

function mistakesOf(clause: string): string[] {
  // A clause may end in words: "w = … where u is below nil".
  const text = clause.replace(/ (?:where|at|for) .*$/u, '');
  const found: string[] = [];
  let depth = 0;
  for (let at = 0; at < text.length; ) {
    token.lastIndex = at;
    const [part] = token.exec(text) ?? [];
    if (part === undefined) return [...found, `${text}: ${text.slice(at)}`];
    if (part === '(') depth++;
    if (part === ')') depth--;
    if (depth < 0) found.push(`${text}: a bracket too many`);
    if (/^\p{L}/u.test(part) && part !== 'Σ' && !names.test(part)) found.push(`${text}: ${part}`);
    // A product is always written out.
    if (
      /^[\p{L}\d]/u.test(part) &&
      /[)\p{L}\d]$/u.test(text.slice(0, at)) &&
      !/[Σ√]$/u.test(text.slice(0, at))
    )
      found.push(`${text}: no sign before ${part}`);
    at += part.length;
  }
  return depth === 0 ? found : [...found, `${text}: brackets do not close`];
}

const functions: Readonly<Record<string, (...values: number[]) => number>> = {
  exp: Math.exp,
  ln: Math.log,
  'log₁₀': Math.log10,
  tanh: Math.tanh,
  sinh: Math.sinh,
  sin: Math.sin,
  arctan: Math.atan,
  artanh: Math.atanh,
  min: Math.min,
  max: Math.max,
};
const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/**
 * What an equation comes to with numbers put in for its symbols, worked out from its text alone.
 * @returns NaN where it reads a table, or a name in it stands for nothing
 */
export function workOut(equation: string, symbols: Readonly<Record<string, number>>): number {
  // Symbols such as f·Re are no single name: each becomes one.
  let text = equation;
  const values = new Map<string, number>([['π', Math.PI]]);
  Object.entries(symbols).forEach(([symbol, value], i) => {
    const isName = !/[·/]/.test(symbol);
    values.set(isName ? symbol : `Δ_${i}`, value);
    if (!isName) text = text.replaceAll(symbol, `Δ_${i}`);
  });
  const [first = '', ...rest] = text.split('; ').map((clause) => clause.replace(/ where .*$/, ''));
  const clauses = rest.filter((clause) => clause.includes(' = ')).map((clause) => clause.split(' = '));
  const lookUp = (name: string): number => {
    const known = values.get(name);
    if (known !== undefined) return known;
    // Where a name has two clauses, the one that makes sense counts.
    for (const [left, right = ''] of clauses) {
      if (left !== name) continue;
      const value = evaluateText(right, lookUp, values);
      if (!Number.isNaN(value)) return value;
    }
    return Number.NaN;
  };
  return evaluateText(first.slice(first.indexOf(' = ') + 3), lookUp, values);
}

function evaluateText(
  text: string,
  lookUp: (name: string) => number,
  values: ReadonlyMap<string, number>,
): number {
  const parts =
    text.match(
      /\d+(?:\.\d+)?|log₁₀|Σ|[ΔΣ]?\p{L}\p{M}?\p{L}*(?:_[\p{L}\p{Nd}]+)?[*⁺]?|[⁻⁺]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+|[-+−·/^√(),]/gu,
    ) ?? [];
  let at = 0;
  let index: number | null = null;
  const sum = (): number => {
    let value = product();
    while (parts[at] === '+' || parts[at] === '−') value += parts[at++] === '+' ? product() : -product();
    return value;
  };
  const product = (): number => {
    if (parts[at] === 'Σ') return sigma();
    let value = power();
    while (parts[at] === '·' || parts[at] === '/') {
      const isTimes = parts[at++] === '·';
      const next = parts[at] === 'Σ' ? sigma() : power();
      value = isTimes ? value * next : value / next;
    }
    return value;
  };
  /** Over all numbers that the names with an index have. */
  const sigma = (): number => {
    const start = ++at;
    let value = 0;
    let end = start;
    const stem =
      parts
        .slice(start)
        .find((part) => part.endsWith('_i'))
        ?.slice(0, -1) ?? '';
    for (let i = 1; values.has(`${stem}${i}`) || i === 1; i++) {
      at = start;
      index = i;
      const term = productIn();
      end = at;
      if (values.has(`${stem}${i}`)) value += term;
    }
    index = null;
    at = end;
    return value;
  };
  const productIn = (): number => {
    let value = power();
    while ((parts[at] === '·' || parts[at] === '/') && parts[at + 1] !== 'Σ') {
      const isTimes = parts[at++] === '·';
      const next = power();
      value = isTimes ? value * next : value / next;
    }
    return value;
  };
  const power = (): number => {
    const base = atom();
    const part = parts[at] ?? '';
    if (part === '^') {
      at++;
      return base ** atom();
    }
    if (/^[⁻⁺]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+$/.test(part)) {
      at++;
      const digits = [...part].map((c) => (c === '⁻' ? '-' : c === '⁺' ? '' : raised.indexOf(c))).join('');
      return base ** Number(digits);
    }
    return base;
  };
  const atom = (): number => {
    const part = parts[at++] ?? '';
    if (part === '√') return Math.sqrt(power());
    if (part === '−') return -power();
    if (part === '(') {
      const value = sum();
      at++;
      return value;
    }
    if (/^\d/.test(part)) return Number(part);
    const call = functions[part];
    if (call && parts[at] === '(') {
      const given: number[] = [];
      do {
        at++;
        given.push(sum());
      } while (parts[at] === ',');
      at++;
      return call(...given);
    }
    return lookUp(index === null ? part : part.replace(/_i$/, `_${index}`));
  };
  return sum();
}
