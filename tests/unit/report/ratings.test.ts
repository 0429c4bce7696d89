import { expect, test } from 'vitest';
import type { Solved } from '../../../src/core/system/outcome.ts';
import { ratings } from '../../../src/report/ratings.ts';
import type { RatedLoad } from '../../../src/studies/ratedLoad.ts';
import { sampleExample } from '../../helpers/sampleReport.ts';

const { design: example, outcome } = sampleExample('eightResistors');
const design = { ...example, limits: { ...example.limits, spareFactor: 1.25 } };

function solvedIn(room_K: number): Solved {
  if (!outcome.ok) throw new Error('the example has no answer');
  return { ...outcome, heat: { ...outcome.heat, room_K } };
}

const rated: RatedLoad = {
  factor: 1.2,
  total_W: 33.6,
  each_W: Array.from({ length: 8 }, () => 4.2),
  boundBy: 'film',
};

test('says the watts in all and each, the room, the spare and what bounds them', () => {
  const said = ratings(design, solvedIn(308.15), rated, 'metric');
  expect(said?.total).toMatch(/^33\.6\sW$/);
  expect(said?.each).toMatch(/^4\.2\sW for each resistor$/);
  expect(said?.sentence).toMatch(/fan running.*35\s°C.*1\.25\s×.*film, hottest spot bounds it/);
});

test('unlike watts are said by their ends, resistors that are off left out', () => {
  const each_W = [0, 1, 2.5];
  expect(ratings(design, solvedIn(308.15), { ...rated, each_W }, 'metric')?.each).toMatch(
    /^1\sW to 2\.5\sW for each resistor by its place$/,
  );
});

test('a load that no limit bounds, or no load, has no rating', () => {
  expect(ratings(design, solvedIn(308.15), null, 'metric')).toBeNull();
  const idle = solvedIn(308.15);
  expect(ratings(design, { ...idle, heat: { ...idle.heat, total_W: 0 } }, rated, 'metric')).toBeNull();
});
