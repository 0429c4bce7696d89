import { describe, expect, test } from 'vitest';
import { defaultDesign } from '../../../src/model/defaults.ts';
import { setAt } from '../../../src/model/path.ts';
import type { KindId } from '../../../src/model/shelf/kinds.ts';
import { firstChoice, foundRows, shelfRows, shelfStanding } from '../../../src/report/shelfRows.ts';
import { keepingWords, takenInWords } from '../../../src/report/shelfWords.ts';
import { ownEntry } from '../../helpers/ownEntry.ts';

const own = [ownEntry(), ownEntry({ id: 'glue', kind: 'bond', name: 'Glue' })];
const alloys = (design = defaultDesign, system: 'metric' | 'inch' = 'metric') =>
  shelfRows(design, 'alloy', 'sink', own, system);
const words = (text: string | undefined) => (text ?? '').replaceAll(/\s/g, ' ');

describe('the rows of a kind', () => {
  test('are the reader’s own of that kind, then those that come along', () => {
    expect(
      alloys()
        .map(({ name }) => name)
        .slice(0, 2),
    ).toEqual(['Bar from the bin', 'Aluminium EN AW-6063']);
    expect(alloys()[0]).toMatchObject({ own: own[0], sources: ['measured, invented'], note: '' });
  });

  test('say what would change against the present values', () => {
    const [, same, close, other] = alloys(setAt(defaultDesign, 'sink.material', 'Aluminium EN AW-6063'));
    expect(same?.effect).toBe('Nothing would change.');
    expect(close?.effect).toBe('1 of 2 values and the name would change.');
    expect(words(other?.rows[0]?.value)).toBe('167 W/(m·K)');
    expect(words(other?.rows[0]?.instead ?? '')).toBe('200 W/(m·K)');
    expect(other?.rows[1]?.instead).toBeNull();
    expect(alloys()[1]?.effect).toBe('Only the name would change.');
    expect(alloys().at(-1)?.effect).toBe('All 2 values and the name would change.');
    const [thin] = shelfRows(defaultDesign, 'thickness', 'box', [], 'metric');
    expect(thin?.effect).toBe('The value would change.');
  });

  test('say sources once, from memory or at second hand where it is so, and how far others are', () => {
    const [, row] = alloys();
    expect(row?.sources).toEqual([expect.stringMatching(/Aluminum Association.*, seen at second hand\.$/)]);
    expect(words(row?.rows[0]?.scatter)).toBe('elsewhere 193 to 218 W/(m·K)');
    const [abs] = shelfRows(defaultDesign, 'sheet', 'box', [], 'metric');
    expect(abs?.sources).toEqual([
      'Sheet conductivity, sheet emissivity and sheet heat capacity: Handbook values of solids and plastics, from memory.',
      'Sheet may have: Common practice, no source.',
    ]);
  });

  test('speak the reader’s units', () => {
    const of = (kind: KindId, place: string) => shelfRows(defaultDesign, kind, place, [], 'inch');
    expect(words(of('thickness', 'box').find(({ name }) => name === '1/8 in')?.brief)).toBe('0.125 in');
    expect(words(of('solder', 'secondFace')[0]?.note)).toContain('Begins to melt at 422.6 °F');
  });

  test('are found by words in any order', () => {
    const found = (query: string) => foundRows(alloys(), query).map(({ name }) => name);
    expect(found('cast 443')).toEqual(['Cast aluminium EN AC-44300']);
    expect(found('443 CAST ')).toEqual(['Cast aluminium EN AC-44300']);
    expect(found('167')).toEqual(['Aluminium EN AW-6061']);
    const sold = shelfRows(defaultDesign, 'thickness', 'box', [], 'metric');
    // Others speak of it in their notes.
    expect(foundRows(sold, '1/8 in').map(({ name }) => name)[0]).toBe('1/8 in');
    expect(foundRows(sold, '1/8 in').length).toBeGreaterThan(1);
    expect(found('no such')).toEqual([]);
    expect(found(' ')).toHaveLength(alloys().length);
  });
});

describe('the row to look at first', () => {
  const first = (design = defaultDesign) => firstChoice(alloys(design), design, 'alloy')?.name;
  test('is the one that the inputs are like, else the one they name, else the first', () => {
    expect(first()).toBe('Aluminium EN AW-6063');
    expect(first(setAt(defaultDesign, 'sink.material', 'Brass CuZn37'))).toBe('Brass CuZn37');
    expect(first(setAt(defaultDesign, 'sink.k_WPerMK', 99))).toBe('Bar from the bin');
    expect(firstChoice([], defaultDesign, 'alloy')).toBeNull();
  });

  test('is the one with these values, where the design names none', () => {
    const rows = shelfRows(defaultDesign, 'thickness', 'baffle', [], 'metric');
    expect(firstChoice(rows, defaultDesign, 'thickness')?.name).toBe('3 mm');
  });
});

describe('how the inputs stand to the shelf', () => {
  const said = (design: typeof defaultDesign, kind: KindId = 'alloy', place = 'sink') =>
    words(shelfStanding(design, kind, place, own, 'metric'));
  const called = (name: string) => setAt(defaultDesign, 'sink.material', name);

  test('is one sentence, or none', () => {
    expect(said(called('aluminium EN AW-6063'))).toBe('As “Aluminium EN AW-6063” on the shelf.');
    expect(said(defaultDesign)).toBe('The values of “Aluminium EN AW-6063” on the shelf.');
    expect(said(called('Bar from the bin'))).toBe(
      'Changed from “Bar from the bin” on the shelf: conductivity 180 W/(m·K) and heat capacity 2.4 J/(cm³·K) there.',
    );
    expect(said(setAt(defaultDesign, 'sink.k_WPerMK', 99))).toBe('');
    expect(said(defaultDesign, 'sheet', 'box')).toBe('As “ABS” on the shelf.');
    expect(said(defaultDesign, 'filament', 'bond')).toBe('As “Nylon (PA 6), 0.15 mm” on the shelf.');
  });
});

describe('words about the reader’s own entries', () => {
  test('after a file was taken in', () => {
    expect(takenInWords(0, 0)).toBe('The file has no entries.');
    expect(takenInWords(0, 2)).toBe('All of these entries are there already.');
    expect(words(takenInWords(1, 0))).toBe('1 entry taken in.');
    expect(words(takenInWords(3, 1))).toBe('3 entries taken in; 1 was there already.');
  });

  test('on whether they last', () => {
    expect(keepingWords('kept', 0)).toBe('Your entries are kept in this browser only.');
    expect(keepingWords('refused', 0)).toContain('Save them as a file');
    expect(words(keepingWords('kept', 2))).toContain('2 entries kept here cannot be read');
  });
});
