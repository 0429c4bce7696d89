import { dimensionOfSpelling } from '../units/spellings.ts';

/** What the head of a column says. */
export interface Column {
  /** Without its unit and the marks around it. */
  readonly name: string;
  /** As written, where it is certain: `m³/h`, `in`, `°C`. */
  readonly unit: string | null;
  /** The whole head. */
  readonly written: string;
}

/** Nobody writes a longer head; it bounds the work. */
const longest = 200;
const bracketed = /\(((?:[^()]|\([^()]*\))*)\)|\[([^[\]]*)\]|\{([^{}]*)\}/g;

/**
 * Takes a head apart: `Q (m³/h)`, `flow [cfm]`, `static pressure / Pa`, `p in mmH2O`, `Flow, l/s`, `T_film_°C`. Only what
 * the units table knows is a unit, and only where it can be nothing else: the R of `Resistor R` and the in of `T_in` are
 * parts of the name.
 */
export function readHead(written: string): Column {
  const text = written.replace(/\s+/g, ' ').trim();
  const found = text.length > longest ? null : find(text);
  return { name: found?.name ?? text, unit: found?.unit ?? null, written: text };
}

type Found = { readonly name: string; readonly unit: string } | null;

/** Brackets say that what is in them is no name; but two units are one too many. */
function find(text: string): Found {
  const [one, other] = inBrackets(text);
  if (one === undefined) return asAWhole(text) ?? atTheEnd(text);
  if (other !== undefined) return null;
  const name = tidied(text.replace(one.whole, ' '));
  return { name: name === '' ? one.unit : name, unit: one.unit };
}

function inBrackets(text: string): { readonly whole: string; readonly unit: string }[] {
  return [...text.matchAll(bracketed)]
    .map(([whole, ...inside]) => ({ whole, unit: bare(inside.find((part) => part !== undefined) ?? '') }))
    .filter(({ unit }) => isUnit(unit) && !isPartOfUnit(text, unit));
}

/** Without the word that some put before it: (in Pa), [unit: Pa]. */
function bare(text: string): string {
  const unit = text.trim();
  return isUnit(unit) ? unit : unit.replace(/^(?:in|units?:?) /i, '').trim();
}

/** The bracket of `k W/(m·K)` ends a unit instead of holding one. */
function isPartOfUnit(text: string, unit: string): boolean {
  const before = text.slice(0, text.indexOf(unit) - 1);
  const [last = ''] = /\S+$/.exec(before) ?? [];
  return /[a-zA-ZΩ°µμ²³]\/$/.test(last) && isUnit(`${last}(${unit})`);
}

function asAWhole(text: string): Found {
  return isUnit(text) && !isDoubtful(text) ? { name: text, unit: text } : null;
}

/** After a mark a unit stands for certain; after a blank or an underscore a single letter may be part of the name. */
function atTheEnd(text: string): Found {
  return (
    after(text, /(?: in (?=\S)|[,;:] ?| [-–—] | \/ ?)(.+)$/, false) ??
    runAtTheEnd(text) ??
    after(text, /_([^_]+)$/, true) ??
    after(text, /\/(.+)$/, false)
  );
}

function after(text: string, mark: RegExp, isDoubted: boolean): Found {
  const [whole = '', unit = ''] = mark.exec(text) ?? [];
  const name = tidied(text.slice(0, text.length - whole.length));
  const isSure = isUnit(unit) && !(isDoubted && isDoubtful(unit));
  return name === '' || !isSure || endsInUnit(name) ? null : { name, unit };
}

/** The longest run of last words that is a unit: `flow cu ft/min`. */
function runAtTheEnd(text: string): Found {
  const words = text.split(' ');
  for (let from = Math.max(1, words.length - 4); from < words.length; from++) {
    const unit = words.slice(from).join(' ');
    const name = tidied(words.slice(0, from).join(' '));
    if (isUnit(unit) && !isDoubtful(unit) && name !== '') return { name, unit };
  }
  return null;
}

/** `flow m3/h` cut at its stroke would be hours. */
function endsInUnit(name: string): boolean {
  const [last = ''] = /[^\s_]+$/.exec(name) ?? [];
  return last !== name && isUnit(last) && !isDoubtful(last);
}

/** Whether the units table knows it; a single letter in its own case only. */
export function isUnit(text: string): boolean {
  if (text.length < 2) return /^[CFKWVAJRmshdglΩΩ"%°]$/.test(text);
  return text.length < 40 && text !== 'plain' && dimensionOfSpelling(text) !== null;
}

/** Units that are words or letters of a name as well. */
function isDoubtful(unit: string): boolean {
  return /^(?:\p{L}|in|min|bar|mil|day|deg)$/iu.test(unit);
}

function tidied(name: string): string {
  return name
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[\s,;:/_–—-]+$/, '')
    .trim();
}
