import type { SourceKey } from '../../core/sources.ts';
import { cited, type ShelfEntry } from './entry.ts';

const plastics = 'ABS, acrylic, polycarbonate, PETG, polypropylene, PVC and polystyrene';
const inch_m = 0.0254;

/** Thicknesses that sheet is commonly stocked in, metric and inch, with what is sold so. */
export const thicknesses: readonly ShelfEntry[] = [
  millimetres(0.8, 'FR-4, aluminium'),
  millimetres(1, 'ABS, polycarbonate, PETG, polystyrene, FR-4, aluminium, steel'),
  millimetres(1.5, 'ABS, polycarbonate, PETG, polystyrene, acrylic, aluminium, steel'),
  millimetres(1.6, 'FR-4'),
  millimetres(2, `${plastics}, FR-4, aluminium, steel`),
  millimetres(2.4, 'FR-4'),
  millimetres(3, `${plastics}, plywood, aluminium, steel`),
  millimetres(3.2, 'FR-4'),
  millimetres(4, `${plastics}, plywood, aluminium`),
  millimetres(5, `${plastics}, aluminium`),
  millimetres(6, `${plastics}, aluminium`),
  millimetres(6.5, 'plywood'),
  millimetres(8, `${plastics}, aluminium`),
  millimetres(9, 'plywood'),
  millimetres(10, plastics),
  inches('0.030 in', 0.03, 'ABS, polycarbonate, PETG, polystyrene'),
  inches('0.040 in', 0.04, 'ABS, polycarbonate, PETG, polystyrene'),
  inches('0.060 in', 0.06, 'ABS, polycarbonate, PETG, polystyrene, acrylic'),
  inches('1/16 in', 1 / 16, 'polycarbonate, PVC, FR-4, aluminium'),
  inches('0.080 in', 0.08, 'ABS, polystyrene, acrylic'),
  inches('3/32 in', 3 / 32, 'polycarbonate, FR-4, aluminium'),
  inches('0.118 in', 0.118, 'acrylic, polycarbonate: what is sold as 1/8 in is often 3 mm'),
  inches('1/8 in', 1 / 8, `${plastics}, FR-4, plywood, aluminium`),
  inches('3/16 in', 3 / 16, `${plastics}, aluminium`),
  inches('0.220 in', 0.22, 'acrylic: what is sold as 1/4 in is often 5.6 mm'),
  inches('1/4 in', 1 / 4, `${plastics}, plywood, aluminium`),
  inches('3/8 in', 3 / 8, plastics),
  ...[20, 18, 16, 14, 12].map(gauge),
];

function millimetres(thickness_mm: number, soldIn: string): ShelfEntry {
  return stock(`${thickness_mm} mm`, Number((thickness_mm / 1000).toPrecision(6)), 'commonPractice', soldIn);
}

function inches(name: string, thickness_in: number, soldIn: string): ShelfEntry {
  return stock(name, Number((thickness_in * inch_m).toPrecision(9)), 'commonPractice', soldIn);
}

/** Sheet of aluminium, brass and copper by the American gauge; steel has another one. */
function gauge(number: number): ShelfEntry {
  const thickness_in = Number((0.005 * 92 ** ((36 - number) / 39)).toFixed(4));
  return stock(
    `Gauge ${number}, non-ferrous`,
    Number((thickness_in * inch_m).toPrecision(9)),
    'wireGauge',
    'aluminium, brass and copper by the American gauge; steel of this number has another thickness',
  );
}

function stock(name: string, thickness_m: number, source: SourceKey, soldIn: string): ShelfEntry {
  const off_m = 0.05 * thickness_m;
  return {
    name,
    values: { sheet_m: cited(thickness_m, source, [thickness_m - off_m, thickness_m + off_m]) },
    note: `Sold in ${soldIn}. Extruded sheet is true to about 5 %, cast acrylic to 0.4 mm and 10 % (ISO 7823-1, from memory): measure before cutting slots.`,
  };
}
