import type { Design } from '../model/design.ts';
import { fieldAt } from '../model/fields.ts';
import { readList } from '../model/readList.ts';
import { editIn, parseIn, sayQuantity, type UnitSystem, unitFor, unitSymbol } from '../model/say.ts';
import { type GapKey, gapPath, usualCut_m, usualSteps } from '../studies/gaps/gap.ts';
import type { GapQuestion } from '../studies/gaps/gapLine.ts';
import type { GapMapQuestion } from '../studies/gaps/gapMap.ts';

/** What the reader chose and typed; a text that nobody touched follows the design. */
export interface GapForm {
  readonly gap: GapKey;
  /** The other gap of a map; `null` for one gap alone. */
  readonly against: GapKey | null;
  readonly values: Readonly<Partial<Record<GapKey, string>>>;
  readonly cuts: Readonly<Partial<Record<GapKey, string>>>;
}

export const firstGapForm: GapForm = { gap: 'sideClearance_m', against: null, values: {}, cuts: {} };

/** One text box of the form. */
export interface GapBox {
  readonly text: string;
  readonly unit: string;
  /** What is wrong, and what is allowed. */
  readonly problem: string | null;
}

export interface AskedGaps {
  readonly values: GapBox;
  readonly cut: GapBox;
  /** `null` for one gap alone. */
  readonly against: GapBox | null;
  /** The one that is asked; both `null` while a text does not read. */
  readonly line: GapQuestion | null;
  readonly map: GapMapQuestion | null;
}

/** So many values fit into a table that somebody reads, or a map that is quickly computed. */
const mostValues = 40;
const mostOnMap = 20;

/** What the form asks about this design, and how its boxes look. */
export function askedGaps(form: GapForm, design: Design, system: UnitSystem): AskedGaps {
  const { gap, against } = form;
  const most = against === null ? mostValues : mostOnMap;
  const values = readValues(form, gap, design, system, most);
  const cut = readCut(form, design, system);
  const boxes = { values: values.box, cut: cut.box };
  if (against === null) {
    const line = values.values_m &&
      cut.cut_m !== null && { design, gap, values_m: values.values_m, cut_m: cut.cut_m };
    return { ...boxes, against: null, line: line || null, map: null };
  }
  const others = readValues(form, against, design, system, most);
  const map = values.values_m &&
    others.values_m && {
      design,
      x: { gap, values_m: values.values_m },
      y: { gap: against, values_m: others.values_m },
    };
  return { ...boxes, against: others.box, line: null, map };
}

/** The range to begin with, as somebody would type it: "0 to 4 mm by 0.5". */
export function usualRange(design: Design, gap: GapKey, system: UnitSystem): string {
  const unit = unitFor('length', system);
  const steps = usualSteps(design, gap, system === 'metric' ? 0.001 : 0.0254);
  const [from, to, step] = [steps.from_m, steps.to_m, steps.step_m].map((value_m) =>
    editIn(value_m, 'length', unit),
  );
  return `${from} to ${to} ${unitSymbol('length', unit)} by ${step}`;
}

/** The same form with its ranges held fast: they no longer follow the design. */
export function pinnedForm(form: GapForm, design: Design, system: UnitSystem): GapForm {
  const gaps = form.against === null ? [form.gap] : [form.gap, form.against];
  const ranges = gaps.map((gap) => [gap, usualRange(design, gap, system)]);
  return { ...form, values: { ...Object.fromEntries(ranges), ...form.values } };
}

function readValues(form: GapForm, gap: GapKey, design: Design, system: UnitSystem, most: number) {
  const text = form.values[gap] ?? usualRange(design, gap, system);
  const read = readList(gapPath(gap), text, system, { most });
  const box: GapBox = {
    text,
    unit: '',
    problem: read.ok ? null : read.reason,
  };
  return { box, values_m: read.ok ? read.values : null };
}

/** More than this is no cut but another design. */
const mostCut_m = 0.005;

function readCut({ gap, cuts }: GapForm, design: Design, system: UnitSystem) {
  const unit = unitFor('length', system);
  const text = cuts[gap] ?? editIn(usualCut_m(design, gap), 'length', unit);
  const read = parseIn(text, 'length', unit, system);
  const isOut = read.ok && (read.value < 0 || read.value > mostCut_m);
  const problem = isOut
    ? `Out of bounds. Allowed is up to ${sayQuantity(mostCut_m, 'length', system)}.`
    : read.ok
      ? null
      : read.reason;
  const symbol = /[\d.,]\s*$/.test(text) ? unitSymbol('length', unit) : '';
  return { box: { text, unit: symbol, problem }, cut_m: read.ok && !isOut ? read.value : null };
}

/** "Side clearance", as the fields call it. */
export function gapLabel(gap: GapKey): string {
  return fieldAt(gapPath(gap)).label;
}
