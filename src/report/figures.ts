import type { Solved } from '../core/system/outcome.ts';
import { amount, type Dimension, quantity, unitOf } from './format.ts';
import type { UnitSystem } from './types.ts';
import { fixed, percent, temperature, watts } from './words.ts';

/** One of the figures beside the drawing, with its number, so that two of them can be compared. */
export interface FigureRow {
  readonly key: string;
  readonly label: string;
  readonly value: string;
  /** SI. */
  readonly amount: number;
  /** A difference of two such amounts, signed: "+3.1 K", "–" where it is too small to be read. */
  readonly sayChange: (difference: number) => string;
}

const thin = '\u202f';
const unchanged = '–';

export function figureRows({ heat, air }: Solved, system: UnitSystem): FigureRow[] {
  const film_K = heat.positions[heat.hottest]?.film_K ?? heat.room_K;
  const by = (dimension: Dimension, decimals: number) => (difference: number) =>
    signed(amount(difference, dimension, system), decimals, unitOf(dimension, system));
  const kelvins = by('temperatureDifference', 1);
  return [
    {
      key: 'load',
      label: 'load',
      value: watts(heat.total_W, system),
      amount: heat.total_W,
      sayChange: by('power', 2),
    },
    {
      key: 'film',
      label: 'hottest film',
      value: temperature(film_K, system),
      amount: film_K,
      sayChange: kelvins,
    },
    {
      key: 'flow',
      label: 'air moved',
      value: quantity(air.flow_m3PerS, 'volumeFlow', system, 3),
      amount: air.flow_m3PerS,
      sayChange: by('volumeFlow', 2),
    },
    {
      key: 'pressure',
      label: 'fan pressure',
      value: quantity(air.fanPressure_Pa, 'pressure', system, 3),
      amount: air.fanPressure_Pa,
      sayChange: by('pressure', system === 'metric' ? 1 : 4),
    },
    {
      key: 'fins',
      label: 'through the fins',
      value: percent(air.share.fins),
      amount: air.share.fins,
      sayChange: (difference) => signed(difference * 100, 1, 'points'),
    },
    ...(air.sound_dBA === null
      ? []
      : [
          {
            key: 'sound',
            label: 'sound',
            value: quantity(air.sound_dBA, 'soundLevel', system, 2),
            amount: air.sound_dBA,
            sayChange: by('soundLevel', 1),
          },
        ]),
    {
      key: 'exhaust',
      label: 'exhaust air',
      value: temperature(heat.exhaust_K, system),
      amount: heat.exhaust_K,
      sayChange: kelvins,
    },
  ];
}

function signed(value: number, decimals: number, unit: string): string {
  if (Number(value.toFixed(decimals)) === 0) return unchanged;
  return `${value > 0 ? '+' : ''}${fixed(value, decimals)}${thin}${unit}`;
}
