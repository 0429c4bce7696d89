import { describe, expect, test } from 'vitest';
import {
  type GapState,
  stateOf,
  type Tried,
  verdictChanges,
} from '../../../../src/studies/gaps/verdictChanges.ts';
import type { Trial } from '../../../../src/studies/vary.ts';
import { sampleGap } from '../../../helpers/sampleGaps.ts';

const sample = sampleGap('sideClearance_m', [1]).line.present as Extract<Trial, { ok: true }>;
const clash = sampleGap('sideClearance_m', [12]).line.points.at(-1)?.trial as Trial;

function trial(state: GapState | null): Trial {
  if (state === null) return clash;
  return state === 'noAnswer' ? { ok: false, why: 'noAnswer', reason: 'runaway' } : { ...sample, state };
}

/** A box whose verdict depends on the gap like this. */
function box(of: (at_m: number) => GapState | null, at: readonly number[]) {
  const attempt = (at_m: number) => trial(of(at_m));
  const tried: Tried[] = at.map((at_m) => ({ at_m, trial: attempt(at_m) }));
  return { tried, attempt };
}

describe('changes of the verdict', () => {
  test('are halved until they stand as closely as asked', () => {
    const { tried, attempt } = box((at_m) => (at_m < 0.3127 ? 'holds' : 'fails'), [0, 1]);
    const [change] = verdictChanges(tried, attempt, 1e-4);
    expect(change?.before_m).toBeLessThan(0.3127);
    expect(change?.after_m).toBeGreaterThanOrEqual(0.3127);
    expect((change?.after_m ?? 1) - (change?.before_m ?? 0)).toBeLessThanOrEqual(1e-4);
    expect(change).toMatchObject({ from: 'holds', to: 'fails', limit: sample.limit });
  });

  test('may go either way, and to no answer', () => {
    const { tried, attempt } = box(
      (at_m) => (at_m < 0.3 ? 'noAnswer' : at_m < 0.6 ? 'holds' : 'little'),
      [0, 0.5, 1],
    );
    expect(verdictChanges(tried, attempt, 1e-3)).toMatchObject([
      { from: 'noAnswer', to: 'holds', limit: null },
      { from: 'holds', to: 'little' },
    ]);
  });

  test('are none where the box cannot be built, or the verdict stays', () => {
    const { tried, attempt } = box((at_m) => (at_m < 0.5 ? 'holds' : null), [0, 0.25, 1]);
    expect(verdictChanges(tried, attempt, 1e-3)).toEqual([]);
    expect(stateOf(clash)).toBe(null);
  });
});
