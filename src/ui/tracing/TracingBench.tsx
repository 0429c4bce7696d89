import { type DragEvent, type KeyboardEvent, useMemo, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { getAt } from '../../model/path.ts';
import type { Place } from '../../model/tracing/tracing.ts';
import { buildTracingReport } from '../../report/tracing/tracingReport.ts';
import type { PictureKeeping } from '../../store/tracing/desk.ts';
import type { Target } from '../../store/tracing/target.ts';
import type { TracingStore } from '../../store/tracing/tracingStore.ts';
import { useDesign } from '../bench/DesignContext.ts';
import { handleId, valueId } from './handles.ts';
import { InHand } from './InHand.tsx';
import { Loupe } from './Loupe.tsx';
import { PointTable } from './PointTable.tsx';
import { type PutBy, Stage } from './Stage.tsx';
import { Steps } from './Steps.tsx';
import styles from './TracingBench.module.css';
import { TracingContext } from './TracingContext.ts';
import { useObjectUrl } from './useObjectUrl.ts';
import { usePictureFile } from './usePictureFile.ts';

interface Props {
  readonly store: TracingStore;
  readonly list: string;
  readonly keeping: PictureKeeping;
}

/** Picture, steps, magnifier and table of one tracing; a picture may be dropped anywhere on it, or pasted. */
export function TracingBench({ store, list, keeping }: Props) {
  const { tracing, picture, system } = useStore(store);
  const report = useMemo(
    () => buildTracingReport(tracing, picture, list, system),
    [tracing, picture, list, system],
  );
  const around = useMemo(() => ({ store, report }), [store, report]);
  const owner = useDesign(({ design }) => String(getAt(design, list.replace(/\.\w+$/, '.name')) ?? ''));
  const { take, refusal } = usePictureFile(store, owner);
  const address = useObjectUrl(picture?.blob ?? null);
  const image = useRef<HTMLImageElement>(null);
  const [pointed, setPointed] = useState<Place | null>(null);
  const [isOver, setOver] = useState(false);

  const drop = (event: DragEvent) => {
    // Anywhere else on the page a file is taken for a design.
    event.preventDefault();
    event.stopPropagation();
    setOver(false);
    const file = event.dataTransfer.files[0];
    if (file) take(file);
  };
  const over = (event: DragEvent) => {
    event.preventDefault();
    event.stopPropagation();
    setOver(true);
  };
  const keys = (event: KeyboardEvent) => {
    // Whoever moves by key looks at that, wherever the pointer rests.
    if (event.key.startsWith('Arrow')) setPointed(null);
    const isText = (event.target as Element).matches('input[type="text"]');
    if (isText || event.shiftKey || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z')
      return;
    event.preventDefault();
    store.getState().undo();
  };
  /**
   * Who has put a mark types its value next, but by touch, where the keyboard would cover the picture. Who has put a
   * point with the mouse may nudge it; who has put one at the cross goes on with the cross.
   */
  const goOn = (target: Target, by: PutBy) => {
    const lacksValue = target.kind === 'mark' && report.marks[target.axis][target.index].text === '';
    if (lacksValue && by !== 'touch')
      document.getElementById(valueId(target.axis, target.index))?.focus({ preventScroll: true });
    // It is drawn a moment later.
    else if (by !== 'key')
      requestAnimationFrame(() => document.getElementById(handleId(target))?.focus({ preventScroll: true }));
  };
  return (
    <TracingContext value={around}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: takes what bubbles up from the controls in it. */}
      <div
        className={styles.bench}
        data-over={isOver}
        data-empty={picture === null}
        onDragOver={over}
        onDragLeave={() => setOver(false)}
        onDrop={drop}
        onKeyDown={keys}
      >
        {picture !== null && address !== null && (
          <div className={styles.picture}>
            <Stage picture={picture} address={address} image={image} onPut={goOn} onPoint={setPointed} />
          </div>
        )}
        <InHand />
        <div className={styles.beside}>
          <Steps list={list} owner={owner} keeping={keeping} refusal={refusal} onFile={take} />
          {picture !== null && address !== null && (
            <>
              <Loupe key={address} image={image} pointed={pointed} />
              <PointTable />
            </>
          )}
        </div>
      </div>
    </TracingContext>
  );
}
