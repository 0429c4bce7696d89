import { expect, test } from 'vitest';
import { type Job, runJob } from '../../../src/studies/job.ts';

const squares: Job<number, number, number> = {
  count: (question) => question,
  piece: (_, index) => index * index,
  gather: (_, pieces) => pieces.reduce((sum, piece) => sum + piece, 0),
};

test('a job run in one place gathers all its pieces and tells how far it is', () => {
  const told: string[] = [];
  expect(runJob(squares, 4, (done, of) => told.push(`${done}/${of}`))).toBe(0 + 1 + 4 + 9);
  expect(told).toEqual(['1/4', '2/4', '3/4', '4/4']);
});
