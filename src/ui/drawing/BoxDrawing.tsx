import { lazy, Suspense, useId, useMemo, useRef } from 'react';
import type { DrawingShapes, PartId } from '../../report/drawing.ts';
import styles from './BoxDrawing.module.css';
import { choosePart } from './choosePart.ts';
import { type Balloon, placeDrawing } from './geometry.ts';
import { useWidth } from './useWidth.ts';
import { ViewArt } from './ViewArt.tsx';

interface Props {
  readonly model: DrawingShapes;
  readonly selected: PartId;
  readonly onSelect: (part: PartId) => void;
}

// Measures follow the first paint, into room that is kept for them.
const Measures = lazy(async () => ({ default: (await import('./Measures.tsx')).Measures }));

/** The drawing is the form: every part carries an item number that opens its inputs, and answers to the mouse itself. */
export function BoxDrawing({ model, selected, onSelect }: Props) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame, 640);
  const hatch = useId();
  const placed = useMemo(() => placeDrawing(model, width), [model, width]);
  const { height, views, balloons } = placed;
  return (
    <div ref={frame} className={styles.frame}>
      {/* For the mouse alone: whoever cannot see the drawing has the numbered buttons. */}
      <svg
        width={width}
        height={height}
        aria-hidden="true"
        focusable="false"
        onClick={(event) => choosePart(event, onSelect)}
      >
        <defs>
          <pattern
            id={`${hatch}-cut`}
            width="5"
            height="5"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <rect width="5" height="5" className={styles.paper} />
            <path d="M0 0V5" className={styles.hatch} />
          </pattern>
          <pattern
            id={`${hatch}-slip`}
            width="4"
            height="4"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(-45)"
          >
            <path d="M0 0V4" className={styles.slip} />
          </pattern>
        </defs>
        {views.map((view) => (
          <ViewArt key={view.name} view={view} selected={selected} hatch={hatch} />
        ))}
        {balloons.map(({ part, leader, tip }) => (
          <g key={part} className={styles.leader} data-chosen={part === selected}>
            <path d={leader} />
            <circle cx={tip.x} cy={tip.y} r="2.5" />
          </g>
        ))}
      </svg>
      {balloons.map((balloon) => (
        <PartButton key={balloon.part} {...balloon} chosen={balloon.part === selected} onSelect={onSelect} />
      ))}
      <Suspense fallback={null}>
        <Measures model={model} frame={placed} />
      </Suspense>
    </div>
  );
}

function PartButton({
  part,
  number,
  name,
  x,
  y,
  chosen,
  onSelect,
}: Balloon & { readonly chosen: boolean; readonly onSelect: Props['onSelect'] }) {
  return (
    <button
      type="button"
      className={styles.balloon}
      style={{ left: x, top: y }}
      title={name}
      aria-label={name}
      aria-pressed={chosen}
      onClick={() => onSelect(part)}
    >
      {number}
    </button>
  );
}
