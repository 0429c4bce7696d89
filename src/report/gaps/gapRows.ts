import type { Unsolved } from '../../core/system/outcome.ts';
import type { Design } from '../../model/design.ts';
import { wordProblem } from '../../model/wordProblem.ts';
import { type GapValues, gapValues, presentGap_m } from '../../studies/gaps/gap.ts';
import type { GapLine, GapPoint, GapQuestion } from '../../studies/gaps/gapLine.ts';
import { type GapState, stateOf } from '../../studies/gaps/verdictChanges.ts';
import type { Trial } from '../../studies/vary.ts';
import type { Amounts, Said } from '../amount.ts';
import { amount } from '../format.ts';
import { table, told } from '../makeTable.ts';
import { amountOf, saidPercent, saidQuantity, saidTemperature, saidTimes, withAmounts } from '../said.ts';
import type { TextTable, UnitSystem } from '../types.ts';
import { verdictReport } from '../verdictReport.ts';
import { limitLabels } from '../wording.ts';
import { fixed, kelvins, temperature } from '../words.ts';
import { gapSize, stateWord } from './gapWords.ts';

type Figure = 'film' | 'margin' | 'loadFactor' | 'fins' | 'flow' | 'pressure' | 'sound';

/** One value of a gap, or no baffle, and what it comes to. */
export interface GapRow extends Readonly<Record<Figure, string>> {
  readonly key: string;
  /** "0.8 mm", "no baffle". */
  readonly label: string;
  /** The gap itself as a number; none without a baffle. */
  readonly at: Said;
  readonly isPresent: boolean;
  readonly amounts: Amounts<Figure>;
  /** Coldest and hottest film with the cut off either way; a dash without. */
  readonly band: string;
  readonly bandAmounts: readonly [Said, Said] | null;
  /** `null` for what cannot be built. */
  readonly state: GapState | null;
  readonly stateWord: string;
  /** The limit that gives first, or why there is nothing to say. */
  readonly first: string;
  /** What puts this gap into the design. */
  readonly values: GapValues;
}

/** Rows by rising gap, the design without its baffle last. */
export function gapRows(question: GapQuestion, line: GapLine, system: UnitSystem): GapRow[] {
  const present_m = presentGap_m(question.design, question.gap);
  const rows = line.points
    .filter(({ isRow }) => isRow)
    .map((point) => pointRow(question, point, present_m, system));
  return [...rows, noneRow(question, line, system)];
}

function pointRow(
  { design, gap }: GapQuestion,
  { at_m, trial, band_K }: GapPoint,
  present_m: number | null,
  system: UnitSystem,
): GapRow {
  const isPresent = present_m !== null && Math.abs(at_m - present_m) < 1e-9;
  const label = gapSize(at_m, system);
  return {
    key: `${at_m}`,
    label,
    at: saidQuantity(at_m, 'length', system, 3),
    isPresent,
    ...judged(design, trial, system),
    band: band_K ? bandWords(band_K, system) : '–',
    bandAmounts: band_K && [saidTemperature(band_K[0], system, 1), saidTemperature(band_K[1], system, 1)],
    values: gapValues(gap, at_m),
  };
}

/** "93.3 – 93.7 °C", the unit said once. */
export function bandWords([low_K, high_K]: readonly [number, number], system: UnitSystem): string {
  const [low, high] = [temperature(low_K, system, 1), temperature(high_K, system, 1)];
  return low === high ? high : `${fixed(amount(low_K, 'temperature', system), 1)} – ${high}`;
}

function noneRow({ design, gap }: GapQuestion, { none }: GapLine, system: UnitSystem): GapRow {
  return {
    key: 'none',
    label: 'no baffle',
    at: { text: 'no baffle', ...amountOf(null, 'length', system) },
    isPresent: !design.baffle.fitted,
    ...judged(design, none, system),
    band: '–',
    bandAmounts: null,
    values: gapValues(gap, null),
  };
}

function judged(design: Design, trial: Trial, system: UnitSystem) {
  const state = stateOf(trial);
  return {
    ...withAmounts(figuresOf(trial, system)),
    state,
    stateWord: state === null ? 'cannot be built' : stateWord(state),
    first: trial.ok ? limitLabels[trial.limit] : whyNot(design, trial, system),
  };
}

/** Why a design cannot be built, or has no answer, in a sentence. */
export function whyNot(design: Design, trial: Extract<Trial, { ok: false }>, system: UnitSystem): string {
  if (trial.why === 'clash') return wordProblem(trial.problem, system);
  const { supply_V, start_V } = design.fan;
  const outcome: Unsolved = { ok: false, reason: trial.reason, details: { supply_V, start_V } };
  return verdictReport(design, outcome, system).sentence;
}

function figuresOf(trial: Trial, system: UnitSystem): Record<Figure, Said> {
  if (!trial.ok) {
    const none = { text: '–', value: null, unit: '' };
    return {
      film: none,
      margin: none,
      loadFactor: none,
      fins: none,
      flow: none,
      pressure: none,
      sound: none,
    };
  }
  const { film_K, filmMargin_K, loadFactor, finShare, flow_m3PerS, fanPressure_Pa, sound_dBA } =
    trial.outputs;
  const side = filmMargin_K < 0 ? 'over' : 'to spare';
  return {
    film: saidTemperature(film_K, system, 1),
    margin: {
      text: `${kelvins(Math.abs(filmMargin_K), system, 1)} ${side}`,
      ...amountOf(filmMargin_K, 'temperatureDifference', system),
    },
    loadFactor: saidTimes(loadFactor),
    fins: saidPercent(finShare),
    flow: saidQuantity(flow_m3PerS, 'volumeFlow', system, 3),
    pressure: saidQuantity(fanPressure_Pa, 'pressure', system, 3),
    sound: saidQuantity(sound_dBA, 'soundLevel', system, 3),
  };
}

/** @param label of the gap, "Side clearance" @param cut how far a cut may miss, "0.2 mm" */
export function gapTable(label: string, cut: string, rows: readonly GapRow[]): TextTable {
  return table(
    'gaps',
    `${label}: every value`,
    [
      { head: label, align: 'start' },
      'Verdict',
      '>Hottest film',
      {
        head: `Film at ± ${cut}`,
        align: 'end',
        parts: [`Film at ± ${cut}, least`, `Film at ± ${cut}, most`],
      },
      '>Film margin',
      '>Load up to',
      '>Through fins',
      '>Air moved',
      '>Fan pressure',
      '>Sound',
      'Gives first',
    ],
    rows.map((row) => [
      { ...row.at, text: row.isPresent ? `${row.label}, now` : row.label },
      row.stateWord,
      ...told(row, 'film'),
      row.bandAmounts ? { text: row.band, amounts: row.bandAmounts } : row.band,
      ...told(row, 'margin', 'loadFactor', 'fins', 'flow', 'pressure', 'sound'),
      row.first,
    ]),
  );
}
