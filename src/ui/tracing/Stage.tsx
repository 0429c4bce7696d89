import {
  type KeyboardEvent,
  type MouseEvent,
  type RefObject,
  useLayoutEffect,
  useRef,
  useState,
} from 'react';
import { axisIds, type Place } from '../../model/tracing/tracing.ts';
import { placeOf, type Target } from '../../store/tracing/target.ts';
import type { Picture } from '../../store/tracing/tracingStore.ts';
import { Button } from '../kit/Button.tsx';
import { Glyph } from '../kit/Glyph.tsx';
import { Cross } from './Cross.tsx';
import { Handle } from './Handle.tsx';
import { Overlay } from './Overlay.tsx';
import styles from './Stage.module.css';
import {
  fitZoom,
  nextZoom,
  percentOf,
  placeUnder,
  scrollTo,
  sheetStyle,
  windowStyle,
} from './stageGeometry.ts';
import { useTracing, useTracingActions, useTracingReport } from './TracingContext.ts';
import { useSize } from './useSize.ts';

export type PutBy = 'mouse' | 'touch' | 'key';

interface Props {
  readonly picture: Picture;
  readonly address: string;
  readonly image: RefObject<HTMLImageElement | null>;
  /** Something was put where nothing was, by pointer or key. */
  readonly onPut: (target: Target, by: PutBy) => void;
  /** Where the pointer is; `null` where it is beside the picture. */
  readonly onPoint: (place: Place | null) => void;
}

/** The picture, as large as one likes, with everything that is laid upon it. */
export function Stage({ picture, address, image, onPut, onPoint }: Props) {
  const report = useTracingReport();
  const { put, undo } = useTracingActions();
  const here = useTracing(({ step }) => step);
  const canUndo = useTracing(({ past }) => past.length > 0);
  const window = useRef<HTMLDivElement>(null);
  const sheet = useRef<HTMLElement>(null);
  const size = useSize(window);
  const [chosen, setChosen] = useState<number | null>(null);
  const zoom = chosen ?? fitZoom(picture, size);
  useKeptInView(window, zoom);
  const step = (way: 1 | -1) => setChosen(nextZoom(zoom, way, picture, size));

  const under = (event: { clientX: number; clientY: number }) =>
    placeUnder(event, sheet.current?.getBoundingClientRect() ?? { left: 0, top: 0 }, zoom);
  const press = (event: MouseEvent) => {
    if ((event.target as Element).closest('button') !== null) return;
    const target = put(under(event));
    const isTouch = (event.nativeEvent as PointerEvent).pointerType === 'touch';
    if (target !== null) onPut(target, isTouch ? 'touch' : 'mouse');
  };
  const keys = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === '+' || event.key === '=') step(1);
    else if (event.key === '-') step(-1);
    else if (event.key === '0') setChosen(null);
    else return;
    event.preventDefault();
  };
  return (
    <div className={styles.stage}>
      <fieldset className={styles.tools}>
        <legend className="unseen">Size of the picture</legend>
        <Button onClick={() => setChosen(null)}>Whole picture</Button>
        <Button aria-label="Farther" onClick={() => step(-1)}>
          −
        </Button>
        <Button aria-label="Closer" onClick={() => step(1)}>
          +
        </Button>
        <span className={styles.zoom}>{percentOf(zoom)}</span>
        <Button className={styles.undo ?? ''} disabled={!canUndo} onClick={undo}>
          <Glyph name="undo" /> Take back
        </Button>
      </fieldset>
      <div className={styles.window} style={windowStyle(picture)} ref={window}>
        <section
          ref={sheet}
          aria-label="Picture, with marks and points upon it"
          className={styles.sheet}
          style={sheetStyle(picture, zoom)}
          onClick={press}
          onKeyDown={keys}
          // What is being dragged is looked at, not the pointer.
          onPointerMove={(event) => onPoint(event.buttons === 0 ? under(event) : null)}
          onPointerLeave={() => onPoint(null)}
        >
          <img
            ref={image}
            src={address}
            alt={`Data sheet, ${picture.name}`}
            draggable={false}
            className={styles.image}
            data-close={zoom > 2}
          />
          <Overlay picture={picture} />
          <Cross zoom={zoom} onPut={(target) => onPut(target, 'key')} />
          {axisIds.flatMap((axis) =>
            ([0, 1] as const).map((index) => {
              const { at, label } = report.marks[axis][index];
              const target = { kind: 'mark', axis, index } as const;
              return (
                at && (
                  <Handle
                    key={`${axis}-${index}`}
                    target={target}
                    at={at}
                    label={label}
                    zoom={zoom}
                    isLive={here === axis || here === 'take'}
                  />
                )
              );
            }),
          )}
          {report.points.map(({ at, label, name, problem }, index) => (
            <Handle
              key={name}
              target={{ kind: 'point', index }}
              at={at}
              label={problem === null ? label : `${label}. ${problem}`}
              zoom={zoom}
              isWrong={problem !== null}
              isLive={here === 'points' || here === 'take'}
            />
          ))}
        </section>
      </div>
    </div>
  );
}

/** When the picture grows or shrinks, what is in hand stays before the eye. */
function useKeptInView(window: RefObject<HTMLDivElement | null>, zoom: number) {
  const place = useTracing(({ tracing, selected, cross }) =>
    selected === null ? cross : (placeOf(tracing, selected) ?? cross),
  );
  const present = useRef(place);
  present.current = place;
  useLayoutEffect(() => {
    const { current } = window;
    if (current === null) return;
    const { left, top } = scrollTo(present.current, zoom, {
      width: current.clientWidth,
      height: current.clientHeight,
    });
    current.scrollLeft = left;
    current.scrollTop = top;
  }, [window, zoom]);
}
