/** Where a JSON text breaks, for a reader with an editor. */
export interface JsonFault {
  readonly line: number;
  readonly column: number;
  readonly reason: string;
}

type Expecting = 'value' | 'valueOrEnd' | 'key' | 'keyOrEnd' | 'colon' | 'commaOrEnd' | 'nothing';

const literal = /(?:true|false|null)\b/y;
const number = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.])/y;
// Everything from the space on but the quote and the backslash: JSON wants control characters escaped.
const string = /"(?:[ !#-[\]-\u{10ffff}]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/uy;
const blank = /[ \t\r\n]*/y;

/**
 * Finds the first place where a text stops being JSON. Engines word and place this each in their own way, some not at
 * all, so the text is read once more here. @returns `null` for a text that is JSON
 */
export function findJsonFault(text: string): JsonFault | null {
  const open: ('{' | '[')[] = [];
  let at = 0;
  let expecting: Expecting = 'value';

  const take = (pattern: RegExp) => {
    pattern.lastIndex = at;
    const found = pattern.exec(text);
    if (found) at = pattern.lastIndex;
    return found !== null;
  };
  const afterValue = (): Expecting => (open.length === 0 ? 'nothing' : 'commaOrEnd');

  for (;;) {
    take(blank);
    const here = text[at];
    if (here === undefined) return expecting === 'nothing' ? null : fault(text, at, expecting);
    const inObject = open.at(-1) === '{';
    if (expecting === 'value' || expecting === 'valueOrEnd') {
      if (here === '{' || here === '[') {
        open.push(here);
        at++;
        expecting = here === '{' ? 'keyOrEnd' : 'valueOrEnd';
      } else if (here === ']' && expecting === 'valueOrEnd') {
        open.pop();
        at++;
        expecting = afterValue();
      } else if (take(string) || take(number) || take(literal)) expecting = afterValue();
      else return fault(text, at, expecting);
    } else if (expecting === 'key' || expecting === 'keyOrEnd') {
      if (here === '}' && expecting === 'keyOrEnd') {
        open.pop();
        at++;
        expecting = afterValue();
      } else if (take(string)) expecting = 'colon';
      else return fault(text, at, expecting);
    } else if (expecting === 'colon' && here === ':') {
      at++;
      expecting = 'value';
    } else if (expecting === 'commaOrEnd' && here === ',') {
      at++;
      expecting = inObject ? 'key' : 'value';
    } else if (expecting === 'commaOrEnd' && here === (inObject ? '}' : ']')) {
      open.pop();
      at++;
      expecting = afterValue();
    } else return fault(text, at, expecting);
  }
}

const wanted: Readonly<Record<Expecting, string>> = {
  value: 'a value should stand here',
  valueOrEnd: 'a value or ] should stand here',
  key: 'a key in "double quotes" should stand here',
  keyOrEnd: 'a key in "double quotes" or } should stand here',
  colon: 'a colon should stand here',
  commaOrEnd: 'a comma or a closing bracket should stand here',
  nothing: 'the file should end here',
};

function fault(text: string, at: number, expecting: Expecting): JsonFault {
  const before = text.slice(0, at);
  const line = before.split('\n').length;
  const column = at - (before.lastIndexOf('\n') + 1) + 1;
  const reason = at >= text.length ? `${wanted[expecting]}, but the file ends` : wanted[expecting];
  return { line, column, reason };
}
