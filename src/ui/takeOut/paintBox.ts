import { readColour } from './colour.ts';
import { drawn } from './drawn.ts';
import type { Paper } from './paper.ts';

export interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Ground and border of a box of the page. */
export function paintBox(style: CSSStyleDeclaration, at: Place, { names }: Paper): SVGElement[] {
  if (at.width <= 0 || at.height <= 0) return [];
  const ground = readColour(style.backgroundColor);
  const gradient = gradientOf(style, at, names(`gradient ${at.x} ${at.y} ${style.backgroundImage}`));
  const sides = (['Top', 'Right', 'Bottom', 'Left'] as const).map((side) => ({
    width: style[`border${side}Style`] === 'none' ? 0 : Number.parseFloat(style[`border${side}Width`]),
    colour: style[`border${side}Color`],
  }));
  const [top] = sides;
  const isEven = sides.every(({ width, colour }) => width === top?.width && colour === top.colour);
  const line = isEven && top ? top.width : 0;
  const inner = { x: at.x + line / 2, y: at.y + line / 2, width: at.width - line, height: at.height - line };
  const shape = (fill: string, opacity: number) =>
    shapeOf(style, inner, {
      fill,
      ...(opacity < 1 ? { 'fill-opacity': opacity } : {}),
      ...(line > 0 && top ? { stroke: readColour(top.colour).hex, 'stroke-width': line } : {}),
      ...(line > 0 && style.borderTopStyle === 'dashed'
        ? { 'stroke-dasharray': `${3 * line} ${2 * line}` }
        : {}),
    });
  return [
    ...(ground.alpha > 0 || line > 0
      ? [shape(ground.alpha > 0 ? ground.hex : 'none', ground.alpha || 1)]
      : []),
    ...(gradient ? [gradient.element, shapeOf(style, inner, { fill: `url(#${gradient.id})` })] : []),
    ...(isEven ? [] : edges(sides, at)),
  ];
}

function shapeOf(
  style: CSSStyleDeclaration,
  at: Place,
  look: Readonly<Record<string, string | number>>,
): SVGElement {
  const { x, y, width, height } = at;
  const corner = Number.parseFloat(style.borderTopLeftRadius);
  const radius = style.borderTopLeftRadius.endsWith('%') ? (corner / 100) * width : corner;
  if (Math.abs(width - height) < 0.1 && radius >= width / 2) {
    return drawn('circle', { cx: x + width / 2, cy: y + height / 2, r: width / 2, ...look });
  }
  const rx = Math.min(radius, width / 2, height / 2);
  return drawn('rect', { x, y, width, height, ...(rx > 0 ? { rx } : {}), ...look });
}

function edges(
  sides: readonly { readonly width: number; readonly colour: string }[],
  at: Place,
): SVGElement[] {
  const { x, y, width, height } = at;
  const [top = 0, right = 0, bottom = 0, left = 0] = sides.map((side) => side.width);
  const strips: readonly Place[] = [
    { x, y, width, height: top },
    { x: x + width - right, y, width: right, height },
    { x, y: y + height - bottom, width, height: bottom },
    { x, y, width: left, height },
  ];
  return strips.flatMap((strip, i) => {
    const { hex, alpha } = readColour(sides[i]?.colour ?? '');
    return strip.width > 0 && strip.height > 0 && alpha > 0 ? [drawn('rect', { ...strip, fill: hex })] : [];
  });
}

/** Between two stops, for a blend that a file can only say in sRGB. */
const blendSteps = 8;

/** The first gradient behind a box, straight ones only, along the line that CSS Images Level 3 lays through its middle. */
function gradientOf(style: CSSStyleDeclaration, at: Place, id: string) {
  const parts = /^(repeating-)?linear-gradient\((.*)\)$/.exec(style.backgroundImage);
  if (!parts) return null;
  const words = (parts[2] ?? '').split(/,\s*(?![^(]*\))/);
  const angled = /^(-?[\d.]+)deg/.exec(words[0] ?? '');
  const blended = / in (\w+)$/.exec(words[0] ?? '')?.[1];
  const turn = ((angled ? Number(angled[1]) : 180) * Math.PI) / 180;
  const [dx, dy] = [Math.sin(turn), -Math.cos(turn)];
  const length = Math.abs(at.width * dx) + Math.abs(at.height * dy);
  const given = (angled || blended ? words.slice(1) : words).flatMap(stopsOf);
  const last = given.length - 1;
  const stops = given.map(({ colour, px }, i) => ({ colour, px: px ?? (length * i) / Math.max(last, 1) }));
  const [from, to] = parts[1] ? [stops[0]?.px ?? 0, stops[last]?.px ?? length] : [0, length];
  const spot = (along: number): readonly [number, number] => [
    at.x + at.width / 2 + dx * (along - length / 2),
    at.y + at.height / 2 + dy * (along - length / 2),
  ];
  const [[x1, y1], [x2, y2]] = [spot(from), spot(to)];
  const fine = blended ? stops.flatMap((stop, i) => blend(stop, stops[i + 1], blended)) : stops;
  return {
    id,
    element: drawn(
      'linearGradient',
      { id, x1, y1, x2, y2, gradientUnits: 'userSpaceOnUse', spreadMethod: parts[1] ? 'repeat' : undefined },
      fine.map(({ colour, px }) => {
        const { hex, alpha } = readColour(colour);
        return drawn('stop', {
          offset: (px - from) / Math.max(to - from, 1e-6),
          'stop-color': hex,
          ...(alpha < 1 ? { 'stop-opacity': alpha } : {}),
        });
      }),
    ),
  };
}

interface Stop {
  readonly colour: string;
  readonly px: number;
}

/** A colour with no, one or two places. */
function stopsOf(word: string): { readonly colour: string; readonly px: number | null }[] {
  const [, colour = '', places = ''] = /^(\w+\([^)]*\)|\w+)(.*)$/.exec(word.trim()) ?? [];
  const given = places.trim() === '' ? [null] : places.trim().split(/\s+/).map(Number.parseFloat);
  return given.map((px) => ({ colour, px }));
}

/** The browser itself mixes what lies between. */
function blend(stop: Stop, next: Stop | undefined, space: string): Stop[] {
  if (!next) return [stop];
  const probe = document.body.appendChild(document.createElement('i'));
  const mixed = Array.from({ length: blendSteps }, (_, i): Stop => {
    const share = i / blendSteps;
    probe.style.color = `color-mix(in ${space}, ${next.colour} ${100 * share}%, ${stop.colour})`;
    return { colour: getComputedStyle(probe).color, px: stop.px + share * (next.px - stop.px) };
  });
  probe.remove();
  return mixed;
}
