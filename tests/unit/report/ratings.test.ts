import { expect, test } from 'vitest';
import type { Limit, Solved } from '../../../src/core/system/outcome.ts';
import { ratings } from '../../../src/report/ratings.ts';
import { sampleExample } from '../../helpers/sampleReport.ts';

const { design: example, outcome } = sampleExample('eightResistors');
const design = { ...example, limits: { ...example.limits, spareFactor: 1.25 } };

/** Eight resistors of 3.5 W in a room of 35 °C. */

function solvedWith(limits: Limit[]): Solved {
  if (!outcome.ok) throw new Error('the example has no answer');
  const positions = outcome.heat.positions.map((p) => ({ ...p, power_W: 3.5 }));
  return { ...outcome, limits, heat: { ...outcome.heat, total_W: 28, room_K: 308.15, positions } };
}

const film: Limit = {
  key: 'film',
  where: 0,
  quantity: 'temperature',
  value: 400,
  limit: 428.15,
  margin_K: 28.15,
  loadFactor: 1.5,
  state: 'holds',
  source: 'chipConvention',
  confirm: true,
};

test('a temperature limit is divided by the spare wanted: 28 W × 1.5 / 1.25 = 33.6 W, by hand', () => {
  const rated = ratings(design, solvedWith([film]), 'metric');
  expect(rated?.factor).toBeCloseTo(1.2, 12);
  expect(rated?.total).toMatch(/^33\.6\sW$/);
  expect(rated?.each).toMatch(/^4\.2\sW for each resistor$/);
});

test('a maker’s own figure is not divided again: rated power at 1.1 bounds before the film at 1.5 / 1.25', () => {
  const power: Limit = { ...film, key: 'ratedPower', quantity: 'power', margin_K: null, loadFactor: 1.1 };
  expect(ratings(design, solvedWith([film, power]), 'metric')?.factor).toBeCloseTo(1.1, 12);
});

test('says with which fan, room and spare', () => {
  expect(ratings(design, solvedWith([film]), 'metric')?.sentence).toMatch(/fan running.*35\s°C.*1\.25\s×/);
});

test('a load that no limit bounds, or no load, has no rating', () => {
  expect(ratings(design, solvedWith([{ ...film, loadFactor: null }]), 'metric')).toBeNull();
});
