import { describe, expect, test } from 'vitest';
import { buildHeadline } from '../../../src/report/buildHeadline.ts';
import { exampleIds, sampleExample, sampleWithoutAnswer } from '../../helpers/sampleReport.ts';

const plain = (text: string) => text.replaceAll('\u202f', ' ');

describe.each(exampleIds)('the headline of %s', (id) => {
  const { design, outcome, report } = sampleExample(id);
  const headline = buildHeadline(design, outcome, {
    system: 'metric',
    date: report.title.date,
    checksum: report.title.checksum,
  });

  test('says word for word what the whole report says a moment later', () => {
    const { limits, ...rest } = headline;
    expect(report).toMatchObject(rest);
    expect(report.limits).toHaveLength(limits.length);
    limits.forEach((limit, i) => {
      expect(report.limits[i]).toMatchObject(limit);
    });
  });

  test('leaves to the whole report what brings the texts of methods and sources along', () => {
    for (const limit of headline.limits) expect(Object.keys(limit)).not.toContain('source');
    for (const later of ['methods', 'sources', 'notes', 'assumptions', 'fanStop'])
      expect(Object.keys(headline)).not.toContain(later);
  });

  test('keys the drawing: where the air goes, and both ends of the ramp', () => {
    expect(headline.key?.shares).toEqual(report.air?.shares);
    expect(headline.key?.coldest).toBe(`${(design.room.T_K - 273.15).toFixed(0)}\u202f°C room`);
    expect(headline.key?.hottest).toBe(`film limit ${report.heat?.ladder.limitText.match(/\d+\s°C/)?.[0]}`);
  });
});

describe('the key figures', () => {
  const { design, outcome } = sampleExample('eightResistors');
  if (!outcome.ok) throw new Error('the example has no answer');
  const soundOf = (sound_dBA: number | null) =>
    buildHeadline(
      design,
      { ...outcome, air: { ...outcome.air, sound_dBA } },
      { system: 'metric' },
    ).figures.find(({ key }) => key === 'sound');

  test('have the sound at the listener, but none where no fan turns', () => {
    expect(plain(soundOf(38.4)?.value ?? '')).toBe('38 dB(A)');
    expect(soundOf(null)).toBeUndefined();
  });
});

test('without an answer the headline has its verdict, its drawing and no figures', () => {
  const { design, outcome } = sampleWithoutAnswer();
  const { verdict, figures, limits, ratings, key, drawing } = buildHeadline(design, outcome, {
    system: 'metric',
  });
  expect(verdict.state).toBe('noAnswer');
  expect([figures, limits, ratings, key]).toEqual([[], [], null, null]);
  expect(drawing.section.shapes.length).toBeGreaterThan(0);
});
