import { fieldAt } from '../../model/fields.ts';
import { wordProblem } from '../../model/wordProblem.ts';
import { type GapValues, gapPath, gapValues, presentGap_m } from '../../studies/gaps/gap.ts';
import type { GapMap, GapMapQuestion, GapNode } from '../../studies/gaps/gapMap.ts';
import { stateOfReserve } from '../../studies/gaps/reserve.ts';
import type { GapState } from '../../studies/gaps/verdictChanges.ts';
import type { Said } from '../amount.ts';
import { table } from '../makeTable.ts';
import { saidQuantity, saidTemperature } from '../said.ts';
import type { StudyReport } from '../studyReport.ts';
import type { UnitSystem } from '../types.ts';
import { type GapMapPicture, gapMapPicture } from './gapMapPicture.ts';
import { gapMapSentence } from './gapMapSentence.ts';
import { gapSize, stateWord } from './gapWords.ts';

/** One pair of gaps among those asked for. */
export interface GapCell {
  readonly key: string;
  /** "0.8 mm and 21 mm". */
  readonly label: string;
  readonly film: Said;
  readonly isPresent: boolean;
  /** `null` for what cannot be built, or has no answer. */
  readonly state: GapState | null;
  readonly stateWord: string;
  /** What puts this pair into the design. */
  readonly values: GapValues;
}

/** What two gaps of the baffle do to a box. */
export interface GapMapReport extends StudyReport {
  /** "Side clearance", "Slot width". */
  readonly xLabel: string;
  readonly yLabel: string;
  readonly heads: readonly string[];
  readonly rows: readonly { readonly head: string; readonly cells: readonly GapCell[] }[];
  /** By film and by load; empty where too few pairs have an answer. */
  readonly pictures: readonly GapMapPicture[];
}

export function gapMapReport(question: GapMapQuestion, map: GapMap, system: UnitSystem): GapMapReport {
  const [xLabel, yLabel] = [question.x.gap, question.y.gap].map((gap) => fieldAt(gapPath(gap)).label) as [
    string,
    string,
  ];
  const columns = map.xs.flatMap((line, column) => (line.isRow ? [{ ...line, column }] : []));
  const lines = map.ys.flatMap((line, row) => (line.isRow && map.nodes[row] ? [{ ...line, row }] : []));
  const rows = lines.map(({ at_m: y_m, row }) => ({
    head: saidQuantity(y_m, 'length', system, 3),
    cells: columns.map(({ at_m: x_m, column }) =>
      cellOf(question, x_m, y_m, map.nodes[row]?.[column], system),
    ),
  }));
  const heads = columns.map(({ at_m }) => gapSize(at_m, system));
  const matrix = (id: string, caption: string, cell: (each: GapCell) => Said | string) =>
    table(
      id,
      caption,
      [
        { head: `${yLabel} ↓, ${xLabel.toLowerCase()} →`, align: 'start' },
        ...heads.map((head) => `>${head}`),
      ],
      rows.map(({ head, cells }) => [head, ...cells.map(cell)]),
    );
  return {
    sentence: gapMapSentence(question, map, system),
    remarks: remarksOf(map, system),
    xLabel,
    yLabel,
    heads,
    rows: rows.map(({ head, cells }) => ({ head: head.text, cells })),
    tables: [
      matrix('gapMapFilm', 'Hottest film over both gaps', ({ film }) => film),
      matrix('gapMapVerdict', 'Verdict over both gaps', (cell) => cell.stateWord),
    ],
    pictures: (['filmMargin_K', 'loadFactor'] as const).flatMap(
      (shade) => gapMapPicture(question, map, shade, system) ?? [],
    ),
  };
}

function cellOf(
  { design, x, y }: GapMapQuestion,
  x_m: number,
  y_m: number,
  node: GapNode | undefined,
  system: UnitSystem,
): GapCell {
  const state = node?.ok ? stateOfReserve(node.reserve) : null;
  return {
    key: `${x_m} ${y_m}`,
    label: `${gapSize(x_m, system)} and ${gapSize(y_m, system)}`,
    film: node?.ok ? saidTemperature(node.outputs.film_K, system, 1) : { text: '–', value: null, unit: '' },
    isPresent: x_m === presentGap_m(design, x.gap) && y_m === presentGap_m(design, y.gap),
    state,
    stateWord: state ? stateWord(state) : node && !node.ok && node.problem ? 'cannot be built' : 'no answer',
    values: { ...gapValues(x.gap, x_m), ...gapValues(y.gap, y_m) },
  };
}

/** Why pairs cannot be built, each reason once. */
function remarksOf({ nodes }: GapMap, system: UnitSystem): string[] {
  const said = nodes
    .flat()
    .flatMap((node) => (node.ok || node.problem === null ? [] : [wordProblem(node.problem, system)]));
  return [...new Set(said)];
}
