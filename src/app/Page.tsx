import { lazy, Suspense, useCallback, useEffect, useMemo, useState } from 'react';
import { handOver, takeUp } from '../store/handOver.ts';
import { keepLastDesign, restoreLastDesign } from '../store/persistence.ts';
import { useActions, useDesign, useDesignStore } from '../ui/bench/DesignContext.ts';
import { AirKey } from '../ui/drawing/AirKey.tsx';
import { BoxDrawing } from '../ui/drawing/BoxDrawing.tsx';
import { PartChooser } from '../ui/drawing/PartChooser.tsx';
import { StackDetail } from '../ui/drawing/StackDetail.tsx';
import { PartPanel } from '../ui/fields/PartPanel.tsx';
import { WillItHold } from '../ui/questions/WillItHold.tsx';
import { Announcer } from '../ui/verdict/Announcer.tsx';
import { Freshness } from '../ui/verdict/Freshness.tsx';
import { KeyFigures } from '../ui/verdict/KeyFigures.tsx';
import { Verdict } from '../ui/verdict/Verdict.tsx';
import { DropTarget } from './DropTarget.tsx';
import { Header } from './Header.tsx';
import { Notice } from './Notice.tsx';
import styles from './Page.module.css';
import { useAnswer, useHeadline } from './useAnswer.ts';
import { useDesignFiles } from './useDesignFiles.ts';
import { useGoTo } from './useGoTo.ts';
import { useSettled } from './useSettled.ts';

// What need not be there with the first paint.
const Details = lazy(async () => ({ default: (await import('./Details.tsx')).Details }));
const Offline = lazy(async () => ({ default: (await import('./offline/Offline.tsx')).Offline }));
const FileDialogs = lazy(async () => ({ default: (await import('./FileDialogs.tsx')).FileDialogs }));

/** The bench: drawing, inputs of the chosen part, verdict; the questions below; the sheet for the printer. */
export function Page() {
  const answer = useAnswer();
  const report = useHeadline(answer);
  const selected = useDesign(({ selectedPart }) => selectedPart);
  const problems = useDesign((state) => state.problems);
  const { selectPart } = useActions();
  const files = useDesignFiles();
  const goTo = useGoTo();
  // Typing goes first: fields, drawing and verdict at once, charts and the sheet after a pause.
  const settled = useSettled(answer);
  const [underLimits, setUnderLimits] = useState<HTMLElement | null>(null);
  const details = useMemo(
    () => <Details answer={settled} underLimits={underLimits} />,
    [settled, underLimits],
  );
  const [notices, setNotices] = useState<HTMLElement | null>(null);
  const store = useDesignStore();
  const beforeReload = useCallback(async () => handOver(store), [store]);
  useKeeping();
  return (
    <>
      <Header files={files} />
      <main id="bench" className={styles.page} tabIndex={-1}>
        <Notice onPlace={setNotices} />
        <div className={styles.bench}>
          <div className={styles.verdict}>
            <Verdict report={report} stale={problems.length > 0} />
          </div>
          <section className={styles.drawing} aria-labelledby="drawing-heading">
            <h2 id="drawing-heading" className="unseen">
              The box, to scale
            </h2>
            <figure className={styles.figure}>
              <BoxDrawing model={report.drawing} selected={selected} onSelect={selectPart} />
              <figcaption className={styles.foot}>
                <AirKey report={report} />
                <StackDetail model={report.drawing} selected={selected} onSelect={selectPart} />
              </figcaption>
            </figure>
            <PartChooser selected={selected} onSelect={selectPart} wrong={problems.map(({ path }) => path)} />
          </section>
          <div className={styles.fields}>
            <PartPanel />
          </div>
          <div className={styles.answer}>
            <Freshness problems={problems} onGoTo={goTo} />
            <KeyFigures figures={report.figures} />
            <WillItHold report={report} onPlace={setUnderLimits} />
          </div>
        </div>
        <div className={styles.questions}>
          <Suspense fallback={null}>{details}</Suspense>
        </div>
      </main>
      <footer className={styles.footer}>
        Computed in this browser; nothing you type leaves it. A computation does not replace a test of the
        first box you build.
        <Suspense fallback={null}>
          <Offline beforeReload={beforeReload} notices={notices} />
        </Suspense>
      </footer>
      <Announcer sentence={report.verdict.sentence} />
      <DropTarget onFile={(file) => void files.open(file)} />
      <Suspense fallback={null}>
        <FileDialogs files={files} />
      </Suspense>
    </>
  );
}

/** Brings back what this tab had before it reloaded, or else the design of the last visit; then keeps the present one. */
function useKeeping() {
  const store = useDesignStore();
  useEffect(() => {
    if (!takeUp(store)) void restoreLastDesign(store);
    return keepLastDesign(store);
  }, [store]);
}
