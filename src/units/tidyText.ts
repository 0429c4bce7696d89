const vulgarFractions: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/**
 * One way of writing for what keyboards, word processors and data sheets write in many: minus signs, prime marks,
 * blanks, raised and lowered digits (10⁻³ → 10^-3), vulgar fractions (1½ → 1 1/2).
 */
export function tidyText(text: string): string {
  return text
    .replace(/[\u200b-\u200d\u2060]/g, '')
    .replace(
      /(\d?)\s*([½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])/g,
      (_, digit: string, sign: string) => `${digit}${digit === '' ? '' : ' '}${vulgarFractions[sign] ?? ''}`,
    )
    .replace(/[−–‐‑﹣－]/g, '-')
    .replace(/[″“”‟]|''|′′|’’/g, '"')
    .replace(/[′‘’]/g, "'")
    .replace(/[⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+/g, (raised) => `^${[...raised].map(lowered).join('')}`)
    .replace(/[₀-₉]/g, (digit) => String.fromCharCode(digit.charCodeAt(0) - 0x2080 + 0x30))
    .replace(/[⁄∕]/g, '/')
    .replace(/\s+/g, ' ')
    .trim();
}

function lowered(character: string): string {
  return character === '⁻' ? '-' : String(superscripts.indexOf(character));
}
