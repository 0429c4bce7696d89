export const svgSpace = 'http://www.w3.org/2000/svg';

export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** An element of a picture; attributes that are `undefined` are left out. */
export function drawn(tag: string, attributes: Attributes = {}, children: readonly Node[] = []): SVGElement {
  const element = document.createElementNS(svgSpace, tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== undefined) element.setAttribute(name, typeof value === 'number' ? `${tidy(value)}` : value);
  }
  element.append(...children);
  return element;
}

/** Words in an element; what XML cannot hold is left out. */
export function worded(tag: string, text: string, attributes: Attributes = {}): SVGElement {
  const element = drawn(tag, attributes);
  element.textContent = [...text].filter((sign) => sign >= ' ').join('');
  return element;
}

/** Hundredths of a pixel are finer than any printer. */
export function tidy(value: number): number {
  return Math.round(value * 100) / 100;
}
