import { flushSync } from 'react-dom';
import { fieldAt } from '../../../model/fields.ts';
import { labelOfOption } from '../../../model/options.ts';
import { type Place, placeNumbers, type ReadingList, readingKeys } from '../../../model/readings.ts';
import { listPath, removeReading, sameConditionsBelow } from '../../../store/readingEdits.ts';
import { useActions, useDesign } from '../../bench/DesignContext.ts';
import { CellBox } from '../../fields/CellBox.tsx';
import { fieldId } from '../../fields/fieldId.ts';
import { Button } from '../../kit/Button.tsx';
import { Glyph } from '../../kit/Glyph.tsx';
import { Select } from '../../kit/Select.tsx';
import { Switch } from '../../kit/Switch.tsx';
import styles from './Readings.module.css';
import { listWords } from './readingWords.ts';

interface Props {
  readonly list: ReadingList;
  readonly index: number;
  readonly isLast: boolean;
  /** Id of the place where the table tells what is wrong. */
  readonly noteId: string;
}

/** One reading: where, what the instrument showed, and how the box was run meanwhile. */
export function ReadingRow({ list, index, isLast, noteId }: Props) {
  const place = `${listPath(list)}[${index}]`;
  const name = `${listWords[list].one} ${index + 1}`;
  const keys = readingKeys[list];
  const box = (key: string, says: string, head: string) => (
    <td data-head={head}>
      <CellBox path={`${place}.${key}`} name={`${name}, ${says}`} noteId={noteId} />
    </td>
  );
  return (
    <tr>
      <th scope="row">
        <span className={styles.cardName}>{listWords[list].one} </span>
        {index + 1}
      </th>
      {list === 'temperatures' && <PlaceCells place={place} name={name} index={index} />}
      {box(keys.reading, 'reading', 'reading')}
      {box(keys.within, 'within', 'within ±')}
      {box('load_W', 'watts', 'watts')}
      {box('room_K', 'room', 'room')}
      {box('fan_V', 'fan volts', 'fan volts')}
      {list === 'temperatures' && <TimeCell place={place} name={name} index={index} noteId={noteId} />}
      <td className={styles.acts}>
        <RowActs list={list} index={index} isLast={isLast} name={name} />
      </td>
    </tr>
  );
}

/** Watts, room and volts for the rows below, and the way out. */
function RowActs({ list, index, isLast, name }: Omit<Props, 'noteId'> & { readonly name: string }) {
  const { apply } = useActions();
  const remove = () => {
    flushSync(() => apply((entered) => removeReading(entered, list, index), `${name} removed`));
    // The next row takes its place; behind the last one stands the way to another.
    const rows = document.querySelectorAll(`[data-list="${list}"] [data-remove]`);
    const next = rows[Math.min(index, rows.length - 1)] ?? document.getElementById('bench-readings');
    if (next instanceof HTMLElement) next.focus();
  };
  return (
    <>
      <Button
        small
        className={isLast ? (styles.last ?? '') : ''}
        disabled={isLast}
        aria-label={`Conditions of ${name.toLowerCase()} for all below`}
        title="Same conditions for all below"
        onClick={() =>
          apply(
            (entered) => sameConditionsBelow(entered, list, index),
            `Conditions of ${name.toLowerCase()} for all below`,
          )
        }
      >
        <Glyph name="down" />
      </Button>
      <Button small data-remove aria-label={`Remove ${name.toLowerCase()}`} onClick={remove}>
        <Glyph name="remove" />
      </Button>
    </>
  );
}

interface CellProps {
  readonly place: string;
  readonly name: string;
  readonly index: number;
}

function PlaceCells({ place, name, index }: CellProps) {
  const design = useDesign((state) => state.design);
  const { setValue } = useActions();
  const row = design.readings.temperatures[index];
  if (row === undefined) return null;
  const whereField = fieldAt(`${place}.where`);
  const options = whereField.kind === 'choice' ? whereField.options : [];
  const known = placeNumbers(design, row.where);
  // A number that the design does not have is kept until somebody chooses another.
  const numbers = known.includes(row.number) ? known : [...known, row.number];
  return (
    <>
      <td data-head="where">
        <Select
          id={fieldId(`${place}.where`)}
          aria-label={`${name}, where`}
          value={row.where}
          options={options.map((value) => ({ value, label: labelOfOption(value) }))}
          onChoose={(value) => setValue(`${place}.where`, value as Place)}
        />
      </td>
      <td data-head="number" data-blank={row.where === 'inExhaust'}>
        {row.where !== 'inExhaust' && (
          <Select
            id={fieldId(`${place}.number`)}
            aria-label={`${name}, number`}
            value={String(row.number)}
            options={numbers.map((number) => ({
              value: String(number),
              label: known.includes(number) ? String(number) : `${number} – not in this design`,
            }))}
            onChoose={(number) => setValue(`${place}.number`, Number(number))}
          />
        )}
      </td>
    </>
  );
}

/** Settled, or so long after everything was switched on. */
function TimeCell({ place, name, index, noteId }: CellProps & { readonly noteId: string }) {
  const isSettled = useDesign(({ design }) => design.readings.temperatures[index]?.settled ?? true);
  const { setValue } = useActions();
  return (
    <td data-head="settled, or after" className={styles.time}>
      <Switch
        id={fieldId(`${place}.settled`)}
        label={`${name}, settled`}
        checked={isSettled}
        onSwitch={(settled) => setValue(`${place}.settled`, settled)}
      />
      {!isSettled && (
        <div className={styles.after}>
          <CellBox path={`${place}.time_s`} name={`${name}, time since switched on`} noteId={noteId} />
        </div>
      )}
    </td>
  );
}
