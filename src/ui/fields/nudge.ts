/**
 * The text with its number one unit of its last digit up or down, everything after it left as it is: `0.8 mm` → `0.9 mm`.
 * @returns `null` where there is no plain number to nudge, as in `1/16 in` or `2 ft 3 in`
 */
export function nudge(text: string, direction: 1 | -1): string | null {
  const found = /^(\s*)([-+−]?)(\d+)(?:([.,])(\d+))?(?![\d.,/])(.*)$/s.exec(text);
  if (found === null) return null;
  const [, before = '', sign = '', whole = '', mark = '', decimals = '', after = ''] = found;
  // A second number: a fraction, an exponent, inches after feet. The 3 of m3 belongs to its unit.
  if (/(?:^|[^\p{L}])\d|^\s*\/|^e[+-]?\d/iu.test(after)) return null;
  const negative = sign === '-' || sign === '−';
  const digits = BigInt(whole + decimals);
  const moved = (negative ? -digits : digits) + BigInt(direction);
  const size = (moved < 0n ? -moved : moved).toString().padStart(decimals.length + 1, '0');
  const cut = size.length - decimals.length;
  const number = decimals === '' ? size : `${size.slice(0, cut)}${mark}${size.slice(cut)}`;
  return `${before}${moved < 0n ? (sign === '−' ? '−' : '-') : ''}${number}${after}`;
}
