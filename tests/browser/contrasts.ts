import type { Page } from 'playwright';

export interface Contrast {
  readonly text: string;
  readonly ratio: number;
  /** 4.5, or 3 for large letters. */
  readonly least: number;
}

/**
 * Contrast of every text that is seen, in HTML and in SVG, against what is painted behind it. Programs that look for
 * faults pass over text in an SVG. Ratio, relative luminance and what counts as large: WCAG 2.2, success criterion 1.4.3
 * and the definitions of «contrast ratio», «relative luminance» and «large scale».
 */
export function contrasts(page: Page, within: string): Promise<Contrast[]> {
  return page.evaluate((place) => {
    const pen = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
    if (pen === null) throw new Error('no canvas');
    type Colour = readonly [red: number, green: number, blue: number, alpha: number];
    const known = new Map<string, Colour>();
    const read = (css: string): Colour => {
      const seen = known.get(css);
      if (seen) return seen;
      pen.clearRect(0, 0, 1, 1);
      pen.fillStyle = css;
      pen.fillRect(0, 0, 1, 1);
      const [red = 0, green = 0, blue = 0, alpha = 0] = pen.getImageData(0, 0, 1, 1).data;
      const colour: Colour = [red, green, blue, alpha / 255];
      known.set(css, colour);
      return colour;
    };
    const over = (top: Colour, below: Colour): Colour => {
      const mix = (index: 0 | 1 | 2) => top[index] * top[3] + below[index] * (1 - top[3]);
      return [mix(0), mix(1), mix(2), 1];
    };
    const faded = (colour: Colour, share: number): Colour => [
      colour[0],
      colour[1],
      colour[2],
      colour[3] * share,
    ];
    const luminance = (colour: Colour) => {
      const part = (byte: number) => {
        const share = byte / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      };
      return 0.2126 * part(colour[0]) + 0.7152 * part(colour[1]) + 0.0722 * part(colour[2]);
    };
    const ratioOf = (a: Colour, b: Colour) => {
      const lights = [luminance(a), luminance(b)];
      return (Math.max(...lights) + 0.05) / (Math.min(...lights) + 0.05);
    };
    const opacityOf = (element: Element) => {
      let share = 1;
      for (let up: Element | null = element; up; up = up.parentElement)
        share *= Number(getComputedStyle(up).opacity);
      return share;
    };

    /** What an element paints at a point; a pattern paints any of its own colours. */
    const paintsAt = (element: Element, x: number, y: number): Colour[] => {
      const style = getComputedStyle(element);
      const share = opacityOf(element);
      if (!(element instanceof SVGElement)) return [faded(read(style.backgroundColor), share)];
      if (!(element instanceof SVGGeometryElement)) return [];
      const toLocal = element.getScreenCTM()?.inverse();
      if (!toLocal) return [];
      const point = new DOMPoint(x, y).matrixTransform(toLocal);
      const coloursOf = (paint: string, opacity: string): Colour[] => {
        const pattern = /url\("?#([^")]+)/.exec(paint)?.[1];
        if (pattern === undefined)
          return paint === 'none' ? [] : [faded(read(paint), Number(opacity) * share)];
        const parts = document.getElementById(pattern)?.querySelectorAll('*') ?? [];
        return [...parts].flatMap((part) => {
          const { fill, stroke } = getComputedStyle(part);
          return [fill, stroke].filter((each) => each !== 'none').map(read);
        });
      };
      if (style.stroke !== 'none' && element.isPointInStroke(point))
        return coloursOf(style.stroke, style.strokeOpacity);
      return element.isPointInFill(point) ? coloursOf(style.fill, style.fillOpacity) : [];
    };

    const letters = document.createTreeWalker(
      document.querySelector(place) ?? document,
      NodeFilter.SHOW_TEXT,
    );
    const holders = new Set<Element>();
    while (letters.nextNode()) {
      const holder = letters.currentNode.parentElement;
      if (holder && /\S/.test(letters.currentNode.textContent ?? '')) holders.add(holder);
    }
    // Everything has to be hit, also what lets the pointer through; a sheet of our own, for inline styles are blocked.
    const hitAll = new CSSStyleSheet();
    hitAll.replaceSync('* { pointer-events: all !important }');
    document.adoptedStyleSheets.push(hitAll);

    const found: { text: string; ratio: number; least: number }[] = [];
    for (const holder of holders) {
      const style = getComputedStyle(holder);
      if (!holder.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue;
      // Rows of a table are alike; the first few stand for all.
      if (holder.closest('.unseen, :disabled, option, .sheet, tr:nth-child(n + 4)')) continue;
      const range = document.createRange();
      range.selectNodeContents(holder);
      if (range.getBoundingClientRect().width === 0) continue;
      holder.scrollIntoView({ block: 'center', inline: 'nearest', behavior: 'instant' });
      const isDrawn = holder instanceof SVGElement;
      const box = isDrawn ? holder.getBoundingClientRect() : range.getBoundingClientRect();
      const inked = faded(read(isDrawn ? style.fill : style.color), opacityOf(holder));
      let least = Number.POSITIVE_INFINITY;
      for (const share of [0.15, 0.5, 0.85]) {
        const [x, y] = [box.left + share * box.width, box.top + box.height / 2];
        const pile = document.elementsFromPoint(x, y);
        const at = pile.findIndex((each) => each === holder || holder.contains(each));
        if (at < 0) continue;
        // From the text downwards until something hides the rest; a halo is the text's own ground.
        const hasHalo =
          isDrawn && style.paintOrder.startsWith('stroke') && Number.parseFloat(style.strokeWidth) >= 2;
        let grounds: Colour[] = [hasHalo ? read(style.stroke) : [0, 0, 0, 0]];
        const below = isDrawn ? pile.slice(at + 1) : pile.slice(at);
        for (const each of [...below, document.documentElement]) {
          const paints = paintsAt(each, x, y).filter((paint) => paint[3] > 0);
          if (paints.length === 0) continue;
          grounds = grounds.flatMap((ground) =>
            ground[3] > 0.99
              ? [ground]
              : paints.map((paint) => (ground[3] === 0 ? paint : over(ground, paint))),
          );
          if (grounds.every((ground) => ground[3] > 0.99)) break;
        }
        for (const ground of grounds) least = Math.min(least, ratioOf(over(inked, ground), ground));
      }
      if (least === Number.POSITIVE_INFINITY) continue;
      const size_px = Number.parseFloat(style.fontSize);
      const isLarge = size_px >= 24 || (size_px >= 18.66 && Number(style.fontWeight) >= 700);
      found.push({
        text: `${isDrawn ? 'svg ' : ''}${holder.textContent?.slice(0, 40)}`,
        ratio: least,
        least: isLarge ? 3 : 4.5,
      });
    }
    document.adoptedStyleSheets.pop();
    return found;
  }, within);
}
