import { expect, test } from 'vitest';
import { filmLimit_K } from '../../../src/report/filmLimit.ts';
import { sampleExample } from '../../helpers/sampleReport.ts';

const { design: example, outcome } = sampleExample('eightResistors');
const [part] = example.parts;
if (!outcome.ok || !part) throw new Error('the example has no answer');
const { heat } = outcome;
const design = {
  ...example,
  parts: [part, { ...part, zeroPowerAt_K: 398.15 }],
  positions: example.positions.map((position, r) => ({ ...position, part: r === 2 ? 1 : 0 })),
};

test('the limit of the film is that of the part at the hottest position, whatever the others are', () => {
  expect(filmLimit_K(design, { ...heat, hottest: 2 })).toBe(398.15);
  expect(filmLimit_K(design, { ...heat, hottest: 3 })).toBe(part.zeroPowerAt_K);
});

test('where there is no such position, nothing may be warmer than the room', () => {
  expect(filmLimit_K({ ...design, positions: [] }, heat)).toBe(heat.room_K);
});
