import { useRef } from 'react';
import type { PartId } from '../../report/drawing.ts';
import { fieldGroups, partOf } from '../fields/groups.ts';
import styles from './PartChooser.module.css';
import { partNumber } from './partNumbers.ts';

interface Props {
  readonly selected: PartId;
  readonly onSelect: (part: PartId) => void;
  /** One was pointed at, by mouse or finger; arrow keys stay in the list. */
  readonly onPoint?: () => void;
  /** Places of what is wrong; their parts are marked. */
  readonly wrong: readonly string[];
}

/** The list of items under the drawing, with what cannot be drawn; one stop for the keyboard, arrows go along it. */
export function PartChooser({ selected, onSelect, onPoint, wrong }: Props) {
  // Arrow keys click the buttons as well.
  const pointed = useRef(false);
  const wrongParts = new Set(wrong.map(partOf));
  return (
    <fieldset className={styles.list}>
      <legend className="unseen">Part to edit</legend>
      {fieldGroups.map(({ part, title }) => (
        <label
          key={part}
          className={styles.item}
          data-wrong={wrongParts.has(part)}
          onPointerDown={() => {
            pointed.current = true;
          }}
        >
          <input
            type="radio"
            name="part"
            className="unseen"
            checked={part === selected}
            onChange={() => onSelect(part)}
            onKeyDown={() => {
              pointed.current = false;
            }}
            onClick={() => {
              if (pointed.current) onPoint?.();
            }}
          />
          {partNumber(part) !== null && (
            <span className={styles.number} aria-hidden="true">
              {partNumber(part)}
            </span>
          )}
          {title}
          {wrongParts.has(part) && <span className="unseen">, has an entry to mend</span>}
        </label>
      ))}
    </fieldset>
  );
}
