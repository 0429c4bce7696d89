import { useEffect, useMemo } from 'react';
import { keepLastDesign, restoreLastDesign } from '../store/persistence.ts';
import { useActions, useDesign, useDesignStore } from '../ui/bench/DesignContext.ts';
import { AirKey } from '../ui/drawing/AirKey.tsx';
import { BoxDrawing } from '../ui/drawing/BoxDrawing.tsx';
import { PartChooser } from '../ui/drawing/PartChooser.tsx';
import { PartPanel } from '../ui/fields/PartPanel.tsx';
import { Questions } from '../ui/questions/Questions.tsx';
import { WillItHold } from '../ui/questions/WillItHold.tsx';
import { Sheet } from '../ui/sheet/Sheet.tsx';
import { Announcer } from '../ui/verdict/Announcer.tsx';
import { Freshness } from '../ui/verdict/Freshness.tsx';
import { KeyFigures } from '../ui/verdict/KeyFigures.tsx';
import { Verdict } from '../ui/verdict/Verdict.tsx';
import { DropTarget } from './DropTarget.tsx';
import { FileDialogs } from './FileDialogs.tsx';
import { Header } from './Header.tsx';
import { Notice } from './Notice.tsx';
import styles from './Page.module.css';
import { useDesignFiles } from './useDesignFiles.ts';
import { useGoTo } from './useGoTo.ts';
import { useReport } from './useReport.ts';
import { useSettled } from './useSettled.ts';

/** The bench: drawing, inputs of the chosen part, verdict; the questions below; the sheet for the printer. */
export function Page() {
  const report = useReport();
  const selected = useDesign(({ selectedPart }) => selectedPart);
  const problems = useDesign((state) => state.problems);
  const { selectPart } = useActions();
  const files = useDesignFiles();
  const goTo = useGoTo();
  // Typing goes first: fields, drawing and verdict at once, charts and the sheet after a pause.
  const settled = useSettled(report);
  const questions = useMemo(() => <Questions report={settled} />, [settled]);
  const sheet = useMemo(() => <Sheet report={settled} />, [settled]);
  useKeeping();
  return (
    <>
      <Header files={files} />
      <main id="bench" className={styles.page} tabIndex={-1}>
        <Notice />
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
              <AirKey report={report} />
            </figure>
            <PartChooser selected={selected} onSelect={selectPart} wrong={problems.map(({ path }) => path)} />
          </section>
          <div className={styles.fields}>
            <PartPanel />
          </div>
          <div className={styles.answer}>
            <Freshness problems={problems} onGoTo={goTo} />
            <KeyFigures figures={report.figures} />
            <WillItHold report={report} />
          </div>
        </div>
        <div className={styles.questions}>{questions}</div>
      </main>
      <footer className={styles.footer}>
        Computed in this browser; nothing you type leaves it. A computation does not replace a test of the
        first box you build.
      </footer>
      <Announcer sentence={report.verdict.sentence} />
      <DropTarget onFile={(file) => void files.open(file)} />
      <FileDialogs files={files} />
      {sheet}
    </>
  );
}

/** Brings back the design of the last visit, then keeps the present one. */
function useKeeping() {
  const store = useDesignStore();
  useEffect(() => {
    void restoreLastDesign(store);
    return keepLastDesign(store);
  }, [store]);
}
