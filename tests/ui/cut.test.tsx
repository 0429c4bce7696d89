import { render, screen, within } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import type { Design } from '../../src/model/design.ts';
import { setAt } from '../../src/model/path.ts';
import { cutOutsTable, cutTable, millsTable, sheetsTable, slopesTable } from '../../src/report/tables.ts';
import { commonScale, pictureWidth, placePattern } from '../../src/ui/questions/flatPattern.ts';
import { WhatToCut } from '../../src/ui/questions/WhatToCut.tsx';
import { exampleIds, sampleExample, sampleOf } from '../helpers/sampleReport.ts';

const { design: eight } = sampleExample('eightResistors');
const changed = (...changes: [string, unknown][]): Design =>
  changes.reduce((design, [path, value]) => setAt(design, path, value), eight);
/** All numbers of a path, in turn x and y; arcs leave their radii and flags behind. */
const spotsOf = (d: string) =>
  [...d.replaceAll(/A[\d.]+ [\d.]+ 0 1 0 /g, 'L').matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => ({
    x: Number(x),
    y: Number(y),
  }));

describe.each(exampleIds)('what to cut for %s', (id) => {
  const { report } = sampleExample(id);

  test('has a picture of every panel that says its name and size, under its mark and count', () => {
    render(<WhatToCut report={report} />);
    for (const { mark, name, perBox, pattern } of report.cut.panels) {
      const picture = screen.getByRole('img', { name: pattern.spoken });
      expect(pattern.spoken).toContain(name);
      const caption = picture.closest('figure')?.querySelector('figcaption')?.textContent;
      expect(caption).toContain(`${mark} ${name}`);
      expect(caption).toContain(`${perBox} ×`);
    }
  });

  test('shows every table cell by cell, the list and the sheet open to read', () => {
    render(<WhatToCut report={report} />);
    for (const table of [cutTable, sheetsTable, cutOutsTable, slopesTable, millsTable].map((make) =>
      make(report),
    )) {
      expect(table.rows.length, table.id).toBeGreaterThan(0);
      const place = document.querySelector(`section[aria-label="${table.caption}"]`);
      const rows = [...(place?.querySelectorAll('tbody tr') ?? [])];
      expect(rows.map((row) => [...row.children].map(({ textContent }) => textContent))).toEqual(table.rows);
      expect(place?.closest('details')?.open).toBe(['cut', 'sheets'].includes(table.id));
    }
  });

  test('says the joints, the fits, the remarks and the cautions', () => {
    const { container } = render(<WhatToCut report={report} />);
    const { joints, fits, remarks, cautions } = report.cut;
    for (const line of [...joints, ...fits, ...remarks, ...cautions.map(({ text }) => text)])
      expect(container.textContent).toContain(line);
    expect(
      within(container)
        .getAllByRole('heading', { level: 3 })
        .map(({ textContent }) => textContent),
    ).toEqual(['How the panels meet', 'Mill and fit', 'Before you cut', 'Cautions']);
  });
});

describe('the pictures of the panels', () => {
  const patternsOf = (design: Design) => sampleOf(design).report.cut.panels.map(({ pattern }) => pattern);

  test.each([
    ['butted', eight],
    ['slotted', changed(['cutting.joint', 'slotted'])],
    ['with three fans', changed(['fan.sideBySide', 3])],
  ])('are to one scale and stay within their frame, %s', (_, design) => {
    const patterns = patternsOf(design);
    const scale = commonScale(patterns);
    for (const pattern of patterns) {
      const placed = placePattern(pattern, scale);
      expect(placed.width).toBe(pictureWidth);
      const spots = spotsOf(placed.outline);
      const xs = spots.map(({ x }) => x);
      const ys = spots.map(({ y }) => y);
      expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(pattern.length_m * scale, 1);
      expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(pattern.width_m * scale, 1);
      for (const { x, y } of [
        ...spots,
        ...placed.cutOuts.flatMap(({ d }) => spotsOf(d)),
        ...spotsOf(placed.rules),
      ]) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(placed.width);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(placed.height);
      }
      for (const { y } of placed.texts) expect(y).toBeLessThan(placed.height);
    }
  });

  test('write a size into an opening only where it fits', () => {
    const patterns = patternsOf(eight);
    const placed = patterns.map((pattern) => placePattern(pattern, commonScale(patterns)));
    const inside = placed.map(({ texts }) =>
      texts.filter(({ key }) => key.startsWith('cut')).map(({ text }) => text),
    );
    expect(inside[4]).toEqual(['135.76 × 26.6']);
    expect(inside.flat().some((text) => text.includes('4.5'))).toBe(false);
  });

  test('break the outline where a notch is open, and close every other cut-out', () => {
    const patterns = patternsOf(changed(['cutting.joint', 'slotted']));
    const scale = commonScale(patterns);
    for (const pattern of patterns) {
      const { cutOuts, outline } = placePattern(pattern, scale);
      const xs = spotsOf(outline).map(({ x }) => x);
      const ys = spotsOf(outline).map(({ y }) => y);
      for (const { d, edges } of cutOuts) {
        const reaches = spotsOf(d).some(
          ({ x, y }) =>
            x < Math.min(...xs) || x > Math.max(...xs) || y < Math.min(...ys) || y > Math.max(...ys),
        );
        expect(reaches).toBe(edges !== null);
        if (edges !== null) expect(spotsOf(edges)).toHaveLength(4);
      }
    }
    const [floor] = patterns;
    expect(floor && placePattern(floor, scale).cutOuts.every(({ edges }) => edges !== null)).toBe(true);
  });

  test('measure a sloping panel at both of its edges', () => {
    const [slope] = patternsOf(eight).filter(({ rightText }) => rightText !== null);
    if (!slope) throw new Error('no sloping panel');
    const { texts } = placePattern(slope, 1000);
    expect(texts.map(({ key, text }) => [key, text])).toEqual([
      ['length', '31.95'],
      ['left', '63.12'],
      ['right', '51.12'],
    ]);
  });
});

test('what stands in the way comes first, and all of it', () => {
  const { report } = sampleOf(changed(['plenum.neckLength_m', 0], ['cutting.wireHole_m', 0.05]));
  const { container } = render(<WhatToCut report={report} />);
  expect(report.cut.faults.length).toBeGreaterThan(1);
  for (const fault of report.cut.faults) expect(container.textContent).toContain(fault);
  const first = container.querySelector('section')?.children[1];
  expect(first?.textContent).toMatch(/^These panels do not make the box yet/);
});
