import { readColour } from './colour.ts';
import { drawn, svgSpace, tidy, worded } from './drawn.ts';
import type { Names, Paper } from './paper.ts';

/** Elements that are taken over, each with the attributes that place it; everything else is of the screen. */
const placing: Readonly<Record<string, readonly string[]>> = {
  g: [],
  defs: [],
  path: ['d'],
  rect: ['x', 'y', 'width', 'height', 'rx', 'ry'],
  circle: ['cx', 'cy', 'r'],
  ellipse: ['cx', 'cy', 'rx', 'ry'],
  line: ['x1', 'y1', 'x2', 'y2'],
  polyline: ['points'],
  polygon: ['points'],
  text: ['x', 'y', 'dx', 'dy'],
  tspan: ['x', 'y', 'dx', 'dy'],
  svg: ['x', 'y', 'width', 'height', 'viewBox'],
  clipPath: ['clipPathUnits'],
  pattern: ['x', 'y', 'width', 'height', 'patternUnits', 'patternContentUnits', 'patternTransform'],
  linearGradient: ['x1', 'y1', 'x2', 'y2', 'gradientUnits', 'gradientTransform', 'spreadMethod'],
  stop: ['offset'],
};

type Look = Readonly<Record<string, string>>;

/** What an element has that inherits nothing. */
const bareLook: Look = {
  fill: '#000000',
  'fill-opacity': '1',
  'fill-rule': 'nonzero',
  stroke: 'none',
  'stroke-opacity': '1',
  'stroke-width': '1',
  'stroke-dasharray': 'none',
  'stroke-dashoffset': '0',
  'stroke-linecap': 'butt',
  'stroke-linejoin': 'miter',
  'stroke-miterlimit': '4',
  'paint-order': 'normal',
  'font-family': '',
  'font-size': '',
  'font-weight': '400',
  'font-style': 'normal',
  'text-anchor': 'start',
  visibility: 'visible',
};

/** Not inherited, so said wherever it is not this. */
const ownLook: Look = {
  opacity: '1',
  'clip-path': 'none',
  'dominant-baseline': 'auto',
  'stop-color': '#000000',
  'stop-opacity': '1',
};

/** What an SVG of the page shows, with everything said in attributes that style sheets said before. */
export function inlineSvg(svg: SVGSVGElement, { font, names }: Paper): SVGElement[] {
  const around = { ...bareLook, ...font };
  return [...svg.children].flatMap((child) => copied(child, around, names));
}

function copied(element: Element, around: Look, names: Names): SVGElement[] {
  const places = placing[element.localName];
  if (element.namespaceURI !== svgSpace || places === undefined) return [];
  const style = getComputedStyle(element);
  if (style.display === 'none') return [];
  const look = lookOf(style, bareLook, names);
  const own =
    element.localName === 'stop'
      ? lookOf(style, ownLook, names)
      : withoutStops(lookOf(style, ownLook, names));
  const copy = drawn(element.localName, {
    ...(element.id === '' ? {} : { id: names(element.id) }),
    ...Object.fromEntries(
      [...places, 'transform'].flatMap((name) => {
        const value = element.getAttribute(name);
        return value === null ? [] : [[name, short(value)]];
      }),
    ),
    ...differing(look, around),
    ...differing(own, ownLook),
  });
  for (const child of element.childNodes) {
    if (child instanceof Text) copy.append(child.data);
    else if (child instanceof Element && child.localName === 'title')
      copy.append(worded('title', child.textContent));
    else if (child instanceof Element) copy.append(...copied(child, look, names));
  }
  return [copy];
}

function withoutStops(look: Look): Look {
  const { 'stop-color': _, 'stop-opacity': __, ...rest } = look;
  return rest;
}

function differing(look: Look, from: Look): Look {
  return Object.fromEntries(Object.entries(look).filter(([key, value]) => from[key] !== value));
}

function lookOf(style: CSSStyleDeclaration, keys: Look, names: Names): Look {
  const look: Record<string, string> = {};
  for (const key of Object.keys(keys)) look[key] ??= plain(style.getPropertyValue(key), names);
  for (const [paint, opacity] of [
    ['fill', 'fill-opacity'],
    ['stroke', 'stroke-opacity'],
    ['stop-color', 'stop-opacity'],
  ] as const) {
    const value = style.getPropertyValue(paint);
    if (!(paint in keys) || value === 'none' || value.startsWith('url(')) continue;
    const { hex, alpha } = readColour(value);
    look[paint] = hex;
    look[opacity] = `${alpha * Number(style.getPropertyValue(opacity))}`;
  }
  return look;
}

/** Lengths without their unit, lists with blanks, references within the file. */
function plain(value: string, names: Names): string {
  const id = /^url\("?#([^")]+)"?\)/.exec(value)?.[1];
  if (id !== undefined) return `url(#${names(id)})`;
  return value.replace(/(-?[\d.]+)px\b,?/g, '$1');
}

/** Numbers of an attribute without their dust. */
function short(value: string): string {
  return value.replace(/-?\d*\.\d{3,}(?:e-?\d+)?/g, (number) => `${tidy(Number(number))}`);
}
