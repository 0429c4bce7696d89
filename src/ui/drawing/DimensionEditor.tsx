import {
  type FocusEvent,
  type KeyboardEvent,
  useEffect,
  useId,
  useLayoutEffect,
  useRef,
  useState,
} from 'react';
import { sayRange } from '../../model/say.ts';
import type { FieldView } from '../../store/fieldView.ts';
import { unitTyped } from '../../store/unitTyped.ts';
import { useDesign, useField } from '../bench/DesignContext.ts';
import { useTyping } from '../fields/useTyping.ts';
import { FieldFrame, noteIdOf } from '../kit/FieldFrame.tsx';
import { TextBox } from '../kit/TextBox.tsx';
import styles from './DimensionEditor.module.css';

interface Props {
  readonly path: string;
  /** Middle of the button that opened it, on a paper of this size. */
  readonly spot: { readonly x: number; readonly y: number };
  readonly width: number;
  readonly height: number;
  readonly opener: () => HTMLElement | null;
  readonly onClose: () => void;
}

const widest = 272;
/** From the middle of a button to the edge of the box. */
const away = 14;

/** One field of the panel, at the spot of its measure: every key is taken as it is typed, so that closing keeps it. */
export function DimensionEditor({ path, spot, width, height, opener, onClose }: Props) {
  const view = useField(path);
  const { onKeyDown, ...typing } = useTyping(view);
  const help = `${view.help} ${useRange(view)}`;
  const id = useId();
  const box = useRef<HTMLFieldSetElement>(null);
  const input = useRef<HTMLInputElement>(null);
  const [own, setOwn] = useState(0);
  const across = Math.min(widest, width);
  const left = Math.min(Math.max(0, spot.x - across / 2), width - across);
  const below = spot.y + away;
  const top = below + own <= height ? below : spot.y - away - own;

  useLayoutEffect(() => setOwn(box.current?.offsetHeight ?? 0), []);
  useEffect(() => {
    if (own === 0) return;
    box.current?.scrollIntoView?.({ block: 'nearest' });
  }, [own]);
  useEffect(() => {
    input.current?.focus({ preventScroll: true });
    input.current?.select();
  }, []);

  const onKey = (event: KeyboardEvent<HTMLInputElement>) => {
    if ((event.key === 'Enter' && !event.nativeEvent.isComposing) || event.key === 'Escape') {
      event.preventDefault();
      opener()?.focus();
      onClose();
    } else onKeyDown(event);
  };
  const onBlur = ({ currentTarget, relatedTarget }: FocusEvent) => {
    // A window left for another stays as it is; the button closes it by itself.
    if (relatedTarget === null ? !document.hasFocus() : currentTarget.contains(relatedTarget)) return;
    if (relatedTarget !== null && relatedTarget === opener()) return;
    onClose();
  };
  return (
    <fieldset
      ref={box}
      aria-label={`${view.label}, on the drawing`}
      tabIndex={-1}
      className={styles.editor}
      style={{ left, top, inlineSize: across }}
      onBlur={onBlur}
    >
      <FieldFrame
        id={id}
        label={view.label}
        unit={view.unit}
        help={help}
        problem={view.problem}
        warning={view.warning}
      >
        <TextBox ref={input} id={id} aria-describedby={noteIdOf(id)} {...typing} onKeyDown={onKey} />
      </FieldFrame>
    </fieldset>
  );
}

/** What is allowed, in the unit that the field is typed in. */
function useRange({ path, field }: FieldView): string {
  const unit = useDesign(({ units }) => unitTyped(units, path));
  const system = useDesign((state) => state.system);
  if (field.kind !== 'quantity') return '';
  return `${sayRange(field.hard, field.dimension, system, unit)}.`;
}
