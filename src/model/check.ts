import { checkBank } from './checkBank.ts';
import { checkExtras, checkFans } from './checkCurves.ts';
import { checkParts } from './checkParts.ts';
import { checkSpreads } from './checkSpreads.ts';
import type { Design } from './design.ts';
import type { Problem } from './problem.ts';

/**
 * What no single field can see: values that the schema accepts one by one and that cannot be built together.
 * A design without problems is one that `toCore` and the solver take.
 */
export function checkDesign(design: Design): Problem[] {
  const parts = checkParts(design);
  const rest = [...checkFans(design), ...checkExtras(design), ...checkSpreads(design)];
  // The row cannot be laid out while a position points at no part.
  if (parts.some(({ code }) => code === 'partMissing')) return [...parts, ...rest];
  return [...checkBank(design), ...parts, ...rest];
}
