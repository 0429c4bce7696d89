import type { Design } from '../../model/design.ts';
import { fullTitle } from '../../model/fullTitle.ts';
import type { Compared, CompareQuestion } from '../../studies/compare/compare.ts';
import { table } from '../makeTable.ts';
import type { StudyReport } from '../studyReport.ts';
import type { TextTable, UnitSystem, VerdictState } from '../types.ts';
import { verdictReport } from '../verdictReport.ts';
import { compareSentence } from './compareSentence.ts';
import { type InputRow, inputRows } from './inputRows.ts';
import { type ResultRow, resultRows } from './resultRows.ts';

/** One of the designs side by side. */
export interface ComparedDesign {
  /** A is the one on the bench. */
  readonly letter: string;
  readonly name: string;
  readonly state: VerdictState;
  /** Its verdict in a sentence. */
  readonly sentence: string;
}

export interface CompareReport extends StudyReport {
  readonly designs: readonly ComparedDesign[];
  readonly inputs: readonly InputRow[];
  readonly results: readonly ResultRow[];
}

/** By which letter the design at this place is called. */
export function letterOf(index: number): string {
  return String.fromCharCode(65 + index);
}

/** Designs side by side: in what they differ, and what follows. */
export function compareReport(
  { design, others }: CompareQuestion,
  compared: readonly Compared[],
  system: UnitSystem,
): CompareReport {
  const all = [design, ...others].slice(0, compared.length);
  const designs = all.map((each, i) => comparedDesign(each, compared[i] as Compared, i, system));
  const letters = designs.map(({ letter }) => letter);
  const inputs = inputRows(all, system);
  const results = resultRows(compared, system);
  return {
    sentence: compareSentence(letters, compared, inputs, results, system),
    remarks: designs.map(({ letter, name, sentence }) => `${letter}, ${name}: ${sentence}`),
    designs,
    inputs,
    results,
    tables: [resultsTable(designs, results), inputsTable(designs, inputs)],
  };
}

function comparedDesign(
  design: Design,
  { outcome }: Compared,
  index: number,
  system: UnitSystem,
): ComparedDesign {
  const { state, sentence } = verdictReport(design, outcome, system);
  return { letter: letterOf(index), name: fullTitle(design), state, sentence };
}

/** A line for each design, so that every column has one unit; what each is best and worst at stands at the end. */
function resultsTable(designs: readonly ComparedDesign[], results: readonly ResultRow[]): TextTable {
  const words = (row: ResultRow) => row.key === 'verdict' || row.key === 'limit';
  const at = (i: number, standing: 'best' | 'worst') =>
    results
      .filter((row) => !words(row) && row.cells[i]?.standing === standing)
      .map(({ label, cells }) => `${label.toLowerCase()} (${cells[i]?.mark})`)
      .join(', ');
  return table(
    'compare',
    'What follows, a line for each design',
    [
      'Design',
      'Name',
      ...results.map((row) => (words(row) ? row.label : `>${row.label}`)),
      'Best at',
      'Worst at',
    ],
    designs.map(({ letter, name }, i) => [
      letter,
      name,
      ...results.map((row) => {
        const cell = row.cells[i];
        if (cell === undefined) return '';
        return words(row) ? cell.text : { text: cell.text, value: cell.value, unit: cell.unit };
      }),
      at(i, 'best'),
      at(i, 'worst'),
    ]),
  );
}

function inputsTable(designs: readonly ComparedDesign[], inputs: readonly InputRow[]): TextTable {
  return table(
    'compareInputs',
    'Inputs that differ',
    ['Input', ...designs.map(({ letter, name }) => `${letter}, ${name}`)],
    inputs.map(({ label, cells }) => [label, ...cells]),
  );
}
