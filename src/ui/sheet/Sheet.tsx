import { Fragment, use, useCallback, useEffect, useEffectEvent, useMemo, useRef, useState } from 'react';
import { createPortal, flushSync } from 'react-dom';
import type { Report } from '../../report/types.ts';
import type { WorkingReport } from '../../report/working/types.ts';
import { workingReport } from '../../report/working/workingReport.ts';
import { lastSteps } from '../../report/working/workingTables.ts';
import { DesignContext } from '../bench/DesignContext.ts';
import { StudiesContext } from '../studies/StudiesContext.ts';
import { roomOnPage, shrink } from './fitPage.ts';
import { furtherPages, summaryFigures } from './furtherPages.ts';
import { type LaidOut, layOut } from './layOut.ts';
import { type SheetSize, sheetSizes } from './measures.ts';
import { usePrintChoice, wantOnePage } from './printChoice.ts';
import './art.css';
import './further.css';
import './sheet.css';
import { ResidualPages } from './ResidualPages.tsx';
import { SheetPage } from './SheetPage.tsx';
import { noSteps, WorkedAt } from './StepMark.tsx';
import { type StudyTables, studyTables } from './studyTables.ts';
import { Galley, TablePages } from './TablePages.tsx';

/**
 * Stands beside the app in the body, unseen on a screen; printing from anywhere prints it and nothing else. The pages
 * behind the summary are there only when somebody asked for them, and only for one print.
 */
export function Sheet({ report }: { readonly report: Report }) {
  const page = useRef<HTMLElement>(null);
  const galleys = useRef(new Map<string, HTMLElement>());
  const [size, setSize] = useState(sheetSizes[0] as SheetSize);
  const [laid, setLaid] = useState<ReadonlyMap<string, LaidOut>>(new Map());
  const { wanted } = usePrintChoice();
  const bench = use(DesignContext);
  const studies = use(StudiesContext);
  // Looked at when somebody prints: nothing is drawn anew here as studies go on.
  const tables = useCallback(
    (working: WorkingReport | null): StudyTables => studyTables(bench, studies, working),
    [bench, studies],
  );
  const working = useMemo(
    () =>
      wanted.includes('working') && bench
        ? workingReport(bench.getState().solvedDesign, report.system)
        : null,
    [wanted, bench, report],
  );
  const parts = useMemo(
    () =>
      furtherPages
        .filter(({ id }) => wanted.includes(id))
        .map((further) => {
          const studied = tables(working);
          return {
            ...further,
            tables: further.tables(report, studied),
            residuals: further.residuals?.(studied) ?? [],
          };
        }),
    [wanted, report, tables, working],
  );

  const [benchSays, setBenchSays] = useState('');
  const prepare = useEffectEvent(() => {
    flushSync(() => setBenchSays(tables(working).benchSays));
    const measured = new Map([...galleys.current].map(([id, galley]) => [id, layOut(galley)]));
    flushSync(() => setLaid(measured));
    page.current?.style.removeProperty('zoom');
    for (const each of sheetSizes) {
      flushSync(() => setSize(each));
      if (page.current && roomOnPage(page.current) >= 1) return;
    }
    if (page.current) shrink(page.current, roomOnPage);
  });
  useEffect(() => {
    window.addEventListener('beforeprint', prepare);
    window.addEventListener('afterprint', wantOnePage);
    return () => {
      window.removeEventListener('beforeprint', prepare);
      window.removeEventListener('afterprint', wantOnePage);
    };
  }, []);

  const worked = useMemo(
    () => (working ? lastSteps(working, summaryFigures(report)) : noSteps),
    [working, report],
  );

  const counts = parts.map(({ id, residuals }) => (laid.get(id)?.pages.length ?? 0) + residuals.length);
  const pages = counts.reduce((sum, count) => sum + count, 1);
  return createPortal(
    <>
      <WorkedAt value={worked}>
        <SheetPage report={report} size={size} pages={pages} bench={benchSays} page={page} />
      </WorkedAt>
      {parts.map(({ id, label, tables, residuals, firstColumn }, i) => {
        const pieces = laid.get(id);
        const first = counts.slice(0, i).reduce((sum, count) => sum + count, 2);
        return (
          <Fragment key={id}>
            <Galley
              tables={tables}
              firstColumn={firstColumn}
              galley={(element) => {
                if (element) galleys.current.set(id, element);
                return () => {
                  galleys.current.delete(id);
                };
              }}
            />
            {pieces && (
              <TablePages
                label={label}
                title={report.title}
                tables={tables}
                laid={pieces}
                first={first}
                pages={pages}
              />
            )}
            <ResidualPages
              label={label}
              title={report.title}
              charts={residuals}
              first={first + (pieces?.pages.length ?? 0)}
              pages={pages}
            />
          </Fragment>
        );
      })}
    </>,
    document.body,
  );
}
