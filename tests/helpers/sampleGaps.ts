import type { Design } from '../../src/model/design.ts';
import { exampleById } from '../../src/model/examples/examples.ts';
import { type GapKey, stepValues_m, usualCut_m, usualSteps } from '../../src/studies/gaps/gap.ts';
import { type GapLine, type GapQuestion, gapLineJob } from '../../src/studies/gaps/gapLine.ts';
import { type GapMap, type GapMapQuestion, gapMapJob } from '../../src/studies/gaps/gapMap.ts';
import { runJob } from '../../src/studies/job.ts';

/** One gap of the example, over its usual range or these millimetres. */
export function sampleGapQuestion(
  gap: GapKey,
  values_mm: readonly number[] | null = null,
  design: Design = exampleById('eightResistors'),
): GapQuestion {
  const values_m = values_mm?.map((mm) => mm / 1000) ?? stepValues_m(usualSteps(design, gap));
  return { design, gap, values_m, cut_m: usualCut_m(design, gap) };
}

export interface GapSample {
  readonly question: GapQuestion;
  readonly line: GapLine;
}

export function sampleGap(...asked: Parameters<typeof sampleGapQuestion>): GapSample {
  const question = sampleGapQuestion(...asked);
  return { question, line: runJob(gapLineJob, question) };
}

/** Side clearance against slot, millimetres. */
export function sampleGapMap(
  xs_mm: readonly number[],
  ys_mm: readonly number[],
  design: Design = exampleById('eightResistors'),
): { readonly question: GapMapQuestion; readonly map: GapMap } {
  const question: GapMapQuestion = {
    design,
    x: { gap: 'sideClearance_m', values_m: xs_mm.map((mm) => mm / 1000) },
    y: { gap: 'slotWidth_m', values_m: ys_mm.map((mm) => mm / 1000) },
  };
  return { question, map: runJob(gapMapJob, question) };
}

/** The example with this many watts in every resistor. */
export function eightAt(power_W: number): Design {
  const design = exampleById('eightResistors');
  return { ...design, positions: design.positions.map((position) => ({ ...position, power_W })) };
}

/** The example with its baffle left out. */
export function eightWithoutBaffle(): Design {
  const design = exampleById('eightResistors');
  return { ...design, baffle: { ...design.baffle, fitted: false } };
}
