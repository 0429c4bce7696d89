import type { Limit, Solved } from '../../core/system/outcome.ts';
import type { Compared } from '../../studies/compare/compare.ts';
import type { Said } from '../amount.ts';
import { saidAs, saidPercent, saidQuantity, saidTemperature, saidTimes, saidWatts } from '../said.ts';
import type { UnitSystem } from '../types.ts';
import { limitLabels, verdictWords } from '../wording.ts';
import { capital, kelvins } from '../words.ts';

/** One result of one design. */
export interface ResultCell extends Said {
  /** "coolest", "loudest"; empty for what is neither best nor worst. */
  readonly mark: string;
  readonly standing: 'best' | 'worst' | null;
}

/** One result, a cell for each design. */
export interface ResultRow {
  readonly key: string;
  readonly label: string;
  readonly cells: readonly ResultCell[];
}

interface Kind {
  readonly key: string;
  readonly label: string;
  /** Words for best and worst; `null` where neither end is better. */
  readonly ends: readonly [best: string, worst: string] | null;
  /** Whether more is better. */
  readonly more: boolean;
  readonly say: (compared: Compared, outcome: Solved, shown: Shown) => Said | null;
}

interface Shown {
  readonly system: UnitSystem;
  /** Of temperatures: tenths where the designs lie close together. */
  readonly decimals: number;
}

const stateOrder = { holds: 2, little: 1, fails: 0 } as const;

const kindsOfResult: readonly Kind[] = [
  {
    key: 'load',
    label: 'Load',
    ends: null,
    more: true,
    say: (_, { heat }, { system }) => saidWatts(heat.total_W, system),
  },
  {
    key: 'film',
    label: 'Hottest film',
    ends: ['coolest', 'hottest'],
    more: false,
    say: (_, outcome, { system, decimals }) => saidTemperature(filmOf_K(outcome), system, decimals),
  },
  {
    key: 'filmMargin',
    label: 'Film, to its limit',
    ends: ['most', 'least'],
    more: true,
    say: (_, { limits }, shown) => marginOf(limits, shown),
  },
  {
    key: 'loadFactor',
    label: 'Load up to the first limit',
    ends: ['most', 'least'],
    more: true,
    say: (_, { limits }) => factorOf(limits),
  },
  {
    key: 'flow',
    label: 'Air moved',
    ends: ['most', 'least'],
    more: true,
    say: (_, { air }, { system }) => saidQuantity(air.flow_m3PerS, 'volumeFlow', system, 3),
  },
  {
    key: 'fins',
    label: 'Through the fins',
    ends: ['most', 'least'],
    more: true,
    say: (_, { air }) => saidPercent(air.share.fins),
  },
  {
    key: 'pressure',
    label: 'Fan pressure',
    ends: null,
    more: true,
    say: (_, { air }, { system }) => saidQuantity(air.fanPressure_Pa, 'pressure', system, 3),
  },
  {
    key: 'sound',
    label: 'Sound',
    ends: ['quietest', 'loudest'],
    more: false,
    say: (_, { air }, { system }) =>
      air.sound_dBA === null ? null : saidQuantity(air.sound_dBA, 'soundLevel', system, 2),
  },
  {
    key: 'exhaust',
    label: 'Exhaust air',
    ends: ['coolest', 'hottest'],
    more: false,
    say: (_, { heat }, { system, decimals }) => saidTemperature(heat.exhaust_K, system, decimals),
  },
];

const ratings: readonly Kind[] = (['running', 'stopped'] as const).map((key) => ({
  key,
  label: key === 'running' ? 'Rated with fan' : 'Rated without fan',
  ends: ['most', 'least'],
  more: true,
  say: (compared, _, { system }) => (compared[key] ? saidWatts(compared[key].total_W, system) : null),
}));

/** What follows from each design; best and worst told by words where the numbers, as printed, differ. */
export function resultRows(compared: readonly Compared[], system: UnitSystem): ResultRow[] {
  const shown = { system, decimals: decimalsFor(compared) };
  const rows = [...kindsOfResult, ...ratings].map(({ key, label, ends, more, say }) => {
    const said = compared.map((each) => (each.outcome.ok ? say(each, each.outcome, shown) : null));
    return { key, label, cells: marked(said, ends, more) };
  });
  return [verdictRow(compared), limitRow(compared), ...rows];
}

/** Films closer than this, in kelvin, are told to tenths. */
const close_K = 10;

function decimalsFor(compared: readonly Compared[]): number {
  const films = compared.flatMap(({ outcome }) => (outcome.ok ? [filmOf_K(outcome)] : []));
  return Math.max(...films) - Math.min(...films) < close_K ? 1 : 0;
}

const noNumber: Said = { text: '–', value: null, unit: '' };

function marked(said: readonly (Said | null)[], ends: Kind['ends'], more: boolean): ResultCell[] {
  const known = said.filter((each) => each !== null);
  const differ = ends !== null && new Set(known.map(({ text }) => text)).size > 1;
  const worth = ({ value }: Said) => (more ? 1 : -1) * (value ?? 0);
  const best = known.reduce<Said | null>((a, b) => (a === null || worth(b) > worth(a) ? b : a), null);
  const worst = known.reduce<Said | null>((a, b) => (a === null || worth(b) < worth(a) ? b : a), null);
  return said.map((each) => {
    if (each === null) return { ...noNumber, mark: '', standing: null };
    // Equal as printed is equal.
    if (differ && each.text === best?.text) return { ...each, mark: ends[0], standing: 'best' };
    if (differ && each.text === worst?.text) return { ...each, mark: ends[1], standing: 'worst' };
    return { ...each, mark: '', standing: null };
  });
}

function verdictRow(compared: readonly Compared[]): ResultRow {
  const order = compared.map(({ outcome }) => (outcome.ok ? stateOrder[outcome.verdict.state] : -1));
  const [best, worst] = [Math.max(...order), Math.min(...order)];
  return {
    key: 'verdict',
    label: 'Verdict',
    cells: compared.map(({ outcome }, i) => {
      const text = capital(verdictWords[outcome.ok ? outcome.verdict.state : 'noAnswer']);
      const standing =
        best === worst ? null : order[i] === best ? 'best' : order[i] === worst ? 'worst' : null;
      return { text, value: null, unit: '', mark: standing ?? '', standing };
    }),
  };
}

function limitRow(compared: readonly Compared[]): ResultRow {
  return {
    key: 'limit',
    label: 'What gives first',
    cells: compared.map(({ outcome }) => ({
      text: outcome.ok ? limitLabels[outcome.verdict.limit.key] : '–',
      value: null,
      unit: '',
      mark: '',
      standing: null,
    })),
  };
}

export function filmOf_K({ heat }: Solved): number {
  return heat.positions[heat.hottest]?.film_K ?? heat.room_K;
}

function marginOf(limits: readonly Limit[], { system, decimals }: Shown): Said | null {
  const margin_K = limits.find(({ key }) => key === 'film')?.margin_K ?? null;
  if (margin_K === null) return null;
  const side = margin_K < 0 ? 'over' : 'to spare';
  const text = `${kelvins(Math.abs(margin_K), system, decimals)} ${side}`;
  return saidAs(text, margin_K, 'temperatureDifference', system);
}

function factorOf(limits: readonly Limit[]): Said | null {
  const factors = limits.flatMap(({ loadFactor }) => (loadFactor === null ? [] : [loadFactor]));
  return factors.length === 0 ? null : saidTimes(Math.min(...factors));
}
