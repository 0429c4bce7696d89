import type { Factors, SystemInput } from '../../core/system/input.ts';
import type { Design } from '../../model/design.ts';
import { toCore } from '../../model/toCore.ts';
import { bringBack } from './bringBack.ts';
import type { Place } from './places.ts';
import { boxesOf, drawsOf, type ToleranceQuestion } from './question.ts';
import { boxSequence, type Sequence } from './sequence.ts';
import { deviated, variate } from './variate.ts';
import type { Drawn, Variations } from './variations.ts';

const sag = 'supplySag';

/** Draws one box after the other, in any order. */
export interface Sampler {
  readonly sequence: Sequence;
  /** What the core is told of this box. Good until the next call: its groups are written over. */
  readonly inputAt: (index: number) => SystemInput;
  /** Whether the box drawn last could not be built as drawn and was brought back. */
  readonly wasMoved: () => boolean;
}

export function createSampler(question: ToleranceQuestion, variations: Variations): Sampler {
  const { drawn, shared, draft, factors } = variations;
  const sequence = boxSequence(shared, drawn.length - shared, {
    seed: question.seed,
    boxes: boxesOf(question.boxes),
    draws: drawsOf(question),
  });
  const shares = new Float64Array(drawn.length);
  const inDesign = drawn.flatMap(({ sets }) => sets.filter((place) => place.in !== factors));
  const sags = inDesign.some(({ key }) => key === sag);
  const isVaried = drawn.length > 0;
  let moved = false;
  return {
    sequence,
    inputAt: (index) => {
      sequence.read(index, shares);
      for (let d = 0; d < drawn.length; d++) write(drawn[d] as Drawn, shares[d] as number);
      moved = isVaried && bringBack(draft.design, inDesign);
      return inputOf(draft.design, factors, sags);
    },
    wasMoved: () => moved,
  };
}

/** Sets every place of one draw, held within what its input may be at all. */
export function write(drawn: Drawn, share: number): void {
  const { sets, kind } = drawn;
  const times = variate(kind, share);
  for (let i = 0; i < sets.length; i++) {
    const place = sets[i] as Place;
    const { nominal, low, high, key } = place;
    // A supply that may sag sags by something between nothing and that.
    const isSag = key === sag && kind === 'tolerance';
    const value = isSag ? 0.5 * nominal * (1 + times) : deviated(nominal, drawn, times);
    place.in[key] = Math.min(high, Math.max(low, value));
  }
}

/** A sag that is drawn counts in every box, not only where a design is judged at its worst. */
function inputOf(design: Design, factors: Record<string, number>, sags: boolean): SystemInput {
  const input = toCore(design);
  const { fan } = input;
  const left = sags ? 1 - fan.supplySag : 1;
  return {
    ...input,
    factors: factors as unknown as Factors,
    fan: sags
      ? {
          ...fan,
          supply_V: fan.supply_V * left,
          supplySag: 0,
          others: fan.others.map((other) => ({ ...other, supply_V: other.supply_V * left })),
        }
      : fan,
  };
}
