import type { Outcome } from '../core/system/outcome.ts';
import type { Report } from './types.ts';

/** For programs: the words and the SI numbers side by side; the drawing is left out, it is only for drawers. */
export function reportJson(report: Report, outcome: Outcome): string {
  const { drawing: _, ...words } = report;
  return `${JSON.stringify({ report: words, outcome }, null, 2)}\n`;
}
