import { lazy, Suspense, useState } from 'react';
import { getAt } from '../../model/path.ts';
import { useActions, useDesign } from '../bench/DesignContext.ts';
import { Button } from '../kit/Button.tsx';
import { Glyph } from '../kit/Glyph.tsx';
import { CellBox } from './CellBox.tsx';
import { fieldId } from './fieldId.ts';
import { PasteTable } from './PasteTable.tsx';
import { RowsNote } from './RowsNote.tsx';
import styles from './rows.module.css';
import { TableDrop } from './TableDrop.tsx';
import { useTableTaking } from './useTableTaking.ts';

// With all that it brings only when somebody opens it.
const TracingDialog = lazy(() => import('../tracing/TracingDialog.tsx'));

interface Props {
  /** `fan.curve`, `moreFans[0].curve` or `extras[0].points`. */
  readonly list: string;
  readonly heading: string;
  readonly help: string;
  /** Before the number of a point, where a part has several curves. */
  readonly owner?: string;
}

/** Points of pressure over flow; a table copied from anywhere may be pasted into any cell. */
export function CurveEditor({ list, heading, help, owner = '' }: Props) {
  const count = useDesign(({ design }) => {
    const rows = getAt(design, list);
    return Array.isArray(rows) ? rows.length : 0;
  });
  const { addPoint, removePoint, apply } = useActions();
  const [isTracing, setTracing] = useState(false);
  const noteId = `${fieldId(list)}-note`;
  const point = owner === '' ? 'point' : `${owner}, point`;
  const nameRow = (row: number) => `${owner === '' ? 'Point' : point} ${row + 1}`;
  const table = useTableTaking(async (text, file) => {
    const { pasteCurve } = await import('../../store/paste/pasteCurve.ts');
    return pasteCurve(apply, list, text, file);
  });
  return (
    <>
      <TableDrop heading={`${fieldId(list)}-heading`} onFile={table.fromFile}>
        <h3 id={`${fieldId(list)}-heading`} className={styles.heading}>
          {heading}
        </h3>
        {count > 0 && (
          <table className={styles.table}>
            <thead>
              <tr>
                <th scope="col">
                  <span className="unseen">Number</span>
                </th>
                <th scope="col">flow</th>
                <th scope="col">static pressure</th>
                <th scope="col" className={styles.acts}>
                  <span className="unseen">Change the rows</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {Array.from({ length: count }, (_, row) => (
                <tr key={fieldId(`${list}[${row}]`)}>
                  <th scope="row">{row + 1}</th>
                  <td>
                    <CellBox
                      path={`${list}[${row}].flow_m3PerS`}
                      name={`${nameRow(row)}, flow`}
                      noteId={noteId}
                      onPaste={table.fromCell}
                    />
                  </td>
                  <td>
                    <CellBox
                      path={`${list}[${row}].dp_Pa`}
                      name={`${nameRow(row)}, pressure`}
                      noteId={noteId}
                      onPaste={table.fromCell}
                    />
                  </td>
                  <td className={styles.acts}>
                    <Button
                      small
                      aria-label={`Add a point after ${point} ${row + 1}`}
                      onClick={() => addPoint(list, row)}
                    >
                      <Glyph name="add" />
                    </Button>
                    <Button
                      small
                      aria-label={`Remove ${point} ${row + 1}`}
                      onClick={() => removePoint(list, row)}
                    >
                      <Glyph name="remove" />
                    </Button>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
        <RowsNote id={noteId} list={list} nameRow={nameRow} help={help} />
        <PasteTable
          summary="Paste or open a table of points"
          help="Flow and pressure, by the names or units of their heads, or two columns in this order; a file may be dropped here too. It takes the place of all points."
          table={table}
        />
        <div className={styles.below}>
          {count === 0 && <Button onClick={() => addPoint(list, 0)}>Use measured points instead</Button>}
          <Button onClick={() => setTracing(true)}>
            From a picture… <span className="unseen">{heading}</span>
          </Button>
        </div>
      </TableDrop>
      {/* Not in it: what is dropped there is no table. */}
      {isTracing && (
        <Suspense fallback={null}>
          <TracingDialog list={list} heading={heading} onClose={() => setTracing(false)} />
        </Suspense>
      )}
    </>
  );
}
