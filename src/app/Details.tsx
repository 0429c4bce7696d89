import { useMemo } from 'react';
import { buildReport } from '../report/buildReport.ts';
import { Questions } from '../ui/questions/Questions.tsx';
import { Sheet } from '../ui/sheet/Sheet.tsx';
import type { Answer } from './useAnswer.ts';

/** What stands below the fold, and the sheet for the printer: the whole report, loaded after the first paint. */
export function Details({ answer: { design, outcome, prefs } }: { readonly answer: Answer }) {
  const report = useMemo(() => buildReport(design, outcome, prefs), [design, outcome, prefs]);
  return (
    <>
      <Questions report={report} />
      <Sheet report={report} />
    </>
  );
}
