import { useRef, useState } from 'react';
import { useActions, useDesign } from '../bench/DesignContext.ts';
import { DimensionEditor } from './DimensionEditor.tsx';
import styles from './MeasureTags.module.css';
import type { Tag } from './measures.ts';

interface Props {
  readonly tags: readonly Tag[];
  /** Of the paper that they lie on. */
  readonly width: number;
  readonly height: number;
  /** Path of the measure that is open. */
  readonly edited: string | null;
  readonly onEdit: (path: string | null) => void;
}

/**
 * Measures laid over a drawing: those that are inputs open a text box at the spot. With the keyboard one comes to those of
 * the chosen part, after all parts; the others are one choice away, so that nobody has to tab through thirty.
 */
export function MeasureTags({ tags, width, height, edited, onEdit }: Props) {
  const selected = useDesign(({ selectedPart }) => selectedPart);
  const problems = useDesign((state) => state.problems);
  const { selectPart } = useActions();
  const buttons = useRef(new Map<string, HTMLButtonElement>());
  // The box stays where it was opened, though the drawing follows every key.
  const [spot, setSpot] = useState({ x: 0, y: 0 });
  const isWrong = (path: string) => problems.some((problem) => problem.path === path);
  return (
    <>
      {tags.map(({ measure, words, x, y, width: wide, set }) => {
        const { path, part, name, toScale, id } = measure;
        const style = { left: x, top: y, inlineSize: wide };
        const text = <span data-to-scale={toScale}>{words}</span>;
        if (path === null)
          return (
            <span key={id} className={styles.tag} style={style}>
              {text}
            </span>
          );
        const wrong = isWrong(path);
        return (
          <button
            key={path}
            ref={(button) => {
              if (button) buttons.current.set(path, button);
              else buttons.current.delete(path);
            }}
            type="button"
            className={styles.tag}
            style={style}
            data-path={path}
            data-set={set}
            data-chosen={part === selected}
            data-wrong={wrong}
            tabIndex={part === selected ? 0 : -1}
            aria-label={`${name}, change${wrong ? ', has an entry to mend' : ''}`}
            aria-expanded={path === edited}
            onClick={() => {
              selectPart(part);
              setSpot({ x, y });
              onEdit(path === edited ? null : path);
            }}
          >
            {wrong && <b aria-hidden="true">!</b>}
            {text}
          </button>
        );
      })}
      {edited !== null && (
        <DimensionEditor
          key={edited}
          path={edited}
          spot={spot}
          width={width}
          height={height}
          opener={() => buttons.current.get(edited) ?? null}
          onClose={() => onEdit(null)}
        />
      )}
    </>
  );
}
