import { bankGeometry } from '../core/system/geometry.ts';
import type { Design } from './design.ts';
import { type Problem, problem } from './problem.ts';
import { toCore } from './toCore.ts';

/** Narrower than any cutter: less than this between two fins is taken for a slip of the pen. */
const smallestFinGap_m = 5e-5;
/** A fit that misses by a rounding error is a fit. */
const exceeds = (value: number, most: number) => value > most * (1 + 1e-9);

/** Sinks, row, clearances and box against one another. */
export function checkBank(design: Design): Problem[] {
  return [...checkFins(design), ...checkRow(design), ...checkBaffle(design)];
}

function checkFins({ sink }: Design): Problem[] {
  const gap_m = (sink.width_m - sink.finCount * sink.finThickness_m) / (sink.finCount - 1);
  if (!exceeds(smallestFinGap_m, gap_m)) return [];
  const most = Math.floor((sink.width_m + smallestFinGap_m) / (sink.finThickness_m + smallestFinGap_m));
  if (most >= 2)
    return [problem('sink.finCount', 'finsTooMany', { most, gap_m, smallest_m: smallestFinGap_m })];
  return [problem('sink.finThickness_m', 'finsTooThick', { most_m: (sink.width_m - smallestFinGap_m) / 2 })];
}

function checkRow(design: Design): Problem[] {
  const { sink, baffle, box } = design;
  const row_m = bankGeometry(toCore(design)).row_m;
  const end_m = baffle.fitted ? baffle.endClearance_m : 0;
  const side_m = baffle.fitted ? baffle.sideClearance_m : 0;
  const found: Problem[] = [];
  if (exceeds(row_m, box.length_m)) {
    found.push(
      problem('box.length_m', 'bankTooLong', { needed_m: row_m + 2 * end_m, available_m: box.length_m }),
    );
  } else if (exceeds(row_m + 2 * end_m, box.length_m)) {
    found.push(
      problem('baffle.endClearance_m', 'endClearanceTooWide', { most_m: (box.length_m - row_m) / 2 }),
    );
  }
  if (exceeds(sink.width_m, box.width_m)) {
    found.push(
      problem('box.width_m', 'bankTooWide', {
        needed_m: sink.width_m + 2 * side_m,
        available_m: box.width_m,
      }),
    );
  } else if (exceeds(sink.width_m + 2 * side_m, box.width_m)) {
    found.push(
      problem('baffle.sideClearance_m', 'sideClearanceTooWide', { most_m: (box.width_m - sink.width_m) / 2 }),
    );
  }
  return found;
}

function checkBaffle({ baffle, box, sink }: Design): Problem[] {
  if (!baffle.fitted) return [];
  const found: Problem[] = [];
  if (exceeds(baffle.slotWidth_m, box.width_m)) {
    found.push(problem('baffle.slotWidth_m', 'slotTooWide', { most_m: box.width_m }));
  }
  if (exceeds(baffle.collar_m, sink.length_m)) {
    found.push(problem('baffle.collar_m', 'collarTooHigh', { most_m: sink.length_m }));
  }
  return found;
}
