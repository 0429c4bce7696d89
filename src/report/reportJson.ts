import type { Outcome } from '../core/system/outcome.ts';
import type { Report } from './types.ts';

/** For programs: the words and the SI numbers side by side; without the drawing, and without the inputs, which are the file. */
export function reportJson(report: Report, outcome: Outcome): string {
  const { drawing: _, everyInput: __, ...words } = report;
  return `${JSON.stringify({ report: words, outcome }, null, 2)}\n`;
}
