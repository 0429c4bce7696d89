import type { KeyboardEvent } from 'react';
import type { Target } from '../../store/tracing/target.ts';
import { arrowOf, crossId } from './handles.ts';
import styles from './Stage.module.css';
import { handleStyle } from './stageGeometry.ts';
import { useTracing, useTracingActions, useTracingReport } from './TracingContext.ts';

interface Props {
  readonly zoom: number;
  readonly onPut: (target: Target) => void;
}

/** What the pointer is to the hand, this is to the keys: arrows move it, Enter puts a mark or a point under it. */
export function Cross({ zoom, onPut }: Props) {
  const cross = useTracing((state) => state.cross);
  const { nudge, put, select } = useTracingActions();
  const value = useTracingReport().sayPlace(cross);
  const press = (event: KeyboardEvent) => {
    const arrow = arrowOf(event);
    if (arrow === null) return;
    nudge(null, ...arrow);
    event.preventDefault();
  };
  return (
    <button
      type="button"
      id={crossId}
      className={styles.cross}
      style={handleStyle(cross, zoom)}
      aria-label={`Cross${value && `: ${value}`}. Arrow keys move it, Enter puts a mark or a point here.`}
      onFocus={() => select(null)}
      onKeyDown={press}
      onClick={() => {
        const target = put(cross);
        if (target !== null) onPut(target);
      }}
    />
  );
}
