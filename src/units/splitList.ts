/** A list as typed, cut up: a number with its unit, or a range of such. */
export type ListPiece =
  | { readonly kind: 'one'; readonly text: string }
  | { readonly kind: 'range'; readonly from: string; readonly to: string; readonly step: string | null };

const steps = /^(.*?) +(?:by|step|steps of|in steps of) +(.+)$/i;
/** Before these a comma parts nothing. */
const straySteps = /,(?= +(?:by|step|steps of|in steps of)\b)/gi;
const span = /^(.*?\S)\s*(?:\bto\b|\.{2,3}|…|–|(?<=[\d\s])-(?=[\d\s.]))\s*(\S.*)$/i;

/**
 * Where a list is cut: at semicolons and line ends if there are any, otherwise at commas that a blank follows, so that
 * `0,8` stays a number; and at "and". What is no number even so is tried cut at every comma, then at every blank.
 * @param reads whether a text is a number with or without a unit
 */
export function splitList(text: string, reads: (text: string) => boolean): ListPiece[] {
  const marks = /[;\n]/.test(text) ? /[;\n]+/ : /,(?=\s|$)/;
  return text
    .replace(straySteps, '')
    .split(marks)
    .flatMap((part) => part.split(/\band\b|&/i))
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .flatMap((part) => pieceOf(part, reads));
}

function pieceOf(part: string, reads: (text: string) => boolean): ListPiece[] {
  if (reads(part)) return [{ kind: 'one', text: part }];
  const [, whole = part, step = null] = steps.exec(part) ?? [];
  const [, from, to] = span.exec(whole) ?? [];
  if (from !== undefined && to !== undefined) return [{ kind: 'range', from, to, step }];
  const apart = [/,/, /\s+/]
    .map((mark) => part.split(mark).map((each) => each.trim()))
    .find((parts) => parts.length > 1 && parts.every(reads));
  return (apart ?? [part]).map((each) => ({ kind: 'one', text: each }));
}
