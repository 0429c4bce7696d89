import { useDeferredValue, useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import { type Reported, type ReportQuestion, reported } from '../report/reportJob.ts';
import { useStudy } from '../ui/studies/useStudy.ts';

/** The report of the present answer, made by a worker a moment after each edit; until then the one before. */
export function useReport(question: ReportQuestion): Reported | null {
  const { result, fresh } = useStudy('report', question, { live: true, rank: 0 });
  // Keys go first: charts and tables are drawn in the pauses between them.
  const shown = useDeferredValue(result);
  const isShown = fresh && shown === result;
  const [printed, setPrinted] = useState<{ question: ReportQuestion; made: Reported } | null>(null);
  const isPrinted = printed?.question === question;
  useEffect(() => {
    if (isShown || isPrinted) return;
    // What is printed has to be the present answer. Captured, so that it stands before anybody measures the sheet.
    const settle = () => flushSync(() => setPrinted({ question, made: reported(question) }));
    window.addEventListener('beforeprint', settle, { capture: true });
    return () => window.removeEventListener('beforeprint', settle, { capture: true });
  }, [question, isShown, isPrinted]);
  return !isShown && isPrinted ? printed.made : shown;
}
