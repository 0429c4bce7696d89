import { describe, expect, test } from 'vitest';
import { levenbergMarquardt } from '../../../src/core/solve/levenbergMarquardt.ts';
import { published } from '../../helpers/published.ts';
import { type Reference, references } from './nistData.ts';

const sixDigits = { within: 1e-6, because: 'NIST asks for four digits at least; six are kept here' };
const fourDigits = { within: 1e-4, because: 'derivatives are differences of the model' };

function fitted({ model, data }: Reference, start: readonly number[]) {
  const numbers = data.trim().split(/\s+/).map(Number);
  const count = numbers.length / 2;
  return levenbergMarquardt({
    count,
    start,
    mostIterations: 500,
    residuals: (b, out) => {
      for (let i = 0; i < count; i++) {
        out[i] = (numbers[2 * i] as number) - model(b, numbers[2 * i + 1] as number);
        if (!Number.isFinite(out[i])) return false;
      }
      return true;
    },
  });
}

describe.each(references)('$name, of $difficulty difficulty', (reference) => {
  const nist = published({
    source: 'NIST, Statistical Reference Datasets, nonlinear regression',
    where: `${reference.name}, certified to eleven digits`,
    kind: 'computed elsewhere',
  });

  test.each([0, 1])('from start %i the certified values and their deviations', (which) => {
    const fit = fitted(reference, reference.starts[which] as readonly number[]);
    expect(fit.end).toBe('settled');
    nist.says('sum of squares', fit.chiSquare, reference.sumOfSquares, sixDigits);
    const scatter = Math.sqrt(fit.chiSquare / fit.degrees);
    reference.parameters.forEach((printed, i) => {
      nist.says(`b${i + 1}`, fit.parameters[i] as number, printed, sixDigits);
      nist.says(
        `standard deviation of b${i + 1}`,
        (fit.known.sigma[i] as number) * scatter,
        reference.deviations[i] as string,
        fourDigits,
      );
    });
  });
});
