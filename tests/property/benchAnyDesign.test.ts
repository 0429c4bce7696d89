import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkDesign } from '../../src/model/check.ts';
import type { Design } from '../../src/model/design.ts';
import { designSchema } from '../../src/model/design.ts';
import { benchAdviceJob } from '../../src/studies/bench/advice.ts';
import { benchCheckJob } from '../../src/studies/bench/check.ts';
import { benchFit } from '../../src/studies/bench/fit.ts';
import { fittedDesign } from '../../src/studies/bench/fittedDesign.ts';
import { allUnknowns } from '../../src/studies/bench/types.ts';
import { runJob } from '../../src/studies/job.ts';
import { arbitraryDesign } from '../helpers/arbitraryDesign.ts';
import { flow, pressure, temperature } from '../helpers/bench.ts';

/** Readings of another box altogether: whatever is fitted to them, there is an answer or a reason. */
function strange(design: Design, time_s: number): Design['readings'] {
  const run = { load_W: 8, room_K: 296.15, fan_V: design.fan.supply_V };
  const still = { ...run, load_W: 2, fan_V: 0 };
  return {
    temperatures: [
      temperature('onFilm', run, { reading_K: 350 }),
      temperature('onTerminal', run, { reading_K: 340 }),
      temperature('onSink', still, { number: 2, reading_K: 320 }),
      temperature('inExhaust', run, { reading_K: 305 }),
      temperature('onFilm', run, { reading_K: 340, time_s }),
    ],
    pressures: [pressure(run)],
    flows: [flow(run, 0.004)],
    voltages: [{ ...run, reading_V: 11, within_V: 0.1 }],
    sounds: [{ ...run, reading_dBA: 30, within_dBA: 1.5 }],
  };
}

function expectFinite(value: unknown, path: string): void {
  if (typeof value === 'number') expect(Number.isFinite(value), path).toBe(true);
  else if (value !== null && typeof value === 'object')
    for (const [key, each] of Object.entries(value)) expectFinite(each, `${path}.${key}`);
}

const unknowns = fc.subarray([...allUnknowns], { minLength: 1, maxLength: 3 });

test('any box with any readings has answers in finite numbers, or reasons', () => {
  fc.assert(
    fc.property(
      fc.oneof(arbitraryDesign('usual'), arbitraryDesign('hard')),
      unknowns,
      fc.constantFrom(0, 60, 5000),
      (drawn, asked, time_s) => {
        const design = { ...drawn, readings: strange(drawn, time_s) };
        const check = runJob(benchCheckJob, { design });
        expectFinite(check, 'check');
        for (const { computed, why } of check.readings) expect(computed === null).toBe(why !== null);
        const fit = benchFit({ design, unknowns: asked });
        expectFinite(fit, 'fit');
        const fitted = fittedDesign(design, fit);
        expect(designSchema.safeParse(fitted).success).toBe(true);
        expect(checkDesign(fitted)).toEqual([]);
        expectFinite(runJob(benchAdviceJob, { design, unknowns: asked }), 'advice');
      },
    ),
    { numRuns: 10, seed: 20261128 },
  );
});
