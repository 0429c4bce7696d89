import { use, useState } from 'react';
import { reportTables } from '../../report/tables.ts';
import { Button } from '../kit/Button.tsx';
import styles from './TakeAway.module.css';
import { TakeOutContext } from './TakeOutContext.ts';

const trouble = 'The file could not be written. Open the page again; the design is kept.';

/** The whole report as a file, for programs and for spreadsheets. */
export function TakeAway() {
  const shown = use(TakeOutContext);
  const [told, setTold] = useState('');
  if (shown === null) return null;
  const { report, outcome } = shown;

  const save = async (what: 'report' | 'tables') => {
    setTold('');
    try {
      const { saveReport, saveTables } = await import('./takeOut.ts');
      if (what === 'report') saveReport(report, outcome);
      else saveTables(reportTables(report), report.title);
    } catch {
      setTold(trouble);
    }
  };
  return (
    <>
      <h3 className={styles.head}>To take along</h3>
      <p className={styles.ways}>
        <Button onClick={() => void save('report')}>Report as JSON</Button>
        <Button onClick={() => void save('tables')}>All tables as CSV</Button>
        <span>
          Every word and number of this report, for a program or a spreadsheet. Each figure and table can also
          be saved by itself, from the line below it.
        </span>
        <span role="status">{told}</span>
      </p>
    </>
  );
}
