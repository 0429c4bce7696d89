import type { Design } from '../model/design.ts';
import { readList } from '../model/readList.ts';
import { parseIn, type UnitSystem } from '../model/say.ts';
import { gapMapReport } from '../report/gaps/gapMapReport.ts';
import { gapReport } from '../report/gaps/gapReport.ts';
import { type GapKey, gapPath, stepValues_m, usualCut_m, usualSteps } from '../studies/gaps/gap.ts';
import type { GapQuestion } from '../studies/gaps/gapLine.ts';
import type { GapAxis, GapMapQuestion } from '../studies/gaps/gapMap.ts';

type Options = Readonly<Record<string, string>>;

const gaps: Readonly<Record<string, GapKey>> = {
  side: 'sideClearance_m',
  slot: 'slotWidth_m',
  end: 'endClearance_m',
  leak: 'leakGap_m',
  'stand-off': 'standOff_m',
};
const names = Object.keys(gaps).join(', ');
const mostValues = 40;
const mostCut_m = 0.005;

/** One gap over a list or a range. */
export const gapLineStudy = {
  says: 'One gap of the baffle, tight to loose, and no baffle: what to cut and what it is worth.',
  options: {
    gap: `which one: ${names}; side where not given`,
    values: 'such as "0, 1/32 in, 0.8 mm" or "0 to 4 by 0.5"; around the present value where not given',
    cut: 'how far a cut may miss, such as 0.2',
  },
  ask: (design: Design, options: Options, system: UnitSystem): GapQuestion | string => {
    const axis = axisOf(design, options.gap ?? 'side', options.values, system);
    if (typeof axis === 'string') return axis;
    const cut = options.cut === undefined ? null : parseIn(options.cut, 'length', undefined, system);
    if (cut && !cut.ok) return `cut=: ${cut.reason}`;
    if (cut && (cut.value < 0 || cut.value > mostCut_m)) return 'cut=: allowed is up to 5 mm.';
    return { design, ...axis, cut_m: cut?.value ?? usualCut_m(design, axis.gap) };
  },
  report: gapReport,
};

/** Two gaps against one another. */
export const gapMapStudy = {
  says: 'Two gaps of the baffle against one another: where the verdict changes.',
  options: {
    x: `one of ${names}; side where not given`,
    y: 'another one; slot where not given',
    xs: 'values of the first',
    ys: 'values of the second',
  },
  ask: (design: Design, options: Options, system: UnitSystem): GapMapQuestion | string => {
    const x = axisOf(design, options.x ?? 'side', options.xs, system);
    const y = axisOf(design, options.y ?? 'slot', options.ys, system);
    if (typeof x === 'string') return x;
    if (typeof y === 'string') return y;
    return x.gap === y.gap ? 'A map needs two different gaps.' : { design, x, y };
  },
  report: gapMapReport,
};

function axisOf(
  design: Design,
  name: string,
  text: string | undefined,
  system: UnitSystem,
): GapAxis | string {
  const gap = gaps[name];
  if (gap === undefined) return `No gap ${name}. Gaps: ${names}.`;
  if (text === undefined)
    return { gap, values_m: stepValues_m(usualSteps(design, gap, system === 'metric' ? 0.001 : 0.0254)) };
  const read = readList(gapPath(gap), text, system, { most: mostValues });
  return read.ok ? { gap, values_m: read.values } : `${name}: ${read.reason}`;
}
