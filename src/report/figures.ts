import type { Solved } from '../core/system/outcome.ts';
import { figure, saidPercent, saidQuantity, saidTemperature, saidWatts, worked } from './said.ts';
import type { Figure, UnitSystem } from './types.ts';
import { keyFigure } from './working/headlineIds.ts';

/** What one reads off first. */
export function figures({ heat, air }: Solved, system: UnitSystem): Figure[] {
  const film_K = heat.positions[heat.hottest]?.film_K ?? heat.room_K;
  const all = [
    figure('load', 'load', saidWatts(heat.total_W, system)),
    figure('film', 'hottest film', saidTemperature(film_K, system)),
    figure('flow', 'air moved', saidQuantity(air.flow_m3PerS, 'volumeFlow', system, 3)),
    figure('pressure', 'fan pressure', saidQuantity(air.fanPressure_Pa, 'pressure', system, 3)),
    figure('fins', 'through fins', saidPercent(air.share.fins)),
    ...(air.sound_dBA === null
      ? []
      : [figure('sound', 'sound', saidQuantity(air.sound_dBA, 'soundLevel', system, 2))]),
    figure('exhaust', 'exhaust air', saidTemperature(heat.exhaust_K, system)),
  ];
  return all.map((each) => ({ ...each, amount: worked(each.amount, keyFigure(each.key, heat.hottest)) }));
}
