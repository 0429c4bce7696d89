import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import type { Place } from '../../model/tracing/tracing.ts';
import { isSame, type Target } from '../../store/tracing/target.ts';
import { arrowOf, focusBefore, handleId } from './handles.ts';
import styles from './Stage.module.css';
import { dragged, handleStyle } from './stageGeometry.ts';
import { useTracing, useTracingActions } from './TracingContext.ts';

interface Props {
  readonly target: Target;
  readonly at: Place;
  readonly label: string;
  readonly zoom: number;
  readonly isWrong?: boolean;
  /** Whether the pointer takes it: where another mark or point is to be put, it must not be in the way. */
  readonly isLive: boolean;
}

/** A mark or a point: to be dragged, nudged by arrow key, taken away by Delete. */
export function Handle({ target, at, label, zoom, isWrong = false, isLive }: Props) {
  const { select, move, nudge, endEdit, remove } = useTracingActions();
  const isSelected = useTracing(({ selected }) => isSame(selected, target));
  const drag = useRef<{ readonly from: Place; readonly clientX: number; readonly clientY: number } | null>(
    null,
  );

  const take = (event: PointerEvent<HTMLButtonElement>) => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    drag.current = { from: at, clientX: event.clientX, clientY: event.clientY };
  };
  const pull = (event: PointerEvent) => {
    const { current } = drag;
    if (current === null || (event.clientX === current.clientX && event.clientY === current.clientY)) return;
    move(target, dragged(current.from, current, event, zoom));
  };
  const leave = () => {
    drag.current = null;
    endEdit();
  };
  const press = (event: KeyboardEvent) => {
    const arrow = arrowOf(event);
    if (arrow !== null) nudge(target, ...arrow);
    else if (event.key === 'Delete' || event.key === 'Backspace') {
      focusBefore(target);
      remove(target);
    } else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <button
      type="button"
      id={handleId(target)}
      className={styles.handle}
      style={handleStyle(at, zoom)}
      data-kind={target.kind === 'mark' ? target.axis : 'point'}
      data-selected={isSelected}
      data-wrong={isWrong}
      data-live={isLive}
      aria-label={label}
      aria-pressed={isSelected}
      onFocus={() => select(target)}
      onClick={({ currentTarget }) => currentTarget.focus({ preventScroll: true })}
      onPointerDown={take}
      onPointerMove={pull}
      onPointerUp={leave}
      onPointerCancel={leave}
      onKeyDown={press}
    >
      <span className={styles.ring} aria-hidden="true" />
      <span className={styles.tag} aria-hidden="true">
        {tagOf(target)}
      </span>
    </button>
  );
}

function tagOf(target: Target): string {
  if (target.kind === 'point') return String(target.index + 1);
  return `${target.axis === 'flow' ? 'F' : 'P'}${target.index + 1}`;
}
