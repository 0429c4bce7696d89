import { nameOf } from '../../store/tracing/target.ts';
import { Button } from '../kit/Button.tsx';
import { Glyph } from '../kit/Glyph.tsx';
import { handleId } from './handles.ts';
import styles from './PointTable.module.css';
import { useTracing, useTracingActions, useTracingReport } from './TracingContext.ts';

/** The points with their values as they are moved, and what is wrong with each beside it. */
export function PointTable() {
  const { points, remarks, isOutOfOrder, flows } = useTracingReport();
  const selected = useTracing((state) => state.selected);
  const { remove, sort } = useTracingActions();
  if (points.length === 0) return null;
  const inHand = selected === null ? '' : nameOf(selected);
  return (
    <section className={styles.points} aria-label="Points and their values">
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">Point</th>
            <th scope="col">Flow</th>
            <th scope="col">Pressure</th>
            <th scope="col">
              <span className="unseen">Take away</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {points.map(({ name, flow, pressure, problem }, index) => (
            <Row
              key={name}
              index={index}
              name={name}
              cells={[flow || '–', pressure || '–']}
              problem={problem}
              isInHand={inHand === `point-${index}`}
              onRemove={() => remove({ kind: 'point', index })}
            />
          ))}
        </tbody>
      </table>
      {isOutOfOrder && <Button onClick={() => sort(flows)}>Put them in order of flow</Button>}
      {remarks.map((remark) => (
        <p key={remark} className={styles.remark}>
          {remark}
        </p>
      ))}
    </section>
  );
}

interface RowProps {
  readonly index: number;
  readonly name: string;
  readonly cells: readonly [flow: string, pressure: string];
  readonly problem: string | null;
  readonly isInHand: boolean;
  readonly onRemove: () => void;
}

function Row({ index, name, cells: [flow, pressure], problem, isInHand, onRemove }: RowProps) {
  const find = () => {
    const handle = document.getElementById(handleId({ kind: 'point', index }));
    handle?.focus({ preventScroll: true });
    handle?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  };
  return (
    <>
      <tr data-in-hand={isInHand}>
        <th scope="row">
          <button
            type="button"
            className={styles.find}
            aria-label={`Find ${name.toLowerCase()}`}
            onClick={find}
          >
            {index + 1}
          </button>
        </th>
        <td>{flow}</td>
        <td>{pressure}</td>
        <td className={styles.acts}>
          <Button small aria-label={`Take ${name.toLowerCase()} away`} onClick={onRemove}>
            <Glyph name="remove" />
          </Button>
        </td>
      </tr>
      {problem !== null && (
        <tr>
          <td colSpan={4} className={styles.problem}>
            {name}: {problem}
          </td>
        </tr>
      )}
    </>
  );
}
