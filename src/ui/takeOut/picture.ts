import { drawn, tidy, worded } from './drawn.ts';
import { inlineSvg } from './inlineSvg.ts';
import { paintBox } from './paintBox.ts';
import { paintText } from './paintText.ts';
import { newNames, type Paper } from './paper.ts';
import styles from './picture.module.css';

export interface Picture {
  /** Text of a file that needs nothing else. */
  readonly svg: string;
  /** Pixels of the page. */
  readonly width: number;
  readonly height: number;
}

interface Foot {
  readonly caption: string;
  /** Whose it is, under the caption. */
  readonly lines: readonly string[];
}

/** What belongs to the hand that is just there, not to the figure. */
const ofTheHand =
  '.recharts-tooltip-wrapper, .recharts-tooltip-cursor, .recharts-active-dot, [data-unpainted]';

/**
 * A figure of the page as it stands there, SVG and HTML over and under it alike, but light and on white, nothing chosen,
 * with caption and owner below. Throws where the browser does not tell how it would draw.
 */
export function pictureOf(figure: HTMLElement, foot: Foot): Picture {
  const sheet = document.createElement('div');
  sheet.className = styles.sheet ?? '';
  sheet.inert = true;
  const copy = copyOf(figure, foot.caption);
  const { width } = figure.getBoundingClientRect();
  const { paddingLeft, paddingRight } = getComputedStyle(figure);
  const inner = width - Number.parseFloat(paddingLeft) - Number.parseFloat(paddingRight);
  sheet.style.setProperty('--inner', `${inner}px`);
  sheet.append(copy, footOf(figure, foot));
  // Beside the figure, so that every rule that reaches the one reaches the other.
  figure.parentElement?.append(sheet);
  try {
    return paint(sheet, copy, foot);
  } finally {
    sheet.remove();
  }
}

function copyOf(figure: HTMLElement, caption: string): HTMLElement {
  const copy = figure.cloneNode(true) as HTMLElement;
  copy.classList.add(styles.figure ?? '');
  for (const element of copy.querySelectorAll(ofTheHand)) element.remove();
  for (const element of copy.querySelectorAll('[data-chosen="true"]'))
    element.setAttribute('data-chosen', 'false');
  for (const element of copy.querySelectorAll('[aria-pressed="true"]'))
    element.setAttribute('aria-pressed', 'false');
  // It stands below in any case.
  for (const element of copy.querySelectorAll('figcaption'))
    if (element.textContent === caption) element.remove();
  return copy;
}

function footOf(figure: HTMLElement, { caption, lines }: Foot): HTMLElement {
  const foot = document.createElement('div');
  foot.className = styles.foot ?? '';
  const names = document.createElement('ol');
  names.className = styles.names ?? '';
  for (const button of figure.querySelectorAll('button')) {
    const number = button.textContent;
    const name = button.getAttribute('aria-label');
    const isRound = getComputedStyle(button).borderTopLeftRadius === '50%';
    if (isRound && /^\d+$/.test(number) && name) names.append(made('li', `${number}\u00a0${name}`));
  }
  if (names.childElementCount > 0) foot.append(names);
  foot.append(made('b', caption), ...lines.map((line) => made('div', line)));
  return foot;
}

function made(tag: string, text: string): HTMLElement {
  const element = document.createElement(tag);
  element.textContent = text;
  return element;
}

function paint(sheet: HTMLElement, figure: HTMLElement, { caption, lines }: Foot): Picture {
  const origin = sheet.getBoundingClientRect();
  const [width, height] = [Math.ceil(origin.width), Math.ceil(origin.height)];
  const told = [...figure.querySelectorAll('li, p')].map(({ textContent }) => textContent.trim());
  const spoken = figure.querySelector('svg > title')?.textContent ?? told.join('; ');
  const { fontFamily, fontSize } = getComputedStyle(sheet);
  const font = { 'font-family': fontFamily, 'font-size': `${Number.parseFloat(fontSize)}` };
  const root = drawn('svg', { width, height, viewBox: `0 0 ${width} ${height}`, ...font }, [
    worded('title', `${caption} – ${lines[0] ?? ''}`),
    worded('desc', spoken),
    ...painted(sheet, { origin, font, names: newNames() }),
  ]);
  const text = new XMLSerializer().serializeToString(root);
  return { svg: `<?xml version="1.0" encoding="UTF-8"?>\n${text}\n`, width, height };
}

/** An element of the page with all that stands in it. */
function painted(element: Element, paper: Paper): SVGElement[] {
  const { origin } = paper;
  const style = getComputedStyle(element);
  const isHidden =
    style.display === 'none' ||
    style.visibility === 'hidden' ||
    style.opacity === '0' ||
    style.clipPath !== 'none';
  if (isHidden) return [];
  const box = element.getBoundingClientRect();
  const at = { x: box.left - origin.left, y: box.top - origin.top, width: box.width, height: box.height };
  if (element instanceof SVGSVGElement) {
    const shown = element.viewBox.baseVal;
    const scale = shown !== null && shown.width > 0 ? box.width / shown.width : 1;
    const place = `translate(${tidy(at.x)} ${tidy(at.y)})${Math.abs(scale - 1) > 1e-3 ? ` scale(${scale})` : ''}`;
    return [drawn('g', { transform: place }, inlineSvg(element, paper))];
  }
  if (!(element instanceof HTMLElement)) return [];
  const turned = unturned(element, style, box, origin);
  if (turned !== null) return [drawn('g', { transform: turned }, painted(element, paper))];
  return [
    ...paintBox(style, at, paper),
    ...[...element.childNodes].flatMap((child) => {
      if (child instanceof Text) return paintText(child, style, paper);
      return child instanceof Element ? painted(child, paper) : [];
    }),
  ];
}

/** Lays a turned or stretched box straight and says how it was turned about its middle; `null` where it is straight. */
function unturned(
  element: HTMLElement,
  style: CSSStyleDeclaration,
  box: DOMRect,
  origin: DOMRect,
): string | null {
  const rotate = style.rotate === 'none' ? new DOMMatrix() : new DOMMatrix(`rotate(${style.rotate})`);
  const { a, b, c, d } = rotate.multiply(new DOMMatrix(style.transform === 'none' ? '' : style.transform));
  const isStraight = [a - 1, b, c, d - 1].every((part) => Math.abs(part) < 1e-6);
  if (isStraight) return null;
  element.style.transform = 'none';
  element.style.rotate = 'none';
  const flat = element.getBoundingClientRect();
  const middle = (of: DOMRect) => [
    tidy(of.left + of.width / 2 - origin.left),
    tidy(of.top + of.height / 2 - origin.top),
  ];
  const [x, y] = middle(box);
  const [u = 0, v = 0] = middle(flat);
  return `translate(${x} ${y}) matrix(${a} ${b} ${c} ${d} 0 0) translate(${-u} ${-v})`;
}
