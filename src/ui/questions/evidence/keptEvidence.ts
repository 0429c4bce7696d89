import type { Evidence } from '../../../report/evidence/openEvidence.ts';

let kept: Evidence | null = null;

/** The evidence once it has come; a print looks here, for it cannot wait. */
export const keptEvidence = (): Evidence | null => kept;

/** Fetches the evidence once: it is as large as all the rest, and most visits never look at it. */
export async function loadEvidence(): Promise<Evidence> {
  const { openEvidence } = await import('../../../report/evidence/openEvidence.ts');
  kept ??= await openEvidence();
  return kept;
}
