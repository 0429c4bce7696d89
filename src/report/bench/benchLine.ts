import type { Design } from '../../model/design.ts';
import { readingCount } from '../../model/readings.ts';
import type { BenchCheckResult } from '../../studies/bench/types.ts';
import type { UnitSystem } from '../types.ts';
import { counted, listed, small } from '../words.ts';
import { agreeWords } from './checkSentence.ts';
import { fittedParts } from './fittedWords.ts';

/**
 * One line for a page that sums up: "Bench: 9 of 12 readings agree within their instruments; fitted: bond 0.83 ± 0.05."
 * @param check of this design; `null` where its readings were not held against it yet
 * @returns empty for a design that was neither read nor fitted
 */
export function benchLine(design: Design, check: BenchCheckResult | null, system: UnitSystem): string {
  const count = readingCount(design);
  const parts = fittedParts(design, system);
  const fitted =
    design.fitted.readings === 0
      ? []
      : [
          `fitted to ${counted(design.fitted.readings, 'reading')}${parts.length > 0 ? `: ${listed(parts)}` : ''}`,
        ];
  const read =
    count === 0
      ? []
      : [
          check && check.answered > 0
            ? small(agreeWords(check.agreeing.instrument, check.answered))
            : counted(count, 'reading'),
        ];
  const said = [...read, ...fitted];
  return said.length === 0 ? '' : `Bench: ${said.join('; ')}.`;
}
