import type { Design } from '../../model/design.ts';
import type { FinQuestion } from '../../studies/sizing/finSizing.ts';
import { type FinPoint, finValues } from '../../studies/sizing/finTrial.ts';
import type { Values } from '../../studies/vary.ts';
import type { Amounts } from '../amount.ts';
import { table, told } from '../makeTable.ts';
import { saidQuantity, saidTemperature, withAmounts } from '../said.ts';
import type { TextTable, UnitSystem } from '../types.ts';
import { capital, plain0 } from '../words.ts';
import { shortOf } from './targetWords.ts';

/** One set of fins at one supply, with what becomes of the box. */
export interface FinRow {
  readonly key: string;
  readonly count: string;
  readonly thickness: string;
  readonly gap: string;
  readonly height: string;
  readonly supply: string;
  readonly film: string;
  readonly sound: string;
  readonly pressure: string;
  /** "meets it", or what stands in the way. */
  readonly target: string;
  readonly amounts: Amounts<
    'count' | 'thickness' | 'gap' | 'height' | 'supply' | 'film' | 'sound' | 'pressure'
  >;
  readonly values: Values;
  readonly edit: string;
}

export function finRow({ design, target }: FinQuestion, point: FinPoint, system: UnitSystem): FinRow {
  const length = (value_m: number) => saidQuantity(value_m, 'length', system, 3);
  return {
    key: [point.count, point.thickness_m, point.height_m, point.supply_V].join(' '),
    ...withAmounts({
      count: { text: plain0(point.count), value: point.count, unit: '' },
      thickness: length(point.thickness_m),
      gap: length(point.gap_m),
      height: length(point.height_m),
      supply: saidQuantity(point.supply_V, 'voltage', system, 3),
      film: saidTemperature(point.film_K, system, 1),
      sound: saidQuantity(point.sound_dBA, 'soundLevel', system, 2),
      pressure: saidQuantity(point.pressure_Pa, 'pressure', system, 3),
    }),
    target: point.left_K >= 0 ? 'Met' : capital(shortOf(point.limit, point.left_K, target, system)),
    values: finValues(design, point),
    edit: `${point.count} fins of ${length(point.thickness_m).text}, ${length(point.height_m).text} high`,
  };
}

export function finTable(id: string, caption: string, rows: readonly FinRow[]): TextTable {
  return table(
    id,
    caption,
    [
      '>Fins',
      '>Hottest film',
      '>Thickness',
      '>Slot',
      '>Height',
      '>Fan supply',
      '>Sound',
      '>Fan pressure',
      'Target',
    ],
    rows.map((r) => [
      ...told(r, 'count', 'film', 'thickness', 'gap', 'height', 'supply', 'sound', 'pressure'),
      r.target,
    ]),
  );
}

/** "7 fins of 1 mm, 11.5 mm high, with slots of 3 mm". */
export function finWords({ count, thickness, gap, height }: FinRow): string {
  return `${count} fins of ${thickness}, ${height} high, with slots of ${gap}`;
}

/** Whether two points are the same fins at the same supply. */
export function isSame(one: FinPoint, other: FinPoint | undefined): boolean {
  return (
    one.count === other?.count &&
    one.thickness_m === other.thickness_m &&
    one.height_m === other.height_m &&
    one.supply_V === other.supply_V
  );
}

export function isPresent({ sink, fan }: Design, point: FinPoint): boolean {
  return (
    point.count === sink.finCount &&
    Math.abs(point.thickness_m - sink.finThickness_m) < 1e-9 &&
    Math.abs(point.height_m - sink.finHeight_m) < 1e-9 &&
    point.supply_V === fan.supply_V
  );
}
