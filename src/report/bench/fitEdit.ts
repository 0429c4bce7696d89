import type { Design } from '../../model/design.ts';
import { getAt } from '../../model/path.ts';
import { fittedDesign } from '../../studies/bench/fittedDesign.ts';
import type { BenchFitResult } from '../../studies/bench/types.ts';
import { counted } from '../words.ts';

/** A fit as an edit of the design that it was made for: what it changes, and its name. */
export interface FitEdit {
  readonly values: Readonly<Record<string, number>>;
  readonly edit: string;
  /** Name for a variant. */
  readonly variant: string;
}

/** Only what differs, so that no more is undone than was done. */
export function fitEdit(design: Design, result: BenchFitResult): FitEdit {
  const after = fittedDesign(design, result);
  const places = [...Object.keys(design.fitted).map((key) => `fitted.${key}`), 'baffle.leakGap_m'];
  const changed = places.filter((path) => getAt(design, path) !== getAt(after, path));
  const to = `fitted to ${counted(result.readings.length, 'reading')}`;
  return {
    values: Object.fromEntries(changed.map((path) => [path, getAt(after, path) as number])),
    edit: `Design ${to}`,
    variant: to,
  };
}
