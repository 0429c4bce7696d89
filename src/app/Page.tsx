import { lazy, Suspense, useMemo, useRef, useState } from 'react';
import type { Keeper } from '../store/keeping/keeper.ts';
import { useDesign, useDesignStore } from '../ui/bench/DesignContext.ts';
import { KeeperContext } from '../ui/bench/KeeperContext.ts';
import { PartPanel } from '../ui/fields/PartPanel.tsx';
import { WillItHold } from '../ui/questions/WillItHold.tsx';
import { Announcer } from '../ui/verdict/Announcer.tsx';
import { Freshness } from '../ui/verdict/Freshness.tsx';
import { KeyFigures } from '../ui/verdict/KeyFigures.tsx';
import { Verdict } from '../ui/verdict/Verdict.tsx';
import { WhatChanged } from '../ui/verdict/WhatChanged.tsx';
import { DrawingSection } from './DrawingSection.tsx';
import { ViewBoundary } from './ErrorBoundary.tsx';
import { Header } from './Header.tsx';
import { Notice } from './Notice.tsx';
import styles from './Page.module.css';
import { useAnswer, useHeadline } from './useAnswer.ts';
import { useChange } from './useChange.ts';
import { useDesigns } from './useDesigns.ts';
import { useGoTo } from './useGoTo.ts';
import { useKeeping } from './useKeeping.ts';

// What need not be there with the first paint.
const Details = lazy(async () => ({ default: (await import('./Details.tsx')).Details }));
const Dialogs = lazy(async () => ({ default: (await import('./Dialogs.tsx')).Dialogs }));
const Offline = lazy(async () => ({ default: (await import('./offline/Offline.tsx')).Offline }));

/** The bench: drawing, inputs of the chosen part, verdict; the questions below; the sheet for the printer. */
export function Page({ keeper }: { readonly keeper: Promise<Keeper> }) {
  const store = useDesignStore();
  const answer = useAnswer();
  const report = useHeadline(answer);
  const change = useChange(answer);
  const problems = useDesign((state) => state.problems);
  const designs = useDesigns(keeper);
  // One object for as long as the page lives: what stands below need not render for every key.
  const present = useRef(designs);
  present.current = designs;
  const kept = useMemo(
    () => ({ keeper, open: (id: string, name: string) => present.current.kept(id, name) }),
    [keeper],
  );
  const goTo = useGoTo();
  const [aboveLimits, setAboveLimits] = useState<HTMLElement | null>(null);
  const [underLimits, setUnderLimits] = useState<HTMLElement | null>(null);
  const [underDrawing, setUnderDrawing] = useState<HTMLElement | null>(null);
  const [inVerdict, setInVerdict] = useState<HTMLElement | null>(null);
  const details = useMemo(
    () => (
      <Details
        answer={answer}
        aboveLimits={aboveLimits}
        underLimits={underLimits}
        underDrawing={underDrawing}
        inVerdict={inVerdict}
      />
    ),
    [answer, aboveLimits, underLimits, underDrawing, inVerdict],
  );
  useKeeping(keeper);
  const [notices, setNotices] = useState<HTMLElement | null>(null);
  return (
    <KeeperContext value={kept}>
      <Header designs={designs} />
      <main id="bench" className={styles.page} tabIndex={-1}>
        <Notice onSave={designs.save} onPlace={setNotices} />
        <div className={styles.bench}>
          <div className={styles.verdict}>
            <Verdict report={report} stale={problems.length > 0} onPlace={setInVerdict} />
          </div>
          <DrawingSection report={report} onPlace={setUnderDrawing} />
          <div className={styles.fields}>
            <PartPanel />
          </div>
          <div className={styles.answer}>
            {problems.length > 0 ? (
              <Freshness problems={problems} onGoTo={goTo} />
            ) : (
              <WhatChanged change={change} />
            )}
            <ViewBoundary store={store} name="the answer" of={answer}>
              <KeyFigures figures={report.figures} change={change} />
              <WillItHold report={report} onPlaceAbove={setAboveLimits} onPlace={setUnderLimits} />
            </ViewBoundary>
          </div>
        </div>
        <div className={styles.questions}>
          <ViewBoundary store={store} name="what stands below the drawing" of={answer}>
            <Suspense fallback={null}>{details}</Suspense>
          </ViewBoundary>
        </div>
      </main>
      <footer className={styles.footer}>
        Computed in this browser; nothing you type leaves it. A computation does not replace a test of the
        first box you build.
        <Suspense fallback={null}>
          <Offline keep={designs.flush} notices={notices} />
        </Suspense>
      </footer>
      <Announcer sentence={report.verdict.sentence} />
      <Suspense fallback={null}>
        <Dialogs designs={designs} />
      </Suspense>
    </KeeperContext>
  );
}
