import type { TextTable } from '../types.ts';
import {
  type EvidenceChoice,
  type EvidenceReport,
  evidenceReport,
  printedEvidence,
} from './evidenceReport.ts';
import { loadChecks } from './loadChecks.ts';

/** The evidence at hand: what it says of any choice, and its tables for print. */
export interface Evidence {
  readonly reportOf: (choice: EvidenceChoice) => EvidenceReport;
  readonly tables: readonly TextTable[];
}

/** Fetches the checks and makes them ready to be asked. */
export async function openEvidence(): Promise<Evidence> {
  const groups = await loadChecks();
  return {
    reportOf: (choice) => evidenceReport(groups, choice),
    tables: printedEvidence(groups),
  };
}
