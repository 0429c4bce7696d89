import { type RefObject, useEffect, useRef } from 'react';
import type { Place } from '../../model/tracing/tracing.ts';
import { placeOf } from '../../store/tracing/target.ts';
import { Button } from '../kit/Button.tsx';
import styles from './Loupe.module.css';
import { loupe_px, paintLoupe } from './stageGeometry.ts';
import { useTracing, useTracingActions, useTracingReport } from './TracingContext.ts';

interface Props {
  readonly image: RefObject<HTMLImageElement | null>;
  /** Where the pointer is; `null` where what is in hand counts. */
  readonly pointed: Place | null;
}

const ways = [
  { name: 'left', sign: '←', right: -1, down: 0 },
  { name: 'up', sign: '↑', right: 0, down: -1 },
  { name: 'down', sign: '↓', right: 0, down: 1 },
  { name: 'right', sign: '→', right: 1, down: 0 },
] as const;

/** Eight times larger: what is under the pointer or in hand, its values, and keys to move it by a pixel. */
export function Loupe({ image, pointed }: Props) {
  const { tracing, selected, cross } = useTracing((state) => state);
  const { nudge, remove } = useTracingActions();
  const report = useTracingReport();
  const canvas = useRef<HTMLCanvasElement>(null);
  const held = selected === null ? null : placeOf(tracing, selected);
  const place = pointed ?? held ?? cross;
  useEffect(() => {
    const [glass, picture] = [canvas.current, image.current];
    if (glass === null || picture === null) return;
    const paint = () => paintLoupe(glass, picture, place);
    if (picture.complete) paint();
    else picture.addEventListener('load', paint, { once: true });
    return () => picture.removeEventListener('load', paint);
  }, [image, place]);
  const name =
    selected === null
      ? 'Cross'
      : selected.kind === 'point'
        ? (report.points[selected.index]?.name ?? '')
        : report.marks[selected.axis][selected.index].name;
  return (
    <section className={styles.loupe} aria-label="Magnifier">
      <div className={styles.glass} aria-hidden="true">
        <canvas ref={canvas} width={loupe_px} height={loupe_px} />
      </div>
      <div className={styles.words}>
        <p className={styles.name}>{pointed === null ? name : 'Under the pointer'}</p>
        <p>{report.sayPlace(place)}</p>
        <fieldset className={styles.ways}>
          <legend className="unseen">Move {name.toLowerCase()} by a pixel</legend>
          {ways.map(({ name: way, sign, right, down }) => (
            <Button
              key={way}
              small
              className={styles.way ?? ''}
              aria-label={`One pixel ${way}`}
              onClick={() => nudge(held === null ? null : selected, right, down)}
            >
              {sign}
            </Button>
          ))}
        </fieldset>
        {selected !== null && held !== null && (
          <Button className={styles.away ?? ''} onClick={() => remove(selected)}>
            Take away <span className="unseen">{name.toLowerCase()}</span>
          </Button>
        )}
      </div>
    </section>
  );
}
