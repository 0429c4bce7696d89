import { useMemo, useState } from 'react';
import type { DrawingShapes } from '../../report/drawing.ts';
import { withDimensions } from '../../report/drawingDimensions.ts';
import { drawingWarmth } from '../../report/drawingMeasures.ts';
import { useDesign } from '../bench/DesignContext.ts';
import type { Frame } from './geometry.ts';
import styles from './Measures.module.css';
import { MeasureTags } from './MeasureTags.tsx';
import { placeMeasures } from './measures.ts';

/** What is written on the drawing: measures, each a button where it is an input, and temperatures. */
export function Measures({ model, frame }: { readonly model: DrawingShapes; readonly frame: Frame }) {
  const design = useDesign(({ solvedDesign }) => solvedDesign);
  const outcome = useDesign((state) => state.outcome);
  const system = useDesign((state) => state.system);
  const [edited, setEdited] = useState<string | null>(null);
  const { lines, tags, notes } = useMemo(
    () =>
      placeMeasures(
        withDimensions(model, design, system),
        outcome.ok ? drawingWarmth(outcome, system) : null,
        frame,
        edited,
      ),
    [model, design, outcome, system, frame, edited],
  );
  return (
    <>
      <svg className={styles.lines} width={frame.width} height={frame.height} aria-hidden="true">
        {lines.map(({ key, d, dashed }) => (
          <path key={key} d={d} data-dashed={dashed} />
        ))}
        {notes.map(({ key, x, y, text, anchor, strong, figure }) => (
          <text key={key} x={x} y={y} textAnchor={anchor} data-strong={strong} data-figure={figure}>
            {text}
          </text>
        ))}
      </svg>
      <MeasureTags tags={tags} width={frame.width} height={frame.height} edited={edited} onEdit={setEdited} />
    </>
  );
}
