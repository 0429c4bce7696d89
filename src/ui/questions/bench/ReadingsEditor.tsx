import { useRef } from 'react';
import { flushSync } from 'react-dom';
import { type ReadingList, readingKeys, readingLists } from '../../../model/readings.ts';
import { addReading, listPath } from '../../../store/readingEdits.ts';
import { useActions, useDesign, useDesignStore } from '../../bench/DesignContext.ts';
import { fieldId } from '../../fields/fieldId.ts';
import { PasteTable } from '../../fields/PasteTable.tsx';
import { TableDrop } from '../../fields/TableDrop.tsx';
import { useTableTaking } from '../../fields/useTableTaking.ts';
import { Button } from '../../kit/Button.tsx';
import styles from './Readings.module.css';
import { ReadingsTable } from './ReadingsTable.tsx';
import { listWords } from './readingWords.ts';

const pasteHelp =
  'One reading a row: a head may name where, reading, within, watts, room, fan volts and time, in any order; without one the columns are these, in this order. Or one moment a row, each column under the name of its place: time [min], film 1 [°C], sink 2 [°C], exhaust [°C]. Units may stand in heads or cells. What is not said is as in the row above, or as the design stands.';

/** What was read on the bench: a table for every quantity that has readings, and the ways to more. */
export function ReadingsEditor() {
  const readings = useDesign(({ design }) => design.readings);
  const notice = useRef<HTMLParagraphElement>(null);
  const { apply } = useActions();
  const store = useDesignStore();
  const table = useTableTaking(async (text, file) => {
    const { pasteReadings } = await import('../../../store/paste/pasteReadings.ts');
    return pasteReadings(apply, text, file);
  });
  const add = (list: ReadingList) => {
    const { one } = listWords[list];
    let refusal: string | null = null;
    flushSync(() => {
      refusal = apply((entered) => addReading(entered, list), `${one} added`);
    });
    if (notice.current) notice.current.textContent = refusal ?? '';
    const last = store.getState().design.readings[list].length - 1;
    const box = `${listPath(list)}[${last}].${readingKeys[list].reading}`;
    if (refusal === null) document.getElementById(fieldId(box))?.focus();
  };
  return (
    <TableDrop heading="bench-readings" onFile={table.fromFile}>
      <h3 id="bench-readings" tabIndex={-1} className={styles.heading}>
        Readings
      </h3>
      {readingLists
        .filter((list) => readings[list].length > 0)
        .map((list, at) => (
          <ReadingsTable key={list} list={list} isFirst={at === 0} />
        ))}
      <div className={styles.adds}>
        {readingLists.map((list) => (
          <Button key={list} onClick={() => add(list)}>
            {listWords[list].add}
          </Button>
        ))}
      </div>
      <p ref={notice} role="status" className={styles.notice} />
      <p className={styles.help}>
        A new reading takes the conditions of the one before, or those of the design. Its instrument is an
        ordinary one, ±1.5 K, ±1 Pa, ±5 % of the flow as computed, ±0.5 % of volts, ±1.5 dB – common practice:
        put in what yours says.
      </p>
      <PasteTable summary="Paste a table of readings" help={pasteHelp} table={table} />
    </TableDrop>
  );
}
