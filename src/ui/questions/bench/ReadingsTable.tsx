import { type ReadingList, readingKeys } from '../../../model/readings.ts';
import { listPath } from '../../../store/readingEdits.ts';
import { useDesign } from '../../bench/DesignContext.ts';
import { fieldId } from '../../fields/fieldId.ts';
import { RowsNote } from '../../fields/RowsNote.tsx';
import { ReadingRow } from './ReadingRow.tsx';
import styles from './Readings.module.css';
import { listWords } from './readingWords.ts';

/** Said once, under the first table. */
const help =
  'Within: how far the instrument may be off, at 95 %. ↓ gives watts, room and fan volts to all rows below. Settled: nothing moved any more; otherwise the time since load and fan were switched on.';

/** Readings of one quantity; on a narrow screen every one of them is a card. */
export function ReadingsTable({ list, isFirst }: { readonly list: ReadingList; readonly isFirst: boolean }) {
  const count = useDesign(({ design }) => design.readings[list].length);
  const { many, one } = listWords[list];
  const isTemperature = list === 'temperatures';
  const noteId = `bench-${list}-note`;
  const heads = [
    ...(isTemperature ? ['where', 'number'] : []),
    'reading',
    'within ±',
    'watts',
    'room',
    'fan volts',
    ...(isTemperature ? ['settled, or after'] : []),
  ];
  return (
    <div className={styles.list}>
      <table className={styles.table} data-list={list}>
        <caption>{many}</caption>
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">Number of the reading</span>
            </th>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
            <th scope="col">
              <span className="unseen">Change the rows</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: count }, (_, index) => (
            // Rows have no name but their place in the list.
            <ReadingRow
              key={fieldId(`${listPath(list)}[${index}].${readingKeys[list].reading}`)}
              list={list}
              index={index}
              isLast={index === count - 1}
              noteId={noteId}
            />
          ))}
        </tbody>
      </table>
      <RowsNote
        id={noteId}
        list={listPath(list)}
        nameRow={(row) => `${one} ${row + 1}`}
        help={isFirst ? help : ''}
      />
    </div>
  );
}
