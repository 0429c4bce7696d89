export interface Colour {
  /** "#rrggbb". */
  readonly hex: string;
  readonly alpha: number;
}

/**
 * A colour as browsers compute it, in the form that every program reads. Throws on a form that no style sheet here leads to.
 */
export function readColour(css: string): Colour {
  if (css === 'transparent') return { hex: '#000000', alpha: 0 };
  const form = /^(rgba?|oklab|color)\((?:srgb )?([^)]*)\)$/.exec(css);
  const [red = 0, green = 0, blue = 0, alpha = 1] = (form?.[2] ?? '').split(/[\s,/]+/).map(Number);
  if (form?.[1] === 'oklab') return { hex: hexOf(srgbOf(red, green, blue)), alpha };
  if (form?.[1] === 'color') return { hex: hexOf([red, green, blue]), alpha };
  if (form) return { hex: hexOf([red / 255, green / 255, blue / 255]), alpha };
  throw new Error(`${css} is no colour`);
}

function hexOf(shares: readonly number[]): string {
  const byte = (share: number) => Math.round(255 * Math.min(Math.max(share, 0), 1));
  return `#${shares.map((share) => byte(share).toString(16).padStart(2, '0')).join('')}`;
}

/** Oklab to sRGB, as W3C CSS Color Module Level 4 has it (matrices from memory; tests compare with the browser's own). */
function srgbOf(lightness: number, a: number, b: number): number[] {
  const long = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const middle = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const short = (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3;
  return [
    4.0767416621 * long - 3.3077115913 * middle + 0.2309699292 * short,
    -1.2684380046 * long + 2.6097574011 * middle - 0.3413193965 * short,
    -0.0041960863 * long - 0.7034186147 * middle + 1.707614701 * short,
  ].map((light) => (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055));
}
