import type { FlatPattern, PatternCutOut } from '../../report/cut.ts';

/** A panel in the pixels of its own picture; all pictures of a list have one width and one scale. */
export interface PlacedPattern {
  readonly width: number;
  readonly height: number;
  readonly outline: string;
  readonly cutOuts: readonly PlacedCutOut[];
  readonly rules: string;
  readonly texts: readonly PlacedText[];
}

interface PlacedCutOut {
  readonly key: string;
  /** What is gone; of a notch a little more, so that the outline is broken there. */
  readonly d: string;
  /** Its edges, where they are not those of `d`. */
  readonly edges: string | null;
  readonly scribed: boolean;
}

interface PlacedText {
  readonly key: string;
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
}

export const pictureWidth = 340;
/** Room for the measures, on either side, above and below. */
const room = { side: 54, above: 8, below: 28 } as const;
const tallest = 260;
const letter = 6.6;

/** Pixels for a metre, so that the largest panel fits and all are to one scale. */
export function commonScale(patterns: readonly FlatPattern[]): number {
  const long_m = Math.max(...patterns.map(({ length_m }) => length_m));
  const high_m = Math.max(...patterns.map(({ width_m }) => width_m));
  return Math.min((pictureWidth - 2 * room.side) / long_m, tallest / high_m);
}

export function placePattern(pattern: FlatPattern, scale: number): PlacedPattern {
  const { length_m, width_m, corners, cutOuts } = pattern;
  const long = length_m * scale;
  const high = width_m * scale;
  const left = (pictureWidth - long) / 2;
  const bottom = room.above + high;
  const at = (x_m: number, y_m: number) => `${round(left + x_m * scale)} ${round(bottom - y_m * scale)}`;
  const height = Math.max(bottom + room.below, 56);
  const middle = bottom - high / 2;
  const under = bottom + 10;
  const texts: PlacedText[] = [
    {
      key: 'length',
      x: round(pictureWidth / 2),
      y: round(under + 14),
      text: pattern.lengthText,
      anchor: 'middle',
    },
    { key: 'left', x: round(left - 16), y: round(middle + 4), text: pattern.leftText, anchor: 'end' },
  ];
  if (pattern.rightText !== null)
    texts.push({
      key: 'right',
      x: round(left + long + 16),
      y: round(middle + 4),
      text: pattern.rightText,
      anchor: 'start',
    });
  cutOuts.forEach((cut, index) => {
    const fits = cut.text.length * letter + 6 < cut.width_m * scale && cut.height_m * scale > 15;
    if (!fits || cut.scribed || isUnderScribed(cut, cutOuts, scale)) return;
    texts.push({
      key: `cut-${index}`,
      x: round(left + cut.x_m * scale),
      y: round(bottom - cut.y_m * scale + 4),
      text: cut.text,
      anchor: 'middle',
    });
  });
  return {
    width: pictureWidth,
    height: round(height),
    outline: `M${corners.map(({ x_m, y_m }) => at(x_m, y_m)).join('L')}z`,
    cutOuts: cutOuts.map((cut, index) => placeCutOut(cut, `${index}`, pattern, at, scale)),
    rules: [
      rule(left, under, left + long, under),
      edgeRule(pattern, left - 10, bottom, scale, 'left'),
      pattern.rightText === null ? '' : edgeRule(pattern, left + long + 10, bottom, scale, 'right'),
    ].join(''),
    texts,
  };
}

/** Words in an opening whose middle holds a scribed circle as wide as they are would be struck through. */
function isUnderScribed(cut: PatternCutOut, all: readonly PatternCutOut[], scale: number): boolean {
  return all.some(
    (other) =>
      other.scribed &&
      Math.abs(other.x_m - cut.x_m) < 1e-9 &&
      other.width_m * scale < cut.text.length * letter + 6,
  );
}

/** Beside a sloping panel the two rules are as long as the edges they measure. */
function edgeRule(
  { corners, length_m, width_m, rightText }: FlatPattern,
  x: number,
  bottom: number,
  scale: number,
  side: 'left' | 'right',
): string {
  const edge_m = side === 'left' ? 0 : length_m;
  const ends_m =
    rightText === null
      ? [0, width_m]
      : corners.filter(({ x_m }) => Math.abs(x_m - edge_m) < 1e-9).map(({ y_m }) => y_m);
  return rule(x, bottom - Math.min(...ends_m) * scale, x, bottom - Math.max(...ends_m) * scale);
}

/** A line with a stroke across each end. */
function rule(x0: number, y0: number, x1: number, y1: number): string {
  const tick = (x: number, y: number) => `M${round(x - 3)} ${round(y + 3)}L${round(x + 3)} ${round(y - 3)}`;
  return `M${round(x0)} ${round(y0)}L${round(x1)} ${round(y1)}${tick(x0, y0)}${tick(x1, y1)}`;
}

type At = (x_m: number, y_m: number) => string;

function placeCutOut(
  cut: PatternCutOut,
  key: string,
  pattern: FlatPattern,
  at: At,
  scale: number,
): PlacedCutOut {
  const { round: isRound, scribed, x_m, y_m, width_m, height_m } = cut;
  if (isRound) return { key, scribed, d: ring(cut, at, scale), edges: null };
  const [x0, x1] = [x_m - width_m / 2, x_m + width_m / 2];
  const [y0, y1] = [y_m - height_m / 2, y_m + height_m / 2];
  // The open side of a notch, if any: pushed out past the outline, and not drawn.
  const beyond_m = 2 / scale;
  const open = {
    left: x0 < edge_m,
    right: x1 > pattern.length_m - edge_m,
    bottom: y0 < edge_m,
    top: y1 > pattern.width_m - edge_m,
  };
  const [left, right] = [open.left ? x0 - beyond_m : x0, open.right ? x1 + beyond_m : x1];
  const [low, high] = [open.bottom ? y0 - beyond_m : y0, open.top ? y1 + beyond_m : y1];
  const d = `M${at(left, low)}L${at(right, low)}L${at(right, high)}L${at(left, high)}z`;
  const corners = [at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1)];
  // Corners in turn round the three closed sides, beginning behind the open one.
  const first = open.bottom ? 1 : open.right ? 2 : open.top ? 3 : open.left ? 0 : null;
  const edges =
    first === null ? null : `M${[0, 1, 2, 3].map((step) => corners[(first + step) % 4]).join('L')}`;
  return { key, scribed, d, edges };
}

/** What is nearer to the edge of a panel than this is at it. */
const edge_m = 1e-6;

function ring({ x_m, y_m, width_m }: PatternCutOut, at: At, scale: number): string {
  const radius = round((width_m / 2) * scale);
  const half = `A${radius} ${radius} 0 1 0`;
  return `M${at(x_m - width_m / 2, y_m)}${half} ${at(x_m + width_m / 2, y_m)}${half} ${at(x_m - width_m / 2, y_m)}z`;
}

function round(value: number): number {
  return Number(value.toFixed(2));
}
