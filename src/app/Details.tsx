import { useMemo } from 'react';
import { createPortal } from 'react-dom';
import type { Reported } from '../report/reportJob.ts';
import type { Keeper } from '../store/keeping/keeper.ts';
import { createStudies } from '../store/studies.ts';
import { KeeperContext } from '../ui/bench/KeeperContext.ts';
import { Questions } from '../ui/questions/Questions.tsx';
import { PartsVaryLine } from '../ui/questions/tolerance/PartsVaryLine.tsx';
import { WillItHoldMore } from '../ui/questions/WillItHoldMore.tsx';
import { PrintDialog } from '../ui/sheet/PrintDialog.tsx';
import { Sheet } from '../ui/sheet/Sheet.tsx';
import { StudiesContext } from '../ui/studies/StudiesContext.ts';
import { SaveRow } from '../ui/takeOut/SaveRow.tsx';
import { TakeOutContext } from '../ui/takeOut/TakeOutContext.ts';
import { browserPool } from '../workers/studies/browserPool.ts';
import type { Answer } from './useAnswer.ts';
import { useReport } from './useReport.ts';

interface Places {
  /** Under the limits beside the drawing. */
  readonly underLimits: HTMLElement | null;
  /** In the figure of the drawing. */
  readonly underDrawing: HTMLElement | null;
}

interface Props extends Places {
  readonly answer: Answer;
  readonly keeper: Promise<Keeper>;
  /** Under the words of the verdict. */
  readonly inVerdict: HTMLElement | null;
}

const studies = createStudies(browserPool());

/** What stands below the fold, and the sheet for the printer: everything that follows a moment after an edit. */
export function Details(props: Props) {
  return (
    <StudiesContext value={studies}>
      <KeeperContext value={props.keeper}>
        <Reports {...props} />
      </KeeperContext>
      {props.inVerdict && createPortal(<PartsVaryLine />, props.inVerdict)}
    </StudiesContext>
  );
}

function Reports({ answer: { design, prefs }, underLimits, underDrawing }: Places & Pick<Props, 'answer'>) {
  const question = useMemo(() => ({ design, prefs }), [design, prefs]);
  const taken = useReport(question);
  return useMemo(
    () => taken && <Shown {...taken} {...{ underLimits, underDrawing }} />,
    [taken, underLimits, underDrawing],
  );
}

function Shown({ report, outcome, underLimits, underDrawing }: Reported & Places) {
  const taken = useMemo(() => ({ report, outcome }), [report, outcome]);
  return (
    <TakeOutContext value={taken}>
      {underDrawing &&
        createPortal(<SaveRow id="drawing" caption="The box, to scale" picture />, underDrawing)}
      {underLimits && createPortal(<WillItHoldMore report={report} />, underLimits)}
      <Questions report={report} />
      <Sheet report={report} />
      <PrintDialog />
    </TakeOutContext>
  );
}
