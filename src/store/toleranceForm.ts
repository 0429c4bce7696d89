import type { Design } from '../model/design.ts';
import { readWhole } from '../model/readWhole.ts';
import { mostBoxes, mostSeed, type ToleranceQuestion } from '../studies/tolerance/question.ts';

/** What is asked about parts that vary, as typed. */
export interface ToleranceForm {
  readonly draws: number;
  readonly seed: string;
  /** `null`, until somebody types: as many as the design wants cut. */
  readonly boxes: string | null;
  readonly methods: boolean;
}

export const drawChoices = [1000, 3000, 10_000, 30_000, 100_000] as const;

export const firstToleranceForm: ToleranceForm = { draws: 10_000, seed: '1', boxes: null, methods: true };

export interface CountBox {
  readonly text: string;
  readonly problem: string | null;
}

export interface AskedTolerance {
  readonly seed: CountBox;
  readonly boxes: CountBox;
  /** `null` while something typed is not right. */
  readonly question: ToleranceQuestion | null;
}

export function askedTolerance(form: ToleranceForm, design: Design): AskedTolerance {
  const boxesText = form.boxes ?? String(design.cutting.boxes);
  const seed = readWhole(form.seed, 0, mostSeed);
  const boxes = readWhole(boxesText, 1, mostBoxes);
  return {
    seed: { text: form.seed, problem: seed.ok ? null : seed.reason },
    boxes: { text: boxesText, problem: boxes.ok ? null : boxes.reason },
    question:
      seed.ok && boxes.ok
        ? { design, draws: form.draws, seed: seed.value, boxes: boxes.value, methods: form.methods }
        : null,
  };
}
