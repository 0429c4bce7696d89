import type { FanAtHand, FanChoice, FanQuestion, FanTried } from '../../studies/sizing/fanChoice.ts';
import type { Amounts } from '../amount.ts';
import { table, told } from '../makeTable.ts';
import { saidQuantity, saidTemperature, withAmounts } from '../said.ts';
import type { StudyReport } from '../studyReport.ts';
import type { TextTable, UnitSystem } from '../types.ts';
import { capital, counted } from '../words.ts';
import { saidSafely } from './safely.ts';
import { lowered, shortClause } from './targetWords.ts';

export interface FanRow {
  readonly key: string;
  readonly name: string;
  readonly state: 'does' | 'short';
  readonly frame: string;
  /** Lowest that does, or the one that comes nearest. */
  readonly supply: string;
  readonly sound: string;
  readonly film: string;
  /** "meets it", or what stands in the way. */
  readonly target: string;
  readonly amounts: Amounts<'frame' | 'supply' | 'sound' | 'film'>;
  readonly fan: FanAtHand;
  /** The told supply, in SI. */
  readonly supply_V: number;
}

export interface FanChoiceReport extends StudyReport {
  readonly rows: readonly FanRow[];
}

/** The smallest of the reader's own fans that reaches the target, and the others in their order. */
export function fanChoiceReport(
  question: FanQuestion,
  choice: FanChoice,
  system: UnitSystem,
): FanChoiceReport {
  const rows = choice.tried.map((tried, index) => rowOf(question, tried, index, system));
  return { sentence: sentenceOf(rows, question), remarks: [basis], rows, tables: [fansTable(rows)] };
}

const basis =
  'Each fan takes the place of all present ones, as many of it as there are of the first kind, between the voltage it starts at and its rated one. A further fan of a design, entered without a frame, is taken in the usual frame round its opening.';

function fansTable(rows: readonly FanRow[]): TextTable {
  return table(
    'fans-at-hand',
    'Fans at hand, the smallest that does first',
    ['Fan', '>Frame', '>Supply', '>Sound there', '>Film there', 'Target'],
    rows.map((r) => [r.name, ...told(r, 'frame', 'supply', 'sound', 'film'), r.target]),
  );
}

function rowOf(
  { design, target }: FanQuestion,
  { fan, edge }: FanTried,
  index: number,
  system: UnitSystem,
): FanRow {
  const does = edge.state !== 'out';
  const supply = saidSafely(edge.value, 'voltage', system, does ? 'up' : 'nearest');
  const there = edge.here.judged?.outputs;
  return {
    key: `${index} ${fan.name}`,
    name: fan.name === '' ? `Fan ${index + 1}` : fan.name,
    state: does ? 'does' : 'short',
    ...withAmounts({
      frame: saidQuantity(fan.size_m, 'length', system, 3),
      supply,
      sound: there
        ? saidQuantity(there.sound_dBA, 'soundLevel', system, 2)
        : { text: '–', value: null, unit: '' },
      film: there ? saidTemperature(there.film_K, system) : { text: '–', value: null, unit: '' },
    }),
    target: does ? 'Met' : capital(shortClause(edge.here, target, design, system)),
    fan,
    supply_V: supply.SI,
  };
}

function sentenceOf(rows: readonly FanRow[], { design }: FanQuestion): string {
  const [first] = rows;
  if (!first) return 'No fan is at hand.';
  const { sideBySide, inARow } = design.fan;
  const many = sideBySide * inARow > 1 ? `, ${sideBySide * inARow} of it as now` : '';
  const what =
    rows.length === 1 ? 'The one fan at hand' : `None of the ${counted(rows.length, 'fan')} at hand`;
  if (first.state === 'does')
    return `Smallest fan at hand that does${many}: ${first.name}, ${first.frame}, at ${first.supply} or more, ${first.sound}.`;
  return `${what} ${rows.length === 1 ? 'does not reach' : 'reaches'} the target${many}. Nearest comes ${first.name}, at ${first.supply}: ${lowered(first.target)}.`;
}
