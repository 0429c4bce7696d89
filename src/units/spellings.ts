import { type Dimension, dimensionNames, dimensions, type Unit } from './dimensions.ts';
import { tidyText } from './tidyText.ts';

interface Spellings {
  readonly exact: ReadonlyMap<string, Unit>;
  /** In lower case; holds no unit that differs from another by case alone. */
  readonly folded: ReadonlyMap<string, Unit>;
}

const spellings = new Map<Dimension, Spellings>(dimensionNames.map((name) => [name, spellingsOf(name)]));

/** The unit of this dimension that is written like this; `null` where there is none. */
export function findSpelling(dimension: Dimension, written: string): Unit | null {
  const plain = plainSpelling(written);
  const known = spellings.get(dimension);
  return known?.exact.get(plain) ?? known?.folded.get(plain.toLowerCase()) ?? null;
}

/** The first dimension that has a unit written like this; exact case before any case. */
export function dimensionOfSpelling(written: string): Dimension | null {
  const plain = plainSpelling(written);
  const isExact = (name: Dimension) => spellings.get(name)?.exact.has(plain) ?? false;
  return (
    dimensionNames.find(isExact) ??
    dimensionNames.find((name) => findSpelling(name, written) !== null) ??
    null
  );
}

/**
 * Dots, brackets, degree and multiplication signs out of the way: W/(m·K) → W/m K. A blank inside stays, so that
 * "m m" does not become millimetres.
 */
export function plainSpelling(written: string): string {
  return tidyText(written)
    .replace(/[µμ]/g, 'u')
    .replace(/[ΩΩ]/g, 'ohm')
    .replace(/[°º˚]/g, 'deg')
    .replace(/℃/g, 'degC')
    .replace(/℉/g, 'degF')
    .replace(/[·⋅∙*]/g, ' ')
    .replace(/[().^]/g, '')
    .replace(/ ?\/ ?/g, '/')
    .replace(/\bdeg ([CF])\b/gi, 'deg$1')
    .replace(/\s+/g, ' ')
    .trim();
}

function spellingsOf(name: Dimension): Spellings {
  const exact = new Map<string, Unit>();
  const folded = new Map<string, Unit>();
  for (const unit of dimensions[name].units) {
    for (const spelling of unit.spellings) {
      const plain = plainSpelling(spelling);
      exact.set(plain, unit);
      if (!unit.exactCase) folded.set(plain.toLowerCase(), unit);
    }
  }
  return { exact, folded };
}
