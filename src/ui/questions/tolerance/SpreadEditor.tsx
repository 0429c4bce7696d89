import { useState } from 'react';
import type { Design } from '../../../model/design.ts';
import type { Spread, SpreadKind } from '../../../model/spreads/usualSpread.ts';
import { type SpreadRow, shapeWords } from '../../../report/tolerance/spreadRows.ts';
import { isSized, nominalOf, readSize, shapesFor, sizeBox, withShape } from '../../../store/spreadEdits.ts';
import { useDesign } from '../../bench/DesignContext.ts';
import { Glyph } from '../../kit/Glyph.tsx';
import { Select } from '../../kit/Select.tsx';
import { TextBox } from '../../kit/TextBox.tsx';
import styles from './SpreadList.module.css';
import type { SetSpread } from './useSetSpread.ts';

interface Props {
  readonly row: SpreadRow;
  readonly design: Design;
  readonly onSpread: SetSpread;
}

/** One input: its shape, its size, where that comes from, and the way back to the usual one. */
export function SpreadEditor({ row, design, onSpread }: Props) {
  const { spread, label, size, reach, source, usual } = row;
  const { path, kind, relative, size: value, own } = spread;
  const plain: Spread = { path, kind, relative, size: value };
  return (
    <li className={styles.row} data-own={own}>
      <span className={styles.name}>{label}</span>
      <Select
        className={styles.shape ?? ''}
        aria-label={`Spread of ${spread.name}, shape`}
        value={kind}
        options={shapesFor(path).map((each) => ({ value: each, label: shapeWords[each] }))}
        onChoose={(each) => onSpread(withShape(plain, each as SpreadKind, design, nominalOf(design, path)))}
      />
      {isSized(spread) ? (
        // Typed anew after every change from elsewhere.
        <SizeField
          key={`${kind} ${relative} ${value}`}
          name={spread.name}
          spread={plain}
          onSpread={onSpread}
        />
      ) : (
        <span className={styles.size}>{size}</span>
      )}
      <span className={styles.why}>
        Drawn for {reach}; {own ? usual : source}
      </span>
      {own && spread.usual && (
        <button
          type="button"
          className={styles.reset}
          aria-label={`Spread of ${spread.name}: back to the usual one`}
          title={`Back: ${usual}`}
          onClick={() => spread.usual && onSpread(spread.usual, 'back to the usual one')}
        >
          <Glyph name="reset" />
        </button>
      )}
      {own && !spread.usual && (
        <button
          type="button"
          className={styles.reset}
          aria-label={`Spread of ${spread.name}: take it away`}
          title="Take it away"
          onClick={() => onSpread({ ...plain, kind: 'none' }, 'taken away')}
        >
          <Glyph name="remove" />
        </button>
      )}
    </li>
  );
}

/** Taken over when the field is left or with Enter; what does not read stays as typed, with what is allowed. */
function SizeField({
  name,
  spread,
  onSpread,
}: {
  readonly name: string;
  readonly spread: Spread;
  readonly onSpread: SetSpread;
}) {
  const system = useDesign((state) => state.system);
  const box = sizeBox(spread, system);
  const [typed, setTyped] = useState<string | null>(null);
  const read = typed === null ? null : readSize(typed, spread, system);
  const problem = read && !read.ok ? read.reason : null;
  const noteId = `spread-${spread.path}-note`;
  const take = () => {
    if (read?.ok) onSpread(read.spread);
  };
  return (
    <span className={styles.sized}>
      <TextBox
        className={styles.size ?? ''}
        aria-label={`Spread of ${name}, size${box.unit === '' ? '' : ` (${box.unit})`}`}
        aria-describedby={noteId}
        value={typed ?? box.text}
        unit={typed === null || /[\d.,]\s*$/.test(typed) ? box.unit : ''}
        invalid={problem !== null}
        onText={setTyped}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
        }}
      />
      <span id={noteId} className={problem === null ? 'unseen' : styles.problem}>
        {problem ?? box.allowed}
      </span>
    </span>
  );
}
