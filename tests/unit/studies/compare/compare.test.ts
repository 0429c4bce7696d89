import { expect, test } from 'vitest';
import { solveSystem } from '../../../../src/core/system/solveSystem.ts';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import { toCore } from '../../../../src/model/toCore.ts';
import { compareJob } from '../../../../src/studies/compare/compare.ts';
import { fanStop } from '../../../../src/studies/fanStop.ts';
import { runJob } from '../../../../src/studies/job.ts';

test('designs side by side are each what the bench would say of it, the first one first', () => {
  const [design, other] = [exampleById('onePair'), exampleById('eightResistors')];
  const question = { design, others: [other] };
  expect(compareJob.count(question)).toBe(2);
  const [first, second] = runJob(compareJob, question);
  expect(first?.outcome).toEqual(solveSystem(toCore(design)));
  const { running, stopped } = fanStop(toCore(other));
  expect(second).toMatchObject({ running, stopped });
});
