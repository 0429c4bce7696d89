import type { Outcome } from '../core/system/outcome.ts';
import type { Report } from './types.ts';

/**
 * For programs: the words and the SI numbers side by side. The drawing is left out, it is only for drawers; so are the
 * inputs, which are the file, and the day, so that one design gives one file.
 */
export function reportJson(report: Report, outcome: Outcome): string {
  const { drawing: _, everyInput: __, title, ...words } = report;
  const { date: ___, ...undated } = title;
  return `${JSON.stringify({ report: { title: undated, ...words }, outcome }, null, 2)}\n`;
}
