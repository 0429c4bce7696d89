/** Whether a symbol stands in an equation by itself, not as a part of another name. */
export function standsIn(symbol: string, equation: string): boolean {
  const quoted = symbol.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
  return new RegExp(`(?<![\\p{L}\\p{N}_])${quoted}(?![\\p{L}_*⁺])`, 'u').test(equation);
}

const token =
  /\s+|\d+(?:\.\d+)?|log₁₀|[ΔΣ]?\p{L}\p{M}?(?:\p{L}*)(?:_[\p{L}\p{N}]+)?[*⁺]?|[⁻⁺]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+|[-+−·/^√()=,|π]/uy;

const names =
  /^(?:exp|ln|log₁₀|tanh|sinh|sin|arctan|artanh|min|max|table|UA|Re|Nu|Pr|Ra|Bi|Be|El|Δ?\p{L}\p{M}?|dT|dt)(?:_[\p{L}\p{N}]+)?[*⁺]?$/u;

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
