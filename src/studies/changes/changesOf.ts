import type { HeatOutcome } from '../../core/system/outcome.ts';
import { accepts } from '../../model/accepts.ts';
import type { Design } from '../../model/design.ts';
import { getAt } from '../../model/path.ts';
import { airChanges } from './airChanges.ts';
import { bondChanges } from './bondChanges.ts';
import type { Change } from './change.ts';
import { fanChanges } from './fanChanges.ts';
import { loadChanges } from './loadChanges.ts';
import { sinkChanges } from './sinkChanges.ts';

/**
 * Everything that could be done to this design by one hand at a time: only what applies to it, and only values that their
 * fields take. @param heat of the present answer; `null` where there is none
 */
export function changesOf(design: Design, heat: HeatOutcome | null): Change[] {
  const seen = new Set<string>();
  return [
    ...airChanges(design),
    ...fanChanges(design),
    ...bondChanges(design),
    ...sinkChanges(design),
    ...loadChanges(design, heat),
  ].filter(({ values }) => {
    const entries = Object.entries(values);
    const isOther = entries.some(([path, value]) => getAt(design, path) !== value);
    const text = JSON.stringify(entries);
    const isNew = !seen.has(text);
    seen.add(text);
    return isNew && isOther && entries.every(([path, value]) => accepts(path, value));
  });
}
