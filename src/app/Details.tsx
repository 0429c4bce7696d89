import { useMemo } from 'react';
import { createPortal } from 'react-dom';
import type { Reported } from '../report/reportJob.ts';
import { createStudies } from '../store/studies.ts';
import { ChangesProvider } from '../ui/questions/changes/ChangesContext.tsx';
import { FirstChange } from '../ui/questions/changes/FirstChange.tsx';
import { ShortList } from '../ui/questions/changes/ShortList.tsx';
import { Questions } from '../ui/questions/Questions.tsx';
import { PartsVaryLine } from '../ui/questions/tolerance/PartsVaryLine.tsx';
import { WillItHoldMore } from '../ui/questions/WillItHoldMore.tsx';
import { PrintDialog } from '../ui/sheet/PrintDialog.tsx';
import { Sheet } from '../ui/sheet/Sheet.tsx';
import { StudiesContext } from '../ui/studies/StudiesContext.ts';
import { SaveRow } from '../ui/takeOut/SaveRow.tsx';
import { TakeOutContext } from '../ui/takeOut/TakeOutContext.ts';
import { WorkingHost } from '../ui/working/WorkingHost.tsx';
import { browserPool } from '../workers/studies/browserPool.ts';
import type { Answer } from './useAnswer.ts';
import { useReport } from './useReport.ts';

interface Places {
  /** One line above the limits beside the drawing. */
  readonly aboveLimits: HTMLElement | null;
  /** Under them. */
  readonly underLimits: HTMLElement | null;
  /** In the figure of the drawing. */
  readonly underDrawing: HTMLElement | null;
}

interface Asked extends Places {
  readonly answer: Answer;
}

interface Props extends Asked {
  /** Under the words of the verdict. */
  readonly inVerdict: HTMLElement | null;
}

const studies = createStudies(browserPool());

/** What stands below the fold, and the sheet for the printer: everything that follows a moment after an edit. */
export function Details({ inVerdict, ...asked }: Props) {
  return (
    <StudiesContext value={studies}>
      <ChangesProvider>
        <Reports {...asked} />
      </ChangesProvider>
      {inVerdict && createPortal(<PartsVaryLine />, inVerdict)}
    </StudiesContext>
  );
}

function Reports({ answer: { design, prefs }, aboveLimits, underLimits, underDrawing }: Asked) {
  const question = useMemo(() => ({ design, prefs }), [design, prefs]);
  const taken = useReport(question);
  return useMemo(
    () => taken && <Shown {...taken} {...{ aboveLimits, underLimits, underDrawing }} />,
    [taken, aboveLimits, underLimits, underDrawing],
  );
}

function Shown({ report, outcome, aboveLimits, underLimits, underDrawing }: Reported & Places) {
  const taken = useMemo(() => ({ report, outcome }), [report, outcome]);
  return (
    <TakeOutContext value={taken}>
      {underDrawing &&
        createPortal(<SaveRow id="drawing" caption="The box, to scale" picture />, underDrawing)}
      {aboveLimits && createPortal(<FirstChange />, aboveLimits)}
      {underLimits &&
        createPortal(
          <>
            <ShortList />
            <WillItHoldMore report={report} />
          </>,
          underLimits,
        )}
      <Questions report={report} />
      <Sheet report={report} />
      <PrintDialog />
      <WorkingHost />
    </TakeOutContext>
  );
}
