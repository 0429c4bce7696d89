import type { Pchip } from '../../solve/pchip.ts';
import { curveBeyond, curveReading } from './balances/airBalances.ts';
import type { Place, Quantity } from './book.ts';
import type { Telling } from './telling.ts';

/** A curve of pressure over flow, read at one flow between two of its points or straight on beyond its ends. */
export function readCurve(
  t: Telling,
  place: Place,
  { x, y, slope }: Pchip,
  flow_m3PerS: Quantity | number,
): Quantity {
  const at = typeof flow_m3PerS === 'number' ? flow_m3PerS : flow_m3PerS.value;
  const last = x.length - 1;
  const number = (values: Float64Array, i: number) => values[i] as number;
  const end = at <= number(x, 0) ? 0 : at >= number(x, last) ? last : -1;
  if (end >= 0) {
    return t.balance(curveBeyond, place, {
      flow_m3PerS,
      end_m3PerS: number(x, end),
      end_Pa: number(y, end),
      end_PaSPerM3: number(slope, end),
    });
  }
  let i = 0;
  while (number(x, i + 1) <= at) i++;
  return t.balance(curveReading, place, {
    flow_m3PerS,
    before_m3PerS: number(x, i),
    after_m3PerS: number(x, i + 1),
    before_Pa: number(y, i),
    after_Pa: number(y, i + 1),
    before_PaSPerM3: number(slope, i),
    after_PaSPerM3: number(slope, i + 1),
  });
}
