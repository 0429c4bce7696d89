import type { Design } from '../model/design.ts';
import {
  type Dimension,
  editIn,
  parseIn,
  sayRange,
  type UnitSystem,
  unitFor,
  unitSymbol,
} from '../model/say.ts';
import { type FinRules, usualRules } from '../studies/sizing/finRules.ts';
import { hardOf } from '../studies/sizing/sizers.ts';
import type { Target } from '../studies/sizing/target.ts';

/** What may be typed for a sizing. */
export type SizingBoxKey =
  | 'margin'
  | 'cutters'
  | 'depth'
  | 'thicknesses'
  | 'thinnest'
  | 'least'
  | 'most'
  | 'sound'
  | 'pressure';

/** What the reader chose and typed; a text that nobody touched follows the design. */
export interface SizingForm {
  readonly ask: Target['ask'];
  readonly texts: Readonly<Partial<Record<SizingBoxKey, string>>>;
}

export const firstSizingForm: SizingForm = { ask: 'spare', texts: {} };

/** One text box of the form. */
export interface SizingBox {
  readonly text: string;
  /** Of a bare number; empty where the text says its own. */
  readonly unit: string;
  /** What is wrong, and what is allowed. */
  readonly problem: string | null;
}

export interface AskedSizing {
  readonly boxes: Readonly<Record<SizingBoxKey, SizingBox>>;
  /** `null` while its text does not read. */
  readonly target: Target | null;
  readonly rules: FinRules | null;
}

interface Kind {
  readonly dimension: Dimension;
  readonly hard: readonly [number, number];
  /** A list of values; nothing at all means no bound. */
  readonly shape?: 'list' | 'optional';
}

const kinds: Readonly<Record<SizingBoxKey, Kind>> = {
  margin: { dimension: 'temperatureDifference', hard: [0, 200] },
  cutters: { dimension: 'length', hard: hardOf('cutting.cutter_m'), shape: 'list' },
  depth: { dimension: 'number', hard: [0.5, 30] },
  thicknesses: { dimension: 'length', hard: hardOf('sink.finThickness_m'), shape: 'list' },
  thinnest: { dimension: 'length', hard: hardOf('sink.finThickness_m') },
  least: { dimension: 'length', hard: hardOf('sink.finHeight_m') },
  most: { dimension: 'length', hard: hardOf('sink.finHeight_m') },
  sound: { dimension: 'soundLevel', hard: [0, 120], shape: 'optional' },
  pressure: { dimension: 'pressure', hard: [0, 20_000], shape: 'optional' },
};

const upsideDown = 'This is more than the most that they may be high.';
const usualMargin_K = 10;
/** More values make more sets than anybody waits for. */
const mostValues = 8;

/** What the form asks of this design, and how its boxes look. */
export function askedSizing(form: SizingForm, design: Design, system: UnitSystem): AskedSizing {
  const usual = usualValues(design);
  const reads = mapBoxes((key) => {
    const text = form.texts[key];
    return text === undefined ? untouched(kinds[key], usual[key], system) : readBox(kinds[key], text, system);
  });
  const boxes = mapBoxes((key) => reads[key].box);
  const rules = rulesOf(reads);
  const target = targetOf(form, design, reads);
  if (rules === null || rules.leastHeight_m <= rules.mostHeight_m) return { boxes, target, rules };
  return { boxes: { ...boxes, least: { ...boxes.least, problem: upsideDown } }, target, rules: null };
}

/** Values to begin with. */
function usualValues(design: Design): Record<SizingBoxKey, readonly number[]> {
  const rules = usualRules(design);
  return {
    margin: [usualMargin_K],
    cutters: rules.cutters_m,
    depth: [rules.depthRatio],
    thicknesses: rules.thicknesses_m,
    thinnest: [rules.leastThickness_m],
    least: [rules.leastHeight_m],
    most: [rules.mostHeight_m],
    sound: [],
    pressure: [],
  };
}

/** A box as it begins: its values to the last bit, whatever its text shows of them. */
function untouched({ dimension }: Kind, values: readonly number[], system: UnitSystem): Read {
  const key = unitFor(dimension, system);
  const text = values.map((value) => editIn(value, dimension, key)).join(', ');
  return { box: { text, unit: unitSymbol(dimension, key), problem: null }, values };
}

interface Read {
  readonly box: SizingBox;
  /** `null` where the text does not read; none where nothing is asked. */
  readonly values: readonly number[] | null;
}

function readBox({ dimension, hard, shape }: Kind, text: string, system: UnitSystem): Read {
  const key = unitFor(dimension, system);
  const unit = /[\d.,]\s*$/.test(text) || text === '' ? unitSymbol(dimension, key) : '';
  const wrong = (problem: string): Read => ({ box: { text, unit, problem }, values: null });
  if (shape === 'optional' && text.trim() === '') return { box: { text, unit, problem: null }, values: [] };
  const parts =
    shape === 'list' ? text.split(/\s*(?:;|,(?=\s|$)|\band\b)\s*/).filter((part) => part !== '') : [text];
  if (parts.length === 0) return wrong('Nothing stands here.');
  if (parts.length > mostValues) return wrong(`At most ${mostValues} values.`);
  const values: number[] = [];
  for (const part of parts) {
    const read = parseIn(part, dimension, undefined, system);
    if (!read.ok) return wrong(read.reason);
    const value = Number(read.value.toPrecision(15));
    if (value < hard[0] || value > hard[1])
      return wrong(`Out of bounds. Allowed is ${sayRange(hard, dimension, system)}.`);
    values.push(value);
  }
  return { box: { text, unit, problem: null }, values };
}

type Reads = Readonly<Record<SizingBoxKey, Read>>;

function targetOf({ ask }: SizingForm, design: Design, { margin }: Reads): Target | null {
  if (ask === 'spare') return { ask, spareFactor: design.limits.spareFactor };
  const [margin_K] = margin.values ?? [];
  return margin_K === undefined ? null : { ask, margin_K };
}

function rulesOf(reads: Reads): FinRules | null {
  const one = (key: SizingBoxKey) => reads[key].values?.[0];
  const depthRatio = one('depth');
  const leastThickness_m = one('thinnest');
  const leastHeight_m = one('least');
  const mostHeight_m = one('most');
  const { cutters, thicknesses, sound, pressure } = reads;
  if (
    cutters.values === null ||
    thicknesses.values === null ||
    sound.values === null ||
    pressure.values === null
  )
    return null;
  if (depthRatio === undefined || leastThickness_m === undefined) return null;
  if (leastHeight_m === undefined || mostHeight_m === undefined) return null;
  return {
    cutters_m: cutters.values,
    depthRatio,
    thicknesses_m: thicknesses.values,
    leastThickness_m,
    leastHeight_m,
    mostHeight_m,
    mostSound_dBA: sound.values[0] ?? null,
    mostPressure_Pa: pressure.values[0] ?? null,
  };
}

function mapBoxes<T>(make: (key: SizingBoxKey) => T): Record<SizingBoxKey, T> {
  return Object.fromEntries(Object.keys(kinds).map((key) => [key, make(key as SizingBoxKey)])) as Record<
    SizingBoxKey,
    T
  >;
}
