import { readColour } from './colour.ts';
import { worded } from './drawn.ts';
import type { Paper } from './paper.ts';

interface Run {
  readonly words: string[];
  readonly box: DOMRect;
  right: number;
}

/** Lines of a text of the page, each where the browser put it. */
export function paintText(text: Text, style: CSSStyleDeclaration, { origin, font }: Paper): SVGElement[] {
  const rise = ascentShare(style);
  const { hex, alpha } = readColour(style.color);
  const shown = (word: string) => (style.textTransform === 'uppercase' ? word.toUpperCase() : word);
  return runsOf(text).map(({ words, box, right }) => {
    const [anchor, x] =
      style.textAlign === 'center'
        ? (['middle', (box.left + right) / 2] as const)
        : ['right', 'end'].includes(style.textAlign)
          ? (['end', right] as const)
          : ([undefined, box.left] as const);
    return worded('text', shown(words.join(' ')), {
      x: x - origin.left,
      y: box.top + rise * box.height - origin.top,
      fill: hex,
      'fill-opacity': alpha < 1 ? alpha : undefined,
      'font-size': Number.parseFloat(style.fontSize),
      'font-family': style.fontFamily === font['font-family'] ? undefined : style.fontFamily,
      'font-weight': style.fontWeight === '400' ? undefined : style.fontWeight,
      'font-style': style.fontStyle === 'normal' ? undefined : style.fontStyle,
      'text-anchor': anchor,
    });
  });
}

/** Words side by side on one line belong together. */
function runsOf(text: Text): Run[] {
  const runs: Run[] = [];
  const range = document.createRange();
  for (const { 0: word, index } of text.data.matchAll(/[^ \n\t]+/g)) {
    range.setStart(text, index);
    range.setEnd(text, index + word.length);
    const box = range.getBoundingClientRect();
    if (box.width === 0) continue;
    const line = runs.at(-1);
    if (line && Math.abs(line.box.top - box.top) < 1) {
      line.words.push(word);
      line.right = box.right;
    } else {
      runs.push({ words: [word], box, right: box.right });
    }
  }
  return runs;
}

/** Part of a line's height above its baseline. */
function ascentShare({ fontStyle, fontWeight, fontSize, fontFamily }: CSSStyleDeclaration): number {
  const pen = document.createElement('canvas').getContext('2d');
  if (pen === null) return 0.8;
  pen.font = `${fontStyle} ${fontWeight} ${fontSize} ${fontFamily}`;
  const { fontBoundingBoxAscent: above, fontBoundingBoxDescent: beneath } = pen.measureText('x');
  return above / (above + beneath);
}
