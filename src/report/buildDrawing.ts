import type { Outcome, Solved } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import type { DrawingShapes } from './drawing.ts';
import { boundsOf, layOut } from './drawingLayout.ts';
import { drawingParts } from './drawingParts.ts';
import { planShapes, sectionShapes } from './drawingShapes.ts';
import { sectionStreams } from './drawingStreams.ts';
import type { UnitSystem } from './types.ts';

/** Shapes and air of both views, the section and the plan, from the design and, where there is one, its answer. */
export function buildDrawing(design: Design, outcome: Outcome, system: UnitSystem): DrawingShapes {
  const layout = layOut(design);
  const solved: Solved | null = outcome.ok ? outcome : null;
  const section = sectionShapes(design, layout, solved, system);
  const plan = planShapes(design, layout, solved, system);
  return {
    section: {
      bounds: boundsOf(section),
      shapes: section,
      streams: solved ? sectionStreams(design, layout, solved) : [],
    },
    plan: {
      bounds: boundsOf(plan),
      shapes: plan,
      streams: [],
    },
    parts: drawingParts(design, section, plan, solved, system),
    caption: 'Bond lines, guard and grille are drawn thicker than they are.',
    underlined: 'Underlined: not to scale.',
    trunk_m: layout.trunk_m,
  };
}
