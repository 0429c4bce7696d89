import { modelAssumptions } from '../core/system/modelAssumptions.ts';
import type { Outcome, Solved } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import { bibliographyFor, buildHeadline, usedCards } from './buildHeadline.ts';
import { cautions } from './cautions.ts';
import { inputGroups } from './inputGroups.ts';
import { assumptionRows, methodRows } from './methodRows.ts';
import type { Report, ReportPrefs } from './types.ts';
import { counted, percent } from './words.ts';

/**
 * Everything that screen, sheet, table file and terminal say about one answered design. Pure and total. Reads the
 * outcome and the curves; computes no physics of its own.
 */
export function buildReport(design: Design, outcome: Outcome, prefs: ReportPrefs): Report {
  const { system } = prefs;
  const solved: Solved | null = outcome.ok ? outcome : null;
  const used = usedCards(solved);
  const bibliography = bibliographyFor(solved);
  return {
    ...buildHeadline(design, outcome, prefs),
    cautions: cautions(design, outcome, system),
    inputs: inputGroups(design, system),
    computed: solved ? computedWords(solved, used.length) : '',
    methods: methodRows(used, bibliography, system),
    sources: bibliography.rows,
    assumptions: assumptionRows(used, solved ? modelAssumptions : []),
  };
}

function computedWords({ balance }: Solved, methods: number): string {
  const closes = Math.max(balance.air, balance.heat);
  const size = closes < 1e-9 ? 'a thousand-millionth' : `${percent(closes)}`;
  return `With ${counted(methods, 'published method')}: all flows and all temperatures at once, until nothing moves any more (${counted(balance.iterations, 'round')}). What goes in and what comes out, of air and of heat, agree within ${size}.`;
}
