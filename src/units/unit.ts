/** How a unit is scaled: SI = (x + plus) · times / over. Two whole numbers keep 1.6 mm at exactly 0.0016 m. */
interface Scale {
  readonly times?: number;
  readonly over?: number;
  readonly plus?: number;
}

interface Traits {
  /** No space before the symbol: 5" and 30°. */
  readonly attached?: boolean;
  /** Upper and lower case tell units apart: mV is not MV. */
  readonly exactCase?: boolean;
}

export interface Unit {
  /** Plain ASCII name, kept in files and drafts; can be typed, unless it is the plain number. */
  readonly key: string;
  readonly symbol: string;
  /** All that people type for it, key and symbol included. */
  readonly spellings: readonly string[];
  readonly factor: number;
  readonly divisor: number;
  readonly offset: number;
  readonly attached: boolean;
  readonly exactCase: boolean;
}

/** What a kind of quantity is called, measured in, and shown with. */
export interface DimensionInfo {
  /** With its article, to stand in a sentence. */
  readonly noun: string;
  readonly units: readonly Unit[];
  /** Keys of the units shown where nothing was typed. */
  readonly metric: string;
  readonly inch: string;
  /** Significant digits that are worth reading. */
  readonly digits: number;
  /** Most decimals, where the zero of the unit is arbitrary and significant digits say little. */
  readonly decimals?: number;
  readonly examples: readonly [string, string];
  /** Units that may be written one after the other, the larger first: 2 ft 3 in. */
  readonly compound?: readonly (readonly string[])[];
  /** Letters that stand for the decimal mark: 4k7, 3V3. */
  readonly infix?: Readonly<Record<string, string>>;
}

/** @param also further spellings, parted by `|` */
export function unit(key: string, symbol: string, also = '', scale: Scale = {}, traits: Traits = {}): Unit {
  const spellings = [key, symbol, ...also.split('|')].filter((spelling) => spelling !== '');
  return {
    key,
    symbol,
    spellings: [...new Set(spellings)],
    factor: scale.times ?? 1,
    divisor: scale.over ?? 1,
    offset: scale.plus ?? 0,
    attached: traits.attached ?? false,
    exactCase: traits.exactCase ?? false,
  };
}

export function toSI(value: number, { factor, divisor, offset }: Unit): number {
  return ((value + offset) * factor) / divisor;
}

export function fromSI(value: number, { factor, divisor, offset }: Unit): number {
  return (value * divisor) / factor - offset;
}
