import type { HeatOutcome } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';

/** What the hottest film may have. */
export function filmLimit_K(design: Design, heat: HeatOutcome): number {
  const position = design.positions[heat.hottest];
  const part = position ? design.parts[position.part] : undefined;
  return part?.zeroPowerAt_K ?? heat.room_K;
}
