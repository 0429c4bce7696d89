import { checkDesign } from '../../model/check.ts';
import type { Design } from '../../model/design.ts';
import type { KindId } from '../../model/shelf/kinds.ts';
import { shelf } from '../../model/shelf/shelf.ts';
import { writesOf } from '../../model/shelf/standing.ts';
import { millReach } from '../sizing/finRules.ts';
import { withValues } from '../vary.ts';
import type { Change, ChangeKey, Cost, FinFault } from './change.ts';
import { profileReach, rounded, thinnestFin_m } from './practice.ts';

/** What can be done about the sinks: fins, size, plate, metal. */
export function sinkChanges(design: Design): Change[] {
  return [...finChanges(design), ...sizeChanges(design), ...metalChanges(design), ...endSinks(design)];
}

function finChanges(design: Design): Change[] {
  const { finCount, finThickness_m, finHeight_m } = design.sink;
  const step = Math.max(1, Math.round(0.2 * finCount));
  const thinner_m = rounded(0.75 * finThickness_m, 1e-4);
  const more = Array.from({ length: step }, (_, i) => ({ finCount: finCount + step - i }));
  const thicker = stepsDown(finThickness_m, 1.25, 1e-4).map((each_m) => ({ finThickness_m: each_m }));
  const higher = stepsDown(finHeight_m, 1.2, 5e-4).map((each_m) => ({ finHeight_m: each_m }));
  return [
    fins(design, 'finsMore', more),
    ...(finCount - step >= 2 ? [fins(design, 'finsFewer', [{ finCount: finCount - step }])] : []),
    fins(design, 'finsThicker', thicker),
    ...(thinner_m >= thinnestFin_m && thinner_m < finThickness_m
      ? [fins(design, 'finsThinner', [{ finThickness_m: thinner_m }])]
      : []),
    fins(design, 'finsHigher', higher),
  ];
}

/** No more than these are looked through. */
const mostSteps = 8;

/** Whole steps above a value, from as many as a factor comes to down to one. */
function stepsDown(now: number, factor: number, step: number): number[] {
  const steps = Math.max(1, Math.round(((factor - 1) * now) / step));
  const count = Math.min(steps, mostSteps);
  return Array.from({ length: count }, (_, i) =>
    rounded(now + Math.ceil((steps * (count - i)) / count) * step, step / 10),
  );
}

/** The farthest of these that can be cut and goes into the box; the nearest, with what keeps it from that, where none does. */
function fins(design: Design, key: ChangeKey, others: readonly Partial<Design['sink']>[]): Change {
  const all = others.map((other): Change => {
    const fault = finFault(design, { ...design.sink, ...other });
    const values = Object.fromEntries(Object.entries(other).map(([name, value]) => [`sink.${name}`, value]));
    return { key, values, costs: sinkCosts(design), ...(fault && { fault }) };
  });
  return all.find((each) => isPossible(design, each)) ?? (all.at(-1) as Change);
}

function isPossible(design: Design, { values, fault }: Change): boolean {
  return fault === undefined && checkDesign(withValues(design, values)).length === 0;
}

/**
 * A milled slot is not narrower than the end mill and not deeper than that reaches. Fins that the mill could not have cut were
 * bought as a profile: their slots need be no wider than now, and may be as deep as profiles have them.
 */
export function finFault(design: Design, next: Design['sink']): FinFault | null {
  const { sink, cutting } = design;
  const [now_m, gap_m] = [gapOf_m(sink), gapOf_m(next)];
  if (gap_m < hair * Math.min(cutting.cutter_m, now_m))
    return { rule: 'slot', gap_m: Math.max(0, gap_m), now_m, cutter_m: cutting.cutter_m };
  const milled = isMilled(design);
  const most = milled ? millReach : Math.max(profileReach, sink.finHeight_m / now_m);
  const ratio = next.finHeight_m / gap_m;
  return ratio * hair > most ? { rule: 'depth', milled, ratio, most } : null;
}

/** A measure that misses by a rounding error fits. */
const hair = 1 - 1e-9;

/** Whether the end mill of the workshop could have cut the present fins. */
function isMilled({ sink, cutting }: Design): boolean {
  const gap_m = gapOf_m(sink);
  return gap_m >= hair * cutting.cutter_m && sink.finHeight_m * hair <= millReach * gap_m;
}

/** What other sinks ask: another cut, or another profile. */
function sinkCosts(design: Design): readonly Cost[] {
  return isMilled(design) ? ['cut'] : ['buy'];
}

function gapOf_m({ width_m, finCount, finThickness_m }: Design['sink']): number {
  return (width_m - finCount * finThickness_m) / (finCount - 1);
}

function sizeChanges(design: Design): Change[] {
  const { sink } = design;
  const gap_m = gapOf_m(sink);
  const width_m = rounded(1.2 * sink.width_m, 1e-3);
  // As many fins more as the wider sink has room for at no less than the present gap.
  const finCount = Math.floor((width_m + gap_m) / (sink.finThickness_m + gap_m) + 1e-9);
  const thinner_m = rounded(0.7 * sink.plate_m, 1e-4);
  const other = (key: ChangeKey, values: Change['values'], costs = sinkCosts(design)): Change => ({
    key,
    values,
    costs,
  });
  return [
    // Of a profile a longer piece is cut.
    other('sinkLonger', { 'sink.length_m': rounded(1.2 * sink.length_m, 1e-3) }, ['cut']),
    other('sinkWider', { 'sink.width_m': width_m, 'sink.finCount': finCount }),
    fins(
      design,
      'plateThicker',
      stepsDown(sink.plate_m, 1.5, 1e-4).map((plate_m) => ({ plate_m })),
    ),
    ...(thinner_m >= 1e-3 ? [other('plateThinner', { 'sink.plate_m': thinner_m })] : []),
  ];
}

const typicalAlloy = 'Aluminium EN AW-6063';
const copper = 'Copper Cu-ETP';
const black = 'Aluminium, anodised black';

function metalChanges({ sink }: Design): Change[] {
  const from = (key: ChangeKey, kind: KindId, name: string): Change[] =>
    shelf[kind]
      .filter((entry) => entry.name === name)
      .map((entry) => {
        const values = Object.fromEntries(Object.entries(entry.values).map(([at, { value }]) => [at, value]));
        return { key, values: writesOf(kind, 'sink', { name, values }), costs: ['buy'] };
      });
  const isBetter = ({ values }: Change, path: string, now: number) => Number(values[path]) > 1.05 * now;
  return [
    ...from('alloyBetter', 'alloy', typicalAlloy).filter((it) =>
      isBetter(it, 'sink.k_WPerMK', sink.k_WPerMK),
    ),
    ...from('copper', 'alloy', copper).filter((it) => isBetter(it, 'sink.k_WPerMK', sink.k_WPerMK)),
    ...from('surfaceBlack', 'finish', black).filter((it) => isBetter(it, 'sink.emissivity', sink.emissivity)),
  ];
}

function endSinks({ sink }: Design): Change[] {
  const add = (key: ChangeKey, path: string): Change => ({
    key,
    values: { [path]: true },
    costs: ['buy', 'assemble'],
  });
  return [
    ...(sink.first ? [] : [add('firstSink', 'sink.first')]),
    ...(sink.last ? [] : [add('lastSink', 'sink.last')]),
  ];
}
