import type { Outcome } from '../core/system/outcome.ts';
import type { Report } from './types.ts';

/**
 * For programs: the words and the SI numbers side by side. The drawing is left out, it is only for drawers; so is the day,
 * so that one design gives one file.
 */
export function reportJson(report: Report, outcome: Outcome): string {
  const { drawing: _, title, ...words } = report;
  const { date: __, ...undated } = title;
  return `${JSON.stringify({ report: { title: undated, ...words }, outcome }, null, 2)}\n`;
}
