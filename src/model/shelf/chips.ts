import type { SourceKey } from '../../core/sources.ts';
import { cited, type ShelfEntry } from './entry.ts';

const long = 'Terminals at the short ends.';
const wide = 'Terminals along the long sides: they carry more heat away.';

/** Bodies of chip resistors by their inch code, with the metric code of IEC 60115-8: from terminal to terminal first. */
export const chips: readonly ShelfEntry[] = [
  chip('0603 (1608 metric)', 'chipSizeTable', [1.6, 0.8, 0.45], long),
  chip('0805 (2012 metric)', 'chipSizeTable', [2, 1.25, 0.5], long),
  chip('1206 (3216 metric)', 'chipSizeTable', [3.2, 1.6, 0.55], long),
  chip('1210 (3225 metric)', 'chipSizeTable', [3.2, 2.5, 0.55], long),
  chip('1812 (4532 metric)', 'chipSizeTable', [4.5, 3.2, 0.55], long),
  chip('2010 (5025 metric)', 'chipSizeTable', [5, 2.5, 0.55], long),
  chip('2512 (6332 metric)', 'chipSizeTable', [6.3, 3.2, 0.6], long),
  chip('0612 (1632 metric)', 'materialHandbook', [1.6, 3.2, 0.55], wide),
  chip('1020 (2550 metric)', 'materialHandbook', [2.5, 5, 0.55], wide),
  chip('1218 (3246 metric)', 'materialHandbook', [3.2, 4.6, 0.55], wide),
  chip('1225 (3263 metric)', 'materialHandbook', [3.2, 6.3, 0.55], wide),
  chip(
    '2817 (7142 metric)',
    'materialHandbook',
    [7.1, 4.2, 0.8],
    'Foil and metal-strip kinds are thicker or thinner: read the data sheet.',
  ),
  chip(
    '4527 (11470 metric)',
    'materialHandbook',
    [11.4, 7, 0.8],
    'Several bodies go by this code, some of moulded wire: read the data sheet.',
  ),
];

function chip(
  name: string,
  source: SourceKey,
  [length_mm, width_mm, thickness_mm]: readonly [number, number, number],
  note: string,
): ShelfEntry {
  return {
    name,
    values: {
      length_m: measure(length_mm, 0.2, source),
      width_m: measure(width_mm, 0.2, source),
      thickness_m: measure(thickness_mm, 0.15, source),
    },
    note: `${note} Makers differ by a tenth or two of a millimetre.`,
  };
}

function measure(size_mm: number, off_mm: number, source: SourceKey) {
  const metres = (mm: number) => Number((mm / 1000).toPrecision(6));
  return cited(metres(size_mm), source, [metres(size_mm - off_mm), metres(size_mm + off_mm)]);
}
