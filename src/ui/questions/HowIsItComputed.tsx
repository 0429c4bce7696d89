import { useState } from 'react';
import { assumptionsTable, inputsTable, sourcesTable } from '../../report/tables.ts';
import type { Report } from '../../report/types.ts';
import { useIsNear } from '../studies/useIsNear.ts';
import { TakeAway } from '../takeOut/TakeAway.tsx';
import { FigureFinder } from '../working/FigureFinder.tsx';
import { useWorking } from '../working/useWorking.ts';
import { DataTable } from './DataTable.tsx';
import styles from './HowIsItComputed.module.css';
import { MethodList } from './MethodList.tsx';
import { QuestionSection } from './QuestionSection.tsx';
import { TableTwin } from './TableTwin.tsx';

/** Some hundred figures with their workings: nobody is made to wait for them who does not come here. */
function OpenAFigure() {
  const figures = useWorking('how-is-it-computed').report?.figures ?? [];
  if (figures.length === 0) return null;
  return (
    <>
      <h3>Open a figure</h3>
      <p className={styles.hint}>
        A number of the present answer opens its working, here and anywhere above: the equations in their
        order, the values put in, sources and ranges. In a list or a table the arrow keys go from number to
        number.
      </p>
      <FigureFinder figures={figures} />
    </>
  );
}

/** From a figure to its working; then all methods, their sources, and what is taken for granted. */
export function HowIsItComputed({ report }: { readonly report: Report }) {
  const { methods, sources, verdict, computed } = report;
  const isNear = useIsNear('how-is-it-computed');
  const [wasNear, setWasNear] = useState(isNear);
  if (isNear && !wasNear) setWasNear(true);
  return (
    <QuestionSection id="how-is-it-computed" sentence={methods.length > 0 ? computed : verdict.sentence}>
      {wasNear && <OpenAFigure />}
      {methods.length > 0 && (
        <>
          <h3>Methods used</h3>
          <MethodList methods={methods} />
        </>
      )}
      {sources.length > 0 && (
        <details className={styles.sources}>
          <summary>Sources by number</summary>
          <DataTable table={sourcesTable(report)} />
        </details>
      )}
      <TableTwin table={assumptionsTable(report)} />
      <TableTwin table={inputsTable(report)} />
      <TakeAway />
      <h3>Cautions</h3>
      <ul className={styles.cautions}>
        {report.cautions.map(({ key, title, text }) => (
          <li key={key}>
            <b>{title}.</b> {text}
          </li>
        ))}
      </ul>
    </QuestionSection>
  );
}
