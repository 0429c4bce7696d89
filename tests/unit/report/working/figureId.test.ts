import { expect, test } from 'vitest';
import { figureId } from '../../../../src/report/working/figureId.ts';
import { driftFigure, stageFigure, stoppedFigure } from '../../../../src/report/working/figureIds.ts';
import { filmFigure, shareFigure } from '../../../../src/report/working/headlineIds.ts';

test('an id counts from 1, names what has a name, and says where the fans stand still', () => {
  const running = { stopped: false };
  expect(figureId({ kind: 'film', of: 2, ...running })).toBe(filmFigure(2));
  expect(figureId({ kind: 'share', of: 'fins', ...running })).toBe(shareFigure('fins'));
  expect(figureId({ kind: 'stage', of: 'outletExtra:2', ...running })).toBe(stageFigure('outletExtra', 1));
  expect(figureId({ kind: 'drift', of: 'whole', ...running })).toBe(driftFigure('whole'));
  expect(figureId({ kind: 'flow', of: null, stopped: true })).toBe(stoppedFigure('flow'));
});
