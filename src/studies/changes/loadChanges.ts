import type { HeatOutcome } from '../../core/system/outcome.ts';
import type { Design } from '../../model/design.ts';
import { supplyKindOf } from '../../model/toCore.ts';
import type { Change, ChangeKey, Cost } from './change.ts';
import { rounded } from './practice.ts';

/** What can be done about resistors and their watts. @param heat `null` where the design has no answer */
export function loadChanges(design: Design, heat: HeatOutcome | null): Change[] {
  return [...flips(design, heat), ...watts(design, heat), lessLoad(design)];
}

function flips({ positions }: Design, heat: HeatOutcome | null): Change[] {
  const count = positions.length;
  const turn = (key: ChangeKey, isFlipped: (index: number) => boolean): Change[] => {
    const values = Object.fromEntries(
      positions.flatMap(({ flipped }, index) =>
        flipped === isFlipped(index) ? [] : [[`positions[${index}].flipped`, !flipped]],
      ),
    );
    return Object.keys(values).length > 0 ? [{ key, values, costs: ['assemble'] }] : [];
  };
  const first = positions[0]?.flipped ?? false;
  return [
    ...(count > 1 ? turn('flipAlternate', (index) => (index % 2 === 1) !== first) : []),
    ...(count > 1 ? turn('flipOutward', (index) => index >= count / 2) : []),
    ...(heat
      ? turn('flipHottest', (index) => (index === heat.hottest) !== (positions[index]?.flipped ?? false))
      : []),
  ];
}

function watts(design: Design, heat: HeatOutcome | null): Change[] {
  const { load, positions } = design;
  const isGiven = load.excitation === 'wattsEach';
  return [...(isGiven ? spreadEvenly(positions) : []), ...(heat ? betweenTwo(positions, heat, isGiven) : [])];
}

/** The watts there are, over all positions; those that are off take their part of them. */
function spreadEvenly(positions: Design['positions']): Change[] {
  const total_W = positions.reduce((sum, { on, power_W }) => sum + (on ? power_W : 0), 0);
  const each_W = tidy(total_W / positions.length);
  const isEven = positions.every(({ on, power_W }) => on && Math.abs(power_W - each_W) <= 1e-6 * each_W);
  if (isEven || total_W === 0) return [];
  const values = Object.fromEntries(
    positions.flatMap((_, index) => [
      [`positions[${index}].on`, true],
      [`positions[${index}].power_W`, each_W],
    ]),
  );
  return [{ key: 'spreadEvenly', values, costs: ['split'] }];
}

/** Between the hottest position and the coolest: some of the watts, or the two resistors as they are. */
function betweenTwo(positions: Design['positions'], heat: HeatOutcome, isGiven: boolean): Change[] {
  const from = heat.hottest;
  const to = heat.positions.reduce(
    (least, { film_K, index }) => (film_K < (heat.positions[least]?.film_K ?? 0) ? index : least),
    0,
  );
  const [hot, cool] = [positions[from], positions[to]];
  if (from === to || hot === undefined || cool === undefined) return [];
  const moved_W = levelling_W(hot.power_W, heat, to);
  const places = (['part', 'on', 'power_W'] as const).flatMap((key) =>
    hot[key] === cool[key]
      ? []
      : [
          [`positions[${from}].${key}`, cool[key]],
          [`positions[${to}].${key}`, hot[key]],
        ],
  );
  const change = (key: ChangeKey, values: Change['values'], cost: Cost): Change => ({
    key,
    values,
    costs: [cost],
  });
  return [
    ...(isGiven && moved_W > 0
      ? [
          change(
            'moveWatts',
            {
              [`positions[${from}].power_W`]: tidy(hot.power_W - moved_W),
              [`positions[${to}].on`]: true,
              [`positions[${to}].power_W`]: tidy((cool.on ? cool.power_W : 0) + moved_W),
            },
            'split',
          ),
        ]
      : []),
    ...(places.length > 0 ? [change('swapPlaces', Object.fromEntries(places), 'assemble')] : []),
  ];
}

/** Watts that would bring both films to one temperature if each rose by its own watts alone; to a tenth of a watt. */
function levelling_W(
  hot_W: number,
  { positions, hottest, entering_K }: HeatOutcome,
  coolest: number,
): number {
  const hot_K = positions[hottest]?.film_K ?? entering_K;
  const cool_K = positions[coolest]?.film_K ?? entering_K;
  const share = Math.min(1, (hot_K - cool_K) / (2 * Math.max(hot_K - entering_K, 1e-9)));
  return Math.min(hot_W, rounded(share * hot_W, 0.1));
}

const lessShare = 0.1;

/** The honest last resort. Volts or amps that make the watts fall by the root. */
function lessLoad({ load, positions }: Design): Change {
  const kind = supplyKindOf[load.excitation];
  const left = 1 - lessShare;
  const path = kind === 'amps' ? 'load.supply_A' : 'load.supply_V';
  const supply = kind === 'amps' ? load.supply_A : load.supply_V;
  const values =
    kind === null
      ? Object.fromEntries(
          positions.map(({ power_W }, i) => [`positions[${i}].power_W`, tidy(left * power_W)]),
        )
      : { [path]: Number((supply * Math.sqrt(left)).toPrecision(4)) };
  return { key: 'lessLoad', values, costs: ['less'] };
}

/** Without the dust behind the last digit of a binary number. */
function tidy(power_W: number): number {
  return Number(power_W.toPrecision(12));
}
