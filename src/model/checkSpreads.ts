import type { Design } from './design.ts';
import { type Problem, problem } from './problem.ts';
import { mayVary } from './spreads/mayVary.ts';
import { tolerances } from './spreads/tolerances.ts';

/** Every spread belongs to an input that can vary, once. */
export function checkSpreads({ spreads }: Design): Problem[] {
  const first = new Set<string>();
  return spreads.flatMap(({ path, kind }, index) => {
    const place = `spreads[${index}].path`;
    if (!mayVary(path)) return [problem(place, 'spreadOfNothing', {})];
    if (first.has(path)) return [problem(place, 'spreadTwice', {})];
    first.add(path);
    return kind === 'tolerance' && !Object.hasOwn(tolerances, path)
      ? [problem(`spreads[${index}].kind`, 'spreadWithoutTolerance', {})]
      : [];
  });
}
