import { table, told } from '../makeTable.ts';
import type { TextTable } from '../types.ts';
import { capital } from '../words.ts';
import type { ChangeRow } from './changeRow.ts';
import type { LeftOutRow } from './leftOutRows.ts';
import type { TogetherRow } from './togetherRow.ts';

/** Every change that can be made, the best first; at the end the best at once. */
export function changesTable(
  rows: readonly ChangeRow[],
  together: readonly TogetherRow[],
  head: string,
  hasOtherFilm: boolean,
): TextTable {
  const film = <T>(head: T) => (hasOtherFilm ? [head] : []);
  return table(
    'changes',
    'Changes, most kelvin first',
    [
      'Change',
      'From and to',
      `>${head}`,
      ...film('>At the hottest film'),
      'Verdict',
      'Cost',
      '>Sound',
      '>Air moved',
      'Mind',
    ],
    [
      ...rows.map((r) => [
        r.does,
        r.detail,
        ...told(r, 'gain'),
        ...(hasOtherFilm ? told(r, 'film') : []),
        capital(r.word),
        r.costs,
        ...told(r, 'sound', 'flow'),
        r.mind,
      ]),
      ...together.map((r) => [
        r.does,
        r.compared,
        ...told(r, 'gain'),
        ...(hasOtherFilm ? told(r, 'film') : []),
        capital(r.word),
        '',
        '',
        '',
        '',
      ]),
    ],
  );
}

export function leftOutTable(rows: readonly LeftOutRow[]): TextTable {
  return table(
    'changesLeftOut',
    'Changes that cannot be made as the rest stands',
    ['Change', 'From and to', 'Why not', '>Would gain'],
    rows.map((r) => [r.does, r.detail, r.why, ...told(r, 'gain')]),
  );
}
