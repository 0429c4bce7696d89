import type { Design } from '../../model/design.ts';
import { fieldAt } from '../../model/fields.ts';
import type { Draft } from './draft.ts';

/** One number in a draft, with what the design says there. */
export interface Place {
  readonly in: Record<string, number>;
  readonly key: string;
  readonly nominal: number;
  readonly low: number;
  readonly high: number;
}

/** Places that one draw sets together, and the row of the design's list that they belong to. */
export interface Together {
  readonly row: number;
  readonly places: readonly Place[];
}

/** One draw, by its number, and its row. */
interface Draw {
  readonly number: number;
  readonly row: number;
}

/**
 * All places of an input, by the draws that set them: rows of a list are drawn one by one, points of a curve together. Rows
 * that nothing reads are left out.
 * @param pattern with rows left out
 * @param each one draw for every resistor, also of equal parts
 */
export function placesOf(draft: Draft, design: Design, pattern: string, each: boolean): Together[] {
  const field = fieldAt(pattern);
  const [low, high] = field.kind === 'quantity' ? field.hard : [0, 0];
  const found = new Map<number, { row: number; places: Place[] }>();
  const visit = (here: unknown, [step, ...rest]: readonly string[], draw: Draw): void => {
    if (step === undefined) return;
    const isList = step.endsWith('[]');
    const name = isList ? step.slice(0, -2) : step;
    const value = (here as Record<string, unknown>)[name];
    if (isList) {
      const isCurve = name === 'curve' || name === 'points';
      for (const [index, item] of (value as unknown[]).entries()) {
        const own = isCurve ? draw : drawOf(draft, design, name, index, each);
        if (own !== null) visit(item, rest, own);
      }
    } else if (rest.length > 0) {
      visit(value, rest, draw);
    } else {
      const place = { in: here as Record<string, number>, key: name, nominal: value as number, low, high };
      const { row, places } = found.get(draw.number) ?? { row: draw.row, places: [] };
      found.set(draw.number, { row, places: [...places, place] });
    }
  };
  visit(draft.design, pattern.split('.'), { number: 0, row: 0 });
  return [...found.values()];
}

/** Which draw a row of a list belongs to, `null` where nothing reads it. */
function drawOf(draft: Draft, design: Design, list: string, index: number, each: boolean): Draw | null {
  if (list === 'positions') return design.positions[index]?.on ? { number: index, row: index } : null;
  if (list !== 'parts') return { number: index, row: index };
  const isUsed = draft.design.positions.some(({ part, on }) => on && part === index);
  const row = draft.partOf[index] ?? index;
  return isUsed ? { number: each ? index : row, row } : null;
}
