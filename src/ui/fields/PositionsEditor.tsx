import { useActions, useDesign } from '../bench/DesignContext.ts';
import { Button } from '../kit/Button.tsx';
import { Glyph } from '../kit/Glyph.tsx';
import { Select } from '../kit/Select.tsx';
import { Switch } from '../kit/Switch.tsx';
import { CellBox } from './CellBox.tsx';
import { fieldId } from './fieldId.ts';
import { PasteTable } from './PasteTable.tsx';
import { RowsNote } from './RowsNote.tsx';
import styles from './rows.module.css';
import { TableDrop } from './TableDrop.tsx';
import { type TableTaking, useTableTaking } from './useTableTaking.ts';

const noteId = 'positions-note';
const nameRow = (row: number) => `Resistor ${row + 1}`;

/** The row of resistors, first to last from the fan. */
export function PositionsEditor() {
  const count = useDesign(({ design }) => design.positions.length);
  const withWatts = useDesign(({ design }) => design.load.excitation === 'wattsEach');
  const withParts = useDesign(({ design }) => design.parts.length > 1);
  const { addPosition, setAllPositions } = useActions();
  const table = useRowTaking(0);
  return (
    <TableDrop heading="positions-heading" onFile={table.fromFile}>
      <h3 id="positions-heading">The row, from the fan</h3>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">Number</span>
            </th>
            {withParts && <th scope="col">part</th>}
            <th scope="col" className={styles.tick}>
              on
            </th>
            <th scope="col" className={styles.tick}>
              flip
            </th>
            {withWatts && (
              <th scope="col" className={styles.watts}>
                watts
              </th>
            )}
            <th scope="col" className={styles.acts}>
              <span className="unseen">Change the row</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: count }, (_, index) => (
            // Rows have no name but their place in the row.
            <PositionRow
              key={fieldId(`positions[${index}]`)}
              index={index}
              withParts={withParts}
              withWatts={withWatts}
            />
          ))}
        </tbody>
      </table>
      <RowsNote
        id={noteId}
        list="positions"
        nameRow={nameRow}
        help="Flip: film towards the next sink. ≡ makes all rows like this one."
      />
      <div className={styles.below}>
        <Button onClick={addPosition}>Add a resistor</Button>
        <Button onClick={() => setAllPositions({ on: true }, 'All resistors on')}>All on</Button>
        <Button onClick={() => setAllPositions({ on: false }, 'All resistors off')}>All off</Button>
      </div>
      <PasteTable
        summary="Paste or open a table of resistors"
        help="A head may name part, resistance, on, flip and watts, in any order, with units. Without one: watts; part and watts; or part, on, flip, watts. The row grows as far as it must."
        table={table}
      />
    </TableDrop>
  );
}

/** Lays a table over the row from this resistor on. */
function useRowTaking(row: number): TableTaking {
  const { apply } = useActions();
  return useTableTaking(async (text, file) => {
    const { pasteRow } = await import('../../store/paste/pasteRow.ts');
    return pasteRow(apply, row, text, file);
  });
}

interface RowProps {
  readonly index: number;
  /** Which part and how many watts are asked only where there is a choice. */
  readonly withParts: boolean;
  readonly withWatts: boolean;
}

function PositionRow({ index, withParts, withWatts }: RowProps) {
  const position = useDesign(({ design }) => design.positions[index]);
  const parts = useDesign(({ design }) => design.parts);
  const { setValue, duplicatePosition, removePosition, setAllPositions } = useActions();
  const table = useRowTaking(index);
  if (position === undefined) return null;
  const place = `positions[${index}]`;
  const name = nameRow(index);
  return (
    <tr>
      <th scope="row">{index + 1}</th>
      {withParts && (
        <td>
          <Select
            id={fieldId(`${place}.part`)}
            aria-label={`${name}, part`}
            value={String(position.part)}
            options={parts.map((part, at) => ({ value: String(at), label: part.name || `Part ${at + 1}` }))}
            onChoose={(part) => setValue(`${place}.part`, Number(part))}
          />
        </td>
      )}
      <td>
        <Switch
          id={fieldId(`${place}.on`)}
          label={`${name}, on`}
          checked={position.on}
          onSwitch={(on) => setValue(`${place}.on`, on)}
        />
      </td>
      <td>
        <Switch
          id={fieldId(`${place}.flipped`)}
          label={`${name}, flipped`}
          checked={position.flipped}
          onSwitch={(flipped) => setValue(`${place}.flipped`, flipped)}
        />
      </td>
      {withWatts && (
        <td>
          <CellBox
            path={`${place}.power_W`}
            name={`${name}, watts`}
            noteId={noteId}
            onPaste={table.fromCell}
          />
        </td>
      )}
      <td className={styles.acts}>
        <Button
          small
          aria-label={`Make all like resistor ${index + 1}`}
          onClick={() => setAllPositions(position, `All resistors like resistor ${index + 1}`)}
        >
          <Glyph name="likeThis" />
        </Button>
        <Button small aria-label={`Duplicate resistor ${index + 1}`} onClick={() => duplicatePosition(index)}>
          <Glyph name="copy" />
        </Button>
        <Button small aria-label={`Remove resistor ${index + 1}`} onClick={() => removePosition(index)}>
          <Glyph name="remove" />
        </Button>
      </td>
    </tr>
  );
}
