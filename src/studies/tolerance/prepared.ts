import { ordinaryRun, type SystemInput } from '../../core/system/input.ts';
import { nearbySolver } from '../../core/system/nearbySolver.ts';
import type { Outcome } from '../../core/system/outcome.ts';
import { solveSystem } from '../../core/system/solveSystem.ts';
import { toCore } from '../../model/toCore.ts';
import { type Judged, judgedOf, type Pulsing } from '../outputs.ts';
import { pulseSwing } from '../ratedLoad.ts';
import type { ToleranceQuestion } from './question.ts';
import { createSampler, type Sampler } from './sampler.ts';
import { type Variations, variationsOf } from './variations.ts';

/** What all pieces of one question have in common. */
export interface Prepared {
  readonly input: SystemInput;
  readonly variations: Variations;
  readonly sampler: Sampler;
  /** Boxes like the design, from its own answer: pulses are not followed. */
  readonly solve: (box: SystemInput) => Outcome;
  readonly pulsing: Pulsing | null;
  /** The design as drawn; `null` where it has no answer. */
  readonly nominal: Judged | null;
}

const last = new WeakMap<ToleranceQuestion, Prepared>();

export function prepared(question: ToleranceQuestion): Prepared {
  const known = last.get(question);
  if (known) return known;
  const made = prepare(question);
  last.set(question, made);
  return made;
}

function prepare(question: ToleranceQuestion): Prepared {
  const { design } = question;
  const input = toCore(design);
  const variations = variationsOf(design, input, question.methods);
  const outcome = solveSystem(input, ordinaryRun);
  const swing = outcome.ok ? pulseSwing(outcome) : 1;
  const pulsing = swing > 1 ? { swing, spareFactor: input.limits.spareFactor } : null;
  return {
    input,
    variations,
    sampler: createSampler(question, variations),
    solve: nearbySolver(input, { ...ordinaryRun, pulses: false }),
    pulsing,
    nominal: judgedOf(
      outcome.ok && pulsing ? solveSystem(input, { ...ordinaryRun, pulses: false }) : outcome,
      pulsing,
    ),
  };
}
