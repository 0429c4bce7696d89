import { useMemo, useRef, useState } from 'react';
import type { DrawingShapes, PartId } from '../../report/drawing.ts';
import { stackMeasures } from '../../report/drawingMeasures.ts';
import { useDesign } from '../bench/DesignContext.ts';
import { choosePart } from './choosePart.ts';
import { detailOf } from './detail.ts';
import { MeasureTags } from './MeasureTags.tsx';
import styles from './StackLayers.module.css';
import { finStubs, finsShown, stackHeight, stackHeights, stackTags } from './stackPlaces.ts';
import { useWidth } from './useWidth.ts';
import { warmthStyle } from './warmthStyle.ts';

interface Props {
  readonly model: DrawingShapes;
  readonly selected: PartId;
  readonly onSelect: (part: PartId) => void;
}

/** The layers between two plates and the fins behind them, each with its measure. */
export function StackLayers({ model, selected, onSelect }: Props) {
  const design = useDesign(({ solvedDesign }) => solvedDesign);
  const system = useDesign((state) => state.system);
  const paper = useRef<HTMLDivElement>(null);
  const width = useWidth(paper, 336);
  const [edited, setEdited] = useState<string | null>(null);
  const placed = useMemo(() => {
    const detail = detailOf(model, width - 2 * finsShown);
    if (detail === null) return null;
    const measures = stackMeasures(design, detail.resistor - 1, system);
    const stubs = finStubs(detail, measures.finShare);
    return { detail, stubs, ...stackTags(detail, stubs, measures, width) };
  }, [model, design, system, width]);
  if (placed === null) return null;
  const { detail, stubs, tags, leaders } = placed;
  const top = stackHeights.tags + stackHeights.lead;
  return (
    <div className={styles.layers}>
      <div ref={paper} className={styles.paper}>
        <svg
          width={width}
          height={stackHeight}
          aria-hidden="true"
          onClick={(event) => choosePart(event, onSelect)}
        >
          {stubs.map(({ key, x, y, height }) => (
            <rect
              key={key}
              x={x}
              y={y}
              width={finsShown}
              height={height}
              className={styles.fin}
              data-part="sinks"
            />
          ))}
          {detail.layers.map(({ key, part, role, x, width: across, warmth }) => (
            <rect
              key={key}
              x={x + finsShown}
              y={top}
              width={across}
              height={stackHeights.layers}
              className={styles.layer}
              data-part={part}
              data-role={role}
              data-chosen={part === selected}
              style={warmthStyle(warmth)}
            />
          ))}
          <path d={leaders} className={styles.leader} />
        </svg>
        <MeasureTags tags={tags} width={width} height={stackHeight} edited={edited} onEdit={setEdited} />
      </div>
      <p>
        Resistor {detail.resistor}, {detail.enlarged} × life size
        {detail.words !== '' && <>: {detail.words}</>}
      </p>
    </div>
  );
}
