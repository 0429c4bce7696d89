import { useMemo } from 'react';
import { createPortal } from 'react-dom';
import { designChecksum } from '../model/designChecksum.ts';
import { buildReport } from '../report/buildReport.ts';
import { Questions } from '../ui/questions/Questions.tsx';
import { WillItHoldMore } from '../ui/questions/WillItHoldMore.tsx';
import { PrintDialog } from '../ui/sheet/PrintDialog.tsx';
import { Sheet } from '../ui/sheet/Sheet.tsx';
import { SaveRow } from '../ui/takeOut/SaveRow.tsx';
import { TakeOutContext } from '../ui/takeOut/TakeOutContext.ts';
import type { Answer } from './useAnswer.ts';

interface Props {
  readonly answer: Answer;
  /** Under the limits beside the drawing. */
  readonly underLimits: HTMLElement | null;
  /** In the figure of the drawing. */
  readonly underDrawing: HTMLElement | null;
}

/** What stands below the fold, and the sheet for the printer: the whole report, loaded after the first paint. */
export function Details({ answer: { design, outcome, prefs }, underLimits, underDrawing }: Props) {
  const report = useMemo(
    () => buildReport(design, outcome, { ...prefs, checksum: designChecksum(design) }),
    [design, outcome, prefs],
  );
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
